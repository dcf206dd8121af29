package felloe.plate;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Where the wheel sits in the car, and what is near it.
 *
 * <p>Axes of the car: x to the driver's right from the middle of the column, y up from the floor, z
 * toward the driver from the end of the column. Millimetres.
 *
 * @param column rise of the column toward the driver, radians above level
 * @param lock how far the wheel is turned from straight ahead, either way, radians
 * @param hub height of the end of the column above the floor, mm
 * @param stack what lies between the end of the column and the back of the plate: hub, spacers,
 *     quick release, mm
 * @param clearance what a hand needs round the wheel, mm
 * @param things what is near it
 * @param seat where the driver sits
 * @param driver who sits there; only with a seat
 * @param eye where the driver looks from; else it is reckoned
 * @param instrument what must be seen; only with an eye or a driver
 * @param place where the maker wrote it
 */
public record Cockpit(
    double column,
    double lock,
    double hub,
    double stack,
    double clearance,
    List<Thing> things,
    Optional<Seat> seat,
    Optional<Driver> driver,
    Optional<Spot> eye,
    Optional<Instrument> instrument,
    Place place) {

  public Cockpit {
    Numbers.finite("column", column);
    Numbers.positive("lock", lock);
    Numbers.finite("hub", hub);
    Numbers.finite("stack", stack);
    Numbers.finite("clearance", clearance);
    things = List.copyOf(things);
    Objects.requireNonNull(place, "place");
  }

  /** A place in the car, mm. */
  public record Spot(double x, double y, double z) {

    public Spot {
      Numbers.finite("x", x);
      Numbers.finite("y", y);
      Numbers.finite("z", z);
    }

    public Spot plus(Spot way, double times) {
      return new Spot(x + times * way.x, y + times * way.y, z + times * way.z);
    }

    /** The way to another place, of length one; to itself it has none. */
    public Spot toward(Spot other) {
      double far = distance(other);
      return new Spot((other.x - x) / far, (other.y - y) / far, (other.z - z) / far);
    }

    public double distance(Spot other) {
      return Math.hypot(Math.hypot(x - other.x, y - other.y), z - other.z);
    }
  }

  /**
   * The seat: where its cushion and its back meet in the middle, pressed down by the driver.
   *
   * @param height above the floor, mm
   * @param behind the end of the column, toward the driver, mm
   * @param aside to the driver's right from the middle of the column, mm
   * @param back how far the back leans from upright, radians
   */
  public record Seat(double height, double behind, double aside, double back) {

    public Seat {
      Numbers.finite("height", height);
      Numbers.finite("behind", behind);
      Numbers.finite("aside", aside);
      Numbers.finite("back", back);
    }
  }

  /**
   * Something flat that the driver must see, round or with four corners.
   *
   * @param name of it
   * @param at middle of its face
   * @param width mm
   * @param height mm, along its face
   * @param round whether it is a circle, as high as wide
   * @param lean how far its top leans away from the driver, radians from upright
   * @param turns of the wheel at which it is looked at, radians, to the left above zero
   * @param place where the maker wrote it
   */
  public record Instrument(
      String name,
      Spot at,
      double width,
      double height,
      boolean round,
      double lean,
      List<Double> turns,
      Place place) {

    public Instrument {
      Numbers.positive("width", width);
      Numbers.positive("height", height);
      turns = List.copyOf(turns);
    }

    private Spot up() {
      return new Spot(0, Math.cos(lean), -Math.sin(lean));
    }

    /** A place on its face, from its middle so far to the right and so far up. */
    public Spot spot(Point p) {
      return at.plus(new Spot(1, 0, 0), p.x()).plus(up(), p.y());
    }

    /**
     * Its edge, counter-clockwise as the driver sees it.
     *
     * @param chord greatest distance of a chord from the circle, mm
     */
    public List<Spot> edge(double chord) {
      Contour contour =
          round
              ? Contour.circle(Point.ORIGIN, width / 2)
              : Contour.rectangle(new Box(-width / 2, -height / 2, width / 2, height / 2));
      return contour.chords(chord).stream().map(this::spot).toList();
    }

    /** How far a place lies before its face, mm. */
    public double before(Spot p) {
      return (p.y() - at.y()) * Math.sin(lean) + (p.z() - at.z()) * Math.cos(lean);
    }

    /** Where the line from one place through another meets its face: x right, y up along it. */
    public Point flat(Spot from, Spot through) {
      double share = before(from) / (before(from) - before(through));
      Spot on = from.plus(through.plus(from, -1), share);
      return new Point(
          on.x() - at.x(), (on.y() - at.y()) * Math.cos(lean) - (on.z() - at.z()) * Math.sin(lean));
    }
  }

  /** What room a thing takes. */
  public sealed interface Room permits Block, Limb {}

  /**
   * A box along the car's axes.
   *
   * @param low its least x, y and z
   * @param high its greatest
   */
  public record Block(Spot low, Spot high) implements Room {}

  /**
   * A round thing with round ends: a thigh, a lever; a knee where both ends are one.
   *
   * @param from middle of one end
   * @param to middle of the other
   * @param radius mm
   */
  public record Limb(Spot from, Spot to, double radius) implements Room {

    public Limb {
      Numbers.positive("radius", radius);
    }
  }

  /**
   * Something near the wheel.
   *
   * @param name unique in the cockpit
   * @param room what it takes up
   * @param place where the maker wrote it
   */
  public record Thing(String name, Room room, Place place) {}
}
