package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The page on the commands names every command and option that there is, and none that is not. */
class CommandsPageTest {

  private static final String SHARED = "(#paper-and-marking-out)";
  private static final Pattern OPTION = Pattern.compile("`(--?[A-Za-z][a-z-]*)[^`]*`");

  private final Map<String, List<String>> sections = sections();

  @Test
  void everyCommandHasASectionAndEverySectionACommand() {
    Set<String> told = new TreeSet<>();
    sections.keySet().stream()
        .filter(heading -> heading.startsWith("`felloe "))
        .forEach(heading -> told.add(heading.replace("`", "")));
    assertEquals(new TreeSet<>(commands().keySet()), told);
  }

  @Test
  void everyCommandHasALineInTheTableAtTheTop() {
    String top = String.join("\n", sections.get(""));
    for (String command : commands().keySet()) {
      assertTrue(top.contains("[`" + command + "`]"), command);
    }
  }

  @Test
  void everySectionNamesTheOptionsOfItsCommandAndNoOther() {
    commands()
        .forEach(
            (name, spec) -> {
              Set<String> options = new TreeSet<>();
              spec.options().forEach(option -> options.addAll(List.of(option.names())));
              options.removeAll(List.of("-h", "--help"));
              List<String> section = sections.get("`" + name + "`");
              Set<String> told = options(section);
              if (String.join("\n", section).contains(SHARED)) {
                told.addAll(options(sections.get("Paper and marking out")));
              }
              assertEquals(options, told, name);
            });
  }

  @Test
  void theOptionsThatAllHaveInCommonAreThoseOfTheProgram() {
    Set<String> options = new TreeSet<>();
    Commands.top().options().forEach(option -> options.addAll(List.of(option.names())));
    assertEquals(options, options(sections.get("What all have in common")));
  }

  @Test
  void everyCommandShowsAnExampleOfItself() {
    List<DocsCall> calls = DocsPage.of("docs/commands.md").calls();
    for (String command : commands().keySet()) {
      assertTrue(calls.stream().anyMatch(call -> call.toString().contains(" " + command)), command);
    }
  }

  @Test
  void everyExitCodeOfTheProgramIsTold() {
    List<String> rows = sections.get("What all have in common");
    for (int code : new int[] {Exit.WELL, Exit.FAILS, Exit.WRONG, Exit.TROUBLE}) {
      assertTrue(rows.stream().anyMatch(row -> row.startsWith("| " + code + " |")), "" + code);
    }
  }

  /** Options in the first column of a section's tables. */
  private static Set<String> options(List<String> section) {
    Set<String> options = new TreeSet<>();
    for (String line : section) {
      if (line.startsWith("| `-")) {
        Matcher option = OPTION.matcher(line.substring(0, line.indexOf('|', 1)));
        while (option.find()) {
          options.add(option.group(1));
        }
      }
    }
    return options;
  }

  /** The page's lines by their heading; the part above the first has none. */
  private static Map<String, List<String>> sections() {
    Map<String, List<String>> sections = new LinkedHashMap<>();
    String heading = "";
    for (String line : DocsPage.of("docs/commands.md").lines()) {
      if (line.startsWith("## ")) {
        heading = line.substring(3);
      }
      sections.computeIfAbsent(heading, none -> new ArrayList<>()).add(line);
    }
    return sections;
  }

  /** All commands that do something, by the words that call them. */
  private static Map<String, CommandSpec> commands() {
    Map<String, CommandSpec> commands = new LinkedHashMap<>();
    collect(new CommandLine(Commands.all()), "felloe", commands);
    commands.remove("felloe");
    return commands;
  }

  private static void collect(CommandLine line, String name, Map<String, CommandSpec> into) {
    if (line.getSubcommands().isEmpty()) {
      into.put(name, line.getCommandSpec());
    }
    line.getSubcommands().forEach((word, sub) -> collect(sub, name + " " + word, into));
  }
}
