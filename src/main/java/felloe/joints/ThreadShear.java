package felloe.joints;

import felloe.hub.ScrewThread;

/**
 * Area of thread that shears when a screw is pulled out, mm² for each mm of engagement, at the
 * worst of the tolerances: the thinnest screw in the widest hole.
 *
 * <p>Formulas of FED-STD-H28/2B. Tolerances 6g and 6H by the formulas of ISO 965-1 for metric
 * threads, 2A and 2B by those of ASME B1.1 for unified ones (from memory, held against the printed
 * tables in a test).
 *
 * @param internal of the tapped thread, at the screw's crests
 * @param external of the screw's thread, at the hole's crests
 */
public record ThreadShear(double internal, double external) {

  private static final double TAN_30 = 0.57735;
  private static final double INCH = 25.4;

  /** The areas of a thread. */
  public static ThreadShear of(ScrewThread thread) {
    double d = thread.diameter();
    double p = thread.pitch();
    double pitchDiameter = d - 0.649519 * p;
    double minor = d - 1.082532 * p;
    double leastMajor;
    double leastPitch;
    double mostPitch;
    double mostMinor;
    if (StrengthClass.isInch(thread)) {
      double inchP = p / INCH;
      double inchD = d / INCH;
      double pitchTolerance =
          0.0015 * Math.cbrt(inchD) + 0.0015 * Math.sqrt(inchD) + 0.015 * Math.cbrt(inchP * inchP);
      double allowance = 0.3 * pitchTolerance;
      double minorTolerance =
          inchD < 0.25
              ? 0.05 * Math.cbrt(inchP * inchP) + 0.03 * inchP / inchD - 0.002
              : 0.25 * inchP - 0.4 * inchP * inchP;
      leastMajor = d - INCH * (allowance + 0.06 * Math.cbrt(inchP * inchP));
      leastPitch = pitchDiameter - INCH * (allowance + pitchTolerance);
      mostPitch = pitchDiameter + INCH * 1.3 * pitchTolerance;
      mostMinor = minor + INCH * minorTolerance;
    } else {
      double allowance = (15 + 11 * p) / 1000;
      double pitchTolerance = 90 * Math.pow(p, 0.4) * Math.pow(rangeMean(d), 0.1) / 1000;
      double majorTolerance = (180 * Math.cbrt(p * p) - 3.15 / Math.sqrt(p)) / 1000;
      double minorTolerance =
          (p < 1 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7)) / 1000;
      leastMajor = d - allowance - majorTolerance;
      leastPitch = pitchDiameter - allowance - pitchTolerance;
      mostPitch = pitchDiameter + 1.32 * pitchTolerance;
      mostMinor = minor + minorTolerance;
    }
    return new ThreadShear(
        Math.PI / p * leastMajor * (p / 2 + TAN_30 * (leastMajor - mostPitch)),
        Math.PI / p * mostMinor * (p / 2 + TAN_30 * (leastPitch - mostMinor)));
  }

  /** Geometric mean of the range of diameters of ISO 965-1 that a thread lies in, mm. */
  private static double rangeMean(double d) {
    double[] bounds = {0.99, 1.4, 2.8, 5.6, 11.2, 22.4};
    for (int i = 1; i < bounds.length; i++) {
      if (d <= bounds[i]) {
        return Math.sqrt(bounds[i - 1] * bounds[i]);
      }
    }
    return d;
  }
}
