package felloe.hub;

import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Basis;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/** Reads a hub spec. */
final class HubReader {

  private static final int MOST_SCREWS = 24;
  private static final String[] RING_KEYS = {"count", "pcd", "thread", "first", "plate-hole"};

  private HubReader() {}

  /**
   * Reads one.
   *
   * @throws BadInput with every problem of the file
   */
  static HubSpec read(YamlTree tree) {
    Problems problems = new Problems();
    Fields f = tree.fields(problems);
    f.integer("felloe-hub").between(1, 1).required();
    String name = f.text("name").required();
    if (!name.isEmpty() && !name.matches("[a-z0-9][a-z0-9.-]*")) {
      f.problem("name", "must be small letters, digits, dots and hyphens", "write it like 6x70-m5");
    }
    String title = f.text("title").or(name);
    List<String> keys = new ArrayList<>(List.of(RING_KEYS));
    Optional<HubRing> ring = ring(f);
    OptionalDouble pilot = diameter(f, "pilot", keys);
    OptionalDouble bore = diameter(f, "bore", keys);
    if (pilot.isPresent() && bore.isPresent() && bore.getAsDouble() < pilot.getAsDouble()) {
      f.problem("bore", "must be at least the pilot", "raise bore or lower pilot");
    }
    double tolerance = f.length("position-tolerance").notNegative().atMost(5).required();
    keys.add("position-tolerance");
    Optional<HubRing> second = Optional.empty();
    RingUse use = RingUse.EITHER;
    if (f.has("second")) {
      Fields two = f.group("second");
      use = two.oneOf("use", RingUse.class).required();
      second = ring(two);
      for (String key : RING_KEYS) {
        keys.add("second." + key);
      }
      two.done();
    }
    Map<String, Basis> bases = bases(f.entry("basis"), keys);
    f.done();
    problems.throwIfAny();
    return new HubSpec(
        name,
        title,
        ring.orElseThrow(),
        second,
        use,
        boxed(pilot),
        boxed(bore),
        tolerance,
        bases,
        f.place());
  }

  private static OptionalDouble diameter(Fields f, String key, List<String> keys) {
    if (f.has(key)) {
      keys.add(key);
    }
    return f.length(key).positive().atMost(1000).optional();
  }

  private static Optional<Double> boxed(OptionalDouble value) {
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  private static Optional<HubRing> ring(Fields f) {
    int count = f.integer("count").between(1, MOST_SCREWS).required();
    double pcd = f.length("pcd").positive().atMost(1000).required();
    String[] names = ScrewThreads.names().toArray(new String[0]);
    String name = f.entry("thread").oneOf(names).required();
    double first = f.angle("first").between(-360, 360).or(90);
    ScrewThread thread = f.good() ? ScrewThreads.find(name).orElseThrow() : null;
    double screw = thread == null ? Double.NaN : thread.diameter();
    double hole =
        f.length("plate-hole")
            .atLeast(
                screw - Tolerances.SAME_POINT, "the screw's diameter", "see the series of ISO 273")
            .atMost(100)
            .or(thread == null ? Double.NaN : thread.medium());
    if (f.good() && count > 1 && CalliperFigures.chord(pcd, count, 1) < screw) {
      f.problem(
          "pcd", "is so small that neighbouring screws overlap", "raise it or lower the count");
    }
    return f.good()
        ? Optional.of(new HubRing(count, pcd, thread, Math.toRadians(first), hole))
        : Optional.empty();
  }

  /** One basis for all figures, or a group with one for each key and {@code all} for the rest. */
  private static Map<String, Basis> bases(Entry entry, List<String> keys) {
    Map<String, Basis> bases = new TreeMap<>();
    if (entry.kind() == Entry.Kind.MAPPING) {
      Fields group = entry.mapping().required();
      Optional<Basis> all = BasisEntry.read(group.entry("all"));
      List<String> without = new ArrayList<>();
      for (String key : keys) {
        String first = key.substring(key.indexOf('.') + 1);
        Basis basis = BasisEntry.read(group.entry(key)).orElse(null);
        if (basis == null && !group.has(key)) {
          basis = bases.getOrDefault(first, all.orElse(null));
        }
        if (basis == null) {
          without.add(key);
        } else {
          bases.put(key, basis);
        }
      }
      if (!without.isEmpty() && group.good()) {
        group.problem(
            "must say where " + String.join(", ", without) + " comes from",
            "add a line for each, or 'all:' with " + Basis.WANTED);
      }
      group.done();
      return bases;
    }
    if (!entry.present()) {
      entry.text().required();
      return bases;
    }
    Optional<Basis> basis = BasisEntry.read(entry);
    for (String key : keys) {
      basis.ifPresent(b -> bases.put(key, b));
    }
    return bases;
  }
}
