package felloe.yaml;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Layout.Leaf;
import felloe.yaml.Layout.Node;
import felloe.yaml.Layout.Part;
import felloe.yaml.Layout.Seat;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A YAML file's text, changed one value at a time. Comments, the order of keys, their spelling,
 * quotes, line ends, indentation, empty lines and a byte order mark stay as the maker wrote them: a
 * change touches its own characters, and the spaces before a comment that is to stay in its column.
 *
 * <p>Paths are those of {@link Overrides}. A value is YAML on its own, as an override takes it; a
 * text that is not known to be one is {@linkplain #quoted quoted} first. Values keep the style of
 * the list or group that they come into; a new key at the top goes to the end of the file. A
 * comment belongs to what it stands behind, and so do comments in the lines below it that start
 * farther to the right; other comments belong to what follows.
 *
 * <p>Each new text is read again, and says what the tree with the change says. Where a layout is so
 * odd that nothing simpler does, the list or group round the value is written anew on one line, and
 * loses the comments in it.
 *
 * <p>All methods refuse a path that is none, and a value that cannot be read or has no place to go,
 * with {@link BadInput}; its problems point at the value in the file, or at what is nearest to it.
 */
public final class TextEdit {

  /** The longest new key as it is written, in characters; YAML wants its colon within 1024. */
  private static final int LONGEST_KEY = 1000;

  private static final int KEYS_SHOWN = 12;
  private static final String MARK = "\uFEFF";

  private final String mark;
  private final YamlTree tree;
  private final Layout layout;

  /**
   * Characters of a text.
   *
   * @param from the first
   * @param to the end of the last
   */
  public record Span(int from, int to) {}

  private TextEdit(String mark, YamlTree tree, String clean) {
    this.mark = mark;
    this.tree = tree;
    this.layout = Layout.of(clean);
  }

  /**
   * @param name the file's name for messages
   * @throws BadInput if the text cannot be read; all problems found
   */
  public static TextEdit of(String name, String text) {
    YamlTree tree = YamlTree.parse(name, text);
    boolean marked = text.startsWith(MARK);
    return new TextEdit(marked ? MARK : "", tree, marked ? text.substring(1) : text);
  }

  /** The values as they are now. */
  public YamlValue root() {
    return tree.root();
  }

  /** The text as it is now. */
  public String text() {
    return mark + layout.lines().text();
  }

  /**
   * The text with a value set. Missing groups are made; a position just past a list's end adds to
   * it. A value that is there already leaves the text as it is.
   *
   * @param value such as {@code 60 mm}, {@code [1, 2]} or {@code {a: 1}}
   */
  public TextEdit set(String path, String value) {
    ValuePath at = path(path);
    YamlValue fresh = read(at, value);
    Problems problems = new Problems();
    Place place = place(at);
    Optional<YamlValue> wanted =
        new OverrideReader(place, problems).put(tree.root(), at, fresh, place);
    problems.throwIfAny();
    checkKeys(at);
    List<List<Cut>> ways = new ArrayList<>();
    Writing writing = new Writing(layout);
    forms(value, fresh).forEach(form -> ways.addAll(writing.set(at, form)));
    return changed(at, wanted.orElseThrow(), ways);
  }

  /**
   * The text with a value put into a list before the item at a position; the others move on. At the
   * end of a list, or where there is none yet, it is {@link #set}.
   */
  public TextEdit insert(String path, String value) {
    ValuePath at = path(path);
    if (!at.isItem()) {
      throw bad(at, "", "is no position in a list", "write it as " + at + "[0]");
    }
    if (TreeChange.find(tree.root(), at).isEmpty()) {
      return set(path, value);
    }
    YamlValue fresh = read(at, value);
    Writing writing = new Writing(layout);
    return changed(
        at,
        TreeChange.insert(tree.root(), at, fresh),
        forms(value, fresh).stream().map(form -> writing.insert(at, form)).toList());
  }

  /**
   * The text without a key or an item: its lines and the comments that belong to it are taken out.
   * A list or group that would be left empty goes with it, but not the top.
   */
  public TextEdit remove(String path) {
    ValuePath at = path(path);
    if (TreeChange.find(tree.root(), at).isEmpty()) {
      throw bad(at, "", "is not in the file", whatIsThere(at));
    }
    return changed(at, TreeChange.remove(tree.root(), at), new Removal(layout).ways(at));
  }

  /**
   * A key with all in it, or an item with its hyphen, in characters (UTF-16) of {@link #text};
   * empty where there is none.
   */
  public Optional<Span> span(String path) {
    ValuePath at = path(path);
    List<Seat> seats = layout.seats(at);
    if (seats.size() < at.steps().size()) {
      return Optional.empty();
    }
    Part part = seats.get(seats.size() - 1).part();
    return Optional.of(new Span(mark.length() + part.from(), mark.length() + part.to()));
  }

  /** A text as a value: in double quotes, on one line, and read back as it is. */
  public static String quoted(String text) {
    return FlowText.quoted(text);
  }

  /** Refuses new keys that no file may have, though an override may. */
  private void checkKeys(ValuePath at) {
    List<ValuePath> steps = at.steps();
    for (ValuePath step : steps.subList(layout.seats(at).size(), steps.size())) {
      if (step.isItem()) {
        continue;
      }
      if (step.key().isBlank()) {
        throw bad(at, "", "must have a word for each key", "");
      }
      if (FlowText.key(step.key()).length() > LONGEST_KEY) {
        throw bad(
            at, step.key(), "makes a key of more than 1000 characters", "choose a shorter one");
      }
    }
  }

  private ValuePath path(String path) {
    Place file = Place.ofFile(tree.name());
    if (path.length() > OverrideReader.LONGEST) {
      throw new BadInput(new Problem(file, "", path, "is longer than 65536 characters", ""));
    }
    String cure = "write it as outline.width or windows[0].radius";
    return PathReader.whole(path)
        .orElseThrow(() -> new BadInput(new Problem(file, "", path, "must be a path", cure)));
  }

  private YamlValue read(ValuePath at, String value) {
    if (value.length() > OverrideReader.LONGEST) {
      throw bad(at, value, "is longer than 65536 characters", "change the file instead");
    }
    Problems problems = new Problems();
    Place place = place(at);
    Optional<YamlValue> fresh = new OverrideReader(place, problems).value(at, place, value);
    problems.throwIfAny();
    return fresh.orElseThrow();
  }

  /** How a value may be written on one line: as it was given, if that will do. */
  private static Set<String> forms(String value, YamlValue fresh) {
    Set<String> forms = new LinkedHashSet<>();
    String clean = value.startsWith(MARK) ? value.substring(1) : value;
    Layout given = Layout.of(clean);
    Node node = given.root();
    boolean block =
        node instanceof Leaf leaf
            && !leaf.isEmpty()
            && (given.lines().has(leaf.from(), '|') || given.lines().has(leaf.from(), '>'));
    if (!block && given.lines().isOneLine(node.from(), node.to())) {
      forms.add(clean.substring(node.from(), node.to()));
    }
    if (fresh instanceof YamlValue.Scalar scalar && !scalar.quoted()) {
      forms.add(scalar.text());
    }
    forms.add(FlowText.of(fresh));
    return forms;
  }

  private TextEdit changed(ValuePath at, YamlValue wanted, List<List<Cut>> ways) {
    if (TreeChange.alike(tree.root(), wanted)) {
      return this;
    }
    if (TreeChange.depth(wanted) > TreeBuilder.DEEPEST) {
      throw bad(at, "", "would be nested deeper than 50 levels", "");
    }
    if (TreeChange.count(wanted) > TreeBuilder.MOST_VALUES) {
      throw bad(at, "", "is one value too many: a file may hold 100000", "");
    }
    return firstOf(ways, wanted)
        .or(() -> firstOf(larger(at, wanted), wanted))
        .orElseThrow(
            () -> new IllegalStateException("no way to change " + at + " in " + tree.name()));
  }

  private Optional<TextEdit> firstOf(List<List<Cut>> ways, YamlValue wanted) {
    return ways.stream().flatMap(way -> tried(way, wanted).stream()).findFirst();
  }

  /**
   * Ways that write what is round a value anew on one line, from the inside out, but never the
   * whole file. No layout is known that needs them.
   */
  List<List<Cut>> larger(ValuePath at, YamlValue wanted) {
    List<List<Cut>> ways = new ArrayList<>();
    List<Seat> seats = layout.seats(at);
    for (int i = seats.size() - 1; i >= 0; i--) {
      Seat seat = seats.get(i);
      TreeChange.find(wanted, at.steps().get(i))
          .ifPresent(value -> ways.add(new Writing(layout).replace(seat, FlowText.of(value))));
    }
    return ways;
  }

  private Optional<TextEdit> tried(List<Cut> way, YamlValue wanted) {
    String fresh = Cut.apply(layout, way);
    if (fresh.length() > SourceText.LARGEST) {
      throw SourceText.tooLarge(Place.ofFile(tree.name()));
    }
    try {
      YamlTree read = YamlTree.parse(tree.name(), fresh);
      return TreeChange.saysAll(wanted, read.root())
          ? Optional.of(new TextEdit(mark, read, fresh))
          : Optional.empty();
    } catch (BadInput otherwise) {
      return Optional.empty();
    }
  }

  private BadInput bad(ValuePath at, String value, String wanted, String cure) {
    return new BadInput(new Problem(place(at), at.toString(), value, wanted, cure));
  }

  /** Where the value stands, or the last on the way to it that is there. */
  private Place place(ValuePath at) {
    return nearest(at).place();
  }

  private YamlValue nearest(ValuePath at) {
    List<ValuePath> steps = at.steps();
    int there = layout.seats(at).size();
    return there == 0
        ? tree.root()
        : TreeChange.find(tree.root(), steps.get(there - 1)).orElseThrow();
  }

  private String whatIsThere(ValuePath at) {
    YamlValue nearest = nearest(at);
    String whole = nearest.path().isEmpty() ? "the file" : nearest.path();
    ValuePath missing = at.steps().get(layout.seats(at).size());
    if (nearest instanceof Mapping group && !missing.isItem() && !group.entries().isEmpty()) {
      String keys =
          group.entries().keySet().stream()
              .limit(KEYS_SHOWN)
              .map(key -> ValuePath.TOP.key(key).toString())
              .collect(Collectors.joining(", "));
      return whole + " has: " + keys + (group.entries().size() > KEYS_SHOWN ? ", …" : "");
    }
    if (nearest instanceof Sequence list && missing.isItem() && !list.items().isEmpty()) {
      int most = list.items().size() - 1;
      return whole + (most == 0 ? " has [0] only" : " has [0] to [" + most + "]");
    }
    return whole + " is " + OverrideReader.kind(nearest);
  }
}
