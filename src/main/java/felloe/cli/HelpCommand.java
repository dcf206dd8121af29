package felloe.cli;

import felloe.kit.Kit;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Help on the program or on a command. */
final class HelpCommand implements Command {

  private static final Opt<String> COMMAND =
      Opt.argument("COMMAND", "0..*", Read::text, "A command, such as make or hub show.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec = Options.command("help", "Shows help on a command.");
    Options.add(spec, COMMAND);
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    CommandLine command = new CommandLine(Commands.all());
    for (String name : COMMAND.all(call)) {
      CommandLine next = command.getSubcommands().get(name);
      if (next == null) {
        throw Read.wrong(
            "help " + name,
            "is no command",
            "known: " + String.join(", ", command.getSubcommands().keySet()));
      }
      command = next;
    }
    screen.data(Help.of(command));
    return Exit.WELL;
  }
}
