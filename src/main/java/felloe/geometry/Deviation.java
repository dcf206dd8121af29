package felloe.geometry;

import java.util.List;

/** Measures how far a stretch of curve and the segments that stand for it lie apart. */
final class Deviation {

  private static final int SAMPLES = 24;
  private static final int BACK_SAMPLES = 6;
  private static final int REFINING = 18;

  private final List<Segment> segments;
  private final FreeCurve curve;
  private final double start;
  private final double end;

  Deviation(List<Segment> segments, FreeCurve curve, double start, double end) {
    this.segments = segments;
    this.curve = curve;
    this.start = start;
    this.end = end;
  }

  private double parameter(int sample) {
    return start + (end - start) * sample / SAMPLES;
  }

  /** Distance from the curve at a parameter to the nearest of the segments. */
  private double distance(double t) {
    Point p = curve.at(t);
    return distance(nearest(p), p);
  }

  private Segment nearest(Point p) {
    Segment nearest = segments.get(0);
    for (int i = 1; i < segments.size(); i++) {
      if (distance(segments.get(i), p) < distance(nearest, p)) {
        nearest = segments.get(i);
      }
    }
    return nearest;
  }

  /** The same as the segment's own answer; quicker for arcs of less than half a turn. */
  private static double distance(Segment segment, Point p) {
    if (!(segment instanceof Arc arc) || Math.abs(arc.sweep()) >= Math.PI) {
      return segment.distance(p);
    }
    Point c = arc.centre();
    double x = p.x() - c.x();
    double y = p.y() - c.y();
    double sense = Math.signum(arc.sweep());
    double sinceFrom = (arc.from().x() - c.x()) * y - (arc.from().y() - c.y()) * x;
    double untilTo = x * (arc.to().y() - c.y()) - y * (arc.to().x() - c.x());
    if (sinceFrom * sense >= 0 && untilTo * sense >= 0) {
      return Math.abs(Math.sqrt(x * x + y * y) - arc.radius());
    }
    return Math.min(p.distance(arc.from()), p.distance(arc.to()));
  }

  /** Angle between the curve at a parameter and the segment nearest to it, radians. */
  private double turn(double t) {
    Point p = curve.at(t);
    return turn(nearest(p), p, t);
  }

  private double turn(Segment on, Point p, double t) {
    Point direction;
    if (on instanceof Arc arc) {
      Point out = arc.nearest(p).minus(arc.centre());
      direction = arc.sweep() > 0 ? out.left() : out.right();
    } else {
      direction = on.tangent(0);
    }
    Point along = curve.derivative(t, 1);
    if (along.norm() == 0) {
      along = curve.tangent(t, true);
    }
    return Math.abs(Math.atan2(direction.cross(along), direction.dot(along)));
  }

  /** A quick look: whether samples of the curve keep both limits. */
  boolean within(double tolerance, double angle) {
    for (int i = 1; i < SAMPLES; i++) {
      // In big steps to and fro, so that a bad fit is found at once.
      double t = parameter(i * 7 % SAMPLES);
      Point p = curve.at(t);
      Segment on = nearest(p);
      if (distance(on, p) > tolerance || turn(on, p, t) > angle) {
        return false;
      }
    }
    return true;
  }

  /** The greatest distance, both ways: sampled, then refined round the worst sample. */
  double greatest() {
    Point[] points = new Point[SAMPLES + 1];
    double worst = 0;
    int at = 0;
    for (int i = 0; i <= SAMPLES; i++) {
      points[i] = curve.at(parameter(i));
      double distance = distance(nearest(points[i]), points[i]);
      if (distance > worst) {
        worst = distance;
        at = i;
      }
    }
    double low = parameter(Math.max(0, at - 1));
    double high = parameter(Math.min(SAMPLES, at + 1));
    double peak = LineSearch.lowest(t -> -distance(t), low, high, REFINING);
    worst = Math.max(worst, distance(peak));
    for (Segment segment : segments) {
      for (int i = 1; i < BACK_SAMPLES; i++) {
        worst = Math.max(worst, back(segment.at(i / (double) BACK_SAMPLES), points));
      }
    }
    return worst;
  }

  /** Distance from a point of the segments to the curve. */
  private double back(Point p, Point[] points) {
    int nearest = 0;
    for (int i = 1; i < points.length; i++) {
      if (points[i].distance(p) < points[nearest].distance(p)) {
        nearest = i;
      }
    }
    double low = parameter(Math.max(0, nearest - 1));
    double high = parameter(Math.min(SAMPLES, nearest + 1));
    double t = LineSearch.lowest(s -> curve.at(s).distance(p), low, high, REFINING);
    return Math.min(points[nearest].distance(p), curve.at(t).distance(p));
  }

  /** The greatest angle between the curve and the segments, radians; refined likewise. */
  double greatestTurn() {
    double worst = 0;
    int at = 1;
    for (int i = 1; i < SAMPLES; i++) {
      double turn = turn(parameter(i));
      if (turn > worst) {
        worst = turn;
        at = i;
      }
    }
    double peak = LineSearch.lowest(t -> -turn(t), parameter(at - 1), parameter(at + 1), REFINING);
    return Math.max(worst, turn(peak));
  }
}
