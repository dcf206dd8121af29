package felloe.board;

import felloe.board.Handle.Kind;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Finds what can be taken hold of: each written point, and each clock position. */
final class Handles {

  /** Parts of the file that are about the plate's own face. */
  private static final List<String> ON_THE_FACE =
      List.of("outline", "windows", "holes", "engravings", "grips", "bore", "load");

  /** What is written from the middle of something else. */
  private static final List<String> ELSEWHERE = List.of("body", "bezel", "behind", "arm");

  private static final double CHORD = 0.02;

  private final Schema schema;
  private final Contour outline;
  private final List<Handle> found = new ArrayList<>();

  private Handles(Schema schema, Contour outline) {
    this.schema = schema;
    this.outline = outline;
  }

  /**
   * All of a shape file.
   *
   * @param outline of the plate, which clock positions lie on
   */
  static List<Handle> of(Schema schema, YamlValue root, Contour outline) {
    Handles handles = new Handles(schema, outline);
    if (root instanceof Mapping top) {
      for (String key : ON_THE_FACE) {
        Keyed one = top.entries().get(key);
        if (one != null) {
          handles.part(key, one.value());
        }
      }
    }
    return List.copyOf(handles.found);
  }

  private void part(String key, YamlValue value) {
    Optional<Schema> place = schema.key(key);
    if (place.isEmpty()) {
      return;
    }
    if (value instanceof Sequence list) {
      for (int i = 0; i < list.items().size(); i++) {
        String path = key + "[" + i + "]";
        Optional<Schema> item = place.get().as(value).item();
        if (item.isPresent() && list.items().get(i) instanceof Mapping group) {
          item(path, item.get(), group, key.equals("windows"));
        }
      }
    } else {
      walk(key, place.get(), value, Point.ORIGIN, 0);
    }
  }

  private void item(String path, Schema place, Mapping group, boolean window) {
    if (!window) {
      walk(path, place, group, Point.ORIGIN, 0);
      return;
    }
    Point at = point(value(group, "at")).orElse(Point.ORIGIN);
    double turn = Math.toRadians(figure(value(group, "turn")).orElse(0));
    for (Map.Entry<String, Keyed> one : group.entries().entrySet()) {
      String key = one.getKey();
      boolean own = !List.of("at", "places", "derived").contains(key);
      place
          .key(key)
          .ifPresent(
              s ->
                  walk(
                      Steps.key(path, key),
                      s,
                      one.getValue().value(),
                      own ? at : Point.ORIGIN,
                      own ? turn : 0));
    }
    boolean placed =
        group.entries().containsKey("at")
            || group.entries().containsKey("places")
            || group.entries().containsKey("derived");
    if (!placed) {
      found.add(new Handle(path + ".at", Kind.POINT, Point.ORIGIN, Point.ORIGIN, 0));
    }
  }

  private static YamlValue value(Mapping group, String key) {
    Keyed one = group.entries().get(key);
    return one == null ? null : one.value();
  }

  private void walk(String path, Schema place, YamlValue value, Point origin, double turn) {
    Schema schema = place.as(value);
    if (value instanceof Sequence && isPoint(place, schema)) {
      Handle raw = new Handle(path, Kind.POINT, Point.ORIGIN, origin, turn);
      point(value)
          .map(raw::placed)
          .ifPresent(at -> found.add(new Handle(path, Kind.POINT, at, origin, turn)));
    } else if (value instanceof Scalar one && place.is("clock")) {
      clock(one.text()).ifPresent(angle -> found.add(onOutline(path, angle)));
    } else if (value instanceof Mapping group) {
      if (group.entries().containsKey("corners")) {
        found.addAll(Bulges.of(path, group, new Handle(path, Kind.POINT, origin, origin, turn)));
      }
      for (Map.Entry<String, Keyed> one : group.entries().entrySet()) {
        String key = one.getKey();
        if (!ELSEWHERE.contains(key)) {
          schema
              .key(key)
              .ifPresent(s -> walk(Steps.key(path, key), s, one.getValue().value(), origin, turn));
        }
      }
    } else if (value instanceof Sequence list) {
      Optional<Schema> item = schema.item();
      for (int i = 0; item.isPresent() && i < list.items().size(); i++) {
        walk(path + "[" + i + "]", item.get(), list.items().get(i), origin, turn);
      }
    }
  }

  private static boolean isPoint(Schema place, Schema schema) {
    return place.is("point") || schema.is("point");
  }

  static Optional<Point> point(YamlValue value) {
    if (value instanceof Sequence list
        && list.items().size() == 2
        && list.items().get(0) instanceof Scalar x
        && list.items().get(1) instanceof Scalar y
        && x.length().isPresent()
        && y.length().isPresent()) {
      return Optional.of(new Point(x.length().getAsDouble(), y.length().getAsDouble()));
    }
    return Optional.empty();
  }

  static OptionalDouble figure(YamlValue value) {
    return value instanceof Scalar one ? one.length() : OptionalDouble.empty();
  }

  /** The direction of a clock position, radians from straight right. */
  static Optional<Double> clock(String text) {
    String[] parts = text.strip().split(":");
    try {
      double hours = Double.parseDouble(parts[0]);
      double minutes = parts.length > 1 ? Double.parseDouble(parts[1]) : 0;
      return Optional.of(Math.PI / 2 - (hours + minutes / 60) * Math.PI / 6);
    } catch (NumberFormatException none) {
      return Optional.empty();
    }
  }

  private Handle onOutline(String path, double angle) {
    Point along = Point.polar(1, angle);
    List<Point> chords = outline.chords(CHORD);
    double reach = 0;
    for (int i = 0; i < chords.size(); i++) {
      Point from = chords.get(i);
      Point to = chords.get((i + 1) % chords.size());
      double before = from.x() * along.y() - from.y() * along.x();
      double after = to.x() * along.y() - to.y() * along.x();
      if (before * after <= 0 && before != after) {
        Point meets = from.plus(to.minus(from), before / (before - after));
        reach = Math.max(reach, meets.x() * along.x() + meets.y() * along.y());
      }
    }
    double far = reach > 0 ? reach : outline.box().width() / 2;
    return new Handle(path, Kind.CLOCK, Point.polar(far, angle), Point.ORIGIN, 0);
  }
}
