package felloe.cockpit;

import felloe.plate.Cockpit.Spot;

/** Distances between straight ways in space, in closed form; mm. */
final class Ways {

  private Ways() {}

  /** The least distance between two straight ways, their ends with them. */
  static double distance(Spot a, Spot b, Spot c, Spot d) {
    double least =
        Math.min(
            Math.min(distance(a, c, d), distance(b, c, d)),
            Math.min(distance(c, a, b), distance(d, a, b)));
    Spot u = minus(b, a);
    Spot v = minus(d, c);
    Spot w = minus(a, c);
    double uu = dot(u, u);
    double uv = dot(u, v);
    double vv = dot(v, v);
    double square = uu * vv - uv * uv;
    if (square > 0) {
      double s = (uv * dot(v, w) - vv * dot(u, w)) / square;
      double t = (uu * dot(v, w) - uv * dot(u, w)) / square;
      if (s > 0 && s < 1 && t > 0 && t < 1) {
        least = Math.min(least, a.plus(u, s).distance(c.plus(v, t)));
      }
    }
    return least;
  }

  /** The least distance of a place from a straight way. */
  static double distance(Spot p, Spot from, Spot to) {
    Spot way = minus(to, from);
    double square = dot(way, way);
    double at = square == 0 ? 0 : dot(minus(p, from), way) / square;
    return p.distance(from.plus(way, Math.max(0, Math.min(1, at))));
  }

  private static Spot minus(Spot a, Spot b) {
    return a.plus(b, -1);
  }

  private static double dot(Spot a, Spot b) {
    return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
  }
}
