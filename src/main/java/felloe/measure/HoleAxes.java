package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;

/**
 * The axes in which holes are told: from the edges where edges were measured, else about the centre
 * of the circle with the first hole straight up and the numbers running counter-clockwise.
 */
final class HoleAxes {

  private final Adjustment adjustment;
  private final Unknowns unknowns;
  private final double[] z;
  private final boolean mirrored;
  private final RigidTransform motion;
  private final ReferenceEdge across;
  private final ReferenceEdge up;

  /**
   * @param centre of the circle, or any middle, in the adjustment's own axes
   */
  HoleAxes(Adjustment adjustment, Point centre) {
    this.adjustment = adjustment;
    this.unknowns = adjustment.equations().unknowns();
    this.z = adjustment.z();
    this.across = first(ReferenceEdge.LEFT, ReferenceEdge.RIGHT);
    this.up = first(ReferenceEdge.BOTTOM, ReferenceEdge.TOP);
    boolean free = across == null || up == null;
    this.mirrored = free && area() < 0;
    if (across == null && up == null) {
      Point first = point(0).minus(centre);
      double angle = mirrored ? Math.PI - first.angle() : first.angle();
      RigidTransform turn = new RigidTransform(mirrored, Math.PI / 2 - angle, Point.ORIGIN);
      Point at = turn.of(centre);
      this.motion = turn.then(RigidTransform.shift(-at.x(), -at.y()));
    } else {
      double x = across == null ? -(mirrored ? -centre.x() : centre.x()) : offset(across);
      double y = up == null ? -(mirrored && across != null ? -centre.y() : centre.y()) : offset(up);
      this.motion = RigidTransform.shift(x, y);
    }
  }

  private ReferenceEdge first(ReferenceEdge one, ReferenceEdge other) {
    List<ReferenceEdge> edges = unknowns.edges();
    return edges.contains(one) ? one : edges.contains(other) ? other : null;
  }

  private double offset(ReferenceEdge edge) {
    double sign = edge.inward().x() + edge.inward().y();
    return sign * z[unknowns.offset(edge)];
  }

  private Point point(int hole) {
    return new Point(z[unknowns.x(hole)], z[unknowns.y(hole)]);
  }

  private double area() {
    double twice = 0;
    for (int i = 0; i < unknowns.holes(); i++) {
      twice += point(i).cross(point((i + 1) % unknowns.holes()));
    }
    return twice;
  }

  /** Whether the numbers run clockwise in these axes. */
  boolean clockwise() {
    return !mirrored && area() < 0;
  }

  /** Mirrored at an edge's own direction, so that its distances stay. */
  private Point flipped(Point p) {
    return mirrored && (across != null || up != null)
        ? across != null ? new Point(p.x(), -p.y()) : new Point(-p.x(), p.y())
        : p;
  }

  /** Where a hole is in these axes. */
  Point at(int hole) {
    return motion.of(flipped(point(hole)));
  }

  /** All holes in order. */
  List<Point> points() {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < unknowns.holes(); i++) {
      points.add(at(i));
    }
    return points;
  }

  /**
   * How a place that moves with the holes changes with the unknowns: for each hole the parts of its
   * x and y, in these axes, that count.
   *
   * @param weightX parts of each hole's x
   * @param weightY parts of each hole's y
   * @param edges parts of the two edges: 1 where the place is told from them
   */
  double[] row(double[] weightX, double[] weightY, double edgesX, double edgesY) {
    double[] row = new double[unknowns.all()];
    RigidTransform turn = new RigidTransform(motion.mirrored(), motion.turn(), Point.ORIGIN);
    Point ex = turn.of(flipped(new Point(1, 0)));
    Point ey = turn.of(flipped(new Point(0, 1)));
    for (int i = 0; i < unknowns.holes(); i++) {
      row[unknowns.x(i)] = weightX[i] * ex.x() + weightY[i] * ex.y();
      row[unknowns.y(i)] = weightX[i] * ey.x() + weightY[i] * ey.y();
    }
    if (across != null) {
      row[unknowns.offset(across)] += edgesX * across.inward().x();
    }
    if (up != null) {
      row[unknowns.offset(up)] += edgesY * up.inward().y();
    }
    return row;
  }

  /** The hole's place with its errors. */
  FoundHole hole(int i, String label, double factor) {
    double[] one = new double[unknowns.holes()];
    double[] none = new double[unknowns.holes()];
    one[i] = 1;
    double[] x = row(one, none, 1, 0);
    double[] y = row(none, one, 0, 1);
    double[] both = new double[x.length];
    for (int k = 0; k < x.length; k++) {
      both[k] = x[k] + y[k];
    }
    double ex = adjustment.standardError(x);
    double ey = adjustment.standardError(y);
    double sum = adjustment.standardError(both);
    double covariance = (sum * sum - ex * ex - ey * ey) / 2;
    double[] size = new double[x.length];
    size[unknowns.size(i)] = 1;
    boolean sized = ObservabilityTest.size(adjustment, i);
    return new FoundHole(
        label,
        at(i),
        factor * ex,
        factor * ey,
        factor * factor * covariance,
        sized ? java.util.Optional.of(z[unknowns.size(i)]) : java.util.Optional.empty(),
        sized ? factor * adjustment.standardError(size) : 0);
  }
}
