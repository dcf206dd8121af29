package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Region;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Paths that leave the finish line after the cutter or beam has taken its width: half of it outside
 * the outline, half of it inside windows and holes, exact in lines and arcs. No path comes nearer
 * to the plate than half the width, so none gouges; what the width cannot reach is stated.
 *
 * @param lines the paths: holes, windows, outline, each in the plate's order
 * @param leftOvers what the cutter cannot reach, where it stands out by more than {@value #IGNORED}
 *     mm
 * @param closed windows and holes that the cutter cannot enter at all; each is a left-over too
 */
public record Compensation(List<CutLine> lines, List<LeftOver> leftOvers, List<CutFeature> closed) {

  /**
   * Left-overs that stand out by no more than this are not stated, mm: what any file in the house
   * may lie off the exact geometry.
   */
  public static final double IGNORED = 0.005;

  /** Copies the lists. */
  public Compensation {
    lines = List.copyOf(lines);
    leftOvers = List.copyOf(leftOvers);
    closed = List.copyOf(closed);
  }

  /**
   * Paths for every edge of a plate.
   *
   * @param width diameter of the cutter, or the kerf, mm, above zero
   * @param on whether to compensate; otherwise paths are the finish lines, and nothing is left over
   * @throws IllegalArgumentException when the width is not above zero
   * @throws felloe.geometry.GeometryException when an offset has no sound result
   */
  public static Compensation of(Plate plate, double width, boolean on) {
    return of(plate, width, on, hole -> false);
  }

  /**
   * The same without the holes that are drilled.
   *
   * @param drilled which holes to leave out
   */
  public static Compensation of(Plate plate, double width, boolean on, Predicate<Hole> drilled) {
    Numbers.positive("width", width);
    List<CutLine> lines = new ArrayList<>();
    List<LeftOver> leftOvers = new ArrayList<>();
    List<CutFeature> closed = new ArrayList<>();
    for (Edge edge : edges(plate, drilled)) {
      if (!on) {
        lines.add(new CutLine(edge.feature(), edge.finish(), edge.finish()));
        continue;
      }
      List<CutLine> along = paths(edge, width / 2);
      lines.addAll(along);
      if (along.isEmpty()) {
        closed.add(edge.feature());
        LargestCircle room = LargestCircle.inside(edge.finish());
        leftOvers.add(
            new LeftOver(edge.feature(), Region.of(edge.finish()), room.centre(), room.radius()));
      } else {
        leftOvers.addAll(new UncutMaterial(edge.feature(), edge.finish(), along, width / 2).all());
      }
    }
    return new Compensation(lines, leftOvers, closed);
  }

  /** The paths along one edge with a feature, in order. */
  public List<CutLine> lines(CutFeature feature) {
    return lines.stream().filter(line -> line.feature().equals(feature)).toList();
  }

  /** The left-over that stands out farthest, if there is any. */
  public Optional<LeftOver> worst() {
    return leftOvers.stream().max((a, b) -> Double.compare(a.reach(), b.reach()));
  }

  private record Edge(CutFeature feature, Contour finish) {}

  private static List<Edge> edges(Plate plate, Predicate<Hole> drilled) {
    List<Edge> edges = new ArrayList<>();
    for (Hole hole : plate.holes()) {
      if (!drilled.test(hole)) {
        edges.add(
            new Edge(
                new CutFeature(hole.label(), CutFeature.Kind.HOLE, hole.place()), hole.contour()));
      }
    }
    for (Window window : plate.windows()) {
      edges.add(
          new Edge(
              new CutFeature(window.label(), CutFeature.Kind.WINDOW, window.place()),
              window.contour()));
    }
    Place place = Place.ofFile(plate.stock().place().file());
    edges.add(new Edge(new CutFeature("outline", CutFeature.Kind.OUTLINE, place), plate.outline()));
    return edges;
  }

  private static List<CutLine> paths(Edge edge, double half) {
    boolean outline = edge.feature().kind() == CutFeature.Kind.OUTLINE;
    List<CutLine> paths = new ArrayList<>();
    for (Region region : Offset.of(edge.finish(), outline ? half : -half)) {
      // An eroded window has no holes. A grown outline has one for each hollow with a closed mouth.
      for (Contour hollow : region.holes()) {
        paths.add(new CutLine(edge.feature(), edge.finish(), hollow));
      }
      paths.add(new CutLine(edge.feature(), edge.finish(), region.outer()));
    }
    return paths;
  }
}
