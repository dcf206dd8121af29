package felloe.shape;

import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.review.Limits;
import felloe.yaml.Sets;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Shape files that tests read. In a bad one the last lines, which start with {@code #>} and are not
 * read, say what is expected of the reader, one problem a line, without the file's name. Run the
 * tests with {@code -Dfelloe.rewrite=true} to write down what the reader says now, and read it
 * before you keep it.
 */
final class Corpus {

  private static final Path FOLDER = Path.of("src", "test", "resources", "felloe", "shape");
  private static final String MARK = "#>";

  private Corpus() {}

  /** The text of a file of the corpus. */
  static String text(String name) {
    return text(FOLDER.resolve(name));
  }

  static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The shape files of a folder of the corpus, in order. */
  static List<Path> files(String folder) {
    return shapes(FOLDER.resolve(folder));
  }

  /** The demo shapes. */
  static List<Path> demos() {
    return shapes(Path.of("shapes"));
  }

  /** The shape files to start from. */
  static List<Path> starts() {
    return shapes(Path.of("src", "main", "resources", "felloe", "new"));
  }

  private static List<Path> shapes(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Reads a text as the shape file {@code shape.yaml}. */
  static Plate read(String text, String... sets) {
    return ShapeFile.parse("shape.yaml", text, Sets.of(sets), Hubs.TWO);
  }

  /**
   * What the reader, and the review of the limits it sets, have against a text, without the file's
   * name; empty when nothing.
   */
  static List<String> complaints(String text, String... sets) {
    try {
      Plate plate = read(text, sets);
      List<Problem> limits = Limits.problems(plate.limits());
      if (!limits.isEmpty()) {
        throw new BadInput(limits);
      }
      return List.of();
    } catch (BadInput bad) {
      return bad.lines().stream().map(line -> line.replaceFirst("^shape\\.yaml:? ?", "")).toList();
    }
  }

  /** A bad file without what it expects. */
  static String shape(String text) {
    return text.lines()
        .filter(line -> !line.startsWith(MARK))
        .map(line -> line + "\n")
        .collect(Collectors.joining());
  }

  /** What a bad file expects of the reader. */
  static List<String> expected(String text) {
    return text.lines()
        .filter(line -> line.startsWith(MARK))
        .map(line -> line.substring(MARK.length()).strip())
        .toList();
  }

  /** Writes down what the reader says, when the run asks for it. */
  static void rewrite(Path file, String text, List<String> complaints) {
    if (Boolean.getBoolean("felloe.rewrite")) {
      String lines =
          complaints.stream().map(c -> MARK + " " + c + "\n").collect(Collectors.joining());
      try {
        Files.writeString(file, shape(text) + lines);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
