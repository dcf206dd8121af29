package felloe.bringin;

import felloe.geometry.CubicCurve;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A B-spline as Bezier curves: exactly up to degree 3, span by span from its blossom; of higher
 * degree or with weights by cubics through its points and tangents, sixteen a span.
 *
 * <p>Source: Piegl and Tiller, The NURBS Book; Ramshaw's blossoms.
 *
 * @param degree 1 or more
 * @param knots growing, as many as control points, degree and one
 * @param points control points
 * @param weights as many; all 1 where it has none
 */
record BSpline(int degree, double[] knots, List<Point> points, double[] weights) {

  /** Parts of a span that is not made of Bezier curves exactly. */
  private static final int PARTS = 16;

  /** Its pieces, in order. */
  List<Stroke> strokes() {
    List<Stroke> strokes = new ArrayList<>();
    boolean even = true;
    for (double weight : weights) {
      even &= weight == weights[0];
    }
    for (int i = degree; i < points.size(); i++) {
      if (knots[i + 1] > knots[i]) {
        if (even && degree <= 3) {
          exact(i, strokes);
        } else {
          through(i, strokes);
        }
      }
    }
    return strokes;
  }

  private void exact(int span, List<Stroke> strokes) {
    List<Point> b = new ArrayList<>();
    for (int k = 0; k <= degree; k++) {
      double[] at = new double[degree];
      for (int r = 0; r < degree; r++) {
        at[r] = r < degree - k ? knots[span] : knots[span + 1];
      }
      double[] p = blossom(span, at);
      b.add(new Point(p[0] / p[2], p[1] / p[2]));
    }
    switch (degree) {
      case 1 -> strokes.addAll(Stroke.line(b.get(0), b.get(1)));
      case 2 -> strokes.add(Stroke.of(new QuadraticCurve(b.get(0), b.get(1), b.get(2))));
      default -> strokes.add(Stroke.of(new CubicCurve(b.get(0), b.get(1), b.get(2), b.get(3))));
    }
  }

  private void through(int span, List<Stroke> strokes) {
    double step = (knots[span + 1] - knots[span]) / PARTS;
    for (int k = 0; k < PARTS; k++) {
      double from = knots[span] + k * step;
      double to = k == PARTS - 1 ? knots[span + 1] : from + step;
      Point a = at(span, from);
      Point b = at(span, to);
      Point first = a.plus(derivative(span, from), (to - from) / 3);
      Point second = b.plus(derivative(span, to), (from - to) / 3);
      strokes.add(Stroke.of(new CubicCurve(a, first, second, b)));
    }
  }

  private Point at(int span, double t) {
    double[] same = new double[degree];
    Arrays.fill(same, t);
    double[] p = blossom(span, same);
    return new Point(p[0] / p[2], p[1] / p[2]);
  }

  /** The derivative from the blossom: degree times its change as one argument moves on by 1. */
  private Point derivative(int span, double t) {
    double[] at = new double[degree];
    Arrays.fill(at, t);
    double[] p = blossom(span, at);
    double width = knots[span + 1] - knots[span];
    at[0] = t + width;
    double[] q = blossom(span, at);
    double[] d = new double[3];
    for (int i = 0; i < 3; i++) {
      d[i] = degree * (q[i] - p[i]) / width;
    }
    return new Point(
        (d[0] * p[2] - p[0] * d[2]) / (p[2] * p[2]), (d[1] * p[2] - p[1] * d[2]) / (p[2] * p[2]));
  }

  private double[] blossom(int span, double[] at) {
    double[][] d = new double[degree + 1][3];
    for (int j = 0; j <= degree; j++) {
      int n = span - degree + j;
      double w = weights[n];
      d[j][0] = points.get(n).x() * w;
      d[j][1] = points.get(n).y() * w;
      d[j][2] = w;
    }
    for (int r = 1; r <= degree; r++) {
      for (int j = degree; j >= r; j--) {
        double low = knots[span - degree + j];
        double high = knots[span + 1 + j - r];
        double share = (at[r - 1] - low) / (high - low);
        for (int i = 0; i < 3; i++) {
          d[j][i] = (1 - share) * d[j - 1][i] + share * d[j][i];
        }
      }
    }
    return d[degree];
  }
}
