package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.service.NewShape;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * A wheel whose edges are known, about 300 mm across: invented outlines of each family, with
 * openings, slots, inner corners and small holes. How far a place lies outside is exact within 3 mm
 * of an edge, and no more than it is elsewhere.
 */
final class TruePart {

  /** Beyond this distance of an edge a bound will do, mm. */
  private static final double NEAR = 3;

  private static final double CELL = 1;
  private static final double DIAGONAL = 0.71 * CELL;
  private static final int HALF = 185;
  private static final int SIDE = 2 * HALF;

  /** Of each segment: from, to, centre, radius, sweep; an arc's numbers are 0 for a line. */
  private final double[][] segments;

  /** Of each segment the sum of the unit vectors outward at its start and at its end. */
  private final double[][] corners;

  private final float[] grid = new float[SIDE * SIDE];
  private final int[][] near = new int[SIDE * SIDE][];

  /** Its edges, the outer one first. */
  final List<Contour> contours;

  TruePart(Random random, PhotoScene.Laid laid) {
    contours =
        switch (laid) {
          case FOUR -> made(random);
          case TWO -> plate(slots(random, 280, 165), 1);
          case ONE -> plate(small(random), 1);
        };
    List<Segment> all = new ArrayList<>();
    List<Segment[]> beside = new ArrayList<>();
    for (int k = 0; k < contours.size(); k++) {
      List<Segment> chain = k == 0 ? contours.get(k).segments() : contours.get(k).clockwise();
      int n = chain.size();
      for (int i = 0; i < n; i++) {
        all.add(chain.get(i));
        beside.add(new Segment[] {chain.get((i + n - 1) % n), chain.get((i + 1) % n)});
      }
    }
    segments = new double[all.size()][];
    corners = new double[all.size()][];
    for (int i = 0; i < segments.length; i++) {
      Segment s = all.get(i);
      segments[i] = new double[] {s.from().x(), s.from().y(), s.to().x(), s.to().y(), 0, 0, 0, 0};
      if (s instanceof Arc arc) {
        segments[i][4] = arc.centre().x();
        segments[i][5] = arc.centre().y();
        segments[i][6] = arc.radius();
        segments[i][7] = arc.sweep();
      }
      Point a = s.tangent(0).plus(beside.get(i)[0].tangent(1)).right();
      Point b = s.tangent(1).plus(beside.get(i)[1].tangent(0)).right();
      corners[i] = new double[] {a.x(), a.y(), b.x(), b.y()};
    }
    int[] every = new int[segments.length];
    for (int i = 0; i < every.length; i++) {
      every[i] = i;
    }
    double[] far = new double[segments.length];
    for (int k = 0; k < grid.length; k++) {
      double x = (k % SIDE - HALF + 0.5) * CELL;
      double y = (k / SIDE - HALF + 0.5) * CELL;
      grid[k] = (float) exact(x, y, every, far);
      if (Math.abs(grid[k]) < NEAR + DIAGONAL) {
        int count = 0;
        int[] some = new int[segments.length];
        for (int i = 0; i < far.length; i++) {
          if (far[i] <= Math.abs(grid[k]) + 2 * DIAGONAL) {
            some[count++] = i;
          }
        }
        near[k] = Arrays.copyOf(some, count);
      }
    }
  }

  /** How far outside a place lies, mm; less than 0 within. */
  double outside(double x, double y) {
    int i = (int) Math.floor(x / CELL) + HALF;
    int j = (int) Math.floor(y / CELL) + HALF;
    if (i < 0 || j < 0 || i >= SIDE || j >= SIDE) {
      return Math.max(NEAR, Math.hypot(x, y) - HALF);
    }
    int k = j * SIDE + i;
    if (near[k] == null) {
      double between = between(x / CELL + HALF - 0.5, y / CELL + HALF - 0.5);
      return between > 0 ? between - DIAGONAL : between + DIAGONAL;
    }
    return exact(x, y, near[k], null);
  }

  private double between(double x, double y) {
    int i = Math.max(0, Math.min(SIDE - 2, (int) Math.floor(x)));
    int j = Math.max(0, Math.min(SIDE - 2, (int) Math.floor(y)));
    double fx = x - i;
    double fy = y - j;
    int k = j * SIDE + i;
    return (1 - fy) * ((1 - fx) * grid[k] + fx * grid[k + 1])
        + fy * ((1 - fx) * grid[k + SIDE] + fx * grid[k + SIDE + 1]);
  }

  private double exact(double x, double y, int[] some, double[] far) {
    double best = Double.POSITIVE_INFINITY;
    double sign = 1;
    for (int i : some) {
      double[] s = segments[i];
      double d;
      double side;
      int end = -1;
      if (s[6] > 0) {
        double dx = x - s[4];
        double dy = y - s[5];
        double turned =
            Math.atan2(
                (s[0] - s[4]) * dy - (s[1] - s[5]) * dx, (s[0] - s[4]) * dx + (s[1] - s[5]) * dy);
        if (s[7] > 0 && turned < 0) {
          turned += 2 * Math.PI;
        } else if (s[7] < 0 && turned > 0) {
          turned -= 2 * Math.PI;
        }
        double r = Math.hypot(dx, dy);
        if (Math.abs(turned) <= Math.abs(s[7])) {
          d = Math.abs(r - s[6]);
          side = s[7] > 0 ? r - s[6] : s[6] - r;
        } else {
          double a = Math.hypot(x - s[0], y - s[1]);
          double b = Math.hypot(x - s[2], y - s[3]);
          end = a < b ? 0 : 1;
          d = Math.min(a, b);
          side = 0;
        }
      } else {
        double ux = s[2] - s[0];
        double uy = s[3] - s[1];
        double t = ((x - s[0]) * ux + (y - s[1]) * uy) / (ux * ux + uy * uy);
        end = t <= 0 ? 0 : t >= 1 ? 1 : -1;
        double c = Math.max(0, Math.min(1, t));
        d = Math.hypot(x - s[0] - c * ux, y - s[1] - c * uy);
        side = uy * (x - s[0]) - ux * (y - s[1]);
      }
      if (far != null) {
        far[i] = d;
      }
      if (d < best) {
        best = d;
        if (end >= 0) {
          side =
              corners[i][2 * end] * (x - s[2 * end])
                  + corners[i][2 * end + 1] * (y - s[2 * end + 1]);
        }
        sign = side > 0 ? 1 : -1;
      }
    }
    return sign * best;
  }

  private static List<Contour> made(Random random) {
    int kind = random.nextInt(6);
    String text =
        switch (kind) {
          case 0, 1 -> round(random);
          case 2 -> NewShape.text("four-sided");
          case 3 -> NewShape.text("points");
          case 4 -> NewShape.text("path");
          default -> slots(random, 280, 190);
        };
    double scale = kind > 1 && kind < 5 ? 0.95 + 0.07 * random.nextDouble() : 1;
    return plate(text, scale);
  }

  private static List<Contour> plate(String text, double scale) {
    return Studies.plate(ShapeSource.text("true.yaml", text), Path.of("."))
        .region()
        .contours()
        .stream()
        .map(contour -> scaled(contour, scale))
        .toList();
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3);
  }

  /** A round wheel with a flat, two windows, a bore and six holes. */
  private static String round(Random random) {
    double corner = 6 + 8 * random.nextDouble();
    return "felloe: 1\noutline:\n  round:\n    diameter: "
        + mm(300 + 0.8 * (random.nextDouble() - 0.5))
        + "\n    bottom: {distance: "
        + mm(112 + 6 * random.nextDouble())
        + ", radius: "
        + mm(random.nextBoolean() ? 0 : 15 * random.nextDouble() + 5)
        + "}\nwindows:\n  - {rectangle: {width: 48, height: 110, radius: "
        + mm(corner)
        + "}, at: [92, 0], mirror: true}\n"
        + "bolt_circles:\n  - {count: 6, pcd: "
        + mm(70 + 6 * random.nextDouble())
        + ", diameter: "
        + mm(5.2 + 2.8 * random.nextDouble())
        + ", first: "
        + mm(60 * random.nextDouble())
        + "}\nbore: {diameter: "
        + mm(40 + 8 * random.nextDouble())
        + "}\nstock: {material: birch-plywood, thickness: 9}\n";
  }

  /** A four-sided wheel with slots and small holes. */
  private static String slots(Random random, double width, double height) {
    return "felloe: 1\noutline:\n  four_sided: {width: "
        + mm(width + 20 * random.nextDouble())
        + ", height: "
        + mm(height + 20 * random.nextDouble())
        + ", radius: "
        + mm(20 + 30 * random.nextDouble())
        + ", rise: {top: "
        + mm(3 + 4 * random.nextDouble())
        + ", bottom: 5, left: 4, right: 4}}\nwindows:\n  - {slot: {length: "
        + mm(60 + 40 * random.nextDouble())
        + ", width: "
        + mm(18 + 12 * random.nextDouble())
        + "}, at: [95, 0], turn: "
        + mm(60 + 60 * random.nextDouble())
        + ", mirror: true}\n  - {circle: {diameter: "
        + mm(16.5 + 10 * random.nextDouble())
        + "}, places: [[-55, 55], [55, 55]]}\nbolt_circles:\n  - {count: 3, pcd: "
        + mm(55 + 10 * random.nextDouble())
        + ", diameter: "
        + mm(6.2 + 2 * random.nextDouble())
        + "}\nholes:\n  - {places: [[-50, -60], [50, -60], [0, 70]], diameter: "
        + mm(4.2 + 3 * random.nextDouble())
        + ", role: other}\nstock: {material: birch-plywood, thickness: 9}\n";
  }

  /** A small four-sided plate with a slot and holes. */
  private static String small(Random random) {
    return "felloe: 1\noutline:\n  four_sided: {width: "
        + mm(62 + 20 * random.nextDouble())
        + ", height: "
        + mm(88 + 25 * random.nextDouble())
        + ", radius: "
        + mm(3 + 12 * random.nextDouble())
        + ", rise: {top: "
        + mm(1 + 3 * random.nextDouble())
        + ", bottom: 1, left: 1, right: 1}}\nwindows:\n  - {slot: {length: "
        + mm(20 + 10 * random.nextDouble())
        + ", width: "
        + mm(6 + 4 * random.nextDouble())
        + "}, at: [0, 27], turn: "
        + mm(20 * random.nextDouble())
        + "}\nbolt_circles:\n  - {count: 3, pcd: 22, diameter: "
        + mm(4.2 + 4 * random.nextDouble())
        + "}\nholes:\n  - {places: [[-24, -35], [24, -35]], diameter: "
        + mm(4.2 + 3 * random.nextDouble())
        + ", role: other}\nstock: {material: birch-plywood, thickness: 9}\n";
  }

  private static Contour scaled(Contour contour, double scale) {
    if (contour.asCircle().isPresent()) {
      Arc circle = contour.asCircle().get();
      return Contour.circle(circle.centre().times(scale), circle.radius() * scale);
    }
    List<Segment> all = new ArrayList<>();
    for (Segment s : contour.segments()) {
      Point from = s.from().times(scale);
      Point to = s.to().times(scale);
      if (s instanceof Arc arc) {
        double rise = s.from().distance(s.to()) / 2 * Math.tan(arc.sweep() / 4);
        all.add(Arc.withRise(from, to, rise * scale));
      } else {
        all.add(new Line(from, to));
      }
    }
    return new Contour(all);
  }
}
