package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random contours and regions of the kinds that plates are made of, and worse. */
final class MoreShapes {

  private MoreShapes() {}

  /** A star-shaped chain of {@code count} edges about {@code size} mm across, few of them long. */
  static Contour jagged(long seed, int count, double size) {
    Random random = new Random(seed);
    while (true) {
      List<Point> corners = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double angle = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / count;
        corners.add(Point.polar(size * (0.4 + 0.1 * random.nextDouble()), angle));
      }
      try {
        return new Contour(bulged(corners, random, 0.2));
      } catch (GeometryException e) {
        continue; // bulges may cross; the next draw of the same seeded source is as good
      }
    }
  }

  private static List<Segment> bulged(List<Point> corners, Random random, double most) {
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      double rise = a.distance(b) * (random.nextDouble() - 0.5) * 2 * most;
      edges.add(random.nextBoolean() ? new Line(a, b) : Arc.withRise(a, b, rise));
    }
    return edges;
  }

  /** Corner points of a star-shaped polygon. */
  static List<Point> star(Random random, int count, double size) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.6 * random.nextDouble()) / count;
      corners.add(Point.polar(size * (0.2 + 0.3 * random.nextDouble()), angle));
    }
    return corners;
  }

  /** A polygon with every corner rounded; where an edge has no room left its arcs join directly. */
  static Contour smooth(long seed, double size) {
    Random random = new Random(seed);
    while (true) {
      List<Point> corners = star(random, 3 + random.nextInt(12), size);
      double[] cut = new double[corners.size()];
      for (int i = 0; i < cut.length; i++) {
        cut[i] = random.nextInt(3) == 0 ? 1 : random.nextDouble();
      }
      try {
        return new Contour(rounded(corners, cut));
      } catch (GeometryException e) {
        continue;
      }
    }
  }

  /** Rounds each corner so far that a part of half of its shorter edge is used up. */
  static List<Segment> rounded(List<Point> corners, double[] part) {
    int n = corners.size();
    Point[] in = new Point[n];
    Point[] out = new Point[n];
    for (int i = 0; i < n; i++) {
      Point before = corners.get((i + n - 1) % n);
      Point at = corners.get(i);
      Point after = corners.get((i + 1) % n);
      double cut = part[i] * Math.min(before.distance(at), after.distance(at)) / 2;
      in[i] = at.plus(before.minus(at).unit(), cut);
      out[i] = at.plus(after.minus(at).unit(), cut);
    }
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      if (out[i].near(in[next], 1e-5)) {
        in[next] = out[i];
      }
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point at = corners.get(i);
      Point u = at.minus(in[i]).unit();
      Point v = out[i].minus(at).unit();
      double turn = Math.atan2(u.cross(v), u.dot(v));
      double radius = in[i].distance(at) / Math.tan(Math.abs(turn) / 2);
      Point centre = in[i].plus(turn > 0 ? u.left() : u.right(), radius);
      edges.add(new Arc(in[i], out[i], centre, radius, turn));
      Point next = in[(i + 1) % n];
      if (!out[i].equals(next)) {
        edges.add(new Line(out[i], next));
      }
    }
    return edges;
  }

  /** A polygon with corners cut off by edges of about 0.01 mm. */
  static Contour chipped(long seed, double size) {
    Random random = new Random(seed);
    while (true) {
      List<Point> corners = star(random, 3 + random.nextInt(8), size);
      List<Point> chipped = new ArrayList<>();
      int n = corners.size();
      for (int i = 0; i < n; i++) {
        Point at = corners.get(i);
        double cut = 0.002 + 0.01 * random.nextDouble();
        chipped.add(at.plus(corners.get((i + n - 1) % n).minus(at).unit(), cut));
        chipped.add(at.plus(corners.get((i + 1) % n).minus(at).unit(), cut));
      }
      try {
        return new Contour(bulged(chipped, random, 0.1));
      } catch (GeometryException e) {
        continue;
      }
    }
  }

  /** A slot: two lines and two half circles. */
  static Contour slot(Point a, Point b, double radius) {
    Point out = b.minus(a).unit().right().times(radius);
    Point p = a.plus(out);
    Point q = b.plus(out);
    Point r = b.minus(out);
    Point s = a.minus(out);
    return Contour.of(
        new Line(p, q),
        new Arc(q, r, b, radius, Math.PI),
        new Line(r, s),
        new Arc(s, p, a, radius, Math.PI));
  }

  /** A piece of a ring between two radii and two angles, corners sharp. */
  static Contour sector(Point centre, double inner, double outer, double start, double sweep) {
    Arc far = Arc.of(centre, outer, start, sweep);
    Arc near = Arc.of(centre, inner, start + sweep, -sweep);
    return Contour.of(far, new Line(far.to(), near.from()), near, new Line(near.to(), far.from()));
  }

  /** Two blocks joined by a neck of the given width. */
  static Contour dumbbell(double width, double neck) {
    double h = neck / 2;
    return Contour.polygon(
        List.of(
            new Point(-50, -width / 2),
            new Point(-20, -width / 2),
            new Point(-20, -h),
            new Point(20, -h),
            new Point(20, -width / 2),
            new Point(50, -width / 2),
            new Point(50, width / 2),
            new Point(20, width / 2),
            new Point(20, h),
            new Point(-20, h),
            new Point(-20, width / 2),
            new Point(-50, width / 2)));
  }

  /** One of all the kinds, with holes where they happen to fit. */
  static Region region(long seed) {
    Random random = new Random(seed * 7919);
    Contour outer =
        switch ((int) (seed % 7)) {
          case 0 -> RandomShapes.contour(seed, 200);
          case 1 -> jagged(seed, 20 + random.nextInt(120), 200);
          case 2 -> smooth(seed, 200);
          case 3 -> chipped(seed, 120);
          case 4 ->
              slot(
                  Point.polar(40 * random.nextDouble(), 7 * random.nextDouble()),
                  Point.polar(50 + 50 * random.nextDouble(), 7 * random.nextDouble()),
                  2 + 20 * random.nextDouble());
          case 5 ->
              sector(
                  Point.polar(30, seed),
                  10 + 40 * random.nextDouble(),
                  55 + 40 * random.nextDouble(),
                  7 * random.nextDouble(),
                  0.2 + 5.5 * random.nextDouble());
          default -> smooth(seed, 400);
        };
    List<Contour> holes = new ArrayList<>();
    int tries = random.nextInt(6);
    for (int i = 0; i < tries; i++) {
      Point at = Point.polar(80 * random.nextDouble(), 7 * random.nextDouble());
      double r = 1 + 12 * random.nextDouble();
      try {
        Contour hole =
            switch (random.nextInt(3)) {
              case 0 -> Contour.circle(at, r);
              case 1 -> slot(at, at.plus(Point.polar(2 + 20 * random.nextDouble(), i)), r);
              default -> smooth(seed + i, 3 * r).moved(RigidTransform.shift(at.x(), at.y()));
            };
        List<Contour> more = new ArrayList<>(holes);
        more.add(hole);
        new Region(outer, more);
        holes.add(hole);
      } catch (GeometryException e) {
        continue; // does not fit
      }
    }
    return new Region(outer, holes);
  }

  /** A distance: any, or just a radius of the region, or the half of one. */
  static double distance(Region region, long seed) {
    Random random = new Random(seed * 104729);
    List<Double> radii = new ArrayList<>();
    for (Contour contour : region.contours()) {
      for (Segment s : contour.segments()) {
        if (s instanceof Arc arc && arc.radius() < 60) {
          radii.add(arc.radius());
        }
      }
    }
    double d =
        switch (random.nextInt(4)) {
          case 0 -> radii.isEmpty() ? 1 : radii.get(random.nextInt(radii.size()));
          case 1 -> 0.01 + 0.5 * random.nextDouble();
          default -> 0.2 + 20 * random.nextDouble();
        };
    return random.nextBoolean() ? d : -d;
  }
}
