package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.service.NewShape;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** A shape file to start from. */
final class NewCommand implements Command {

  private static final Opt<String> FAMILY =
      Opt.argument(
          "FAMILY",
          "1",
          Read::text,
          "The outline: " + String.join(", ", NewShape.families()) + ".");
  private static final Opt<Path> FILE =
      Opt.argument("FILE", "0..1", Read::path, "The file to write. Usually FAMILY.yaml, here.");

  /** Shared by commands that write a file which the maker may edit. */
  static final Opt<Boolean> FORCE =
      Opt.flag("--force", "Replace the file when it is there already.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "new",
            "Writes a commented shape file to start from, which makes a good wheel as it stands.");
    Options.add(spec, FAMILY, FILE, FORCE);
    Options.examples(spec, "  felloe new round", "  felloe new points curlew.yaml");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String family = FAMILY.in(call).orElseThrow();
    String text = NewShape.text(family);
    Path file = FILE.in(call).orElseGet(() -> Read.path(FILE.name(), family + ".yaml"));
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
