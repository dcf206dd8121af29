package felloe.shape;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Body;
import felloe.plate.Face;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** Reads what sits in windows and holes, and puts it where they are. */
final class BodyReader {

  static final String KEY = "body";
  private static final int MOST = 200;
  private static final List<String> SIZES = List.of("diameter", "width", "height", "radius", "at");

  /** A cable that nothing is said of is as thick, mm: common practice for a few wires. */
  private static final double CABLE = 6;

  private final GeometryProblems reports;
  private final List<Seated> seated = new ArrayList<>();

  /**
   * A body in one of many openings.
   *
   * @param opening its number among them
   */
  private record Seated(int opening, Body body) {}

  BodyReader(GeometryProblems reports) {
    this.reports = reports;
  }

  /** Reads the body of an entry, about the middle of its opening; empty for none. */
  Optional<Body> read(Fields entry) {
    if (!entry.has(KEY)) {
      entry.allow(KEY);
      return Optional.empty();
    }
    Fields f = entry.group(KEY);
    String name = f.text("name").or(KEY);
    Face face = f.oneOf("face", Face.class).or(Face.FRONT);
    double degrees = f.angle("turn").or(0);
    RigidTransform turn =
        Double.isNaN(degrees)
            ? RigidTransform.NONE
            : Placing.degrees(Point.ORIGIN, degrees).motion();
    Fields bezelFields = f.group("bezel");
    Optional<Contour> bezel = edge(bezelFields, turn);
    bezelFields.done();
    double height = f.length("height").notNegative().required();
    Fields behind = f.group("behind");
    double depth = behind.length("depth").positive().required();
    boolean own = SIZES.stream().anyMatch(behind::has);
    Optional<Contour> shank = own ? edge(behind, turn) : Optional.empty();
    behind.allow(SIZES.toArray(String[]::new));
    behind.done();
    Optional<Body.Arm> arm = f.has("arm") ? arm(f.group("arm"), turn) : Optional.empty();
    Optional<Body.Nut> nut = f.has("nut") ? nut(f.group("nut")) : Optional.empty();
    Optional<Body.Washer> washer = f.has("washer") ? washer(f.group("washer")) : Optional.empty();
    Optional<Body.Cable> cable = f.has("cable") ? cable(f.group("cable")) : Optional.empty();
    f.allow("arm", "nut", "washer", "cable");
    Optional<Double> mass =
        f.number("mass").positive().atMost(10_000).optional().stream().boxed().findFirst();
    if (!f.done() || bezel.isEmpty() || own && shank.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Body(
            name,
            "",
            face,
            bezel.get(),
            height,
            shank,
            depth,
            arm,
            nut,
            washer,
            cable,
            mass,
            f.place()));
  }

  /** A disc or a box, about the middle of the opening until it is shifted. */
  private Optional<Contour> edge(Fields f, RigidTransform turn) {
    Optional<String> kind = f.exactlyOneOf("diameter", "width");
    f.allow(SIZES.toArray(String[]::new));
    Optional<Family> family = Optional.empty();
    Point at = f.point("at").or(Point.ORIGIN);
    if (kind.filter("diameter"::equals).isPresent()) {
      for (String key : List.of("height", "radius")) {
        if (f.has(key)) {
          f.problem(key, "goes with straight edges", "leave it out, or write width for diameter");
        }
      }
      double diameter = f.length("diameter").positive().required();
      family = f.good() ? Optional.of(Round.circle(diameter)) : family;
    } else if (kind.isPresent()) {
      double width = f.length("width").positive().required();
      double height = f.length("height").positive().required();
      double radius = f.length("radius").notNegative().or(0);
      family = f.good() ? Optional.of(FourSided.rectangle(width, height, radius)) : family;
    }
    return family
        .flatMap(shape -> reports.guard(f.path(), shape::contour))
        .map(contour -> contour.moved(RigidTransform.shift(at.x(), at.y()).then(turn)));
  }

  private Optional<Body.Arm> arm(Fields f, RigidTransform turn) {
    Optional<Contour> edge = edge(f, turn);
    double off = f.length("off").notNegative().required();
    double thickness = f.length("thickness").positive().required();
    return f.done() ? edge.map(e -> new Body.Arm(e, off, thickness)) : Optional.empty();
  }

  private static Optional<Body.Nut> nut(Fields f) {
    double flats = f.length("across_flats").positive().required();
    double thickness = f.length("thickness").positive().required();
    return f.build(() -> new Body.Nut(flats, thickness));
  }

  private static Optional<Body.Washer> washer(Fields f) {
    double diameter = f.length("diameter").positive().required();
    double thickness = f.length("thickness").positive().required();
    return f.build(() -> new Body.Washer(diameter, thickness));
  }

  private static Optional<Body.Cable> cable(Fields f) {
    Optional<Double> side =
        f.has("clock")
            ? Optional.of(Math.toRadians(f.clock("clock").required()))
            : Optional.empty();
    f.allow("clock");
    double free = f.length("free").positive().required();
    double thickness = f.length("thickness").positive().or(CABLE);
    return f.build(() -> new Body.Cable(side, free, thickness));
  }

  /**
   * Seats a body in an opening.
   *
   * @param opening number of the opening
   * @param motion from about the middle of the opening to the plate; a mirroring one also mirrors
   *     the side that its cable leaves to
   */
  void seat(Fields entry, Body body, int opening, RigidTransform motion) {
    if (seated.size() == MOST) {
      entry.problem(KEY, "makes more than " + MOST + " bodies in all", "take some out");
    }
    if (seated.size() <= MOST) {
      seated.add(new Seated(opening, moved(body, motion)));
    }
  }

  /** The motion to the middle of an opening, whose own frame is moved so. */
  static RigidTransform toMiddle(Contour opening, RigidTransform placing) {
    Box box = opening.box();
    return RigidTransform.shift(box.centre().x(), box.centre().y()).then(placing);
  }

  private static Body moved(Body body, RigidTransform motion) {
    return new Body(
        body.name(),
        body.opening(),
        body.face(),
        body.bezel().moved(motion),
        body.height(),
        body.shank().map(edge -> edge.moved(motion)),
        body.depth(),
        body.arm().map(a -> new Body.Arm(a.edge().moved(motion), a.off(), a.thickness())),
        body.nut(),
        body.washer(),
        body.cable().map(c -> motion.mirrored() ? mirrored(c) : c),
        body.mass(),
        body.place());
  }

  private static Body.Cable mirrored(Body.Cable cable) {
    return new Body.Cable(
        cable.side().map(angle -> Math.PI - angle), cable.free(), cable.thickness());
  }

  /**
   * The bodies in openings that have their labels now.
   *
   * @param label of an opening by its number
   */
  List<Body> bodies(IntFunction<String> label) {
    return seated.stream().map(s -> s.body.in(label.apply(s.opening))).toList();
  }
}
