package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.measure.CircleFit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a closed chain of stretches: each is run on to where it meets the next one. */
final class StretchesJoined {

  /** Stretches meet no farther than this from where their places end, mm. */
  private static final double REACH = 3;

  /** A gap that two stretches leave without meeting is a stretch of its own, mm. */
  private static final double OWN = 6;

  /** Share of all places that make a single arc a whole circle. */
  private static final double WHOLE = 0.9;

  private final List<Point> places;
  private final double spread;

  private StretchesJoined(List<Point> places, double spread) {
    this.places = places;
    this.spread = spread;
  }

  /**
   * A stretch with what it lies on.
   *
   * @param on places
   * @param centre of an arc; empty for a line
   */
  private record Carrier(List<Point> on, Optional<Point> centre, double radius, Point along) {

    Point first() {
      return foot(on.get(0));
    }

    Point last() {
      return foot(on.get(on.size() - 1));
    }

    private Point middle() {
      Point sum = Point.ORIGIN;
      for (Point p : on) {
        sum = sum.plus(p, 1.0 / on.size());
      }
      return sum;
    }

    /** The nearest place on it. */
    Point foot(Point p) {
      if (centre.isPresent()) {
        return centre.get().plus(p.minus(centre.get()).unit(), radius);
      }
      Point from = middle();
      return from.plus(along, p.minus(from).dot(along));
    }

    double off(Point p) {
      return p.distance(foot(p));
    }
  }

  /** The chain; empty where nothing closes. */
  static Optional<EdgeChain> of(
      List<Point> places, List<EdgeStretches.Stretch> stretches, double spread) {
    return new StretchesJoined(places, spread).chain(stretches);
  }

  private Optional<EdgeChain> chain(List<EdgeStretches.Stretch> stretches) {
    List<Carrier> all = new ArrayList<>();
    for (EdgeStretches.Stretch s : stretches) {
      if (s.kind() != EdgeStretches.Kind.NOBODY) {
        List<Point> on = new ArrayList<>();
        for (int i = s.from(); i < s.to(); i++) {
          on.add(places.get(i % places.size()));
        }
        carrier(on, s.kind() == EdgeStretches.Kind.ARC).ifPresent(all::add);
      }
    }
    merge(all);
    if (all.size() == 1) {
      Carrier one = all.get(0);
      return one.centre().isPresent() && one.on().size() > WHOLE * places.size()
          ? Optional.of(
              EdgeChain.circle(one.centre().get(), one.radius(), EdgeTrace.area(places) < 0))
          : Optional.empty();
    }
    if (all.size() < 2) {
      return Optional.empty();
    }
    return Optional.of(joined(all));
  }

  private static Optional<Carrier> carrier(List<Point> on, boolean arc) {
    if (arc) {
      Optional<CircleFit.Circle> circle = CircleFit.TAUBIN.of(on);
      if (circle.isPresent()) {
        return Optional.of(
            new Carrier(
                on, Optional.of(circle.get().centre()), circle.get().radius(), Point.ORIGIN));
      }
    }
    double sxx = 0;
    double sxy = 0;
    double syy = 0;
    Carrier raw = new Carrier(on, Optional.empty(), 0, Point.ORIGIN);
    Point middle = raw.middle();
    for (Point p : on) {
      Point d = p.minus(middle);
      sxx += d.x() * d.x();
      sxy += d.x() * d.y();
      syy += d.y() * d.y();
    }
    Point along = Point.polar(1, Math.atan2(2 * sxy, sxx - syy) / 2);
    Point way = on.get(on.size() - 1).minus(on.get(0));
    Point forward = along.dot(way) < 0 ? along.times(-1) : along;
    return Optional.of(new Carrier(on, Optional.empty(), 0, forward));
  }

  /** Neighbours that lie on one line or one circle are one, whatever was left out between them. */
  private void merge(List<Carrier> all) {
    boolean again = true;
    while (again && all.size() > 1) {
      again = false;
      for (int i = 0; i < all.size() && !again; i++) {
        int next = (i + 1) % all.size();
        Carrier a = all.get(i);
        Carrier b = all.get(next);
        if (next == i || a.centre().isPresent() != b.centre().isPresent()) {
          continue;
        }
        List<Point> both = new ArrayList<>(a.on());
        both.addAll(b.on());
        Optional<Carrier> one = carrier(both, a.centre().isPresent());
        if (one.isPresent()
            && rms(one.get()) < 1.5 * Math.max(spread, Math.max(rms(a), rms(b)))
            && one.get().centre().isPresent() == a.centre().isPresent()) {
          all.set(i, one.get());
          all.remove(next);
          again = true;
        }
      }
    }
  }

  private static double rms(Carrier c) {
    return Math.sqrt(c.on().stream().mapToDouble(p -> c.off(p) * c.off(p)).average().orElseThrow());
  }

  private static EdgeChain joined(List<Carrier> all) {
    int n = all.size();
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    Point[] ends = new Point[n];
    Point[] starts = new Point[n];
    for (int i = 0; i < n; i++) {
      Carrier a = all.get(i);
      Carrier b = all.get((i + 1) % n);
      Point here = a.last().middle(b.first());
      double gap = a.last().distance(b.first());
      Optional<Point> meet = meet(a, b, here).filter(p -> p.distance(here) <= gap / 2 + REACH);
      boolean apart = meet.isEmpty() && gap > OWN;
      ends[i] = meet.orElse(apart ? a.last() : a.foot(here).middle(b.foot(here)));
      starts[(i + 1) % n] = meet.orElse(apart ? b.first() : ends[i]);
    }
    for (int i = 0; i < n; i++) {
      joints.add(starts[i]);
      rises.add(rise(all.get(i), starts[i], ends[i]));
      if (!ends[i].equals(starts[(i + 1) % n])) {
        joints.add(ends[i]);
        rises.add(0.0);
      }
    }
    return EdgeChain.of(joints, rises);
  }

  /** From the chord to the right of the way, mm. */
  private static double rise(Carrier c, Point from, Point to) {
    if (c.centre().isEmpty()) {
      return 0;
    }
    Point centre = c.centre().get();
    double sweep = 0;
    Point before = from;
    for (Point p : c.on()) {
      sweep += angle(before.minus(centre), p.minus(centre));
      before = p;
    }
    sweep += angle(before.minus(centre), to.minus(centre));
    double rise = from.distance(to) / 2 * Math.tan(sweep / 4);
    // Half a circle and more is as steep as an arc may be drawn here.
    return Arc.isStraight(from, to, rise) ? 0 : rise;
  }

  private static double angle(Point a, Point b) {
    return Math.atan2(a.cross(b), a.dot(b));
  }

  private static Optional<Point> meet(Carrier a, Carrier b, Point near) {
    List<Point> found = new ArrayList<>();
    if (a.centre().isEmpty() && b.centre().isEmpty()) {
      double sine = a.along().cross(b.along());
      if (Math.abs(sine) > 0.05) {
        double t = b.middle().minus(a.middle()).cross(b.along()) / sine;
        found.add(a.middle().plus(a.along(), t));
      }
    } else if (a.centre().isPresent() && b.centre().isPresent()) {
      Point way = b.centre().get().minus(a.centre().get());
      double d = way.norm();
      if (d > 0) {
        double x = (d * d + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * d);
        double square = a.radius() * a.radius() - x * x;
        if (square >= 0) {
          Point foot = a.centre().get().plus(way.unit(), x);
          found.add(foot.plus(way.unit().left(), Math.sqrt(square)));
          found.add(foot.plus(way.unit().right(), Math.sqrt(square)));
        }
      }
    } else {
      Carrier line = a.centre().isEmpty() ? a : b;
      Carrier arc = a.centre().isEmpty() ? b : a;
      Point foot = line.foot(arc.centre().get());
      double h = foot.distance(arc.centre().get());
      double square = arc.radius() * arc.radius() - h * h;
      if (square >= 0) {
        found.add(foot.plus(line.along(), Math.sqrt(square)));
        found.add(foot.plus(line.along(), -Math.sqrt(square)));
      }
    }
    return found.stream().min((p, q) -> Double.compare(p.distance(near), q.distance(near)));
  }
}
