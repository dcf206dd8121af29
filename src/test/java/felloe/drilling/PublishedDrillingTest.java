package felloe.drilling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.CalliperFigures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drills, speeds and limits against published figures. */
class PublishedDrillingTest {

  private static final double FOOT = 0.3048;
  private static final double INCH = 25.4;

  private final DrillTable table = DrillTable.standard();

  /**
   * A table of spindle speeds for drills, aluminium at 300 ft/min: 4560, 2280, 1140, 570 1/min for
   * 1/4, 1/2, 1 and 2 in; mild steel at 70 ft/min: 530 and 260 for 1/2 and 1 in. The table rounds
   * 12/pi to 3.8, so 2 %.
   */
  @ParameterizedTest
  @CsvSource({
    "0.25, 300, 4560",
    "0.5, 300, 2280",
    "1, 300, 1140",
    "2, 300, 570",
    "0.5, 70, 530",
    "1, 70, 260"
  })
  void turnsAreThoseOfATableOfDrillSpeeds(double inches, double feetAMinute, double turns) {
    double reckoned = DrillTable.turns(inches * INCH, feetAMinute * FOOT);
    assertEquals(turns, reckoned, 0.03 * turns);
  }

  /** n = 1000 v/(pi d): 10 mm at 31.416 m/min turns 1000 times. */
  @Test
  void tenMillimetresAtTenPiMetresAMinuteTurnAThousandTimes() {
    assertEquals(1000, DrillTable.turns(10, 10 * Math.PI), 1e-9);
    assertEquals(1000, table.setting(1000));
  }

  /** Preferred numbers of ISO 3, R20/3 (from memory): each is the last times 10^(3/20). */
  @Test
  void stepsOfThePressGrowByThePreferredNumbersOfIso3() {
    double[] steps = {180, 250, 355, 500, 710, 1000, 1400, 2000, 2800};
    for (int i = 0; i < steps.length; i++) {
      assertEquals(steps[i], table.setting(steps[i]), 0);
      assertEquals(1000 * Math.pow(10, 0.15 * (i - 5)), steps[i], 0.02 * steps[i]);
      if (i > 0) {
        assertEquals(steps[i - 1], table.setting(steps[i] - 0.1), 0);
      }
    }
    assertEquals(180, table.setting(20), 0);
    assertEquals(2800, table.setting(9000), 0);
  }

  /** BS 328, metric drill sizes: 1 to 2.95 by 0.05, 3 to 13.9 by 0.1, 14 to 25 by 0.25 mm. */
  @Test
  void drillsAreThoseOfBs328() {
    DrillSizes sizes = table.sizes();
    for (double made : new double[] {1, 1.05, 2.95, 3, 3.3, 4.2, 5, 6.8, 10.2, 13.9, 14.25, 25}) {
      assertTrue(sizes.has(made), "" + made);
    }
    for (double not : new double[] {0.95, 1.02, 3.05, 5.35, 13.95, 14.1, 25.25}) {
      assertFalse(sizes.has(not), "" + not);
    }
    assertEquals(5.3, sizes.atOrBelow(5.35).orElseThrow(), 0);
    assertEquals(5.4, sizes.atOrAbove(5.35).orElseThrow(), 0);
    assertEquals(13.9, sizes.atOrBelow(13.97).orElseThrow(), 0);
    assertEquals(14, sizes.atOrAbove(13.97).orElseThrow(), 0);
    assertEquals(3, sizes.atOrAbove(2.97).orElseThrow(), 0);
    assertTrue(sizes.atOrBelow(0.9).isEmpty());
    assertTrue(sizes.atOrAbove(25.3).isEmpty());
  }

  /** Every drill is found by both searches, and none lies between it and the next. */
  @Test
  void neighboursInTheSeriesAreFound() {
    DrillSizes sizes = table.sizes();
    int count = 0;
    for (double d = 1; d < 25; count++) {
      double next = sizes.atOrAbove(d + 0.02).orElseThrow();
      assertTrue(next > d && next - d < 0.2501, d + " " + next);
      assertEquals(d, sizes.atOrBelow(next - 0.02).orElseThrow(), 1e-9);
      assertTrue(sizes.has(d));
      d = next;
    }
    assertEquals(40 + 110 + 44, count);
  }

  /** ISO 286-1, table 1, as reprinted: IT12, IT13, IT14 in micrometres. */
  @ParameterizedTest
  @CsvSource({
    "3, 100, 140, 250", "5.5, 120, 180, 300", "6, 120, 180, 300", "6.4, 150, 220, 360",
    "13, 180, 270, 430", "25, 210, 330, 520", "38, 250, 390, 620", "80, 300, 460, 740",
    "100, 350, 540, 870", "180, 400, 630, 1000", "250, 460, 720, 1150", "315, 520, 810, 1300"
  })
  void limitsOfSizeAreThoseOfIso286(double size, double it12, double it13, double it14) {
    double[] widths = {it12, it13, it14};
    for (int i = 0; i < 3; i++) {
      SizeLimits limits = table.limits(size, 12 + i);
      assertEquals(size, limits.least(), 0);
      assertEquals(widths[i] / 1000, limits.most() - limits.least(), 1e-9);
    }
  }

  /** Chords of 70, 74 and 50.8 mm circles: 35.000, 60.622, 70.000; 37.000, 64.086; 43.994 mm. */
  @ParameterizedTest
  @CsvSource({
    "70, 6, 1, 35.000",
    "70, 6, 2, 60.622",
    "70, 6, 3, 70.000",
    "74, 6, 1, 37.000",
    "74, 6, 2, 64.086",
    "50.8, 3, 1, 43.994",
    "69, 5, 2, 65.623"
  })
  void distancesOfARingAreItsChords(double circle, int count, int step, double chord) {
    double centres = CalliperFigures.chord(circle, count, step);
    SizeLimits hole = new SizeLimits(5.5, 5.68);
    DistanceLimits outside = DistanceLimits.outside(centres, 0.8, hole, hole);
    assertEquals(chord, outside.centres(), 0.0005);
    assertEquals(chord + 5.5, outside.nominal(), 0.0005);
    assertEquals(chord + 5.5 - 0.4, outside.least(), 0.0005);
    assertEquals(chord + 5.68 + 0.4, outside.most(), 0.0005);
    DistanceLimits inside = DistanceLimits.inside(centres, 0.8, hole, hole);
    assertEquals(chord - 5.5, inside.nominal(), 0.0005);
    assertEquals(chord - 5.68 - 0.4, inside.least(), 0.0005);
    assertEquals(chord - 5.5 + 0.4, inside.most(), 0.0005);
  }
}
