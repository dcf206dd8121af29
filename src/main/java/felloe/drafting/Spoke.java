package felloe.drafting;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A spoke between two windows: its sides are straight and mirror images about a line through the
 * hub axis, and run from a circle about the hub axis to the rim.
 *
 * @param direction of its middle line, a vector of length one
 * @param left its side to the left of that line, outward
 * @param right its side to the right of that line, outward
 * @param atHub where, along the middle line, its width at the hub disc is measured, mm: where its
 *     sides, prolonged, meet the disc's circle
 * @param atRim where its width at the rim is measured, mm: where the middle line meets the rim
 */
record Spoke(Point direction, Side left, Side right, double atHub, double atRim) {

  private static final int SAMPLES = 8;

  /**
   * A side of a spoke.
   *
   * @param window whose line it is
   * @param index of the line in the window's form
   * @param line outward
   */
  record Side(Window window, int index, Line line) {}

  /** Half the width so far out along the middle line, mm. */
  double half(double out) {
    Line line = left.line;
    double from = line.from().dot(direction);
    double to = line.to().dot(direction);
    double a = direction.cross(line.from());
    double b = direction.cross(line.to());
    return a + (b - a) * (out - from) / (to - from);
  }

  /** The point of a side, prolonged, so far out along the middle line. */
  Point corner(double out, boolean onLeft) {
    return direction.times(out).plus(direction.left(), onLeft ? half(out) : -half(out));
  }

  /** Whether its sides run alongside each other: one width tells it. */
  boolean isParallel() {
    return Math.abs(half(atHub) - half(atRim)) < Tolerances.SAME_LENGTH;
  }

  /** Whether its middle line lies on an axis, as far as figures tell. */
  boolean isOnAxis() {
    return Angular.aside(direction).equals("0");
  }

  /** The spokes of a plate, in the order of its windows. */
  static List<Spoke> of(Plate plate) {
    Map<Window, Form> forms = new LinkedHashMap<>();
    List<Side> sides = new ArrayList<>();
    for (Window window : plate.windows()) {
      Form form = Form.of(window.contour());
      if (form.has(Form.Kind.HUB) && !form.has(Form.Kind.FREE)) {
        forms.put(window, form);
        for (int i = 0; i < form.chain().size(); i++) {
          if (form.chain().get(i) instanceof Line line) {
            sides.add(new Side(window, i, outward(line)));
          }
        }
      }
    }
    Region material = plate.region();
    List<Spoke> spokes = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      for (int j = i + 1; j < sides.size(); j++) {
        Side a = sides.get(i);
        Side b = sides.get(j);
        Optional<Point> middle = mirrored(a.line, b.line);
        middle
            .flatMap(way -> spoke(way, a, b, forms))
            .filter(spoke -> spoke.isWithin(material))
            .ifPresent(spokes::add);
      }
    }
    return spokes;
  }

  /** Whether it is material from the hub disc to the rim, as far as some points of it tell. */
  private boolean isWithin(Region material) {
    for (int i = 1; i < SAMPLES; i++) {
      double out = atHub + i * (atRim - atHub) / SAMPLES;
      for (double side : new double[] {-0.9, 0, 0.9}) {
        Point p = direction.times(out).plus(direction.left(), side * half(out));
        if (!material.contains(p)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Line outward(Line line) {
    return line.from().norm() <= line.to().norm() ? line : line.reversed();
  }

  /** The line through the hub axis about which two lines are mirror images. */
  private static Optional<Point> mirrored(Line a, Line b) {
    Point inner = a.from().plus(b.from());
    Point outer = a.to().plus(b.to());
    boolean alike =
        Math.abs(a.from().norm() - b.from().norm()) < Tolerances.SAME_POINT
            && Math.abs(a.to().norm() - b.to().norm()) < Tolerances.SAME_POINT
            && inner.norm() > Tolerances.SAME_POINT
            && outer.norm() > Tolerances.SAME_POINT;
    if (!alike) {
      return Optional.empty();
    }
    Point way = outer.unit();
    boolean one = Math.abs(inner.cross(way)) < 2 * Tolerances.SAME_POINT && inner.dot(way) > 0;
    return one ? Optional.of(way) : Optional.empty();
  }

  private static Optional<Spoke> spoke(Point way, Side a, Side b, Map<Window, Form> forms) {
    boolean first = way.cross(a.line.from()) > 0;
    Spoke rough = new Spoke(way, first ? a : b, first ? b : a, 0, 0);
    Side side = rough.left;
    Form form = forms.get(side.window);
    boolean forward = form.chain().get(side.index).from().equals(side.line.from());
    Segment disc = form.beside(side.index, !forward);
    Segment rim = form.beside(side.index, forward);
    if (!isHub(disc)) {
      return Optional.empty();
    }
    double atHub = rough.meets(((Arc) disc).radius());
    double atRim;
    if (isHub(rim)) {
      atRim = ((Arc) rim).radius();
    } else if (rim instanceof Line line
        && Math.abs(line.direction().dot(way)) < Tolerances.SAME_POINT) {
      atRim = line.from().dot(way);
    } else {
      return Optional.empty();
    }
    return atHub > 0 && atRim > atHub
        ? Optional.of(new Spoke(way, rough.left, rough.right, atHub, atRim))
        : Optional.empty();
  }

  private static boolean isHub(Segment segment) {
    return segment instanceof Arc arc && arc.centre().norm() < Tolerances.SAME_POINT;
  }

  /** How far out the sides, prolonged, meet a circle about the hub axis; below 0 for nowhere. */
  private double meets(double radius) {
    double axis = half(0);
    double slope = half(1) - axis;
    double a = 1 + slope * slope;
    double root = slope * slope * axis * axis - a * (axis * axis - radius * radius);
    return root < 0 ? -1 : (-slope * axis + Math.sqrt(root)) / a;
  }
}
