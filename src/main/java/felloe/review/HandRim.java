package felloe.review;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The rim that a hand closes about: what lies outside a grip window as seen from the hub axis.
 * Toward the hub and past the ends of the window no hand goes round the plate.
 */
final class HandRim {

  private final Contour window;

  /** From the hub axis to the window's middle, of length one. */
  private final Point middle;

  /** How far the outermost fingers stand beside it, radians: clockwise, and the other way. */
  private final double clockwise;

  private final double counterClockwise;

  private HandRim(Contour window, List<Region> fingers) {
    this.window = window;
    this.middle = window.properties().centroid().unit();
    List<Double> turns =
        fingers.stream().flatMap(row -> extremes(row.outer()).stream()).map(this::turn).toList();
    clockwise = Collections.min(turns);
    counterClockwise = Collections.max(turns);
  }

  /**
   * The shortest way across the rim where a hand may be; empty where the window has no room for a
   * finger.
   *
   * @param finger thickness of a finger, mm
   */
  static Optional<Gap> narrowest(Contour outline, Contour window, double finger) {
    Gap whole = outline.gap(window);
    Point axis = new Point(0, 0);
    if (window.contains(axis) || window.distance(axis) <= Tolerances.SAME_POINT) {
      return Optional.of(whole);
    }
    if (whole.distance() > 0
        && isSeen(window, whole.from())
        && takesFinger(window, whole, finger)) {
      return Optional.of(whole);
    }
    List<Region> fingers = FingerRoom.fingerPlaces(window, finger / 2);
    return fingers.isEmpty() ? Optional.empty() : new HandRim(window, fingers).narrowest(outline);
  }

  /** Whether a finger fits into the window at the end of a gap. */
  private static boolean takesFinger(Contour window, Gap gap, double finger) {
    Point centre = gap.to().plus(gap.to().minus(gap.from()).unit(), finger / 2);
    return window.contains(centre) && window.distance(centre) >= finger / 2 - Tolerances.SAME_POINT;
  }

  private Optional<Gap> narrowest(Contour outline) {
    Gap best = null;
    for (Segment segment : outline.segments()) {
      for (Segment piece : pieces(segment)) {
        if (isOutside(piece.at(0.5))) {
          for (Segment edge : window.segments()) {
            Gap gap = Gap.between(piece, edge);
            best = best == null ? gap : best.shorter(gap);
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private double turn(Point p) {
    return Math.atan2(middle.cross(p), middle.dot(p));
  }

  /** Ends of segments, and where a ray from the axis only touches an arc. */
  static List<Point> extremes(Contour window) {
    List<Point> points = new ArrayList<>();
    for (Segment segment : window.segments()) {
      points.add(segment.from());
      if (segment instanceof Arc arc && arc.centre().norm() > arc.radius()) {
        double far = arc.centre().norm();
        double off = Math.asin(arc.radius() / far);
        double reach = Math.sqrt(far * far - arc.radius() * arc.radius());
        for (double side : new double[] {off, -off}) {
          Point touch = Point.polar(reach, arc.centre().angle() + side);
          if (arc.passes(touch)) {
            points.add(touch);
          }
        }
      }
    }
    return points;
  }

  /** A piece of the outline, cut where it crosses the rays through the outermost fingers. */
  private List<Segment> pieces(Segment segment) {
    double far = segment.from().norm() + segment.length() + 1;
    List<Segment> pieces = List.of(segment);
    for (double side : new double[] {clockwise, counterClockwise}) {
      Line ray = new Line(new Point(0, 0), Point.polar(far, middle.angle() + side));
      pieces = pieces.stream().flatMap(piece -> cut(piece, ray).stream()).toList();
    }
    return pieces;
  }

  private static List<Segment> cut(Segment piece, Line ray) {
    for (Point p : Gap.meetings(piece, ray)) {
      if (!p.near(piece.from(), Tolerances.SAME_POINT)
          && !p.near(piece.to(), Tolerances.SAME_POINT)) {
        List<Segment> both = new ArrayList<>(cut(piece.between(piece.from(), p), ray));
        both.addAll(cut(piece.between(p, piece.to()), ray));
        return both;
      }
    }
    return List.of(piece);
  }

  /** Whether a point lies beside the fingers, seen from the axis through the window. */
  private boolean isOutside(Point p) {
    double turn = turn(p);
    return turn >= clockwise && turn <= counterClockwise && isSeen(window, p);
  }

  private static boolean isSeen(Contour window, Point p) {
    Line sight = new Line(new Point(0, 0), p);
    return window.segments().stream().anyMatch(s -> !Gap.meetings(sight, s).isEmpty());
  }
}
