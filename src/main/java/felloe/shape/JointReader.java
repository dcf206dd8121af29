package felloe.shape;

import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Joint.HandLoads;
import felloe.plate.Joint.Head;
import felloe.plate.Joint.InNut;
import felloe.plate.Joint.InTapped;
import felloe.plate.Joint.Into;
import felloe.plate.Joint.Nut;
import felloe.plate.Joint.Screw;
import felloe.plate.Joint.Surface;
import felloe.plate.Joint.Tapped;
import felloe.plate.Joint.Washer;
import felloe.plate.Place;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Nearest;
import felloe.yaml.NumberField;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what the maker says of the joints. Threads and strength classes are names here; whoever
 * plans the joints knows which there are.
 */
final class JointReader {

  private static final int MOST_JOINTS = 20;
  private static final int MOST_PARTS = 10;
  private static final int MOST_HOLES = 200;
  private static final double LONGEST = 500;
  private static final double THICKEST = 200;
  private static final double MOST_TORQUE = 10_000;
  private static final double MOST_FORCE = 100_000;

  private final Map<String, Hole> byLabel = new LinkedHashMap<>();
  private final Map<String, String> taken = new HashMap<>();
  private boolean allHolesKnown;
  private final Map<HoleRole, String> takenRoles = new EnumMap<>(HoleRole.class);

  JointReader(List<Hole> holes) {
    holes.forEach(hole -> byLabel.put(hole.label(), hole));
  }

  /** Reads the list. After a mistake above it holes may be missing, so none is then missed here. */
  List<Joint> read(Fields top) {
    allHolesKnown = top.good();
    return top.list("joints").atMost(MOST_JOINTS).each(this::joint);
  }

  private Optional<Joint> joint(Fields f) {
    Map<String, Place> places = new HashMap<>();
    places.put("", f.place());
    mark(f, "holes", "holes", places);
    Entry named = f.entry("holes");
    List<String> labels = List.of();
    Optional<HoleRole> role = Optional.empty();
    if (named.kind() == Entry.Kind.LIST) {
      labels = labels(named, f.path());
    } else {
      String word = named.oneOf("hub", "grip").required();
      role = Optional.of(word.equals("grip") ? HoleRole.GRIP : HoleRole.BOLT);
      if (f.good()) {
        takeRole(named, role.get(), f.path());
      }
    }
    Screw screw = screw(f.group("screw"), places);
    Optional<Washer> washer = f.oneOf("washer", Washer.class).optional();
    mark(f, "washer", "washer", places);
    Optional<List<Double>> front = parts(f, "front", places);
    Optional<List<Double>> back = parts(f, "back", places);
    Optional<Into> into = f.has("into") ? into(f.group("into"), places) : Optional.empty();
    boolean hub = isHub(role, labels);
    HandLoads loads = loads(f, hub, places);
    if (screw.head().filter(h -> h == Head.COUNTERSUNK).isPresent()
        && washer.filter(w -> w != Washer.NONE).isPresent()) {
      f.problem(
          "washer", "cannot lie under a countersunk head", "write none, or another screw.head");
    }
    List<String> holes = labels;
    Optional<HoleRole> all = role;
    return f.build(
        () -> new Joint(f.path(), all, holes, screw, washer, front, back, into, loads, places));
  }

  private boolean isHub(Optional<HoleRole> role, List<String> labels) {
    return role.map(r -> r == HoleRole.BOLT)
        .orElseGet(() -> labels.isEmpty() || byLabel.get(labels.get(0)).role() == HoleRole.BOLT);
  }

  private void takeRole(Entry named, HoleRole role, String path) {
    if (allHolesKnown && byLabel.values().stream().noneMatch(hole -> hole.role() == role)) {
      named.problem(
          "names holes that the plate has not",
          role == HoleRole.BOLT ? "add 'bolt_circles'" : "add 'holes' with 'role: grip'");
      return;
    }
    String before = takenRoles.putIfAbsent(role, path);
    if (before != null) {
      named.problem("names holes that " + before + " has already", "name each hole once");
    }
  }

  private List<String> labels(Entry named, String path) {
    List<String> good = new ArrayList<>();
    for (Entry item : named.list().atLeast(1).atMost(MOST_HOLES).entries()) {
      String label = item.text().required();
      Hole hole = byLabel.get(label);
      if (hole == null && !(allHolesKnown && !label.isEmpty())) {
        continue;
      }
      if (hole == null) {
        String all = "holes: " + String.join(", ", byLabel.keySet());
        item.problem(
            "is the label of no hole",
            Nearest.to(label, List.copyOf(byLabel.keySet()))
                .map(near -> "did you mean '" + near + "'? " + all)
                .orElse(all));
      } else if (hole != null && hole.role() == HoleRole.BORE) {
        item.problem("is the bore, which takes no screw", "leave it out");
      } else if (hole != null && taken.putIfAbsent(label, path) != null) {
        item.problem("is in " + taken.get(label) + " already", "name each hole once");
      } else if (hole != null) {
        good.add(label);
        if (hole.role() != byLabel.get(good.get(0)).role()) {
          item.problem(
              "is a " + hole.role().words() + ", and the first is another kind",
              "write a joint for each kind");
        }
      }
    }
    return good;
  }

  private static Screw screw(Fields f, Map<String, Place> places) {
    for (String key : List.of("thread", "head", "class", "length", "surface", "sunk")) {
      mark(f, key, "screw." + key, places);
    }
    Optional<String> thread = f.text("thread").optional();
    Optional<Head> head = f.oneOf("head", Head.class).optional();
    Optional<String> strength = f.text("class").optional();
    Optional<Double> length = boxed(f.length("length").positive().atMost(LONGEST));
    Optional<Surface> surface = f.oneOf("surface", Surface.class).optional();
    double sunk = f.length("sunk").notNegative().atMost(THICKEST).or(0);
    f.done();
    return f.good() ? new Screw(thread, head, strength, length, surface, sunk) : Screw.USUAL;
  }

  private static Optional<List<Double>> parts(Fields f, String key, Map<String, Place> places) {
    mark(f, key, key, places);
    if (!f.has(key)) {
      return Optional.empty();
    }
    List<Double> parts = new ArrayList<>();
    for (Entry item : f.list(key).atMost(MOST_PARTS).entries()) {
      double thickness = item.length().positive().atMost(THICKEST).required();
      if (!Double.isNaN(thickness)) {
        parts.add(thickness);
      }
    }
    return Optional.of(parts);
  }

  private static Optional<Into> into(Fields f, Map<String, Place> places) {
    for (String key : List.of("tapped", "depth", "through", "hole", "nut", "washer", "sunk")) {
      mark(f, key, "into." + key, places);
    }
    Optional<String> way = f.exactlyOneOf("tapped", "nut");
    Tapped material = f.oneOf("tapped", Tapped.class).or(Tapped.ALUMINIUM);
    Optional<Double> depth = boxed(f.length("depth").positive().atMost(LONGEST));
    boolean through = f.bool("through").or(false);
    Optional<Double> hole = boxed(f.length("hole").positive().atMost(THICKEST));
    Nut nut = f.oneOf("nut", Nut.class).or(Nut.PLAIN);
    Optional<Washer> washer = f.oneOf("washer", Washer.class).optional();
    double sunk = f.length("sunk").notNegative().atMost(THICKEST).or(0);
    boolean tapped = way.filter(w -> w.equals("tapped")).isPresent();
    for (String key : tapped ? List.of("washer", "sunk") : List.of("depth", "through", "hole")) {
      if (way.isPresent() && f.has(key)) {
        f.problem(
            key,
            tapped
                ? "belongs to a nut, not to a tapped hole"
                : "belongs to a tapped hole, not to" + " a nut",
            "leave it out");
      }
    }
    if (tapped && hole.isPresent() && material != Tapped.INSERT) {
      f.problem("hole", "is that of an insert", "write 'tapped: insert', or leave it out");
    }
    return f.build(
        () -> tapped ? new InTapped(material, depth, through, hole) : new InNut(nut, washer, sunk));
  }

  private static HandLoads loads(Fields joint, boolean hub, Map<String, Place> places) {
    if (!joint.has("loads")) {
      joint.allow("loads");
      return HandLoads.USUAL;
    }
    if (!hub) {
      joint.problem("loads", "are those of the wheel on its hub", "leave them out of this joint");
    }
    Fields f = joint.group("loads");
    for (String key : List.of("torque", "pull", "push")) {
      mark(f, key, "loads." + key, places);
    }
    Optional<Double> torque = boxed(f.number("torque").between(0, MOST_TORQUE));
    Optional<Double> pull = boxed(f.number("pull").between(0, MOST_FORCE));
    Optional<Double> push = boxed(f.number("push").between(0, MOST_FORCE));
    f.done();
    return new HandLoads(torque, pull, push);
  }

  private static Optional<Double> boxed(NumberField field) {
    OptionalDouble value = field.optional();
    return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
  }

  private static void mark(Fields f, String key, String path, Map<String, Place> places) {
    if (f.has(key)) {
      places.put(path, f.place(key));
    }
  }
}
