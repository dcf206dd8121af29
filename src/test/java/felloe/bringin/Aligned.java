package felloe.bringin;

import felloe.geometry.Point;
import java.util.List;

/** Lays measured points on a part whose edges are known: the turn and shift that fit best. */
final class Aligned {

  private Aligned() {}

  static Point move(double[] pose, Point p) {
    double c = Math.cos(pose[0]);
    double s = Math.sin(pose[0]);
    return new Point(c * p.x() - s * p.y() + pose[1], s * p.x() + c * p.y() + pose[2]);
  }

  /** From where the points are known to lie nearly. */
  static double[] to(TruePart part, List<Point> points, double[] nearly) {
    double[] pose = nearly.clone();
    for (int round = 0; round < 8; round++) {
      step(part, points, pose, 1);
    }
    return pose;
  }

  private static void step(TruePart part, List<Point> points, double[] pose, int every) {
    NormalEquations equations = new NormalEquations(3);
    for (int i = 0; i < points.size(); i += every) {
      Point q = move(pose, points.get(i));
      double d = part.outside(q.x(), q.y());
      double h = 1e-4;
      double dx = (part.outside(q.x() + h, q.y()) - part.outside(q.x() - h, q.y())) / (2 * h);
      double dy = (part.outside(q.x(), q.y() + h) - part.outside(q.x(), q.y() - h)) / (2 * h);
      double turn = -dx * (q.y() - pose[2]) + dy * (q.x() - pose[1]);
      equations.add(new double[] {turn, dx, dy}, d, 1 / (1 + d * d));
    }
    double[] step = equations.step(1e-6);
    for (int i = 0; i < 3; i++) {
      pose[i] += step[i];
    }
  }
}
