package felloe.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Places the seams of one direction: where the first tile starts, so that the tiles cover a span
 * and the seams keep away from holes.
 *
 * @param start where the first tile starts
 * @param cut number of holes that a seam runs through
 * @param distance least distance of a seam from a hole's centre; infinite without seam or hole
 */
record SeamAxis(double start, int cut, double distance) {

  /**
   * A seam nearer to a hole's edge than this, mm, counts as through the hole: scissors along it
   * would take the drawn edge with them.
   */
  static final double CLEAR = 1;

  /** Fewest holes cut, then farthest from hole centres, then nearest to the middle. */
  private static Comparator<SeamAxis> order(double middle) {
    return Comparator.comparingInt(SeamAxis::cut)
        .thenComparing(axis -> -Math.rint(axis.distance * 1e6))
        .thenComparing(axis -> Math.abs(axis.start - middle))
        .thenComparing(SeamAxis::start);
  }

  /** Number of tiles that a span needs. */
  static int count(double span, double tile, double overlap) {
    return (int) Math.max(1, Math.ceil((span - overlap) / (tile - overlap) - 1e-9));
  }

  /**
   * The best places, best first. The least distance to a hole centre is piecewise linear in the
   * start, so that its greatest values lie at the ends of the slack, half way between two starts
   * that hit a hole, or where a seam comes clear of a hole.
   *
   * @param holes hole centres along this direction and how near a seam may come, sorted
   * @param most how many to return at most
   */
  static List<SeamAxis> best(
      double low, double high, int count, double tile, double overlap, double[][] holes, int most) {
    double length = count * tile - (count - 1) * overlap;
    double slack = Math.max(0, length - (high - low));
    double from = low - slack;
    double middle = low - slack / 2;
    if (count == 1) {
      return List.of(new SeamAxis(middle, 0, Double.POSITIVE_INFINITY));
    }
    List<SeamAxis> all = new ArrayList<>();
    double[] starts = candidates(from, low, count, tile, overlap, holes);
    for (double start : starts) {
      all.add(judged(start, count, tile, overlap, holes));
    }
    all.sort(order(middle));
    return List.copyOf(all.subList(0, Math.min(most, all.size())));
  }

  private static double[] candidates(
      double from, double to, int count, double tile, double overlap, double[][] holes) {
    List<Double> hits = new ArrayList<>();
    List<Double> starts = new ArrayList<>(List.of(from, (from + to) / 2, to));
    for (int k = 0; k + 1 < count; k++) {
      double seam = (k + 1) * (tile - overlap) + overlap / 2;
      for (double[] hole : holes) {
        double hit = hole[0] - seam;
        hits.add(hit);
        double clear = hole[1] + 1e-4;
        starts.add(hit - clear);
        starts.add(hit + clear);
      }
    }
    hits.sort(Comparator.naturalOrder());
    for (int i = 0; i + 1 < hits.size(); i++) {
      starts.add((hits.get(i) + hits.get(i + 1)) / 2);
    }
    return starts.stream()
        .mapToDouble(Double::doubleValue)
        .filter(s -> s >= from && s <= to)
        .sorted()
        .distinct()
        .toArray();
  }

  private static SeamAxis judged(
      double start, int count, double tile, double overlap, double[][] holes) {
    int cut = 0;
    double least = Double.POSITIVE_INFINITY;
    double step = tile - overlap;
    double first = start + step + overlap / 2;
    for (double[] hole : holes) {
      double k = Math.rint((hole[0] - first) / step);
      double seam = first + Math.min(count - 2, Math.max(0, k)) * step;
      double distance = Math.abs(hole[0] - seam);
      least = Math.min(least, distance);
      // A hole wider than a tile may be cut by several seams.
      for (int i = 0; i + 1 < count; i++) {
        if (Math.abs(hole[0] - (first + i * step)) < hole[1]) {
          cut++;
        }
      }
    }
    return new SeamAxis(start, cut, least);
  }

  /** Hole centres along one direction, with how near a seam may come to them, sorted. */
  static double[][] holes(double[] centres, double[] radii) {
    double[][] holes = new double[centres.length][];
    for (int i = 0; i < centres.length; i++) {
      holes[i] = new double[] {centres[i], radii[i] + CLEAR};
    }
    Arrays.sort(holes, Comparator.comparingDouble(hole -> hole[0]));
    return holes;
  }
}
