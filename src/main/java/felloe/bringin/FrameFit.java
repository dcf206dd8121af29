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

  /** A tape held beside a telephone, standard deviation, mm; an assumption. */
  private static final double TAPE = 5;

  /** What is farther off than so many spreads is not believed. */
  private static final double SURELY = 4;

  /** By what a sheet is lifted to learn what follows, mm. */
  private static final double LIFT_STEP = 0.01;

  private final int seen;
  private final SheetsLaid laid;
  private final MarkSides marks;
  private final double[] base;
  private final double[] likely;
  private final double[] spread;
  private double[] numbers;
  private List<MarkSides.Sight> sights = List.of();
  private PrintedLines lines = new PrintedLines(sights);
  private double noise;
  private double printed = PrintedLines.LEAST;
  private double[][] covariance;
  private boolean contradicted;
  private boolean relied;
  private OptionalDouble height = OptionalDouble.empty();

  private FrameFit(Light light, List<MarksFound.Seen> seen) {
    this.seen = seen.size();
    laid = SheetsLaid.of(seen);
    marks = new MarkSides(light);
    FrameStart start = new FrameStart(light, Lens.usual(light), seen, laid);
    base = start.base;
    likely = start.likely;
    spread = start.spread;
    numbers = start.numbers;
  }

  /**
   * Fits.
   *
   * @param focal length that the camera tells, pixels; passed over where the marks say otherwise
   * @param tape height of the camera over the paper, mm, when the maker measured it; passed over
   *     likewise, see {@link #holds}
   */
  static FrameFit of(
      Light light, OptionalDouble focal, List<MarksFound.Seen> seen, OptionalDouble tape) {
    FrameFit fit = new FrameFit(light, seen);
    fit.see(MarkSides.corners(seen));
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
      fit.see(sides);
      fit.settle(0.05, false);
    }
    if (focal.isPresent()) {
      fit.believe(Lens.said(focal.getAsDouble()));
    }
    if (tape.isPresent() && fit.holds(tape.getAsDouble())) {
      fit.height = tape;
      fit.settle(fit.noise, false);
    }
    return fit;
  }

  /** Takes the camera's word for its lens, unless what the marks tell by themselves denies it. */
  private void believe(Lens lens) {
    double variance = covariance[Camera.FOCAL][Camera.FOCAL] * PhotoAccuracy.TOGETHER;
    if (lens.agrees(numbers[Camera.FOCAL], variance)) {
      relied = variance > lens.spread() * lens.spread();
      likely[Camera.FOCAL] = Math.log(lens.focal());
      spread[Camera.FOCAL] = lens.spread();
      settle(noise, false);
    } else {
      contradicted = true;
    }
  }

  /** Whether the camera's word for its lens counts more than the marks do. */
  boolean reliedOnLens() {
    return relied && height.isEmpty();
  }

  /** Whether the camera may stand so high over the paper, mm, by what the marks tell. */
  boolean holds(double tape) {
    double off = tape - camera().stands()[2];
    return Math.abs(off) <= SURELY * Math.hypot(heightSpread(), TAPE);
  }

  /**
   * How surely the marks tell how high the camera stands over the paper, standard deviation, mm.
   */
  double heightSpread() {
    double[] slope = new double[Camera.NUMBERS];
    double here = camera().stands()[2];
    for (int i = 0; i < slope.length; i++) {
      double[] moved = numbers.clone();
      moved[i] += Camera.step(i);
      slope[i] = (new Camera(base, moved).stands()[2] - here) / Camera.step(i);
    }
    return Math.sqrt(variance(slope));
  }

  /**
   * How surely what follows from the camera is told.
   *
   * @param slope by which it changes with each number of the camera
   * @return its variance
   */
  double variance(double[] slope) {
    double variance = 0;
    for (int i = 0; i < slope.length; i++) {
      for (int j = 0; j < slope.length; j++) {
        variance += slope[i] * covariance[i][j] * slope[j];
      }
    }
    return variance * PhotoAccuracy.TOGETHER;
  }

  /** Whether the camera tells a lens that the marks deny: a photo that was cut, or enlarged. */
  boolean contradicted() {
    return contradicted;
  }

  private void see(List<MarkSides.Sight> all) {
    sights = all;
    lines = new PrintedLines(all);
  }

  Camera camera() {
    return new Camera(base, numbers);
  }

  /** What is left across the marks' sides, standard deviation in pixels. */
  double leftOver() {
    return PrintedLines.all(off(numbers));
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
    PrintedLines.Left left = left(numbers);
    for (int i = 0; i < sights.size(); i++) {
      found[sights.get(i).sheet()] += left.astray(i) ? 0 : 1;
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
      // The marks hardly tell a longer lens from one that stands farther away, so that both go
      // together: steps along a valley of the sum of squares, not across it.
      double[] farther = Arrays.copyOf(camera().farther(), n);
      double[] step = equations().carried(Camera.FOCAL, farther).step(damping);
      double longer = Math.expm1(step[Camera.FOCAL]);
      double[] next = numbers.clone();
      for (int i = 0; i < n; i++) {
        next[i] += step[i] + farther[i] * longer;
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
          usual();
          before = cost(numbers);
        }
      } else {
        damping = Math.max(damping * 10, DAMPED);
      }
    }
    if (held) {
      noise = usual;
    } else {
      usual();
    }
    covariance = equations().inverse();
  }

  /** How much is usual, by what is left over now. */
  private void usual() {
    PrintedLines.Left left = left(numbers);
    noise = left.seenNoise();
    printed = left.seenShift();
  }

  /** What is left over at each sight, pixels. */
  private double[] off(double[] all) {
    Camera camera = new Camera(base, all);
    double[] off = new double[sights.size()];
    for (int i = 0; i < off.length; i++) {
      off[i] = residual(sights.get(i), camera, all);
    }
    return off;
  }

  private PrintedLines.Left left(double[] all) {
    return lines.left(off(all), noise, printed);
  }

  private double cost(double[] all) {
    double sum = left(all).cost();
    for (int i = 0; i < spread.length; i++) {
      if (spread[i] > 0) {
        double r = (all[i] - likely[i]) / spread[i];
        sum += r * r;
      }
    }
    if (height.isPresent()) {
      double r = (new Camera(base, all).stands()[2] - height.getAsDouble()) / TAPE;
      sum += r * r;
    }
    return sum;
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
    PrintedLines.Left left = left(numbers);
    double[][] rows = new double[sights.size()][];
    double[] off = off(numbers);
    double weight = 1 / (noise * noise);
    for (int k = 0; k < rows.length; k++) {
      if (left.astray(k)) {
        continue;
      }
      MarkSides.Sight sight = sights.get(k);
      double r = off[k];
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
      equations.add(row, r, weight);
      rows[k] = row;
    }
    lines.lines().forEach(on -> equations.add(shift(on, rows, off, unknowns)));
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
      equations.add(row, high - height.getAsDouble(), 1 / (TAPE * TAPE));
    }
    return equations;
  }

  /** What the shift of a line takes away again of what its sights say, itself being unknown. */
  private NormalEquations.Weighted shift(int[] on, double[][] rows, double[] off, int unknowns) {
    double weight = 1 / (noise * noise);
    double[] row = new double[unknowns];
    double product = 0;
    double square = 1 / (printed * printed);
    for (int k : on) {
      if (rows[k] != null) {
        double share = weight * sights.get(k).perMm();
        for (int i = 0; i < unknowns; i++) {
          row[i] += share * rows[k][i];
        }
        product += share * off[k];
        square += share * sights.get(k).perMm();
      }
    }
    return new NormalEquations.Weighted(row, product, -1 / square);
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
