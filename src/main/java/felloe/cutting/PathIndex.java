package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.SegmentIndex;
import java.util.ArrayList;
import java.util.List;

/** All paths of a plan, to ask which others come near a place on one of them. */
final class PathIndex {

  private final SegmentIndex segments;
  private final List<CutLine> owners = new ArrayList<>();

  PathIndex(List<CutLine> lines) {
    List<Contour> paths = new ArrayList<>();
    for (CutLine line : lines) {
      paths.add(line.path());
      line.path().segments().forEach(segment -> owners.add(line));
    }
    this.segments = SegmentIndex.of(paths);
  }

  /** Whether every path but one keeps a distance from a point. */
  boolean othersClear(CutLine one, Point p, double distance) {
    boolean[] clear = {true};
    segments.touching(
        Box.of(p, p).grown(distance),
        number -> {
          if (owners.get(number) != one && segments.get(number).distance(p) < distance) {
            clear[0] = false;
          }
        });
    return clear[0];
  }
}
