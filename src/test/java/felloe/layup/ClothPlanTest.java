package felloe.layup;

import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.plate;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Where plies are cut from the roll. */
class ClothPlanTest {

  private static void holds(LayupPlan plan, String about) {
    ClothPlan cloth = plan.cloth();
    double area = 0;
    for (ClothPiece piece : cloth.pieces()) {
      Box box = piece.region().outer().box();
      double edge = ClothPlan.SELVEDGE - 1e-6;
      assertTrue(
          box.minX() > edge
              && box.minY() > edge
              && box.maxX() < cloth.rollWidth() - edge
              && box.maxY() <= cloth.toBuy() - edge,
          about + ": piece " + piece.label() + " leaves the roll: " + box);
      area += piece.region().properties().area();
    }
    assertEquals(area, cloth.area(), 1e-6 * area, about);
    // Nothing is lost at joints, and no ply is left out.
    assertEquals(
        plan.blank().area() * plan.stack().plies().size(), cloth.area(), 1e-6 * area, about);
    assertTrue(cloth.bought() >= cloth.area(), about);
    assertEquals(1 - cloth.area() / cloth.bought(), cloth.waste(), 1e-12, about);
    assertTrue(cloth.toBuy() - cloth.used() < ClothPlan.SOLD_BY + ClothPlan.SELVEDGE, about);
    apart(cloth.pieces(), about);
  }

  private static void apart(List<ClothPiece> pieces, String about) {
    for (int i = 0; i < pieces.size(); i++) {
      for (int j = 0; j < i; j++) {
        Contour a = pieces.get(i).region().outer();
        Contour b = pieces.get(j).region().outer();
        if (a.box().touches(b.box())) {
          assertTrue(
              a.gap(b).distance() > ClothPlan.SPACING - 1e-6,
              about + ": " + pieces.get(i).label() + " and " + pieces.get(j).label());
          assertTrue(!a.contains(b.box().centre()), about);
        }
      }
    }
  }

  @Test
  void theWarpOfEachPieceRunsAlongTheRollOrForClothAcrossIt() {
    LayupPlan plan = plan(disc(250, 2.2), wish().angles(0.0, 45.0, 30.0, -30.0).value());
    for (ClothPiece piece : plan.cloth().pieces()) {
      double angle = plan.stack().plies().get(piece.ply() - 1).angle();
      RigidTransform motion = piece.fromPlate();
      Point warp = motion.of(Point.polar(1, Math.toRadians(angle))).minus(motion.of(Point.ORIGIN));
      assertTrue(
          Math.abs(Math.abs(warp.y()) - 1) < 1e-9 || Math.abs(Math.abs(warp.x()) - 1) < 1e-9,
          piece.label() + " " + warp);
      // It is the blank that lies there.
      assertEquals(
          0,
          Combine.difference(
                  List.of(Region.of(plan.blank().contour().moved(motion))), List.of(piece.region()))
              .stream()
              .mapToDouble(region -> region.properties().area())
              .sum(),
          1e-3);
    }
  }

  @Test
  void fibresAllOneWayAreNeverTurnedAQuarter() {
    LayupPlan plan =
        plan(disc(180, 3), wish().named("carbon-unidirectional-300", null, null).plies(8).value());
    holds(plan, "all one way");
    for (ClothPiece piece : plan.cloth().pieces()) {
      double angle = plan.stack().plies().get(piece.ply() - 1).angle();
      RigidTransform motion = piece.fromPlate();
      Point warp = motion.of(Point.polar(1, Math.toRadians(angle))).minus(motion.of(Point.ORIGIN));
      assertEquals(1, Math.abs(warp.y()), 1e-9, piece.label());
    }
    assertTrue(plan.cloth().notes().toString().contains("do not turn them"));
  }

  @Test
  void aNarrowRollHasPliesInPiecesWithJointsApart() {
    LayupPlan plan = plan(disc(280, 4.5), wish().shop(null, 300.0, null, 0, null).value());
    holds(plan, "roll of 300 mm");
    assertEquals(plan.stack().plies().size(), plan.cloth().jointedPlies());
    assertTrue(plan.cloth().notes().get(0).contains("edge to edge"));
    List<Double> joints = new ArrayList<>();
    for (ClothPiece piece : plan.cloth().pieces()) {
      boolean first = piece.label().endsWith("A");
      if (first && plan.stack().plies().get(piece.ply() - 1).angle() == 0) {
        Box box = piece.region().outer().box();
        joints.add(Math.min(box.width(), box.height()));
      }
    }
    assertTrue(joints.size() > 1, joints.toString());
    for (int i = 1; i < joints.size(); i++) {
      assertTrue(
          Math.abs(joints.get(i) - joints.get(i - 1)) > ClothPlan.STAGGER - 1e-6,
          joints.toString());
    }
  }

  @Test
  void plyAlongTheOutlineTakesLessCloth() {
    LayupPlan outline = plan(disc(280, 4.5), wish().pieces(LayupWish.Pieces.OUTLINE).value());
    holds(outline, "outline");
    double radius = 140 + LayupChoice.MARGIN;
    assertEquals(Math.PI * radius * radius, outline.blank().area(), 1e-6);
    assertEquals(0, outline.blank().strips().placed().size());
    assertTrue(outline.blank().notes().get(0).startsWith("0 of 5 test strips"));
  }

  @Test
  void seededPlatesKeepTheirPiecesOnTheRollAndApart() {
    long seed = 1903;
    Random random = new Random(seed);
    for (int i = 0; i < 12; i++) {
      double width = 120 + random.nextInt(260);
      double height = 120 + random.nextInt(200);
      double roll = 260 + random.nextInt(1100);
      double thickness = 1.2 + 5 * random.nextDouble();
      Contour box = Contour.rectangle(new Box(-width / 2, -height / 2, width / 2, height / 2));
      LayupPlan plan =
          plan(
              plate(box, thickness),
              wish().shop(null, roll, 5.0 + random.nextInt(30), random.nextInt(6), null).value());
      holds(plan, "seed " + seed + ", case " + i + ", roll " + roll);
      BlankPlanTest.holds(plan, "seed " + seed + ", case " + i);
      PotPlanTest.holds(plan, "seed " + seed + ", case " + i);
    }
  }

  @Test
  void curvedPiecesAreLaidByTangentsThatHoldThem() {
    Contour circle = Contour.circle(new Point(3, -2), 100);
    Region round = Tangents.of(Region.of(circle));
    double most = 100 / Math.cos(Math.PI / 36);
    assertEquals(36, round.outer().segments().size());
    round
        .outer()
        .segments()
        .forEach(s -> assertEquals(most, s.from().distance(new Point(3, -2)), 1e-9));
    Region box = Region.of(Contour.rectangle(new Box(0, 0, 30, 20)));
    assertEquals(box, Tangents.of(box));
  }

  @Test
  void aRollNarrowerThanItsEdgesIsRefused() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () -> plan(disc(280, 4.5), wish().shop(null, 60.0, null, 0, null).value()));
    assertEquals(
        "ruff.yaml:7:3 roll-width: '60 mm' must be at least 70 mm here; take a wider roll",
        bad.getMessage());
  }

  @Test
  void piecesBeyondTwentySixHaveTwoLetters() {
    assertEquals("A", ClothPlan.letters(0));
    assertEquals("Z", ClothPlan.letters(25));
    assertEquals("AA", ClothPlan.letters(26));
    assertEquals("AZ", ClothPlan.letters(51));
    assertEquals("BA", ClothPlan.letters(52));
  }
}
