package felloe.review;

import static felloe.plate.Verdict.CAUTION;
import static felloe.plate.Verdict.FAIL;
import static felloe.plate.Verdict.PASS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.HubCatalogue;
import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each rule about screws just inside its limit and just outside. */
class JointRulesTest {

  private static final String START =
      """
      felloe: 1
      outline:
        four-sided: {width: 300, height: 200, radius: 20}
      bolt-circles:
        - {hub: 6x70-m5, diameter: 5.5}
      holes:
        - {at: [100, 0], diameter: 4.3, role: grip}
        - {at: [-100, 0], diameter: 4.3, role: grip}
      stock: {material: carbon-laminate, thickness: 5}
      making: {grip-scale: 12}
      joints:
        - {holes: grip, screw: {head: socket}}
        - holes: hub
          screw: {head: socket}
      """;

  private static ReviewReport review(String... sets) {
    Plate plate = ShapeFile.parse("knot.yaml", START, Sets.of(sets), HubCatalogue.here());
    HubCatalogue hubs = HubCatalogue.here();
    return Review.of(
        plate,
        JointPlan.of(plate, plate.hub().map(name -> hubs.spec(name, Place.BUILT_IN))),
        List.of());
  }

  private static Finding first(String rule, String... sets) {
    return review(sets).of(rule).get(0);
  }

  private static void is(Verdict verdict, String rule, String... sets) {
    Finding finding = first(rule, sets);
    assertEquals(verdict, finding.verdict(), finding.toString());
    assertEquals(verdict == PASS, finding.advice().isEmpty());
  }

  @Test
  void aHeadOrWasherKeepsOneMillimetreFromEveryEdge() {
    // The plain washer of M4 (ISO 7089, from memory) is 9 mm wide; the edge lies at x = 150.
    is(PASS, "head-clearance", "holes[0].at=[144.5, 0]");
    is(CAUTION, "head-clearance", "holes[0].at=[144.51, 0]");
    is(CAUTION, "head-clearance", "holes[0].at=[145.5, 0]");
    is(FAIL, "head-clearance", "holes[0].at=[145.51, 0]");
    Finding over = first("head-clearance", "holes[0].at=[145.6, 0]");
    assertEquals("G1 washer to outline", over.subject());
    assertEquals(-0.1, over.figure().value(), 1e-9);
    assertEquals(
        "it is 9 mm wide; 0.1 mm are missing, 1.1 mm to be clear of cautions too", over.advice());
    // A window and a bore are edges too.
    is(FAIL, "head-clearance", "bore=61");
    assertEquals("H1 washer to B", first("head-clearance", "bore=61").subject());
    // The wider washer on the back counts.
    is(
        FAIL,
        "head-clearance",
        "holes[0].at=[144.5, 0]",
        "joints[0].into={nut: plain, washer: large}");
    // A head without a washer: 7.22 mm knurled (ISO 4762, reprint, verified).
    is(
        PASS,
        "head-clearance",
        "holes[0].at=[145.39, 0]",
        "joints[0].washer=none",
        "joints[0].into={nut: plain, washer: none}",
        "holes[0].at=[145.17, 0]");
  }

  @Test
  void neighboursKeepOneMillimetreApart() {
    is(PASS, "head-spacing", "holes[1].at=[100, 10]");
    is(CAUTION, "head-spacing", "holes[1].at=[100, 9.99]");
    is(CAUTION, "head-spacing", "holes[1].at=[100, 9]");
    is(FAIL, "head-spacing", "holes[1].at=[100, 8.99]");
    assertEquals("G1 to G2", first("head-spacing", "holes[1].at=[100, 8]").subject());
    // A nut of the one and a head of the other lie on different faces.
    is(
        PASS,
        "head-spacing",
        "joints[1].washer=none",
        "joints[0].into={nut: plain, washer: large}",
        "holes[0].at=[44.9, 0]",
        "bolt-circles[0].first=0");
  }

  @Test
  void aCountersinkLeavesAThirdOfThePart() {
    // M5 in a hole of 5.5 mm: (11.2 - 5.5) / 2 = 2.85 mm deep (sharp diameter verified).
    is(PASS, "countersink-land", "joints[1].screw.head=countersunk", "stock.thickness=4.28");
    is(CAUTION, "countersink-land", "joints[1].screw.head=countersunk", "stock.thickness=4.27");
    is(CAUTION, "countersink-land", "joints[1].screw.head=countersunk", "stock.thickness=3.17");
    Finding knife =
        first("countersink-land", "joints[1].screw.head=countersunk", "stock.thickness=3.16");
    assertEquals(FAIL, knife.verdict());
    assertEquals((3.16 - 2.85) / 3.16, knife.figure().value(), 1e-6);
    assertEquals("the cone goes 2.85 mm deep into 3.16 mm", knife.advice());
    // In a grip scale the scale counts, not the plate.
    is(PASS, "countersink-land", "joints[0].screw.head=countersunk", "stock.thickness=2");
    assertEquals(List.of(), review().of("countersink-land"));
  }

  @Test
  void threadEngagementIsThatOfTheTappedMaterial() {
    // Washer 1 mm and plate 5 mm: a screw of 6 + 7.5 mm holds 1.5 d.
    String into = "joints[1].into={tapped: aluminium, depth: 20}";
    is(PASS, "thread-engagement", into, "joints[1].screw.length=13.5");
    is(CAUTION, "thread-engagement", into, "joints[1].screw.length=13.49");
    is(CAUTION, "thread-engagement", into, "joints[1].screw.length=10");
    is(FAIL, "thread-engagement", into, "joints[1].screw.length=9.99");
    String steel = "joints[1].into={tapped: steel, depth: 20}";
    is(PASS, "thread-engagement", steel, "joints[1].screw.length=11");
    is(CAUTION, "thread-engagement", steel, "joints[1].screw.length=10.99");
    String plastic = "joints[1].into={tapped: plastic, depth: 20}";
    is(PASS, "thread-engagement", plastic, "joints[1].screw.length=16");
    is(CAUTION, "thread-engagement", plastic, "joints[1].screw.length=15.99");
    String insert = "joints[1].into={tapped: insert, depth: 20}";
    is(PASS, "thread-engagement", insert, "joints[1].screw.length=11");
    is(CAUTION, "thread-engagement", insert, "joints[1].screw.length=10.99");
  }

  @Test
  void aTappedDepthLessThanTheEngagementIsToldAtItsPlace() {
    Finding shallow = first("thread-engagement", "joints[1].into={tapped: aluminium, depth: 6}");
    // 12 mm would bottom nearly; 10 mm holds 4 mm: 0.8 d.
    assertEquals(CAUTION, shallow.verdict());
    assertEquals("--set joints[1].into", shallow.place().toString());
    assertEquals(0.8, shallow.figure().value(), 1e-9);
    is(FAIL, "thread-engagement", "joints[1].into={tapped: aluminium, depth: 4}");
  }

  @Test
  void aScrewKeepsATurnFromTheBottom() {
    // 16 mm through 6 mm reach 10 mm deep; pitch 0.8 mm.
    String length = "joints[1].screw.length=16";
    is(PASS, "screw-bottoms", length, "joints[1].into={tapped: aluminium, depth: 10.8}");
    is(CAUTION, "screw-bottoms", length, "joints[1].into={tapped: aluminium, depth: 10.79}");
    is(CAUTION, "screw-bottoms", length, "joints[1].into={tapped: aluminium, depth: 10}");
    is(FAIL, "screw-bottoms", length, "joints[1].into={tapped: aluminium, depth: 9.99}");
    assertEquals(
        List.of(),
        review(length, "joints[1].into={tapped: aluminium, depth: 5, through: true}")
            .of("screw-bottoms"));
    // The program's own choice of length never bottoms while any length fits.
    for (int depth = 4; depth <= 30; depth++) {
      is(PASS, "screw-bottoms", "joints[1].into={tapped: aluminium, depth: " + depth + "}");
    }
  }

  @Test
  void aScrewStandsOneToThreeThreadsOutOfItsNut() {
    // 29 mm of scales and plate, two washers of 0.8 mm, a nut of 3.2 mm; pitch 0.7 mm.
    String nut = "joints[0].into={nut: plain, washer: plain}";
    is(PASS, "screw-end-least", nut, "joints[0].screw.length=34.5");
    is(CAUTION, "screw-end-least", nut, "joints[0].screw.length=34.49");
    is(CAUTION, "screw-end-least", nut, "joints[0].screw.length=33.8");
    is(FAIL, "screw-end-least", nut, "joints[0].screw.length=33.79");
    is(PASS, "screw-end-most", nut, "joints[0].screw.length=35.9");
    is(CAUTION, "screw-end-most", nut, "joints[0].screw.length=35.91");
  }

  @Test
  void whatStandsIsHeldAgainstWhatActsWithAllFactors() {
    // Ultimate 1.5 (14 CFR 25.303) and fitting 1.15 (25.625): 1.725. 279 MPa (carbon cloth,
    // verified) on 5 x 5 mm: 6975 N, over 1.725 4043.4 N, six of them 24260 N.
    String calm = "joints[1].loads={torque: 0, push: 0, pull: ";
    isHub(PASS, "bearing", calm + "24260}");
    isHub(FAIL, "bearing", calm + "24262}");
    // 49 MPa on 2 x 32.5 x 5 mm beside a bore of 5 mm: six times 15925 / 1.725 N.
    isHub(PASS, "shear-out", calm + "55390}", "bore=5");
    isHub(FAIL, "shear-out", calm + "55393}", "bore=5");
    // 147 MPa on 29.5 x 5 mm between two holes: six times 21682.5 / 1.725 N.
    isHub(PASS, "net-section", calm + "75416}");
    isHub(FAIL, "net-section", calm + "75419}");
    // 0.6 x 800 MPa on a stress area of 14.183 mm2: six times 6807.8 / 1.725 N.
    isHub(PASS, "screw-strength", calm + "23675}");
    isHub(FAIL, "screw-strength", calm + "23683}");
    assertEquals(
        "it takes 345 of 279 MPa (torque and pull of the shape file, times 1.725); thicker stock,"
            + " larger or more screws, or a wider circle stand more",
        hub("bearing", calm + "30000}").advice());
  }

  private static Finding hub(String rule, String... sets) {
    return review(sets).of(rule).stream()
        .filter(f -> f.subject().startsWith("H"))
        .findFirst()
        .orElseThrow();
  }

  private static void isHub(Verdict verdict, String rule, String... sets) {
    Finding finding = hub(rule, sets);
    assertEquals(verdict, finding.verdict(), finding.toString());
    assertEquals(verdict == PASS, finding.advice().isEmpty());
  }

  @Test
  void aCountersinkTakesItsConeFromTheBearing() {
    // 90 degrees from 11.2 mm to a hole of 5.5 mm: 2.85 mm of 5 mm are cone.
    double flat = hub("bearing", "joints[1].screw.head=socket").figure().value();
    double cone = hub("bearing", "joints[1].screw.head=countersunk").figure().value();
    assertEquals(flat * (5 - 2.85) / 5, cone, 1e-5 * flat);
  }

  @Test
  void whatIsLeftOfTheClampForceOutlastsThePullWithPrying() {
    // Clamp 100 MPa on the ring of 10 round 5.5 mm, least of it 17/22, half of that kept; pull
    // 1.5 x (P/6 + 2 P r / (6 x 35)) with the fitting factor 1.15.
    double clamp = 100 * Math.PI / 4 * (100 - 5.5 * 5.5) * 17 / 22 * 0.5;
    double reach = Math.hypot(130, 80) + 20;
    double push = clamp / 1.15 / 1.5 / (1 / 6.0 + 2 * reach / 210);
    int least = (int) Math.floor(push);
    isHub(PASS, "clamp-force", "joints[1].loads={push: " + least + "}");
    isHub(FAIL, "clamp-force", "joints[1].loads={push: " + (least + 1) + "}");
    assertEquals(List.of(), review("joints[1].loads={push: 0}").of("clamp-force"));
    // A mock-up is not driven.
    isHub(CAUTION, "clamp-force", "stock.material=birch-plywood");
  }

  @Test
  void frictionHoldsAQuarterMoreThanTheShare() {
    // Clamp as above with K in the middle, 17/19.5; friction 0.2; torque over six screws at 35 mm.
    double clamp = 100 * Math.PI / 4 * (100 - 5.5 * 5.5) * 17 / 19.5 * 0.5;
    double most = 0.2 * clamp / 1.25 * 6 * 35 / 1000;
    String calm = "joints[1].loads={pull: 0, push: 0, torque: ";
    isHub(PASS, "slip", calm + Math.floor(most * 100) / 100 + "}");
    isHub(FAIL, "slip", calm + Math.ceil(most * 100) / 100 + "}");
  }

  @Test
  void aDepthOfThreadThatWasNotMeasuredIsNeverAPass() {
    isHub(CAUTION, "thread-strip", "joints[1].into={tapped: aluminium}");
    isHub(PASS, "thread-strip", "joints[1].into={tapped: aluminium, depth: 14}");
    isHub(CAUTION, "thread-strip", "joints[1].into={tapped: insert, depth: 14}");
    // Six turns of plastic do not hold an M5.
    isHub(FAIL, "thread-strip", "joints[1].into={tapped: plastic, depth: 6}");
  }

  @Test
  void screwsThatHoldNothingByThemselvesAreNotPassedOverInSilence() {
    String none = "joints=[]";
    String two = "bolt-circles=[{count: 2, pcd: 70, diameter: 5.5}]";
    Finding line = first("clamp-force", two, none);
    assertEquals(CAUTION, line.verdict());
    assertEquals(0, line.figure().value());
    assertTrue(line.advice().startsWith("hub screws on one line hold"), line.advice());
    String one = "holes[2]={at: [0, 0], diameter: 5.5, role: bolt}";
    Finding alone = first("clamp-force", "bolt-circles=[]", one, none);
    assertEquals(CAUTION, alone.verdict());
    assertTrue(alone.advice().startsWith("one hub screw holds"), alone.advice());
  }

  @Test
  void aLimitOfTheShapeFileTakesThePlaceOfTheRules() {
    Finding finding =
        first("head-clearance", "holes[0].at=[144.6, 0]", "limits={head-clearance: 0.5}");
    assertEquals(PASS, finding.verdict());
    assertTrue(finding.limit().orElseThrow().overridden());
  }

  @Test
  void findingsPointAtWhatTheMakerWrote() {
    Finding finding = first("screw-end-most", "joints[0].screw.length=60");
    assertEquals("--set joints[0].screw.length", finding.place().toString());
    assertEquals("grip M4 x 60", finding.subject());
    assertEquals(
        "knot.yaml:12:5", first("head-clearance", "holes[0].at=[147, 0]").place().toString());
  }

  @Test
  void aPlateWithoutScrewsHasNothingToSay() {
    ReviewReport report = new Wheel().review();
    for (JointRule rule : JointRule.values()) {
      assertEquals(List.of(), report.of(rule.id()));
    }
  }
}
