package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.hub.HubSpec;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FoundHubTest {

  private static final Place OPTION = Place.ofOption("--thread");

  private static final long SEED = 77_2026L;

  private static Requested<String> thread(String name) {
    return new Requested<>(name, Place.ofOption("--thread"));
  }

  @Test
  void fiveScrewsMeasuredAllRoundMakeTheirHub() {
    Calliper calliper = new Calliper(Calliper.ring(5, 69), 5, 0.05, null).diameter(0).allPairs();
    HubSpec hub =
        FoundHub.of(Survey.of(calliper.measured(ContactFeature.SCREWS)), Optional.empty(), OPTION)
            .spec();
    assertEquals("5x69-m5", hub.name());
    assertEquals(5, hub.ring().count());
    assertEquals(69, hub.ring().pitchDiameter(), 1e-9);
    assertEquals("M5", hub.ring().thread().name());
    assertTrue(
        hub.bases().get("pcd").words().startsWith("measured with a calliper (hub.yaml): +- "));
  }

  @Test
  void aClearHoleThatSuitsTwoThreadsIsAskedAboutAndAnswered() {
    Calliper calliper = new Calliper(Calliper.ring(6, 70), 5.5, 0.05, null).diameter(0).allPairs();
    SurveyResult survey = Survey.of(calliper.measured());
    BadInput bad =
        assertThrows(BadInput.class, () -> FoundHub.of(survey, Optional.empty(), OPTION));
    assertTrue(bad.getMessage().contains("suits M5, 10-24, 10-32"), bad.getMessage());
    assertTrue(bad.getMessage().endsWith("such as M5 (--thread)"), bad.getMessage());
    assertEquals(
        "M5", FoundHub.of(survey, Optional.of(thread("M5")), OPTION).spec().ring().thread().name());
    BadInput odd =
        assertThrows(BadInput.class, () -> FoundHub.of(survey, Optional.of(thread("M7")), OPTION));
    assertTrue(odd.getMessage().contains("is not a known thread"), odd.getMessage());
  }

  /** The threads behind an old wheel stand anywhere within its clear holes. */
  @Test
  void clearHolesLeaveThePlayOfTheirScrewsOpen() {
    Calliper holes = new Calliper(Calliper.ring(6, 70), 5.5, 0.05, null).diameter(0).allPairs();
    Calliper studs = new Calliper(Calliper.ring(6, 70), 5, 0.05, null).diameter(0).allPairs();
    HubSpec wheel =
        FoundHub.of(Survey.of(holes.measured()), Optional.of(thread("M5")), OPTION).spec();
    HubSpec hub =
        FoundHub.of(Survey.of(studs.measured(ContactFeature.SCREWS)), Optional.empty(), OPTION)
            .spec();
    assertEquals(0.5, wheel.positionTolerance() - hub.positionTolerance(), 0.011);
    String basis = wheel.bases().get("position-tolerance").words();
    assertTrue(
        basis.endsWith("0.50 mm of play of M5 screws in the holes that were measured"), basis);
  }

  @Test
  void readingsThatTellNoCircleMakeNoHub() {
    Calliper line =
        new Calliper(List.of(new Point(0, 0), new Point(20, 0), new Point(40, 0)), 5, 0.1, null)
            .diameter(0)
            .allPairs();
    SurveyResult survey = Survey.of(line.measured(ContactFeature.SCREWS));
    assertThrows(BadInput.class, () -> FoundHub.of(survey, Optional.empty(), OPTION));
    List<Point> uneven = new ArrayList<>(Calliper.ring(6, 70));
    uneven.set(2, uneven.get(2).plus(new Point(2, 2)));
    SurveyResult odd =
        Survey.of(
            new Calliper(uneven, 5, 0.05, null)
                .diameter(0)
                .allPairs()
                .measured(ContactFeature.SCREWS));
    BadInput bad = assertThrows(BadInput.class, () -> FoundHub.of(odd, Optional.empty(), OPTION));
    assertTrue(bad.getMessage().contains("stand unevenly"), bad.getMessage());
  }

  /**
   * The tolerance that is written holds the true hub: laid best on the ring of the file, no true
   * screw lies outside its zone in at least 95 of 100 hubs measured with errors.
   */
  @Test
  void theToleranceOfTheFileHoldsTheTrueScrews() {
    Random random = new Random(SEED);
    int held = 0;
    for (int run = 0; run < 100; run++) {
      List<Point> truth = new ArrayList<>();
      for (Point p : Calliper.ring(6, 70)) {
        truth.add(p.plus(Point.polar(0.05 * random.nextDouble(), 7 * random.nextDouble())));
      }
      Calliper calliper = new Calliper(truth, 5, 0.1, random).diameter(0).allPairs();
      HubSpec hub =
          FoundHub.of(
                  Survey.of(calliper.measured(ContactFeature.SCREWS)),
                  Optional.of(thread("M5")),
                  OPTION)
              .spec();
      List<Round> ring = hub.ring().centres().stream().map(p -> new Round(p, 0)).toList();
      List<Round> screws = truth.stream().map(p -> new Round(p, 0)).toList();
      double off = -RigidFit.of(ring, screws).clearance();
      held += off <= hub.positionTolerance() / 2 ? 1 : 0;
    }
    assertTrue(held >= 95, "seed " + SEED + ": " + held);
  }
}
