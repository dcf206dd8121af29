package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.hub.HubPractice;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntFunction;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Hubs measured with errors drawn from a normal distribution whose 95 % half-width is the plus and
 * minus of the readings. Each hub has a random number generator of its own, so that the count of
 * processors does not change the outcome.
 */
class SimulationTest {

  private static final long SEED = 20260417;
  private static final MeasurePractice PRACTICE = MeasurePractice.standard();
  private static final HubPractice HUB_PRACTICE = HubPractice.standard();
  private static final List<HubSpec> HUBS = HubCatalogue.here().all();

  private static <T> List<T> each(int count, IntFunction<T> work) {
    return IntStream.range(0, count).parallel().mapToObj(work).toList();
  }

  private static Random random(int i) {
    return new Random(SEED + 1_000_003L * i);
  }

  private static <T> double part(List<T> all, Predicate<T> which) {
    return all.stream().filter(which).count() / (double) all.size();
  }

  private record Outcome(boolean covered, boolean sizeCovered, boolean first, boolean named) {}

  private static HubRing ringOf(Random random) {
    HubSpec hub = HUBS.get(random.nextInt(HUBS.size()));
    List<List<HubRing>> choices = hub.choices();
    return choices.get(random.nextInt(choices.size())).get(0);
  }

  private static Outcome known(int i, double plusMinus, boolean few, double far) {
    Random random = random(i);
    HubRing ring = ringOf(random);
    double size = ring.thread().medium();
    Calliper calliper = new Calliper(ring.centres(), size, plusMinus, random).diameter(0);
    int n = ring.count();
    if (few) {
      int across = n / 2;
      calliper
          .over(ReadingKind.OUTSIDE, 0, across)
          .over(ReadingKind.OUTSIDE, 1, 1 + across == n ? 0 : 1 + across);
      calliper.over(ReadingKind.OUTSIDE, n == 3 ? 2 : 0, n == 3 ? 0 : 1);
    } else {
      calliper.allPairs();
    }
    SurveyResult survey = Survey.of(calliper.measured(), PRACTICE);
    Pattern pattern = survey.pattern().orElseThrow();
    List<Candidate> candidates = Candidates.of(survey, HUBS, PRACTICE, HUB_PRACTICE, far);
    Candidate best = candidates.get(0);
    boolean first = has(best.hub(), ring);
    boolean named = first;
    for (Candidate other : candidates) {
      named |= best.like().contains(other.hub().name()) && has(other.hub(), ring);
    }
    double pcd = ring.pitchDiameter();
    double sizeOff = Math.abs(pattern.size().orElseThrow() - size);
    return new Outcome(
        pattern.pcdLow() <= pcd && pcd <= pattern.pcdHigh(),
        sizeOff <= 1.96 * pattern.sizeError(),
        first,
        named);
  }

  /** Two specs may share a ring: one of them has a second one, which would be seen. */
  private static boolean has(HubSpec hub, HubRing ring) {
    return hub.choices().stream()
        .map(rings -> rings.get(0))
        .anyMatch(
            r ->
                r.count() == ring.count()
                    && r.pitchDiameter() == ring.pitchDiameter()
                    && r.thread().name().equals(ring.thread().name()));
  }

  private static void told(String what, List<Outcome> all, double first) {
    double covered = part(all, Outcome::covered);
    double sizes = part(all, Outcome::sizeCovered);
    String figures =
        what
            + ": circle covered "
            + covered
            + ", size "
            + sizes
            + ", right hub first "
            + part(all, Outcome::first)
            + ", first or named "
            + part(all, Outcome::named)
            + ", seed "
            + SEED;
    assertTrue(covered > 0.93 && covered < 0.97, figures);
    assertTrue(sizes > 0.93 && sizes < 0.97, figures);
    assertTrue(part(all, Outcome::first) >= first, figures);
    assertTrue(part(all, Outcome::named) >= 0.995, figures);
  }

  @Test
  void tenThousandKnownHubsAreFoundAndTheirBoundsHold() {
    told("all pairs, +-0.05", each(10_000, i -> known(i, 0.05, false, 0)), 0.999);
  }

  @Test
  void withTheUsualPlusAndMinusTheRightHubIsFirstOrNamedAsOneThatCannotBeToldApart() {
    told("all pairs, +-0.1", each(2000, i -> known(i, 0.1, false, 0)), 0.97);
  }

  @Test
  void fourReadingsAreEnoughForAnEvenHub() {
    told("four readings, +-0.05", each(2000, i -> known(i, 0.05, true, 0)), 0.995);
  }

  /** The simulations above place hubs by least squares, which is fast; users get the exact fit. */
  @Test
  void theExactPlacementRanksAsTheFastOneDoes() {
    for (int i = 0; i < 200; i++) {
      assertEquals(known(i, 0.05, false, 0), known(i, 0.05, false, 4), "hub " + i);
    }
  }

  private static Calliper ragged(Random random, int n, double plusMinus, boolean allPairs) {
    List<Point> centres = new ArrayList<>();
    for (Point p : Calliper.ring(n, 40 + 70 * random.nextDouble())) {
      double off = 0.1 * Math.sqrt(random.nextDouble());
      centres.add(p.plus(Point.polar(off, 2 * Math.PI * random.nextDouble())));
    }
    double size = 4 + 4 * random.nextDouble();
    Calliper calliper = new Calliper(centres, size, plusMinus, random).diameter(0);
    return allPairs ? calliper.allPairs() : calliper.formPairs();
  }

  @Test
  void boundsHoldForHolesThatAreOffTheirPlacesToo() {
    record Ragged(boolean pcd, boolean hole, boolean scattered) {}
    List<Ragged> all =
        each(
            2000,
            i -> {
              Random random = random(i);
              int n = 3 + random.nextInt(6);
              Calliper calliper = ragged(random, n, 0.1, true);
              SurveyResult survey = Survey.of(calliper.measured(), PRACTICE);
              Pattern pattern = survey.pattern().orElseThrow();
              double pcd = 2 * PatternFinder.circle(calliper.centres()).orElseThrow().radius();
              List<Point> found = survey.holes().stream().map(FoundHole::at).toList();
              Alignment to = Alignment.of(found, calliper.centres(), false);
              int hole = random.nextInt(n);
              Point p = to.first().of(found.get(hole));
              double within = survey.holes().get(hole).within();
              return new Ragged(
                  pattern.pcdLow() <= pcd && pcd <= pattern.pcdHigh(),
                  p.distance(calliper.centres().get(hole)) <= within,
                  survey.scattered());
            });
    String figures =
        "ragged: circle "
            + part(all, Ragged::pcd)
            + ", holes "
            + part(all, Ragged::hole)
            + ", called scattered "
            + part(all, Ragged::scattered);
    assertTrue(part(all, Ragged::pcd) > 0.93 && part(all, Ragged::pcd) < 0.97, figures);
    // A round bound on an ellipse holds a little more.
    assertTrue(part(all, Ragged::hole) > 0.93, figures);
    assertTrue(part(all, Ragged::scattered) < 0.02, figures);
  }

  @Test
  void whenPlusAndMinusIsTakenTooSmallTheScatterWidensTheBounds() {
    List<boolean[]> all =
        each(
            1000,
            i -> {
              Random random = random(i);
              Calliper calliper = new Calliper(Calliper.ring(6, 70), 5.5, 0.3, random);
              calliper.diameter(0).allPairs().claim(0.1);
              SurveyResult survey = Survey.of(calliper.measured(), PRACTICE);
              Pattern p = survey.pattern().orElseThrow();
              return new boolean[] {survey.scattered(), p.pcdLow() <= 70 && 70 <= p.pcdHigh()};
            });
    String figures = "scattered " + part(all, a -> a[0]) + ", covered " + part(all, a -> a[1]);
    assertTrue(part(all, a -> a[0]) > 0.5, figures);
    assertTrue(part(all, a -> a[1]) > 0.7, figures);
  }

  @Test
  void aSlipOfAMillimetreIsNamed() {
    for (boolean allPairs : new boolean[] {true, false}) {
      List<Boolean> found =
          each(
              1000,
              i -> {
                Random random = random(i);
                int n = allPairs ? 5 + random.nextInt(4) : 6;
                Calliper calliper = ragged(random, n, 0.1, allPairs);
                int which = 1 + random.nextInt(calliper.readings().size() - 1);
                calliper.slip(which, random.nextBoolean() ? 1 : -1);
                SurveyResult survey = Survey.of(calliper.measured(), PRACTICE);
                return !survey.suspects().isEmpty()
                    && survey.suspects().get(0).reading() == calliper.readings().get(which);
              });
      double part = part(found, f -> f);
      assertTrue(part >= 0.95, part + ", seed " + SEED);
    }
  }

  @Test
  void aSlipAmongFourHolesIsSeenButNotPlaced() {
    Calliper calliper = new Calliper(Calliper.ring(4, 70), 5.5, 0.1, null).diameter(0).allPairs();
    // An uneven hub, so that evenness does not help.
    SurveyResult survey = Survey.of(calliper.slip(2, 1).measured(), PRACTICE);
    assertTrue(survey.suspects().size() >= 6);
    assertTrue(survey.suspects().stream().noneMatch(Suspect::alone));
  }

  @Test
  void aSlipOnThreeHolesIsNamedIfTheyStandEvenly() {
    Calliper calliper = new Calliper(Calliper.ring(3, 50), 6.6, 0.1, null).diameter(0).allPairs();
    SurveyResult survey = Survey.of(calliper.slip(2, 1).measured(), PRACTICE);
    assertEquals(1, survey.suspects().size());
    assertTrue(survey.suspects().get(0).ifEven());
    assertEquals(1, survey.suspects().get(0).off(), 1e-6);
  }
}
