package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.service.NewShape;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** A shape file to start from. */
final class NewCommand implements Command {

  private static final Opt<Boolean> FORCE =
      Opt.flag("--force", "Replace the file when it is there already.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "new",
            "Writes a commented shape file to start from, which makes a good wheel as it stands.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("FAMILY")
            .index("0")
            .arity("1")
            .required(true)
            .type(String.class)
            .description("The outline: " + String.join(", ", NewShape.families()) + ".")
            .build());
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("FILE")
            .index("1")
            .arity("0..1")
            .type(String.class)
            .description("The file to write. Usually FAMILY.yaml, here.")
            .build());
    Options.add(spec, FORCE);
    Options.examples(spec, "  felloe new round", "  felloe new points curlew.yaml");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String family = call.matchedPositionalValue(0, "");
    Path file = Options.path(call.matchedPositionalValue(1, family + ".yaml"));
    String text = NewShape.text(family);
    if (FORCE.given(call)) {
      kit.replace(file, text);
    } else {
      kit.writeNew(file, text, "name another file, or replace this one with " + FORCE.name());
    }
    screen.line(file.toString());
    screen.say("Change what you like, then: felloe check " + file);
    return Exit.WELL;
  }
}
