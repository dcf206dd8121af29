package felloe.yaml;

import felloe.geometry.Numbers;
import java.util.Optional;
import java.util.function.DoublePredicate;

/** A length that was written in another unit than the millimetres that it is read in. */
public final class UnitSlip {

  private static final double INCH = 25.4;
  private static final double METRE = 1000;

  private UnitSlip() {}

  /**
   * The slip that would explain a length which is far too small, with its cure.
   *
   * @param length as it was read, mm
   * @param usual whether a length, mm, is one that a maker means
   */
  public static Optional<String> of(double length, DoublePredicate usual) {
    if (usual.test(length * METRE)) {
      return Optional.of(
          "it looks like metres: write " + Numbers.brief(length * METRE, 2) + " or put m after it");
    }
    return usual.test(length * INCH)
        ? Optional.of(
            "it looks like inches: put in after it, which makes "
                + Numbers.brief(length * INCH, 2)
                + " mm")
        : Optional.empty();
  }
}
