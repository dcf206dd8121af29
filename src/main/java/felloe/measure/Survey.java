package felloe.measure;

import felloe.geometry.Point;
import felloe.measure.Layout.Free;
import felloe.measure.Measured.Pair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Finds where holes are from readings between them.
 *
 * <p>Where the readings hold every hole, each is found by itself (a free network). Where they do
 * not, the holes are taken to stand evenly on a circle in the order of their numbers, if the
 * readings tell that circle; the answer says so. Where they tell not even that, it says what to
 * measure next.
 *
 * <p>Axes: from the edges where edges were measured (x from the left or right edge, y from the
 * bottom or top edge, growing to the right and up); else from the centre of the circle, the first
 * hole straight up. Distances alone cannot tell a pattern from its mirror image: the holes are then
 * taken to be numbered counter-clockwise.
 */
public final class Survey {

  private static final double RARE = 0.01;
  private static final double UNCHECKED = 0.2;

  /** Times what a hub's own holes may be off; less than that is no slip of a reading. */
  private static final double LARGE = 3;

  /** A reading that is off by more than this part of itself is no slip: the holes are not even. */
  private static final double WHOLE = 0.25;

  private static final int NEXT = 3;

  private final Measured measured;
  private final MeasurePractice practice;
  private final Equations equations;

  private Survey(Measured measured, MeasurePractice practice) {
    this.measured = measured;
    this.practice = practice;
    this.equations = Equations.of(measured);
  }

  /** What readings tell, with the program's own figures. */
  public static SurveyResult of(Measured measured) {
    return of(measured, MeasurePractice.standard());
  }

  /** What readings tell. */
  public static SurveyResult of(Measured measured, MeasurePractice practice) {
    return new Survey(measured, practice).result(Optional.empty());
  }

  /**
   * What readings tell of a plate whose holes are about where they were meant; they are never taken
   * to be even.
   *
   * @param meant where each hole should be
   */
  static SurveyResult about(List<Point> meant, Measured measured, MeasurePractice practice) {
    return new Survey(measured, practice).result(Optional.of(meant));
  }

  private SurveyResult result(Optional<List<Point>> meant) {
    Adjustment even = Solver.even(equations);
    double[] first = meant.map(this::start).orElse(even.z());
    Adjustment free = Solver.free(equations, first);
    if (ObservabilityTest.all(free)) {
      double[] start = free.z();
      OutlierDetection slips =
          OutlierDetection.of(equations, e -> e == equations ? free : again(e, start, first));
      Adjustment kept = slips.adjustment();
      Optional<Adjustment> ring =
          Optional.of(kept.equations() == equations ? even : Solver.even(kept.equations()))
              .filter(ObservabilityTest::all);
      List<Suspect> suspects = new ArrayList<>(slips.suspects());
      if (suspects.isEmpty() && meant.isEmpty()) {
        suspects.addAll(ifEven(kept));
      }
      return told(kept, ring, suspects);
    }
    if (ObservabilityTest.all(even) && meant.isEmpty()) {
      OutlierDetection slips =
          OutlierDetection.of(equations, e -> e == equations ? even : Solver.even(e));
      return told(slips.adjustment(), Optional.empty(), slips.suspects());
    }
    return untold(free);
  }

  private double[] start(List<Point> meant) {
    double[] z = new double[equations.unknowns().all()];
    for (int i = 0; i < meant.size(); i++) {
      z[2 * i] = meant.get(i).x();
      z[2 * i + 1] = meant.get(i).y();
    }
    Solver.rest(equations, z);
    return z;
  }

  /** From where the holes were found with the slip, and from the first guess: the better one. */
  private static Adjustment again(Equations rest, double[] start, double[] first) {
    Adjustment near = Solver.free(rest, start);
    Adjustment fresh = Solver.free(rest, first);
    return fresh.cost() < near.cost() ? fresh : near;
  }

  /**
   * Slips that a free network cannot see because nothing checks the reading, but that would leave
   * an even ring.
   */
  private List<Suspect> ifEven(Adjustment free) {
    Adjustment even = Solver.even(free.equations());
    if (even.freedom() < 2 || chance(even) > RARE) {
      return List.of();
    }
    OutlierDetection slips = OutlierDetection.of(free.equations(), Solver::even);
    List<Suspect> found = new ArrayList<>();
    for (Suspect suspect : slips.suspects()) {
      int k = free.readings().indexOf(suspect.reading());
      boolean unchecked = k >= 0 && free.redundancy(k) < UNCHECKED;
      double off = Math.abs(suspect.off());
      boolean large = off > LARGE * practice.even() && off < WHOLE * suspect.reading().reads();
      if (suspect.alone() && large && unchecked && chance(slips.adjustment()) > RARE) {
        found.add(
            new Suspect(suspect.reading(), suspect.off(), suspect.w(), true, true, suspect.hint()));
      }
    }
    return found.size() == 1 ? found : List.of();
  }

  private static double chance(Adjustment adjustment) {
    return adjustment.freedom() == 0
        ? 1
        : 1
            - new ChiSquaredDistribution(adjustment.freedom())
                .cumulativeProbability(adjustment.cost());
  }

  private SurveyResult told(
      Adjustment adjustment, Optional<Adjustment> even, List<Suspect> suspects) {
    VarianceFactor scatter = VarianceFactor.of(adjustment);
    double[] z = adjustment.z();
    List<Point> raw = new ArrayList<>();
    for (int i = 0; i < measured.count(); i++) {
      raw.add(new Point(z[2 * i], z[2 * i + 1]));
    }
    Point centre = PatternFinder.circle(raw).map(CircleFit.Circle::centre).orElse(raw.get(0));
    HoleAxes frame = new HoleAxes(adjustment, centre);
    List<FoundHole> holes = new ArrayList<>();
    for (int i = 0; i < measured.count(); i++) {
      holes.add(frame.hole(i, measured.labels().get(i), scatter.factor()));
    }
    Optional<Pattern> pattern =
        new PatternFinder(adjustment, frame, scatter, practice).pattern(even, holes);
    List<CheckedReading> readings = new ArrayList<>();
    for (int k = 0; k < adjustment.readings().size(); k++) {
      readings.add(
          new CheckedReading(
              adjustment.readings().get(k),
              adjustment.residual(k),
              adjustment.redundancy(k),
              adjustment.w(k)));
    }
    return new SurveyResult(
        measured,
        holes,
        adjustment.layout() instanceof Layout.EvenRing,
        pattern,
        suspects,
        readings,
        adjustment.freedom(),
        scatter.large(),
        scatter.factor(),
        frame.clockwise(),
        next(adjustment));
  }

  private SurveyResult untold(Adjustment free) {
    return new SurveyResult(
        measured,
        List.of(),
        false,
        Optional.empty(),
        List.of(),
        List.of(),
        Math.max(0, free.freedom()),
        false,
        1,
        false,
        next(free));
  }

  private List<Pair> next(Adjustment adjustment) {
    double[] z = adjustment.z();
    Adjustment about =
        adjustment.layout() instanceof Free
            ? adjustment
            : new Adjustment(adjustment.equations(), new Free(equations.unknowns()), z);
    return NextReadings.of(about, NEXT, practice.pair() / Reading.COVERAGE);
  }
}
