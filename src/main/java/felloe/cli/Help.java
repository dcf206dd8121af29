package felloe.cli;

import java.util.Iterator;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Help texts, the commands in groups. */
final class Help {

  private Help() {}

  /** The help of a command. */
  static String of(CommandLine command) {
    if (command.getParent() == null && command.getSubcommands().size() > 1) {
      command
          .getHelpSectionMap()
          .put(UsageMessageSpec.SECTION_KEY_COMMAND_LIST, help -> commands(command));
    }
    return command.getUsageMessage(Ansi.OFF);
  }

  private static String commands(CommandLine command) {
    StringBuilder text = new StringBuilder();
    Table table = new Table("ll");
    Commands.GROUPS.forEach(
        group -> group.entries().forEach(entry -> table.row("  " + entry.name(), entry.line())));
    Iterator<String> lines = table.lines().iterator();
    for (Commands.Group group : Commands.GROUPS) {
      text.append('\n').append(group.heading()).append('\n');
      group.entries().forEach(entry -> text.append(lines.next()).append('\n'));
    }
    return text.toString();
  }
}
