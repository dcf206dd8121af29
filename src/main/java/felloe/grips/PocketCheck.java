package felloe.grips;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Face;
import java.util.Optional;

/** What a pocket leaves of its grip: at the sides and below. */
public final class PocketCheck {

  /** So many places round a pocket are looked at. */
  private static final int ROUND = 24;

  private PocketCheck() {}

  /**
   * What is left round a pocket.
   *
   * @param side between pocket and the grip's edge, mm; below zero where it breaks through
   * @param floor below it, mm
   */
  public record Left(double side, double floor) {}

  /** What a pocket leaves. */
  public static Left of(PlacedGrip grip, Pocket pocket) {
    double side = Double.POSITIVE_INFINITY;
    Contour edge = pocket.edge();
    for (Region region : grip.footprint()) {
      side = Math.min(side, clear(region.outer(), edge, true));
      for (Contour hole : region.holes()) {
        side = Math.min(side, clear(hole, edge, false));
      }
    }
    double thick = grip.surface(pocket.face(), pocket.centre());
    if (pocket.fromPlate()) {
      // Its roof is the grip's surface, which may fall away over it.
      for (int i = 0; i < ROUND; i++) {
        Point at = pocket.centre().plus(Point.polar(pocket.reach(), 2 * Math.PI * i / ROUND));
        thick = Math.min(thick, grip.surface(pocket.face(), at));
      }
    }
    return new Left(side, thick - pocket.depth());
  }

  private static double clear(Contour border, Contour edge, boolean inside) {
    double gap = border.gap(edge).distance();
    boolean within = border.contains(edge.segments().get(0).from()) == inside;
    return within ? gap : -gap;
  }

  /** What is left, where that is less than holds; empty where it holds. */
  public static Optional<String> thin(PlacedGrip grip, Pocket pocket, double wall) {
    Left left = of(grip, pocket);
    String where = " at " + (pocket.face() == Face.FRONT ? "the front of " : "the back of ");
    if (left.side < wall || left.floor < wall) {
      return Optional.of(
          "leaves "
              + Numbers.brief(Math.max(0, Math.min(left.side, left.floor)), 2)
              + " mm of grip "
              + grip.grip().label()
              + (left.side < left.floor ? " beside" : " below")
              + " the pocket of its "
              + pocket.what()
              + where
              + pocket.hole()
              + ", and "
              + Numbers.brief(wall, 2)
              + " mm at least should stay");
    }
    return Optional.empty();
  }
}
