package felloe.bringin;

import felloe.geometry.Point;
import java.util.ArrayList;
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

  /** By what a sheet is lifted to learn what follows, mm. */
  private static final double LIFT_STEP = 0.01;

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
      List<MarkSides.Sight> sides =
          round == 0
              ? fit.marks.sidesAtFirst(seen, fit.camera(), fit.laid, fit.numbers, 4)
              : fit.marks.sides(seen, fit.camera(), fit.laid, fit.numbers, 3);
      if (sides.isEmpty()) {
        break;
      }
      fit.sights = sides;
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

  /** Blur of the photo's edges, standard deviation in pixels; infinite where none can be found. */
  double blur() {
    return marks.blur();
  }

  /**
   * The blur that would make the marks' sides as soft as they are, standard deviation in pixels.
   */
  double softness(List<MarksFound.Seen> seen) {
    return marks.softness(seen);
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

  /**
   * A sheet that lies higher than the first one.
   *
   * @param height mm; less than 0 where it lies lower
   * @param spread of that, standard deviation, mm
   */
  record Lift(int sheet, double height, double spread) {}

  /**
   * How much higher each sheet lies than the first one, by what is left over at the marks when all
   * are taken to lie on one plane: camera and sheets give way to a lift and hide it nearly, so that
   * it is fitted beside all that.
   */
  List<Lift> lifts() {
    int n = numbers.length;
    List<Integer> others = new ArrayList<>();
    for (int sheet = 0; sheet < laid.at().length; sheet++) {
      if (laid.at()[sheet] > 0) {
        others.add(sheet);
      }
    }
    NormalEquations equations = equations(others);
    double[] step = equations.step(0);
    double[][] covariance = equations.inverse();
    List<Lift> all = new ArrayList<>();
    for (int i = 0; i < others.size(); i++) {
      all.add(new Lift(others.get(i), step[n + i], Math.sqrt(covariance[n + i][n + i])));
    }
    return all;
  }

  /** Blocks of marks on the plane of the paper. */
  List<FrameMarks.Block> blocks() {
    return laid.blocks(numbers);
  }

  /** How far from straight down the camera sees the middle of the marks, radians. */
  double aside() {
    Point middle = Point.ORIGIN;
    List<FrameMarks.Block> blocks = blocks();
    for (FrameMarks.Block block : blocks) {
      for (Point p : block.corners()) {
        middle = middle.plus(p, 1.0 / (blocks.size() * block.corners().size()));
      }
    }
    double[] at = camera().stands();
    return Math.atan2(middle.distance(new Point(at[0], at[1])), at[2]);
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
    return equations(List.of());
  }

  /** With the heights of some sheets over the plane as unknowns after all others. */
  private NormalEquations equations(List<Integer> lifted) {
    int n = numbers.length;
    int unknowns = n + lifted.size();
    NormalEquations equations = new NormalEquations(unknowns);
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
      double[] row = new double[unknowns];
      for (int i = 0; i < Camera.NUMBERS; i++) {
        row[i] = (residual(sight, cameras[i], numbers) - r) / by[i];
      }
      int at = laid.at()[sight.sheet()];
      for (int i = at; at > 0 && i < at + 3; i++) {
        moved[i] += by[i];
        row[i] = (residual(sight, camera, moved) - r) / by[i];
        moved[i] = numbers[i];
      }
      int high = lifted.indexOf(sight.sheet());
      if (high >= 0) {
        row[n + high] = (residual(sight, camera, numbers, LIFT_STEP) - r) / LIFT_STEP;
      }
      equations.add(row, r, 1 / (noise * noise));
    }
    for (int i = 0; i < n; i++) {
      if (spread[i] > 0) {
        double[] row = new double[unknowns];
        row[i] = 1;
        equations.add(row, numbers[i] - likely[i], 1 / (spread[i] * spread[i]));
      }
    }
    if (height.isPresent()) {
      double[] row = new double[unknowns];
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
    return residual(sight, camera, all, 0);
  }

  /** With the sheet so high over the plane of the paper, mm. */
  private double residual(MarkSides.Sight sight, Camera camera, double[] all, double height) {
    Point p = laid.laid(sight.sheet(), sight.place(), all);
    double[] pixel = new double[2];
    camera.project(p.x(), p.y(), height, pixel);
    return sight.across().x() * (pixel[0] - sight.pixel().x())
        + sight.across().y() * (pixel[1] - sight.pixel().y());
  }
}
