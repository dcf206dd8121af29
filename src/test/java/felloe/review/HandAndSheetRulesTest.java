package felloe.review;

import static felloe.plate.Verdict.CAUTION;
import static felloe.plate.Verdict.FAIL;
import static felloe.plate.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.Finding;
import felloe.plate.MaterialKind;
import felloe.plate.Verdict;
import felloe.plate.WindowUse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandAndSheetRulesTest {

  @ParameterizedTest
  @CsvSource({
    // MIL-STD-1472F, one-hand bar handle (from memory): 48 bare, 50 gloved
    "50, PASS",
    "49.99, CAUTION",
    "48, CAUTION",
    "47.99, CAUTION",
    // common practice: bare fingers and some play
    "30, CAUTION",
    "29.99, FAIL",
  })
  void fingersOfBothHandsNeedDepth(double depth, Verdict verdict) {
    List<Finding> findings = new Wheel().grip(60, 0, depth, 130, 10).findings("finger-depth");
    assertEquals(List.of(verdict), findings.stream().map(Finding::verdict).toList());
    assertEquals("W1", findings.get(0).subject());
    assertEquals(depth, findings.get(0).figure().value(), 1e-6);
    assertEquals(Wheel.line(11), findings.get(0).place());
  }

  @ParameterizedTest
  @CsvSource({
    // hand breadth, City University of Hong Kong tables: men 95th percentile 95, gloves up to 25
    "120, PASS",
    "119.99, CAUTION",
    "95, CAUTION",
    "94.99, CAUTION",
    // the same: women 50th percentile 75
    "75, CAUTION",
    "74.99, FAIL",
  })
  void fourFingersOfBothHandsNeedLength(double length, Verdict verdict) {
    List<Finding> findings = new Wheel().grip(60, 0, 50, length, 12).findings("finger-length");
    assertEquals(List.of(verdict), findings.stream().map(Finding::verdict).toList());
    assertEquals(length, findings.get(0).figure().value(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "100 | 20 mm are missing; a bare hand wants 95 mm and has them, a gloved one 120 mm",
        "90 | 30 mm are missing; a bare hand wants 95 mm, a gloved one 120 mm",
        "70 | 5 mm are missing, 50 mm to be clear of cautions too; a bare hand wants 95 mm,"
            + " a gloved one 120 mm",
      })
  void oneFindingTellsWhatEitherHandWants(double length, String advice) {
    assertEquals(advice, new Wheel().grip(60, 0, 50, length, 12).first("finger-length").advice());
  }

  @Test
  void lengthIsMeasuredSquareToTheWayFromTheHubAxis() {
    Contour window = RandomShapes.roundedRectangle(50, 100, 12);
    for (double turn : new double[] {0, 30, 90, 215}) {
      Contour placed =
          window.moved(RigidTransform.shift(70, 0).then(RigidTransform.turn(Math.toRadians(turn))));
      assertEquals(100, FingerRoom.clearLength(placed, 25), 1e-6);
    }
  }

  @Test
  void aPointedEndGivesNoRoomForAFinger() {
    // A triangle of height 100 over a base of 60, its centroid on the x axis.
    double third = 100.0 / 3;
    Contour wedge =
        Contour.polygon(
            List.of(new Point(40, -third), new Point(100, -third), new Point(70, 2 * third)));
    double half = Math.atan2(30, 100);
    double expected = 100 - 12.5 / Math.sin(half) + 12.5;
    assertEquals(expected, FingerRoom.clearLength(wedge, 25), 1e-6);
    assertEquals(0, FingerRoom.clearLength(Contour.circle(new Point(80, 0), 12), 25));
  }

  @Test
  void onlyGripWindowsAreAskedForFingerRoomAndGirth() {
    Wheel wheel = new Wheel().window(WindowUse.DISPLAY, Contour.circle(new Point(60, 0), 10));
    for (String rule :
        List.of("finger-depth", "finger-length", "grip-girth-least", "grip-girth-most")) {
      assertEquals(List.of(), wheel.findings(rule), rule);
    }
  }

  @Test
  void girthOfARoundBarIsItsCircumference() {
    assertEquals(Math.PI * 32, GripGirth.girth(32, 32, 16), 1e-9);
    assertEquals(2 * (30 + 4) - (8 - 2 * Math.PI) * 2, GripGirth.girth(30, 4, 3), 1e-9);
    assertEquals(100, GripGirth.girth(30, 20, 0), 1e-9);
  }

  /** A grip window that leaves a rim of a width on the right, with scales that give a height. */
  private static Wheel rim(double width, double height) {
    return new Wheel().making(6, 2, (height - 4) / 2).grip(150 - width - 25, 0, 50, 120, 10);
  }

  @ParameterizedTest
  @CsvSource({
    // ergonomics texts (common practice): perimeter 95 to 125 mm
    "30, 20.08, PASS, PASS",
    "30, 20.07, CAUTION, PASS",
    "35, 30.07, PASS, PASS",
    "35, 30.08, PASS, CAUTION",
    "30, 4, CAUTION, PASS",
  })
  void gripGirthHasALeastAndAMost(double width, double height, Verdict least, Verdict most) {
    // girth = 2 (w + h) - (8 - 2 pi) 3
    Wheel wheel = rim(width, height);
    assertEquals(least, wheel.first("grip-girth-least").verdict());
    assertEquals(most, wheel.first("grip-girth-most").verdict());
    assertEquals(
        GripGirth.girth(width, height, 3), wheel.first("grip-girth-most").figure().value(), 1e-6);
  }

  @Test
  void girthIsJudgedWhereAHandGoesRoundTheRim() {
    // A notch from above leaves 12 mm to the window's inner end, where no hand closes about it.
    Contour notched =
        Contour.polygon(
            List.of(
                new Point(-150, -100),
                new Point(150, -100),
                new Point(150, 100),
                new Point(88, 100),
                new Point(88, 60),
                new Point(60, 60),
                new Point(60, 100),
                new Point(-150, 100)));
    Wheel wheel = new Wheel().outline(notched).making(6, 2, 10).grip(95, 0, 50, 96, 10);
    Finding rim = wheel.first("grip-girth-least");
    // 150 - 120 = 30 mm wide, 24 mm with the scales
    assertEquals(GripGirth.girth(30, 24, 3), rim.figure().value(), 1e-6);
    assertEquals(135, rim.at().orElseThrow().x(), 1e-6);
  }

  @Test
  void aWindowAboutTheAxisAndATailThatNoFingerEntersAreNoHandPlaces() {
    Contour round = Contour.circle(new Point(0, 0), 150);
    Contour inner = Contour.circle(new Point(0, 0), 120);
    assertEquals(30, HandRim.narrowest(round, inner, 25).orElseThrow().distance(), 1e-9);
    Contour slit = Contour.rectangle(new Box(60, -5, 120, 5));
    assertTrue(HandRim.narrowest(round, slit, 25).isEmpty());
    // The tail reaches to 10 mm from the edge, but the outermost finger stands below it.
    Contour tailed =
        Contour.polygon(
            List.of(
                new Point(60, -60),
                new Point(110, -60),
                new Point(110, 40),
                new Point(105, 92.421),
                new Point(100, 40),
                new Point(60, 40)));
    double width = HandRim.narrowest(round, tailed, 25).orElseThrow().distance();
    assertTrue(width > 20, "" + width);
  }

  @Test
  void theAdviceOnGirthTellsTheRimAndWhatItLacks() {
    Finding finding = rim(30, 10).first("grip-girth-least");
    // 2 (30 + 10) - 5.150 = 74.850; 20.150 mm short
    assertEquals("the rim is 30 mm wide here; the girth is 20.2 mm too small", finding.advice());
  }

  @Test
  void thePlateFitsItsSheetAsDrawnOrTurned() {
    Finding drawn = new Wheel().sheet(304, 204).first("sheet-fit");
    assertEquals(PASS, drawn.verdict());
    assertEquals("plate as drawn", drawn.subject());
    assertEquals(2, drawn.figure().value(), 1e-9);
    Finding turned = new Wheel().sheet(204, 304).first("sheet-fit");
    assertEquals(PASS, turned.verdict());
    assertEquals("plate turned 90 degrees", turned.subject());
    Finding tight = new Wheel().sheet(300, 200).first("sheet-fit");
    assertEquals(CAUTION, tight.verdict());
    assertEquals(0, tight.figure().value(), 1e-9);
    Finding small = new Wheel().sheet(299, 199).first("sheet-fit");
    assertEquals(FAIL, small.verdict());
    assertEquals("1 mm are missing, 5 mm to be clear of cautions too", small.advice());
    assertTrue(new Wheel().findings("sheet-fit").isEmpty(), "no sheet, no finding");
  }

  @Test
  void theRoughAllowanceIsTheMarginThatIsWanted() {
    assertEquals(CAUTION, new Wheel().making(6, 3, 0).sheet(305, 205).first("sheet-fit").verdict());
    assertEquals(PASS, new Wheel().making(6, 3, 0).sheet(306, 206).first("sheet-fit").verdict());
    assertEquals(
        CAUTION, new Wheel().making(6, 0, 0).sheet(303.9, 205).first("sheet-fit").verdict());
  }

  @Test
  void aLongPlateFitsAcrossTheCornersOfItsSheet() {
    // W. B. Carver, "Solution to problem E 1225", Amer. Math. Monthly 64 (1957), from memory: a
    // rectangle p x q, p > a, fits into a x b when
    // b >= (2 p q a + (p^2 - q^2) sqrt(p^2 + q^2 - a^2)) / (p^2 + q^2).
    double p = 320;
    double q = 20;
    double a = 300;
    double b =
        (2 * p * q * a + (p * p - q * q) * Math.sqrt(p * p + q * q - a * a)) / (p * p + q * q);
    Contour bar =
        Contour.polygon(
            List.of(
                new Point(-p / 2, -q / 2),
                new Point(p / 2, -q / 2),
                new Point(p / 2, q / 2),
                new Point(-p / 2, q / 2)));
    Finding fits = new Wheel().outline(bar).sheet(a, b + 0.02).first("sheet-fit");
    assertEquals(CAUTION, fits.verdict(), "on the sheet, but without room for the saw");
    assertTrue(fits.subject().startsWith("plate turned "));
    Finding not = new Wheel().outline(bar).sheet(a, b - 0.02).first("sheet-fit");
    assertEquals(FAIL, not.verdict());
    assertEquals(-0.005, not.figure().value(), 0.005);
  }

  @Test
  void aRoundPlateNeedsItsDiameterAtEveryTurn() {
    Finding finding =
        new Wheel()
            .outline(Contour.circle(new Point(5, 5), 140))
            .sheet(300, 300)
            .first("sheet-fit");
    assertEquals(10, finding.figure().value(), 1e-9);
    Extent extent = new Extent(Contour.circle(new Point(5, 5), 140));
    assertEquals(280, extent.along(Point.polar(1, 0.77)), 1e-9);
    Extent rounded = new Extent(RandomShapes.roundedRectangle(260, 200, 40));
    // Straight parts 180 and 120 seen at 45 degrees, and two radii.
    assertEquals(300 / Math.sqrt(2) + 80, rounded.along(Point.polar(1, Math.PI / 4)), 1e-9);
  }

  @Test
  void massBalanceAndHangingTorqueAreThoseOfStatics() {
    // 200 x 100 x 5 mm of 2.7 g/cm3: 270 g, its middle 40 mm right of the axis.
    Contour bar =
        Contour.polygon(
            List.of(
                new Point(-60, -50), new Point(140, -50), new Point(140, 50), new Point(-60, 50)));
    Wheel wheel = new Wheel().outline(bar).material(MaterialKind.METAL, 2.7).thickness(5);
    assertEquals(270, wheel.first("mass").figure().value(), 1e-6);
    assertEquals(40, wheel.first("centroid-offset").figure().value(), 1e-6);
    // ISO 80000-3: g = 9.80665 m/s2
    assertEquals(0.27 * 9.80665 * 0.04, wheel.first("hang-torque").figure().value(), 1e-6);
    assertEquals(PASS, wheel.first("hang-torque").verdict());
    assertFalse(wheel.first("mass").limit().isPresent());
    assertFalse(wheel.first("centroid-offset").limit().isPresent());
    assertEquals(CAUTION, wheel.thickness(10).first("hang-torque").verdict());
    assertTrue(wheel.first("mass").at().orElseThrow().near(new Point(40, 0), 1e-9));
  }
}
