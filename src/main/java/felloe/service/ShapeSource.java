package felloe.service;

import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Where a shape comes from: a file, or a text that was never saved. */
public sealed interface ShapeSource {

  /** Overrides such as {@code outline.round.diameter=280}, in order. */
  List<String> sets();

  /**
   * A shape file.
   *
   * @param file its path; the plate is named after it
   * @param sets overrides, in order
   */
  record OfFile(Path file, List<String> sets) implements ShapeSource {

    public OfFile {
      Objects.requireNonNull(file, "file");
      sets = List.copyOf(sets);
    }
  }

  /**
   * The text of a shape file.
   *
   * @param name the name to show in messages and to name the plate after, such as {@code
   *     heron.yaml}
   * @param text the whole text
   * @param sets overrides, in order
   */
  record OfText(String name, String text, List<String> sets) implements ShapeSource {

    public OfText {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(text, "text");
      sets = List.copyOf(sets);
    }
  }

  /** Its values, the overrides in their places. */
  default YamlTree tree() {
    return (this instanceof OfFile file
            ? YamlTree.read(file.file())
            : YamlTree.parse(((OfText) this).name(), ((OfText) this).text()))
        .with(sets());
  }

  /** The same with more overrides. */
  default ShapeSource with(List<String> more) {
    List<String> all = new ArrayList<>(sets());
    all.addAll(more);
    return this instanceof OfFile file
        ? new OfFile(file.file(), all)
        : new OfText(((OfText) this).name(), ((OfText) this).text(), all);
  }

  /** A shape file with overrides. */
  static ShapeSource file(Path file, List<String> sets) {
    return new OfFile(file, sets);
  }

  /** A text with overrides. */
  static ShapeSource text(String name, String text, List<String> sets) {
    return new OfText(name, text, sets);
  }
}
