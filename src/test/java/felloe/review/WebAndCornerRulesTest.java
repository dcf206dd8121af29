package felloe.review;

import static felloe.plate.Verdict.CAUTION;
import static felloe.plate.Verdict.FAIL;
import static felloe.plate.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.Finding;
import felloe.plate.HoleRole;
import felloe.plate.MaterialKind;
import felloe.plate.Verdict;
import felloe.plate.WindowUse;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WebAndCornerRulesTest {

  /** A plate with two round windows that leave a web on the y axis. */
  private static Wheel web(double width) {
    return new Wheel()
        .window(WindowUse.OPEN, Contour.circle(new Point(-20 - width / 2, 0), 20))
        .window(WindowUse.OPEN, Contour.circle(new Point(20 + width / 2, 0), 20));
  }

  @ParameterizedTest
  @CsvSource({
    // common practice: twice the thickness, at least 5 mm; fails below once, at least 3 mm
    "LAMINATE, 4, 8, PASS",
    "LAMINATE, 4, 7.999, CAUTION",
    "LAMINATE, 4, 4, CAUTION",
    "LAMINATE, 4, 3.999, FAIL",
    "METAL, 2, 5, PASS",
    "METAL, 2, 4.999, CAUTION",
    "METAL, 2, 3, CAUTION",
    "METAL, 2, 2.999, FAIL",
    // common practice: once the thickness, at least 8 mm; fails below half, at least 4 mm
    "WOOD, 12, 12, PASS",
    "WOOD, 12, 11.999, CAUTION",
    "WOOD, 12, 6, CAUTION",
    "WOOD, 12, 5.999, FAIL",
    "PLASTIC, 2, 6, PASS",
    "PLASTIC, 2, 5.999, CAUTION",
    "PLASTIC, 2, 2.999, FAIL",
  })
  void theNarrowestWebGoesByMaterialAndThickness(
      MaterialKind kind, double thickness, double width, Verdict verdict) {
    Finding finding = web(width).kind(kind).thickness(thickness).first("narrowest-web");
    assertEquals(verdict, finding.verdict());
    assertEquals(width, finding.figure().value(), 1e-6);
    assertEquals("W1 to W2", finding.subject());
    assertEquals(0, finding.at().orElseThrow().x(), 1e-9);
    assertEquals(Wheel.line(12), finding.place());
  }

  @Test
  void everyThinWebIsToldAndTheNarrowestComesFirst() {
    Wheel wheel = web(7).window(WindowUse.OPEN, Contour.circle(new Point(-20, 74), 20));
    List<Finding> findings = wheel.findings("narrowest-web");
    assertEquals(
        List.of("outline to W3", "W1 to W2"), findings.stream().map(Finding::subject).toList());
    assertEquals("1 mm are missing", findings.get(1).advice());
  }

  @Test
  void besideScrewHolesTheEdgeDistanceIsTheMeasureUntilTheWebFails() {
    // 7 mm of web on 4 mm stock is a caution for windows, but these are screw holes.
    Wheel caution =
        new Wheel()
            .hole(HoleRole.BOLT, 140.5, 0, 5)
            .hole(HoleRole.BOLT, -140.5, 0, 5)
            .hole(HoleRole.BOLT, 0, 90.5, 5);
    assertEquals(1, caution.findings("narrowest-web").size(), "only the narrowest");
    Wheel fail = new Wheel().hole(HoleRole.BOLT, 144.5, 0, 5).hole(HoleRole.BOLT, -144.5, 0, 5);
    List<Finding> findings = fail.findings("narrowest-web");
    assertEquals(List.of(FAIL, FAIL), findings.stream().map(Finding::verdict).toList());
  }

  @Test
  void aNeckOfTheOutlineIsAWeb() {
    Contour dumbbell =
        Contour.polygon(
            List.of(
                new Point(-80, -40),
                new Point(-20, -40),
                new Point(-20, -3),
                new Point(20, -3),
                new Point(20, -40),
                new Point(80, -40),
                new Point(80, 40),
                new Point(20, 40),
                new Point(20, 3),
                new Point(-20, 3),
                new Point(-20, 40),
                new Point(-80, 40)));
    Finding finding = new Wheel().outline(dumbbell).first("narrowest-web");
    assertEquals("neck between two parts of outline", finding.subject());
    assertEquals(6, finding.figure().value(), 1e-9);
    assertEquals("2 mm are missing", finding.advice());
    assertEquals("redshank.yaml", finding.place().toString());
  }

  @Test
  void clearOpeningsTellsTheSmallestMargin() {
    Finding finding = web(2.5).first("clear-openings");
    assertEquals(PASS, finding.verdict());
    assertEquals(2.5, finding.figure().value(), 1e-9);
    assertEquals(List.of(), new Wheel().findings("clear-openings"), "a plain plate has none");
  }

  @Test
  void clearOpeningsLooksPastANarrowerNeck() {
    Contour waisted =
        Contour.polygon(
            List.of(
                new Point(-80, -60),
                new Point(0, -4),
                new Point(80, -60),
                new Point(80, 60),
                new Point(0, 4),
                new Point(-80, 60)));
    Wheel wheel = new Wheel().outline(waisted).hole(HoleRole.BORE, 62, 0, 20);
    assertEquals("neck between two parts of outline", wheel.first("narrowest-web").subject());
    assertEquals("outline to H1", wheel.first("clear-openings").subject());
    assertEquals(8, wheel.first("clear-openings").figure().value(), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({
    // geometry: a cutter of radius 3 leaves 3; common practice: 1.1 times that
    "6, 3.3, PASS",
    "6, 3.299, CAUTION",
    "6, 3, CAUTION",
    "6, 2.999, FAIL",
    // common practice: never under 1 mm, whatever the tool
    "0, 1, PASS",
    "0, 0.999, CAUTION",
  })
  void insideCornersOfAWindowMeetTheCutter(double cutter, double radius, Verdict verdict) {
    Finding finding =
        new Wheel().making(cutter, 2, 0).grip(0, 0, 60, 100, radius).first("inside-corner");
    assertEquals(verdict, finding.verdict());
    assertEquals(radius, finding.figure().value(), 1e-9);
    assertEquals("corner of W1", finding.subject());
  }

  @Test
  void aSharpInsideCornerHasRadiusZeroAndIsToldAtEachCorner() {
    Contour square =
        Contour.polygon(
            List.of(new Point(-9, -9), new Point(9, -9), new Point(9, 9), new Point(-9, 9)));
    List<Finding> findings = new Wheel().window(WindowUse.OPEN, square).findings("inside-corner");
    assertEquals(4, findings.size());
    assertEquals("sharp corner of W1", findings.get(0).subject());
    assertEquals(FAIL, findings.get(0).verdict());
    assertEquals(
        "a radius of 3 mm keeps the limit, 3.3 mm is clear of cautions too",
        findings.get(0).advice());
    assertTrue(square.contains(findings.get(0).at().orElseThrow().times(0.99)));
  }

  @Test
  void hollowCornersOfTheOutlineAreInsideCornersAndItsOtherCornersAreNot() {
    Contour notched =
        Contour.polygon(
            List.of(
                new Point(-80, -60),
                new Point(80, -60),
                new Point(80, 60),
                new Point(0, 30),
                new Point(-80, 60)));
    List<Finding> findings = new Wheel().outline(notched).findings("inside-corner");
    assertEquals(1, findings.size());
    assertEquals(new Point(0, 30), findings.get(0).at().orElseThrow());
    assertEquals(4, new Wheel().outline(notched).findings("outer-corner").size());
  }

  @Test
  void outerCornersAreHeldAgainstThreeMillimetres() {
    // common practice: corners that hands touch
    Wheel good = new Wheel().outline(RandomShapes.roundedRectangle(300, 200, 3));
    assertEquals(PASS, good.first("outer-corner").verdict());
    Wheel sharp = new Wheel().outline(RandomShapes.roundedRectangle(300, 200, 2.9));
    assertEquals(CAUTION, sharp.first("outer-corner").verdict());
    assertEquals(4, sharp.findings("outer-corner").size());
  }

  @Test
  void aTongueIntoAGripWindowHasOuterCornersAndOneIntoADisplayIsNotTouched() {
    Contour horseshoe =
        Contour.polygon(
            List.of(
                new Point(-40, -30),
                new Point(40, -30),
                new Point(40, 30),
                new Point(12, 30),
                new Point(12, -5),
                new Point(-12, -5),
                new Point(-12, 30),
                new Point(-40, 30)));
    List<Finding> grip = new Wheel().window(WindowUse.GRIP, horseshoe).findings("outer-corner");
    assertEquals(3, grip.size(), "the outline's rounded one and the tongue's two");
    assertEquals(1, new Wheel().window(WindowUse.OPEN, horseshoe).findings("outer-corner").size());
  }

  @Test
  void aSmoothJointIsNoCorner() {
    Contour round = RandomShapes.roundedRectangle(60, 100, 29).moved(RigidTransform.turn(0.3));
    List<Finding> findings = new Wheel().window(WindowUse.OPEN, round).findings("inside-corner");
    assertEquals(1, findings.size());
    assertEquals(29, findings.get(0).figure().value(), 1e-6);
  }

  /** A round window drawn as chords: each joint turns by 360 degrees over their number. */
  private static Wheel chords(int count) {
    List<Point> corners =
        IntStream.range(0, count).mapToObj(i -> Point.polar(20, 2 * Math.PI * i / count)).toList();
    return new Wheel().window(WindowUse.OPEN, Contour.polygon(corners));
  }

  @Test
  void chordsThatTurnByLessThanTenDegreesAreACurveAndNoCorners() {
    assertTrue(
        chords(37).findings("inside-corner").stream()
            .noneMatch(finding -> finding.subject().endsWith("W1")));
  }

  @Test
  void ofManyCornersAlikeSixAreToldAndTheRestIsCounted() {
    List<Finding> sharp =
        chords(35).findings("inside-corner").stream()
            .filter(finding -> finding.subject().equals("sharp corner of W1"))
            .toList();
    assertEquals(6, sharp.size());
    assertEquals(FAIL, sharp.get(0).verdict());
    assertTrue(sharp.get(0).advice().endsWith("; the same goes for 29 more corners of this edge"));
  }

  @Test
  void aHubHoleIsNotToldToMove() {
    Finding beside =
        new Wheel()
            .hole(HoleRole.BOLT, 0, 35, 8)
            .window(WindowUse.OPEN, Contour.circle(new Point(0, 54), 12))
            .first("narrowest-web");
    assertEquals(
        "1 mm are missing, 5 mm to be clear of cautions too; hub holes stay where the hub has them",
        beside.advice());
    Finding two =
        new Wheel()
            .hole(HoleRole.BOLT, -5, 0, 8)
            .hole(HoleRole.BOLT, 5, 0, 8)
            .first("narrowest-web");
    assertEquals(
        "2 mm are missing, 6 mm to be clear of cautions too; hub holes stay where the hub has them:"
            + " another hub has a wider circle, fewer or smaller screws",
        two.advice());
  }
}
