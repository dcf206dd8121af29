package felloe.drilling;

import java.util.ArrayList;
import java.util.List;

/**
 * Which pairs of holes are measured, so that their distances fix where all of them lie.
 *
 * <p>Up to six holes: every pair. More: each hole to its neighbour, to the next but one, and to the
 * one half the ring on. Neighbours and next but ones alone make a strip of triangles, which is
 * rigid; the far pairs keep small errors from adding up along it.
 */
final class MeasuredPairs {

  /** Up to so many holes every pair is measured. */
  static final int ALL = 6;

  /** A pair of holes, by their places in the list. */
  record Pair(int from, int to) {}

  private MeasuredPairs() {}

  /** Pairs of {@code count} holes in the order of a ring, near ones first; none for one hole. */
  static List<Pair> of(int count) {
    List<Pair> pairs = new ArrayList<>();
    for (int step = 1; step <= count / 2; step++) {
      boolean measured = count <= ALL || step <= 2 || step == count / 2;
      int ends = 2 * step == count ? count / 2 : count;
      for (int i = 0; measured && i < ends; i++) {
        int j = (i + step) % count;
        pairs.add(new Pair(i, j));
      }
    }
    return pairs;
  }

  /** Pairs to look at after the pilot drill: neighbours, and those half the ring on. */
  static List<Pair> quick(int count) {
    List<Pair> pairs = new ArrayList<>();
    for (int step : count >= 4 ? new int[] {1, count / 2} : new int[] {1}) {
      int ends = 2 * step == count ? count / 2 : count < 2 ? 0 : count;
      for (int i = 0; i < ends; i++) {
        pairs.add(new Pair(i, (i + step) % count));
      }
    }
    return pairs;
  }
}
