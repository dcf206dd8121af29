package felloe.measure;

/** Whether an adjustment tells where all holes lie to each other. */
final class ObservabilityTest {

  /** A part of a distance that nothing holds, beyond rounding. */
  private static final double LOOSE = 1e-4;

  /**
   * A pair whose distance has larger 95 % bounds than this part of the widest distance is as good
   * as not told: the readings meet at too flat an angle, and the linear theory of errors no longer
   * holds.
   */
  private static final double WEAK = 0.02;

  private ObservabilityTest() {}

  static boolean all(Adjustment adjustment) {
    Equations equations = adjustment.equations();
    double[] z = adjustment.z();
    int n = equations.unknowns().holes();
    double widest = 0;
    double poorest = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        double[] row = equations.pair(i, j, z);
        if (adjustment.loose(row) > LOOSE) {
          return false;
        }
        poorest = Math.max(poorest, adjustment.standardError(row));
        widest = Math.max(widest, Math.hypot(z[2 * i] - z[2 * j], z[2 * i + 1] - z[2 * j + 1]));
      }
    }
    return Reading.COVERAGE * poorest <= WEAK * widest;
  }

  /** Whether the size of a hole is told. */
  static boolean size(Adjustment adjustment, int hole) {
    double[] row = new double[adjustment.equations().unknowns().all()];
    row[adjustment.equations().unknowns().size(hole)] = 1;
    return adjustment.loose(row) <= LOOSE;
  }
}
