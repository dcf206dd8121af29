package felloe.jig;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A rim round the plate's outline, and how far the plate may move in it: for small motions every
 * place of its edge may go outward by the play and no farther.
 */
final class Nest {

  /** Greatest distance of a chord from the outline, mm. */
  private static final double CHORD = 0.05;

  /** A plate that turns so far in its rim is not held, radians: some 2 degrees. */
  private static final double MOST = 0.035;

  private static final int TURNS = 40;
  private static final int HALVINGS = 40;

  /** Farther than this no plate shifts in a rim that holds it, mm. */
  private static final double FAR = 20;

  /** A place of the edge: outward, and how far it goes outward for a turn of 1. */
  private record Place(Point outward, double lever) {}

  private final List<Place> places = new ArrayList<>();
  private final double play;

  /**
   * @param play how far the edge is from the rim all round at the most, mm
   */
  Nest(Contour outline, double play) {
    this.play = play;
    List<Point> corners = outline.chords(CHORD);
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      Point outward = to.minus(from).unit().left().times(-1);
      for (Point p : List.of(from, to)) {
        places.add(new Place(outward, outward.dot(p.left())));
      }
    }
  }

  /** Whether the outline says which way is up. */
  boolean holds() {
    return shifts(MOST).isEmpty() && shifts(-MOST).isEmpty();
  }

  /** How far a place may be off, by shift and turn together, mm. */
  double off(Point at) {
    double off = 0;
    for (int side = -1; side <= 1; side += 2) {
      double most = turn(side);
      for (int i = 0; i <= TURNS; i++) {
        double turn = side * most * i / TURNS;
        for (Point shift : shifts(turn)) {
          off = Math.max(off, shift.plus(at.left(), turn).norm());
        }
      }
    }
    return off;
  }

  /** The farthest it turns to a side. */
  private double turn(int side) {
    double low = 0;
    double high = MOST;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (shifts(side * middle).isEmpty()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** Corners of where it may be shifted to when it is turned so; none where it cannot be. */
  private List<Point> shifts(double turn) {
    List<Point> room =
        List.of(
            new Point(-FAR, -FAR), new Point(FAR, -FAR), new Point(FAR, FAR), new Point(-FAR, FAR));
    for (Place place : places) {
      room = within(room, place.outward, play - turn * place.lever);
      if (room.isEmpty()) {
        return room;
      }
    }
    return room;
  }

  /** The part of a convex polygon that does not reach farther than so in a direction. */
  private static List<Point> within(List<Point> room, Point outward, double most) {
    List<Point> left = new ArrayList<>();
    for (int i = 0; i < room.size(); i++) {
      Point a = room.get(i);
      Point b = room.get((i + 1) % room.size());
      double atA = outward.dot(a) - most;
      double atB = outward.dot(b) - most;
      if (atA <= 0) {
        left.add(a);
      }
      if (atA < 0 && atB > 0 || atA > 0 && atB < 0) {
        left.add(a.towards(b, atA / (atA - atB)));
      }
    }
    return left;
  }
}
