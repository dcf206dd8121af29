package felloe.board;

import felloe.board.Schema.Kind;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.service.NewShape;
import felloe.shape.ShapeFile;
import felloe.yaml.BuiltIn;
import felloe.yaml.FlowText;
import felloe.yaml.TextEdit;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.List;
import java.util.Optional;

/** Carries out a change of a shape file's text: pure, one text in, another out. */
final class Editing {

  private final Schema schema;
  private final String name;
  private final TextEdit text;
  private final YamlValue root;

  /**
   * @param name of the shape file, for messages
   * @throws BadInput where the text cannot be read
   */
  Editing(Schema schema, String name, String text) {
    this.schema = schema;
    this.name = name;
    this.text = TextEdit.of(name, text);
    this.root = this.text.root();
  }

  /** A value written as it was typed, in quotes where it would not be read else. */
  String written(String path, String typed) {
    return text.set(path, value(path, typed)).text();
  }

  private String value(String path, String typed) {
    String plain = typed.strip();
    Optional<Schema> place = schema.at(path);
    boolean words = place.isPresent() && place.get().kind() == Kind.TEXT && !plain.startsWith("[");
    if (words || plain.isEmpty()) {
      return TextEdit.quoted(plain);
    }
    try {
      YamlTree.parse(name, "v: " + plain);
      return plain;
    } catch (BadInput unreadable) {
      return TextEdit.quoted(plain);
    }
  }

  /** The rise of an edge; a bare corner becomes a group that has one. */
  String risen(String path, String rise) {
    String corner = Steps.above(path);
    return find(corner)
        .filter(v -> v instanceof Sequence)
        .map(at -> text.set(corner, "{at: " + FlowText.of(at) + ", rise: " + rise + "}").text())
        .orElseGet(() -> text.set(path, rise).text());
  }

  /** A figure made more or less. */
  String stepped(String path, int by, boolean fine) {
    Schema place = place(path);
    String now = find(path).map(v -> v instanceof Scalar s ? s.text() : "").orElse("");
    return Nudge.of(now, by, fine, place)
        .map(to -> text.set(path, to).text())
        .orElseThrow(
            () -> refused(path, now, "cannot be stepped", "type the figure that you want"));
  }

  /** A key added to a group; of keys that exclude each other it takes the place of the other. */
  String added(String path, String key) {
    Schema group = path.isEmpty() ? schema : place(path).as(Kind.GROUP);
    Schema one =
        group.key(key).orElseThrow(() -> refused(path, key, "is no key here", "choose another"));
    TextEdit changed = text.set(Steps.key(path, key), first(path, key, one));
    boolean choice = group.oneOf().stream().anyMatch(set -> set.contains(key));
    if (choice && find(path).orElse(root) instanceof Mapping there) {
      for (String other : there.entries().keySet()) {
        boolean excluded =
            !other.equals(key)
                && group.oneOf().stream().anyMatch(set -> set.contains(other))
                && group.oneOf().stream()
                    .noneMatch(set -> set.contains(other) && set.contains(key));
        if (excluded) {
          changed = changed.remove(Steps.key(path, other));
        }
      }
    }
    return changed.text();
  }

  /**
   * Outlines begin as the files to start from have them, other things as is usual: what the schema
   * makes up is no wheel.
   */
  private static String first(String path, String key, Schema place) {
    if (path.equals("outline") && ShapeFile.outlines().contains(key)) {
      YamlValue start = YamlTree.parse(key, NewShape.text(key)).root();
      return find(start, "outline." + key).map(FlowText::of).orElseThrow();
    }
    return usual(Steps.key(path, key)).orElseGet(place::first);
  }

  private static Optional<String> usual(String place) {
    YamlValue all = BuiltIn.tree("/felloe/board/first.yaml").root();
    return all instanceof Mapping known && known.entries().containsKey(place)
        ? Optional.of(FlowText.of(known.entries().get(place).value()))
        : Optional.empty();
  }

  /** One more in a list, to begin with. */
  String appended(String path) {
    Schema list = place(path).as(Kind.LIST);
    int size = find(path).map(v -> v instanceof Sequence s ? s.items().size() : 0).orElse(0);
    String first = usual(path + "[]").orElseGet(() -> list.item().map(Schema::first).orElse("~"));
    return text.set(path + "[" + size + "]", first).text();
  }

  /** A key or one of a list taken out. */
  String removed(String path) {
    return text.remove(path).text();
  }

  private Schema place(String path) {
    return schema
        .at(path)
        .orElseThrow(() -> refused(path, "", "is no place of a shape file", "choose another"));
  }

  private Optional<YamlValue> find(String path) {
    return find(root, path);
  }

  /** What is written at the end of a way. */
  static Optional<YamlValue> find(YamlValue root, String path) {
    YamlValue at = root;
    for (String step : Steps.of(path)) {
      if (step.startsWith("[") && at instanceof Sequence list) {
        int index = Integer.parseInt(step.substring(1, step.length() - 1));
        at = index < list.items().size() ? list.items().get(index) : null;
      } else if (at instanceof Mapping group && group.entries().containsKey(step)) {
        at = group.entries().get(step).value();
      } else {
        at = null;
      }
      if (at == null) {
        return Optional.empty();
      }
    }
    return Optional.of(at);
  }

  private BadInput refused(String path, String value, String wanted, String cure) {
    return new BadInput(List.of(new Problem(Place.ofFile(name), path, value, wanted, cure)));
  }
}
