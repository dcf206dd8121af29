package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of a free curve without a corner, with the point and direction at either end.
 *
 * @param start parameter at the start
 * @param end parameter at the end
 * @param ends end points and directions
 */
record CurvePiece(double start, double end, Biarc.Ends ends) {

  /** Share of the way to its limit at which leaving a pinch is tried first; it grows from there. */
  private static final double FIRST_STEP = 1e-9;

  /** A turn that happens within this distance of a point is taken as a corner, mm. */
  static final double PINCH = 1e-4;

  /** A turn within the pinch smaller than this is none, radians. */
  private static final double SHARP = Math.toRadians(10);

  /** Directions are not compared on a stretch shorter than this, mm. */
  static final double SPOT = 1e-3;

  private static final int SAMPLES = 64;

  /** A corner of the curve: the parameters and directions on either side of it. */
  private record Corner(double until, double since, Point at, Point arriving, Point leaving) {}

  /**
   * Cuts a curve where it turns on the spot: cusps, and turns too tight to be an arc. Directions
   * there are those just outside the turn.
   */
  static List<CurvePiece> of(FreeCurve curve) {
    List<Corner> corners = new ArrayList<>();
    corners.add(corner(curve, 0));
    for (double t : slowest(curve)) {
      Corner corner = corner(curve, t);
      boolean clear = corner.until > corners.get(corners.size() - 1).since && corner.since < 1;
      if (clear && turn(corner.arriving, corner.leaving) > SHARP) {
        corners.add(corner);
      }
    }
    Corner end = corner(curve, 1);
    if (end.until > corners.get(corners.size() - 1).since) {
      corners.add(end);
    }
    List<CurvePiece> stretches = new ArrayList<>();
    for (int i = 1; i < corners.size(); i++) {
      Corner a = corners.get(i - 1);
      Corner b = corners.get(i);
      stretches.add(
          new CurvePiece(a.since, b.until, new Biarc.Ends(a.at, a.leaving, b.at, b.arriving)));
    }
    return stretches;
  }

  /** Whether it is too small to have a direction worth keeping. */
  boolean isSpot(FreeCurve curve) {
    double length = 0;
    Point before = curve.at(start);
    for (int i = 1; i <= 4; i++) {
      Point p = curve.at(start + (end - start) * i / 4);
      length += p.distance(before);
      before = p;
    }
    return length < SPOT;
  }

  private static double turn(Point a, Point b) {
    return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
  }

  private static Corner corner(FreeCurve curve, double t) {
    double until = leave(curve, t, 0);
    double since = leave(curve, t, 1);
    Point before = curve.tangent(t, false);
    Point after = curve.tangent(t, true);
    Point outerBefore = curve.tangent(until, false);
    Point outerAfter = curve.tangent(since, true);
    boolean gentle =
        (t == 0 || turn(outerBefore, before) < SHARP)
            && (t == 1 || turn(after, outerAfter) < SHARP);
    if (!gentle) {
      return new Corner(until, since, curve.at(t), outerBefore, outerAfter);
    }
    // Where the curve all but stands still its bend has no digits left: that bit is left out.
    double bend = Math.abs(curve.curvature(t));
    return bend < 1 / PINCH
        ? new Corner(t, t, curve.at(t), before, after)
        : new Corner(until, since, curve.at(t), before, after);
  }

  /** The parameter towards {@code limit} at which the curve leaves the pinch round a point. */
  private static double leave(FreeCurve curve, double t, double limit) {
    Point p = curve.at(t);
    double near = 0;
    double far = FIRST_STEP;
    double way = limit - t;
    while (far < 1 && curve.at(t + far * way).distance(p) < PINCH) {
      near = far;
      far *= 2;
    }
    far = Math.min(far, 1);
    for (int i = 0; i < 50; i++) {
      double middle = (near + far) / 2;
      if (curve.at(t + middle * way).distance(p) < PINCH) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return t + far * way;
  }

  /** Parameters inside the curve where its speed is least. */
  private static List<Double> slowest(FreeCurve curve) {
    List<Double> found = new ArrayList<>();
    double[] speed = new double[SAMPLES + 1];
    for (int i = 0; i <= SAMPLES; i++) {
      speed[i] = curve.derivative(i / (double) SAMPLES, 1).norm();
    }
    for (int i = 1; i < SAMPLES; i++) {
      if (speed[i] < speed[i - 1] && speed[i] <= speed[i + 1]) {
        found.add(
            LineSearch.lowest(
                t -> curve.derivative(t, 1).norm(),
                (i - 1) / (double) SAMPLES,
                (i + 1) / (double) SAMPLES));
      }
    }
    return found;
  }

  /** The parameters where the bend changes side or is greatest, between the ends. */
  List<Double> landmarks(FreeCurve curve) {
    List<Double> found = new ArrayList<>();
    double[] t = new double[SAMPLES + 1];
    double[] bend = new double[SAMPLES + 1];
    for (int i = 0; i <= SAMPLES; i++) {
      t[i] = start + (end - start) * i / SAMPLES;
      bend[i] = curve.curvature(t[i]);
    }
    double least = start + 1e-3 * (end - start);
    double most = end - 1e-3 * (end - start);
    for (int i = 1; i <= SAMPLES; i++) {
      double at = Double.NaN;
      if (bend[i - 1] * bend[i] < 0) {
        at = LineSearch.root(curve::curvature, t[i - 1], t[i]);
      } else if (i < SAMPLES
          && Math.abs(bend[i]) > Math.abs(bend[i - 1])
          && Math.abs(bend[i]) >= Math.abs(bend[i + 1])) {
        at = LineSearch.lowest(s -> -Math.abs(curve.curvature(s)), t[i - 1], t[i + 1]);
      }
      double last = found.isEmpty() ? least : found.get(found.size() - 1);
      if (at > last && at < most) {
        found.add(at);
      }
    }
    return found;
  }
}
