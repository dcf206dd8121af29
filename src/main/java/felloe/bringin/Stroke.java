package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.ArcFit;
import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.FreeCurve;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.List;

/** One step of a drawn line: exact, or a free curve that arcs will stand for. Millimetres, y up. */
sealed interface Stroke {

  Point from();

  Point to();

  /** The same the other way round. */
  Stroke reversed();

  /** The same between ends that have moved by no more than a gap that is closed. */
  Stroke between(Point from, Point to);

  /** Lines and arcs that stand for it within a tolerance, mm. */
  ArcFit fit(double tolerance);

  /** The point at a share of it, from 0 to 1. */
  Point at(double share);

  /** A point in its midst, to tell it from another between the same ends. */
  default Point middle() {
    return at(0.5);
  }

  /** A line or an arc. */
  record Exact(Segment segment) implements Stroke {
    @Override
    public Point from() {
      return segment.from();
    }

    @Override
    public Point to() {
      return segment.to();
    }

    @Override
    public Stroke reversed() {
      return new Exact(segment.reversed());
    }

    @Override
    public Stroke between(Point from, Point to) {
      if (from.equals(from()) && to.equals(to())) {
        return this;
      }
      if (segment instanceof Arc arc && !from.equals(to)) {
        // The same share of a turn over the chord as it is now.
        double rise = from.distance(to) / 2 * Math.tan(arc.sweep() / 4);
        return new Exact(
            Arc.isStraight(from, to, rise) ? new Line(from, to) : Arc.withRise(from, to, rise));
      }
      return new Exact(new Line(from, to));
    }

    @Override
    public ArcFit fit(double tolerance) {
      return new ArcFit(List.of(segment), 0, 0);
    }

    @Override
    public Point at(double share) {
      return segment.at(share);
    }
  }

  /** A free curve. */
  record Free(FreeCurve curve) implements Stroke {
    @Override
    public Point from() {
      return curve.from();
    }

    @Override
    public Point to() {
      return curve.to();
    }

    @Override
    public Stroke reversed() {
      if (curve instanceof CubicCurve c) {
        return new Free(new CubicCurve(c.to(), c.second(), c.first(), c.from()));
      }
      if (curve instanceof QuadraticCurve q) {
        return new Free(new QuadraticCurve(q.to(), q.control(), q.from()));
      }
      EllipticalArc e = (EllipticalArc) curve;
      return new Free(
          new EllipticalArc(
              e.to(),
              e.from(),
              e.centre(),
              e.rx(),
              e.ry(),
              e.turn(),
              e.start() + e.sweep(),
              -e.sweep()));
    }

    @Override
    public Stroke between(Point from, Point to) {
      if (from.equals(from()) && to.equals(to())) {
        return this;
      }
      if (curve instanceof CubicCurve c) {
        return new Free(
            new CubicCurve(
                from, c.first().plus(from.minus(c.from())), c.second().plus(to.minus(c.to())), to));
      }
      if (curve instanceof QuadraticCurve q) {
        return new Free(new QuadraticCurve(from, q.control(), to));
      }
      EllipticalArc e = (EllipticalArc) curve;
      boolean large = Math.abs(e.sweep()) > Math.PI;
      return new Free(
          EllipticalArc.through(from, to, e.rx(), e.ry(), e.turn(), large, e.sweep() > 0));
    }

    @Override
    public ArcFit fit(double tolerance) {
      return ArcFit.of(curve, tolerance);
    }

    @Override
    public Point at(double share) {
      return curve.at(share);
    }
  }

  /** A line, unless its ends are one point. */
  static List<Stroke> line(Point from, Point to) {
    return from.near(to, Tolerances.SAME_POINT)
        ? List.of()
        : List.of(new Exact(new Line(from, to)));
  }

  /** A free curve, or the line or arc that it is. */
  static Stroke of(FreeCurve curve) {
    return curve.exact().<Stroke>map(Exact::new).orElseGet(() -> new Free(curve));
  }

  /** How far strokes that follow each other reach from where they start, mm. */
  static double size(List<Stroke> strokes) {
    Point from = strokes.get(0).from();
    double far = 0;
    for (Stroke stroke : strokes) {
      far = Math.max(far, stroke.middle().distance(from));
      far = Math.max(far, stroke.to().distance(from));
    }
    return far;
  }
}
