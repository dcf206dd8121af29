package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.NarrowestWeb.Web;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class NarrowestWebTest {

  private static final double EXACT = 1e-9;

  /** How far to each side of the half width the region is worn away; twice the chord tolerance. */
  private static final double NUDGE = 2 * Tolerances.CHORD;

  private static Contour polygon(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return Contour.polygon(corners);
  }

  private static Contour circle(double x, double y, double radius) {
    return Contour.circle(new Point(x, y), radius);
  }

  private static Web web(Region region) {
    return NarrowestWeb.of(region).orElseThrow();
  }

  /** Pieces and holes that are left when the region is worn away by a distance from all edges. */
  private static List<Integer> pattern(Region region, double by) {
    List<Region> left = Offset.of(region, -by);
    int holes = left.stream().mapToInt(piece -> piece.holes().size()).sum();
    return List.of(left.size(), holes);
  }

  /** JTS wears the region away: it holds together to just under half the width, and no longer. */
  private static void provedByWearingAway(Region region) {
    double half = web(region).width() / 2;
    assertEquals(
        List.of(1, region.holes().size()), pattern(region, half - NUDGE), "holds together");
    assertNotEquals(
        List.of(1, region.holes().size()), pattern(region, half + NUDGE), "comes apart");
  }

  @Test
  void aRingWithItsHoleOffCentreIsThinnestOnTheNearSide() {
    Region ring = new Region(circle(0, 0, 100), List.of(circle(12, 0, 80)));
    Web web = web(ring);
    assertEquals(100 - 80 - 12, web.width(), EXACT);
    assertEquals(96, web.middle().x(), EXACT);
    assertEquals(0, web.middle().y(), EXACT);
    assertEquals(0, web.first());
    assertEquals(1, web.second());
    provedByWearingAway(ring);
  }

  @Test
  void twoHolesInAPlateLeaveTheWebBetweenThem() {
    Region plate =
        new Region(
            polygon(-100, -60, 100, -60, 100, 60, -100, 60),
            List.of(circle(-20, 5, 15), circle(25, 5, 20)));
    Web web = web(plate);
    assertEquals(45 - 35, web.width(), EXACT);
    assertEquals(0, web.middle().x(), EXACT);
    assertEquals(5, web.middle().y(), EXACT);
    provedByWearingAway(plate);
  }

  @Test
  void aDumbbellIsThinnestAcrossItsNeck() {
    Region dumbbell =
        Region.of(
            polygon(
                -80, -40, -20, -40, -20, -6, 20, -6, 20, -40, 80, -40, 80, 40, 20, 40, 20, 7, -20,
                7, -20, 40, -80, 40));
    assertEquals(13, web(dumbbell).width(), EXACT);
    assertTrue(web(dumbbell).isNeck());
    provedByWearingAway(dumbbell);
  }

  @Test
  void aCombIsAsThinAsItsThinnestTooth() {
    // Teeth 8, 5 and 9 wide and 30 long on a bar 20 high; the gaps are no webs.
    Region comb =
        Region.of(
            polygon(
                0, 0, 60, 0, 60, 50, 51, 50, 51, 20, 30, 20, 30, 50, 25, 50, 25, 20, 8, 20, 8, 50,
                0, 50));
    Web web = web(comb);
    assertEquals(5, web.width(), EXACT);
    assertEquals(27.5, web.middle().x(), EXACT);
    // An even tooth wears away as a whole: what is left has no part of it.
    assertTrue(Offset.of(comb, -2.49).get(0).contains(new Point(27.5, 40)));
    assertFalse(Offset.of(comb, -2.51).get(0).contains(new Point(27.5, 40)));
  }

  @Test
  void aLowBumpIsNoWeb() {
    // 10 wide but 2 high: nothing in it is thin; the plate is 40 across.
    Region plate = Region.of(polygon(0, 0, 100, 0, 100, 40, 55, 40, 55, 42, 45, 42, 45, 40, 0, 40));
    assertEquals(40, web(plate).width(), EXACT);
  }

  @Test
  void aSlotNearTheEdgeLeavesAnEvenStrip() {
    List<Segment> slot = new ArrayList<>();
    Point p = new Point(-30, -4);
    Point q = new Point(30, -4);
    Point r = new Point(30, 4);
    Point s = new Point(-30, 4);
    slot.add(new Line(p, q));
    slot.add(Arc.about(new Point(30, 0), q, r, true));
    slot.add(new Line(r, s));
    slot.add(Arc.about(new Point(-30, 0), s, p, true));
    Region plate =
        new Region(polygon(-60, -9.5, 60, -9.5, 60, 40, -60, 40), List.of(new Contour(slot)));
    assertEquals(5.5, web(plate).width(), EXACT);
    provedByWearingAway(plate);
  }

  @Test
  void twoHollowArcsFaceEachOtherAcrossANeck() {
    // Half circles of radius 20 and 15 cut into a bar 50 high from above and below.
    Point a = new Point(-15, -25);
    Point b = new Point(15, -25);
    Point c = new Point(23, 25);
    Point d = new Point(-17, 25);
    Region bar =
        Region.of(
            Contour.of(
                new Line(new Point(-60, -25), a),
                Arc.about(new Point(0, -25), a, b, false),
                new Line(b, new Point(60, -25)),
                new Line(new Point(60, -25), new Point(60, 25)),
                new Line(new Point(60, 25), c),
                Arc.about(new Point(3, 25), c, d, false),
                new Line(d, new Point(-60, 25)),
                new Line(new Point(-60, 25), new Point(-60, -25))));
    assertEquals(Math.hypot(3, 50) - 35, web(bar).width(), EXACT);
    provedByWearingAway(bar);
  }

  @Test
  void aNeckMayEndInCornersThatPointIntoTheMaterial() {
    Region plate = Region.of(polygon(-50, -20, 1, -4, 50, -20, 50, 20, -1, 5, -50, 20));
    assertEquals(Math.hypot(2, 9), web(plate).width(), EXACT);
    provedByWearingAway(plate);
  }

  @Test
  void aNeckInsideAWindowIsFoundToo() {
    // A window like a horseshoe leaves a tongue with a waist of 6.
    Contour horseshoe =
        polygon(
            -40, -30, 40, -30, 40, 30, 10, 30, 3, 10, 12, -10, -12, -10, -3, 10, -10, 30, -40, 30);
    Region plate = new Region(polygon(-70, -60, 70, -60, 70, 60, -70, 60), List.of(horseshoe));
    Web web = web(plate);
    assertEquals(6, web.width(), EXACT);
    assertEquals(1, web.first());
    assertTrue(web.isNeck());
    provedByWearingAway(plate);
  }

  @Test
  void aRingOfEvenWidthIsThatWideAllRound() {
    Region ring = new Region(circle(5, 5, 100), List.of(circle(5, 5, 71)));
    assertEquals(29, web(ring).width(), EXACT);
    provedByWearingAway(ring);
  }

  @Test
  void anOpenRimOfEvenWidthIsAsWideAsItsArcsAreApart() {
    Point a = Point.polar(100, 0.3);
    Point b = Point.polar(100, 2.5);
    Point c = Point.polar(80, 2.5);
    Point d = Point.polar(80, 0.3);
    Region rim =
        Region.of(
            Contour.of(
                Arc.about(Point.ORIGIN, a, b, true),
                new Line(b, c),
                Arc.about(Point.ORIGIN, c, d, false),
                new Line(d, a)));
    assertEquals(20, web(rim).width(), EXACT);
  }

  @Test
  void shapesThatOnlyTaperOrBulgeHaveNoWeb() {
    assertEquals(Optional.empty(), NarrowestWeb.of(Region.of(circle(3, 4, 50))));
    assertEquals(Optional.empty(), NarrowestWeb.of(Region.of(polygon(0, 0, 90, 0, 30, 50))));
    Point left = new Point(-40, 0);
    Point right = new Point(40, 0);
    Region lens =
        Region.of(Contour.of(Arc.withRise(left, right, 10), Arc.withRise(right, left, 8)));
    assertEquals(Optional.empty(), NarrowestWeb.of(lens));
  }

  @Test
  void aRectangleIsAsThinAsItsShortSide() {
    assertEquals(20, web(Region.of(polygon(0, 0, 90, 0, 90, 20, 0, 20))).width(), EXACT);
    Region rounded = Region.of(RandomShapes.roundedRectangle(260, 200, 40));
    assertEquals(200, web(rounded).width(), EXACT);
  }

  @Test
  void eachPairOfNeighboursHasItsOwnWebAndHiddenPairsHaveNone() {
    // Three holes in a row: the middle one hides the outer two from each other.
    Region plate =
        new Region(
            polygon(-100, -50, 100, -50, 100, 50, -100, 50),
            List.of(circle(-50, 0, 10), circle(0, 0, 15), circle(52, 0, 12)));
    List<Web> all = new NarrowestWeb(plate).all();
    List<String> pairs = all.stream().map(w -> w.first() + "-" + w.second()).toList();
    assertEquals(List.of("1-2", "2-3", "0-2", "0-3", "0-1"), pairs);
    assertEquals(25, all.get(0).width(), EXACT);
    assertEquals(25, all.get(1).width(), EXACT);
    assertEquals(35, all.get(2).width(), EXACT);
    assertEquals(36, all.get(3).width(), EXACT);
    assertEquals(40, all.get(4).width(), EXACT);
    assertEquals(all.subList(0, 3), new NarrowestWeb(plate).upTo(35));
  }

  @Test
  void movingAndMirroringThePlateMovesTheWebAlong() {
    Region plate = randomPlate(7);
    RigidTransform motion =
        RigidTransform.MIRROR.then(RigidTransform.turn(0.7)).then(RigidTransform.shift(30, -12));
    Web before = web(plate);
    Web after = web(plate.moved(motion));
    assertEquals(before.width(), after.width(), EXACT);
    assertTrue(motion.of(before.middle()).near(after.middle(), 1e-6));
  }

  private static Region randomPlate(long seed) {
    Random random = new Random(seed);
    Contour outer = seed % 2 == 0 ? jagged(random) : RandomShapes.contour(seed, 300);
    List<Contour> holes = new ArrayList<>();
    int wanted = random.nextInt(7);
    for (int tries = 0; tries < 60 && holes.size() < wanted; tries++) {
      RigidTransform shift =
          RigidTransform.shift(
              200 * (random.nextDouble() - 0.5), 200 * (random.nextDouble() - 0.5));
      Contour hole =
          random.nextBoolean()
              ? Contour.circle(Point.ORIGIN, 3 + 20 * random.nextDouble())
              : RandomShapes.contour(random.nextLong(), 20 + 60 * random.nextDouble());
      List<Contour> more = new ArrayList<>(holes);
      more.add(hole.moved(shift));
      try {
        new Region(outer, more);
        holes = more;
      } catch (GeometryException taken) {
        continue;
      }
    }
    return new Region(outer, holes);
  }

  /** Deep bays and long arms, so that necks are common. */
  private static Contour jagged(Random random) {
    while (true) {
      List<Point> corners = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        double reach = i % 2 == 0 ? 60 + 90 * random.nextDouble() : 10 + 30 * random.nextDouble();
        corners.add(Point.polar(reach, Math.PI / 4 * (i + 0.6 * random.nextDouble())));
      }
      List<Segment> edges = new ArrayList<>();
      for (int i = 0; i < 8; i++) {
        Point a = corners.get(i);
        Point b = corners.get((i + 1) % 8);
        double rise = a.distance(b) * (random.nextDouble() - 0.5) * 0.5;
        edges.add(random.nextInt(4) == 0 ? new Line(a, b) : Arc.withRise(a, b, rise));
      }
      try {
        return new Contour(edges);
      } catch (GeometryException crossed) {
        continue;
      }
    }
  }

  @Test
  void randomPlatesHoldTogetherUntilHalfTheWidthIsWornAwayAndNoLonger() {
    int necks = 0;
    int none = 0;
    int faint = 0;
    for (long seed = 1; seed <= 300; seed++) {
      Region plate = randomPlate(seed);
      Optional<Web> web = NarrowestWeb.of(plate);
      List<Integer> whole = List.of(1, plate.holes().size());
      double half = web.map(w -> w.width() / 2).orElse(8.0);
      for (double by : new double[] {0.3 * half, 0.8 * half, half - NUDGE}) {
        assertTrue(by <= NUDGE || whole.equals(pattern(plate, by)), "seed " + seed + " " + web);
      }
      if (web.isPresent()
          && whole.equals(pattern(plate, half + NUDGE))
          && whole.equals(pattern(plate, half + 2.5 * NUDGE))) {
        // The part that came off was hardly wider than the neck and is gone already.
        assertTrue(web.get().isNeck(), "seed " + seed + " " + web);
        faint++;
      }
      necks += web.filter(Web::isNeck).isPresent() ? 1 : 0;
      none += web.isPresent() ? 0 : 1;
    }
    assertTrue(necks > 40, "necks " + necks);
    assertTrue(none > 3, "without " + none);
    assertTrue(faint <= 3, "faint " + faint);
  }
}
