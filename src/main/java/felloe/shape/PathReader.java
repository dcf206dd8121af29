package felloe.shape;

import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.FreeCurve;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Path data as subpaths, in its own frame (y down). Commands and their repeats after W3C SVG 2,
 * section 9.3; arcs with missing or negative radii after section 9.5.1.
 */
public final class PathReader {

  /** More drawing steps than this are refused. */
  static final int MOST_STEPS = 3_000;

  /**
   * One step of the pen.
   *
   * @param offset of its command letter or, in a repeat, of its first number
   * @param curve what it draws; none for a straight line
   * @param to where it ends
   */
  public record Step(int offset, Optional<FreeCurve> curve, Point to) {}

  /**
   * A chain of steps from a starting point.
   *
   * @param offset of its first command
   * @param closed whether it ends with a Z
   */
  public record Subpath(int offset, Point start, List<Step> steps, boolean closed) {}

  private final PathScanner scan;
  private final List<Subpath> subpaths = new ArrayList<>();
  private List<Step> steps = new ArrayList<>();
  private final double largest;
  private final int most;
  private int count;
  private Point start = Point.ORIGIN;
  private Point pen = Point.ORIGIN;
  private Point control;
  private char previous = ' ';
  private int offset;

  /** Takes the data of one path in millimetres, of the usual length. */
  public PathReader(String data) {
    this(data, Tolerances.LARGEST, MOST_STEPS);
  }

  /**
   * Takes the data of one path.
   *
   * @param largest the largest coordinate, in the data's own unit
   * @param most the most steps
   */
  public PathReader(String data, double largest, int most) {
    this.scan = new PathScanner(data, largest);
    this.largest = largest;
    this.most = most;
  }

  /** What was wrong, after {@link #read}. */
  public List<PathFault> faults() {
    return scan.faults();
  }

  /** Its chains, in order; where something is wrong, what could be read. */
  public List<Subpath> read() {
    boolean first = true;
    while (!scan.atEnd() && !scan.full()) {
      offset = scan.offset();
      try {
        char command = scan.command();
        if (first && command != 'M' && command != 'm') {
          scan.fault(offset, "" + command, "comes before any M", "start the path with M x y");
        }
        first = false;
        one(command);
      } catch (PathScanner.Spoilt spoilt) {
        if (count > most) {
          break;
        }
        scan.skip();
      }
    }
    finish(false);
    return subpaths;
  }

  private void finish(boolean closed) {
    if (!steps.isEmpty()) {
      subpaths.add(new Subpath(steps.get(0).offset, start, steps, closed));
      steps = new ArrayList<>();
    }
  }

  private void one(char command) throws PathScanner.Spoilt {
    if (command == 'Z' || command == 'z') {
      finish(true);
      pen = start;
      previous = 'Z';
      return;
    }
    char letter = Character.toUpperCase(command);
    boolean relative = letter != command;
    do {
      Point base = relative ? pen : Point.ORIGIN;
      step(letter, base);
      previous = letter;
      letter = letter == 'M' ? 'L' : letter;
      int here = scan.offset();
      if (!scan.more()) {
        break;
      }
      offset = Math.max(here, scan.offset());
    } while (true);
  }

  private void step(char letter, Point base) throws PathScanner.Spoilt {
    switch (letter) {
      case 'M' -> {
        Point to = point(base, true);
        finish(false);
        pen = to;
        start = to;
      }
      case 'L' -> draw(Optional.empty(), point(base, true));
      case 'H' -> draw(Optional.empty(), checked(base.x() + scan.number("x", true), pen.y()));
      case 'V' -> draw(Optional.empty(), checked(pen.x(), base.y() + scan.number("y", true)));
      case 'C' -> cubic(point(base, false), base);
      case 'S' -> cubic(reflected('C', 'S'), base);
      case 'Q' -> quadratic(point(base, false), base);
      case 'T' -> quadratic(reflected('Q', 'T'), base);
      default -> arc(base);
    }
  }

  private Point point(Point base, boolean last) throws PathScanner.Spoilt {
    double x = scan.number("x", false);
    double y = scan.number("y", last);
    return checked(base.x() + x, base.y() + y);
  }

  private Point checked(double x, double y) throws PathScanner.Spoilt {
    if (Math.max(Math.abs(x), Math.abs(y)) > largest) {
      throw scan.fault(
          offset,
          new Point(x, y).toString(),
          "lies beyond " + Numbers.brief(largest, 0) + " mm",
          "give the path in mm");
    }
    return new Point(x, y);
  }

  private Point reflected(char one, char other) {
    return previous == one || previous == other ? pen.plus(pen.minus(control)) : pen;
  }

  private void cubic(Point first, Point base) throws PathScanner.Spoilt {
    Point second = point(base, false);
    Point to = point(base, true);
    control = second;
    draw(Optional.of(new CubicCurve(pen, first, second, to)), to);
  }

  private void quadratic(Point middle, Point base) throws PathScanner.Spoilt {
    Point to = point(base, true);
    control = middle;
    draw(Optional.of(new QuadraticCurve(pen, middle, to)), to);
  }

  private void arc(Point base) throws PathScanner.Spoilt {
    double rx = Math.abs(scan.number("a radius rx", false));
    double ry = Math.abs(scan.number("a radius ry", false));
    double turn = Math.toRadians(scan.number("the turn of the x axis", false));
    boolean large = scan.flag("the large-arc flag");
    boolean growing = scan.flag("the sweep flag");
    Point to = point(base, true);
    if (to.equals(pen)) {
      return;
    }
    draw(
        rx == 0 || ry == 0
            ? Optional.empty()
            : Optional.of(EllipticalArc.through(pen, to, rx, ry, turn, large, growing)),
        to);
  }

  private void draw(Optional<FreeCurve> curve, Point to) throws PathScanner.Spoilt {
    if (++count > most) {
      throw scan.fault(
          offset, "", "is one step too many: a path may have " + most, "simplify the path");
    }
    steps.add(new Step(offset, curve, to));
    pen = to;
  }
}
