package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A small round hole as a whole: its rim in the upper face, the wall that is seen through it and
 * the ground beyond the lower rim make a picture that depends on middle and diameter alone, and on
 * how light face, wall and ground are there. The one that is nearest to the photo is taken. So a
 * hole is measured too of which the camera sees hardly any ground.
 */
final class HoleFit {

  /** Beyond the rim so much of the face is looked at, pixels. */
  private static final double AROUND = 5;

  /**
   * Levels: face and its slopes; wall, and how it grows lighter to one side; ground, its slopes and
   * its bends: a soft shadow lies over part of it.
   */
  private static final int TERMS = 13;

  /** The face's light is that of so many pixels at the rim of what is looked at. */
  private static final double RING = 2;

  /**
   * A face so many times as light as its hole: little belief about the wall is wanted there. Where
   * ground and face are alike, the belief keeps the wall where it is.
   */
  private static final double LIGHTER = 2;

  /** Slopes are held to 0 by this share of a value's weight: few pixels tell them. */
  private static final double HELD = 2e-3;

  /** So many starts are followed, no two of them as near to each other, mm. */
  private static final int STARTS = 4;

  private static final double APART = 0.55;

  /** How much a wall is held to the shade that it is likely to have, share of a value's weight. */
  private static final double WALL_HELD = 1e-3;

  /** So many of them, the lowest by then, are followed to the end. */
  private static final int FOLLOWED = 4;

  /** A step to the bottom is halved so far. */
  private static final double LEAST_SHARE = 0.1;

  /** From a bottom so far to each side another one is looked for, mm. */
  private static final double RIDGE = 0.25;

  /** Steps to the bottom at most, and steps along each figure. */
  private static final int MOST_ROUNDS = 8;

  private static final int MOST_STEPS = 40;

  /**
   * Where the search begins to halve its steps, mm, where it is near enough to the bottom, and
   * ends.
   */
  private static final double WIDE = 0.3;

  private static final double NARROW = 0.04;

  private static final double CLOSE = 5e-4;

  /** Of the differences from an even patch so much must be explained. */
  private static final double EXPLAINED = 0.93;

  /** The same of what is more than noise, where grain of face and ground is left over as well. */
  private static final double EXPLAINABLE = 0.9;

  /** What stands out little must be placed within this to be a hole, standard deviation, mm. */
  private static final double PLACED = 0.06;

  /** Holes with a smaller radius are none, mm. */
  private static final double LEAST_RADIUS = 0.5;

  /** Keeps levels that nothing tells at 0. */
  private static final double NOTHING = 1e-9;

  /**
   * Of a wide hole on a near photo no more places are looked at: they place it to a thousandth of a
   * millimetre.
   */
  private static final int MOST_DOTS = 6_000;

  /** Squares below this are rounding. */
  private static final double LEAST = 1e-12;

  private final Light light;
  private final Camera camera;
  private final double thickness;
  private final double blur;
  private final Point stands;
  private final double rises;

  HoleFit(Light light, Camera camera, double thickness, double blur) {
    this.light = light;
    this.camera = camera;
    this.thickness = thickness;
    this.blur = blur;
    double[] at = camera.stands();
    this.stands = new Point(at[0], at[1]);
    this.rises = thickness / at[2];
  }

  /**
   * A hole.
   *
   * @param explained share of the patch's differences from an even one
   * @param explainable the same share of what is left when the photo's own noise, as the face round
   *     the hole has it, is taken off
   * @param spread standard deviation of the radius and of each figure of the centre, mm
   */
  record Hole(Point centre, double radius, double explained, double explainable, double spread) {

    boolean well() {
      return explained >= EXPLAINED;
    }

    /** Whether it is one although it stands out little: all but noise is explained by it. */
    boolean faint() {
      return explainable >= EXPLAINABLE && spread <= PLACED;
    }
  }

  /** A pixel of the patch: where on the plane of the upper face, and its light and weight. */
  private record Dot(double x, double y, double value, double weight) {}

  /**
   * What is looked at.
   *
   * @param sureness how much beliefs about its levels weigh: {@link EdgeFit#sureness}
   * @param darker how much darker than the face the wall is believed to be, share of its light
   */
  private record Patch(List<Dot> dots, double sureness, double darker) {}

  /** The hole nearest to a coarse line, which may follow its rim or the ground seen through it. */
  Hole of(List<Point> coarse) {
    Point middle = Point.ORIGIN;
    for (Point p : coarse) {
      middle = middle.plus(p, 1.0 / coarse.size());
    }
    return near(middle, Math.sqrt(Math.abs(EdgeTrace.area(coarse)) / Math.PI));
  }

  /**
   * The hole nearest to something round.
   *
   * @param seen its radius, of the rim or of the ground that is seen through it, mm
   */
  Hole near(Point middle, double seen) {
    Point shift = stands.minus(middle).times(rises);
    double most = seen + shift.norm() + 1;
    double[] g = camera.growth(middle, thickness);
    double perMm = Math.sqrt(Math.abs(g[0] * g[3] - g[1] * g[2]));
    Patch dots = dots(middle, most, perMm, 2);
    List<Start> starts = new ArrayList<>();
    double stride = 0.5;
    // The middle lies between that of the ground that is seen and half a wall's width back.
    double along = shift.norm() / 2 + 0.5;
    Point way = shift.norm() > 0.1 ? shift.unit() : new Point(1, 0);
    for (double a = -along; a <= 0.75; a += stride) {
      for (double b = -0.5; b <= 0.6; b += stride) {
        Point c = middle.plus(way, a).plus(way.left(), b);
        for (double r = 0.8 * seen; r <= most; r += 0.3) {
          starts.add(new Start(c, r, off(dots, c, r, perMm)));
        }
      }
    }
    starts.sort(Comparator.comparingDouble(Start::off));
    // The least of these need not lie beside the least of all: several are followed down.
    // On one patch, for what is left over to be comparable.
    Start first = starts.get(0);
    Patch patch = dots(first.c(), first.r() + APART, perMm, 1);
    List<Start> tried = new ArrayList<>();
    List<Start> lower = new ArrayList<>();
    for (Start start : starts) {
      if (tried.size() < STARTS && tried.stream().noneMatch(t -> t.beside(start))) {
        tried.add(start);
        lower.add(stepped(patch, start, WIDE, NARROW, perMm));
      }
    }
    lower.sort(Comparator.comparingDouble(Start::off));
    Start best =
        lower.stream()
            .limit(FOLLOWED)
            .map(start -> sunk(patch, start, perMm))
            .min(Comparator.comparingDouble(Start::off))
            .orElseThrow();
    // A smaller hole farther to one side, with its wall otherwise shaded, looks nearly alike: what
    // lies beyond such a ridge is looked for from there.
    for (Start beyond : best.beyond(way)) {
      Start lowest = sunk(patch, stepped(patch, beyond, NARROW, NARROW / 2, perMm), perMm);
      best = lowest.off() < best.off() ? lowest : best;
    }
    return told(patch, best, perMm);
  }

  /** Where the search may begin. */
  private record Start(Point c, double r, double off) {
    Start moved(double[] by, double factor) {
      return new Start(c.plus(new Point(by[0], by[1]), factor), r + factor * by[2], Double.NaN);
    }

    /** To both sides along the wall, wider and narrower. */
    List<Start> beyond(Point way) {
      List<Start> all = new ArrayList<>();
      for (double aside : new double[] {-RIDGE, RIDGE}) {
        for (double wider : new double[] {-RIDGE, RIDGE}) {
          all.add(new Start(c.plus(way, aside), Math.max(LEAST_RADIUS, r + wider), off));
        }
      }
      return all;
    }

    boolean beside(Start other) {
      return c.distance(other.c) < APART && Math.abs(r - other.r) < APART;
    }
  }

  /** Followed down by steps along each figure, each half as long as the one before. */
  private Start stepped(Patch patch, Start start, double from, double to, double perMm) {
    Point c = start.c();
    double r = start.r();
    double best = off(patch, c, r, perMm);
    double step = from;
    // What is no hole may lead on and on.
    for (int taken = 0; step > to && taken < MOST_STEPS; taken++) {
      Point next = c;
      double radius = r;
      double least = best;
      for (int way = 0; way < 6; way++) {
        double d = way % 2 == 0 ? step : -step;
        Point tried = way < 2 ? c.plus(new Point(d, 0)) : way < 4 ? c.plus(new Point(0, d)) : c;
        double wide = way < 4 ? r : r + d;
        double off =
            wide > LEAST_RADIUS ? off(patch, tried, wide, perMm) : Double.POSITIVE_INFINITY;
        if (off < least) {
          least = off;
          next = tried;
          radius = wide;
        }
      }
      if (least < best) {
        best = least;
        c = next;
        r = radius;
      } else {
        step /= 2;
      }
    }
    return new Start(c, r, best);
  }

  /**
   * Followed down to the bottom by the bowl through what lies round it (Newton's steps): middle and
   * radius make up for each other, so that steps along each alone end early.
   */
  private Start sunk(Patch patch, Start start, double perMm) {
    Start at = start;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Bowl bowl = bowl(patch, at, perMm);
      double[] move = bowl.bottom() ? bowl.step() : new double[] {WIDE, WIDE, WIDE};
      double far = Math.hypot(Math.hypot(move[0], move[1]), move[2]);
      if (far > WIDE) {
        return stepped(patch, at, NARROW, CLOSE, perMm);
      }
      // In a valley that bends, the whole step may lead up its side.
      Start next = null;
      for (double share = 1; share > LEAST_SHARE && next == null; share /= 2) {
        Start tried = at.moved(move, share);
        double off = off(patch, tried, perMm);
        next = off < at.off() ? new Start(tried.c(), tried.r(), off) : null;
      }
      if (next == null) {
        return far < CLOSE ? at : stepped(patch, at, NARROW, CLOSE, perMm);
      }
      at = next;
      if (far < CLOSE) {
        return at;
      }
    }
    return at;
  }

  /** What is left over round a place, as a quadratic of middle and radius. */
  private record Bowl(NormalEquations equations, double[][] bend) {

    double[] step() {
      return equations.step(0);
    }

    /** Whether it has a bottom: it bends upward every way (Sylvester's criterion). */
    boolean bottom() {
      double two = bend[0][0] * bend[1][1] - bend[0][1] * bend[1][0];
      double three =
          bend[0][2] * (bend[1][0] * bend[2][1] - bend[1][1] * bend[2][0])
              - bend[1][2] * (bend[0][0] * bend[2][1] - bend[0][1] * bend[2][0])
              + bend[2][2] * two;
      return bend[0][0] > 0 && two > 0 && three > 0;
    }
  }

  private Bowl bowl(Patch patch, Start at, double perMm) {
    double h = 0.02;
    double[] up = new double[3];
    double[] down = new double[3];
    double[][] bend = new double[3][3];
    double[] slope = new double[3];
    for (int i = 0; i < 3; i++) {
      double[] way = new double[3];
      way[i] = h;
      up[i] = off(patch, at.moved(way, 1), perMm);
      down[i] = off(patch, at.moved(way, -1), perMm);
      slope[i] = (up[i] - down[i]) / (2 * h);
      bend[i][i] = (up[i] - 2 * at.off() + down[i]) / (h * h);
      for (int j = 0; j < i; j++) {
        way[j] = h;
        double both = off(patch, at.moved(way, 1), perMm);
        bend[i][j] = (both - up[i] - up[j] + at.off()) / (h * h);
        bend[j][i] = bend[i][j];
        way[j] = 0;
      }
    }
    return new Bowl(NormalEquations.of(bend, slope), bend);
  }

  private Hole told(Patch patch, Start at, double perMm) {
    Point c = at.c();
    double r = at.r();
    double best = at.off();
    List<Dot> dots = patch.dots();
    double all = even(dots);
    double h = 0.02;
    double bend = 0;
    for (int way = 0; way < 3; way++) {
      Point d = way == 0 ? new Point(h, 0) : way == 1 ? new Point(0, h) : Point.ORIGIN;
      double wide = way == 2 ? h : 0;
      double up = off(patch, c.plus(d), r + wide, perMm);
      double down = off(patch, c.minus(d), r - wide, perMm);
      double own = (up - 2 * best + down) / (h * h);
      bend = way == 0 ? own : Math.min(bend, own);
    }
    // Neighbouring pixels of a photo err together, over two pixels each way.
    double noise = 4 * best / Math.max(1, dots.size() - TERMS - 3);
    double spread = bend > 0 ? Math.sqrt(2 * noise / bend) : Double.POSITIVE_INFINITY;
    double noise0 = noise(dots, c, r + 2 * blur / perMm) * dots.size();
    double left = Math.max(0, best - noise0);
    double explainable = left / Math.max(left, Math.max(LEAST, all - noise0));
    return new Hole(c, r, 1 - best / all, 1 - explainable, spread);
  }

  private Patch dots(Point middle, double radius, double perMm, int every) {
    List<Dot> all = new ArrayList<>();
    double reach = radius + AROUND / perMm;
    double pixels = Math.PI * reach * reach * perMm * perMm / (every * every);
    double step = every * Math.max(1, Math.sqrt(pixels / MOST_DOTS)) / perMm;
    double[] pixel = new double[2];
    double sum = 0;
    for (double y = -reach; y <= reach; y += step) {
      for (double x = -reach; x <= reach; x += step) {
        if (x * x + y * y > reach * reach) {
          continue;
        }
        camera.project(middle.x() + x, middle.y() + y, thickness, pixel);
        if (!light.holds(pixel[0], pixel[1], 2)) {
          continue;
        }
        double value = light.at(pixel[0], pixel[1]);
        double weight = EdgeFit.weight(value);
        all.add(new Dot(middle.x() + x, middle.y() + y, value, weight));
        sum += weight;
      }
    }
    double mean = sum / Math.max(1, all.size());
    double face =
        all.stream()
            .filter(d -> Math.hypot(d.x() - middle.x(), d.y() - middle.y()) > reach - RING / perMm)
            .mapToDouble(Dot::value)
            .average()
            .orElse(1);
    double inside =
        all.stream()
            .filter(d -> Math.hypot(d.x() - middle.x(), d.y() - middle.y()) < radius / 2)
            .mapToDouble(Dot::value)
            .average()
            .orElse(face);
    return new Patch(
        all.stream().map(d -> new Dot(d.x(), d.y(), d.value(), d.weight() / mean)).toList(),
        face > LIGHTER * inside ? EdgeFit.sureness(face, mean) : 1,
        face > inside ? EdgeRow.WALL_OF_LIGHT : EdgeRow.WALL_DARKER);
  }

  /** The weighted mean square of what the face beyond a circle differs from even shades. */
  private static double noise(List<Dot> dots, Point c, double radius) {
    NormalEquations equations = new NormalEquations(3);
    List<Dot> beyond =
        dots.stream().filter(d -> Math.hypot(d.x() - c.x(), d.y() - c.y()) > radius).toList();
    for (Dot d : beyond) {
      double[] row = {1, d.x() - c.x(), d.y() - c.y()};
      equations.add(row, -d.value(), d.weight());
    }
    double[] level = equations.step(NOTHING);
    double sum = 0;
    for (Dot d : beyond) {
      double off = d.value() - level[0] - level[1] * (d.x() - c.x()) - level[2] * (d.y() - c.y());
      sum += d.weight() * off * off;
    }
    return sum / Math.max(1, beyond.size() - 3);
  }

  private static double even(List<Dot> dots) {
    double w = 0;
    double v = 0;
    for (Dot dot : dots) {
      w += dot.weight();
      v += dot.weight() * dot.value();
    }
    double sum = 0;
    for (Dot dot : dots) {
      sum += dot.weight() * (dot.value() - v / w) * (dot.value() - v / w);
    }
    return Math.max(sum, LEAST);
  }

  private double off(Patch patch, Start at, double perMm) {
    return at.r() > LEAST_RADIUS ? off(patch, at.c(), at.r(), perMm) : Double.POSITIVE_INFINITY;
  }

  /** How deep a place of the wall lies, 0 at the upper rim and 1 at the lower one. */
  private static double depth(Dot dot, Point c, Point low, double radius, double lower) {
    // The circle between the two rims on which the place lies: a quadratic in its depth.
    double vx = low.x() - c.x();
    double vy = low.y() - c.y();
    double dr = lower - radius;
    double dx = dot.x() - c.x();
    double dy = dot.y() - c.y();
    double a = vx * vx + vy * vy - dr * dr;
    double b = dx * vx + dy * vy + radius * dr;
    double e = dx * dx + dy * dy - radius * radius;
    double root = Math.sqrt(Math.max(0, b * b - a * e));
    double s = Math.abs(a) > LEAST ? (b + root) / a : e / (2 * b);
    double t = Math.abs(a) > LEAST ? (b - root) / a : s;
    double one = t >= 0 && t <= 1 ? t : s;
    return Math.max(0, Math.min(1, one));
  }

  /** The sum of squares that is left, the levels fitted. */
  private double off(Patch patch, Point c, double radius, double perMm) {
    List<Dot> dots = patch.dots();
    Point low = c.towards(stands, rises);
    double lower = radius * (1 - rises);
    double soft = blur / perMm;
    double bent = soft * soft / (2 * radius);
    double[][] m = new double[TERMS][TERMS + 1];
    double[] t = new double[TERMS];
    double squares = 0;
    for (Dot dot : dots) {
      double dx = (dot.x() - c.x()) / radius;
      double dy = (dot.y() - c.y()) / radius;
      double far = Math.hypot(dx, dy);
      double in = EdgeFit.normal((radius - bent - far * radius) / soft);
      double lx = dot.x() - low.x();
      double ly = dot.y() - low.y();
      double ground = in * EdgeFit.normal((lower - bent - Math.hypot(lx, ly)) / soft);
      double wall = in - ground;
      t[0] = 1 - in;
      t[1] = t[0] * dx;
      t[2] = t[0] * dy;
      t[3] = wall;
      t[4] = far > 0 ? wall * dx / far : 0;
      t[5] = far > 0 ? wall * dy / far : 0;
      t[6] = ground;
      t[7] = ground * dx;
      t[8] = ground * dy;
      t[9] = ground * dx * dx;
      t[10] = ground * dx * dy;
      t[11] = ground * dy * dy;
      t[12] = wall * (depth(dot, c, low, radius, lower) - 0.5);
      double w = dot.weight();
      squares += w * dot.value() * dot.value();
      for (int i = 0; i < TERMS; i++) {
        double wi = w * t[i];
        if (wi != 0) {
          for (int j = 0; j <= i; j++) {
            m[i][j] += wi * t[j];
          }
          m[i][TERMS] += wi * dot.value();
        }
      }
    }
    for (int i = 0; i < TERMS; i++) {
      m[i][i] += NOTHING + (i % 3 == 0 && i < 9 ? 0 : patch.sureness() * HELD * dots.size());
    }
    // A wall as light as the ground would make a smaller hole that fits as well: held to the
    // face's.
    double held = patch.sureness() * WALL_HELD * dots.size();
    double share = 1 - patch.darker();
    m[0][0] += held * share * share;
    m[3][0] -= held * share;
    m[3][3] += held;
    return LeastSquares.left(m, squares, LEAST);
  }
}
