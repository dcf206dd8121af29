package felloe.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A free curve as tangent lines and arcs. Joints are tangent to 1e-9 radians wherever the curve
 * itself has no corner; a turn of more than 10 degrees within 1e-4 mm of a point (a cusp) counts as
 * a corner. A piece of a circle becomes one arc, a straight stretch one line.
 *
 * @param segments lines and arcs from the curve's start to its end, each starting at the very point
 *     where the one before ends; none when the curve has no length
 * @param distance the greatest distance between curve and segments either way, mm; measured at 24
 *     places a piece and refined round the worst
 * @param turn the greatest angle between curve and segments, radians; measured likewise, but not on
 *     pieces shorter than 1e-3 mm
 */
public record ArcFit(List<Segment> segments, double distance, double turn) {

  /** No finer tolerance is taken: far below what any machine cuts, mm. */
  private static final double FINEST = 1e-4;

  /** The directions of curve and arcs differ by no more than this, radians (0.5 degrees). */
  public static final double GREATEST_TURN = Math.toRadians(0.5);

  /** A curve that needs more segments than this is refused. */
  public static final int MOST = 4_000;

  /** A whole curve smaller than this has no shape, only its ends count, mm. */
  private static final double SPECK = 1e-3;

  private static final int SAMPLES = 64;

  /** Keeps copies only. */
  public ArcFit {
    segments = List.copyOf(segments);
    Numbers.finite("distance", distance);
    Numbers.finite("turn", turn);
  }

  /** The curve within {@link Tolerances#FREE_CURVE}. */
  public static ArcFit of(FreeCurve curve) {
    return of(curve, Tolerances.FREE_CURVE);
  }

  /**
   * The curve within a tolerance.
   *
   * @param tolerance greatest distance either way, mm, at least 1e-4
   * @throws GeometryException when it takes too many arcs
   * @throws IllegalArgumentException when the tolerance is smaller
   */
  public static ArcFit of(FreeCurve curve, double tolerance) {
    if (Numbers.finite("tolerance", tolerance) < FINEST) {
      throw new IllegalArgumentException(
          "tolerance must be at least 0.0001 mm, not " + Numbers.brief(tolerance, 9));
    }
    if (curve.exact().isPresent()) {
      return new ArcFit(List.of(curve.exact().get()), 0, 0);
    }
    Extent extent = Extent.of(curve, Math.max(SPECK, tolerance));
    if (extent.size < SPECK) {
      return speck(curve, extent.size);
    }
    if (extent.straight) {
      return new ArcFit(List.of(new Line(curve.from(), curve.to())), extent.off, extent.turn);
    }
    try {
      return fitted(curve, tolerance);
    } catch (GeometryException e) {
      // A curl of less than the tolerance that no arcs can follow: its ends are all that matters.
      if (extent.size <= tolerance) {
        return speck(curve, extent.size);
      }
      throw e;
    }
  }

  private static ArcFit fitted(FreeCurve curve, double tolerance) {
    StretchFit fitter = new StretchFit(curve, tolerance, GREATEST_TURN, MOST);
    List<Segment> segments = new ArrayList<>();
    double distance = 0;
    double turn = 0;
    for (CurvePiece stretch : CurvePiece.of(curve)) {
      for (StretchFit.Piece piece : fitter.fit(stretch)) {
        segments.addAll(piece.segments());
        distance = Math.max(distance, piece.distance());
        turn = Math.max(turn, piece.turn());
      }
    }
    if (segments.size() > MOST) {
      throw new GeometryException(
          "the curve needs " + segments.size() + " arcs, more than " + MOST, curve.from());
    }
    return new ArcFit(ArcMerge.open(segments), distance, turn);
  }

  private static ArcFit speck(FreeCurve curve, double size) {
    return curve.from().near(curve.to(), Tolerances.SAME_POINT)
        ? new ArcFit(List.of(), size, 0)
        : new ArcFit(List.of(new Line(curve.from(), curve.to())), size, 0);
  }

  /**
   * How large a curve is, and how far off its chord; of one that is large and bent no more is known
   * than that.
   */
  private record Extent(double size, boolean straight, double off, double turn) {

    static Extent of(FreeCurve curve, double large) {
      Point chord = curve.to().minus(curve.from());
      double size = 0;
      double off = 0;
      double turn = 0;
      boolean onward = chord.norm() > SPECK;
      Point along = onward ? chord.unit() : new Point(1, 0);
      for (int i = 0; i <= SAMPLES && !(size > large && bent(onward, off, turn)); i++) {
        double t = i / (double) SAMPLES;
        Point out = curve.at(t).minus(curve.from());
        Point direction = curve.tangent(t, i < SAMPLES);
        size = Math.max(size, out.norm());
        off = Math.max(off, Math.abs(along.cross(out)));
        turn = Math.max(turn, Math.abs(Math.atan2(along.cross(direction), along.dot(direction))));
        onward &= along.dot(direction) > 0;
      }
      return new Extent(size, !bent(onward, off, turn), off, turn);
    }

    private static boolean bent(boolean onward, double off, double turn) {
      return !onward || off >= Tolerances.SAME_CURVE || turn >= GREATEST_TURN;
    }
  }
}
