package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class LoadStudyTest {

  private static final double A = 150;
  private static final PlateSection ALUMINIUM = PlateSection.isotropic(70_000, 0.3, 5, 240);

  /** The same without any give in shear, as the closed forms of thin plates have it. */
  private static final PlateSection THIN =
      new PlateSection(
          5, ALUMINIUM.a(), ALUMINIUM.d(), 1e12, ALUMINIUM.strength(), ALUMINIUM.notes());

  private static final Region RING =
      new Region(Contour.circle(Point.ORIGIN, A), List.of(Contour.circle(Point.ORIGIN, 45)));

  private static LoadCase pull(double x, double y, double z) {
    HandForce force = new HandForce(new Point(A, 0), x, y, z);
    return new LoadCase("pull", "pull", List.of(force), 0, "for the test");
  }

  private static LoadResult reckon(Region region, Support support, LoadCase... cases) {
    return reckon(region, ALUMINIUM, support, cases);
  }

  private static LoadResult reckon(
      Region region, PlateSection section, Support support, LoadCase... cases) {
    return new LoadStudy(region, section, support, List.of(cases)).reckon(LoadStudy.Patience.USUAL);
  }

  /** Closed form by Fourier sum, n = 0 to 400: w = 0.12645 P a^2 / D at b/a 0.3. */
  @Test
  void aRingPulledAtItsRimGivesTheClosedFormAndSaysThatItSettled() {
    LoadResult result = reckon(RING, THIN, new Support.Clamped(90), pull(0, 0, 400));
    CaseField field = result.cases().get(0);
    double exact = 0.12645 * 400 * A * A / ALUMINIUM.d().m11();
    assertEquals(exact, field.atLoad(), 0.005 * exact);
    assertEquals(field.atLoad(), field.peakDeflection(), 0.001 * exact);
    assertTrue(result.settled());
    // Hub moment beside the load 1.2349 P, so the face is stressed by 6 M / t^2; along a clamped
    // edge the other stress is nu times that.
    double across = 6 * 1.2349 * 400 / 25;
    double mises = across * Math.sqrt(1 - 0.3 + 0.09);
    assertEquals(mises, field.worst().stress(), 0.03 * mises);
    assertEquals(45, field.worstAt().norm(), 1e-6);
    assertEquals(2.5, Math.abs(field.worst().z()), 1e-9);
  }

  /** The board starts anew on each change: what is no longer asked for must not hold it back. */
  @Test
  void aStudyThatIsToldToStopStops() {
    Thread.currentThread().interrupt();
    assertThrows(
        CancellationException.class, () -> reckon(RING, new Support.Clamped(90), pull(0, 0, 1)));
    assertTrue(Thread.interrupted());
  }

  /** Two opposite forces, +P and -P: K 0.12706 at b/a 0.3, by odd harmonics of the same sum. */
  @Test
  void pushAndPullOnOppositeSides() {
    LoadCase both =
        new LoadCase(
            "both",
            "both",
            List.of(
                new HandForce(new Point(A, 0), 0, 0, 300),
                new HandForce(new Point(-A, 0), 0, 0, -300)),
            0,
            "for the test");
    CaseField field = reckon(RING, THIN, new Support.Clamped(90), both).cases().get(0);
    double exact = 0.12706 * 300 * A * A / ALUMINIUM.d().m11();
    assertEquals(exact, field.atLoads().get(0), 0.005 * exact);
    assertEquals(exact, field.atLoads().get(1), 0.005 * exact);
    assertEquals(2 * 300 * A, field.hub().tiltY(), 1e-6);
    assertEquals(0, field.hub().z(), 1e-9);
  }

  /** A ring turned at its rim: pure shear, so the rim turns by T / (4 pi G t) (1/b^2 - 1/a^2). */
  @Test
  void aRingTurnedAtItsRimTwistsInItsPlane() {
    int hands = 36;
    List<HandForce> forces = new ArrayList<>();
    for (int i = 0; i < hands; i++) {
      double angle = 2 * Math.PI * i / hands;
      Point at = Point.polar(A, angle);
      forces.add(new HandForce(at, -10 * Math.sin(angle), 10 * Math.cos(angle), 0));
    }
    LoadCase turn = new LoadCase("turn", "turn", forces, 20, "for the test");
    // The patch must lie on the plate in the main: forces 10 mm inside the rim.
    List<HandForce> inside =
        forces.stream().map(f -> new HandForce(f.at().times(140 / A), f.x(), f.y(), 0)).toList();
    LoadCase inner = new LoadCase("turn", turn.title(), inside, 20, turn.basis());
    CaseField field = reckon(RING, new Support.Clamped(90), inner).cases().get(0);
    double torque = 140.0 * 10 * hands;
    assertEquals(-torque, field.hub().torque(), 1e-6 * torque);
    double g = 70_000 / 2.6;
    double turned = torque / (4 * Math.PI * g * 5) * (1 / (45.0 * 45) - 1 / (140.0 * 140));
    assertEquals(140 * turned, field.atLoad(), 0.03 * 140 * turned);
  }

  /**
   * A force at a point has no image on the mesh, since it needs a node of its own: the same force a
   * sixth of a turn on is reckoned on a mesh of its own, and must say the same.
   */
  @Test
  void aForceAtAPointSaysTheSameOneScrewFurtherOn() {
    List<Support.Bolt> bolts = sixScrews();
    Region disc = disc(bolts);
    Support hub = new Support.Bolted(bolts, 84);
    CaseField here = reckon(disc, hub, pointPull(0)).cases().get(0);
    CaseField there = reckon(disc, hub, pointPull(Math.PI / 3)).cases().get(0);
    assertEquals(here.atLoad(), there.atLoad(), 0.01 * here.atLoad());
    double most =
        here.bolts().stream().mapToDouble(CaseField.BoltForce::tension).max().orElseThrow();
    for (int b = 0; b < 6; b++) {
      double tension = there.bolts().get((b + 1) % 6).tension();
      assertEquals(here.bolts().get(b).tension(), tension, 0.05 * most, "screw " + b);
    }
  }

  private static List<Support.Bolt> sixScrews() {
    List<Support.Bolt> bolts = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      bolts.add(new Support.Bolt("H" + (i + 1), Point.polar(35, Math.PI / 3 * i), 10));
    }
    return bolts;
  }

  private static Region disc(List<Support.Bolt> bolts) {
    return new Region(
        Contour.circle(Point.ORIGIN, A),
        bolts.stream().map(b -> Contour.circle(b.at(), 2.75)).toList());
  }

  private static LoadCase pointPull(double angle) {
    HandForce force = new HandForce(Point.polar(130, angle), 0, 0, 300);
    return new LoadCase("point", "at a point", List.of(force), 0, "for the test");
  }

  @Test
  void forcesAddUp() {
    Support hub = new Support.Clamped(90);
    double one = reckon(RING, hub, pull(0, 0, 100)).cases().get(0).atLoad();
    double four = reckon(RING, hub, pull(0, 0, 400)).cases().get(0).atLoad();
    assertEquals(4 * one, four, 1e-9 * four);
  }

  @Test
  void boltsAndAFaceGiveMoreThanAClampAndBalanceTheHands() {
    List<Support.Bolt> bolts = sixScrews();
    Region disc = disc(bolts);
    LoadCase hand =
        new LoadCase(
            "hand",
            "hand",
            List.of(new HandForce(new Point(130, 0), 0, 150, 300)),
            40,
            "for the test");
    CaseField clamped = reckon(disc, new Support.Clamped(84), hand).cases().get(0);
    CaseField bolted = reckon(disc, new Support.Bolted(bolts, 84), hand).cases().get(0);
    assertTrue(bolted.atLoad() > clamped.atLoad());
    assertEquals(6, bolted.bolts().size());
    // The bolts pull at least as hard as the hand does.
    double pulls = bolted.bolts().stream().mapToDouble(CaseField.BoltForce::tension).sum();
    assertTrue(pulls >= 300, "pulls " + pulls);
    double shear = bolted.bolts().stream().mapToDouble(CaseField.BoltForce::shear).sum();
    assertTrue(shear >= 150, "shear " + shear);
    // Spacers that reach no farther out than the face.
    Support spacers = Support.Bolted.onSpacers(bolts, 12);
    CaseField between = reckon(disc, spacers, hand).cases().get(0);
    assertTrue(between.atLoad() > bolted.atLoad(), "spacers leave the plate free between them");
  }

  @Test
  void theFacePushesWhereThePlateWouldSinkIntoItAndNowhereElse() {
    // A rod on springs: deflections by unit pushes at three places, symmetric, positive definite.
    double[][] by = {{2, 0.5, 0.1}, {0.5, 1, 0.3}, {0.1, 0.3, 3}};
    double[] free = {-1, 0.2, 0.4};
    double[] push = new UnilateralContact(j -> by[j]).against(free);
    for (int i = 0; i < 3; i++) {
      double gap = free[i];
      for (int j = 0; j < 3; j++) {
        gap += by[i][j] * push[j];
      }
      assertTrue(push[i] >= 0);
      assertTrue(gap >= -1e-12);
      assertEquals(0, push[i] * gap, 1e-12);
    }
    assertEquals(0.5, push[0], 1e-12);
  }

  @Test
  void theFacePushesTheSameWhenItMustBeSwept() {
    // Two places that move alike: their matrix has no factor, so no guess can be worked out.
    double[][] by = {{1, 1}, {1, 1}};
    double[] push = new UnilateralContact(j -> by[j]).against(new double[] {-1, -1});
    assertEquals(1, push[0] + push[1], 1e-9);
    assertTrue(push[0] >= 0 && push[1] >= 0);
  }

  @Test
  void aForceOffThePlateIsRefused() {
    LoadException refused =
        assertThrows(
            LoadException.class,
            () ->
                reckon(
                    RING,
                    new Support.Clamped(90),
                    new LoadCase(
                        "pull",
                        "pull",
                        List.of(new HandForce(new Point(10, 0), 0, 0, 1)),
                        0,
                        "for the test")));
    assertEquals("pull", refused.subject());
    assertTrue(refused.getMessage().contains("is not on the plate"), refused.getMessage());
  }

  @Test
  void aClampThatHoldsNothingIsRefused() {
    LoadException refused =
        assertThrows(
            LoadException.class, () -> reckon(RING, new Support.Clamped(60), pull(0, 0, 1)));
    assertEquals("support", refused.subject());
    assertEquals("no material lies within the clamped circle; make it wider", refused.getMessage());
  }

  @Test
  void oneBoltIsRefused() {
    Support one = new Support.Bolted(List.of(new Support.Bolt("H1", new Point(60, 0), 10)), 84);
    LoadException refused =
        assertThrows(LoadException.class, () -> reckon(RING, one, pull(0, 0, 1)));
    assertEquals(
        "fewer than two bolts: they do not hold the plate; clamp it instead", refused.getMessage());
  }

  /** Shear is counted: thirty-six times the share in a plate of six times the thickness. */
  @Test
  void aThickPlateGivesInShear() {
    PlateSection thick = PlateSection.isotropic(70_000, 0.3, 30, 240);
    CaseField thin =
        reckon(RING, ALUMINIUM, new Support.Clamped(90), pull(0, 0, 400)).cases().get(0);
    CaseField bulky = reckon(RING, thick, new Support.Clamped(90), pull(0, 0, 400)).cases().get(0);
    assertTrue(thin.shearShare() < 0.02, "thin " + thin.shearShare());
    assertTrue(bulky.shearShare() > 0.1, "thick " + bulky.shearShare());
    assertTrue(216 * bulky.atLoad() > 1.1 * thin.atLoad());
  }
}
