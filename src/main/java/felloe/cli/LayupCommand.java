package felloe.cli;

import felloe.kit.Kit;
import felloe.kit.StackAnswer;
import felloe.kit.StripsAnswer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Stacks of plies, and what broken test strips tell. */
final class LayupCommand implements Command {

  private static final String STACK = "--stack";
  private static final String TESTED = "--tested";

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "layup",
            "Tells how stiff a stack of plies is, which ply fails first, and how it warps; and what"
                + " broken test strips tell of a laminate.");
    spec.addOption(
        Options.text(
            STACK, "FILE", "A stack on its own, such as my-stack.yaml; no shape is needed."));
    spec.addOption(
        Options.text(
            TESTED, "FILE", "What was measured on broken test strips, such as my-strips.yaml."));
    spec.addOption(Options.sets("stack[0].angle=45 or load.N=[10,0,0]"));
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe layup --stack my-stack.yaml",
        "  felloe layup --stack my-stack.yaml --format json",
        "  felloe layup --tested my-strips.yaml");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    String format = Options.chosenFormat(call, "text", "json");
    List<String> sets = Options.chosenSets(call);
    Optional<Path> stack = Options.value(call, STACK).map(Options::path);
    Optional<Path> tested = Options.value(call, TESTED).map(Options::path);
    if (stack.isPresent() == tested.isPresent()) {
      throw Calls.wrong(
          "layup",
          "must have one of " + STACK + " and " + TESTED,
          "write --stack my-stack.yaml, say");
    }
    if (stack.isPresent()) {
      show(screen, format, kit.stack(stack.get(), sets));
    } else {
      show(screen, format, kit.tested(tested.get(), sets));
    }
    return Exit.WELL;
  }

  private static void show(Screen screen, String format, StackAnswer answer) {
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      StackText.show(screen, answer);
    }
  }

  private static void show(Screen screen, String format, StripsAnswer answer) {
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      StripsText.show(screen, answer);
    }
  }
}
