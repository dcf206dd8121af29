package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.out.SvgPath;
import felloe.plate.Body;
import felloe.plate.BoltCircle;
import felloe.plate.Engraving;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sketch;
import felloe.plate.Verdict;
import felloe.plate.Window;
import felloe.report.BesideDrawing.Open;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The plate as it is looked at while it is changed: true proportions, ISO line types, its main
 * dimensions, findings where they are, and what can be taken hold of. Lines have their widths from
 * the page, so that they are as thin on a telephone as on a large screen. One unit is 1 mm, y down.
 */
final class Face {

  /** The size of plate for which lettering is {@link #TEXT} mm high. */
  private static final double USUAL = 280;

  private static final double TEXT = 8;
  private static final double MARGIN = 30;
  private static final double AXIS_BEYOND = 7;
  private static final double CROSS_BEYOND = 1.8;
  private static final double ARROW = 6;
  private static final double SLIM = 0.18;
  private static final double BALLOON = 6.5;
  private static final double OFF = 18;
  private static final int PLACES = 3;

  private final StringBuilder svg = new StringBuilder(1 << 14);
  private final double unit;
  private final Box box;

  private Face(Contour outline) {
    this.box = outline.box();
    this.unit = Math.max(box.width(), box.height()) / USUAL;
  }

  /**
   * The drawing of a plate.
   *
   * @param open findings to mark, numbered as they stand
   * @param ways from the place of a list's item in the file to the way to it
   * @param other what is laid over it
   */
  static String of(
      Plate plate,
      List<Open> open,
      List<Handle> handles,
      Map<Place, String> ways,
      Optional<Plate> other) {
    Face face = new Face(plate.outline());
    face.begin(plate.title() + ", seen by the driver");
    face.path("material", SvgPath.of(plate.region().contours()));
    other.ifPresent(o -> face.svg.append(Against.drawn(plate, o)));
    face.edges(plate.outline(), plate.windows(), plate.holes(), ways);
    for (Engraving one : plate.engravings()) {
      String kind = one.face() == felloe.plate.Face.FRONT ? "thin" : "hidden";
      one.strokes().forEach(s -> face.path(kind, SvgPath.of(s, false)));
    }
    for (Body body : plate.bodies()) {
      String kind = body.face() == felloe.plate.Face.FRONT ? "thin" : "hidden";
      face.path(kind, SvgPath.of(List.of(body.bezel())));
    }
    for (BoltCircle ring : plate.boltCircles()) {
      face.path(
          "axis", SvgPath.of(List.of(Contour.circle(Point.ORIGIN, ring.pitchDiameter() / 2))));
    }
    face.axes();
    face.dimensions();
    face.handles(handles);
    face.findings(open);
    return face.end();
  }

  /** The drawing of what is no plate, each clash marked. */
  static String of(Sketch sketch, List<Handle> handles, Map<Place, String> ways) {
    Face face = new Face(sketch.outline());
    face.begin(sketch.title() + ", which is no plate as it is");
    face.path("material", SvgPath.of(List.of(sketch.outline())));
    face.edges(sketch.outline(), sketch.windows(), sketch.holes(), ways);
    face.axes();
    face.dimensions();
    face.handles(handles);
    List<Mark> marks = new ArrayList<>();
    for (Sketch.Clash clash : sketch.clashes()) {
      marks.add(new Mark(true, clash.at(), clash.problem().line()));
    }
    face.marks(marks);
    return face.end();
  }

  private void begin(String title) {
    Box page = box.union(Box.of(Point.ORIGIN, Point.ORIGIN)).grown(MARGIN * unit);
    svg.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plate\" role=\"group\" viewBox=\"");
    svg.append(n(page.minX())).append(' ').append(n(-page.maxY())).append(' ');
    svg.append(n(page.width())).append(' ').append(n(page.height())).append("\" aria-label=\"");
    svg.append(escaped(title)).append("\" data-unit=\"").append(n(unit)).append("\">\n");
  }

  private String end() {
    return svg.append("</svg>\n").toString();
  }

  private void path(String kind, String data) {
    path(kind, data, "", "");
  }

  private void path(String kind, String data, String way, String title) {
    svg.append("<path class=\"").append(kind).append('"');
    if (!way.isEmpty()) {
      svg.append(" data-path=\"").append(escaped(way)).append('"');
    }
    svg.append(" d=\"").append(data);
    if (title.isEmpty()) {
      svg.append("\"/>\n");
    } else {
      svg.append("\"><title>").append(escaped(title)).append("</title></path>\n");
    }
  }

  private void edges(
      Contour outline, List<Window> windows, List<Hole> holes, Map<Place, String> ways) {
    path("edge", SvgPath.of(List.of(outline)), "outline", "");
    for (Window one : windows) {
      path(
          "edge inner",
          SvgPath.of(List.of(one.contour())),
          ways.getOrDefault(one.place(), ""),
          one.label());
    }
    for (Hole one : holes) {
      String title = one.label() + ", " + one.size();
      path(
          "edge inner",
          SvgPath.of(List.of(one.contour())),
          ways.getOrDefault(one.place(), ""),
          title);
      cross(one.centre(), one.diameter() / 2 + CROSS_BEYOND * unit);
    }
  }

  private void cross(Point at, double reach) {
    line("thin", at.x() - reach, at.y(), at.x() + reach, at.y());
    line("thin", at.x(), at.y() - reach, at.x(), at.y() + reach);
  }

  private void line(String kind, double x1, double y1, double x2, double y2) {
    svg.append("<path class=\"").append(kind).append("\" d=\"M").append(n(x1)).append(' ');
    svg.append(n(-y1)).append('L').append(n(x2)).append(' ').append(n(-y2)).append("\"/>\n");
  }

  private void axes() {
    double beyond = AXIS_BEYOND * unit;
    Box all = box.union(Box.of(Point.ORIGIN, Point.ORIGIN)).grown(beyond);
    line("axis", all.minX(), 0, all.maxX(), 0);
    line("axis", 0, all.minY(), 0, all.maxY());
  }

  /**
   * Width below, height on the right (ISO 129-1: figures above their line, read from the right).
   */
  private void dimensions() {
    double y = box.minY() - OFF * unit;
    double gap = 2 * unit;
    line("thin", box.minX(), box.centre().y(), box.minX(), y - gap);
    line("thin", box.maxX(), box.centre().y(), box.maxX(), y - gap);
    line("thin", box.minX(), y, box.maxX(), y);
    arrow(box.minX(), y, 1, 0);
    arrow(box.maxX(), y, -1, 0);
    text(Numbers.brief(box.width(), 2), box.centre().x(), y + gap, false);
    double x = box.maxX() + OFF * unit;
    line("thin", box.centre().x(), box.maxY(), x + gap, box.maxY());
    line("thin", box.centre().x(), box.minY(), x + gap, box.minY());
    line("thin", x, box.minY(), x, box.maxY());
    arrow(x, box.minY(), 0, 1);
    arrow(x, box.maxY(), 0, -1);
    text(Numbers.brief(box.height(), 2), x - gap, box.centre().y(), true);
  }

  private void arrow(double x, double y, int dx, int dy) {
    double length = ARROW * unit;
    double half = length * SLIM;
    double bx = x + dx * length;
    double by = y + dy * length;
    svg.append("<path class=\"arrow\" d=\"M").append(n(x)).append(' ').append(n(-y)).append('L');
    svg.append(n(bx - dy * half)).append(' ').append(n(-(by + dx * half))).append('L');
    svg.append(n(bx + dy * half)).append(' ').append(n(-(by - dx * half))).append("Z\"/>\n");
  }

  private void text(String words, double x, double y, boolean upright) {
    svg.append("<text class=\"size\" x=\"").append(n(x)).append("\" y=\"").append(n(-y));
    svg.append("\" font-size=\"").append(n(TEXT * unit)).append("\" text-anchor=\"middle\"");
    if (upright) {
      svg.append(" transform=\"rotate(-90 ").append(n(x)).append(' ').append(n(-y)).append(")\"");
    }
    svg.append('>').append(escaped(words)).append("</text>\n");
  }

  private void handles(List<Handle> handles) {
    for (Handle one : handles) {
      svg.append("<g class=\"handle ").append(one.kind().name().toLowerCase(Locale.ROOT));
      svg.append("\" tabindex=\"0\" role=\"button\" data-handle=\"").append(escaped(one.path()));
      svg.append("\" data-x=\"").append(n(one.at().x())).append("\" data-y=\"");
      svg.append(n(one.at().y())).append("\" aria-label=\"").append(escaped(one.path()));
      svg.append(": drag it, or move it with the arrow keys\"><circle class=\"grab\" cx=\"");
      svg.append(n(one.at().x())).append("\" cy=\"").append(n(-one.at().y())).append("\" r=\"");
      svg.append(n(9 * unit)).append("\"/><circle class=\"knob\" cx=\"").append(n(one.at().x()));
      double knob = one.kind() == Handle.Kind.RISE ? 1.8 : 3;
      svg.append("\" cy=\"").append(n(-one.at().y())).append("\" r=\"").append(n(knob * unit));
      svg.append("\"/></g>\n");
    }
  }

  /**
   * What is marked.
   *
   * @param fail whether it fails; else it is a caution
   */
  private record Mark(boolean fail, Point at, String words) {}

  private void findings(List<Open> open) {
    List<Mark> marks = new ArrayList<>();
    for (Open one : open) {
      boolean fail = one.finding().verdict() == Verdict.FAIL;
      marks.add(new Mark(fail, one.finding().at().orElse(null), one.head()));
    }
    marks(marks);
  }

  private void marks(List<Mark> marks) {
    List<Point> taken = new ArrayList<>();
    double apart = 2 * BALLOON * unit;
    for (int i = 0; i < marks.size(); i++) {
      Mark mark = marks.get(i);
      if (mark.at() == null) {
        continue;
      }
      Point at = mark.at().plus(new Point(OFF * 0.5 * unit, OFF * 0.5 * unit));
      for (int turn = 0; turn < 24 && near(taken, at, apart); turn++) {
        double reach = (OFF * 0.7 + (turn / 8) * 2 * BALLOON) * unit;
        at = mark.at().plus(Point.polar(reach, turn * Math.PI / 4));
      }
      taken.add(at);
      balloon(i, mark, at);
    }
  }

  private static boolean near(List<Point> taken, Point at, double apart) {
    return taken.stream().anyMatch(one -> one.distance(at) < apart);
  }

  /** A square for a fail and a triangle for a caution: never told by colour alone. */
  private void balloon(int index, Mark mark, Point at) {
    double r = BALLOON * unit;
    svg.append("<g class=\"finding ").append(mark.fail() ? "fail" : "caution");
    svg.append("\" data-finding=\"").append(Integer.toString(index)).append("\"><title>");
    svg.append(escaped(mark.words())).append("</title>");
    line("leader", mark.at().x(), mark.at().y(), at.x(), at.y());
    svg.append("<circle class=\"spot\" cx=\"").append(n(mark.at().x())).append("\" cy=\"");
    svg.append(n(-mark.at().y())).append("\" r=\"").append(n(1.2 * unit)).append("\"/>");
    double x = at.x();
    double y = -at.y();
    String shape =
        mark.fail()
            ? "M" + n(x - r) + ' ' + n(y - r) + 'h' + n(2 * r) + 'v' + n(2 * r) + 'h' + n(-2 * r)
                + 'Z'
            : "M"
                + n(x)
                + ' '
                + n(y - 1.3 * r)
                + 'L'
                + n(x + 1.25 * r)
                + ' '
                + n(y + 0.9 * r)
                + 'H'
                + n(x - 1.25 * r)
                + 'Z';
    svg.append("<path class=\"balloon\" d=\"").append(shape).append("\"/><text x=\"").append(n(x));
    svg.append("\" y=\"").append(n(y + 0.55 * r)).append("\" font-size=\"").append(n(1.25 * r));
    svg.append("\" text-anchor=\"middle\">").append(Integer.toString(index + 1));
    svg.append("</text></g>\n");
  }

  private static String n(double value) {
    return Numbers.brief(value, PLACES);
  }
}
