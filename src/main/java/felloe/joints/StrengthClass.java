package felloe.joints;

import felloe.geometry.Numbers;
import felloe.hub.ScrewThread;

/**
 * How strong a screw's steel is.
 *
 * @param name such as {@code 8.8}
 * @param inch whether it is a grade of inch screws
 * @param proof proof stress, MPa
 * @param tensile least tensile strength, MPa
 * @param basis where the figures come from
 */
public record StrengthClass(String name, boolean inch, double proof, double tensile, String basis) {

  /**
   * Refuses a proof stress that is not between zero and the strength.
   *
   * @throws IllegalArgumentException naming the field
   */
  public StrengthClass {
    if (!(Numbers.finite("proof", proof) > 0 && Numbers.finite("tensile", tensile) > proof)) {
      throw new IllegalArgumentException("proof must be above zero and below tensile");
    }
  }

  /**
   * Tensile stress area of a thread, mm²: pi/4 (d - 0.9382 P)² for metric threads (ISO 898-1 clause
   * 9), pi/4 (d - 0.9743 P)² for unified ones (ASME B1.1, from memory).
   */
  public static double stressArea(ScrewThread thread) {
    double factor = isInch(thread) ? 0.9743 : 0.9382;
    double d = thread.diameter() - factor * thread.pitch();
    return Math.PI / 4 * d * d;
  }

  /** Whether a thread is one of the unified inch series. */
  public static boolean isInch(ScrewThread thread) {
    return !thread.name().startsWith("M");
  }

  /** Proof load of a screw, N. */
  public double proofLoad(ScrewThread thread) {
    return proof * stressArea(thread);
  }
}
