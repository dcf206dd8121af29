package felloe.template;

import felloe.geometry.Tolerances;
import felloe.template.Grid.Span;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The seams of one direction: each where it suits best, so that no tile is wider than a page, the
 * hub pattern stays whole, and the seams keep away from holes.
 *
 * @param tiles what each tile covers, overlaps included
 * @param split whether a seam runs through the hub pattern
 * @param cut number of times that a seam runs through a hole
 * @param distance least distance of a seam from a hole's centre; infinite without seam or hole
 */
record SeamAxis(List<Span> tiles, boolean split, int cut, double distance) {

  /** A seam that just misses a hole stands this far beside it, mm. */
  private static final double BESIDE = 1e-4;

  /**
   * A seam nearer to a hole's edge than this, mm, counts as through the hole: scissors along it
   * would take the drawn edge with them.
   */
  static final double CLEAR = 1;

  /**
   * Tiles are no narrower than this where the page allows it, mm: registration marks at both edges,
   * a page's name and a line of words side by side (common practice).
   */
  private static final double NARROWEST_TILE = 100;

  /** On a small page they are no narrower than this share of what it reaches (common practice). */
  private static final double SHARE_OF_PAGE = 0.8;

  /** Seams are tried in steps of this, mm, and at every place where something changes. */
  private static final double STEP = 0.5;

  /** Takes a list that nobody can change. */
  SeamAxis {
    tiles = List.copyOf(tiles);
  }

  /** Number of tiles that a span needs. */
  static int count(double span, double tile, double overlap) {
    return (int) Math.max(1, Tolerances.up((span - overlap) / (tile - overlap)));
  }

  /** What the seams of one direction have to do with: holes along it, and the hub pattern. */
  static final class Ground {
    private final double[] centres;
    private final double[] starts;
    private final double[] ends;
    private final Span hub;

    /**
     * @param holes hole centres along this direction and how near a seam may come
     * @param hub the stretch that the hub pattern and the bore take; empty (from above to) without
     */
    Ground(double[][] holes, Span hub) {
      this.centres = Arrays.stream(holes).mapToDouble(h -> h[0]).sorted().toArray();
      this.starts = Arrays.stream(holes).mapToDouble(h -> h[0] - h[1]).sorted().toArray();
      this.ends = Arrays.stream(holes).mapToDouble(h -> h[0] + h[1]).sorted().toArray();
      this.hub = hub;
    }

    /** Holes that a seam runs through. */
    int cut(double at) {
      return below(starts, at) - notAbove(ends, at);
    }

    boolean splits(double at) {
      return at > hub.from() && at < hub.to();
    }

    double distance(double at) {
      int next = below(centres, at);
      double up = next < centres.length ? centres[next] - at : Double.POSITIVE_INFINITY;
      double down = next > 0 ? at - centres[next - 1] : Double.POSITIVE_INFINITY;
      return Math.min(up, down);
    }

    private static int below(double[] sorted, double at) {
      int i = Arrays.binarySearch(sorted, at);
      if (i < 0) {
        return -i - 1;
      }
      while (i > 0 && sorted[i - 1] == at) {
        i--;
      }
      return i;
    }

    private static int notAbove(double[] sorted, double at) {
      int i = below(sorted, at);
      while (i < sorted.length && sorted[i] == at) {
        i++;
      }
      return i;
    }

    /** Places where something changes: ends of holes and of the hub, halves of gaps. */
    List<Double> places() {
      List<Double> places = new ArrayList<>();
      for (double start : starts) {
        places.add(start - BESIDE);
      }
      for (double end : ends) {
        places.add(end + BESIDE);
      }
      for (int i = 0; i + 1 < centres.length; i++) {
        places.add((centres[i] + centres[i + 1]) / 2);
      }
      if (hub.from() < hub.to()) {
        places.add(hub.from());
        places.add(hub.to());
      }
      return places;
    }
  }

  /**
   * Good layouts of a span with so many tiles, the best first: the hub whole, fewest holes cut,
   * farthest from hole centres, evenly spread; then one that is spread evenly above all. Empty when
   * so many tiles do not cover it.
   */
  static List<SeamAxis> best(
      double low, double high, int count, double tile, double overlap, Ground ground) {
    if (count == 1) {
      double slack = tile - (high - low);
      List<SeamAxis> all = new ArrayList<>();
      for (double share : slack > 1 ? new double[] {0.5, 1, 0} : new double[] {0.5}) {
        double from = low - share * slack;
        all.add(
            new SeamAxis(List.of(new Span(from, from + tile)), false, 0, Double.POSITIVE_INFINITY));
      }
      return all;
    }
    List<SeamAxis> all = new ArrayList<>();
    for (boolean far : new boolean[] {true, false}) {
      double[] seams = new Search(low, high, count, tile, overlap, ground, far).seams();
      if (seams.length > 0) {
        SeamAxis axis = of(seams, tile, overlap, ground);
        if (all.stream().noneMatch(axis::equals)) {
          all.add(axis);
        }
      }
    }
    return all;
  }

  private static SeamAxis of(double[] seams, double tile, double overlap, Ground ground) {
    List<Span> tiles = new ArrayList<>();
    boolean split = false;
    int cut = 0;
    double distance = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= seams.length; i++) {
      // What the outer tiles have to spare lies outside of the part.
      double to = i < seams.length ? seams[i] + overlap / 2 : seams[i - 1] - overlap / 2 + tile;
      double from = i > 0 ? seams[i - 1] - overlap / 2 : to - tile;
      tiles.add(new Span(from, to));
      if (i < seams.length) {
        split |= ground.splits(seams[i]);
        cut += ground.cut(seams[i]);
        distance = Math.min(distance, ground.distance(seams[i]));
      }
    }
    return new SeamAxis(tiles, split, cut, distance);
  }

  /** The best chain of seams, each from the best one before it that it can follow. */
  private static final class Search {
    private final double low;
    private final double high;
    private final int count;
    private final double tile;
    private final double overlap;
    private final Ground ground;
    private final boolean far;
    private final double[] places;

    Search(
        double low,
        double high,
        int count,
        double tile,
        double overlap,
        Ground ground,
        boolean far) {
      this.low = low;
      this.high = high;
      this.count = count;
      this.tile = tile;
      this.overlap = overlap;
      this.ground = ground;
      this.far = far;
      this.places = places();
    }

    private double reach() {
      return tile - overlap;
    }

    private double first(int seam) {
      return high - (tile - overlap / 2) - (count - 2 - seam) * reach();
    }

    private double last(int seam) {
      return low + tile - overlap / 2 + seam * reach();
    }

    private double[] places() {
      List<Double> all = new ArrayList<>();
      for (int seam = 0; seam + 1 < count; seam++) {
        double from = first(seam);
        double to = last(seam);
        all.add(from);
        all.add(to);
        all.add((from + to) / 2);
        all.add(low + (high - low) * (seam + 1) / count);
      }
      for (double place : ground.places()) {
        all.add(place);
        if (count > 2) {
          all.add(place - reach());
          all.add(place + reach());
        }
      }
      double from = first(0);
      double to = last(count - 2);
      for (double at = from; at < to; at += STEP) {
        all.add(at);
      }
      return all.stream()
          .mapToDouble(Double::doubleValue)
          .filter(at -> at >= from - Tolerances.ROUNDING && at <= to + Tolerances.ROUNDING)
          .sorted()
          .distinct()
          .toArray();
    }

    /** A chain that ends at a place. */
    private record Chain(double at, int split, int cut, double distance, double uneven, Chain up) {}

    private boolean better(Chain a, Chain b) {
      if (a.split != b.split) {
        return a.split < b.split;
      }
      if (a.cut != b.cut) {
        return a.cut < b.cut;
      }
      double more = Math.rint(a.distance * 1e6) - Math.rint(b.distance * 1e6);
      if (far && more != 0 && !(Double.isInfinite(a.distance) && Double.isInfinite(b.distance))) {
        return more > 0;
      }
      return a.uneven < b.uneven;
    }

    private Chain then(Chain before, double at, int seam) {
      double even = low + (high - low) * (seam + 1) / count;
      double off = (at - even) * (at - even);
      int split = ground.splits(at) ? 1 : 0;
      int cut = ground.cut(at);
      double distance = ground.distance(at);
      return before == null
          ? new Chain(at, split, cut, distance, off, null)
          : new Chain(
              at,
              before.split + split,
              before.cut + cut,
              Math.min(before.distance, distance),
              before.uneven + off,
              before);
    }

    double[] seams() {
      double narrow = Math.min(NARROWEST_TILE, SHARE_OF_PAGE * reach());
      List<Chain> before = new ArrayList<>();
      for (int seam = 0; seam + 1 < count; seam++) {
        List<Chain> now = new ArrayList<>();
        Deque<Chain> window = new ArrayDeque<>();
        int next = 0;
        for (double at : places) {
          if (at < first(seam) - Tolerances.ROUNDING || at > last(seam) + Tolerances.ROUNDING) {
            continue;
          }
          if (seam == 0) {
            now.add(then(null, at, seam));
            continue;
          }
          while (next < before.size() && before.get(next).at <= at - narrow) {
            Chain chain = before.get(next++);
            while (!window.isEmpty() && !better(window.peekLast(), chain)) {
              window.removeLast();
            }
            window.addLast(chain);
          }
          while (!window.isEmpty() && window.peekFirst().at < at - reach() - Tolerances.ROUNDING) {
            window.removeFirst();
          }
          if (!window.isEmpty()) {
            now.add(then(window.peekFirst(), at, seam));
          }
        }
        before = now;
      }
      Chain best = null;
      for (Chain chain : before) {
        best = best == null || better(chain, best) ? chain : best;
      }
      double[] seams = new double[best == null ? 0 : count - 1];
      for (int i = seams.length - 1; best != null; i--, best = best.up) {
        seams[i] = best.at;
      }
      return seams;
    }
  }
}
