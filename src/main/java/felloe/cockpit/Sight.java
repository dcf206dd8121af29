package felloe.cockpit;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Polygons;
import felloe.geometry.Polygons.Polygon;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Instrument;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the wheel hides of an instrument from one point of the eye: by exact central projection of
 * all that stands between, its arcs flattened within {@value #CHORD} mm. Hands and arms are not in
 * it. Two eyes see a little more.
 *
 * @param instrument what is to be seen
 * @param eye in the car
 * @param image of the instrument on the plane of the plate's front face, in the wheel's axes
 * @param hidden what is hidden at each turn
 */
public record Sight(Instrument instrument, Spot eye, List<Point> image, List<Hidden> hidden) {

  /** Greatest distance of a chord from its arc, mm. */
  static final double CHORD = 0.02;

  /** An eye nearer to the wheel than this is in it, mm: a hand's breadth. */
  private static final double NEAREST = 100;

  /** Of a smaller area is no shade, mm². */
  private static final double NOTHING = 1e-9;

  /**
   * At one turn.
   *
   * @param turn of the wheel, radians, to the left above zero
   * @param share of the instrument that is hidden
   * @param covers what hides it, as seen on the plane of the plate's front face, the farthest first
   */
  public record Hidden(double turn, double share, List<Polygon> covers) {}

  public Sight {
    image = List.copyOf(image);
    hidden = List.copyOf(hidden);
  }

  /**
   * Looks.
   *
   * @param between what stands between
   * @param front greatest height of the wheel above the end of the column, mm
   * @param back least
   * @return empty where the file tells of no instrument
   * @throws BadInput for an eye that does not look at the wheel from before, or an instrument that
   *     is not beyond it
   */
  public static Optional<Sight> of(
      Plate plate,
      Cockpit cockpit,
      Optional<Seated> seated,
      List<Shade> between,
      double back,
      double front) {
    if (cockpit.instrument().isEmpty()) {
      return Optional.empty();
    }
    Instrument instrument = cockpit.instrument().get();
    Spot eye = cockpit.eye().or(() -> seated.map(Seated::eye)).orElseThrow();
    WheelAxes axes = WheelAxes.of(cockpit);
    Spot from = axes.toWheel(eye);
    List<Problem> problems = problems(instrument, cockpit, axes, eye, from, back, front);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    double plane = cockpit.stack() + plate.stock().asMade();
    Looking looking = new Looking(instrument, axes, eye, from, plane);
    List<Point> image =
        instrument.edge(CHORD).stream().map(spot -> looking.onto(axes.toWheel(spot))).toList();
    List<Hidden> hidden = new ArrayList<>();
    for (double turn : instrument.turns()) {
      hidden.add(looking.at(turn, image, between));
    }
    return Optional.of(new Sight(instrument, eye, image, hidden));
  }

  private static List<Problem> problems(
      Instrument instrument,
      Cockpit cockpit,
      WheelAxes axes,
      Spot eye,
      Spot from,
      double back,
      double front) {
    List<Problem> problems = new ArrayList<>();
    if (from.z() < front + NEAREST) {
      Place place = cockpit.eye().isPresent() ? cockpit.place() : instrument.place();
      problems.add(
          new Problem(
              place,
              cockpit.eye().isPresent() ? "cockpit.eye" : "cockpit.driver",
              "",
              from.z() < front
                  ? "puts the eye behind the wheel, "
                      + Numbers.fixed(front - from.z(), 0)
                      + " mm beyond its front"
                  : "puts the eye "
                      + Numbers.fixed(from.z() - front, 0)
                      + " mm before the wheel, nearer than the "
                      + Numbers.fixed(NEAREST, 0)
                      + " mm that are looked from",
              "measure z from the end of the column toward the driver"));
    }
    double highest =
        instrument.edge(CHORD).stream().mapToDouble(p -> axes.toWheel(p).z()).max().orElseThrow();
    if (highest > back) {
      problems.add(
          new Problem(
              instrument.place(),
              "cockpit.instrument",
              "",
              "reaches "
                  + Numbers.fixed(highest - back, 0)
                  + " mm before the back of the wheel, and must lie beyond it",
              "z is below zero beyond the end of the column"));
    } else if (instrument.before(eye) <= 0) {
      problems.add(
          new Problem(
              instrument.place(),
              "cockpit.instrument",
              "",
              "turns its back to the eye",
              "lean tells how far its top leans away from the driver"));
    }
    return problems;
  }

  private record Looking(Instrument instrument, WheelAxes axes, Spot eye, Spot from, double plane) {

    private Point axis() {
      return new Point(from.x(), from.y());
    }

    /** How much larger what lies in a plane across the axis is seen on the plate's front face. */
    private double larger(double z) {
      return (from.z() - plane) / (from.z() - z);
    }

    private Point onto(Spot wheel) {
      Point flat = new Point(wheel.x(), wheel.y());
      return larger(flat, larger(wheel.z()));
    }

    private Point larger(Point p, double times) {
      return axis().plus(p.minus(axis()), times);
    }

    /** A place on the plate's front face, seen on the instrument's face: x right, y up it. */
    private Point back(Point p) {
      Spot through = axes.toCar(new Spot(p.x(), p.y(), plane));
      return instrument.flat(eye, through);
    }

    private Hidden at(double turn, List<Point> image, List<Shade> between) {
      List<Polygon> shades = new ArrayList<>();
      List<Polygon> covers = new ArrayList<>();
      for (Shade shade : between) {
        double least = larger(shade.back());
        double most = larger(shade.front());
        for (Polygon polygon : shade.polygons()) {
          covers.add(turned(polygon, turn, least));
          covers.add(turned(polygon, turn, most));
          for (List<Point> ring : polygon.rings()) {
            for (int i = 0; i < ring.size(); i++) {
              Point a = RigidTransform.turn(turn).of(ring.get(i));
              Point b = RigidTransform.turn(turn).of(ring.get((i + 1) % ring.size()));
              Polygon side =
                  Polygon.of(
                      List.of(
                          larger(a, least), larger(b, least), larger(b, most), larger(a, most)));
              if (side.area() > NOTHING) {
                shades.add(side);
              }
            }
          }
        }
      }
      shades.addAll(covers);
      List<Polygon> parts = parts(image, shades);
      double whole = Math.abs(Polygons.area(image.stream().map(this::back).toList()));
      double area = 0;
      for (Polygon part : parts) {
        area +=
            new Polygon(
                    part.outer().stream().map(this::back).toList(),
                    part.holes().stream().map(h -> h.stream().map(this::back).toList()).toList())
                .area();
      }
      return new Hidden(turn, Math.min(1, area / whole), covers);
    }

    private List<Polygon> parts(List<Point> image, List<Polygon> shades) {
      Box seen = box(image);
      List<Polygon> near = shades.stream().filter(s -> box(s.outer()).touches(seen)).toList();
      return Polygons.shared(Polygon.of(image), near);
    }

    private static Box box(List<Point> ring) {
      return ring.stream().map(p -> Box.of(p, p)).reduce(Box::union).orElseThrow();
    }

    private Polygon turned(Polygon polygon, double turn, double times) {
      return new Polygon(
          turned(polygon.outer(), turn, times),
          polygon.holes().stream().map(hole -> turned(hole, turn, times)).toList());
    }

    private List<Point> turned(List<Point> ring, double turn, double times) {
      return ring.stream().map(p -> larger(RigidTransform.turn(turn).of(p), times)).toList();
    }
  }
}
