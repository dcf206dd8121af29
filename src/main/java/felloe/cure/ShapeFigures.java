package felloe.cure;

import felloe.geometry.Numbers;
import felloe.plate.Place;
import felloe.yaml.YamlTree;
import felloe.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The figures of a shape file by the way to them, lengths in mm whatever their unit, and where its
 * items are written. What is written with a unit is changed in mm, and says so.
 */
public final class ShapeFigures {

  /**
   * A figure.
   *
   * @param value a length in mm, or a plain number
   * @param text as it is written
   */
  private record Written(double value, String text) {

    private static final Pattern PLAIN = Pattern.compile("[-+.\\deE]+");

    /** The same as text with another value. */
    String changed(double to) {
      return brief(to) + (PLAIN.matcher(text).matches() ? "" : " mm");
    }
  }

  private final Map<String, Written> figures = new LinkedHashMap<>();
  private final Map<Place, String> items = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** Those of a shape file with its overrides. */
  public ShapeFigures(YamlTree tree) {
    walk(tree.root());
  }

  private void walk(YamlValue value) {
    if (value instanceof YamlValue.Mapping group) {
      group.entries().values().forEach(keyed -> walk(keyed.value()));
    } else if (value instanceof YamlValue.Sequence list) {
      counts.put(list.path(), list.items().size());
      for (YamlValue item : list.items()) {
        items.putIfAbsent(item.place(), item.path());
        walk(item);
      }
    } else if (value instanceof YamlValue.Scalar one) {
      // Keys may still be written with hyphens.
      String path = one.path().replace('-', '_');
      String text = one.text().strip();
      one.length().ifPresent(mm -> figures.put(path, new Written(mm, text)));
    }
  }

  /** The way to what is written at a place; empty where nothing of a list is. */
  Optional<String> item(Place place) {
    return Optional.ofNullable(items.get(place));
  }

  /** How many items a list has; 0 where there is none. */
  int count(String list) {
    return counts.getOrDefault(list, 0);
  }

  /** A figure, mm where it is a length; empty where it is not written. */
  public Optional<Double> figure(String path) {
    return Optional.ofNullable(figures.get(path)).map(Written::value);
  }

  /** The ways to all figures, in the order of the file. */
  public List<String> paths() {
    return List.copyOf(figures.keySet());
  }

  /** The ways to all figures below a way that end with a key. */
  List<String> below(String path, String key) {
    List<String> found = new ArrayList<>();
    for (String one : figures.keySet()) {
      if (one.startsWith(path) && one.endsWith("." + key)) {
        found.add(one);
      }
    }
    return found;
  }

  /** The change of one figure that is written. */
  public ShapeChange change(String path, double to) {
    Written now = figures.get(path);
    return ShapeChange.of(path, now.text(), now.changed(to));
  }

  /**
   * The change of a figure that need not be written.
   *
   * @param now what is taken where it is not written
   */
  ShapeChange change(String path, double now, double to) {
    return figures.containsKey(path)
        ? change(path, to)
        : ShapeChange.of(path, brief(now), brief(to));
  }

  /** The change of several figures by the same. */
  ShapeChange changes(List<String> paths, double by) {
    return new ShapeChange(
        paths.stream()
            .flatMap(p -> change(p, figures.get(p).value() + by).settings().stream())
            .toList());
  }

  static String brief(double figure) {
    return Numbers.brief(figure, 3);
  }
}
