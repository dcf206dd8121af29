package felloe.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Seeded closed chains of lines and arcs, of which about half meet themselves: with neighbours that
 * curve alike, that are tangent or nearly so, that fold back at a cusp, and that are nearly
 * straight.
 */
final class ChainSamples {

  private ChainSamples() {}

  /** The chain of a seed; empty where the figures make none. */
  static List<Segment> chain(long seed) {
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    try {
      return switch ((int) (seed % 6)) {
        case 0 -> alike(random);
        case 1 -> closed(corners(random, 0.9), random, 0.6);
        case 2 -> closed(tangled(random), random, 0.3);
        case 3 -> closed(walk(random), random);
        case 4 -> equalRadii(random);
        default -> closed(corners(random, 0.3), random, 0.05);
      };
    } catch (GeometryException noChain) {
      return List.of();
    }
  }

  private static double scale(Random random) {
    return 2 * Math.pow(10, 1.4 * random.nextDouble());
  }

  private static double sign(Random random) {
    return random.nextBoolean() ? 1 : -1;
  }

  /** A regular figure whose edges all have the same rise, up to beyond half circles. */
  private static List<Segment> alike(Random random) {
    int n = 2 + random.nextInt(5);
    double r = scale(random);
    double squash = random.nextBoolean() ? 1 : 0.2 + random.nextDouble();
    double turn = random.nextDouble() * 7;
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Point p = Point.polar(r, turn + 2 * Math.PI * i / n);
      corners.add(new Point(p.x(), p.y() * squash));
    }
    double rise = sign(random) * r * 2 * random.nextDouble();
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      boolean line = random.nextInt(8) == 0;
      double own = rise + (random.nextInt(4) == 0 ? 1e-5 * r * random.nextGaussian() : 0);
      chain.add(edge(corners.get(i), corners.get((i + 1) % n), line ? 0 : own));
    }
    return chain;
  }

  private static Segment edge(Point a, Point b, double rise) {
    return Arc.isStraight(a, b, rise) ? new Line(a, b) : Arc.withRise(a, b, rise);
  }

  private static List<Point> corners(Random random, double wild) {
    int n = 3 + random.nextInt(5);
    double r = scale(random);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double angle = 2 * Math.PI * (i + wild * random.nextDouble()) / n;
      corners.add(Point.polar(r * (1 - wild * random.nextDouble()), angle));
    }
    return corners;
  }

  private static List<Point> tangled(Random random) {
    int n = 3 + random.nextInt(3);
    double r = scale(random);
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      corners.add(new Point(r * random.nextGaussian(), r * random.nextGaussian()));
    }
    return corners;
  }

  /** Edges with rises up to a share of their chord, at times tiny, at times the one before's. */
  private static List<Segment> closed(List<Point> corners, Random random, double most) {
    List<Segment> chain = new ArrayList<>();
    double share = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      double fine = random.nextInt(5) == 0 ? Math.pow(10, -6 * random.nextDouble()) : 1;
      share = random.nextInt(3) == 0 ? share : sign(random) * most * fine * random.nextDouble();
      chain.add(random.nextInt(4) == 0 ? new Line(a, b) : edge(a, b, share * a.distance(b)));
    }
    return chain;
  }

  /**
   * A walk of arcs and lines that go on tangentially, fold back, or do either but for a very small
   * turn; often two neighbours of one radius.
   */
  private static List<Segment> walk(Random random) {
    double r = scale(random);
    Point at = Point.polar(r, 7 * random.nextDouble());
    double heading = 7 * random.nextDouble();
    double radius = r;
    List<Segment> chain = new ArrayList<>();
    int n = 2 + random.nextInt(3);
    for (int i = 0; i < n; i++) {
      double length = r * (0.1 + 1.5 * random.nextDouble());
      if (random.nextInt(3) > 0) {
        radius = sign(random) * r * Math.pow(10, random.nextDouble() * 2.5 - 0.8);
      }
      Segment next;
      if (random.nextInt(4) == 0) {
        next = new Line(at, at.plus(Point.polar(length, heading)));
      } else {
        Point centre = at.plus(Point.polar(radius, heading + Math.PI / 2));
        double sweep = Math.max(-6.2, Math.min(6.2, length / radius));
        Point to = centre.plus(Point.polar(radius, heading - Math.PI / 2 + sweep));
        next = new Arc(at, to, centre, Math.abs(radius), sweep);
      }
      chain.add(next);
      at = next.to();
      double off = random.nextBoolean() ? 0 : sign(random) * Math.pow(10, -9 * random.nextDouble());
      heading = next.tangent(1).angle() + off + (random.nextInt(3) == 0 ? Math.PI : 0);
    }
    return chain;
  }

  /** A walk closed by an edge. */
  private static List<Segment> closed(List<Segment> walk, Random random) {
    Point from = walk.get(walk.size() - 1).to();
    Point to = walk.get(0).from();
    walk.add(edge(from, to, sign(random) * 0.5 * random.nextDouble() * from.distance(to)));
    return walk;
  }

  /** All arcs have one radius and turn one way, but for a line or one arc the other way. */
  private static List<Segment> equalRadii(Random random) {
    List<Point> corners = corners(random, 0.5);
    double longest = 0;
    for (int i = 0; i < corners.size(); i++) {
      longest = Math.max(longest, corners.get(i).distance(corners.get((i + 1) % corners.size())));
    }
    double radius = longest * (0.5 + random.nextDouble());
    double way = sign(random);
    List<Segment> chain = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      double half = a.distance(b) / 2;
      double root = Math.sqrt(Math.max(0, radius * radius - half * half));
      double rise = radius + (random.nextInt(3) == 0 ? root : -root);
      double sense = random.nextInt(6) == 0 ? -way : way;
      chain.add(random.nextInt(8) == 0 ? new Line(a, b) : edge(a, b, sense * rise));
    }
    return chain;
  }
}
