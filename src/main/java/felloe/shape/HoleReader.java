package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.HubPattern;
import felloe.plate.HubPatterns;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the bolt circles, the bore, and single holes and rows of holes. */
final class HoleReader {

  private static final int MOST_CIRCLES = 12;
  private static final int MOST_ON_A_CIRCLE = 60;
  private static final int MOST_ITEMS = 500;
  private static final int MOST_IN_A_ROW = 200;

  private final Reports reports;
  private final Optional<Contour> outline;
  private final HubPatterns hubs;
  private final List<Hole> holes = new ArrayList<>();
  private final List<BoltCircle> boltCircles = new ArrayList<>();

  HoleReader(Reports reports, Optional<Contour> outline, HubPatterns hubs) {
    this.reports = reports;
    this.outline = outline;
    this.hubs = hubs;
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
    for (Fields f : top.list("bolt-circles").atMost(MOST_CIRCLES).mappings()) {
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
        entry.problem("is not a known hub", "known are " + String.join(", ", hubs.names()));
      }
    } catch (BadInput e) {
      e.problems().forEach(p -> entry.problem("cannot be used: " + p.line(), ""));
    }
    return pattern;
  }

  private void boltCircle(Fields f, int number) {
    Optional<String> name = f.text("hub").optional();
    Optional<HubPattern> hub = name.flatMap(n -> findHub(hubs, f.entry("hub"), n));
    boolean fromHub = f.has("hub");
    int count =
        fromHub
            ? f.integer("count")
                .between(1, MOST_ON_A_CIRCLE)
                .or(hub.map(HubPattern::count).orElse(1))
            : f.integer("count").between(1, MOST_ON_A_CIRCLE).required();
    double pcd = length(f, "pcd", hub.map(HubPattern::pitchDiameter), fromHub);
    double diameter = length(f, "diameter", hub.map(HubPattern::holeDiameter), fromHub);
    double first =
        Math.toRadians(
            f.angle("first").or(hub.map(h -> Math.toDegrees(h.firstAngle())).orElse(90.0)));
    String label = LabelText.read(f);
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
        .ifPresent(circle -> addCircle(circle, label));
  }

  private static double length(Fields f, String key, Optional<Double> standard, boolean fromHub) {
    return fromHub
        ? f.length(key).positive().or(standard.orElse(1.0))
        : f.length(key).positive().required();
  }

  private void addCircle(BoltCircle circle, String label) {
    boltCircles.add(circle);
    for (Point centre : circle.centres()) {
      String own = label.isEmpty() ? "" : label + "#";
      holes.add(new Hole(own, HoleRole.BOLT, centre, circle.holeDiameter(), circle.place()));
    }
  }

  /** The bore is a diameter, or a group with its diameter, place and label. */
  private void bore(Fields top) {
    Entry entry = top.entry("bore");
    if (entry.kind() == Entry.Kind.MAPPING) {
      Fields f = top.group("bore");
      double diameter = f.length("diameter").positive().required();
      Point at = f.point("at").or(Point.ORIGIN);
      String label = LabelText.read(f);
      f.build(() -> new Hole(label.isEmpty() ? "B" : label, HoleRole.BORE, at, diameter, f.place()))
          .ifPresent(holes::add);
    } else {
      top.length("bore")
          .positive()
          .optional()
          .ifPresent(d -> holes.add(new Hole("B", HoleRole.BORE, Point.ORIGIN, d, entry.place())));
    }
  }

  private enum Role {
    BOLT,
    GRIP,
    OTHER
  }

  private void item(Fields f) {
    double diameter = f.length("diameter").positive().required();
    HoleRole role = HoleRole.valueOf(f.oneOf("role", Role.class).or(Role.OTHER).name());
    String label = LabelText.read(f);
    boolean mirror = f.bool("mirror").or(false);
    Optional<String> layout = f.exactlyOneOf("at", "places", "line", "arc", "edge");
    List<Point> centres = layout.map(key -> centres(f, key)).orElse(List.of());
    if (!f.done()) {
      return;
    }
    List<Point> all = new ArrayList<>(centres);
    if (mirror) {
      centres.stream()
          .filter(p -> Math.abs(p.x()) > Tolerances.SAME_POINT)
          .forEach(p -> all.add(Placing.mirrored(p)));
      if (all.size() == centres.size()) {
        f.problem("mirror", "makes each hole meet its own image", "leave 'mirror' out");
      }
    }
    boolean several = all.size() > 1 && !label.isEmpty();
    for (Point centre : all) {
      holes.add(new Hole(several ? label + "#" : label, role, centre, diameter, f.place()));
    }
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
    int count = f.integer("count").between(2, MOST_IN_A_ROW).required();
    return f.done() ? HoleRows.line(from, to, count) : List.of();
  }

  private List<Point> arc(Fields f) {
    Point centre = f.point("centre").or(Point.ORIGIN);
    double radius = f.length("radius").positive().required();
    double from = Math.toRadians(f.angle("from").required());
    double to = Math.toRadians(f.angle("to").required());
    int count = f.integer("count").between(2, MOST_IN_A_ROW).required();
    return f.done() ? HoleRows.arc(centre, radius, from, to, count) : List.of();
  }

  private List<Point> edge(Fields f) {
    double inset = f.length("inset").positive().required();
    double from = Math.toRadians(f.clock("from").required());
    double to = Math.toRadians(f.clock("to").required());
    int count = f.integer("count").between(2, MOST_IN_A_ROW).required();
    if (!f.done() || outline.isEmpty()) {
      return List.of();
    }
    return reports
        .guard(f.path(), () -> HoleRows.edge(outline.get(), inset, from, to, count))
        .orElse(List.of());
  }
}
