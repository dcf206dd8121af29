package felloe.measure;

import felloe.measure.Measured.Pair;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the tree of a measured file. */
final class MeasuredReader {

  private static final double FINEST = 0.001;
  private static final double COARSEST = 5;

  private final YamlTree tree;
  private final boolean countFromReadings;
  private final Problems problems = new Problems();
  private final MeasurePractice practice = MeasurePractice.standard();
  private final UnitConsistency units = new UnitConsistency(problems);
  private final List<Reading> readings = new ArrayList<>();
  private final List<Pair> waiting = new ArrayList<>();
  private HoleNames names;
  private OptionalDouble plusMinus = OptionalDouble.empty();

  /**
   * @param countFromReadings true when nothing but the readings tells how many holes there are
   */
  MeasuredReader(YamlTree tree, boolean countFromReadings) {
    this.tree = tree;
    this.countFromReadings = countFromReadings;
  }

  /**
   * Reads it.
   *
   * @throws BadInput with every problem of the file
   */
  Measured read() {
    Fields f = tree.fields(problems);
    Place place = f.has("holes") ? f.place("holes") : f.place();
    names = countFromReadings ? HoleNames.ofReadings(f.entry("readings")) : HoleNames.read(f);
    if (filled(f.entry("plus_minus"))) {
      plusMinus = plusMinus(f.entry("plus_minus"));
    }
    String sizeKey = f.has("screw_diameter") ? "screw_diameter" : "hole_diameter";
    f.atMostOneOf("hole_diameter", "screw_diameter");
    ContactFeature usual =
        sizeKey.startsWith("screw") ? ContactFeature.SCREWS : ContactFeature.HOLES;
    ContactFeature on = f.oneOf("on", ContactFeature.class).or(usual);
    Optional<Reading> size = size(f.entry(sizeKey));
    Optional<String> plate = f.text("plate").optional();
    Optional<String> revision = f.text("revision").optional();
    List<Fields> items = f.list("readings").atMost(Measured.MOST_READINGS).mappings();
    items.forEach(this::reading);
    f.done();
    units.check();
    problems.throwIfAny();
    Measured measured =
        new Measured(
            tree.name(), names.labels(), on, size, readings, waiting, plate, revision, place);
    List<Problem> odd = ReadingChecks.of(measured);
    odd.forEach(problems::add);
    problems.throwIfAny();
    return measured;
  }

  private static boolean filled(Entry entry) {
    return entry.present() && !blank(entry);
  }

  private static boolean blank(Entry entry) {
    return entry.value().orElseThrow() instanceof felloe.yaml.YamlValue.Scalar s && s.isNull();
  }

  private OptionalDouble plusMinus(Entry entry) {
    units.note(entry);
    return entry.length().atLeast(FINEST).atMost(COARSEST).optional();
  }

  /** The size of all holes; sizes of single holes become readings. */
  private Optional<Reading> size(Entry entry) {
    switch (entry.kind()) {
      case MISSING:
        return Optional.empty();
      case LIST:
        List<Entry> items = entry.list().exactly(names.count()).entries();
        for (int i = 0; i < items.size(); i++) {
          diameter(i, items.get(i)).ifPresent(readings::add);
        }
        return Optional.empty();
      case MAPPING:
        Fields group = entry.mapping().required();
        for (String key : group.keys()) {
          Entry item = group.entry(key);
          int hole = names.index(key, item);
          if (hole >= 0) {
            diameter(hole, item).ifPresent(readings::add);
          }
        }
        return Optional.empty();
      default:
        if (blank(entry)) {
          waiting.add(new Pair(0, 0, Optional.empty(), ReadingKind.DIAMETER));
          return Optional.empty();
        }
        return diameter(0, entry);
    }
  }

  private Optional<Reading> diameter(int hole, Entry entry) {
    if (!filled(entry)) {
      waiting.add(new Pair(hole, hole, Optional.empty(), ReadingKind.DIAMETER));
      return Optional.empty();
    }
    units.note(entry);
    double reads = entry.length().positive().atMost(1000).required();
    return Double.isNaN(reads)
        ? Optional.empty()
        : Optional.of(
            new Reading(
                hole,
                hole,
                Optional.empty(),
                ReadingKind.DIAMETER,
                reads,
                plusMinus.orElse(practice.pair()),
                entry.place()));
  }

  private void reading(Fields f) {
    f.allow("from", "to", "hole", "over", "reads", "plus_minus");
    int from = -1;
    int to = -1;
    Optional<ReferenceEdge> edge = Optional.empty();
    boolean same =
        text(f, "over").equals(ReadingKind.DIAMETER.words())
            && text(f, "to").equals(text(f, "from"));
    boolean single = f.has("hole") || !filled(f.entry("to")) || same;
    if (f.has("hole")) {
      from = names.index(f.text("hole").required(), f.entry("hole"));
      to = from;
      if (f.has("from") || f.has("to")) {
        f.problem("hole", "cannot stand beside from and to", "keep hole, or from and to");
      }
    } else {
      from = names.index(f.text("from").required(), f.entry("from"));
      if (!single) {
        String other = f.text("to").required();
        edge = edge(other);
        to = edge.isPresent() ? from : names.index(other, f.entry("to"));
        if (edge.isEmpty() && from == to && from >= 0) {
          f.problem(
              "to", "is the same hole as from", "name two holes, or write over: diameter alone");
        }
      } else {
        to = from;
      }
    }
    Optional<ReadingKind> over = over(f, single, edge);
    value(f, from, to, edge, over);
    f.done();
  }

  private static String text(Fields f, String key) {
    return f.entry(key).value().orElse(null) instanceof felloe.yaml.YamlValue.Scalar s
        ? s.text().strip()
        : "";
  }

  private static Optional<ReferenceEdge> edge(String word) {
    for (ReferenceEdge edge : ReferenceEdge.values()) {
      if (edge.words().equals(word)) {
        return Optional.of(edge);
      }
    }
    return Optional.empty();
  }

  private static Optional<ReadingKind> over(
      Fields f, boolean single, Optional<ReferenceEdge> edge) {
    ReadingKind[] allowed =
        single
            ? new ReadingKind[] {ReadingKind.DIAMETER}
            : edge.isPresent()
                ? new ReadingKind[] {
                  ReadingKind.CENTRES, ReadingKind.NEAR_SIDE, ReadingKind.FAR_SIDE
                }
                : new ReadingKind[] {ReadingKind.OUTSIDE, ReadingKind.INSIDE, ReadingKind.CENTRES};
    String[] words = new String[allowed.length];
    for (int i = 0; i < allowed.length; i++) {
      words[i] = allowed[i].words();
    }
    if (single && !f.has("over") && f.has("hole")) {
      return Optional.of(ReadingKind.DIAMETER);
    }
    if (single && !f.has("hole")) {
      boolean diameter =
          f.has("over")
              && f.text("over").optional().orElse("").equals(ReadingKind.DIAMETER.words());
      if (!diameter) {
        f.problem("to", "is missing", "name the other hole, or an edge such as left edge");
        return Optional.empty();
      }
    }
    Optional<String> word =
        f.has("over")
            ? f.entry("over").oneOf(words).optional()
            : Optional.ofNullable(f.entry("over").oneOf(words).required()).filter(w -> false);
    for (ReadingKind over : allowed) {
      if (word.isPresent() && over.words().equals(word.get())) {
        return Optional.of(over);
      }
    }
    return Optional.empty();
  }

  private void value(
      Fields f, int from, int to, Optional<ReferenceEdge> edge, Optional<ReadingKind> over) {
    Entry entry = f.entry("reads");
    OptionalDouble own =
        filled(f.entry("plus_minus")) ? plusMinus(f.entry("plus_minus")) : OptionalDouble.empty();
    if (entry.present() && blank(entry)) {
      if (from >= 0 && to >= 0 && over.isPresent()) {
        waiting.add(new Pair(from, to, edge, over.get()));
      }
      return;
    }
    units.note(entry);
    double reads = entry.length().positive().required();
    if (from < 0 || to < 0 || over.isEmpty() || Double.isNaN(reads) || !f.good()) {
      return;
    }
    // What the file says of all its readings is said with the calliper between holes in mind; from
    // an edge the same hand is no surer than usual.
    double all = plusMinus.orElse(practice.pair());
    double usual = edge.isPresent() ? Math.max(all, practice.edge()) : all;
    double width = own.isPresent() ? own.getAsDouble() : usual;
    readings.add(new Reading(from, to, edge, over.get(), reads, width, entry.place()));
  }
}
