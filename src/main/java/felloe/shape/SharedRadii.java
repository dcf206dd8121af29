package felloe.shape;

import felloe.geometry.FilletException;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.DoublePredicate;

/**
 * Two corner radii, each shared by several corners of a shape, that do not fit: finds the largest
 * that do.
 *
 * @param first name of the one
 * @param a its value, mm
 * @param second name of the other
 * @param b its value, mm
 */
record SharedRadii(String first, double a, String second, double b) {

  /** A search for the largest radius stops here, mm: what is told is rounded to a micrometre. */
  private static final double FOUND = 1e-8;

  /**
   * The faults: of one radius if lowering it is enough, else of both. Equal radii were most likely
   * written as one figure, so they are told once, with the limit that they share.
   */
  List<ShapeFault> faults(FilletException e, BiPredicate<Double, Double> fits) {
    String why = e.faults().get(0).why();
    if (a == b && fits.test(a, 0.0) == fits.test(0.0, b)) {
      double common = largest(a, r -> fits.test(r, r));
      String wanted =
          "must be at most " + Faults.limit(common) + " here, " + second + " alike: " + why;
      return List.of(ShapeFault.length(first, a, wanted, "lower it"));
    }
    List<ShapeFault> faults = new ArrayList<>();
    if (a > 0 && (!fits.test(a, 0.0) || fits.test(0.0, b))) {
      double alone = largest(a, r -> fits.test(r, 0.0));
      double beside = largest(a, r -> fits.test(r, b));
      faults.add(fault(first, a, alone, beside, second, why));
    }
    if (b > 0 && !fits.test(0.0, b)) {
      double alone = largest(b, r -> fits.test(0.0, r));
      double beside = largest(b, r -> fits.test(a, r));
      faults.add(fault(second, b, alone, beside, first, why));
    }
    return faults;
  }

  private static ShapeFault fault(
      String name, double value, double alone, double beside, String other, String why) {
    boolean helped = beside > Tolerances.SAME_LENGTH;
    String wanted =
        "must be at most "
            + Faults.limit(helped ? beside : alone)
            + (helped ? " here" : " here even with a sharp " + other)
            + ": "
            + why;
    String cure = helped && alone > beside + 1e-3 ? "lower it or " + other : "lower it";
    return ShapeFault.length(name, value, wanted, cure);
  }

  static double largest(double tooLarge, DoublePredicate fits) {
    double low = 0;
    double high = tooLarge;
    if (fits.test(high)) {
      return high;
    }
    for (int i = 0; i < 60 && high - low > FOUND; i++) {
      double middle = (low + high) / 2;
      if (fits.test(middle)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
