package felloe.bringin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Outcomes of scenes, one a line. Kept in a file, a run that was ended goes on where it stood: many
 * scenes take an hour. A file holds what one state of the program gave; another state wants another
 * file.
 */
final class SceneLog {

  /** The system property that names the file; without it nothing is kept. */
  static final String PROPERTY = "felloe.scenes.log";

  /** What comes before the dimensions of a line. */
  private static final String DIMENSIONS = " | ";

  private final Path file;
  private final Map<String, PhotoScenes.Outcome> known = new TreeMap<>();

  private SceneLog(Path file) {
    this.file = file;
  }

  static SceneLog ofProperty() {
    String name = System.getProperty(PROPERTY);
    return of(name == null ? null : Path.of(name));
  }

  /**
   * Reads what was kept.
   *
   * @param file null to keep nothing
   */
  static SceneLog of(Path file) {
    SceneLog log = new SceneLog(file);
    if (file != null && Files.exists(file)) {
      try {
        for (String line : Files.readAllLines(file)) {
          log.known.put(line.substring(0, line.indexOf(' ')), read(line));
        }
      } catch (IOException unread) {
        throw new UncheckedIOException(unread);
      }
    }
    return log;
  }

  /** What a scene gave: as it was kept, else measured now and kept. */
  PhotoScenes.Outcome outcome(PhotoScenes.Making making) throws IOException {
    String name = making.name();
    if (!known.containsKey(name)) {
      PhotoScenes.Outcome outcome = PhotoScenes.tried(making.scene());
      known.put(name, outcome);
      if (file != null) {
        Files.writeString(
            file,
            name + " " + written(outcome) + "\n",
            StandardOpenOption.CREATE,
            StandardOpenOption.APPEND);
      }
    }
    return known.get(name);
  }

  static String written(PhotoScenes.Outcome o) {
    StringBuilder text = new StringBuilder();
    for (String part :
        List.of(
            Double.toString(o.worst()),
            Double.toString(o.mean()),
            Double.toString(o.centres()),
            Double.toString(o.diameters()),
            Integer.toString(o.missing()),
            Integer.toString(o.untold()))) {
      text.append(part).append(' ');
    }
    text.append(o.refused().replace('\n', ' ')).append(DIMENSIONS);
    for (PhotoScenes.Dimension d : o.dimensions()) {
      text.append(d.what()).append(' ').append(d.error()).append(' ').append(d.bound()).append(' ');
    }
    return text.toString().strip();
  }

  private static PhotoScenes.Outcome read(String line) {
    String[] halves = line.split(" \\|", 2);
    String[] parts = halves[0].split(" ", 8);
    List<PhotoScenes.Dimension> dimensions = new ArrayList<>();
    String[] figures = halves[1].strip().split(" ");
    for (int i = 0; i + 2 < figures.length; i += 3) {
      dimensions.add(
          new PhotoScenes.Dimension(
              figures[i], Double.parseDouble(figures[i + 1]), Double.parseDouble(figures[i + 2])));
    }
    return new PhotoScenes.Outcome(
        Double.parseDouble(parts[1]),
        Double.parseDouble(parts[2]),
        Double.parseDouble(parts[3]),
        Double.parseDouble(parts[4]),
        Integer.parseInt(parts[5]),
        Integer.parseInt(parts[6]),
        parts.length > 7 ? parts[7] : "",
        dimensions);
  }
}
