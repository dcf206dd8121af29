package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/** Tells whether a cutter has room along a way, clear of every edge of the plate. */
final class Clearance {

  /** How much nearer than the cutter's edge a lead may come, mm: rounding of exact touches. */
  private static final double SLACK = 1e-4;

  private final SegmentIndex edges;

  Clearance(Plate plate, List<Contour> keepOut) {
    List<Contour> all = new ArrayList<>(plate.region().contours());
    all.addAll(keepOut);
    this.edges = SegmentIndex.of(all);
  }

  /** Whether nothing lies nearer to the way than half the cutter's width. */
  boolean clear(Segment way, double half) {
    boolean[] clear = {true};
    edges.touching(
        way.box().grown(half),
        number -> {
          clear[0] = clear[0] && Gap.between(way, edges.get(number)).distance() > half - SLACK;
        });
    return clear[0];
  }
}
