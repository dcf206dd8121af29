package felloe.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * What lies within a distance of an edge, as polygons of chords: along each segment a strip to one
 * side, and a disc round each of its ends. Slower than a buffer, and free of its shortcuts at short
 * edges and shallow corners.
 */
final class SweptArea {

  private final double chord;
  private final List<Topology.Piece> pieces = new ArrayList<>();

  /**
   * An empty collection.
   *
   * @param chord greatest distance of a chord from its arc, mm
   */
  SweptArea(double chord) {
    this.chord = chord;
  }

  /** The polygons so far. */
  List<Topology.Piece> pieces() {
    return List.copyOf(pieces);
  }

  /**
   * Adds what lies within a distance of a segment.
   *
   * @param toTheRight how far the strip reaches to the right of travel, or to the left when
   *     negative
   */
  void add(Segment segment, double toTheRight) {
    double radius = Math.abs(toTheRight);
    disc(segment.from(), radius);
    if (!segment.to().equals(segment.from())) {
      disc(segment.to(), radius);
    }
    halves(segment).forEach(part -> strip(part, toTheRight));
  }

  /** An arc of more than half a turn in two, so that its strip does not close on itself. */
  private static List<Segment> halves(Segment segment) {
    if (segment instanceof Arc arc && Math.abs(arc.sweep()) > Math.PI) {
      double half = arc.sweep() / 2;
      Point middle = arc.at(0.5);
      return List.of(
          new Arc(arc.from(), middle, arc.centre(), arc.radius(), half),
          new Arc(middle, arc.to(), arc.centre(), arc.radius(), half));
    }
    return List.of(segment);
  }

  private void strip(Segment segment, double toTheRight) {
    List<Point> ring = new ArrayList<>();
    ring.add(segment.from());
    ring.addAll(Flattener.vertices(segment, chord));
    if (segment instanceof Arc arc) {
      double radius = arc.radius() + Math.signum(arc.sweep()) * toTheRight;
      if (radius > 2 * Tolerances.SAME_POINT) {
        Arc moved = Arc.of(arc.centre(), radius, arc.startAngle(), arc.sweep());
        List<Point> back = new ArrayList<>(List.of(moved.from()));
        back.addAll(Flattener.vertices(moved, chord));
        Collections.reverse(back);
        ring.addAll(back);
      } else {
        ring.add(arc.centre());
      }
    } else {
      Point across = segment.tangent(0).right().times(toTheRight);
      ring.add(segment.to().plus(across));
      ring.add(segment.from().plus(across));
    }
    pieces.add(new Topology.Piece(ring, List.of()));
  }

  private void disc(Point centre, double radius) {
    List<Point> ring = Flattener.vertices(Arc.circle(centre, radius), chord);
    pieces.add(new Topology.Piece(ring, List.of()));
  }
}
