package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CandidatesTest {

  private static final List<HubSpec> HUBS = HubCatalogue.here().all();

  private static Calliper calliper(int count, double pcd, double size, double plusMinus) {
    return new Calliper(Calliper.ring(count, pcd), size, plusMinus, null).diameter(0).allPairs();
  }

  private static List<Candidate> of(Calliper calliper, ContactFeature on) {
    return Candidates.of(Survey.of(calliper.measured(on)), HUBS);
  }

  @Test
  void onlyHubsWithAsManyScrewsAreAskedAndTheNearestComesFirst() {
    List<Candidate> six = of(calliper(6, 73.9, 5.5, 0.05), ContactFeature.HOLES);
    assertEquals("6x74-m5", six.get(0).hub().name());
    assertEquals(4, six.size());
    assertEquals(-0.1, six.get(0).pcdOff(), 1e-6);
    assertEquals(0.05, six.get(0).off(), 1e-6);
    assertTrue(of(calliper(7, 70, 5.5, 0.05), ContactFeature.HOLES).isEmpty());
  }

  /** Room of a screw: (hole - screw)/2 less how far the centre is off. */
  @Test
  void roomOfAScrewIsThatOfTheHubFit() {
    Candidate hub = of(calliper(6, 70.2, 5.5, 0.05), ContactFeature.HOLES).get(0);
    assertEquals("6x70-m5", hub.hub().name());
    assertEquals(0.25 - 0.1, hub.clearance().orElseThrow(), 1e-6);
    assertTrue(hub.enters());
    assertTrue(hub.worst().orElseThrow() < hub.clearance().orElseThrow() - 0.1);
    Candidate far = of(calliper(6, 70.2, 5.5, 0.05), ContactFeature.HOLES).get(3);
    assertEquals("6x101-m6", far.hub().name());
    assertFalse(far.enters());
  }

  @Test
  void metricAndInchThatTheCalliperCannotTellApartAreNamed() {
    SurveyResult survey = Survey.of(calliper(6, 69.93, 5.5, 0.3).measured());
    List<Candidate> all = Candidates.of(survey, HUBS);
    assertEquals(List.of("6x69.85-10-32"), all.get(0).like());
    assertEquals(List.of("70 mm", "2 3/4 in (69.85 mm)"), survey.pattern().orElseThrow().readsAs());
    List<Candidate> sure = of(calliper(6, 70, 5.5, 0.02), ContactFeature.HOLES);
    assertEquals(List.of(), sure.get(0).like());
  }

  @Test
  void screwsThatStandInTheHubAreKnownByTheirSizeToo() {
    List<Candidate> inch = of(calliper(6, 69.92, 4.8, 0.1), ContactFeature.SCREWS);
    assertEquals("6x69.85-10-32", inch.get(0).hub().name());
    List<Candidate> metric = of(calliper(6, 69.93, 4.95, 0.1), ContactFeature.SCREWS);
    assertEquals("6x70-m5", metric.get(0).hub().name());
    assertFalse(metric.get(1).sizeSuits().orElseThrow());
  }

  /** Smallest size of an M5 thread in a hole: 5 - 1.0825 x 0.8 = 4.134 (ISO 68-1). */
  @Test
  void threadedHolesAreKnownByTheSizeInsideTheThread() {
    List<Candidate> hubs = of(calliper(6, 69.93, 4.25, 0.1), ContactFeature.THREADS);
    assertEquals("6x70-m5", hubs.get(0).hub().name());
    assertTrue(hubs.get(0).sizeSuits().orElseThrow());
    assertFalse(
        of(calliper(6, 70, 3.4, 0.1), ContactFeature.THREADS).get(0).sizeSuits().orElseThrow());
  }

  @Test
  void withoutAnySizeRoomIsUnknownButTheCircleIsRanked() {
    Calliper centres = new Calliper(Calliper.ring(6, 70), 5.5, 0.1, new Random(3));
    for (int i = 0; i < 6; i++) {
      centres.over(ReadingKind.CENTRES, i, (i + 1) % 6).over(ReadingKind.CENTRES, i, (i + 2) % 6);
    }
    Candidate hub = of(centres, ContactFeature.HOLES).get(0);
    assertTrue(hub.clearance().isEmpty() && hub.worst().isEmpty() && !hub.enters());
    assertTrue(Math.abs(hub.pcdOff()) < 0.3);
  }
}
