package felloe.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A closed chain of lines and arcs that neither crosses nor touches itself, in millimetres. It
 * always runs counter-clockwise, with the enclosed area to its left: a chain given clockwise is
 * turned round. Each segment starts at the very point where the one before ends, so it is closed to
 * the last digit.
 *
 * @param segments the chain in order of travel; one whole circle, or at least two segments
 */
public record Contour(List<Segment> segments) {

  /** Places of a segment at which it is held against another contour. */
  private static final int PLACES = 32;

  /**
   * Refuses a chain that is open, encloses nothing, or meets itself.
   *
   * @throws GeometryException saying which edges (numbered from 1 as given) and where
   */
  public Contour {
    segments = List.copyOf(segments);
    refuseOpen(segments);
    refuseSelfMeeting(segments);
    double area = AreaProperties.of(segments).area();
    if (Math.abs(area) <= Tolerances.SAME_POINT * Tolerances.SAME_POINT) {
      throw new GeometryException("a contour must enclose an area", segments.get(0).from());
    }
    if (area < 0) {
      segments = reverse(segments);
    }
  }

  /** A contour from segments in order. */
  public static Contour of(Segment... segments) {
    return new Contour(List.of(segments));
  }

  /** A whole circle. */
  public static Contour circle(Point centre, double radius) {
    return of(Arc.circle(centre, radius));
  }

  /** The edge of a box. */
  public static Contour rectangle(Box box) {
    return polygon(
        List.of(
            new Point(box.minX(), box.minY()),
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY())));
  }

  /**
   * A polygon through corner points.
   *
   * @throws GeometryException when edges cross or corners coincide
   */
  public static Contour polygon(List<Point> corners) {
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(new Line(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Contour(edges);
  }

  private static void refuseOpen(List<Segment> chain) {
    if (chain.isEmpty()) {
      throw new GeometryException("a contour needs edges");
    }
    for (int i = 0; i < chain.size(); i++) {
      Point end = chain.get(i).to();
      Point start = chain.get((i + 1) % chain.size()).from();
      if (!end.equals(start)) {
        throw new GeometryException(
            "edge "
                + (i + 1)
                + " ends "
                + Numbers.brief(end.distance(start), 6)
                + " mm from where the next one starts",
            end);
      }
    }
  }

  private static void refuseSelfMeeting(List<Segment> chain) {
    SelfMeeting.first(chain)
        .ifPresent(
            clash -> {
              throw new GeometryException(
                  "edges "
                      + (clash.first() + 1)
                      + " and "
                      + (clash.second() + 1)
                      + " cross or touch",
                  clash.where());
            });
  }

  private static List<Segment> reverse(List<Segment> chain) {
    List<Segment> turned = new ArrayList<>(chain.size());
    for (Segment segment : chain) {
      turned.add(segment.reversed());
    }
    Collections.reverse(turned);
    return List.copyOf(turned);
  }

  /**
   * Its corners as a polygon of chords, counter-clockwise, the first not repeated. All lie on the
   * contour; equal arcs have equal chords.
   *
   * @param tolerance greatest distance of a chord from its arc, mm
   */
  public List<Point> chords(double tolerance) {
    return new Flattener(tolerance).add(this, 0);
  }

  /** The chain travelled clockwise, for a caller that needs it so. */
  public List<Segment> clockwise() {
    return reverse(segments);
  }

  /** The whole circle that this contour is, if it is one. */
  public Optional<Arc> asCircle() {
    return segments.size() == 1 ? Optional.of((Arc) segments.get(0)) : Optional.empty();
  }

  /** Area, centroid and second moments of the enclosed figure. */
  public AreaProperties properties() {
    return AreaProperties.of(segments);
  }

  /** Enclosed area, mm². */
  public double area() {
    return properties().area();
  }

  /** Length all the way round, mm. */
  public double length() {
    return segments.stream().mapToDouble(Segment::length).sum();
  }

  /** The smallest upright box round it. */
  public Box box() {
    return segments.stream().map(Segment::box).reduce(Box::union).orElseThrow();
  }

  /** The contour after a rigid motion. */
  public Contour moved(RigidTransform motion) {
    List<Segment> moved = new ArrayList<>(segments.size());
    // Shared end points stay shared: equal points are moved by equal arithmetic.
    for (Segment segment : segments) {
      moved.add(segment.moved(motion));
    }
    return new Contour(moved);
  }

  /** The nearest point on the contour. */
  public Point nearest(Point p) {
    Point best = null;
    for (Segment segment : segments) {
      Point q = segment.nearest(p);
      if (best == null || q.distance(p) < best.distance(p)) {
        best = q;
      }
    }
    return best;
  }

  /** The distance from a point to the line of the contour, mm, inside and outside alike. */
  public double distance(Point p) {
    return nearest(p).distance(p);
  }

  /**
   * How far two contours that stand for one line lie apart at the most, either way, mm; looked at
   * in 32 places of each segment.
   */
  public double apart(Contour other) {
    return Math.max(beyond(other), other.beyond(this));
  }

  private double beyond(Contour other) {
    double far = 0;
    for (Segment segment : segments) {
      for (int i = 0; i < PLACES; i++) {
        far = Math.max(far, other.distance(segment.at(i / (double) PLACES)));
      }
    }
    return far;
  }

  /** Distance of its farthest point, mm. */
  public double farthest(Point from) {
    double far = 0;
    for (Segment segment : segments) {
      far = Math.max(far, segment.from().distance(from));
      if (segment instanceof Arc arc) {
        Point away = arc.centre().minus(from);
        Point end =
            away.norm() > Tolerances.SAME_POINT
                ? from.plus(away.unit(), away.norm() + arc.radius())
                : arc.from();
        if (distance(end) <= Tolerances.SAME_POINT) {
          far = Math.max(far, from.distance(end));
        }
      }
    }
    return far;
  }

  /**
   * Its point farthest in one direction; among several, farthest in another.
   *
   * @param first direction, a vector of length one
   * @param second direction that decides between points as far in the first
   */
  public Point extreme(Point first, Point second) {
    List<Point> candidates = new ArrayList<>();
    for (Segment segment : segments) {
      candidates.add(segment.from());
      if (segment instanceof Arc arc) {
        Point tip = arc.centre().plus(first, arc.radius());
        if (arc.passes(tip)) {
          candidates.add(tip);
        }
      }
    }
    double far = candidates.stream().mapToDouble(first::dot).max().orElseThrow();
    return candidates.stream()
        .filter(p -> p.dot(first) > far - Tolerances.SAME_LENGTH)
        .max(Comparator.comparingDouble(second::dot))
        .orElseThrow();
  }

  /** Whether a point lies inside. On the line itself the answer may be either. */
  public boolean contains(Point p) {
    boolean inside = false;
    for (Segment segment : segments) {
      inside ^= Ray.crossesOddly(segment, p);
    }
    return inside;
  }

  /** The shortest way between two contours; distance 0 where they meet. */
  public Gap gap(Contour other) {
    SegmentIndex index = SegmentIndex.of(List.of(other));
    Gap bound = null;
    for (Segment a : segments) {
      Gap gap = Gap.between(a, index.get(index.nearest(a.from())));
      bound = bound == null ? gap : bound.shorter(gap);
    }
    Gap[] best = {bound};
    for (Segment a : segments) {
      index.touching(
          a.box().grown(best[0].distance()),
          number -> best[0] = best[0].shorter(Gap.between(a, index.get(number))));
    }
    return best[0];
  }
}
