package felloe.cli;

import felloe.kit.LayupAnswer;
import felloe.kit.LayupSection;
import java.util.List;

/** The plan of a lay-up as text. */
final class LayupText {

  private static final int WIDTH = 100;

  private LayupText() {}

  static void show(Screen screen, LayupAnswer answer, boolean sources) {
    screen.line(answer.plate().title() + " (revision " + answer.plate().revision() + ")");
    if (!answer.laidUp()) {
      wrapped(
          screen,
          "Stock: "
              + answer.plate().stock().material().title()
              + ", which is bought. The lay-up below is for comparing; --cloth plans one.");
    }
    for (String obstacle : answer.obstacles()) {
      wrapped(screen, "CANNOT BE DONE AS PLANNED: " + obstacle + ".");
    }
    for (LayupSection section : answer.sections()) {
      section(screen, section);
    }
    if (!answer.warnings().isEmpty()) {
      screen.line("");
      answer.warnings().forEach(warning -> wrapped(screen, "- " + warning + "."));
    }
    screen.line("");
    if (sources) {
      section(screen, answer.sources());
    } else if (answer.laidUp()) {
      assumed(screen, answer.sources());
    }
    screen.line("");
    answer.cautions().forEach(caution -> wrapped(screen, "! " + caution));
  }

  private static void section(Screen screen, LayupSection section) {
    screen.line("");
    if (!section.title().isEmpty()) {
      screen.line(section.title());
    }
    if (!section.rows().isEmpty()) {
      Table table = new Table(section.sides());
      section.rows().forEach(row -> table.row(row.toArray(String[]::new)));
      table.lines().forEach(line -> screen.line("  " + line));
    }
    section.lines().forEach(line -> wrapped(screen, line));
  }

  /** The figures that rest on memory or habit, with their values, in running text. */
  private static void assumed(Screen screen, LayupSection sources) {
    List<String> names =
        sources.rows().stream()
            .filter(row -> row.get(3).equals("yes"))
            .map(row -> (row.get(0) + " " + row.get(1) + " " + row.get(2)).strip())
            .toList();
    wrapped(
        screen,
        "Assumed, from common practice or from memory: "
            + String.join(", ", names)
            + ". --sources tells of each figure where it comes from; put your own in a file for"
            + " --materials.");
  }

  private static void wrapped(Screen screen, String text) {
    Table.wrapped(text, 0, WIDTH).forEach(screen::line);
  }
}
