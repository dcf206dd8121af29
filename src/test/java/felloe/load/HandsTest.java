package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where hands hold, what a fall comes to, what screws share. */
class HandsTest {

  private static final Region RING =
      new Region(Contour.circle(Point.ORIGIN, 150), List.of(Contour.circle(Point.ORIGIN, 120)));

  @Test
  void aHandHoldsTheMiddleOfTheRim() {
    for (int degrees = 0; degrees < 360; degrees += 7) {
      Point at = HandPlace.on(RING, Math.toRadians(degrees), 40).orElseThrow();
      assertEquals(135, at.norm(), 1e-9);
      assertEquals(0, at.cross(Point.polar(1, Math.toRadians(degrees))), 1e-9);
    }
  }

  @Test
  void whereTheRimIsWiderItHoldsItsOuterPart() {
    Region disc = Region.of(Contour.circle(Point.ORIGIN, 150));
    Point at = HandPlace.on(disc, 0, 35).orElseThrow();
    assertEquals(132.5, at.x(), 1e-9);
  }

  @Test
  void whereARayMeetsNoMaterialThereIsNothingToHold() {
    Region besides =
        Region.of(
            Contour.polygon(
                List.of(
                    new Point(20, -10), new Point(90, -10), new Point(90, 10), new Point(20, 10))));
    assertTrue(HandPlace.on(besides, Math.PI / 2, 35).isEmpty());
    assertEquals(72.5, HandPlace.on(besides, 0, 35).orElseThrow().x(), 1e-9);
    // A ray that runs along an edge of the outline meets its corners and no material.
    assertTrue(HandPlace.on(besides, Math.PI, 35).isEmpty());
  }

  @Test
  void aRayThroughACornerFindsTheSameRim() {
    Region square =
        new Region(
            Contour.polygon(
                List.of(
                    new Point(100, 100),
                    new Point(-100, 100),
                    new Point(-100, -100),
                    new Point(100, -100))),
            List.of(
                Contour.polygon(
                    List.of(
                        new Point(80, 80),
                        new Point(-80, 80),
                        new Point(-80, -80),
                        new Point(80, -80)))));
    Point at = HandPlace.on(square, Math.PI / 4, 35).orElseThrow();
    assertEquals(90, at.x(), 1e-9);
    assertEquals(90, at.y(), 1e-9);
  }

  /** Energy: what the weight does on height and deflection is what the spring holds. */
  @Test
  void aFallGivesItsEnergyToThePlate() {
    Fall fall = new Fall(300, 0.5);
    double felt = 1 / (1 / 0.9 + 120.0 * 120 / 2000);
    double force = fall.force(0.4, 2000, 120, 90);
    double deflection = force / 90;
    double weight = felt * 9.80665;
    assertEquals(weight * (300 + deflection), force * deflection / 2, 1e-9 * force);
    // Dropped from no height it is the textbooks' suddenly applied load: twice the weight.
    assertEquals(2 * weight, new Fall(0, 0.5).force(0.4, 2000, 120, 90), 1e-9);
  }

  @Test
  void sharedBoltsBalanceTheHub() {
    Random random = new Random(20);
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      Point at = Point.polar(35, 2 * Math.PI * i / 5 + random.nextDouble() / 5);
      holes.add(new Hole("H" + (i + 1), HoleRole.BOLT, at, 5.5, Place.BUILT_IN));
    }
    // A pull along z at the holes' middle pulls all alike, whatever the seed 20 moved.
    Point c = new felloe.joints.BoltGroup(holes.stream().map(Hole::centre).toList()).centroid();
    CaseField.HubForce hub = new CaseField.HubForce(0, 0, -500, -500 * c.y(), 500 * c.x(), 0);
    for (CaseField.BoltForce bolt : SharedBolts.of(holes, hub)) {
      assertEquals(100, bolt.tension(), 1e-9);
      assertEquals(0, bolt.shear(), 1e-9);
    }
  }

  /** Handbooks: a moment M on six screws at radius r pulls the farthest with 2 M / 6 r. */
  @Test
  void aTiltPullsTheFarthestScrewAsTheHandbooksSay() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      holes.add(
          new Hole(
              "H" + (i + 1), HoleRole.BOLT, Point.polar(35, i * Math.PI / 3), 5, Place.BUILT_IN));
    }
    // 400 N toward the driver at (140, 0); the hub balances it.
    CaseField.HubForce hub = new CaseField.HubForce(0, 0, -400, 0, 140 * 400, 0);
    List<CaseField.BoltForce> bolts = SharedBolts.of(holes, hub);
    assertEquals(400 / 6.0 + 2 * 140 * 400 / (6 * 35.0), bolts.get(0).tension(), 1e-9);
    assertEquals(0, bolts.get(3).tension(), 1e-9);
    // 60 N m about the axis: each screw bears T / 6 r.
    CaseField.HubForce turn = new CaseField.HubForce(0, 0, 0, 0, 0, -60_000);
    assertEquals(60_000 / (6 * 35.0), SharedBolts.of(holes, turn).get(2).shear(), 1e-9);
  }

  @Test
  void everyUsualCaseIsReadWithItsBasis() {
    CaseBook book = CaseBook.builtIn();
    assertEquals(List.of("rule", "top", "fall", "hands", "transport"), book.sets());
    for (CaseBook.Usual usual : book.cases()) {
      boolean softer = List.of("hands", "transport").contains(usual.set());
      assertEquals(!softer, book.judged(usual), usual.name());
      assertTrue(
          usual.basis().startsWith("from memory")
              || usual.basis().startsWith("common practice")
              || usual.basis().startsWith("14 CFR "),
          usual.basis());
    }
    for (felloe.plate.MaterialKind kind : felloe.plate.MaterialKind.values()) {
      assertTrue(book.factor(kind, false).value() >= 1.3);
    }
  }

  /** 14 CFR 23.397 and 25.397: 100 lbf on one grip, 200 and 300 lbf both, 50 and 80 D in lb. */
  @Test
  void theForcesOfTheRulesAreThoseOfThePublishedTables() {
    double pound = 4.4482216;
    Map<String, CaseBook.Usual> cases = new HashMap<>();
    CaseBook.builtIn().cases().forEach(c -> cases.put(c.name(), c));
    assertEquals(100 * pound, cases.get("pull").hands().get(0).z(), 0.05);
    assertEquals(-100 * pound, cases.get("push").hands().get(0).z(), 0.05);
    for (String both : List.of("haul", "brace")) {
      double sum = cases.get(both).hands().stream().mapToDouble(CaseBook.Hand::z).sum();
      assertEquals(200 * pound, Math.abs(sum), 0.1);
      double more =
          cases.get("transport-" + both).hands().stream().mapToDouble(CaseBook.Hand::z).sum();
      assertEquals(300 * pound, Math.abs(more), 0.1);
    }
    // in lb over inches of diameter is a force.
    assertEquals(50 * pound, cases.get("turn").turn().orElseThrow(), 0.05);
    assertEquals(80 * pound, cases.get("transport-turn").turn().orElseThrow(), 0.1);
    assertEquals(62.5 * pound, cases.get("turn-one").hands().get(0).y(), 0.05);
  }
}
