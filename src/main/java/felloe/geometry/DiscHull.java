package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * The way round a set of discs by a taut band: the length of the edge of their convex hull, in
 * closed form. A disc of radius 0 is a point.
 */
public final class DiscHull {

  private DiscHull() {}

  /**
   * A disc.
   *
   * @param centre mm
   * @param radius mm, 0 or more
   */
  public record Disc(Point centre, double radius) {

    /**
     * Refuses a radius below zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Disc {
      if (Numbers.finite("radius", radius) < 0) {
        throw new IllegalArgumentException("radius must not be below zero");
      }
    }

    /** Whether it lies in another one; of two that are the same the later lies in the earlier. */
    private boolean isIn(Disc other, boolean earlier) {
      double room = other.radius - radius - centre.distance(other.centre);
      return room > Tolerances.SAME_POINT
          || earlier && room >= -Tolerances.SAME_POINT
          || room >= -Tolerances.SAME_POINT && other.radius > radius + Tolerances.SAME_POINT;
    }

    private double reach(double angle) {
      return centre.dot(Point.polar(1, angle)) + radius;
    }
  }

  /**
   * Length of a taut band round all discs, mm, exact but for rounding.
   *
   * <p>The band is followed once round by its outward normal. A disc holds it while it reaches
   * farthest; the next one takes over where both reach equally far, which two discs do at two
   * normals that follow from the cosine of their difference.
   *
   * @param all at least one
   */
  public static double girth(List<Disc> all) {
    List<Disc> discs = outermost(all);
    double angle = 0;
    Disc at = discs.get(0);
    for (Disc disc : discs) {
      double ahead = disc.reach(0) - at.reach(0);
      boolean same = Math.abs(ahead) <= Tolerances.SAME_POINT;
      // Of two that reach equally far the band leaves the one that lies farther on.
      if (ahead > Tolerances.SAME_POINT || same && disc.centre().y() > at.centre().y()) {
        at = disc;
      }
    }
    double length = 0;
    for (int turns = 0; turns <= 4 * discs.size(); turns++) {
      double least = 2 * Math.PI - angle;
      Disc next = null;
      double straight = 0;
      for (Disc other : discs) {
        if (other == at) {
          continue;
        }
        double apart = at.centre().distance(other.centre());
        double difference = at.radius() - other.radius();
        double direction = other.centre().minus(at.centre()).angle();
        double turn = direction - Math.acos(difference / apart) - angle;
        turn -= 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
        // A hair behind is here: two discs that took the band at the same normal.
        if (turn > 2 * Math.PI - Tolerances.SAME_DIRECTION) {
          turn = 0;
        }
        double way = Math.sqrt(apart * apart - difference * difference);
        boolean farther = Math.abs(turn - least) <= Tolerances.SAME_DIRECTION && way > straight;
        boolean last = next == null && turn <= least + Tolerances.SAME_DIRECTION;
        if (turn < least - Tolerances.SAME_DIRECTION || last || next != null && farther) {
          least = turn;
          next = other;
          straight = way;
        }
      }
      length += at.radius() * least;
      if (next == null) {
        return length;
      }
      length += straight;
      angle += least;
      at = next;
    }
    throw new IllegalStateException("no way round " + discs);
  }

  /**
   * Without those that lie in others: the band never touches them, or only where it touches both.
   */
  private static List<Disc> outermost(List<Disc> all) {
    List<Disc> kept = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      boolean inside = false;
      for (int j = 0; j < all.size() && !inside; j++) {
        inside = i != j && all.get(i).isIn(all.get(j), j < i);
      }
      if (!inside) {
        kept.add(all.get(i));
      }
    }
    return kept;
  }
}
