package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Fillet;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** A contour as a maker would write it into a shape file: by the fewest figures that make it. */
public sealed interface Form {

  /** A circle. */
  record Round(Point centre, double diameter) implements Form {}

  /**
   * A circle about the axis with flats.
   *
   * @param top the upper flat
   * @param bottom the lower one
   */
  record Flats(double diameter, Optional<Flat> top, Optional<Flat> bottom) implements Form {}

  /**
   * A flat of a circle.
   *
   * @param distance from its middle, mm
   * @param radius of the two corners, mm; 0 where they are sharp
   */
  record Flat(double distance, double radius) {}

  /** A rectangle along x and y with equal corners. */
  record Rectangle(Point centre, double width, double height, double radius) implements Form {}

  /** Two parallel edges with half circles: its turn in radians. */
  record Slot(Point centre, double length, double width, double turn) implements Form {}

  /**
   * Straight edges with rounded corners.
   *
   * @param half whether they are the right half, the left one being its image
   */
  record Corners(List<Point> corners, List<Double> radii, boolean half) implements Form {
    /** Copies the lists. */
    public Corners {
      corners = List.copyOf(corners);
      radii = List.copyOf(radii);
    }
  }

  /** Any lines and arcs. */
  record Free(Contour contour) implements Form {}

  /** A radius is meant to be a whole half of a millimetre (common practice). */
  double HALVES = 2;

  /** Figures are meant to be whole hundredths. */
  double HUNDREDTHS = 100;

  /** Beside this angle a line runs along x or y, radians. */
  double LEVEL = Math.toRadians(0.05);

  /**
   * The form of a contour.
   *
   * @param within how far it may lie from it, mm
   */
  static Form of(Contour contour, double within) {
    if (contour.asCircle().isPresent()) {
      Arc circle = contour.asCircle().get();
      double diameter = rounded(2 * circle.radius(), HALVES, within);
      return new Round(eased(circle.centre(), within), diameter);
    }
    Optional<Form> found = flats(contour, within).or(() -> slot(contour, within));
    if (found.isPresent()) {
      return found.get();
    }
    Optional<Cornered> cornered = Cornered.of(contour, within);
    return cornered
        .flatMap(Form::rectangle)
        .or(() -> cornered.map(Form::corners))
        .orElseGet(() -> new Free(contour));
  }

  /** A figure that is meant to be round, where it is as near as that. */
  static double rounded(double value, double parts, double within) {
    double half = Math.rint(value * parts) / parts;
    if (Math.abs(half - value) <= within) {
      return half;
    }
    double hundredth = Math.rint(value * HUNDREDTHS) / HUNDREDTHS;
    return Math.abs(hundredth - value) <= within ? hundredth : value;
  }

  /** A point whose figures are meant to be round. */
  static Point eased(Point p, double within) {
    Point round =
        new Point(
            Math.rint(p.x() * HUNDREDTHS) / HUNDREDTHS, Math.rint(p.y() * HUNDREDTHS) / HUNDREDTHS);
    return round.distance(p) <= within ? round : p;
  }

  private static Optional<Form> rectangle(Cornered c) {
    if (c.corners().size() != 4) {
      return Optional.empty();
    }
    Box box = c.corners().stream().map(p -> Box.of(p, p)).reduce(Box::union).orElseThrow();
    double radius = c.radii().get(0);
    for (int i = 0; i < 4; i++) {
      Point a = c.corners().get(i);
      Point b = c.corners().get((i + 1) % 4);
      boolean along =
          Math.min(Math.abs(a.x() - b.x()), Math.abs(a.y() - b.y())) <= Tolerances.ROUNDING;
      if (!along || c.radii().get(i) != radius) {
        return Optional.empty();
      }
    }
    return Optional.of(new Rectangle(box.centre(), box.width(), box.height(), radius));
  }

  private static Form corners(Cornered c) {
    return half(c).orElseGet(() -> new Corners(c.corners(), c.radii(), false));
  }

  /** The right half of corners that are their own mirror image, from the top down. */
  private static Optional<Form> half(Cornered c) {
    int n = c.corners().size();
    List<Point> right = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    int start = -1;
    for (int i = 0; i < n; i++) {
      Point before = c.corners().get((i + n - 1) % n);
      boolean in = c.corners().get(i).x() >= 0 && before.x() < 0;
      if (in && start >= 0) {
        return Optional.empty();
      }
      start = in ? i : start;
    }
    if (start < 0) {
      return Optional.empty();
    }
    for (int k = 0; k < n && c.corners().get((start + k) % n).x() >= 0; k++) {
      right.add(c.corners().get((start + k) % n));
      radii.add(c.radii().get((start + k) % n));
    }
    int beside = 0;
    for (int k = 0; k < right.size(); k++) {
      Point p = right.get(k);
      double radius = radii.get(k);
      if (p.x() == 0) {
        if (k > 0 && k < right.size() - 1) {
          return Optional.empty();
        }
        continue;
      }
      beside++;
      Point image = new Point(-p.x(), p.y());
      boolean there = false;
      for (int i = 0; i < n; i++) {
        there |=
            c.corners().get(i).near(image, Tolerances.ROUNDING)
                && Math.abs(c.radii().get(i) - radius) <= Tolerances.ROUNDING;
      }
      if (!there) {
        return Optional.empty();
      }
    }
    if (2 * beside + (right.size() - beside) != n) {
      return Optional.empty();
    }
    Collections.reverse(right);
    Collections.reverse(radii);
    return Optional.of(new Corners(right, radii, true));
  }

  private static Optional<Form> slot(Contour contour, double within) {
    List<Segment> segments = contour.segments();
    List<Arc> arcs = new ArrayList<>();
    for (Segment segment : segments) {
      if (segment instanceof Arc arc) {
        arcs.add(arc);
      }
    }
    if (segments.size() != 4
        || arcs.size() != 2
        || segments.get(0) instanceof Arc == segments.get(1) instanceof Arc) {
      return Optional.empty();
    }
    Arc one = arcs.get(0);
    Arc other = arcs.get(1);
    boolean halves =
        Math.abs(one.radius() - other.radius()) <= within
            && Math.abs(Math.abs(one.sweep()) - Math.PI) * one.radius() <= within
            && Math.abs(Math.abs(other.sweep()) - Math.PI) * one.radius() <= within;
    if (!halves || one.centre().near(other.centre(), within)) {
      return Optional.empty();
    }
    double width = rounded(one.radius() + other.radius(), HALVES, within);
    double length = rounded(one.centre().distance(other.centre()) + width, HALVES, within);
    Point along = other.centre().minus(one.centre());
    double turn = Math.toRadians(along.bearing() % 180);
    Point middle = eased(one.centre().middle(other.centre()), within);
    return slot(middle, length, width, turn).apart(contour) <= within
        ? Optional.of(new Slot(middle, length, width, turn))
        : Optional.empty();
  }

  private static Contour slot(Point middle, double length, double width, double turn) {
    double r = width / 2;
    double half = length / 2 - r;
    Arc right = Arc.of(new Point(half, 0), r, -Math.PI / 2, Math.PI);
    Arc left = Arc.of(new Point(-half, 0), r, Math.PI / 2, Math.PI);
    return Contour.of(
            new Line(left.to(), right.from()), right, new Line(right.to(), left.from()), left)
        .moved(RigidTransform.turn(turn))
        .moved(RigidTransform.shift(middle.x(), middle.y()));
  }

  private static Optional<Form> flats(Contour contour, double within) {
    double radius = 0;
    double length = 0;
    for (Segment segment : contour.segments()) {
      if (segment instanceof Arc arc && arc.centre().norm() <= within) {
        length += arc.length();
        radius = arc.radius();
      }
    }
    if (length < contour.length() / 3) {
      return Optional.empty();
    }
    double diameter = rounded(2 * radius, HALVES, within);
    Optional<Flat> top = flat(contour, diameter, 1, within);
    Optional<Flat> bottom = flat(contour, diameter, -1, within);
    if (top.isEmpty() && bottom.isEmpty()) {
      return Optional.empty();
    }
    return made(diameter, top, bottom)
        .filter(made -> made.apart(contour) <= within)
        .map(made -> new Flats(diameter, top, bottom));
  }

  private static Optional<Flat> flat(Contour contour, double diameter, int side, double within) {
    List<Segment> segments = contour.segments();
    int n = segments.size();
    for (int i = 0; i < n; i++) {
      if (segments.get(i) instanceof Line line
          && Math.abs(line.direction().y()) <= Math.sin(LEVEL)
          && side * line.from().y() > 0) {
        Segment next = segments.get((i + 1) % n);
        double corner = next instanceof Arc arc && arc.centre().norm() > within ? arc.radius() : 0;
        double distance = Math.abs(line.from().y() + line.to().y()) / 2;
        return Optional.of(
            new Flat(rounded(distance, HALVES, within), rounded(corner, HALVES, within)));
      }
    }
    return Optional.empty();
  }

  private static Optional<Contour> made(
      double diameter, Optional<Flat> top, Optional<Flat> bottom) {
    try {
      List<Segment> chain = new ArrayList<>();
      List<Double> radii = new ArrayList<>();
      double low = bottom.map(Flat::distance).orElse(0.0);
      double high = top.map(Flat::distance).orElse(0.0);
      double r = diameter / 2;
      double down = bottom.isPresent() ? -Math.asin(low / r) : -Math.PI / 2;
      double up = top.isPresent() ? Math.asin(high / r) : Math.PI / 2;
      Arc right = Arc.of(Point.ORIGIN, r, down, up - down);
      Arc left = right.moved(RigidTransform.MIRROR).reversed();
      double below = bottom.map(Flat::radius).orElse(0.0);
      double above = top.map(Flat::radius).orElse(0.0);
      chain.add(right);
      radii.add(below);
      if (top.isPresent()) {
        chain.add(new Line(right.to(), left.from()));
        radii.add(above);
      }
      chain.add(left);
      radii.add(above);
      if (bottom.isPresent()) {
        chain.add(new Line(left.to(), right.from()));
        radii.add(below);
      }
      return Optional.of(
          Fillet.chain(chain, radii.stream().mapToDouble(Double::doubleValue).toArray()));
    } catch (GeometryException | IllegalArgumentException none) {
      return Optional.empty();
    }
  }
}
