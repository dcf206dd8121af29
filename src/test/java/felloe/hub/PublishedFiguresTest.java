package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** Held against published tables and closed forms; each test names its source. */
class PublishedFiguresTest {

  private static final List<String> METRIC = List.of("M3", "M4", "M5", "M6", "M8", "M10", "M12");

  private static double[] metric(ToDoubleFunction<ScrewThread> figure) {
    return ScrewThreads.all().stream()
        .filter(t -> METRIC.contains(t.name()))
        .mapToDouble(figure)
        .toArray();
  }

  private static ScrewThread thread(String name) {
    return ScrewThreads.all().stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
  }

  // Source: ISO 273 table, trade reprint.
  @Test
  void iso273FineMediumAndCoarseSeriesForM3ToM12() {
    assertArrayEquals(new double[] {3.2, 4.3, 5.3, 6.4, 8.4, 10.5, 13}, metric(ScrewThread::fine));
    assertArrayEquals(new double[] {3.4, 4.5, 5.5, 6.6, 9, 11, 13.5}, metric(ScrewThread::medium));
    assertArrayEquals(new double[] {3.6, 4.8, 5.8, 7, 10, 12, 14.5}, metric(ScrewThread::coarse));
  }

  // Source: Mechanical Engineer's Data Handbook, section 8.2.4 (ISO 261 coarse series).
  @Test
  void iso261CoarsePitchesForM3ToM12() {
    assertArrayEquals(new double[] {0.5, 0.7, 0.8, 1, 1.25, 1.5, 1.75}, metric(ScrewThread::pitch));
    assertArrayEquals(new double[] {3, 4, 5, 6, 8, 10, 12}, metric(ScrewThread::diameter));
  }

  // Source: ASME B18.2.8 loose fit in Machinery's Handbook, 31st edition, p. 1741; the metric
  // drills
  // for close fit on p. 1743 (5.2 mm for no. 10). The close and normal figures are from memory.
  @Test
  void asmeB1828ClearanceHolesForInchThreads() {
    assertEquals(0.213 * 25.4, thread("8-32").coarse(), 1e-9);
    assertEquals(0.297 * 25.4, thread("1/4-20").coarse(), 1e-9);
    assertEquals(0.359 * 25.4, thread("5/16-18").coarse(), 1e-9);
    assertEquals(0.422 * 25.4, thread("3/8-16").coarse(), 1e-9);
    assertEquals(5.2, thread("10-32").fine(), 0.05);
  }

  @Test
  void fiveMillimetresOnM5IsBelowTheFineSeries() {
    ScrewThread m5 = thread("M5");
    assertEquals(ClearanceSeries.TOO_SMALL, ClearanceSeries.of(m5, 4.9));
    assertEquals(ClearanceSeries.BELOW_FINE, ClearanceSeries.of(m5, 5));
    assertEquals(ClearanceSeries.BELOW_FINE, ClearanceSeries.of(m5, 5.2));
    assertEquals(ClearanceSeries.FINE, ClearanceSeries.of(m5, 5.3));
    assertEquals(ClearanceSeries.FINE, ClearanceSeries.of(m5, 5.4));
    assertEquals(ClearanceSeries.MEDIUM, ClearanceSeries.of(m5, 5.5));
    assertEquals(ClearanceSeries.COARSE, ClearanceSeries.of(m5, 5.8));
    assertEquals(ClearanceSeries.ABOVE_COARSE, ClearanceSeries.of(m5, 6));
  }

  // Source: the table of chords for spacing off the circumference of a circle of diameter 1, as in
  // Machinery's Handbook (figures from memory, each recomputed as sin(pi/n)); the surds are those
  // of Euclid's polygons.
  @Test
  void chordFactorsBetweenNeighboursFor3To12Holes() {
    double[] table = {
      0.866025, 0.707107, 0.587785, 0.5, 0.433884, 0.382683, 0.342020, 0.309017, 0.281733, 0.258819
    };
    for (int n = 3; n <= 12; n++) {
      assertEquals(table[n - 3], CalliperFigures.chord(1, n, 1), 5e-7, n + " holes");
    }
    assertEquals(Math.sqrt(3) / 2, CalliperFigures.chord(1, 3, 1), 1e-15);
    assertEquals(Math.sqrt(10 - 2 * Math.sqrt(5)) / 4, CalliperFigures.chord(1, 5, 1), 1e-15);
    assertEquals(Math.sqrt(2 - Math.sqrt(2)) / 2, CalliperFigures.chord(1, 8, 1), 1e-15);
    assertEquals((Math.sqrt(5) - 1) / 4, CalliperFigures.chord(1, 10, 1), 1e-15);
    assertEquals((Math.sqrt(6) - Math.sqrt(2)) / 4, CalliperFigures.chord(1, 12, 1), 1e-15);
  }

  // Source: plane geometry.
  @Test
  void sixHolesOn70And74AndThreeOnTwoInches() {
    List<CalliperReading> on70 = CalliperFigures.of(6, 70, 5).readings();
    assertEquals(List.of("neighbour", "skip one", "across"), names(on70));
    assertEquals(35, on70.get(0).centres(), 5e-4);
    assertEquals(60.622, on70.get(1).centres(), 5e-4);
    assertEquals(70, on70.get(2).centres(), 5e-4);
    assertEquals(75, on70.get(2).outside(), 1e-12);
    assertEquals(65, on70.get(2).inside(), 1e-12);
    List<CalliperReading> on74 = CalliperFigures.of(6, 74, 5).readings();
    assertEquals(37, on74.get(0).centres(), 5e-4);
    assertEquals(64.086, on74.get(1).centres(), 5e-4);
    assertEquals(43.994, CalliperFigures.of(3, 50.8, 6).readings().get(0).centres(), 5e-4);
  }

  private static List<String> names(List<CalliperReading> readings) {
    return readings.stream().map(CalliperReading::name).toList();
  }

  // Source: plane geometry, D sin(2 pi/5) = 0.951057 D.
  @Test
  void theWidestPairOfAnOddCountIsNotThePitchDiameter() {
    CalliperFigures five = CalliperFigures.of(5, 100, 5);
    assertFalse(five.acrossIsPitchDiameter());
    assertEquals(List.of("neighbour", "widest"), names(five.readings()));
    assertEquals(95.1057, five.readings().get(1).centres(), 5e-5);
    assertEquals(
        "With 5 holes none stand opposite: the widest pair is 95.11 mm, not the pitch circle"
            + " diameter of 100 mm.",
        five.warning());
    assertTrue(CalliperFigures.of(6, 70, 5).warning().isEmpty());
  }

  // Source: formulas for floating and fixed fasteners, ASME Y14.5 appendix, as printed in GD&T:
  // Application and Interpretation (2021), p. 308.
  @Test
  void floatingAndFixedFastenerTolerances() {
    assertEquals(0.5, FastenerFormula.floatingTolerance(5.5, 5), 1e-12);
    assertEquals(0.25, FastenerFormula.fixedTolerance(5.5, 5), 1e-12);
    assertEquals(0.3, FastenerFormula.floatingTolerance(5.3, 5), 1e-12);
    assertEquals(0.15, FastenerFormula.fixedTolerance(5.3, 5), 1e-12);
    assertEquals(5.5, FastenerFormula.floatingHole(5, 0.5), 1e-12);
    assertEquals(5.5, FastenerFormula.fixedHole(5, 0.2, 0.3), 1e-12);
    assertEquals(0.3, FastenerFormula.fixedRest(5.5, 5, 0.2), 1e-12);
  }
}
