package felloe.bringin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The lines of the sheets that sights lie on, and what a printer's dots do to them: each line as a
 * whole lies to one side by a part of a dot, so that many places along it say no more of the camera
 * than one place would that is as far off.
 */
final class PrintedLines {

  /** Sights off by so many times the usual are none of an edge's. */
  private static final double OUTLIER = 4;

  /**
   * Lines lie to one side by this at the least, standard deviation, mm: edges that are put on the
   * nearest of 600 dots to an inch are off by the twelfth root of a dot's square.
   */
  static final double LEAST = 25.4 / 600 / Math.sqrt(12);

  /** From the median of what is off to its standard deviation. */
  private static final double TO_DEVIATION = 1.4826;

  /** What is left over is at least this much, pixels. */
  private static final double FINEST = 0.01;

  private final List<MarkSides.Sight> sights;

  /** For each line the sights on it. */
  private final List<int[]> lines = new ArrayList<>();

  PrintedLines(List<MarkSides.Sight> sights) {
    this.sights = sights;
    Map<MarkSides.Line, List<Integer>> all = new LinkedHashMap<>();
    for (int i = 0; i < sights.size(); i++) {
      int at = i;
      sights
          .get(i)
          .line()
          .ifPresent(line -> all.computeIfAbsent(line, none -> new ArrayList<>()).add(at));
    }
    all.values().forEach(on -> lines.add(on.stream().mapToInt(Integer::intValue).toArray()));
  }

  /** For each line the sights on it. */
  List<int[]> lines() {
    return lines;
  }

  /**
   * What is left over at the sights, the shifts of their lines told apart.
   *
   * @param own what is left over at each sight when its line is shifted, pixels
   * @param shifts of the lines, mm
   * @param noise usual one of what is left over, standard deviation, pixels
   * @param printed usual shift of a line, standard deviation, mm
   */
  record Left(double[] own, double[] shifts, double noise, double printed) {

    /** Whether a sight is none of the edge's. */
    boolean astray(int sight) {
      return Math.abs(own[sight]) > OUTLIER * noise;
    }

    /** Sum of squares, sights astray counted as far as that. */
    double cost() {
      double sum = 0;
      for (double off : own) {
        double r = off / noise;
        sum += Double.isNaN(r) ? Double.POSITIVE_INFINITY : Math.min(r * r, OUTLIER * OUTLIER);
      }
      for (double shift : shifts) {
        sum += shift * shift / (printed * printed);
      }
      return sum;
    }

    /** What noise is usual here, pixels. */
    double seenNoise() {
      return Math.max(FINEST, TO_DEVIATION * median(own));
    }

    /** What shift is usual here, mm. */
    double seenShift() {
      double sum = 0;
      for (double shift : shifts) {
        sum += shift * shift / shifts.length;
      }
      return Math.max(LEAST, Math.sqrt(sum));
    }
  }

  /**
   * Tells the shifts apart.
   *
   * @param off what is left over at each sight, pixels
   * @param noise usual one of what is left over beside the shifts, standard deviation, pixels
   * @param printed usual shift of a line, standard deviation, mm
   */
  Left left(double[] off, double noise, double printed) {
    double[] own = off.clone();
    double[] shifts = new double[lines.size()];
    for (int k = 0; k < shifts.length; k++) {
      int[] on = lines.get(k);
      double[] each = new double[on.length];
      for (int i = 0; i < on.length; i++) {
        each[i] = off[on[i]] / sights.get(on[i]).perMm();
      }
      Arrays.sort(each);
      double middle = each[each.length / 2];
      double product = 0;
      double weight = noise * noise / (printed * printed);
      for (int i : on) {
        double perMm = sights.get(i).perMm();
        if (Math.abs(off[i] - middle * perMm) <= OUTLIER * noise) {
          product += off[i] * perMm;
          weight += perMm * perMm;
        }
      }
      shifts[k] = product / weight;
      for (int i : on) {
        own[i] -= shifts[k] * sights.get(i).perMm();
      }
    }
    return new Left(own, shifts, noise, printed);
  }

  /** What is left over in all, shifts of lines among it: standard deviation, pixels. */
  static double all(double[] off) {
    return Math.max(FINEST, TO_DEVIATION * median(off));
  }

  private static double median(double[] off) {
    double[] size = new double[off.length];
    for (int i = 0; i < size.length; i++) {
      size[i] = Math.abs(off[i]);
    }
    Arrays.sort(size);
    return size[size.length / 2];
  }
}
