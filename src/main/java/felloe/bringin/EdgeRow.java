package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Looks for the part's upper edge along a row of values across it, by steps of the photo's own
 * blur. Where the camera sees the part's wall, how wide the wall looks is known from the thickness,
 * and both of its edges are fitted. How dark walls are is learned from those that were seen.
 */
final class EdgeRow {

  /** Places to either side among which the wall's foot is looked for. */
  private static final int NEIGHBOURS = 24;

  /** Share of a small hole's radius that is looked at from its edge. */
  private static final double ACROSS = 1.4;

  /** Pixels beyond the steps that a row of values takes in: more would reach other edges. */
  private static final double BEYOND = 3;

  /** Places to either side that are no other side of a line. */
  private static final int BESIDE = 3;

  /** A line that was found coarsely lies off its edge by so much where no wall is seen, mm. */
  private static final double COARSELY = 0.5;

  /** How much darker than the face a wall is, before anything is seen of it; an assumption. */
  static final double WALL_DARKER = 0.3;

  /** The same of a light face on a dark ground, which throws little light back at walls. */
  static final double WALL_OF_LIGHT = 0.6;

  /** How much a wall's shade that is guessed, and one that was seen, is believed. */
  private static final double GUESSED = 0.3;

  private static final double SEEN = 1.5;

  /** A wall that looks narrower, pixels, is one edge with that of the face. */
  private static final double WIDE_WALL = 1.5;

  private final Light light;
  private final Camera camera;
  private final double thickness;
  private final double blur;
  private final double[] stands;
  private final List<Double> walls = new ArrayList<>();
  private double darker = Double.NaN;
  private double held = GUESSED;

  EdgeRow(Light light, Camera camera, double thickness, double blur) {
    this.light = light;
    this.camera = camera;
    this.thickness = thickness;
    this.blur = blur;
    this.stands = camera.stands();
  }

  /** Takes what was seen of walls so far for what walls are. */
  void learn() {
    if (walls.size() > 10) {
      double[] sorted = walls.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      darker = Math.max(-1, Math.min(1, sorted[sorted.length / 2]));
      held = SEEN;
    }
  }

  /**
   * How far a blurred edge lies inward of a bend, mm: what lies round a place is averaged, along
   * the edge too.
   */
  private double rounding(Point p, double bend) {
    double[] g = camera.growth(p, thickness);
    double perMm = Math.sqrt(Math.abs(g[0] * g[3] - g[1] * g[2]));
    // Three pixels' mean along the edge has a variance of two thirds.
    return bend * (blur * blur + 2.0 / 3) / (2 * perMm * perMm);
  }

  /**
   * How wide the wall looks outward of a place, mm on the plane of the upper face: up to the lower
   * edge as it is seen through that plane. Less than 0 where the upper face hides it.
   */
  double wall(List<Point> line, int i, Point outward) {
    return crossing(line, i, line.get(i), outward, true);
  }

  /**
   * How far from a place along a direction a line, or its lower edge as it is seen, is crossed near
   * one of its own places.
   */
  private double crossing(List<Point> line, int i, Point from, Point outward, boolean lower) {
    Point side = outward.left();
    double straight = seen(line.get(i), lower).minus(from).dot(outward);
    double best = straight;
    double least = Double.POSITIVE_INFINITY;
    int n = line.size();
    Point a = null;
    int reach = Math.min(n / 2, NEIGHBOURS);
    for (int k = -reach; k <= reach; k++) {
      Point b = seen(line.get(Math.floorMod(i + k, n)), lower).minus(from);
      if (a != null) {
        double sa = a.dot(side);
        double sb = b.dot(side);
        if (sa * sb <= 0 && sa != sb) {
          double t = sa / (sa - sb);
          double at = a.towards(b, t).dot(outward);
          if (Math.abs(at - straight) < least) {
            least = Math.abs(at - straight);
            best = at;
          }
        }
      }
      a = b;
    }
    return best;
  }

  private Point seen(Point p, boolean lower) {
    return lower ? foot(p) : p;
  }

  /** Where the lower edge under a place is seen, on the plane of the upper face. */
  Point foot(Point p) {
    return p.towards(new Point(stands[0], stands[1]), thickness / stands[2]);
  }

  /**
   * Where the edge is by what is seen at a place of a chain. Where the ground beyond the wall
   * stands out more than the wall itself, it is the lower edge that is looked for, straight under
   * the place; the upper one lies over it.
   *
   * @param line the chain's places
   * @param i which of them
   */
  Optional<Point> edge(List<Point> line, int i, EdgeChain.Site site, double reach, double radius) {
    Point outward = site.outward();
    double bent = rounding(site.at(), site.bend());
    Point under = foot(site.at());
    double width = -crossing(line, i, under, outward, false);
    if (width * perMm(under, outward) > WIDE_WALL) {
      EdgeFit.Found found =
          found(under.plus(outward, -width), outward, reach, false, clear(radius), width, false);
      if (found.well() && found.beyond()) {
        double over = found.at() / (1 - thickness / stands[2]);
        return Optional.of(site.at().plus(outward, over + bent));
      }
    }
    double wall = wall(line, i, outward);
    EdgeFit.Found found = found(site.at(), outward, reach, false, clear(radius), wall, false);
    if (found.beyond() && wall * perMm(site.at(), outward) > WIDE_WALL) {
      // The lower edge that is seen beyond is that of another stretch, and stays where it is.
      found = found(site.at(), outward, reach, false, clear(radius), wall, true);
    }
    return found.well()
        ? Optional.of(site.at().plus(outward, found.at() + bent))
        : Optional.empty();
  }

  private double perMm(Point p, Point outward) {
    double[] growth = camera.growth(p, thickness);
    return Math.hypot(
        growth[0] * outward.x() + growth[1] * outward.y(),
        growth[2] * outward.x() + growth[3] * outward.y());
  }

  /**
   * How far outward of a place the edge lies, mm; NaN where none is found.
   *
   * @param clear what is farther outward is not looked at, mm
   */
  double across(Point p, Point outward, double reach, boolean coarse, double clear, double wall) {
    return found(p, outward, reach, coarse, clear, wall, false).at();
  }

  /**
   * How far outward of a round hole's edge may be looked: not so far that its other side comes in.
   */
  static double clear(double radius) {
    return radius > 0 ? ACROSS * radius : Double.POSITIVE_INFINITY;
  }

  /**
   * How far outward of a place of a closed line may be looked, mm, before its other side comes in,
   * as that of a slot does.
   */
  double clear(List<Point> line, int i, Point outward) {
    Point from = line.get(i);
    Point side = outward.left();
    int n = line.size();
    double least = Double.POSITIVE_INFINITY;
    for (int k = BESIDE; k + 1 < n - BESIDE; k++) {
      Point a = line.get((i + k) % n).minus(from);
      Point b = line.get((i + k + 1) % n).minus(from);
      double sa = a.dot(side);
      double sb = b.dot(side);
      if (sa * sb <= 0 && sa != sb) {
        double at = a.towards(b, sa / (sa - sb)).dot(outward);
        least = at > 0 ? Math.min(least, at) : least;
      }
    }
    return least - BEYOND / perMm(from, outward) - COARSELY;
  }

  private EdgeFit.Found found(
      Point p,
      Point outward,
      double reach,
      boolean coarse,
      double clear,
      double wall,
      boolean still) {
    double perMm = perMm(p, outward);
    Point tangent = outward.left();
    double second = Math.max(0, wall);
    double step = 0.5 / perMm;
    // The coarse line may follow the wall's foot.
    double back = coarse ? reach + Math.min(second, 2 * reach) : reach;
    int inside = (int) Math.ceil((back + BEYOND / perMm) / step);
    int outside = (int) Math.ceil((reach + second + BEYOND / perMm) / step);
    if (clear < outside * step) {
      outside = (int) (Math.max(clear, BEYOND / perMm) / step);
    }
    double[] values = new double[inside + outside + 1];
    double[] pixel = new double[2];
    for (int i = -inside; i <= outside; i++) {
      double sum = 0;
      for (int j = -1; j <= 1; j++) {
        Point at = p.plus(outward, i * step).plus(tangent, j / perMm);
        camera.project(at.x(), at.y(), thickness, pixel);
        if (!light.holds(pixel[0], pixel[1], 2)) {
          return EdgeFit.Found.NONE;
        }
        sum += light.at(pixel[0], pixel[1]);
      }
      values[i + inside] = sum / 3;
    }
    boolean lightFace = values[0] > values[values.length - 1];
    double usual = lightFace ? WALL_OF_LIGHT : WALL_DARKER;
    double dark = Double.isNaN(darker) ? usual : darker;
    EdgeFit.Found found =
        EdgeFit.strongest(
            values,
            -inside * step,
            step,
            -back,
            reach,
            new EdgeFit.Steps(second, still, dark, held, blur / perMm, !coarse));
    if (found.well() && second * perMm > 3) {
      walls.add(found.wall());
    }
    return found;
  }
}
