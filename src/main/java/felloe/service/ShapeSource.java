package felloe.service;

import felloe.plate.Place;
import felloe.yaml.Overrides;
import felloe.yaml.YamlTree;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * Where a shape comes from: a file, or a text that was never saved, as it stands or read already.
 */
public sealed interface ShapeSource {

  /** What is taken instead of its own values. */
  Overrides overrides();

  /** The name to show in messages and to name the plate after, such as {@code heron.yaml}. */
  String name();

  /**
   * A shape file.
   *
   * @param file its path; the plate is named after it
   */
  record OfFile(Path file, Overrides overrides) implements ShapeSource {

    public OfFile {
      Objects.requireNonNull(file, "file");
      Objects.requireNonNull(overrides, "overrides");
    }

    @Override
    public String name() {
      return file.toString();
    }
  }

  /**
   * The text of a shape file.
   *
   * @param name the name to show in messages and to name the plate after, such as {@code
   *     heron.yaml}
   * @param text the whole text
   */
  record OfText(String name, String text, Overrides overrides) implements ShapeSource {

    public OfText {
      Objects.requireNonNull(name, "name");
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(overrides, "overrides");
    }
  }

  /**
   * The values of a text that has been read.
   *
   * @param read without the overrides
   */
  record OfTree(YamlTree read, Overrides overrides) implements ShapeSource {

    public OfTree {
      Objects.requireNonNull(read, "read");
      Objects.requireNonNull(overrides, "overrides");
    }

    @Override
    public String name() {
      return read.name();
    }
  }

  /**
   * Its values, the overrides in their places.
   *
   * @throws felloe.plate.BadInput when it cannot be read
   */
  default YamlTree tree() {
    if (this instanceof OfTree tree) {
      return tree.read().with(overrides());
    }
    return (this instanceof OfFile file
            ? YamlTree.read(file.file())
            : YamlTree.parse(name(), ((OfText) this).text()))
        .with(overrides());
  }

  /** The same with more overrides. */
  default ShapeSource with(List<String> more) {
    Overrides all = overrides().and(more);
    if (this instanceof OfFile file) {
      return new OfFile(file.file(), all);
    }
    return this instanceof OfTree tree
        ? new OfTree(tree.read(), all)
        : new OfText(name(), ((OfText) this).text(), all);
  }

  /** A text as it stands. */
  static ShapeSource text(String name, String text) {
    return new OfText(name, text, new Overrides(Place.BUILT_IN, List.of()));
  }

  /** The values of a text that has been read, as they stand. */
  static ShapeSource tree(YamlTree read) {
    return new OfTree(read, new Overrides(Place.BUILT_IN, List.of()));
  }

  /** A shape file with overrides. */
  static ShapeSource file(Path file, Overrides overrides) {
    return new OfFile(file, overrides);
  }
}
