package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class FilletTest {

  private static final Line EAST = new Line(new Point(-50, 0), Point.ORIGIN);

  static void assertTangent(Segment a, Segment b) {
    assertEquals(a.to(), b.from());
    Point in = a.tangent(1);
    Point out = b.tangent(0);
    assertEquals(0, in.cross(out), 1e-9, "joint at " + a.to());
    assertTrue(in.dot(out) > 0, "joint at " + a.to() + " turns back");
  }

  @Test
  void rightAngleLosesItsRadiusFromEachEdge() {
    Fillet fillet = Fillet.between(EAST, new Line(Point.ORIGIN, new Point(0, 40)), 8);
    assertEquals(new Point(-8, 0), fillet.before().get().to());
    assertEquals(new Point(0, 8), fillet.after().get().from());
    assertTrue(fillet.arc().centre().near(new Point(-8, 8), 1e-12));
    assertEquals(Math.PI / 2, fillet.arc().sweep(), 1e-12);
  }

  @Test
  void rightTurnIsRoundedOnItsOwnSide() {
    Fillet fillet = Fillet.between(EAST, new Line(Point.ORIGIN, new Point(0, -40)), 8);
    assertTrue(fillet.arc().centre().near(new Point(-8, -8), 1e-12));
    assertEquals(-Math.PI / 2, fillet.arc().sweep(), 1e-12);
  }

  @Test
  void anyAngleLosesRadiusTimesTangentOfHalfTheTurn() {
    for (int degrees = 5; degrees < 175; degrees += 5) {
      double turn = Math.toRadians(degrees);
      Line next = new Line(Point.ORIGIN, Point.polar(500, turn));
      Fillet fillet = Fillet.between(EAST, next, 1.5);
      double loss = 1.5 * Math.tan(turn / 2);
      assertEquals(loss, fillet.after().get().from().norm(), 1e-10);
      assertEquals(-loss, fillet.before().get().to().x(), 1e-10);
      assertTangent(fillet.before().get(), fillet.arc());
      assertTangent(fillet.arc(), fillet.after().get());
    }
  }

  @Test
  void radiusMayTakeAWholeEdge() {
    Fillet fillet = Fillet.between(EAST, new Line(Point.ORIGIN, new Point(0, 60)), 50);
    assertTrue(fillet.before().isEmpty());
    assertEquals(10, fillet.after().get().length(), 1e-9);
  }

  @Test
  void tooLargeRadiusTellsTheLargest() {
    FilletException e =
        assertThrows(
            FilletException.class,
            () -> Fillet.between(EAST, new Line(Point.ORIGIN, new Point(0, 40)), 45));
    FilletFault fault = e.faults().get(0);
    assertEquals(40, fault.largest(), 2e-6);
    assertEquals(
        "corner 2 at (0, 0) has no room for a radius of 45 mm, at most 40 mm: it needs 45 mm of"
            + " edge 2, which is 40 mm long",
        e.getMessage());
  }

  @Test
  void neighboursThatCompeteForAnEdgeSayByHowMuch() {
    List<Segment> square = Contour.polygon(SharpChains.rectangle(100, 60)).segments();
    FilletException e =
        assertThrows(FilletException.class, () -> Fillet.chain(square, 20, 35, 28, 10));
    assertEquals(1, e.faults().size());
    assertEquals(2, e.faults().get(0).corner());
    assertEquals(32, e.faults().get(0).largest(), 2e-6);
    assertTrue(
        e.getMessage()
            .endsWith(
                "the roundings of corners 2 and 3 need 35 and 28 mm of edge 2, which is 60 mm long:"
                    + " 3 mm too much"),
        e.getMessage());
  }

  @Test
  void everyCrowdedCornerIsToldInOneRun() {
    List<Segment> square = Contour.polygon(SharpChains.rectangle(100, 60)).segments();
    FilletException e =
        assertThrows(FilletException.class, () -> Fillet.chain(square, 70, 5, 80, 5));
    assertEquals(List.of(1, 3), e.faults().stream().map(FilletFault::corner).toList());
  }

  @Test
  void roundedRectangleHasTheAreaOfTheHandbookFormula() {
    // WH - (4 - pi) r² and 2 (W + H) - (8 - 2 pi) r.
    Contour c =
        Fillet.chain(Contour.polygon(SharpChains.rectangle(260, 200)).segments(), 40, 40, 40, 40);
    assertEquals(50626.5482, c.area(), 1e-4);
    assertEquals(851.3274, c.length(), 1e-4);
    assertEquals(8, c.segments().size());
  }

  @Test
  void largestRadiusOfASquareMakesOneCircle() {
    Contour c =
        Fillet.chain(Contour.polygon(SharpChains.rectangle(60, 60)).segments(), 30, 30, 30, 30);
    assertTrue(c.asCircle().isPresent());
    assertEquals(Math.PI * 900, c.area(), 1e-9);
  }

  @Test
  void halfTheHeightMakesTwoLinesAndTwoHalfCircles() {
    Contour c =
        Fillet.chain(Contour.polygon(SharpChains.rectangle(100, 60)).segments(), 30, 30, 30, 30);
    assertEquals(4, c.segments().size());
    assertEquals(40 * 60 + Math.PI * 900, c.area(), 1e-9);
  }

  @Test
  void cornerBetweenFlatAndCircleTouchesBoth() {
    Arc round = Arc.of(Point.ORIGIN, 100, Math.toRadians(-30), Math.toRadians(240));
    Line flat = new Line(round.to(), round.from());
    Contour c = Fillet.chain(List.of(round, flat), 12, 12);
    assertEquals(4, c.segments().size());
    for (int i = 0; i < 4; i++) {
      assertTangent(c.segments().get(i), c.segments().get((i + 1) % 4));
    }
    // The centre lies 12 inside the flat (y = -50) and 12 inside the circle.
    Arc corner = (Arc) c.segments().get(0);
    assertEquals(-38, corner.centre().y(), 1e-10);
    assertEquals(88, corner.centre().norm(), 1e-10);
  }

  @Test
  void cuspBetweenTwoTouchingArcsIsRounded() {
    // A crescent: a half circle of radius 100 and back along one of radius 60 that touches it.
    Arc big = Arc.of(Point.ORIGIN, 100, -Math.PI / 2, Math.PI);
    Arc small = new Arc(big.to(), new Point(0, -20), new Point(0, 40), 60, -Math.PI);
    Fillet fillet = Fillet.between(big, small, 3);
    assertEquals(97, fillet.arc().centre().norm(), 1e-9);
    assertEquals(63, fillet.arc().centre().distance(new Point(0, 40)), 1e-9);
    assertTangent(fillet.before().get(), fillet.arc());
    assertTangent(fillet.arc(), fillet.after().get());
  }

  @Test
  void smoothJointStaysAsItIs() {
    Arc cap = Arc.of(Point.ORIGIN, 30, -Math.PI / 2, Math.PI);
    Line top = new Line(cap.to(), new Point(-40, 30));
    Line left = new Line(top.to(), new Point(-40, -30));
    Line bottom = new Line(left.to(), cap.from());
    Contour c = Fillet.chain(List.of(cap, top, left, bottom), 5, 5, 0, 5);
    assertEquals(5, c.segments().size());
  }

  @Test
  void radiusLargerThanAHollowArcHasNoTouchingCircle() {
    Arc round = Arc.of(Point.ORIGIN, 10, 0, Math.PI);
    Line chord = new Line(round.to(), round.from());
    FilletException e =
        assertThrows(FilletException.class, () -> Fillet.chain(List.of(round, chord), 11, 0));
    assertTrue(e.getMessage().contains("no circle of that radius touches both"), e.getMessage());
    // Both corners' circles become the one inscribed between half circle and chord: r = 5.
    assertEquals(5, e.faults().get(0).largest(), 2e-6);
  }

  @Test
  void badFiguresAreRefusedByName() {
    List<Segment> square = Contour.polygon(SharpChains.rectangle(1, 1)).segments();
    assertThrows(IllegalArgumentException.class, () -> Fillet.chain(square, 1, 1, 1));
    IllegalArgumentException nan =
        assertThrows(
            IllegalArgumentException.class, () -> Fillet.chain(square, 0, Double.NaN, 0, 0));
    assertTrue(nan.getMessage().startsWith("radius of corner 2"), nan.getMessage());
    assertThrows(IllegalArgumentException.class, () -> Fillet.chain(square, 0, 0, -1, 0));
    assertThrows(
        IllegalArgumentException.class,
        () -> Fillet.between(EAST, new Line(Point.ORIGIN, new Point(0, 1)), 0));
    assertThrows(
        GeometryException.class,
        () -> Fillet.between(EAST, new Line(new Point(1, 1), new Point(0, 1)), 1));
    assertThrows(
        GeometryException.class,
        () -> Fillet.between(EAST, new Line(Point.ORIGIN, new Point(9, 0)), 1));
  }

  @Test
  void randomStarsOfBulgedEdgesAreTangentEverywhereAndTheLimitIsSharp() {
    for (long seed = 0; seed < 3000; seed++) {
      Random random = new Random(seed);
      List<Segment> chain = SharpChains.star(random);
      double[] radii = new double[chain.size()];
      for (int i = 0; i < radii.length; i++) {
        radii[i] = random.nextInt(4) == 0 ? 0 : 0.2 + 8 * random.nextDouble();
      }
      List<FilletFault> faults = Fillet.faults(chain, radii);
      for (FilletFault fault : faults) {
        assertTrue(fault.largest() < fault.wanted(), "seed " + seed);
        radii[fault.corner() - 1] = fault.largest();
      }
      while (!Fillet.faults(chain, radii).isEmpty()) {
        for (FilletFault fault : Fillet.faults(chain, radii)) {
          radii[fault.corner() - 1] = Math.min(radii[fault.corner() - 1] * 0.7, fault.largest());
        }
      }
      List<Segment> rounded;
      try {
        rounded = Fillet.chain(chain, radii).segments();
      } catch (GeometryException crossing) {
        continue;
      }
      List<Point> sharp = new ArrayList<>();
      for (int i = 0; i < radii.length; i++) {
        if (radii[i] == 0) {
          sharp.add(chain.get(i).from());
        }
      }
      for (int i = 0; i < rounded.size(); i++) {
        Segment a = rounded.get(i);
        Segment b = rounded.get((i + 1) % rounded.size());
        if (!sharp.contains(a.to())) {
          assertEquals(0, a.tangent(1).cross(b.tangent(0)), 1e-9, "seed " + seed);
          assertTrue(a.tangent(1).dot(b.tangent(0)) > 0, "seed " + seed);
        }
      }
    }
  }
}
