package felloe.out;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.List;

/**
 * Lines and arcs as SVG path data, y downward. Arcs are {@code A} commands.
 *
 * <p>Accuracy: an {@code A} command gives no centre; a reader finds it from the ends and the
 * radius. Near a half circle that is ill-conditioned: rounding an end or the radius by e moves the
 * centre by about sqrt(2 r e), 0.1 mm at r = 100 mm for e = 0.00005 mm, and many readers hold
 * coordinates in single precision. So arcs of more than 120 degrees are written as equal pieces of
 * at most 120 degrees, where the centre moves by no more than about four times the rounding.
 */
public final class SvgPath {

  /** Decimals of every coordinate and radius: arcs that are read back are right to 1e-6 mm. */
  static final int DECIMALS = 7;

  private static final double LONGEST_PIECE = Math.toRadians(120);

  private SvgPath() {}

  /** Path data of a chain. */
  public static String of(List<Segment> chain, boolean closed) {
    return of(chain, closed, DECIMALS);
  }

  /** Path data of a chain, to so many decimals. */
  static String of(List<Segment> chain, boolean closed, int decimals) {
    StringBuilder path = new StringBuilder();
    append(path, chain, closed, decimals);
    return path.toString();
  }

  /** Path data of several closed contours, one subpath each. */
  public static String of(List<Contour> contours) {
    return ofRings(contours.stream().map(Contour::segments).toList());
  }

  /** Path data of several closed chains, one subpath each. */
  public static String ofRings(List<List<Segment>> rings) {
    StringBuilder path = new StringBuilder();
    rings.forEach(ring -> append(path, ring, true, DECIMALS));
    return path.toString();
  }

  private static void append(
      StringBuilder path, List<Segment> chain, boolean closed, int decimals) {
    appendPoint(path.append('M'), chain.get(0).from(), decimals);
    for (int i = 0; i < chain.size(); i++) {
      if (chain.get(i) instanceof Arc arc) {
        appendArc(path, arc, decimals);
      } else if (!closed || i < chain.size() - 1) {
        // The last line of a closed chain is drawn by Z.
        appendPoint(path.append('L'), chain.get(i).to(), decimals);
      }
    }
    if (closed) {
      path.append('Z');
    }
  }

  private static void appendArc(StringBuilder path, Arc arc, int decimals) {
    // Half of a rounding unit of slack keeps a written 120 degree arc whole.
    int pieces = (int) Tolerances.up(Math.abs(arc.sweep()) / LONGEST_PIECE);
    String radius = Numbers.brief(arc.radius(), decimals);
    // SVG's sweep flag 1 turns clockwise on the screen's downward y: clockwise on the plate.
    char flag = arc.sweep() > 0 ? '0' : '1';
    for (int i = 1; i <= pieces; i++) {
      path.append('A').append(radius).append(' ').append(radius).append(" 0 0 ").append(flag);
      Point end = arc.at(i == pieces ? 1 : (double) i / pieces);
      appendPoint(path.append(' '), end, decimals);
    }
  }

  private static void appendPoint(StringBuilder path, Point p, int decimals) {
    path.append(Numbers.brief(p.x(), decimals)).append(' ');
    path.append(Numbers.brief(-p.y(), decimals));
  }

  /** A coordinate or length, mm. */
  public static String number(double value) {
    return Numbers.brief(value, DECIMALS);
  }
}
