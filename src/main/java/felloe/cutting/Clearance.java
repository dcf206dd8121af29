package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells whether a cutter has room along a way: clear of every edge of the plate, of clamps, of the
 * walls between its slot and its neighbours', and of the sheet's margin.
 */
final class Clearance {

  /** How much nearer than the cutter's edge a lead may come, mm: rounding of exact touches. */
  private static final double SLACK = 1e-4;

  private final SegmentIndex edges;
  private final Optional<SegmentIndex> neighbours;
  private final Optional<SheetRoom> room;
  private final double cutter;

  /**
   * Prepares.
   *
   * @param cutter the width that is cut, mm
   */
  Clearance(Plate plate, Surroundings round, double cutter) {
    List<Contour> all = new ArrayList<>(plate.region().contours());
    all.addAll(round.clamps());
    this.edges = SegmentIndex.of(all);
    this.neighbours =
        round.neighbours().isEmpty()
            ? Optional.empty()
            : Optional.of(SegmentIndex.of(round.neighbours()));
    this.room = round.room();
    this.cutter = cutter;
  }

  /** Whether the cutter keeps clear of everything all along a way. */
  boolean clear(Segment way) {
    double half = cutter / 2;
    // Beyond a neighbour's edge lie its slot and the wall.
    double wall = half + cutter + Surroundings.WALL;
    return (room.isEmpty() || within(room.get().cut(), way.box().grown(half - SLACK)))
        && away(edges, way, half)
        && (neighbours.isEmpty() || away(neighbours.get(), way, wall));
  }

  private static boolean away(SegmentIndex index, Segment way, double distance) {
    boolean[] clear = {true};
    index.touching(
        way.box().grown(distance),
        number -> {
          clear[0] = clear[0] && Gap.between(way, index.get(number)).distance() > distance - SLACK;
        });
    return clear[0];
  }

  /**
   * Whether a tab has material to hold on to behind its slot.
   *
   * @param at a place on the path
   * @param waste from there to the waste, of length one
   */
  boolean wallBehind(Point at, Point waste) {
    Point wall = at.plus(waste, cutter / 2 + Surroundings.WALL);
    double apart = 1.5 * cutter + Surroundings.WALL;
    return (room.isEmpty() || within(room.get().all(), Box.of(wall, wall)))
        && (neighbours.isEmpty() || neighbours.get().distance(at) > apart - SLACK);
  }

  /** How far a place lies from every edge of the plate and from clamps, mm. */
  double room(Point p) {
    return edges.distance(p);
  }

  private static boolean within(Box outer, Box inner) {
    return inner.minX() >= outer.minX()
        && inner.minY() >= outer.minY()
        && inner.maxX() <= outer.maxX()
        && inner.maxY() <= outer.maxY();
  }
}
