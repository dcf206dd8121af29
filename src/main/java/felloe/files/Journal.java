package felloe.files;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is about to change in a folder, written down before it does. As long as a journal is there
 * its changes hold, whether they were carried out or not.
 */
record Journal(List<Step> steps) {

  private static final String HEAD = "felloe-journal 1";
  private static final String NONE = "-";
  private static final String END = "end";

  Journal {
    steps = List.copyOf(steps);
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder(HEAD).append('\n');
    for (Step step : steps) {
      text.append(step.before().orElse(NONE))
          .append('\t')
          .append(step.after().orElse(NONE))
          .append('\t')
          .append(step.name())
          .append('\n');
    }
    return text.append(END).append('\n').toString().getBytes(StandardCharsets.UTF_8);
  }

  /**
   * A journal that was written.
   *
   * @throws IOException when it cannot be read, or is none
   */
  static Journal read(Path file) throws IOException {
    List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    int last = lines.size() - 1;
    if (last < 1 || !lines.get(0).equals(HEAD) || !lines.get(last).equals(END)) {
      throw new IOException("it is no journal of Felloe");
    }
    List<Step> steps = new ArrayList<>();
    for (String line : lines.subList(1, last)) {
      String[] cells = line.split("\t", 3);
      if (cells.length != 3 || cells[2].indexOf('/') >= 0 || cells[2].indexOf('\\') >= 0) {
        throw new IOException("it is no journal of Felloe");
      }
      steps.add(new Step(cells[2], digest(cells[0]), digest(cells[1])));
    }
    return new Journal(steps);
  }

  private static Optional<String> digest(String cell) {
    return cell.equals(NONE) ? Optional.empty() : Optional.of(cell);
  }
}
