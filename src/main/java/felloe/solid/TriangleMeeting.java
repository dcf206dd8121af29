package felloe.solid;

import java.math.BigDecimal;

/** Whether segments and triangles in space share a point, decided without rounding. */
final class TriangleMeeting {

  /** Above all that rounding adds to a determinant of three rows, as a share of its terms. */
  private static final double DOUBT = 1e-14;

  private TriangleMeeting() {}

  /** Whether a segment and a triangle share a point. */
  static boolean segment(Vertex p, Vertex q, Triangle t) {
    if (beside(p, q, t)) {
      return false;
    }
    int sideP = side(t.a(), t.b(), t.c(), p);
    int sideQ = side(t.a(), t.b(), t.c(), q);
    if (sideP == 0 && sideQ == 0) {
      return flat(p, q, t);
    }
    if (sideP * sideQ > 0) {
      return false;
    }
    int ab = side(p, q, t.a(), t.b());
    int bc = side(p, q, t.b(), t.c());
    int ca = side(p, q, t.c(), t.a());
    return ab >= 0 && bc >= 0 && ca >= 0 || ab <= 0 && bc <= 0 && ca <= 0;
  }

  /**
   * Whether a segment lies beside a triangle as seen along an axis, clear of rounding: true for
   * most that do not meet, and soon told.
   */
  private static boolean beside(Vertex p, Vertex q, Triangle t) {
    int axis = axis(t.outward());
    return apart(t.a(), t.b(), t.c(), p, q, axis)
        || apart(t.b(), t.c(), t.a(), p, q, axis)
        || apart(t.c(), t.a(), t.b(), p, q, axis);
  }

  /** Whether two points lie across a line from a third, clear of rounding. */
  private static boolean apart(Vertex a, Vertex b, Vertex c, Vertex p, Vertex q, int axis) {
    int inner = clearTurn(a, b, c, axis);
    return inner != 0 && clearTurn(a, b, p, axis) == -inner && clearTurn(a, b, q, axis) == -inner;
  }

  /** Whether two triangles on one edge lie on each other: flat, and on one side of the edge. */
  static boolean folded(Vertex from, Vertex to, Vertex one, Vertex two) {
    int axis = axis(to.minus(from).cross(one.minus(from)));
    return turn(from, to, one, axis) == turn(from, to, two, axis) && side(from, to, one, two) == 0;
  }

  private static boolean flat(Vertex p, Vertex q, Triangle t) {
    int axis = axis(t.outward());
    return inside(p, t, axis)
        || inside(q, t, axis)
        || cross(p, q, t.a(), t.b(), axis)
        || cross(p, q, t.b(), t.c(), axis)
        || cross(p, q, t.c(), t.a(), axis);
  }

  private static boolean inside(Vertex p, Triangle t, int axis) {
    int ab = turn(t.a(), t.b(), p, axis);
    int bc = turn(t.b(), t.c(), p, axis);
    int ca = turn(t.c(), t.a(), p, axis);
    return ab >= 0 && bc >= 0 && ca >= 0 || ab <= 0 && bc <= 0 && ca <= 0;
  }

  /** Whether two segments of a plane cross or touch; those along one line do not count here. */
  private static boolean cross(Vertex p, Vertex q, Vertex a, Vertex b, int axis) {
    int pa = turn(a, b, p, axis);
    int qa = turn(a, b, q, axis);
    int ap = turn(p, q, a, axis);
    int bp = turn(p, q, b, axis);
    boolean line = pa == 0 && qa == 0;
    return !line && pa * qa <= 0 && ap * bp <= 0;
  }

  /** The axis along which a plane with this normal is seen largest. */
  private static int axis(Vertex normal) {
    double x = Math.abs(normal.x());
    double y = Math.abs(normal.y());
    double z = Math.abs(normal.z());
    return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
  }

  private static double first(Vertex v, int axis) {
    return axis == 0 ? v.y() : v.x();
  }

  private static double second(Vertex v, int axis) {
    return axis == 2 ? v.y() : v.z();
  }

  /** Which way three points turn as seen along an axis, 1 or -1; 0 where rounding may decide. */
  private static int clearTurn(Vertex a, Vertex b, Vertex c, int axis) {
    double one = (first(b, axis) - first(a, axis)) * (second(c, axis) - second(a, axis));
    double two = (second(b, axis) - second(a, axis)) * (first(c, axis) - first(a, axis));
    boolean clear = Math.abs(one - two) > DOUBT * (Math.abs(one) + Math.abs(two));
    return !clear ? 0 : one > two ? 1 : -1;
  }

  /** Which way three points turn as seen along an axis: 1, 0 or -1. */
  private static int turn(Vertex a, Vertex b, Vertex c, int axis) {
    int clear = clearTurn(a, b, c, axis);
    if (clear != 0) {
      return clear;
    }
    BigDecimal exact =
        less(first(b, axis), first(a, axis))
            .multiply(less(second(c, axis), second(a, axis)))
            .subtract(
                less(second(b, axis), second(a, axis))
                    .multiply(less(first(c, axis), first(a, axis))));
    return exact.signum();
  }

  /** On which side of the plane through three points a fourth lies: 1, 0 or -1. */
  private static int side(Vertex a, Vertex b, Vertex c, Vertex d) {
    Vertex u = b.minus(a);
    Vertex v = c.minus(a);
    Vertex w = d.minus(a);
    double value = u.cross(v).dot(w);
    double terms =
        (Math.abs(u.y() * v.z()) + Math.abs(u.z() * v.y())) * Math.abs(w.x())
            + (Math.abs(u.z() * v.x()) + Math.abs(u.x() * v.z())) * Math.abs(w.y())
            + (Math.abs(u.x() * v.y()) + Math.abs(u.y() * v.x())) * Math.abs(w.z());
    if (Math.abs(value) > DOUBT * terms) {
      return value > 0 ? 1 : -1;
    }
    return level(u, v, w) || wall(u, v, w) ? 0 : exactSide(a, b, c, d);
  }

  /** Points over only two points of the plan lie in an upright plane. */
  private static boolean wall(Vertex u, Vertex v, Vertex w) {
    int over = (upright(u) ? 1 : 0) + (upright(v) ? 1 : 0) + (upright(w) ? 1 : 0);
    return over >= 2
        || over == 1 && (upright(u) ? alike(v, w) : upright(v) ? alike(u, w) : alike(u, v))
        || over == 0 && alike(u, v) && alike(v, w);
  }

  private static boolean upright(Vertex v) {
    return v.x() == 0 && v.y() == 0;
  }

  private static boolean alike(Vertex v, Vertex w) {
    return v.x() == w.x() && v.y() == w.y();
  }

  /** Vectors that all lack one coordinate lie in a plane: no need to reckon. */
  private static boolean level(Vertex u, Vertex v, Vertex w) {
    return u.z() == 0 && v.z() == 0 && w.z() == 0
        || u.y() == 0 && v.y() == 0 && w.y() == 0
        || u.x() == 0 && v.x() == 0 && w.x() == 0;
  }

  private static int exactSide(Vertex a, Vertex b, Vertex c, Vertex d) {
    BigDecimal[] u = less(b, a);
    BigDecimal[] v = less(c, a);
    BigDecimal[] w = less(d, a);
    BigDecimal x = u[1].multiply(v[2]).subtract(u[2].multiply(v[1])).multiply(w[0]);
    BigDecimal y = u[2].multiply(v[0]).subtract(u[0].multiply(v[2])).multiply(w[1]);
    BigDecimal z = u[0].multiply(v[1]).subtract(u[1].multiply(v[0])).multiply(w[2]);
    return x.add(y).add(z).signum();
  }

  private static BigDecimal[] less(Vertex p, Vertex q) {
    return new BigDecimal[] {less(p.x(), q.x()), less(p.y(), q.y()), less(p.z(), q.z())};
  }

  private static BigDecimal less(double p, double q) {
    return new BigDecimal(p).subtract(new BigDecimal(q));
  }
}
