package felloe.shape;

import felloe.geometry.Contour;
import felloe.geometry.FilletException;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/** Gathers what is wrong with the parameters of one feature. */
final class Faults {

  private final List<ShapeFault> faults = new ArrayList<>();

  void add(ShapeFault fault) {
    faults.add(fault);
  }

  boolean isEmpty() {
    return faults.isEmpty();
  }

  /** A size must lie above zero and within the largest length. */
  void size(String parameter, double value) {
    if (!(value > Tolerances.SAME_POINT) || value > Tolerances.LARGEST) {
      add(ShapeFault.length(parameter, value, "must be above 0 and at most " + largest(), ""));
    }
  }

  /** A radius must lie between zero and the largest length. */
  void radius(String parameter, double value) {
    if (!(value >= 0) || value > Tolerances.LARGEST) {
      add(ShapeFault.length(parameter, value, "must be 0 (sharp) to " + largest(), ""));
    }
  }

  /** A coordinate or rise must lie within the largest length either way. */
  void coordinate(String parameter, double value) {
    if (!(Math.abs(value) <= Tolerances.LARGEST)) {
      add(
          ShapeFault.length(
              parameter, value, "must lie between -" + largest() + " and " + largest(), ""));
    }
  }

  private static String largest() {
    return ShapeFault.mm(Tolerances.LARGEST);
  }

  /** Rounds down to a micrometre, so that a limit can be written as shown. */
  static String limit(double largest) {
    return Numbers.down(largest, 3) + " mm";
  }

  /** Throws when anything was found. */
  void refuse() {
    if (!faults.isEmpty()) {
      throw new ShapeException(faults);
    }
  }

  /**
   * Makes the contour once the parameters have passed; what the geometry refuses becomes a fault of
   * a corner radius or of the whole feature.
   */
  Contour make(
      Supplier<Contour> maker, Function<FilletException, List<ShapeFault>> crowdedCorners) {
    refuse();
    try {
      return maker.get();
    } catch (FilletException e) {
      throw new ShapeException(crowdedCorners.apply(e));
    } catch (GeometryException e) {
      String at = e.where().map(p -> " at " + p + " mm").orElse("");
      throw new ShapeException(
          List.of(new ShapeFault("", "", e.getMessage() + at, "the edges must not meet")));
    }
  }
}
