package felloe.measure;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;

/**
 * A measured file as a table after RFC 4180 with the columns {@code from,to,over,reads,plus_minus}.
 * The last column may be left out. A row over {@code diameter} has no {@code to}. The holes are
 * those that the rows name. Blank lines and lines that start with {@code #} are passed over.
 *
 * <p>The table is written as the same readings in YAML, line for line, so that both are read by one
 * reader; columns in messages are brought back to those of the table.
 */
final class MeasuredCsv {

  private static final List<String> COLUMNS = List.of("from", "to", "over", "reads", "plus_minus");

  private final String name;
  private final String text;
  private final List<Problem> problems = new ArrayList<>();
  private final List<List<int[]>> columns = new ArrayList<>();
  private int holes;
  private int width = COLUMNS.size();

  MeasuredCsv(String name, String text) {
    this.name = name;
    this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  Measured read() {
    StringBuilder yaml = new StringBuilder();
    boolean headed = false;
    int number = 0;
    for (String line : text.split("\r\n|\r|\n", -1)) {
      number++;
      columns.add(new ArrayList<>());
      if (!line.isBlank() && !line.startsWith("#")) {
        if (!headed) {
          headed = true;
          head(line, number);
          yaml.append("readings:");
        } else {
          row(line, number, yaml);
        }
      }
      yaml.append('\n');
    }
    if (!headed) {
      problem(1, 1, "", "has no table", "the first line is " + String.join(",", COLUMNS));
    }
    if (headed && problems.isEmpty() && columns.stream().allMatch(List::isEmpty)) {
      problem(1, 1, "", "has no readings", "write a line for each below the columns");
    }
    if (holes > 0) {
      yaml.append("holes: ").append(holes);
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    try {
      return new MeasuredReader(YamlTree.parse(name, yaml.toString()), holes == 0).read();
    } catch (BadInput bad) {
      throw new BadInput(bad.problems().stream().map(this::back).toList(), bad.more());
    }
  }

  private void head(String line, int number) {
    List<String> names = List.of(line.replace("\"", "").strip().split("\\s*,\\s*"));
    if (names.equals(COLUMNS.subList(0, COLUMNS.size() - 1))) {
      width = names.size();
    } else if (!names.equals(COLUMNS)) {
      String wanted = "must be the line of columns " + String.join(",", COLUMNS);
      problem(number, 1, line, wanted, "write that line at the top");
    }
  }

  private void row(String line, int number, StringBuilder yaml) {
    List<String> cells = new ArrayList<>();
    List<Integer> starts = new ArrayList<>();
    int at = 0;
    while (at <= line.length()) {
      int comma = line.indexOf(',', at);
      int end = comma < 0 ? line.length() : comma;
      String cell = line.substring(at, end).strip();
      if (cell.length() > 1 && cell.startsWith("\"") && cell.endsWith("\"")) {
        cell = cell.substring(1, cell.length() - 1);
      }
      cells.add(cell);
      starts.add(at + 1);
      at = end + 1;
    }
    if (cells.size() != width) {
      String cure =
          "a decimal comma must be a point; leave nothing between two commas where there"
              + " is no value";
      problem(number, 1, line, "must have " + width + " columns, but has " + cells.size(), cure);
      return;
    }
    if (cells.get(0).isEmpty() && cells.get(1).isEmpty() && cells.get(2).equals("holes")) {
      count(cells.get(3), number, starts.get(3));
      return;
    }
    StringBuilder row = new StringBuilder(" - {");
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (!cell.matches("[\\p{L}\\p{N} ./+_-]*")) {
        problem(number, starts.get(i), cell, "is no value of this table", "check the line");
        return;
      }
      if (cell.isEmpty() && i != 3) {
        continue;
      }
      row.append(i == 0 ? "" : ", ").append(COLUMNS.get(i)).append(": ");
      columns.get(number - 1).add(new int[] {row.length() + 1, starts.get(i)});
      row.append(cell);
    }
    yaml.append(row).append('}');
  }

  private void count(String cell, int number, int column) {
    int most = Measured.MOST_HOLES;
    if (!cell.matches("[0-9]{1,2}")
        || Integer.parseInt(cell) < 2
        || Integer.parseInt(cell) > most) {
      problem(number, column, cell, "must be a whole number from 2 to " + most, "count the holes");
    } else {
      holes = Integer.parseInt(cell);
    }
  }

  private void problem(int line, int column, String value, String wanted, String cure) {
    problems.add(new Problem(Place.of(name, line, column), "", value, wanted, cure));
  }

  /** The same problem at the column of the table. */
  private Problem back(Problem problem) {
    Place place = problem.place();
    if (place.line() < 1 || place.line() > columns.size()) {
      return problem;
    }
    int column = 1;
    for (int[] pair : columns.get(place.line() - 1)) {
      if (pair[0] <= place.column()) {
        column = pair[1];
      }
    }
    return new Problem(
        Place.of(name, place.line(), column),
        problem.who(),
        problem.value(),
        problem.wanted(),
        problem.cure());
  }
}
