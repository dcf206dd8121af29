package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import felloe.grips.GripStation;
import felloe.grips.PlacedGrip;
import felloe.joints.ClampedPart;
import felloe.joints.PlannedJoint;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.LoadWish;
import felloe.plate.Plate;
import felloe.plate.Requested;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.DoubleConsumer;

/**
 * What bodies must keep clear of, on both faces, by the row of limits that it belongs to. The wheel
 * behind the hub's face is taken to be no wider than it, quick release included.
 */
final class BodyObstacles {

  static final String SCREWS = "screws";
  static final String HUB = "hub";

  /** A hub whose face is not told. */
  static final String HUB_TAKEN = "hub-taken";

  static final String GRIPS = "grips";
  static final String FINGERS = "fingers";

  /** Directions in which the room of fingers is looked for, radians: a quarter of a degree. */
  private static final double STEP = Math.toRadians(0.25);

  private final Plate plate;
  private final List<Reviewed.Held> grips;
  private final List<PlannedJoint> joints;
  private final double finger;

  /** Beyond the whole outline from the hub axis, mm. */
  private final double reach;

  private final Map<String, List<Prism>> rows = new LinkedHashMap<>();

  private BodyObstacles(Reviewed of, double finger) {
    this.plate = of.plate();
    this.grips = of.grips();
    this.joints = of.joints().joints();
    this.finger = finger;
    this.reach = 2 * plate.outline().farthest(Point.ORIGIN);
  }

  /**
   * All of them.
   *
   * @param finger thickness of a finger, mm
   */
  static Map<String, List<Prism>> of(Reviewed of, double finger) {
    BodyObstacles all = new BodyObstacles(of, finger);
    all.screws();
    all.hub();
    all.grips();
    for (Window window : of.plate().windows()) {
      if (window.use() == WindowUse.GRIP && !window.contour().contains(Point.ORIGIN)) {
        all.fingers(window);
      }
    }
    return all.rows;
  }

  private void add(String row, Prism prism) {
    rows.computeIfAbsent(row, key -> new ArrayList<>()).add(prism);
  }

  /** Heads, nuts and washers where they stand out of the plate; in a grip that grip stands. */
  private void screws() {
    for (PlannedJoint joint : joints) {
      List<ClampedPart> parts = joint.parts();
      double before = 0;
      double behind = 0;
      boolean beyond = false;
      for (ClampedPart part : parts) {
        boolean itself = part.name().equals(ClampedPart.PLATE);
        before += beyond || itself ? 0 : part.thickness();
        behind += beyond ? part.thickness() : 0;
        beyond |= itself;
      }
      double head = joint.headSize().angle() == 0 ? joint.headSize().height() : 0;
      double front = before + head - joint.joint().screw().sunk();
      double back =
          joint.nut().isPresent()
              ? behind
                  + Math.max(joint.reach(), joint.nut().get().height())
                  - joint.inNut().map(Joint.InNut::sunk).orElse(0.0)
              : 0;
      for (Hole hole : joint.holes()) {
        if (front > 0) {
          add(SCREWS, round("screw head ", hole, Face.FRONT, joint.frontDiameter(), front));
        }
        if (back > 0) {
          add(SCREWS, round("nut ", hole, Face.BACK, joint.backDiameter(), back));
        }
      }
    }
  }

  private static Prism round(String what, Hole hole, Face face, double diameter, double high) {
    Contour edge = Contour.circle(hole.centre(), diameter / 2);
    return Prism.of(what + hole.label(), face, edge, 0, high);
  }

  private void hub() {
    List<Hole> holes = plate.holes(HoleRole.BOLT);
    LoadWish load = plate.load();
    Optional<Double> told = load.faceDiameter().or(load::clampDiameter).map(Requested::value);
    if (holes.isEmpty() && told.isEmpty()) {
      return;
    }
    double reach = holes.stream().mapToDouble(h -> h.centre().norm()).max().orElse(0);
    double widest = holes.stream().mapToDouble(Hole::diameter).max().orElse(0);
    double across = told.orElse(2 * (reach + widest));
    double from = 0;
    if (load.spacerDiameter().isPresent()) {
      double wide = load.spacerDiameter().get().value();
      from =
          joints.stream()
              .filter(joint -> joint.role() == HoleRole.BOLT)
              .flatMap(joint -> joint.joint().back().stream().flatMap(List::stream))
              .mapToDouble(Double::doubleValue)
              .sum();
      for (Hole hole : holes) {
        add(HUB, round("spacer ", hole, Face.BACK, wide, Double.POSITIVE_INFINITY));
      }
    }
    Contour face = Contour.circle(Point.ORIGIN, across / 2);
    add(
        told.isPresent() ? HUB : HUB_TAKEN,
        Prism.of("the hub", Face.BACK, face, from, Double.POSITIVE_INFINITY));
  }

  private void grips() {
    for (Reviewed.Held one : grips) {
      PlacedGrip placed = one.grip();
      for (Face face : placed.grip().on()) {
        add(
            GRIPS,
            new Prism(
                "grip " + placed.grip().label(),
                face,
                placed.footprint(),
                placed.grip().wrap(),
                0,
                height(placed.grip(), face)));
      }
    }
  }

  /** At its highest, wrap and swell counted. */
  private static double height(Grip grip, Face face) {
    if (!grip.faces().has(face)) {
      return 0;
    }
    return grip.profile().height(face)
        + grip.swell().map(w -> face == Face.FRONT ? w.front() : w.back()).orElse(0.0);
  }

  /**
   * The room of fingers and palm that hold the rim beside a window: from where they go through it
   * to past the plate's edge, a finger high above grip or plate. Where grips lie beside the window,
   * hands are where those are.
   */
  private void fingers(Window window) {
    List<Region> places = FingerRoom.fingerPlaces(window.contour(), finger / 2);
    Point middle = window.contour().properties().centroid();
    TreeSet<Double> turns = new TreeSet<>();
    for (Region row : places) {
      for (Point p : HandRim.extremes(row.outer())) {
        turns.add(Math.atan2(middle.cross(p), middle.dot(p)));
      }
    }
    if (turns.isEmpty()) {
      return;
    }
    for (double turn = turns.first() + STEP; turn < turns.last(); turn += STEP) {
      turns.add(turn);
    }
    SegmentIndex rows = SegmentIndex.of(places.stream().map(Region::outer).toList());
    SegmentIndex outline = SegmentIndex.of(List.of(plate.outline()));
    double[] high = {plate.making().gripScale(), plate.making().gripScale()};
    List<double[]> held = held(window, middle, high);
    List<Region> rooms = new ArrayList<>();
    for (double[] range : held) {
      turns.add(Math.max(turns.first(), range[0]));
      turns.add(Math.min(turns.last(), range[1]));
      List<Point> inner = new ArrayList<>();
      List<Point> outer = new ArrayList<>();
      double before = Double.NEGATIVE_INFINITY;
      for (double turn : turns.subSet(range[0], true, range[1], true)) {
        if (turn - before < STEP / 1000) {
          continue;
        }
        before = turn;
        Point way = Point.polar(1, middle.angle() + turn);
        double from = first(rows, way);
        if (from < Double.POSITIVE_INFINITY) {
          inner.add(way.times(from));
          outer.add(0, way.times(last(outline, way) + finger));
        } else {
          room(inner, outer, rooms);
        }
      }
      room(inner, outer, rooms);
    }
    if (!rooms.isEmpty()) {
      String name = "fingers through " + window.label();
      for (Face face : Face.values()) {
        add(FINGERS, new Prism(name, face, rooms, finger / 2, 0, high[face.ordinal()] + finger));
      }
    }
  }

  private static void room(List<Point> inner, List<Point> outer, List<Region> rooms) {
    if (inner.size() > 1) {
      List<Point> all = new ArrayList<>(inner);
      all.addAll(outer);
      rooms.add(Region.of(Contour.polygon(all)));
    }
    inner.clear();
    outer.clear();
  }

  /** Where hands are beside a window, as turns from its middle; all of it where no grip lies. */
  private List<double[]> held(Window window, Point middle, double[] high) {
    List<double[]> ranges = new ArrayList<>();
    for (Reviewed.Held one : grips) {
      double low = Double.POSITIVE_INFINITY;
      double top = Double.NEGATIVE_INFINITY;
      for (GripStation station : one.stations()) {
        if (station.held() && station.window().filter(window.label()::equals).isPresent()) {
          Point at = station.at();
          double turn = Math.atan2(middle.cross(at), middle.dot(at));
          double half = finger / 2 / Math.max(finger, at.norm());
          low = Math.min(low, turn - half);
          top = Math.max(top, turn + half);
        }
      }
      if (low < top) {
        ranges.add(new double[] {low, top});
        for (Face face : Face.values()) {
          int k = face.ordinal();
          high[k] = Math.max(high[k], height(one.grip().grip(), face));
        }
      }
    }
    return ranges.isEmpty() ? List.of(new double[] {-Math.PI, Math.PI}) : ranges;
  }

  /** How far from the hub axis edges are first met that way; infinite where none is. */
  private double first(SegmentIndex edges, Point way) {
    double[] nearest = {Double.POSITIVE_INFINITY};
    meet(edges, way, far -> nearest[0] = Math.min(nearest[0], far));
    return nearest[0];
  }

  /** How far edges reach that way. */
  private double last(SegmentIndex edges, Point way) {
    double[] farthest = {0};
    meet(edges, way, far -> farthest[0] = Math.max(farthest[0], far));
    return farthest[0];
  }

  private void meet(SegmentIndex edges, Point way, DoubleConsumer found) {
    Line ray = new Line(Point.ORIGIN, way.times(reach));
    edges.touching(
        ray.box().grown(Tolerances.SAME_POINT),
        number ->
            Gap.meetings(ray, edges.get(number)).forEach(point -> found.accept(point.norm())));
  }
}
