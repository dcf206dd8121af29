package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;

/**
 * Moves, turns, scales, mirrors and skews: x' = a x + c y + e, y' = b x + d y + f, the letters of
 * W3C SVG 2 and CSS Transforms.
 */
record Affine(double a, double b, double c, double d, double e, double f) {

  /** A plane whose areas shrink to less than this part is a line. */
  private static final double FLAT = 1e-12;

  static final Affine NONE = new Affine(1, 0, 0, 1, 0, 0);

  static Affine scale(double x, double y) {
    return new Affine(x, 0, 0, y, 0, 0);
  }

  static Affine shift(double x, double y) {
    return new Affine(1, 0, 0, 1, x, y);
  }

  static Affine turn(double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Affine(cos, sin, -sin, cos, 0, 0);
  }

  /** First the inner one, then this. */
  Affine of(Affine inner) {
    return new Affine(
        a * inner.a + c * inner.b,
        b * inner.a + d * inner.b,
        a * inner.c + c * inner.d,
        b * inner.c + d * inner.d,
        a * inner.e + c * inner.f + e,
        b * inner.e + d * inner.f + f);
  }

  /** Whether it makes a plane of a plane: not where all comes to lie on a line. */
  boolean isPlane() {
    double determinant = a * d - b * c;
    return Double.isFinite(determinant) && Math.abs(determinant) > FLAT;
  }

  Point of(Point p) {
    return new Point(a * p.x() + c * p.y() + e, b * p.x() + d * p.y() + f);
  }

  private Point direction(Point p) {
    return new Point(a * p.x() + c * p.y(), b * p.x() + d * p.y());
  }

  CubicCurve of(CubicCurve curve) {
    return new CubicCurve(of(curve.from()), of(curve.first()), of(curve.second()), of(curve.to()));
  }

  QuadraticCurve of(QuadraticCurve curve) {
    return new QuadraticCurve(of(curve.from()), of(curve.control()), of(curve.to()));
  }

  EllipticalArc of(EllipticalArc arc) {
    Point u = direction(Point.polar(arc.rx(), arc.turn()));
    Point v = direction(Point.polar(arc.ry(), arc.turn() + Math.PI / 2));
    return ellipse(of(arc.centre()), u, v, arc.start(), arc.sweep());
  }

  /** An arc of a circle, which a skew makes one of an ellipse. */
  EllipticalArc of(Arc arc) {
    double start = arc.from().minus(arc.centre()).angle();
    return of(EllipticalArc.about(arc.centre(), arc.radius(), arc.radius(), 0, start, arc.sweep()));
  }

  /**
   * The arc centre + u cos t + v sin t, from t = start through a sweep, in its own half axes: the
   * ones at the turn t0 with tan 2 t0 = 2 u v / (u u - v v).
   */
  private static EllipticalArc ellipse(Point centre, Point u, Point v, double start, double sweep) {
    double t0 = Math.atan2(2 * u.dot(v), u.dot(u) - v.dot(v)) / 2;
    Point major = u.times(Math.cos(t0)).plus(v, Math.sin(t0));
    Point minor = v.times(Math.cos(t0)).plus(u, -Math.sin(t0));
    double sense = major.cross(minor) < 0 ? -1 : 1;
    return EllipticalArc.about(
        centre, major.norm(), minor.norm(), major.angle(), sense * (start - t0), sense * sweep);
  }
}
