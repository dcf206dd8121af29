package felloe.plate;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * What the maker says of loads on the plate; what is left out is for the program to choose.
 *
 * @param hold how the hub holds the plate
 * @param clampDiameter diameter of the circle within which the plate is held fast, mm
 * @param faceDiameter diameter of the hub's face behind the plate, mm
 * @param spacerDiameter outside diameter of the spacer that each hub screw stands on, mm
 * @param factor by which every load is multiplied before it is held against the strength
 * @param hotWet what is left of a laminate's strength in a hot, damp car, as a part of it
 * @param margin the least margin that is wanted
 * @param deflection the most that the hands may move the plate, mm
 * @param cases load cases of the maker's own
 */
public record LoadWish(
    Optional<Requested<Hold>> hold,
    Optional<Requested<Double>> clampDiameter,
    Optional<Requested<Double>> faceDiameter,
    Optional<Requested<Double>> spacerDiameter,
    Optional<Requested<Double>> factor,
    Optional<Requested<Double>> hotWet,
    Optional<Requested<Double>> margin,
    Optional<Requested<Double>> deflection,
    List<Case> cases) {

  /** Nothing is asked for. */
  public static final LoadWish NONE =
      new LoadWish(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of());

  public static final int MOST_CASES = 100;

  /** The most forces of a case. */
  public static final int MOST_FORCES = 20;

  /** The greatest force along an axis, N. */
  public static final double MOST_FORCE = 100_000;

  public LoadWish {
    cases = List.copyOf(cases);
  }

  /** How the hub holds the plate. */
  public enum Hold {
    /** All within a circle is held fast. */
    CLAMPED,
    /** Held under the bolts' heads, with the hub's face behind. */
    BOLTS
  }

  /**
   * A load case.
   *
   * @param name its name
   * @param forces of the hands, one at least
   * @param patch diameter that each force is spread over, mm; empty for the usual
   * @param place where it was written
   */
  public record Case(String name, List<Force> forces, Optional<Double> patch, Place place) {
    public Case {
      forces = List.copyOf(forces);
    }
  }

  /**
   * A force, N: x to the driver's right, y up, z toward the driver.
   *
   * @param at where, mm; empty when a direction is given
   * @param clock direction from the hub axis in which the rim is held, degrees counter-clockwise
   *     from +x; empty when a point is given
   * @param x to the right
   * @param y up
   * @param z toward the driver
   * @param path of the value that says where, such as {@code load.cases[0].at}
   * @param place where that was written
   */
  public record Force(
      Optional<Point> at,
      Optional<Double> clock,
      double x,
      double y,
      double z,
      String path,
      Place place) {

    /**
     * Refuses figures that are not finite, and both or neither of point and direction.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Force {
      Numbers.finite("x", x);
      Numbers.finite("y", y);
      Numbers.finite("z", z);
      if (at.isPresent() == clock.isPresent()) {
        throw new IllegalArgumentException("one of at and clock must be given");
      }
    }
  }
}
