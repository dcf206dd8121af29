package felloe.drawing;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.List;

/**
 * The look of dimensions after ISO 129-1, mm on the sheet: arrowheads filled, 30 degrees; a small
 * gap between outline and extension line, which runs a little beyond the dimension line; figures
 * over their line, read from below or from the right. The standard gives the look, the lengths are
 * multiples of the line width that it names, from memory.
 */
public final class DimensionStyle {

  /** Height of the letters and figures of dimensions: ISO 3098-1's 3.5 mm. */
  public static final double TEXT = 3.5;

  /** Height of small letters and figures: ISO 3098-1's 2.5 mm. */
  public static final double SMALL = 2.5;

  /** From an outline to the extension line that starts there. */
  public static final double GAP = 1.5;

  /** How far an extension line runs beyond the dimension line. */
  public static final double BEYOND = 2;

  /** From a line to the base line of the figure over it. */
  public static final double OVER = 1.2;

  /** Length of an arrowhead. */
  public static final double ARROW = 3.2;

  /** Half an arrowhead's width. */
  public static final double ARROW_HALF = ARROW * Math.tan(Math.toRadians(15));

  /** Length of the line behind an arrowhead that comes from outside. */
  public static final double TAIL = 6;

  private DimensionStyle() {}

  /**
   * An arrowhead.
   *
   * @param tip where it points to
   * @param from the direction that it comes from, radians
   * @param unit what its lengths are multiplied with
   */
  public static Contour arrow(Point tip, double from, double unit) {
    Point back = Point.polar(ARROW * unit, from);
    Point side = back.left().times(ARROW_HALF / ARROW);
    return Contour.polygon(List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side)));
  }

  /** A base line's angle along a line of any angle, so that it is read from below or the right. */
  public static double readable(double angle) {
    double turned = Math.IEEEremainder(angle, Math.PI);
    return turned <= -Math.PI / 2 + Tolerances.SAME_DIRECTION ? turned + Math.PI : turned;
  }
}
