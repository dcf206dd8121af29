package felloe.cure;

import felloe.cure.ShapeChange.Setting;
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

/** The plain figures of a shape file by the way to them, and where its items are written. */
final class ShapeFigures {

  private final Map<String, Double> figures = new LinkedHashMap<>();
  private final Map<Place, String> items = new HashMap<>();
  private final Map<String, Integer> counts = new HashMap<>();

  /** Those of a shape file with its overrides. */
  ShapeFigures(YamlTree tree) {
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
    } else if (value instanceof YamlValue.Scalar one && one.text().matches("-?\\d+(\\.\\d+)?")) {
      // Keys may still be written with hyphens.
      figures.put(one.path().replace('-', '_'), Double.parseDouble(one.text()));
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

  /** A figure; empty where it is not written, or with a unit. */
  Optional<Double> figure(String path) {
    return Optional.ofNullable(figures.get(path));
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
  ShapeChange change(String path, double to) {
    return ShapeChange.of(path, brief(figures.get(path)), brief(to));
  }

  /** The change of several figures by the same. */
  ShapeChange changes(List<String> paths, double by) {
    return new ShapeChange(
        paths.stream()
            .map(p -> new Setting(p, brief(figures.get(p)), brief(figures.get(p) + by)))
            .toList());
  }

  static String brief(double figure) {
    return Numbers.brief(figure, 3);
  }
}
