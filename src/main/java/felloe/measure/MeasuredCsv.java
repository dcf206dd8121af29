package felloe.measure;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import de.siegmar.fastcsv.reader.FieldMismatchStrategy;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A measured file as a table after RFC 4180 with the columns {@code from,to,over,reads,plus_minus}.
 * The last column may be left out. A row over {@code diameter} has no {@code to}. The holes are
 * those that the rows name. Blank lines and lines that start with {@code #} are passed over. A
 * value may stand in quotation marks; what it holds is then read as it is, commas too.
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
  private final List<String> lines;
  private int holes;
  private int width = COLUMNS.size();

  MeasuredCsv(String name, String text) {
    this.name = name;
    this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
    this.lines = this.text.lines().toList();
  }

  Measured read() {
    int last = lines.size() + 1;
    String[] yaml = new String[last + 1];
    Arrays.fill(yaml, "");
    for (int i = 0; i <= last; i++) {
      columns.add(new ArrayList<>());
    }
    boolean headed = false;
    for (Row row : rows()) {
      if (!headed) {
        headed = true;
        head(row);
        yaml[row.line() - 1] = "readings:";
      } else {
        yaml[row.line() - 1] = row(row);
      }
    }
    if (!headed && problems.isEmpty()) {
      problem(1, 1, "", "has no table", "the first line is " + String.join(",", COLUMNS));
    }
    if (headed && problems.isEmpty() && columns.stream().allMatch(List::isEmpty)) {
      problem(1, 1, "", "has no readings", "write a line for each below the columns");
    }
    if (holes > 0) {
      yaml[last] = "holes: " + holes;
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    try {
      YamlTree tree = YamlTree.parse(name, String.join("\n", yaml));
      return new MeasuredReader(tree, holes == 0).read();
    } catch (BadInput bad) {
      throw new BadInput(bad.problems().stream().map(this::back).toList(), bad.more());
    }
  }

  /**
   * A row of the table.
   *
   * @param line where it starts, from 1
   * @param cells without quotes and without blanks round them
   */
  private record Row(int line, List<String> cells) {
    String text() {
      return String.join(",", cells);
    }
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    CsvReader<CsvRecord> reader =
        CsvReader.builder()
            .commentStrategy(CommentStrategy.SKIP)
            .skipEmptyLines(true)
            .trimWhitespacesAroundQuotes(true)
            .extraFieldStrategy(FieldMismatchStrategy.IGNORE)
            .missingFieldStrategy(FieldMismatchStrategy.IGNORE)
            .ofCsvRecord(text);
    try {
      for (CsvRecord record : reader) {
        List<String> cells = record.getFields().stream().map(String::strip).toList();
        if (cells.size() > 1 || !cells.get(0).isEmpty()) {
          rows.add(new Row((int) record.getStartingLineNumber(), cells));
        }
        if (rows.size() > Measured.MOST_READINGS + 2) {
          break;
        }
      }
    } catch (CsvParseException odd) {
      int line = rows.isEmpty() ? 1 : rows.get(rows.size() - 1).line() + 1;
      problem(
          line,
          1,
          "",
          "is no table from here on: a quotation mark is not closed, or stands within a value",
          "take the quotation marks away");
    }
    return rows;
  }

  private void head(Row row) {
    List<String> names = row.cells();
    if (names.equals(COLUMNS.subList(0, COLUMNS.size() - 1))) {
      width = names.size();
    } else if (!names.equals(COLUMNS)) {
      String wanted = "must be the line of columns " + String.join(",", COLUMNS);
      problem(row.line(), 1, row.text(), wanted, "write that line at the top");
    }
  }

  /** The row in YAML; empty when it holds no reading. */
  private String row(Row row) {
    List<String> cells = row.cells();
    int number = row.line();
    if (cells.size() != width) {
      String cure =
          "a decimal comma must be a point; leave nothing between two commas where there"
              + " is no value";
      String wanted = "must have " + width + " columns, but has " + cells.size();
      problem(number, 1, row.text(), wanted, cure);
      return "";
    }
    List<Integer> starts = starts(number, cells.size());
    if (cells.get(0).isEmpty() && cells.get(1).isEmpty() && cells.get(2).equals("holes")) {
      count(cells.get(3), number, starts.get(3));
      return "";
    }
    StringBuilder yaml = new StringBuilder(" - {");
    for (int i = 0; i < cells.size(); i++) {
      String cell = cells.get(i);
      if (!cell.matches("[\\p{L}\\p{N} ./+_-]*")) {
        String cure =
            cell.matches("[0-9]+,[0-9]+") ? "a decimal comma must be a point" : "check the line";
        problem(number, starts.get(i), cell, "is no value of this table", cure);
        return "";
      }
      if (cell.isEmpty() && i != 3) {
        continue;
      }
      yaml.append(i == 0 ? "" : ", ").append(COLUMNS.get(i)).append(": ");
      columns.get(number - 1).add(new int[] {yaml.length() + 1, starts.get(i)});
      yaml.append(cell);
    }
    return yaml.append('}').toString();
  }

  /** The column at which each cell of a line starts, for messages; 1 for those on later lines. */
  private List<Integer> starts(int number, int cells) {
    String line = number <= lines.size() ? lines.get(number - 1) : "";
    List<Integer> starts = new ArrayList<>(List.of(1));
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      quoted ^= c == '"';
      if (c == ',' && !quoted) {
        starts.add(i + 2);
      }
    }
    while (starts.size() < cells) {
      starts.add(1);
    }
    return starts;
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
