package felloe.review;

import static felloe.plate.Verdict.CAUTION;
import static felloe.plate.Verdict.FAIL;
import static felloe.plate.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.HoleRole;
import felloe.plate.MaterialKind;
import felloe.plate.Verdict;
import felloe.plate.WindowUse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HoleRulesTest {

  /** A bolt hole of 5 mm at a distance from the right edge, x = 150. */
  private static Finding boltFromEdge(MaterialKind kind, double distance) {
    return new Wheel().kind(kind).hole(HoleRole.BOLT, 150 - distance, 0, 5).first("edge-distance");
  }

  @ParameterizedTest
  @CsvSource({
    // MIL-HDBK-17-3F (from memory): e/D at least 3 in laminate
    "LAMINATE, 15, PASS",
    "LAMINATE, 14.999, CAUTION",
    // FAA AC 43.13-1B ch. 4 (as quoted): at least 2 D in metal
    "METAL, 10, PASS",
    "METAL, 9.999, CAUTION",
    // EN 1995-1-1 table 8.4 (from memory): up to 4 d at a loaded edge
    "WOOD, 20, PASS",
    "WOOD, 19.999, CAUTION",
    // common practice
    "PLASTIC, 15, PASS",
    "PLASTIC, 14.999, CAUTION",
    // common practice: one hole diameter of material, in every kind
    "LAMINATE, 7.5, CAUTION",
    "LAMINATE, 7.499, FAIL",
    "METAL, 7.499, FAIL",
    "WOOD, 7.499, FAIL",
    "PLASTIC, 7.499, FAIL",
  })
  void edgeDistanceOfABoltHoleDependsOnTheMaterial(
      MaterialKind kind, double distance, Verdict verdict) {
    Finding finding = boltFromEdge(kind, distance);
    assertEquals(verdict, finding.verdict());
    assertEquals(distance / 5, finding.figure().value(), 1e-6);
    assertEquals("H1 to outline", finding.subject());
    assertEquals(new Point(150 - distance, 0), finding.at().orElseThrow());
    assertEquals(Wheel.line(21), finding.place());
  }

  @Test
  void theAdviceSaysWhatKeepsTheLimit() {
    assertEquals(
        "its centre lies 12.5 mm from the edge; 15 mm keeps the limit",
        boltFromEdge(MaterialKind.LAMINATE, 12.5).advice());
    assertEquals(
        "its centre lies 7 mm from the edge; 7.5 mm keeps the limit, 15 mm is clear of cautions"
            + " too",
        boltFromEdge(MaterialKind.LAMINATE, 7).advice());
    assertEquals("", boltFromEdge(MaterialKind.LAMINATE, 15).advice());
  }

  @Test
  void anM5HoleOf5Point5InLaminateWantsItsCentre16Point5FromTheEdge() {
    // MIL-HDBK-17-3F ch. 6 (from memory), worked for M5 in a 5.5 mm hole
    Wheel good = new Wheel().hole(HoleRole.BOLT, 150 - 16.5, 0, 5.5);
    assertEquals(PASS, good.first("edge-distance").verdict());
    Wheel bad = new Wheel().hole(HoleRole.BOLT, 150 - 16.4, 0, 5.5);
    assertEquals(CAUTION, bad.first("edge-distance").verdict());
  }

  @Test
  void gripScrewsAndSmallHolesAreHeldAgainstTheLightLimits() {
    for (HoleRole role : List.of(HoleRole.GRIP, HoleRole.OTHER)) {
      assertEquals(
          PASS, new Wheel().hole(role, 142, 0, 4).first("edge-distance").verdict(), "" + role);
      assertEquals(CAUTION, new Wheel().hole(role, 142.01, 0, 4).first("edge-distance").verdict());
      assertEquals(FAIL, new Wheel().hole(role, 144.01, 0, 4).first("edge-distance").verdict());
    }
  }

  @Test
  void theBoreAndWideHolesAreEdgesAndTakeNoFastener() {
    // Six on 70 with 5 mm holes round a bore of 50: 10 mm from centre to bore, e/D 2.
    Wheel wheel = new Wheel().hole(HoleRole.BOLT, 35, 0, 5).hole(HoleRole.BORE, 0, 0, 50);
    List<Finding> findings = wheel.findings("edge-distance");
    assertEquals(1, findings.size());
    assertEquals("H1 to H2", findings.get(0).subject());
    assertEquals(2, findings.get(0).figure().value(), 1e-9);
    assertEquals(CAUTION, findings.get(0).verdict());
    assertEquals(List.of(), new Wheel().hole(HoleRole.OTHER, 0, 0, 12.5).findings("edge-distance"));
    assertEquals(1, new Wheel().hole(HoleRole.OTHER, 0, 0, 12).findings("edge-distance").size());
  }

  @Test
  void windowsAreEdgesAndEveryOneBeyondTheLimitIsTold() {
    Wheel wheel =
        new Wheel()
            .window(WindowUse.OPEN, Contour.circle(new Point(-30, 0), 20))
            .window(WindowUse.OPEN, Contour.circle(new Point(34, 0), 20))
            .hole(HoleRole.BOLT, 0, 0, 5)
            .hole(HoleRole.BOLT, 0, 70, 5);
    List<Finding> findings = wheel.findings("edge-distance");
    assertEquals(
        List.of("H1 to W1", "H1 to W2", "H2 to outline"),
        findings.stream().map(Finding::subject).toList());
    assertEquals(2.0, findings.get(0).figure().value(), 1e-9);
    assertEquals(2.8, findings.get(1).figure().value(), 1e-9);
    assertEquals(PASS, findings.get(2).verdict());
  }

  @ParameterizedTest
  @CsvSource({
    // MIL-HDBK-17-3F (from memory): p/D at least 4 in laminate
    "LAMINATE, BOLT, 20, PASS",
    "LAMINATE, BOLT, 19.999, CAUTION",
    // FAA AC 43.13-1B ch. 4 (as quoted): at least 3 D in metal
    "METAL, BOLT, 15, PASS",
    "METAL, BOLT, 14.999, CAUTION",
    // EN 1995-1-1 table 8.4 (from memory): 4 d
    "WOOD, BOLT, 20, PASS",
    "WOOD, BOLT, 19.999, CAUTION",
    "PLASTIC, BOLT, 19.999, CAUTION",
    // common practice
    "LAMINATE, GRIP, 15, PASS",
    "LAMINATE, GRIP, 14.999, CAUTION",
    "LAMINATE, BOLT, 10, CAUTION",
    "LAMINATE, BOLT, 9.999, FAIL",
    "METAL, GRIP, 9.999, FAIL",
  })
  void pitchDependsOnMaterialAndRole(
      MaterialKind kind, HoleRole role, double pitch, Verdict verdict) {
    Finding finding =
        new Wheel().kind(kind).hole(role, 0, 0, 5).hole(role, pitch, 0, 5).first("hole-pitch");
    assertEquals(verdict, finding.verdict());
    assertEquals(pitch / 5, finding.figure().value(), 1e-6);
    assertEquals(new Point(pitch / 2, 0), finding.at().orElseThrow());
  }

  @Test
  void sixOnSeventyIsSevenDiametersApart() {
    // chord = PCD sin(pi/n) = 35 mm; 35 / 5 = 7
    Wheel wheel = new Wheel();
    for (int i = 0; i < 6; i++) {
      Point p = Point.polar(35, Math.PI / 3 * i);
      wheel.hole(HoleRole.BOLT, p.x(), p.y(), 5);
    }
    List<Finding> findings = wheel.findings("hole-pitch");
    assertEquals(1, findings.size(), "one for a ring of even pitch");
    assertEquals(7, findings.get(0).figure().value(), 1e-6);
    assertEquals("H1 to H2", findings.get(0).subject());
  }

  @Test
  void pitchGoesByTheLargerHoleAndABoltNeedsItsRoomFromAnyHole() {
    Finding finding =
        new Wheel().hole(HoleRole.GRIP, 0, 0, 6).hole(HoleRole.BOLT, 21, 0, 5).first("hole-pitch");
    assertEquals(3.5, finding.figure().value(), 1e-9);
    assertEquals(CAUTION, finding.verdict());
    assertTrue(finding.limit().orElseThrow().source().contains("MIL-HDBK-17-3F"));
  }

  @Test
  void everyPairBeyondTheLimitIsToldAndTheBoreIsNone() {
    List<Finding> findings =
        new Wheel()
            .hole(HoleRole.BORE, 0, 40, 20)
            .hole(HoleRole.GRIP, 0, 0, 5)
            .hole(HoleRole.GRIP, 12, 0, 5)
            .hole(HoleRole.GRIP, 24, 0, 5)
            .findings("hole-pitch");
    assertEquals(List.of("H2 to H3", "H3 to H4"), findings.stream().map(Finding::subject).toList());
  }
}
