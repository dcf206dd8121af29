package felloe.drafting;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The edge of the outline or of a window as a table tells it: points in order, and how it runs from
 * each to the next.
 *
 * @param label {@code outline}, or the window's label
 * @param nodes counter-clockwise, closed by the first
 */
public record Edge(String label, List<Node> nodes) {

  public Edge {
    nodes = List.copyOf(nodes);
  }

  /**
   * A point of an edge.
   *
   * @param at where, mm from the hub axis
   * @param radius of the arc from here to the next point, mm, above zero where it bulges outward,
   *     below zero where it is hollow; empty for a straight line
   */
  public record Node(Point at, OptionalDouble radius) {}

  static Edge of(String label, Contour contour) {
    List<Node> nodes = new ArrayList<>();
    for (Segment segment : contour.segments()) {
      OptionalDouble radius =
          segment instanceof Arc arc
              ? OptionalDouble.of(Math.copySign(arc.radius(), arc.sweep()))
              : OptionalDouble.empty();
      nodes.add(new Node(segment.from(), radius));
    }
    return new Edge(label, nodes);
  }
}
