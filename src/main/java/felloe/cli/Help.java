package felloe.cli;

import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.UsageMessageSpec;

/** Help texts, the commands in groups. */
final class Help {

  /** Where the words on each command begin. */
  private static final int COLUMN = 14;

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
    for (Commands.Group group : Commands.GROUPS) {
      text.append('\n').append(group.heading()).append('\n');
      for (Commands.Entry entry : group.entries()) {
        String name = "  " + entry.name();
        text.append(name).append(" ".repeat(Math.max(1, COLUMN - name.length())));
        text.append(entry.line()).append('\n');
      }
    }
    return text.toString();
  }
}
