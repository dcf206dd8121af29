package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Body;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.HubPattern;
import felloe.plate.HubPatterns;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Nearest;
import felloe.yaml.NumberField;
import felloe.yaml.WholeField;
import felloe.yaml.YamlValue;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the bolt circles, the bore, and single holes and rows of holes. */
final class HoleReader {

  /** No drill is finer, mm; and no row of holes is nearer to the outline. */
  private static final double SMALLEST = 0.1;

  private static final int MOST_CIRCLES = 12;
  private static final int MOST_ON_A_CIRCLE = 60;
  private static final int MOST_ITEMS = 500;
  private static final int MOST_IN_A_ROW = 200;
  private static final int MOST_HOLES = 2_000;
  private static final int MOST_INSETS = 8;

  /** Stands in where no hub is named or known; the reading then fails or needs no figure of it. */
  private static final HubPattern NO_HUB =
      new HubPattern("", 1, 1, 1, Math.PI / 2, Optional.empty());

  private final GeometryProblems reports;
  private final Labels labels;
  private final Optional<Contour> outline;
  private final HubPatterns hubs;
  private final BodyReader bodies;
  private final List<Hole> holes = new ArrayList<>();
  private final List<BoltCircle> boltCircles = new ArrayList<>();
  private final Map<Double, List<Region>> insides = new HashMap<>();

  HoleReader(GeometryProblems reports, Labels labels, Optional<Contour> outline, HubPatterns hubs) {
    this.reports = reports;
    this.labels = labels;
    this.outline = outline;
    this.hubs = hubs;
    this.bodies = new BodyReader(reports);
  }

  /** What sits in the holes, which have their labels now. */
  List<Body> bodies(List<Hole> labelled) {
    return bodies.bodies(i -> labelled.get(i).label());
  }

  List<Hole> holes() {
    return List.copyOf(holes);
  }

  List<BoltCircle> boltCircles() {
    return List.copyOf(boltCircles);
  }

  /** The hub that the first bolt circle was taken from, if any. */
  Optional<String> hub() {
    return boltCircles.stream().flatMap(circle -> circle.hub().stream()).findFirst();
  }

  void read(Fields top) {
    int number = 1;
    for (Fields f : top.list("bolt_circles").atMost(MOST_CIRCLES).mappings()) {
      boltCircle(f, number++);
    }
    bore(top);
    for (Fields f : top.list("holes").atMost(MOST_ITEMS).mappings()) {
      item(f);
    }
  }

  /**
   * The hub pattern with a name; a problem at the entry, with names like it, when there is none.
   */
  static Optional<HubPattern> findHub(HubPatterns hubs, Entry entry, String name) {
    Optional<HubPattern> pattern = Optional.empty();
    try {
      pattern = hubs.find(name);
      if (pattern.isEmpty()) {
        String known = "known: " + String.join(", ", hubs.names());
        entry.problem(
            "is not a known hub",
            Nearest.to(name, hubs.names()).map(n -> "did you mean '" + n + "'? ").orElse("")
                + known
                + "; or name a file such as my-hub.yaml");
      }
    } catch (BadInput e) {
      e.problems().forEach(p -> entry.problem("cannot be used: " + p.line(), ""));
    }
    return pattern;
  }

  private void boltCircle(Fields f, int number) {
    boolean own = !f.has("hub");
    Optional<String> name = f.text("hub").optional();
    HubPattern hub = name.flatMap(n -> findHub(hubs, f.entry("hub"), n)).orElse(NO_HUB);
    WholeField counted = f.integer("count").between(1, MOST_ON_A_CIRCLE);
    int count = own ? counted.required() : counted.or(hub.count());
    double pcd = figure(f.length("pcd").positive(), own, hub.pitchDiameter());
    double diameter = figure(diameter(f), own, hub.holeDiameter());
    double first = Math.toRadians(f.angle("first").or(Math.toDegrees(hub.firstAngle())));
    List<SlotWish> slots =
        f.list("slots").atMost(MOST_ON_A_CIRCLE).each(g -> SlotWish.read(g, diameter, count));
    String label = Labels.read(f);
    f.build(
            () ->
                new BoltCircle(
                    "bolt circle" + (number > 1 ? " " + number : ""),
                    count,
                    pcd,
                    diameter,
                    first,
                    name,
                    f.place()))
        .ifPresent(
            circle -> {
              boltCircles.add(circle);
              add(f, label, HoleRole.BOLT, circle.holeDiameter(), circle.centres(), slots);
            });
  }

  /** A thread's name in place of a diameter is told the holes that suit its screw. */
  private NumberField diameter(Fields f) {
    Entry entry = f.entry("diameter");
    if (entry.value().orElse(null) instanceof YamlValue.Scalar scalar) {
      List<Double> holes = hubs.clearances(scalar.text().strip());
      if (!holes.isEmpty()) {
        String thread = scalar.text().strip();
        return entry
            .length()
            .cure(
                thread
                    + " is a thread; for a hole that its screw passes write "
                    + Numbers.brief(holes.get(0), 2)
                    + " (fine series), "
                    + Numbers.brief(holes.get(1), 2)
                    + " (medium) or "
                    + Numbers.brief(holes.get(2), 2)
                    + " (coarse)")
            .atLeast(SMALLEST);
      }
    }
    return entry.length().atLeast(SMALLEST);
  }

  private static double figure(NumberField field, boolean required, double standard) {
    return required ? field.required() : field.or(standard);
  }

  private void add(
      Fields f,
      String label,
      HoleRole role,
      double diameter,
      List<Point> centres,
      List<SlotWish> slots) {
    if (holes.size() <= MOST_HOLES && holes.size() + centres.size() > MOST_HOLES) {
      f.problem("makes more than " + MOST_HOLES + " holes in all", "take some out");
    }
    String wish = labels.wish(f, label, centres.size());
    for (int i = 0; i < centres.size() && holes.size() <= MOST_HOLES; i++) {
      Hole hole = new Hole(wish, role, centres.get(i), diameter, f.place());
      for (SlotWish slot : slots) {
        hole = slot.applied(hole, i + 1);
      }
      holes.add(hole);
    }
  }

  /** The bore is a diameter, or a group with its diameter, place and label. */
  private void bore(Fields top) {
    Entry entry = top.entry("bore");
    if (entry.kind() == Entry.Kind.MAPPING) {
      Fields f = top.group("bore");
      double diameter = f.length("diameter").atLeast(SMALLEST).required();
      Point at = f.point("at").or(Point.ORIGIN);
      String label = Labels.read(f);
      if (f.done()) {
        add(f, label, HoleRole.BORE, diameter, List.of(at), List.of());
      }
    } else {
      entry
          .length()
          .atLeast(SMALLEST)
          .optional()
          .ifPresent(d -> holes.add(new Hole("", HoleRole.BORE, Point.ORIGIN, d, entry.place())));
    }
  }

  private enum Role {
    BOLT,
    GRIP,
    OTHER
  }

  private void item(Fields f) {
    double diameter = diameter(f).required();
    HoleRole role = HoleRole.valueOf(f.oneOf("role", Role.class).or(Role.OTHER).name());
    String label = Labels.read(f);
    boolean mirror = f.bool("mirror").or(false);
    Optional<String> layout = f.exactlyOneOf("at", "places", "line", "arc", "edge");
    List<Point> centres = layout.map(key -> centres(f, key)).orElse(List.of());
    List<SlotWish> slots =
        f.has("slot") ? SlotWish.read(f.group("slot"), diameter, 0).stream().toList() : List.of();
    Optional<Body> body = bodies.read(f);
    if (role != HoleRole.OTHER && f.has(BodyReader.KEY)) {
      f.problem(
          BodyReader.KEY,
          "sits where a screw goes",
          "give the hole 'role: other', or take the body out");
    }
    if (f.done()) {
      int own = centres.size();
      int before = holes.size();
      add(f, label, role, diameter, mirror ? withImages(f, centres) : centres, slots);
      // The image of a slotted hole is slotted the other way round.
      for (int i = before + own; mirror && !slots.isEmpty() && i < holes.size(); i++) {
        Hole image = holes.get(before + imageOf(centres, i - before - own));
        holes.set(i, image.moved(RigidTransform.MIRROR));
      }
      for (int i = before; body.isPresent() && i < holes.size(); i++) {
        boolean image = i >= before + own;
        Point at = holes.get(i).centre();
        bodies.seat(f, body.get(), i, new RigidTransform(image, 0, at));
      }
    }
  }

  /** The number of the centre whose image has a number among the images. */
  private static int imageOf(List<Point> centres, int image) {
    int left = image;
    for (int i = 0; i < centres.size(); i++) {
      if (Math.abs(centres.get(i).x()) > Tolerances.SAME_POINT && left-- == 0) {
        return i;
      }
    }
    throw new IllegalArgumentException("no image " + image);
  }

  private static List<Point> withImages(Fields f, List<Point> centres) {
    List<Point> all = new ArrayList<>(centres);
    centres.stream()
        .filter(p -> Math.abs(p.x()) > Tolerances.SAME_POINT)
        .forEach(p -> all.add(Placing.mirrored(p)));
    if (all.size() == centres.size() && !centres.isEmpty()) {
      f.problem("mirror", "makes each hole meet its own image", "leave 'mirror' out");
    }
    return all;
  }

  private List<Point> centres(Fields f, String layout) {
    return switch (layout) {
      case "at" -> List.of(f.point("at").required());
      case "places" -> f.list("places").atLeast(1).atMost(MOST_IN_A_ROW).points();
      case "line" -> line(f.group("line"));
      case "arc" -> arc(f.group("arc"));
      default -> edge(f.group("edge"));
    };
  }

  private List<Point> line(Fields f) {
    Point from = f.point("from").required();
    Point to = f.point("to").required();
    int count = count(f);
    if (f.good() && from.near(to, Tolerances.SAME_POINT)) {
      f.problem("to", "must be another point than 'from'", "");
    }
    return f.done() ? HoleRows.line(from, to, count) : List.of();
  }

  private List<Point> arc(Fields f) {
    Point centre = f.point("centre").or(Point.ORIGIN);
    double radius = f.length("radius").positive().required();
    double from = f.angle("from").required();
    double to = f.angle("to").required();
    int count = count(f);
    if (f.good() && (from == to || Math.abs(to - from) > 360)) {
      f.problem(
          "to",
          "must be another direction than 'from', at most one turn away",
          "for all the way round write a figure 360 more than 'from'");
    }
    return f.done()
        ? HoleRows.arc(centre, radius, Math.toRadians(from), Math.toRadians(to), count)
        : List.of();
  }

  private static int count(Fields f) {
    return f.integer("count")
        .atLeast(2, "a row has two ends", "for a single hole write 'at'")
        .atMost(MOST_IN_A_ROW)
        .required();
  }

  private List<Point> edge(Fields f) {
    double inset = f.length("inset").atLeast(SMALLEST).required();
    double from = Math.toRadians(f.clock("from").required());
    double to = Math.toRadians(f.clock("to").required());
    int count = count(f);
    if (!f.done() || outline.isEmpty()) {
      return List.of();
    }
    if (!insides.containsKey(inset) && insides.size() == MOST_INSETS) {
      f.problem(
          "inset",
          "is one inset too many: a file may have " + MOST_INSETS + " different ones",
          "use one of them");
      return List.of();
    }
    return reports
        .guard(
            f.path(),
            () -> {
              List<Region> inside =
                  insides.computeIfAbsent(inset, i -> Offset.of(outline.get(), -i));
              return HoleRows.edge(inside, inset, from, to, count);
            })
        .orElse(List.of());
  }
}
