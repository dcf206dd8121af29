package felloe.cli;

import felloe.kit.Kit;
import felloe.kit.StackAnswer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Stacks of plies, and what broken test strips tell. */
final class LayupCommand implements Command {

  private static final String STACK = "--stack";

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "layup",
            "Tells how stiff a stack of plies is, which ply fails first, and how it warps.");
    spec.addOption(
        Options.text(
            STACK, "FILE", "A stack on its own, such as my-stack.yaml; no shape is needed."));
    spec.addOption(Options.sets("stack[0].angle=45 or load.N=[10,0,0]"));
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe layup --stack my-stack.yaml",
        "  felloe layup --stack my-stack.yaml --format json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    String format = Options.chosenFormat(call, "text", "json");
    List<String> sets = Options.chosenSets(call);
    Optional<Path> stack = Options.value(call, STACK).map(Options::path);
    if (stack.isEmpty()) {
      throw Calls.wrong("layup", "must have " + STACK, "write --stack my-stack.yaml, say");
    }
    StackAnswer answer = kit.stack(stack.get(), sets);
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      StackText.show(screen, answer);
    }
    return Exit.WELL;
  }
}
