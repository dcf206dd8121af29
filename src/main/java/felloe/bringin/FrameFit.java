package felloe.bringin;

import felloe.geometry.Point;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Camera and sheets as the marks of one photo tell them, all at once (a bundle adjustment): the
 * lens, where the camera stands, and where each sheet lies on the plane of the paper.
 *
 * <p>First from the corners as they were detected, then from many places along the sides of each
 * mark, each found to part of a pixel across the side, so that a bent image of a straight side does
 * no harm.
 */
final class FrameFit {

  /** A residual this many times the usual is none of the edge's. */
  private static final double OUTLIER = 4;

  /** Corners may be so far off at first, pixels. */
  private static final double FAR = 100;

  /** Where steps end: the sum of squares falls by no more of itself. */
  private static final double STILL = 1e-7;

  /**
   * How much unknowns are held: so little counts as free, at the least, and after a step too far.
   */
  private static final double FREE = 1e-5;

  private static final double LEAST_DAMPING = 1e-12;
  private static final double DAMPED = 1e-8;

  private final OptionalDouble height;

  private final int seen;
  private final SheetsLaid laid;
  private final MarkSides marks;
  private final double[] base;
  private final double[] likely;
  private final double[] spread;
  private double[] numbers;
  private List<MarkSides.Sight> sights = List.of();
  private double noise;
  private double[][] covariance;

  private FrameFit(Light light, List<MarksFound.Seen> seen, OptionalDouble height) {
    this.height = height;
    this.seen = seen.size();
    laid = SheetsLaid.of(seen);
    marks = new MarkSides(light);
    FrameStart start = new FrameStart(light, seen, laid);
    base = start.base;
    likely = start.likely;
    spread = start.spread;
    numbers = start.numbers;
  }

  /**
   * Fits.
   *
   * @param height of the camera over the paper, mm, when the maker measured it
   */
  static FrameFit of(Light light, List<MarksFound.Seen> seen, OptionalDouble height) {
    FrameFit fit = new FrameFit(light, seen, height);
    fit.sights = MarkSides.corners(seen);
    // Sheets that the first one's plane puts far off must not count as astray: all corners do count
    // until every sheet lies nearly where it is.
    fit.settle(FAR, true);
    fit.settle(1.0, false);
    for (int round = 0; round < 3; round++) {
      fit.sights = fit.marks.sides(seen, fit.camera(), fit.laid, fit.numbers, round == 0 ? 5 : 3);
      fit.settle(0.05, false);
    }
    return fit;
  }

  Camera camera() {
    return new Camera(base, numbers);
  }

  /** Root mean square of what is left across the marks' sides, pixels. */
  double noise() {
    return noise;
  }

  /** Blur of the photo's edges, standard deviation in pixels. */
  double blur() {
    return marks.blur();
  }

  /** The sheet on whose first mark the paper's origin lies. */
  int first() {
    return laid.first();
  }

  /** How many sheets are seen. */
  int sheets() {
    return (int) Arrays.stream(laid.at()).filter(at -> at >= 0).count();
  }

  int marks() {
    return seen;
  }

  /**
   * The fewest places, for each mark that it shows, at which the sides of a sheet's marks lie where
   * they should.
   *
   * @param seen all marks
   */
  double fewest(List<MarksFound.Seen> seen) {
    double[] found = new double[FrameMarks.SHEETS];
    double[] marks = new double[FrameMarks.SHEETS];
    Camera camera = camera();
    for (MarkSides.Sight sight : sights) {
      boolean well = Math.abs(residual(sight, camera, numbers)) <= OUTLIER * noise;
      found[sight.sheet()] += well ? 1 : 0;
    }
    seen.forEach(one -> marks[one.mark().sheet()]++);
    double least = Double.POSITIVE_INFINITY;
    for (int sheet = 0; sheet < marks.length; sheet++) {
      least = marks[sheet] > 0 ? Math.min(least, found[sheet] / marks[sheet]) : least;
    }
    return least;
  }

  /** Blocks of marks on the plane of the paper. */
  List<FrameMarks.Block> blocks() {
    return laid.blocks(numbers);
  }

  /** Variances and covariances of the numbers of camera and sheets. */
  double[][] covariance() {
    return covariance;
  }

  double[] numbers() {
    return numbers;
  }

  double[] base() {
    return base;
  }

  /** Gauss and Newton's steps, sights that are far off left out. */
  private void settle(double usual, boolean held) {
    int n = numbers.length;
    noise = usual;
    double damping = 1e-3;
    double before = cost(numbers);
    for (int round = 0; round < 40; round++) {
      NormalEquations equations = equations();
      double[] step = equations.step(damping);
      double[] next = numbers.clone();
      for (int i = 0; i < n; i++) {
        next[i] += step[i];
      }
      double after = cost(next);
      if (after <= before) {
        boolean still = before - after < STILL * before && damping < FREE;
        numbers = next;
        before = after;
        damping = Math.max(damping / 10, LEAST_DAMPING);
        if (still) {
          break;
        }
        if (round % 3 == 2 && !held) {
          noise = spreadOf();
          before = cost(numbers);
        }
      } else {
        damping = Math.max(damping * 10, DAMPED);
      }
    }
    noise = held ? usual : spreadOf();
    covariance = equations().inverse();
  }

  private double spreadOf() {
    Camera camera = camera();
    double[] off = new double[sights.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = Math.abs(residual(sights.get(i), camera, numbers));
    }
    Arrays.sort(off);
    return Math.max(0.01, 1.4826 * off[off.length / 2]);
  }

  private double cost(double[] all) {
    Camera camera = new Camera(base, all);
    double sum = 0;
    for (MarkSides.Sight sight : sights) {
      double r = residual(sight, camera, all) / noise;
      sum += Math.min(r * r, OUTLIER * OUTLIER);
      if (Double.isNaN(r)) {
        return Double.POSITIVE_INFINITY;
      }
    }
    for (int i = 0; i < spread.length; i++) {
      if (spread[i] > 0) {
        double r = (all[i] - likely[i]) / spread[i];
        sum += r * r;
      }
    }
    if (height.isPresent()) {
      double r = (camera.stands()[2] - height.getAsDouble()) / heightSpread();
      sum += r * r;
    }
    return sum;
  }

  /** A tape held beside a telephone: within 5 mm; an assumption. */
  private static double heightSpread() {
    return 5;
  }

  private NormalEquations equations() {
    int n = numbers.length;
    NormalEquations equations = new NormalEquations(n);
    double[] moved = numbers.clone();
    Camera camera = camera();
    Camera[] cameras = new Camera[Camera.NUMBERS];
    double[] by = new double[n];
    for (int i = 0; i < n; i++) {
      by[i] = Camera.step(i);
      if (i < Camera.NUMBERS) {
        double[] one = numbers.clone();
        one[i] += by[i];
        cameras[i] = new Camera(base, one);
      }
    }
    for (MarkSides.Sight sight : sights) {
      double r = residual(sight, camera, numbers);
      if (Math.abs(r) > OUTLIER * noise) {
        continue;
      }
      double[] row = new double[n];
      for (int i = 0; i < Camera.NUMBERS; i++) {
        row[i] = (residual(sight, cameras[i], numbers) - r) / by[i];
      }
      int at = laid.at()[sight.sheet()];
      for (int i = at; at > 0 && i < at + 3; i++) {
        moved[i] += by[i];
        row[i] = (residual(sight, camera, moved) - r) / by[i];
        moved[i] = numbers[i];
      }
      equations.add(row, r, 1 / (noise * noise));
    }
    for (int i = 0; i < n; i++) {
      if (spread[i] > 0) {
        double[] row = new double[n];
        row[i] = 1;
        equations.add(row, numbers[i] - likely[i], 1 / (spread[i] * spread[i]));
      }
    }
    if (height.isPresent()) {
      double[] row = new double[n];
      double high = camera.stands()[2];
      for (int i = Camera.TURN; i < Camera.NUMBERS; i++) {
        row[i] = (cameras[i].stands()[2] - high) / by[i];
      }
      double weight = 1 / (heightSpread() * heightSpread());
      equations.add(row, high - height.getAsDouble(), weight);
    }
    return equations;
  }

  private double residual(MarkSides.Sight sight, Camera camera, double[] all) {
    Point p = laid.laid(sight.sheet(), sight.place(), all);
    double[] pixel = new double[2];
    camera.project(p.x(), p.y(), 0, pixel);
    return sight.across().x() * (pixel[0] - sight.pixel().x())
        + sight.across().y() * (pixel[1] - sight.pixel().y());
  }
}
