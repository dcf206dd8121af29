package felloe.cli;

import felloe.geometry.Numbers;
import felloe.kit.SearchAnswer;
import java.util.ArrayList;
import java.util.List;

/** A search for the least mass as text. */
final class SearchText {

  private static final int WIDTH = 100;

  /** Lighter designs that are told with what is wrong with them. */
  private static final int LIGHTER = 6;

  private SearchText() {}

  static void show(Screen screen, SearchAnswer answer) {
    screen.line(
        answer.plate().title()
            + ": "
            + answer.designs().size()
            + " designs tried, "
            + answer.doing()
            + " pass the review and do what is wanted"
            + (answer.again() > 0 ? "; " + answer.again() + " known from before" : ""));
    screen.line("");
    List<SearchAnswer.Row> front = answer.front();
    if (front.isEmpty()) {
      screen.line("None of them will do. The heaviest that were tried:");
    } else {
      screen.line("From the lightest to the stiffest; none of the others is lighter and stiffer:");
    }
    table(screen, answer.paths(), front);
    List<SearchAnswer.Row> lighter = answer.lighter(LIGHTER);
    if (!lighter.isEmpty()) {
      if (!front.isEmpty()) {
        screen.line("");
        screen.line("Lighter, but will not do:");
      }
      table(screen, answer.paths(), lighter);
    }
    screen.line("");
    answer
        .sets()
        .ifPresent(
            sets -> {
              screen.line("The lightest: felloe load SHAPE " + sets);
              screen.line("");
            });
    answer
        .cautions()
        .forEach(caution -> Table.wrapped("! " + caution, 0, WIDTH).forEach(screen::line));
  }

  private static void table(Screen screen, List<String> paths, List<SearchAnswer.Row> rows) {
    if (rows.isEmpty()) {
      return;
    }
    Table table = new Table("r".repeat(paths.size()) + "rrrl");
    List<String> head = new ArrayList<>(paths);
    head.addAll(List.of("mass g", "hands mm", "margin", ""));
    table.row(head.toArray(String[]::new));
    for (SearchAnswer.Row row : rows) {
      List<String> cells = new ArrayList<>();
      row.values().forEach(value -> cells.add(Numbers.brief(value, 2)));
      boolean loaded = row.deflection() > 0;
      cells.add(Numbers.fixed(row.mass(), 0));
      cells.add(loaded ? Numbers.fixed(row.deflection(), 2) : "");
      cells.add(loaded ? Numbers.fixed(Math.min(99, row.margin()), 2) : "");
      cells.add(row.fault());
      table.row(cells.toArray(String[]::new));
    }
    table.lines().forEach(screen::line);
  }
}
