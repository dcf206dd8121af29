package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A contour of straight edges with rounded corners, as the corners and radii that it is made from.
 *
 * @param corners where the edges meet
 * @param radii one each, mm; 0 where it is sharp
 * @param contour what they make
 */
record Cornered(List<Point> corners, List<Double> radii, Contour contour) {

  /** An arc whose ends run on from the edges within this angle rounds their corner, radians. */
  private static final double TANGENT = Math.toRadians(1.5);

  /** Radii that are meant are whole halves of a millimetre (common practice). */
  private static final double HALF = 0.5;

  /** Corners whose figures are this near to whole hundredths are meant so, mm. */
  private static final double HUNDREDTH = 0.01;

  Cornered {
    corners = List.copyOf(corners);
    radii = List.copyOf(radii);
  }

  /**
   * The corners of a contour.
   *
   * @param within how far radii and corners may be moved to be round figures, mm
   * @return empty where it has arcs that round no corner
   */
  static Optional<Cornered> of(Contour contour, double within) {
    List<Segment> segments = contour.segments();
    int n = segments.size();
    List<Point> corners = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Segment here = segments.get(i);
      Segment before = segments.get((i + n - 1) % n);
      Segment after = segments.get((i + 1) % n);
      if (here instanceof Line) {
        if (before instanceof Line) {
          corners.add(here.from());
          radii.add(0.0);
        }
      } else {
        Optional<Point> corner = corner(before, (Arc) here, after);
        if (corner.isEmpty()) {
          return Optional.empty();
        }
        corners.add(corner.get());
        radii.add(((Arc) here).radius());
      }
    }
    if (corners.size() < 3) {
      return Optional.empty();
    }
    return tidy(corners, radii, contour, within);
  }

  private static Optional<Point> corner(Segment before, Arc arc, Segment after) {
    if (!(before instanceof Line) || !(after instanceof Line)) {
      return Optional.empty();
    }
    Point in = before.tangent(1);
    Point out = after.tangent(0);
    boolean tangent = angle(in, arc.tangent(0)) <= TANGENT && angle(arc.tangent(1), out) <= TANGENT;
    double sine = in.cross(out);
    if (!tangent || Math.abs(sine) < Math.sin(TANGENT)) {
      return Optional.empty();
    }
    double along = after.from().minus(before.to()).cross(out) / sine;
    return along < 0 ? Optional.empty() : Optional.of(before.to().plus(in, along));
  }

  private static double angle(Point a, Point b) {
    return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
  }

  /** With round figures where these lie within the distance; else as they are. */
  private static Optional<Cornered> tidy(
      List<Point> corners, List<Double> radii, Contour contour, double within) {
    List<Double> halves = radii.stream().map(r -> rounded(r, HALF)).toList();
    List<Point> hundredths =
        corners.stream()
            .map(p -> new Point(rounded(p.x(), HUNDREDTH), rounded(p.y(), HUNDREDTH)))
            .toList();
    return made(hundredths, halves, contour, within)
        .or(() -> made(corners, halves, contour, within))
        .or(() -> made(corners, eased(radii), contour, within))
        .or(() -> made(corners, radii, contour, within));
  }

  private static List<Double> eased(List<Double> radii) {
    return radii.stream().map(r -> rounded(r, HUNDREDTH)).toList();
  }

  private static double rounded(double value, double step) {
    // Divided by a whole number, so that the figure is the one that is written.
    double parts = Math.rint(1 / step);
    return Math.rint(value * parts) / parts;
  }

  private static Optional<Cornered> made(
      List<Point> corners, List<Double> radii, Contour contour, double within) {
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point from = corners.get(i);
      Point to = corners.get((i + 1) % corners.size());
      if (from.near(to, HUNDREDTH)) {
        return Optional.empty();
      }
      chain.add(new Line(from, to));
    }
    try {
      double[] all = radii.stream().mapToDouble(Double::doubleValue).toArray();
      Contour made = Fillet.chain(chain, all);
      return made.apart(contour) <= within
          ? Optional.of(new Cornered(corners, radii, made))
          : Optional.empty();
    } catch (GeometryException | IllegalArgumentException none) {
      return Optional.empty();
    }
  }
}
