package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Regions whose edges stay clear of each other: what they have in common, and what is left of one
 * without the other, follow from which edge lies in which region, without a cut anywhere. No curve
 * is flattened, so that the answer is exact, and it comes in a fraction of the time.
 *
 * <p>Source: the edge of an intersection is what of each region's edge lies in the other; that of a
 * difference, what of the first's lies outside the second, and of the second's inside the first
 * (the rules of every boundary evaluation). Edges that do not meet lie in or out as a whole.
 */
final class Apart {

  /** Edges that come nearer than this are left to the chords, which err by half of it. */
  private static final double CLEAR = 2 * Tolerances.CHORD;

  private Apart() {}

  /**
   * What each region of a list has in common with one other; the first ones lie apart from each
   * other, as regions of one list do.
   *
   * @return empty where edges come near each other
   */
  static Optional<List<Region>> intersection(List<Region> a, Region b) {
    List<Region> all = new ArrayList<>();
    for (Region one : a) {
      if (!clear(one, b)) {
        return Optional.empty();
      }
      common(one, b).ifPresent(all::add);
    }
    return Optional.of(all);
  }

  private static Optional<Region> common(Region a, Region b) {
    boolean first = in(a.outer(), b);
    if (!first && !in(b.outer(), a)) {
      return Optional.empty();
    }
    List<Contour> holes = new ArrayList<>();
    a.holes().stream().filter(hole -> in(hole, b)).forEach(holes::add);
    b.holes().stream().filter(hole -> in(hole, a)).forEach(holes::add);
    return Optional.of(new Region(first ? a.outer() : b.outer(), holes));
  }

  /**
   * What is left of regions without others that have no holes.
   *
   * @return empty where edges come near each other, or where the others have holes
   */
  static Optional<List<Region>> difference(List<Region> a, List<Region> b) {
    List<Region> left = a;
    for (Region other : b) {
      List<Region> next = new ArrayList<>();
      for (Region one : left) {
        if (!other.holes().isEmpty() || !clear(one, other)) {
          return Optional.empty();
        }
        less(one, other).ifPresent(next::add);
      }
      left = next;
    }
    return Optional.of(left);
  }

  private static Optional<Region> less(Region a, Region b) {
    if (in(a.outer(), b)) {
      return Optional.empty();
    }
    if (!in(b.outer(), a)) {
      // It lies beside the region, or in one of its holes.
      return Optional.of(a);
    }
    List<Contour> holes = new ArrayList<>();
    a.holes().stream().filter(hole -> !in(hole, b)).forEach(holes::add);
    holes.add(b.outer());
    return Optional.of(new Region(a.outer(), holes));
  }

  /** Whether an edge that meets none of a region's lies in it. */
  private static boolean in(Contour edge, Region region) {
    Point p = edge.segments().get(0).from();
    return region.outer().box().contains(p) && region.contains(p);
  }

  private static boolean clear(Region a, Region b) {
    for (Contour one : a.contours()) {
      for (Contour other : b.contours()) {
        if (one.box().grown(CLEAR).touches(other.box()) && near(one, other)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean near(Contour a, Contour b) {
    SegmentIndex index = SegmentIndex.of(List.of(b));
    for (Segment one : a.segments()) {
      boolean[] near = {false};
      index.touching(
          one.box().grown(CLEAR),
          number -> near[0] = near[0] || Gap.between(one, index.get(number)).distance() <= CLEAR);
      if (near[0]) {
        return true;
      }
    }
    return false;
  }
}
