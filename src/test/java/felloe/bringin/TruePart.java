package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A wheel whose edges are known: 300 mm across, flat below, two windows, a bore, six holes. */
final class TruePart {

  final double radius;
  final double flat;
  final double bore;
  final double hole;
  final double circle;
  final double turn;
  final double cornerRadius;
  final List<Point> holes = new ArrayList<>();

  TruePart(Random random) {
    radius = 150 + 0.4 * (random.nextDouble() - 0.5);
    flat = 112 + 6 * random.nextDouble();
    bore = 20 + 4 * random.nextDouble();
    hole = 2.6 + 1.4 * random.nextDouble();
    circle = 35 + 3 * random.nextDouble();
    turn = random.nextDouble();
    cornerRadius = 6 + 8 * random.nextDouble();
    for (int i = 0; i < 6; i++) {
      holes.add(Point.polar(circle, turn + i * Math.PI / 3));
    }
  }

  /** How far outside a place lies, mm; less than 0 within. */
  double outside(double x, double y) {
    double r = Math.hypot(x, y);
    if (r > radius + 30) {
      return r - radius;
    }
    double d = Math.max(r - radius, -flat - y);
    if (d > 0 && r > radius && y < -flat) {
      double cornerX = Math.sqrt(radius * radius - flat * flat);
      d = Math.max(d, Math.hypot(Math.abs(x) - cornerX, y + flat));
    }
    d = Math.max(d, bore - r);
    double wx = Math.max(0, Math.abs(Math.abs(x) - 92) - (24 - cornerRadius));
    double wy = Math.max(0, Math.abs(y) - (55 - cornerRadius));
    double inner =
        Math.min(
            0,
            Math.max(
                Math.abs(Math.abs(x) - 92) - (24 - cornerRadius),
                Math.abs(y) - (55 - cornerRadius)));
    d = Math.max(d, cornerRadius - Math.hypot(wx, wy) - inner);
    if (r < circle + 10 && r > circle - 10) {
      for (Point h : holes) {
        d = Math.max(d, hole - Math.hypot(x - h.x(), y - h.y()));
      }
    }
    return d;
  }
}
