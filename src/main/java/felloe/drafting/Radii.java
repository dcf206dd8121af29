package felloe.drafting;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Radii of arcs, each told once with the number of arcs that have it. */
final class Radii {

  /** A free line has more radii than these: they stand in its table. */
  static final int MOST = 8;

  private static final int LOOKED_AT = 12;
  private static final double OFF_MIDDLE = 2;

  /** An arc longer than this is pointed to at more places, radians. */
  private static final double LONG = 1;

  private final Board board;

  Radii(Board board) {
    this.board = board;
  }

  /**
   * Draws the radii of some arcs.
   *
   * @return those that found no place, as they are written without their number
   */
  Set<String> draw(List<Arc> arcs) {
    Map<String, List<Arc>> groups = new LinkedHashMap<>();
    for (Arc arc : arcs) {
      groups.computeIfAbsent(figure(arc), k -> new java.util.ArrayList<>()).add(arc);
    }
    Set<String> left = new TreeSet<>();
    groups.forEach(
        (figure, alike) -> {
          if (groups.size() > MOST || !note(Board.times(alike.size()) + figure, alike)) {
            left.add(figure);
          }
        });
    return left;
  }

  static String figure(Arc arc) {
    return "R" + Board.figure(arc.radius());
  }

  private boolean note(String words, List<Arc> arcs) {
    Leader leader = new Leader(List.of(words), board.text());
    int step = (arcs.size() + LOOKED_AT - 1) / LOOKED_AT;
    for (int i = 0; i < arcs.size(); i += step) {
      Arc arc = (Arc) board.views().scaled().segment(arcs.get(i));
      boolean wide = Math.abs(arc.sweep()) > LONG;
      double[] places =
          wide
              ? new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.12, 0.88}
              : new double[] {0.5, 0.3, 0.7};
      for (double place : places) {
        Point tip = arc.at(place);
        Point out = tip.minus(arc.centre()).unit();
        double cost = OFF_MIDDLE * Math.abs(place - 0.5);
        leader.to(tip, out, cost).to(tip, out.times(-1), cost);
      }
    }
    return board.place(leader.options());
  }
}
