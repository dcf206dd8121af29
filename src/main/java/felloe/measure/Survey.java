package felloe.measure;

import felloe.geometry.Point;
import felloe.measure.Layout.Free;
import felloe.measure.Measured.Pair;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
      Function<Equations, Adjustment> adjust = e -> e == equations ? free : again(e, start, first);
      OutlierDetection slips = resolved(OutlierDetection.of(equations, adjust), adjust);
      Adjustment kept = slips.adjustment();
      Optional<Adjustment> ring =
          Optional.of(kept.equations() == equations ? even : Solver.even(kept.equations()))
              .filter(one -> ObservabilityTest.all(one) && one.settled() && one.possible());
      List<Suspect> suspects = new ArrayList<>(slips.suspects());
      if (suspects.isEmpty() && meant.isEmpty()) {
        suspects.addAll(ifEven(kept));
      }
      return toldIf(kept, ring, suspects, adjust);
    }
    if (ObservabilityTest.all(even) && meant.isEmpty()) {
      Function<Equations, Adjustment> adjust = e -> e == equations ? even : Solver.even(e);
      OutlierDetection slips = resolved(OutlierDetection.of(equations, adjust), adjust);
      return toldIf(slips.adjustment(), Optional.empty(), slips.suspects(), adjust);
    }
    return untold(free, List.of());
  }

  /**
   * Where several readings may be the slip, or the holes come out with no size: the one that, taken
   * over something else, makes all agree, if it is the only one.
   */
  private OutlierDetection resolved(
      OutlierDetection slips, Function<Equations, Adjustment> adjust) {
    boolean several = slips.suspects().stream().anyMatch(s -> !s.alone());
    Adjustment adjustment = slips.adjustment();
    if (!several && adjustment.possible()) {
      return slips;
    }
    List<MixUp> asked =
        several && adjustment.possible()
            ? MixUp.candidates(slips.suspects().stream().map(Suspect::reading).toList()).stream()
                .filter(one -> one.mayMend(adjustment))
                .toList()
            : MixUp.candidates(adjustment.readings());
    Optional<MixUp> one = MixUp.only(MixUp.of(adjustment.equations(), asked, adjust));
    if (one.isEmpty()) {
      return slips;
    }
    Reading reading = one.get().reading();
    Adjustment without = adjust.apply(adjustment.equations().without(List.of(reading)));
    if (!ObservabilityTest.all(without) || !without.possible() || !without.settled()) {
      return slips;
    }
    List<Suspect> suspects = new ArrayList<>();
    suspects.add(one.get().suspect(without));
    slips.suspects().stream()
        .filter(s -> s.alone() && s.reading() != reading)
        .forEach(suspects::add);
    return new OutlierDetection(without, List.copyOf(suspects));
  }

  /** What is told, if the search came to rest at holes that can be. */
  private SurveyResult toldIf(
      Adjustment kept,
      Optional<Adjustment> ring,
      List<Suspect> suspects,
      Function<Equations, Adjustment> adjust) {
    if (!kept.settled()) {
      return untold(kept, List.of(Refusals.unsettled(measured, next(kept))));
    }
    if (!kept.possible()) {
      Equations all = kept.equations();
      return untold(
          kept,
          Refusals.size(
              measured,
              kept.leastSize(),
              MixUp.of(all, MixUp.candidates(all.readings()), adjust),
              MixUp.all(all, adjust)));
    }
    return told(kept, ring, suspects);
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
        next(adjustment),
        List.of());
  }

  /**
   * @param why it is not told; empty when the readings are too few
   */
  private SurveyResult untold(Adjustment free, List<Problem> why) {
    List<Pair> next = next(free);
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
        next,
        why.isEmpty() ? List.of(Refusals.tooFew(measured, next)) : why);
  }

  private List<Pair> next(Adjustment adjustment) {
    double[] z = adjustment.z();
    Adjustment about =
        adjustment.layout() instanceof Free
            ? adjustment
            : new Adjustment(adjustment.equations(), new Free(equations.unknowns()), z, true);
    return NextReadings.of(about, NEXT, practice.pair() / Reading.COVERAGE);
  }
}
