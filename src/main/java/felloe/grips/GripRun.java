package felloe.grips;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The stretch of the outline that a grip lies on, and the places beside it. A place is said by its
 * way {@code s} along the outline, counter-clockwise from the start of the stretch, and its
 * distance {@code d} inward from the outline; both in mm.
 */
public final class GripRun {

  private final ArcLengthIndex outline;
  private final double start;
  private final double length;
  private final boolean closed;
  private final List<Segment> chain;
  private final ArcLengthIndex way;

  /** A place beside the stretch. */
  public record Foot(double s, double d) {}

  private GripRun(ArcLengthIndex outline, double start, double length, boolean closed) {
    this.outline = outline;
    this.start = start;
    this.length = length;
    this.closed = closed;
    ArcLengthIndex.Spot from = spot(outline, start);
    this.chain = closed ? outline.segments() : outline.stretch(from, spot(outline, start + length));
    this.way = new ArcLengthIndex(chain);
  }

  private static ArcLengthIndex.Spot spot(ArcLengthIndex outline, double position) {
    return outline.nearest(outline.at(position));
  }

  /** All round an outline. */
  public static GripRun round(Contour outline) {
    ArcLengthIndex index = new ArcLengthIndex(outline);
    return new GripRun(index, 0, index.length(), true);
  }

  /**
   * From one position on the outline counter-clockwise on to another.
   *
   * @param from mm from the outline's start
   * @param to mm from the outline's start
   */
  static GripRun between(ArcLengthIndex outline, double from, double to) {
    double whole = outline.length();
    double way = to - from;
    way -= whole * Math.floor(way / whole);
    return new GripRun(outline, from, way, false);
  }

  /** Its length along the outline, mm. */
  public double length() {
    return length;
  }

  /** Whether it goes all round. */
  public boolean closed() {
    return closed;
  }

  /** The lines and arcs of the outline that it lies on, in order of travel. */
  public List<Segment> segments() {
    return chain;
  }

  /** Where its lines and arcs start and end, mm from its start. */
  public List<Double> joints() {
    List<Double> all = new ArrayList<>();
    for (int i = 0; i <= chain.size(); i++) {
      all.add(way.start(i));
    }
    return all;
  }

  /** A place beside the outline. */
  public Point at(double s, double d) {
    Point on = outline.at(start + s);
    return d == 0 ? on : on.plus(inward(s), d);
  }

  /** From the outline straight into the plate, of length one. */
  public Point inward(double s) {
    return outline.tangent(start + s).left();
  }

  /** Curvature of the outline, 1/mm, positive where it bulges out. */
  public double curvature(double s) {
    return outline.curvature(start + s);
  }

  /** Where a point lies; past the ends of the stretch beside its end. */
  public Foot foot(Point p) {
    ArcLengthIndex.Spot spot = way.nearest(p);
    Point on = spot.point();
    double s = spot.position();
    // A chain of segments ends where another lap of it would begin.
    if (!closed && s == 0 && !on.equals(chain.get(0).from())) {
      s = length;
    }
    Segment segment = s == length ? chain.get(chain.size() - 1) : chain.get(spot.number());
    double fraction = s == length ? 1 : (s - way.start(spot.number())) / segment.length();
    Point tangent = segment.tangent(Math.min(1, Math.max(0, fraction)));
    double side = tangent.cross(p.minus(on));
    return new Foot(s, Math.copySign(on.distance(p), side));
  }

  /** The place on the stretch that lies in a direction from the hub axis, if it does. */
  OptionalDouble toward(double direction) {
    return outline
        .outermost(direction)
        .map(p -> within(outline.position(p)))
        .filter(s -> s >= 0)
        .map(OptionalDouble::of)
        .orElse(OptionalDouble.empty());
  }

  private double within(double position) {
    double s = position - start;
    s -= outline.length() * Math.floor(s / outline.length());
    return s <= length ? s : -1;
  }
}
