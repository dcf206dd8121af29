package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Regions of straight edges alone, where arcs have been flattened and exactness is no question any
 * more: united and intersected by JTS, edge for edge. Where lines and arcs must stay what they are,
 * {@link Combine} is the way.
 */
public final class Polygons {

  private Polygons() {}

  /**
   * A polygon.
   *
   * @param outer its corners, none repeated
   * @param holes in it, likewise
   */
  public record Polygon(List<Point> outer, List<List<Point>> holes) {

    public Polygon {
      outer = List.copyOf(outer);
      holes = holes.stream().map(List::copyOf).toList();
    }

    /** Without holes. */
    public static Polygon of(List<Point> outer) {
      return new Polygon(outer, List.of());
    }

    /** A region whose arcs stray from their chords by no more than a tolerance, mm. */
    public static Polygon of(Region region, double chord) {
      return new Polygon(
          region.outer().chords(chord),
          region.holes().stream().map(hole -> hole.chords(chord)).toList());
    }

    /** All its rings, the outer one first. */
    public List<List<Point>> rings() {
      List<List<Point>> rings = new ArrayList<>(List.of(outer));
      rings.addAll(holes);
      return rings;
    }

    /** Its area, mm². */
    public double area() {
      double area = Math.abs(Polygons.area(outer));
      for (List<Point> hole : holes) {
        area -= Math.abs(Polygons.area(hole));
      }
      return area;
    }
  }

  /** Area within a ring, mm²; below zero where it runs clockwise. */
  public static double area(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  /**
   * What lies in a polygon and in at least one of others.
   *
   * @throws GeometryException when JTS finds no answer
   */
  public static List<Polygon> shared(Polygon one, List<Polygon> others) {
    if (others.isEmpty()) {
      return List.of();
    }
    return Topology.combine(
            Topology.Operation.INTERSECTION,
            List.of(piece(one)),
            others.stream().map(Polygons::piece).toList())
        .stream()
        .map(piece -> new Polygon(piece.outer(), piece.holes()))
        .toList();
  }

  private static Topology.Piece piece(Polygon polygon) {
    return new Topology.Piece(polygon.outer(), polygon.holes());
  }
}
