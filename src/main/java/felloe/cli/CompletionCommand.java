package felloe.cli;

import felloe.kit.Kit;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The script by which a shell completes commands and options. */
final class CompletionCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "completion",
            "Prints a script by which bash or zsh completes the commands and options of felloe.");
    Options.examples(
        spec, "  felloe completion > felloe-completion.sh", "  source felloe-completion.sh");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    screen.data(AutoComplete.bash("felloe", new CommandLine(Commands.all())));
    return Exit.WELL;
  }
}
