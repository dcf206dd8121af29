package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * Segments findable by place, numbered as they were given. Built once, then only read; safe to
 * share between threads.
 */
public final class SegmentIndex {

  private final List<Segment> segments;
  private final BoxIndex boxes;

  /**
   * Builds the index.
   *
   * @throws IllegalArgumentException when there are no segments
   */
  public SegmentIndex(List<? extends Segment> segments) {
    if (segments.isEmpty()) {
      throw new IllegalArgumentException("an index needs segments");
    }
    this.segments = List.copyOf(segments);
    this.boxes = new BoxIndex(this.segments.stream().map(Segment::box).toList());
  }

  /** The index of all segments of some contours, in their order. */
  public static SegmentIndex of(List<Contour> contours) {
    List<Segment> all = new ArrayList<>();
    contours.forEach(contour -> all.addAll(contour.segments()));
    return new SegmentIndex(all);
  }

  public Segment get(int number) {
    return segments.get(number);
  }

  /** The number of the segment nearest to a point. */
  public int nearest(Point p) {
    return boxes.nearest(p, i -> segments.get(i).distance(p));
  }

  /** The distance from a point to the nearest segment, mm. */
  public double distance(Point p) {
    return segments.get(nearest(p)).distance(p);
  }

  /** Calls {@code found} with the number of every segment whose box touches the given one. */
  public void touching(Box box, IntConsumer found) {
    boxes.touching(box, found);
  }

  /** Two segments that share a point which they should not. */
  record Clash(int first, int second, Point where) {}

  /** Judges a pair of segments that lie near each other. */
  @FunctionalInterface
  interface PairTest {
    /** Where the two clash, if they do. */
    Optional<Point> clash(int first, int second);
  }

  /** The clash with the lowest numbers among pairs of segments whose boxes touch. */
  Optional<Clash> firstClash(PairTest test) {
    for (int i = 0; i < segments.size(); i++) {
      int first = i;
      List<Clash> found = new ArrayList<>();
      boxes.touching(
          segments.get(i).box().grown(Tolerances.SAME_POINT),
          j -> {
            if (j > first) {
              test.clash(first, j).ifPresent(p -> found.add(new Clash(first, j, p)));
            }
          });
      Optional<Clash> least = found.stream().min((a, b) -> Integer.compare(a.second(), b.second()));
      if (least.isPresent()) {
        return least;
      }
    }
    return Optional.empty();
  }
}
