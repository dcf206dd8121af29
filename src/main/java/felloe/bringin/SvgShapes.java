package felloe.bringin;

import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.FreeCurve;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import felloe.shape.PathFault;
import felloe.shape.PathReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The lines of an SVG drawing's basic shapes and paths (W3C SVG 2, chapters 9 and 10). */
final class SvgShapes {

  /** What draws lines. */
  static final Set<String> DRAWN =
      Set.of("path", "circle", "ellipse", "rect", "line", "polygon", "polyline");

  /** Coordinates in the drawing's own unit may be as large as this. */
  private static final double FAR = 1e9;

  private SvgShapes() {}

  /** Its chains, in the plane of a frame. */
  static List<List<Stroke>> of(SvgElement element, Affine frame) {
    return switch (element.name()) {
      case "path" -> path(element, frame);
      case "circle" -> {
        double r = element.number("r", 0);
        yield List.of(ellipse(element, frame, r, r));
      }
      case "ellipse" ->
          List.of(ellipse(element, frame, element.number("rx", 0), element.number("ry", 0)));
      case "rect" -> List.of(rectangle(element, frame));
      case "line" ->
          List.of(
              Stroke.line(
                  frame.of(new Point(element.number("x1", 0), element.number("y1", 0))),
                  frame.of(new Point(element.number("x2", 0), element.number("y2", 0)))));
      default -> List.of(polygon(element, frame, element.name().equals("polygon")));
    };
  }

  private static List<Stroke> ellipse(SvgElement element, Affine frame, double rx, double ry) {
    if (rx <= 0 || ry <= 0) {
      return List.of();
    }
    Point centre = new Point(element.number("cx", 0), element.number("cy", 0));
    EllipticalArc arc = EllipticalArc.about(centre, rx, ry, 0, 0, 2 * Math.PI);
    return List.of(Stroke.of(frame.of(arc)));
  }

  /** W3C SVG 2, 10.2: a missing radius is as the other one, and none is more than half a side. */
  private static List<Stroke> rectangle(SvgElement element, Affine frame) {
    double w = element.number("width", 0);
    double h = element.number("height", 0);
    if (w <= 0 || h <= 0) {
      return List.of();
    }
    double givenX = element.number("rx", -1);
    double givenY = element.number("ry", -1);
    double rx = Math.min(w / 2, Math.max(0, givenX >= 0 ? givenX : givenY));
    double ry = Math.min(h / 2, Math.max(0, givenY >= 0 ? givenY : givenX));
    double x = element.number("x", 0);
    double y = element.number("y", 0);
    boolean sharp = rx == 0 || ry == 0;
    double cx = sharp ? 0 : rx;
    double cy = sharp ? 0 : ry;
    double[][] corners = {
      {x + w - cx, y + cy, -Math.PI / 2},
      {x + w - cx, y + h - cy, 0},
      {x + cx, y + h - cy, Math.PI / 2},
      {x + cx, y + cy, Math.PI}
    };
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      Point centre = new Point(corners[i][0], corners[i][1]);
      double[] next = corners[(i + 1) % 4];
      Point end = centre;
      if (!sharp) {
        EllipticalArc arc = EllipticalArc.about(centre, rx, ry, 0, corners[i][2], Math.PI / 2);
        strokes.add(Stroke.of(frame.of(arc)));
        end = arc.to();
      }
      Point start = new Point(next[0], next[1]);
      if (!sharp) {
        start = EllipticalArc.about(start, rx, ry, 0, next[2], Math.PI / 2).from();
      }
      strokes.addAll(Stroke.line(frame.of(end), frame.of(start)));
    }
    return strokes;
  }

  private static List<Stroke> polygon(SvgElement element, Affine frame, boolean closed) {
    List<Double> all = element.numbers("points");
    if (all.size() % 2 != 0) {
      String name = element.name() + ".points";
      element.reading().wrong(element.line(), name, "", "must be pairs of numbers", "");
    }
    List<Stroke> strokes = new ArrayList<>();
    Point first = null;
    Point pen = null;
    for (int i = 0; i + 1 < all.size(); i += 2) {
      Point next = frame.of(new Point(all.get(i), all.get(i + 1)));
      if (pen == null) {
        first = next;
      } else {
        strokes.addAll(Stroke.line(pen, next));
      }
      pen = next;
    }
    if (closed && pen != null) {
      strokes.addAll(Stroke.line(pen, first));
    }
    return strokes;
  }

  private static List<List<Stroke>> path(SvgElement element, Affine frame) {
    List<List<Stroke>> chains = new ArrayList<>();
    PathReader path = new PathReader(element.text("d"), FAR, Limits.STROKES);
    List<PathReader.Subpath> subpaths = path.read();
    for (PathFault fault : path.faults()) {
      element.reading().wrong(element.line(), "path", fault.read(), fault.wanted(), fault.cure());
    }
    for (PathReader.Subpath subpath : subpaths) {
      List<Stroke> strokes = new ArrayList<>();
      Point pen = subpath.start();
      for (PathReader.Step step : subpath.steps()) {
        if (step.curve().isPresent()) {
          strokes.add(moved(frame, step.curve().get()));
        } else {
          strokes.addAll(Stroke.line(frame.of(pen), frame.of(step.to())));
        }
        pen = step.to();
      }
      if (subpath.closed()) {
        strokes.addAll(Stroke.line(frame.of(pen), frame.of(subpath.start())));
      }
      chains.add(strokes);
    }
    return chains;
  }

  private static Stroke moved(Affine frame, FreeCurve curve) {
    if (curve instanceof CubicCurve cubic) {
      return Stroke.of(frame.of(cubic));
    }
    return curve instanceof QuadraticCurve quadratic
        ? Stroke.of(frame.of(quadratic))
        : Stroke.of(frame.of((EllipticalArc) curve));
  }
}
