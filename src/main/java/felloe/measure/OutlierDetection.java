package felloe.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Searches for slips by data snooping: the reading with the largest standardised residual is taken
 * out and the rest adjusted again, until none is beyond {@link #CRITICAL}. Readings that the others
 * do not tell apart are named together, and then none is taken out.
 *
 * @param adjustment of the readings that are left
 * @param suspects those that look like slips, taken out or not
 */
record OutlierDetection(Adjustment adjustment, List<Suspect> suspects) {

  /** Chance goes beyond this in one of a thousand readings (W. Baarda 1968). */
  static final double CRITICAL = 3.29;

  /** Standardised residuals that differ by less than this part belong to one slip. */
  private static final double ALIKE = 0.01;

  private static final int MOST = 10;

  /** So many slips, or this part of the readings, are believed. */
  private static final int FEW = 2;

  private static final int PART = 8;
  private static final double RARE = 0.05;

  static OutlierDetection of(Equations equations, Function<Equations, Adjustment> adjust) {
    Adjustment first = adjust.apply(equations);
    Adjustment adjustment = first;
    List<Reading> out = new ArrayList<>();
    List<Suspect> together = new ArrayList<>();
    while (out.size() < MOST) {
      List<Integer> worst = worst(adjustment);
      if (worst.isEmpty()) {
        break;
      }
      Reading reading = adjustment.readings().get(worst.get(0));
      List<Reading> left = new ArrayList<>(out);
      left.add(reading);
      Adjustment next = worst.size() > 1 ? null : adjust.apply(equations.without(left));
      if (next == null || !ObservabilityTest.all(next)) {
        for (int k : worst) {
          together.add(suspect(adjustment, k, worst.size() == 1));
        }
        break;
      }
      out = left;
      adjustment = next;
    }
    List<Reading> slips = new ArrayList<>();
    for (Reading reading : out) {
      if (Math.abs(missedBy(adjustment, reading)) > CRITICAL) {
        slips.add(reading);
      }
    }
    if (!slips.isEmpty() && together.isEmpty() && !believed(adjustment, slips, equations.count())) {
      return scattered(first);
    }
    if (slips.size() < out.size()) {
      // What went out because of another slip comes in again.
      adjustment = adjust.apply(equations.without(slips));
    }
    List<Suspect> suspects = new ArrayList<>();
    for (Reading reading : slips) {
      double off = off(adjustment, reading);
      double w = missedBy(adjustment, reading);
      suspects.add(new Suspect(reading, off, w, true, false, hint(adjustment, reading, off)));
    }
    suspects.addAll(together);
    return new OutlierDetection(adjustment, List.copyOf(suspects));
  }

  /**
   * Whether what went out are slips: they are few, what is left agrees as its plus and minus says,
   * and where there are several, each is far beyond what a poor calliper does.
   */
  private static boolean believed(Adjustment rest, List<Reading> slips, int readings) {
    if (slips.size() > Math.max(FEW, readings / PART) || VarianceFactor.of(rest).large()) {
      return false;
    }
    return slips.size() == 1
        || slips.stream().allMatch(s -> Math.abs(missedBy(rest, s)) > 2 * CRITICAL);
  }

  /**
   * Where many readings are beyond what their plus and minus allows, it is the plus and minus that
   * is wrong. Slips are then judged by the scatter of the readings themselves: the tau test (A. J.
   * Pope, The statistics of residuals and the detection of outliers, NOAA 1976). None is taken out.
   */
  private static OutlierDetection scattered(Adjustment adjustment) {
    int freedom = adjustment.freedom();
    List<Suspect> suspects = new ArrayList<>();
    if (freedom > 1) {
      double scatter = Math.sqrt(adjustment.cost() / freedom);
      double limit = tau(freedom, RARE / adjustment.readings().size());
      for (int k = 0; k < adjustment.readings().size(); k++) {
        if (Math.abs(adjustment.w(k)) / scatter > limit) {
          suspects.add(suspect(adjustment, k, false));
        }
      }
    }
    return new OutlierDetection(adjustment, List.copyOf(suspects));
  }

  /** The two-sided critical value of tau, from Student's t with one degree of freedom less. */
  static double tau(int freedom, double chance) {
    double t = new TDistribution(freedom - 1).inverseCumulativeProbability(1 - chance / 2);
    return t * Math.sqrt(freedom) / Math.sqrt(freedom - 1 + t * t);
  }

  /** The readings with the largest standardised residual, when that is beyond chance. */
  private static List<Integer> worst(Adjustment adjustment) {
    double most = 0;
    for (int k = 0; k < adjustment.readings().size(); k++) {
      most = Math.max(most, Math.abs(adjustment.w(k)));
    }
    List<Integer> worst = new ArrayList<>();
    for (int k = 0; k < adjustment.readings().size() && most > CRITICAL; k++) {
      if (Math.abs(adjustment.w(k)) >= most * (1 - ALIKE)) {
        worst.add(k);
      }
    }
    return worst;
  }

  private static Suspect suspect(Adjustment adjustment, int k, boolean alone) {
    Reading reading = adjustment.readings().get(k);
    double off = adjustment.slip(k);
    return new Suspect(reading, off, adjustment.w(k), alone, false, hint(adjustment, reading, off));
  }

  /** What was read less what an adjustment without the reading says, mm. */
  static double off(Adjustment adjustment, Reading reading) {
    Equations one = new Equations(adjustment.equations().unknowns(), List.of(reading));
    return reading.reads() - one.value(0, adjustment.z());
  }

  /** The same over its standard error: what the standardised residual was with it. */
  static double missedBy(Adjustment adjustment, Reading reading) {
    double[] row = adjustment.equations().gradient(reading, adjustment.z());
    double error = Math.hypot(reading.sigma(), adjustment.standardError(row));
    return off(adjustment, reading) / error;
  }

  /** Outside, inside and centres differ by the holes' size, so a mix-up shows as such. */
  static String hint(Adjustment adjustment, Reading reading, double off) {
    if (!reading.isPair()) {
      return "";
    }
    double[] z = adjustment.z();
    Unknowns unknowns = adjustment.equations().unknowns();
    double sizes = (z[unknowns.size(reading.from())] + z[unknowns.size(reading.to())]) / 2;
    if (sizes <= 0) {
      return "";
    }
    for (ReadingKind over :
        new ReadingKind[] {ReadingKind.OUTSIDE, ReadingKind.CENTRES, ReadingKind.INSIDE}) {
      double shift = (over.halves() - reading.over().halves()) * sizes;
      if (over != reading.over() && Math.abs(off - shift) < 0.1 * sizes) {
        return "reads like over " + over.words();
      }
    }
    return "";
  }
}
