package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Where a fitted chain lacks a stretch: along it places lie off to one side in a row, by more than
 * chance allows. Chains with one stretch more there are made, for the photo to choose from.
 */
final class StretchesLacked {

  /** So many neighbours are taken together: what they lie off in the mean is hardly chance. */
  private static final int TOGETHER = 5;

  /** A row lies off by so many times what single places do. */
  private static final double TIMES = 4;

  /** Single places lie off by no less than this, mm: neighbours err together. */
  private static final double LEAST_SPREAD = 0.03;

  /** Neighbours err together, so that the whole spread is more than what they differ by. */
  private static final double NEIGHBOURS = 2.5;

  /** The variance of third differences is so many times a place's. */
  private static final double OF_THIRD = 20;

  /** The median deviation of a normal distribution times this is its standard deviation. */
  private static final double OF_MEDIAN = 1.4826;

  /** Where a row ends, share of what it is off at the most. */
  private static final double END = 0.4;

  /** What is left of a stretch beside a row is a stretch of its own when it has so many places. */
  private static final int OWN = 4;

  /** A row runs over no more joints. */
  private static final int MOST_JOINTS = 2;

  /** An arc that rises by more of half its chord is none that is lacking. */
  private static final double STEEPEST = 1.5;

  private final EdgeChain chain;
  private final List<EdgeChain.Measured> places;
  private final int n;

  private StretchesLacked(EdgeChain chain, List<EdgeChain.Measured> places) {
    this.chain = chain;
    this.places = places;
    this.n = places.size();
  }

  /**
   * A row of places that lie off a chain.
   *
   * @param from number of its first place
   * @param to number of its last place, which may be beyond the last of all
   * @param worst number of the one that is farthest off
   * @param off how far the chain lies off there, mm
   */
  private record Row(int from, int to, int worst, double off) {}

  /**
   * Chains with a stretch more, for each row of places that the chain lies off; the row that is
   * farthest off first.
   *
   * @param places along the chain, in order
   * @return none where chance explains what is left
   */
  static List<List<EdgeChain>> tries(EdgeChain chain, List<EdgeChain.Measured> places) {
    if (chain.round() || places.size() < 2 * TOGETHER) {
      return List.of();
    }
    StretchesLacked lacked = new StretchesLacked(chain, places);
    return lacked.rows().stream().map(lacked::tries).toList();
  }

  /**
   * Where a chain lies farthest off a row of places; empty where chance explains what is left.
   *
   * @param places along the chain, in order
   */
  static Optional<EdgeChain.Astray> left(EdgeChain chain, List<EdgeChain.Measured> places) {
    if (chain.round() || places.size() < 2 * TOGETHER) {
      return Optional.empty();
    }
    StretchesLacked lacked = new StretchesLacked(chain, places);
    return lacked.rows().stream()
        .findFirst()
        .map(row -> new EdgeChain.Astray(lacked.place(row.worst()).at(), row.off()));
  }

  private List<Row> rows() {
    double[] off = places.stream().mapToDouble(chain::off).toArray();
    double limit = TIMES * Math.max(LEAST_SPREAD, NEIGHBOURS * rough(off));
    double[] mean = new double[n];
    for (int i = 0; i < n; i++) {
      for (int k = -TOGETHER / 2; k <= TOGETHER / 2; k++) {
        mean[i] += off[Math.floorMod(i + k, n)] / TOGETHER;
      }
    }
    boolean[] taken = new boolean[n];
    List<Row> all = new ArrayList<>();
    while (true) {
      int worst = -1;
      for (int i = 0; i < n; i++) {
        boolean more = worst < 0 || Math.abs(mean[i]) > Math.abs(mean[worst]);
        worst = !taken[i] && Math.abs(mean[i]) > limit && more ? i : worst;
      }
      if (worst < 0) {
        return all;
      }
      double most = mean[worst];
      int from = worst;
      int to = worst;
      while (to - from < n / 2 && mean[Math.floorMod(from - 1, n)] / most > END) {
        from--;
      }
      while (to - from < n / 2 && mean[Math.floorMod(to + 1, n)] / most > END) {
        to++;
      }
      for (int i = from; i <= to; i++) {
        taken[Math.floorMod(i, n)] = true;
      }
      // Counted from the first place of all on.
      int turn = from < 0 ? n : 0;
      all.add(new Row(from + turn, to + turn, worst + turn, Math.abs(most)));
    }
  }

  /** Standard deviation of single places by what neighbours differ, mm: a bend does not count. */
  private double rough(double[] off) {
    double[] third = new double[n];
    for (int i = 0; i < n; i++) {
      third[i] = Math.abs(off[(i + 3) % n] - 3 * off[(i + 2) % n] + 3 * off[(i + 1) % n] - off[i]);
    }
    Arrays.sort(third);
    return OF_MEDIAN * third[n / 2] / Math.sqrt(OF_THIRD);
  }

  private EdgeChain.Measured place(int i) {
    return places.get(Math.floorMod(i, n));
  }

  private List<EdgeChain> tries(Row row) {
    List<EdgeChain> all = new ArrayList<>();
    int first = place(row.from()).stretch();
    int last = place(row.to()).stretch();
    int joints = Math.floorMod(last - first, chain.stretches());
    if (joints <= MOST_JOINTS && chain.stretches() > joints + 1) {
      all.add(bridged(row, first, last));
    }
    all.add(halved(row.worst()));
    all.add(bent(row.worst()));
    return all;
  }

  /** With an arc along all of the row instead of what the chain has there. */
  private EdgeChain bridged(Row row, int first, int last) {
    int before = row.from();
    while (row.from() - before < n && place(before - 1).stretch() == first) {
      before--;
    }
    int after = row.to();
    while (after - row.to() < n && place(after + 1).stretch() == last) {
      after++;
    }
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    Point start = chain.joint(first);
    if (row.from() - before >= OWN) {
      Point to = place(row.from()).at();
      joints.add(start);
      rises.add(part(first, start, to, before, row.from()));
      start = to;
    }
    boolean more = after - row.to() >= OWN;
    Point end = more ? place(row.to()).at() : chain.joint(last + 1);
    joints.add(start);
    rises.add(through(start, place((row.from() + row.to()) / 2).at(), end));
    if (more) {
      joints.add(end);
      rises.add(part(last, end, chain.joint(last + 1), row.to(), after));
    }
    // The stretches that the row does not touch, in order from the one after it.
    int n0 = chain.stretches();
    for (int k = last + 1; Math.floorMod(k - first, n0) != 0; k++) {
      joints.add(chain.joint(Math.floorMod(k, n0)));
      rises.add(chain.rise(Math.floorMod(k, n0)));
    }
    return made(joints, rises);
  }

  /** With its stretch at a place parted in two there, an arc each. */
  private EdgeChain halved(int i) {
    int k = place(i).stretch();
    int before = i;
    while (i - before < n && place(before - 1).stretch() == k) {
      before--;
    }
    int after = i;
    while (after - i < n && place(after + 1).stretch() == k) {
      after++;
    }
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    for (int s = 0; s < chain.stretches(); s++) {
      joints.add(chain.joint(s));
      rises.add(chain.rise(s));
    }
    Point at = place(i).at();
    rises.set(k, through(chain.joint(k), place((before + i) / 2).at(), at));
    joints.add(k + 1, at);
    rises.add(k + 1, through(at, place((i + after) / 2).at(), chain.joint(k + 1)));
    return made(joints, rises);
  }

  /** With its stretch at a place an arc through it. */
  private EdgeChain bent(int i) {
    int k = place(i).stretch();
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    for (int s = 0; s < chain.stretches(); s++) {
      joints.add(chain.joint(s));
      rises.add(
          s == k ? through(chain.joint(s), place(i).at(), chain.joint(s + 1)) : chain.rise(s));
    }
    return made(joints, rises);
  }

  /** A line stays one; of an arc its middle place tells how it rises. */
  private double part(int stretch, Point from, Point to, int first, int last) {
    return chain.rise(stretch) == 0 ? 0 : through(from, place((first + last) / 2).at(), to);
  }

  /** How far an arc through a place rises to the right of its chord, mm. */
  private static double through(Point from, Point by, Point to) {
    Point a = from.minus(by);
    Point b = to.minus(by);
    // Seen from the arc its chord stands under half of what the arc does not sweep.
    double seen = Math.atan2(Math.abs(a.cross(b)), a.dot(b));
    double half = from.distance(to) / 2;
    double rise = half / Math.tan(seen / 2);
    if (!(rise < STEEPEST * half)) {
      // The place lies beside its chord or on it.
      return 0;
    }
    return to.minus(from).cross(by.minus(from)) > 0 ? -rise : rise;
  }

  private EdgeChain made(List<Point> joints, List<Double> rises) {
    return EdgeChain.of(joints, rises).known(chain.spread(), chain.found());
  }
}
