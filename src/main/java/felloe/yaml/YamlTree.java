package felloe.yaml;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Objects;

/**
 * A YAML file as a tree of values that know their places.
 *
 * <p>The text is YAML 1.2 in its plain parts: scalars, lists and groups of keys. Refused with the
 * place and a cure: files over 8 MiB, bytes that are not UTF-8, control characters, nesting deeper
 * than 50 levels, more than 100 000 values, anchors, aliases, merge keys, type tags, keys that are
 * no words, keys given twice, and a second document. Nothing is expanded and no object is made from
 * a tag.
 *
 * <p>Typical use: {@code YamlTree.read(file).with(overrides).fields(problems)}, then ask the {@link
 * Fields} for what is wanted.
 */
public final class YamlTree {

  private final String name;
  private final YamlValue root;

  YamlTree(String name, YamlValue root) {
    this.name = name;
    this.root = root;
  }

  /**
   * Reads a file.
   *
   * @throws BadInput if the file cannot be read or is no such text; all problems found
   */
  public static YamlTree read(Path file) {
    String name = file.toString();
    Place place = Place.ofFile(name);
    try {
      if (Files.isDirectory(file)) {
        throw new BadInput(new Problem(place, "", "", "is a folder", "name a file in it"));
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        // A pipe or device may never end.
        throw new BadInput(new Problem(place, "", "", "is not a plain file", "name a plain file"));
      }
      // The file may grow while it is read, so the reading is bounded as well.
      if (Files.exists(file) && Files.size(file) > SourceText.LARGEST) {
        throw SourceText.tooLarge(place);
      }
      try (InputStream in = Files.newInputStream(file)) {
        return read(name, in);
      }
    } catch (NoSuchFileException missing) {
      throw new BadInput(
          new Problem(place, "", "", "does not exist", "check the name and the folder"));
    } catch (IOException failure) {
      throw new BadInput(
          new Problem(place, "", "", "cannot be read", "check that you may open the file"));
    }
  }

  /**
   * Reads a stream to its end, or to 8 MiB. The stream stays open.
   *
   * @param name the name to show in messages
   * @throws IOException if the stream fails
   * @throws BadInput if it is no such text
   */
  public static YamlTree read(String name, InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(SourceText.LARGEST + 1);
    return parse(name, SourceText.decode(name, bytes));
  }

  /**
   * Reads a text.
   *
   * @param name the name to show in messages
   * @throws BadInput if the text cannot be read; all problems found
   */
  public static YamlTree parse(String name, String text) {
    Objects.requireNonNull(name, "name");
    String clean = SourceText.checked(name, text, null);
    Problems problems = new Problems();
    var root = new TreeBuilder(name, null, clean, problems).build(ValuePath.TOP);
    problems.throwIfAny();
    return new YamlTree(name, root.orElseThrow());
  }

  /**
   * The tree with values replaced or added.
   *
   * @throws BadInput if any of them cannot be read or has no place to go; all problems found
   */
  public YamlTree with(Overrides overrides) {
    Problems problems = new Problems();
    YamlValue changed =
        new OverrideReader(overrides.place(), problems).apply(root, overrides.values());
    problems.throwIfAny();
    return new YamlTree(name, changed);
  }

  /** The file's name as messages show it. */
  public String name() {
    return name;
  }

  /** The value at the top; a null scalar when the file is empty. */
  public YamlValue root() {
    return root;
  }

  /**
   * The keys at the top. When the top is something else, that is reported and the fields returned
   * hold nothing and report nothing more.
   *
   * @param problems collects what is wrong
   */
  public Fields fields(Problems problems) {
    if (root instanceof YamlValue.Scalar scalar && scalar.isNull()) {
      problems.add(new Problem(Place.ofFile(name), "", "", "is empty", "write 'key: value' lines"));
      return Fields.silent(root.place(), ValuePath.TOP, new Scope(null, problems, true));
    }
    return new Entry(new Scope(null, problems, false), ValuePath.TOP, root.place(), root)
        .mapping()
        .required();
  }
}
