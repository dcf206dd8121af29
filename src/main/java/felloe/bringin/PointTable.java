package felloe.bringin;

import felloe.geometry.CubicCurve;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads a table of measured points: a heading that names two columns, then a point a line.
 *
 * <ul>
 *   <li>{@code x, y}: mm to the right and up;
 *   <li>{@code radius, angle}: mm, and degrees counter-clockwise from the right;
 *   <li>{@code along, offset}: mm along a base line and square to it, as boatbuilders take them;
 *       one side of the part, whose other side is its image over the base line, which stands
 *       upright.
 * </ul>
 *
 * <p>An empty line ends a closed line and begins the next. A third column {@code corner} marks
 * sharp corners with an x; between them the points are joined by a fair curve: a cubic spline whose
 * tangents are those of the circles through three neighbours, so that points of a circle give a
 * circle.
 */
final class PointTable {

  private static final int MOST = 5_000;

  /** A sharper turn between neighbours is told, radians: a curve through it would be a guess. */
  private static final double SHARP = Math.toRadians(35);

  /** Between two points a curve leaves their chord by no more than this, radians. */
  private static final double WIDEST = 1.4;

  private PointTable() {}

  private enum Columns {
    XY,
    POLAR,
    OFFSETS
  }

  private record Measured(Point at, boolean corner) {}

  static Drawn read(byte[] bytes, Reading reading, Sizing sizing) {
    double scale = sizing.scale().orElse(1);
    String text = new String(bytes, StandardCharsets.UTF_8);
    String[] lines = (text.startsWith("\ufeff") ? text.substring(1) : text).split("\r\n|\r|\n", -1);
    int at = 0;
    while (at < lines.length && blank(lines[at])) {
      at++;
    }
    if (at == lines.length) {
      throw reading.refused(0, "", "", "is empty", "give a heading x,y and a point a line");
    }
    Columns columns = columns(lines[at], at + 1, reading);
    List<Measured> points = new ArrayList<>();
    int begun = at + 1;
    int count = 0;
    for (int i = at + 1; i <= lines.length; i++) {
      if (i == lines.length || lines[i].isBlank()) {
        loop(points, columns, begun, reading);
        points.clear();
        begun = i + 1;
      } else if (!blank(lines[i])) {
        if (++count > MOST) {
          throw reading.refused(
              i + 1, "", "", "is one point too many: at most " + MOST, "measure fewer");
        }
        point(lines[i], i + 1, columns, scale, reading, points);
      }
    }
    return reading.drawn();
  }

  /** Nothing to read: empty or a remark. */
  private static boolean blank(String line) {
    return line.isBlank() || line.strip().startsWith("#");
  }

  private static String[] cells(String line) {
    String separator = line.contains(";") ? ";" : line.contains("\t") ? "\t" : ",";
    String[] cells = line.split(separator, -1);
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells[i].strip();
    }
    return cells;
  }

  private static Columns columns(String heading, int line, Reading reading) {
    String[] cells = cells(heading.toLowerCase(Locale.ROOT));
    for (int i = 2; i < cells.length; i++) {
      if (i > 2 || !cells[i].equals("corner")) {
        throw reading.refused(
            line, "", cells[i], "is no column that is known", "leave it out, or call it corner");
      }
    }
    String two = cells.length < 2 ? "" : cells[0] + " " + cells[1];
    return switch (two) {
      case "x y" -> Columns.XY;
      case "radius angle" -> Columns.POLAR;
      case "along offset" -> Columns.OFFSETS;
      default ->
          throw reading.refused(
              line,
              "",
              heading,
              "must name the columns: x,y or radius,angle or along,offset",
              "write the heading in the first line");
    };
  }

  private static void point(
      String line,
      int number,
      Columns columns,
      double scale,
      Reading reading,
      List<Measured> points) {
    String[] cells = cells(line);
    double[] values = new double[2];
    for (int i = 0; i < 2; i++) {
      String cell = i < cells.length ? cells[i] : "";
      // A comma for the decimal point is plain where it does not part the columns.
      String plain = line.contains(";") || line.contains("\t") ? cell.replace(',', '.') : cell;
      try {
        values[i] = Double.parseDouble(plain);
        if (!Double.isFinite(values[i])) {
          throw new NumberFormatException();
        }
      } catch (NumberFormatException none) {
        reading.wrong(number, "", cell, "must be a number", "write 12.5");
        return;
      }
    }
    Point at =
        switch (columns) {
          case XY -> new Point(values[0], values[1]).times(scale);
          case POLAR -> Point.polar(values[0] * scale, Math.toRadians(values[1]));
          case OFFSETS -> new Point(values[1], values[0]).times(scale);
        };
    boolean corner = cells.length > 2 && cells[2].equalsIgnoreCase("x");
    points.add(new Measured(at, corner));
  }

  private static void loop(List<Measured> points, Columns columns, int line, Reading reading) {
    List<Measured> all = new ArrayList<>();
    for (Measured point : points) {
      // A point that is there twice, such as the first one again at the end.
      if (all.isEmpty() || !all.get(all.size() - 1).at().near(point.at(), BringIn.GAP)) {
        all.add(point);
      }
    }
    if (all.size() > 1 && all.get(0).at().near(all.get(all.size() - 1).at(), BringIn.GAP)) {
      all.remove(all.size() - 1);
    }
    if (columns == Columns.OFFSETS) {
      for (int i = all.size() - 1; i >= 0; i--) {
        Measured point = all.get(i);
        if (Math.abs(point.at().x()) > BringIn.GAP) {
          all.add(new Measured(new Point(-point.at().x(), point.at().y()), point.corner()));
        }
      }
    }
    if (all.size() > 1 && all.get(0).at().near(all.get(all.size() - 1).at(), BringIn.GAP)) {
      all.remove(all.size() - 1);
    }
    if (all.isEmpty()) {
      return;
    }
    if (all.size() < 3) {
      reading.wrong(line, "", "", "has fewer than three points, which bound nothing", "");
      return;
    }
    for (int i = 0; i < all.size(); i++) {
      Point p = all.get(i).at();
      Point in = p.minus(all.get((i + all.size() - 1) % all.size()).at());
      Point out = all.get((i + 1) % all.size()).at().minus(p);
      double turn = Math.abs(Math.atan2(in.cross(out), in.dot(out)));
      if (turn > SHARP && !all.get(i).corner()) {
        reading.note(
            "At "
                + p
                + " the line turns by "
                + Numbers.brief(Math.toDegrees(turn), 0)
                + " degrees: mark it as a corner, or take more points there.");
      }
    }
    reading.chain(line, fair(all), DrawnAs.NOTHING);
  }

  /** The fair curve through points. */
  private static List<Stroke> fair(List<Measured> points) {
    int n = points.size();
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Measured a = points.get(i);
      Measured b = points.get((i + 1) % n);
      Point chord = b.at().minus(a.at());
      if (a.corner() && b.corner()) {
        strokes.add(new Stroke.Exact(new Line(a.at(), b.at())));
        continue;
      }
      Point leaving = tangent(points, i, true);
      Point arriving = tangent(points, (i + 1) % n, false);
      double from = reach(leaving, chord);
      double to = reach(arriving, chord);
      strokes.add(
          Stroke.of(
              new CubicCurve(
                  a.at(), a.at().plus(leaving, from), b.at().plus(arriving, -to), b.at())));
    }
    return strokes;
  }

  /** The tangent of the circle through a point and its neighbours; at a corner, the chord's. */
  private static Point tangent(List<Measured> points, int i, boolean leaving) {
    int n = points.size();
    Point p = points.get(i).at();
    Point before = points.get((i + n - 1) % n).at();
    Point after = points.get((i + 1) % n).at();
    Point in = p.minus(before);
    Point out = after.minus(p);
    if (points.get(i).corner()) {
      // Beside a corner the curve ends as the circle through the next two points would.
      Point far = points.get(leaving ? (i + 2) % n : (i + n - 2) % n).at();
      Point near = leaving ? after : before;
      Point one = leaving ? out : in;
      Point two = leaving ? far.minus(near) : near.minus(far);
      double bend = Math.atan2(one.cross(two), one.dot(two));
      // Its tangent at the corner is half the first chord's turn away from that chord.
      return turned(one.unit(), -bend * one.norm() / (one.norm() + two.norm()));
    }
    // Of a circle: each chord's direction weighs by the other's length.
    double a = in.norm();
    double b = out.norm();
    double bend = Math.atan2(in.cross(out), in.dot(out));
    return turned(in.unit(), bend * a / (a + b));
  }

  private static Point turned(Point unit, double angle) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new Point(unit.x() * cos - unit.y() * sin, unit.x() * sin + unit.y() * cos);
  }

  private static double reach(Point tangent, Point chord) {
    double angle = Math.abs(Math.atan2(tangent.cross(chord), tangent.dot(chord)));
    // Four thirds of the tangent of a quarter turn, said by chord and half the angle.
    double half = Math.min(angle, WIDEST);
    return chord.norm() * 2 / (3 * (1 + Math.cos(half)));
  }
}
