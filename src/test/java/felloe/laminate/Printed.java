package felloe.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Materials of the textbooks, and comparing with figures as they are printed. */
final class Printed {

  /**
   * Carbon and epoxy T300/5208 (Tsai and Hahn 1980; Kaw, Mechanics of Composite Materials, table
   * 2.1): moduli along and across verified, the others from memory.
   */
  static final PlyMaterial T300 = new PlyMaterial(181_000, 10_300, 0.28, 7_170);

  /** Its strengths (Kaw, table 2.1; from memory). */
  static final PlyStrength T300_STRENGTH = new PlyStrength(1500, 1500, 40, 246, 68);

  /** Wet lay-up carbon cloth, typical values (verified in a table of composites data). */
  static final PlyMaterial CLOTH = new PlyMaterial(60_000, 60_000, 0.03, 2_700);

  private Printed() {}

  /**
   * Holds to the digits that are printed, such as {@code "1.739e9"}, give or take half the last.
   */
  static void holds(String printed, double value) {
    BigDecimal told = new BigDecimal(printed);
    BigDecimal here =
        new BigDecimal(value).round(new MathContext(told.precision(), RoundingMode.HALF_UP));
    double ulp = told.ulp().doubleValue();
    // Books round what they have rounded before: one unit of the last place is allowed.
    assertEquals(told.doubleValue(), here.doubleValue(), 1.0001 * ulp, printed + " but " + value);
  }

  /** Six figures of a matrix: 11, 12, 22, 16, 26, 66. */
  static void holds(PlaneStiffness m, double factor, String... printed) {
    double[] figures = {m.m11(), m.m12(), m.m22(), m.m16(), m.m26(), m.m66()};
    for (int i = 0; i < printed.length; i++) {
      holds(printed[i], figures[i] * factor);
    }
  }
}
