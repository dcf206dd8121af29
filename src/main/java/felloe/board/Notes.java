package felloe.board;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.out.Json;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.TextEdit;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was ticked and written down at the bench, kept in a file beside the shape. Each is known by
 * all that stood beside it, so that a step whose figures have changed is not taken for done.
 */
final class Notes {

  private static final String KEY = "notes";
  private static final int MOST = 2_000;
  private static final int LONGEST = 2_000;

  private final Path file;
  private final Kit kit;

  /**
   * @param shape the shape file
   */
  Notes(Path shape, Kit kit) {
    String name = shape.getFileName().toString();
    String stem = name.substring(0, name.lastIndexOf('.'));
    this.file = shape.resolveSibling(stem + "-bench.yaml");
    this.kit = kit;
  }

  /**
   * All that is noted, by what stands beside it.
   *
   * @throws BadInput when a file of that name is there that is not the board's, or cannot be read
   */
  synchronized Map<String, String> all() {
    Map<String, String> notes = new LinkedHashMap<>();
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return notes;
    }
    if (YamlTree.read(file).root() instanceof Mapping top
        && top.entries().keySet().equals(Set.of(KEY))
        && top.entries().get(KEY).value() instanceof Sequence list) {
      for (YamlValue one : list.items()) {
        if (one instanceof Mapping note) {
          notes.put(word(note, "of"), word(note, "is"));
        }
      }
      return notes;
    }
    throw new BadInput(
        new Problem(
            Place.ofFile(file.getFileName().toString()),
            "",
            "",
            "is there and is none of the board's own, so that nothing can be noted",
            "give it another name"));
  }

  private static String word(Mapping note, String key) {
    return note.entries().containsKey(key) && note.entries().get(key).value() instanceof Scalar one
        ? one.text()
        : "";
  }

  /**
   * Notes something; an empty text takes it back.
   *
   * @throws BadInput when it is too long, or there is too much of it
   * @throws CannotWrite when the disk says no
   */
  synchronized void note(String of, String is) throws CannotWrite {
    Map<String, String> notes = all();
    if (of.isEmpty() || of.length() > LONGEST || is.length() > LONGEST || notes.size() >= MOST) {
      throw new BadInput(
          new Problem(
              Place.ofFile(file.getFileName().toString()),
              "",
              "",
              "cannot take so much",
              "write less"));
    }
    if (is.isEmpty()) {
      notes.remove(of);
    } else {
      notes.put(of, is);
    }
    List<String> lines = new ArrayList<>();
    lines.add("# Ticked and written down at the bench; the board keeps this file.");
    lines.add(KEY + (notes.isEmpty() ? ": []" : ":"));
    notes.forEach(
        (key, value) -> {
          lines.add("  - of: " + TextEdit.quoted(key));
          lines.add("    is: " + TextEdit.quoted(value));
        });
    kit.replace(file, String.join("\n", lines) + "\n");
  }

  /** The same for a page. */
  Json.Members json() {
    Map<String, Json> members = new LinkedHashMap<>();
    all().forEach((of, is) -> members.put(of, Json.text(is)));
    return new Json.Members(members);
  }
}
