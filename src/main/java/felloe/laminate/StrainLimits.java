package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * Strains that a ply bears along its own axes, all told as positive figures (0.01 is 1 %).
 *
 * @param e1t tension along axis 1
 * @param e1c compression along axis 1
 * @param e2t tension along axis 2
 * @param e2c compression along axis 2
 * @param g12 engineering shear
 */
public record StrainLimits(double e1t, double e1c, double e2t, double e2c, double g12) {

  /**
   * Refuses figures that are not finite or not positive.
   *
   * @throws IllegalArgumentException naming the field
   */
  public StrainLimits {
    Numbers.positive("e1t", e1t);
    Numbers.positive("e1c", e1c);
    Numbers.positive("e2t", e2t);
    Numbers.positive("e2c", e2c);
    Numbers.positive("g12", g12);
  }

  /** The highest of the strains over their limits: 1 is the edge of failure. */
  public double use(double e1, double e2, double shear) {
    return Math.max(along1(e1), Math.max(along2(e2), Math.abs(shear) / g12));
  }

  /** In which way the ply is nearest to its limits. */
  public FailureMode mode(double e1, double e2, double shear) {
    double one = along1(e1);
    double two = along2(e2);
    double across = Math.abs(shear) / g12;
    if (one >= two && one >= across) {
      return e1 >= 0 ? FailureMode.TENSION_1 : FailureMode.COMPRESSION_1;
    }
    if (two >= across) {
      return e2 >= 0 ? FailureMode.TENSION_2 : FailureMode.COMPRESSION_2;
    }
    return FailureMode.SHEAR;
  }

  /**
   * By how much a strain may grow until a limit is reached, while another strain stays as it is.
   *
   * @param load the strain that grows: along 1, along 2, shear
   * @param rest the strain that stays
   * @return the factor; 0 when what stays is beyond a limit already; infinite when {@code load} is
   *     zero
   */
  public double reserve(double[] load, double[] rest) {
    double least = one(load[0], rest[0], e1t, e1c);
    least = Math.min(least, one(load[1], rest[1], e2t, e2c));
    return Math.min(least, one(load[2], rest[2], g12, g12));
  }

  private static double one(double load, double rest, double tension, double compression) {
    if (rest >= tension || rest <= -compression) {
      return 0;
    }
    if (load == 0) {
      return Double.POSITIVE_INFINITY;
    }
    return load > 0 ? (tension - rest) / load : (compression + rest) / -load;
  }

  private double along1(double e1) {
    return e1 >= 0 ? e1 / e1t : -e1 / e1c;
  }

  private double along2(double e2) {
    return e2 >= 0 ? e2 / e2t : -e2 / e2c;
  }
}
