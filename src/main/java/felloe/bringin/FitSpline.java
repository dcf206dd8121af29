package felloe.bringin;

import felloe.geometry.CubicCurve;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The cubic curve through points that runs on in direction and bend, its parameter the length of
 * the chords. Its ends run as they are told; else as if the first two stretches were one cubic, and
 * the last two (de Boor's "not a knot").
 *
 * <p>Source: C. de Boor, A Practical Guide to Splines, chapter IV, from memory.
 *
 * @param points it goes through, each apart from the one before
 * @param start direction at its start, if it is told
 * @param end direction at its end, if it is told
 */
record FitSpline(List<Point> points, Optional<Point> start, Optional<Point> end) {

  /** What a point does to a curve is below rounding at so many points away. */
  private static final int FAR = 40;

  FitSpline {
    List<Point> apart = new ArrayList<>();
    for (Point p : points) {
      if (apart.isEmpty() || !apart.get(apart.size() - 1).near(p, Tolerances.SAME_POINT)) {
        apart.add(p);
      }
    }
    points = List.copyOf(apart);
  }

  /** The open curve. */
  List<Stroke> open() {
    return strokes(points, slopes(points, start, end), 0, points.size() - 1);
  }

  /**
   * The closed curve, which runs on over its start; the first point may be there again at the end.
   */
  List<Stroke> closed() {
    List<Point> ring = new ArrayList<>(points);
    if (ring.size() > 1 && ring.get(0).near(ring.get(ring.size() - 1), Tolerances.SAME_POINT)) {
      ring.remove(ring.size() - 1);
    }
    int n = ring.size();
    if (n < 3) {
      return open();
    }
    // Far enough round both ways, so that no end of it is felt.
    List<Point> round = new ArrayList<>();
    for (int i = -FAR; i <= n + FAR; i++) {
      round.add(ring.get(Math.floorMod(i, n)));
    }
    List<Point> slopes = slopes(round, Optional.empty(), Optional.empty());
    return strokes(round, slopes, FAR, FAR + n);
  }

  private static List<Stroke> strokes(List<Point> points, List<Point> slopes, int from, int to) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = from; i < to; i++) {
      Point a = points.get(i);
      Point b = points.get(i + 1);
      double third = a.distance(b) / 3;
      strokes.add(
          Stroke.of(
              new CubicCurve(
                  a, a.plus(slopes.get(i), third), b.plus(slopes.get(i + 1), -third), b)));
    }
    return strokes;
  }

  /** The change of place with the length of chords, at each point: rows of three, eliminated. */
  private static List<Point> slopes(List<Point> p, Optional<Point> start, Optional<Point> end) {
    int n = p.size();
    if (n < 2) {
      return List.of();
    }
    double[] h = new double[n - 1];
    List<Point> chord = new ArrayList<>();
    for (int i = 0; i < n - 1; i++) {
      h[i] = p.get(i).distance(p.get(i + 1));
      chord.add(p.get(i + 1).minus(p.get(i)).times(1 / h[i]));
    }
    if (n == 2) {
      return List.of(
          start.map(Point::unit).orElse(chord.get(0)), end.map(Point::unit).orElse(chord.get(0)));
    }
    if (n == 3 && start.isEmpty() && end.isEmpty()) {
      // Nothing is left to choose: a parabola.
      Point bend = chord.get(1).minus(chord.get(0)).times(1 / (h[0] + h[1]));
      return List.of(
          chord.get(0).plus(bend, -h[0]),
          chord.get(0).plus(bend, h[0]),
          chord.get(1).plus(bend, h[1]));
    }
    double[] diagonal = new double[n];
    double[] above = new double[n];
    List<Point> right = new ArrayList<>();
    Row first =
        start.map(Row::told).orElseGet(() -> Row.free(h[0], h[1], chord.get(0), chord.get(1)));
    diagonal[0] = first.diagonal;
    above[0] = first.beside;
    right.add(first.right);
    for (int i = 1; i < n; i++) {
      double below = i < n - 1 ? h[i] : 0;
      double middle = i < n - 1 ? 2 * (h[i - 1] + h[i]) : 0;
      Point wanted = Point.ORIGIN;
      if (i < n - 1) {
        above[i] = h[i - 1];
        wanted = chord.get(i - 1).times(3 * h[i]).plus(chord.get(i), 3 * h[i - 1]);
      } else {
        Row last =
            end.map(Row::told)
                .orElseGet(() -> Row.free(h[n - 2], h[n - 3], chord.get(n - 2), chord.get(n - 3)));
        middle = last.diagonal;
        below = last.beside;
        wanted = last.right;
      }
      double factor = below / diagonal[i - 1];
      diagonal[i] = middle - factor * above[i - 1];
      right.add(wanted.plus(right.get(i - 1), -factor));
    }
    Point[] slopes = new Point[n];
    slopes[n - 1] = right.get(n - 1).times(1 / diagonal[n - 1]);
    for (int i = n - 2; i >= 0; i--) {
      slopes[i] = right.get(i).plus(slopes[i + 1], -above[i]).times(1 / diagonal[i]);
    }
    return List.of(slopes);
  }

  /** What holds at an end: a share of its own slope and one of that beside it. */
  private record Row(double diagonal, double beside, Point right) {

    static Row told(Point direction) {
      return new Row(1, 0, direction.unit());
    }

    /** The third derivative is the same on both sides of the point next to the end. */
    static Row free(double h0, double h1, Point chord0, Point chord1) {
      double both = h0 + h1;
      Point right = chord0.times((h0 + 2 * both) * h1 / both).plus(chord1, h0 * h0 / both);
      return new Row(h1, both, right);
    }
  }
}
