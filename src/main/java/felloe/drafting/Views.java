package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.ScaledPicture;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.BoltCircle;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The views of a plate on a sheet: the front as the driver sees it, and its edge in first-angle
 * projection, seen from above and drawn below the front view, or seen from the left and drawn to
 * its right.
 *
 * @param plate what is drawn
 * @param front where the plate's points go in the front view
 * @param front box of the front view, mm on the sheet
 * @param edge box of the edge view, mm on the sheet
 * @param below whether the edge view lies below the front view
 */
record Views(Plate plate, ScaledPicture scaled, Box front, Box edge, boolean below) {

  /** From the outline to the dimension line, mm: common practice in drawing is 8 to 10. */
  static final double FIRST = 9;

  /** White along the frame, mm. */
  static final double MARGIN = 1;

  /** An axis runs so far beyond the outline, mm. */
  private static final double AXIS = 4;

  /** A cross runs so far beyond its hole, mm. */
  private static final double CROSS = 1.6;

  /** Room between the front view's dimensions and the edge view, mm. */
  private static final double APART = 6;

  /** Room beyond the edge view for the thickness, mm. */
  private static final double BEYOND_EDGE = 12;

  /** Share of the spare height that lies above the front view: notes stand there. */
  private static final double ABOVE = 0.6;

  /** An edge of the edge view stands where the outline turns by more than this, radians. */
  private static final double SHARP = 0.1;

  /** So far from a corner the look-out starts, mm of the plate. */
  private static final double OFF = 1e-3;

  /**
   * The views at a scale, if they and their main dimensions have room on the sheet.
   *
   * @param below whether the edge view lies below the front view
   * @param tight whether the height has to find its place over the front view
   */
  static Optional<Views> fit(
      Plate plate, double width, double height, Scale scale, boolean below, boolean tight) {
    double factor = scale.factor();
    Box part = plate.box();
    Box all = part.union(Box.of(Point.ORIGIN, Point.ORIGIN));
    double thick = plate.stock().thickness() * factor;
    double side = AXIS + DimensionStyle.OVER + 2;
    double left =
        MARGIN
            + (tight || isRound(plate.outline())
                ? side
                : FIRST + DimensionStyle.TEXT + side - AXIS);
    double right = MARGIN + (below ? side : side + APART + thick + BEYOND_EDGE);
    double bottom =
        MARGIN + FIRST + DimensionStyle.BEYOND + (below ? APART + thick + BEYOND_EDGE : 0);
    double top = MARGIN + side;
    double spareX = width - left - right - all.width() * factor;
    double spareY = height - bottom - top - all.height() * factor;
    if (spareX < 0 || spareY < 0) {
      return Optional.empty();
    }
    Point shift =
        new Point(
            left + spareX / 2 - all.minX() * factor,
            bottom + (1 - ABOVE) * spareY - all.minY() * factor);
    ScaledPicture scaled = new ScaledPicture(factor, shift);
    Box front = Box.of(corner(scaled, part, 0), corner(scaled, part, 1));
    Box edge =
        below
            ? belowBox(front, front.minY() - FIRST - DimensionStyle.BEYOND - APART, thick)
            : besideBox(front, scaled.point(new Point(all.maxX(), 0)).x() + side + APART, thick);
    return Optional.of(new Views(plate, scaled, front, edge, below));
  }

  private static Point corner(ScaledPicture scaled, Box box, int which) {
    return scaled.point(
        which == 0 ? new Point(box.minX(), box.minY()) : new Point(box.maxX(), box.maxY()));
  }

  private static Box belowBox(Box front, double top, double thick) {
    return new Box(front.minX(), top - thick, front.maxX(), top);
  }

  private static Box besideBox(Box front, double left, double thick) {
    return new Box(left, front.minY(), left + thick, front.maxY());
  }

  static boolean isRound(Contour contour) {
    return contour.asCircle().isPresent();
  }

  double factor() {
    return scaled.scale();
  }

  /** The spokes of the plate. */
  List<Spoke> spokes() {
    return Spoke.of(plate);
  }

  /** The hub axis. */
  Point origin() {
    return scaled.point(Point.ORIGIN);
  }

  /** The box that the axes run beyond. */
  private Box axes() {
    return front.union(Box.of(origin(), origin())).grown(AXIS);
  }

  /** The level axis of the front view. */
  Line level() {
    return new Line(new Point(axes().minX(), origin().y()), new Point(axes().maxX(), origin().y()));
  }

  /** The upright axis of the front view. */
  Line upright() {
    return new Line(new Point(origin().x(), axes().minY()), new Point(origin().x(), axes().maxY()));
  }

  /** Names of layers, each with its lines in order. */
  Map<String, List<Piece.Stroke>> lines() {
    Map<String, List<Piece.Stroke>> layers = new LinkedHashMap<>();
    layers.put("outline", edges(List.of(plate.outline()), Ink.EDGE));
    layers.put("windows", edges(plate.windows().stream().map(Window::contour).toList(), Ink.EDGE));
    layers.put("holes", edges(plate.holes().stream().map(Hole::contour).toList(), Ink.HOLE));
    layers.put("engravings", engravings());
    layers.put("centre-lines", centreLines());
    layers.put("edge-view", edgeView());
    return layers;
  }

  private List<Piece.Stroke> edges(List<Contour> contours, Ink ink) {
    return contours.stream()
        .flatMap(contour -> contour.segments().stream())
        .map(segment -> new Piece.Stroke(scaled.segment(segment), ink))
        .toList();
  }

  private List<Piece.Stroke> engravings() {
    List<Piece.Stroke> strokes = new ArrayList<>();
    for (Engraving engraving : plate.engravings()) {
      Ink ink = engraving.face() == Face.FRONT ? Ink.ENGRAVED : Ink.HIDDEN;
      engraving.strokes().stream()
          .flatMap(List::stream)
          .forEach(s -> strokes.add(new Piece.Stroke(scaled.segment(s), ink)));
    }
    return strokes;
  }

  private List<Piece.Stroke> centreLines() {
    List<Piece.Stroke> strokes = new ArrayList<>();
    strokes.add(new Piece.Stroke(level(), Ink.AXIS));
    strokes.add(new Piece.Stroke(upright(), Ink.AXIS));
    for (BoltCircle ring : plate.boltCircles()) {
      Segment circle = Arc.circle(Point.ORIGIN, ring.pitchDiameter() / 2);
      strokes.add(new Piece.Stroke(scaled.segment(circle), Ink.AXIS));
    }
    for (Spoke spoke : spokes()) {
      if (!spoke.isOnAxis()) {
        Point along = spoke.direction().times(2 / factor());
        Point from = spoke.direction().times(spoke.atHub()).minus(along);
        Point to = spoke.direction().times(spoke.atRim()).plus(along);
        strokes.add(new Piece.Stroke(scaled.segment(new Line(from, to)), Ink.AXIS));
      }
    }
    for (Hole hole : plate.holes()) {
      double direction = hole.slot().map(Hole.Slot::direction).orElse(0.0);
      cross(strokes, hole.ends(), direction, hole.diameter() / 2);
    }
    for (Window window : plate.windows()) {
      window.asHole().ifPresent(hole -> cross(strokes, hole.ends(), 0, hole.diameter() / 2));
    }
    return strokes;
  }

  /** A line along a hole and one across at each end; none where the axes are its cross. */
  private void cross(List<Piece.Stroke> strokes, List<Point> ends, double way, double radius) {
    double reach = factor() * radius + CROSS;
    Point first = scaled.point(ends.get(0));
    Point last = scaled.point(ends.get(ends.size() - 1));
    if (ends.size() == 1 && first.distance(origin()) < CROSS) {
      return;
    }
    Point along = Point.polar(reach, way);
    strokes.add(new Piece.Stroke(new Line(first.minus(along), last.plus(along)), Ink.CROSS));
    for (Point end : ends) {
      Point p = scaled.point(end);
      strokes.add(
          new Piece.Stroke(new Line(p.minus(along.left()), p.plus(along.left())), Ink.CROSS));
    }
  }

  private List<Piece.Stroke> edgeView() {
    List<Piece.Stroke> strokes = new ArrayList<>();
    Contour.rectangle(edge)
        .segments()
        .forEach(side -> strokes.add(new Piece.Stroke(side, Ink.EDGE)));
    Point from = new Point(edge.minX(), edge.minY());
    for (Point corner : corners()) {
      Point p = scaled.point(corner);
      strokes.add(
          new Piece.Stroke(
              below
                  ? new Line(new Point(p.x(), from.y()), new Point(p.x(), edge.maxY()))
                  : new Line(new Point(from.x(), p.y()), new Point(edge.maxX(), p.y())),
              Ink.EDGE));
    }
    Box axis = edge.grown(CROSS + 1);
    Line line =
        below
            ? new Line(new Point(origin().x(), axis.minY()), new Point(origin().x(), axis.maxY()))
            : new Line(new Point(axis.minX(), origin().y()), new Point(axis.maxX(), origin().y()));
    if (axis.contains(line.box())) {
      strokes.add(new Piece.Stroke(line, Ink.AXIS));
    }
    return strokes;
  }

  /** Sharp corners of the outline that the edge view sees, but those at its ends. */
  private List<Point> corners() {
    List<Point> seen = new ArrayList<>();
    List<Segment> chain = plate.outline().segments();
    Point to = below ? new Point(0, 1) : new Point(-1, 0);
    Box box = plate.box();
    double far = box.width() + box.height();
    for (int i = 0; i < chain.size(); i++) {
      Segment next = chain.get((i + 1) % chain.size());
      Point corner = next.from();
      double turn = Math.abs(chain.get(i).tangent(1).cross(next.tangent(0)));
      Line sight = new Line(corner.plus(to, OFF), corner.plus(to, far));
      boolean atEnd =
          below
              ? isEnd(corner.x(), box.minX(), box.maxX())
              : isEnd(corner.y(), box.minY(), box.maxY());
      if (turn > SHARP
          && !atEnd
          && chain.stream().noneMatch(s -> Gap.between(sight, s).distance() == 0)) {
        seen.add(corner);
      }
    }
    return seen;
  }

  private static boolean isEnd(double at, double from, double to) {
    return at < from + OFF || at > to - OFF;
  }
}
