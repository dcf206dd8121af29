package felloe.cli;

import felloe.kit.Kit;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Help on the program or on a command. */
final class HelpCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec = Options.command("help", "Shows help on a command.");
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("COMMAND")
            .index("0..*")
            .arity("0..*")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .description("A command, such as make or hub show.")
            .build());
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    CommandLine command = new CommandLine(Commands.all());
    for (String name : call.matchedPositionalValue(0, List.<String>of())) {
      CommandLine next = command.getSubcommands().get(name);
      if (next == null) {
        throw Calls.wrong(
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
