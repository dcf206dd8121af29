package felloe.yaml;

import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;

/**
 * Builds the tree from the parser's events while the text is being read, so that a file that is too
 * deep, too long or full of aliases is refused where the trouble starts and nothing is ever
 * expanded.
 *
 * <p>Aliases and anchors are refused altogether: an aliased value would have two places, no file of
 * this kind needs one, and without them there is nothing that could swell.
 */
final class TreeBuilder {

  /** The deepest nesting of lists and groups. */
  static final int DEEPEST = 50;

  /** The greatest number of values in one file; a tree of this size takes about 16 MB. */
  static final int MOST_VALUES = 100_000;

  private final String name;
  private final Place option;
  private final String text;
  private final Problems problems;
  private Iterator<Event> events;
  private Mark last;
  private int values;

  /** Ends the building; the problem has been reported. */
  private static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Stop() {
      super(null, null, false, false);
    }
  }

  /**
   * @param name the file's name
   * @param option where the text was given, an option or the value of a file that it replaces; null
   *     when it is the file itself
   * @param text the text, already checked by {@link SourceText}
   */
  TreeBuilder(String name, Place option, String text, Problems problems) {
    this.name = name;
    this.option = option;
    this.text = text;
    this.problems = problems;
  }

  /**
   * The value that the text holds; a null scalar when it holds none.
   *
   * @param route the way to the value
   * @return empty when the text cannot be read on; the problem has then been reported
   */
  Optional<YamlValue> build(ValuePath route) {
    try {
      events = events(name, text);
      return Optional.of(document(route));
    } catch (Stop stop) {
      return Optional.empty();
    } catch (RuntimeException failure) {
      // The library also throws plain runtime exceptions for some malformed escapes.
      problems.add(new SyntaxWords(text, this::place).problem(failure, last));
      return Optional.empty();
    }
  }

  /**
   * What the library's parser finds in a text, while it reads.
   *
   * @param name what the library calls the text
   */
  static Iterator<Event> events(String name, String text) {
    LoadSettings settings =
        LoadSettings.builder()
            .setLabel(name)
            .setCodePointLimit(SourceText.LARGEST + 1)
            .setParseComments(false)
            // With a smaller buffer the scanner copies it again and again within a long token:
            // 20 s for one word of 8 MiB, a tenth of a second with this.
            .setBufferSize(Math.max(1024, text.length() + 1))
            .build();
    return new Parse(settings).parseString(text).iterator();
  }

  private YamlValue document(ValuePath route) {
    next();
    Event start = next();
    if (start.getEventId() == Event.ID.StreamEnd) {
      Place top = option == null ? Place.of(name, 1, 1) : option;
      return new Scalar(top, route, "", false);
    }
    YamlValue value = value(next(), route, 0);
    next();
    Event end = next();
    if (end.getEventId() != Event.ID.StreamEnd) {
      report(
          end,
          "",
          "",
          "a second document starts here ('---')",
          "keep one document in a file; split it into two files");
    }
    return value;
  }

  private YamlValue value(Event event, ValuePath route, int depth) {
    if (++values > MOST_VALUES) {
      report(event, route.toString(), "", "is one value too many: a file may hold 100000", "");
      throw new Stop();
    }
    if (event instanceof AliasEvent alias) {
      report(
          event,
          route.toString(),
          "*" + alias.getAlias().getValue(),
          "stands for a value written elsewhere (an alias), which is not read here",
          "write the value itself; put a text that starts with * in quotes");
      return new Scalar(place(event), route, "", true);
    }
    refuseAnchorAndTag(event, route);
    if (event instanceof ScalarEvent scalar) {
      return new Scalar(place(event), route, scalar.getValue(), !scalar.isPlain());
    }
    if (depth == DEEPEST) {
      report(
          event, "", "", "is nested deeper than 50 levels", "check the brackets and indentation");
      throw new Stop();
    }
    return event instanceof MappingStartEvent group
        ? mapping(group, route, depth)
        : sequence(event, route, depth);
  }

  private void refuseAnchorAndTag(Event event, ValuePath route) {
    if (((NodeEvent) event).getAnchor().isPresent()) {
      report(
          event,
          route.toString(),
          "&" + ((NodeEvent) event).getAnchor().get().getValue(),
          "marks a value for use elsewhere (an anchor), which is not read here",
          "take it out; put a text that starts with & in quotes");
    }
    Optional<String> tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : ((CollectionStartEvent) event).getTag();
    if (tag.isPresent()) {
      report(
          event,
          route.toString(),
          tag.get().replaceFirst("^tag:yaml\\.org,2002:", "!!"),
          "is a type tag, which is not read here",
          "take it out; put a text that starts with ! in quotes");
    }
  }

  private Sequence sequence(Event start, ValuePath route, int depth) {
    List<YamlValue> items = new ArrayList<>();
    for (Event e = next(); e.getEventId() != Event.ID.SequenceEnd; e = next()) {
      items.add(value(e, route.item(items.size()), depth + 1));
    }
    return new Sequence(place(start), route, items);
  }

  private Mapping mapping(MappingStartEvent start, ValuePath route, int depth) {
    Map<String, Keyed> entries = new LinkedHashMap<>();
    YamlValue before = null;
    for (Event e = next(); e.getEventId() != Event.ID.MappingEnd; e = next()) {
      if (start.isFlow() && e instanceof ScalarEvent rest && isComma(before, rest)) {
        report(
            e,
            route.toString(),
            rest.getValue(),
            "stands alone after a number and a comma",
            "a decimal comma must be a point");
        value(next(), route.key("?"), depth + 1);
        continue;
      }
      Optional<String> key = key(e, route, depth);
      Place keyPlace = place(e);
      YamlValue value = value(next(), route.key(key.orElse("?")), depth + 1);
      if (key.isEmpty()) {
        continue;
      }
      before = value;
      Keyed first = entries.putIfAbsent(key.get(), new Keyed(keyPlace, value));
      if (first != null) {
        problems.add(
            new Problem(
                keyPlace,
                route.key(key.get()).toString(),
                "",
                "is given a second time; the first is " + where(first.keyPlace()),
                "keep one of them"));
      }
    }
    return new Mapping(place(start), route, entries);
  }

  /** Whether {@code {a: 40,5}} was written: a number, and then digits where a key should be. */
  private static boolean isComma(YamlValue before, ScalarEvent key) {
    return before instanceof Scalar number
        && key.isPlain()
        && Quantity.startsWithDigit(key.getValue())
        && key.getValue().matches("[0-9]+( *[a-z]+)?")
        && number.text().matches("-?[0-9]+");
  }

  private String where(Place first) {
    if (option == null) {
      return "on line " + first.line();
    }
    return option.isOption() ? "in the same override" : "in the same value";
  }

  private Optional<String> key(Event event, ValuePath route, int depth) {
    if (!(event instanceof ScalarEvent scalar)) {
      report(
          event, route.toString(), "", "has a list or a group as a key", "use a word as the key");
      value(event, route.key("?"), depth + 1);
      return Optional.empty();
    }
    refuseAnchorAndTag(event, route);
    String key = scalar.getValue();
    if (scalar.isPlain() && key.equals("<<")) {
      report(
          event,
          route.toString(),
          "<<",
          "merges another group into this one, which is not read here",
          "write the keys out");
      return Optional.empty();
    }
    boolean word =
        scalar.isPlain()
            ? !new Scalar(place(event), route, key, false).isNull()
                && Quantity.plainNumber(key).isEmpty()
                && !key.equalsIgnoreCase("true")
                && !key.equalsIgnoreCase("false")
            : !key.isBlank();
    if (!word) {
      report(
          event,
          route.toString(),
          key,
          "must be a word to be a key",
          key.isBlank() ? "write a key before the colon" : "put it in quotes if it is a name");
      return Optional.empty();
    }
    return Optional.of(key);
  }

  private Event next() {
    Event event = events.next();
    last = event.getStartMark().orElse(last);
    return event;
  }

  private Place place(Event event) {
    return place(event.getStartMark().orElse(last));
  }

  private Place place(Mark mark) {
    if (option != null) {
      return option;
    }
    return mark == null
        ? Place.of(name, 1, 1)
        : Place.of(name, mark.getLine() + 1, mark.getColumn() + 1);
  }

  private void report(Event event, String who, String value, String wanted, String cure) {
    problems.add(new Problem(place(event), who, value, wanted, cure));
  }
}
