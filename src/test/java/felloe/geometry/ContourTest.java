package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ContourTest {

  private static Contour polygon(double... xy) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < xy.length; i += 2) {
      corners.add(new Point(xy[i], xy[i + 1]));
    }
    return Contour.polygon(corners);
  }

  private static String refusal(Runnable making) {
    return assertThrows(GeometryException.class, making::run).getMessage();
  }

  @Test
  void theEdgeOfABoxRunsRoundItCounterClockwise() {
    Contour edge = Contour.rectangle(new Box(-3, 2, 7, 8));
    assertEquals(60, edge.area(), 1e-12);
    assertEquals(new Box(-3, 2, 7, 8), edge.box());
    assertEquals(List.of(new Point(-3, 2), new Point(7, 2)), ends(edge.segments().get(0)));
  }

  private static List<Point> ends(Segment segment) {
    return List.of(segment.from(), segment.to());
  }

  @Test
  void aClockwiseChainIsTurnedRound() {
    assertEquals(100, polygon(0, 0, 0, 10, 10, 10, 10, 0).area(), 1e-12);
  }

  @Test
  void anOpenChainSaysWhichEdgeEndsWhere() {
    Line a = new Line(new Point(0, 0), new Point(10, 0));
    Line b = new Line(new Point(10, 0), new Point(10, 10));
    Line c = new Line(new Point(10, 10), new Point(0, 0.25));
    assertEquals(
        "edge 3 ends 0.25 mm from where the next one starts", refusal(() -> Contour.of(a, b, c)));
    assertEquals("a contour needs edges", refusal(() -> new Contour(List.of())));
    assertTrue(refusal(() -> Contour.of(a)).startsWith("edge 1 ends 10 mm"));
  }

  @Test
  void aFigureOfEightIsRefused() {
    assertEquals(
        "edges 1 and 3 cross or touch", refusal(() -> polygon(0, 0, 10, 10, 10, 0, 0, 10)));
  }

  @ParameterizedTest
  @ValueSource(doubles = {3e-6, 0.001, 0.1, 0.3, 5, 50})
  void aSpikeThatDoublesBackIsRefusedHoweverShort(double length) {
    assertTrue(
        refusal(() -> polygon(0, 0, 100, 0, 100, 50, 100, 50 - length, 0, 60))
            .endsWith("cross or touch"));
    Arc out = Arc.of(Point.ORIGIN, 100, 0, 1);
    Arc back = Arc.of(Point.ORIGIN, 100, 1, -length / 100);
    assertTrue(
        refusal(
                () ->
                    Contour.of(
                        out,
                        new Arc(out.to(), back.to(), Point.ORIGIN, 100, -length / 100),
                        new Line(back.to(), Point.ORIGIN),
                        new Line(Point.ORIGIN, out.from())))
            .endsWith("cross or touch"));
  }

  @Test
  void aThereAndBackOfTwoEdgesIsRefused() {
    assertTrue(refusal(() -> polygon(0, 0, 10, 0)).endsWith("cross or touch"));
    Arc out = Arc.of(Point.ORIGIN, 10, 0, 2);
    assertTrue(refusal(() -> Contour.of(out, out.reversed())).endsWith("cross or touch"));
  }

  @Test
  void twoEdgesMayEncloseAnArea() {
    Arc half = Arc.of(Point.ORIGIN, 10, 0, Math.PI);
    assertEquals(50 * Math.PI, Contour.of(half, new Line(half.to(), half.from())).area(), 1e-10);
    Arc other = new Arc(half.to(), half.from(), Point.ORIGIN, 10, Math.PI);
    assertEquals(100 * Math.PI, Contour.of(half, other).area(), 1e-10);
    Point a = new Point(-5, 0);
    Point b = new Point(5, 0);
    assertTrue(Contour.of(Arc.withRise(a, b, 1), Arc.withRise(b, a, -0.9)).area() < 1);
  }

  @Test
  void cornersThatTouchAnEdgeOrEachOtherAreRefused() {
    assertEquals(
        "edges 1 and 3 cross or touch", refusal(() -> polygon(0, 0, 20, 0, 20, 10, 10, 0, 0, 10)));
    assertTrue(
        refusal(() -> polygon(0, 0, 5, 5, 10, 0, 10, 10, 5, 5, 0, 10)).contains("cross or touch"));
  }

  @Test
  void twoArcsThatLeaveAndReturnAtATangentMayNotTouchOnTheWay() {
    // A half disc on a base line that touches a bump of the same height.
    Arc bump = Arc.withRise(new Point(10, 10), new Point(-10, 10), -10);
    assertTrue(
        refusal(
                () ->
                    Contour.of(
                        new Line(new Point(-20, 0), new Point(20, 0)),
                        new Line(new Point(20, 0), new Point(20, 10)),
                        new Line(new Point(20, 10), new Point(10, 10)),
                        bump,
                        new Line(new Point(-10, 10), new Point(-20, 10)),
                        new Line(new Point(-20, 10), new Point(-20, 0))))
            .equals("edges 1 and 4 cross or touch"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 1, 150, 1e4, 1e6, 1e7})
  void tangentJointsAreWelcomeAtEveryRadius(double radius) {
    double length = Math.min(radius, 100);
    Arc arc = Arc.of(new Point(0, -radius), radius, Math.PI / 2, length / radius);
    Point back = arc.to().plus(arc.tangent(1), length);
    Line on = new Line(arc.to(), back);
    Line before = new Line(arc.from().plus(arc.tangent(0), -length), arc.from());
    Point deep = new Point(0, -3 * length);
    Contour contour =
        Contour.of(before, arc, on, new Line(back, deep), new Line(deep, before.from()));
    assertEquals(5, contour.segments().size());
    for (int k = 0; k < 12; k++) {
      assertEquals(
          contour.area(), contour.moved(RigidTransform.turn(k)).area(), 1e-6 * contour.area());
    }
  }

  @Test
  void aCuspOfTwoTangentArcsIsACorner() {
    Point tip = new Point(0, 0);
    Arc in = Arc.of(new Point(0, 10), 10, Math.PI, Math.PI / 2);
    Arc into = new Arc(in.from(), tip, new Point(0, 10), 10, Math.PI / 2);
    Arc back = Arc.of(new Point(0, 20), 20, -Math.PI / 2, -Math.PI / 2);
    Arc out = new Arc(tip, back.to(), new Point(0, 20), 20, -Math.PI / 2);
    Contour cusp = Contour.of(into, out, new Line(out.to(), into.from()));
    // between the quarter discs: trapezium of the line less what the arcs cut off
    assertEquals(3, cusp.segments().size());
  }

  @Test
  void pointsAreInsideOrOutsideAtEveryHeightOfACorner() {
    Contour diamond = polygon(10, 0, 0, 10, -10, 0, 0, -10);
    for (double y : new double[] {-10, -5, 0, 5, 10}) {
      assertFalse(diamond.contains(new Point(-20, y)), "left at " + y);
      assertFalse(diamond.contains(new Point(20, y)), "right at " + y);
    }
    assertTrue(diamond.contains(Point.ORIGIN));
    assertTrue(diamond.contains(new Point(-9.999, 0)));
    Contour disc = Contour.circle(Point.ORIGIN, 10);
    for (double y : new double[] {-10, 0, 10}) {
      assertFalse(disc.contains(new Point(-20, y)));
      assertFalse(disc.contains(new Point(20, y)));
    }
    for (int k = 0; k < 360; k++) {
      Contour turned = disc.moved(RigidTransform.turn(Math.toRadians(k)));
      assertTrue(turned.contains(Point.ORIGIN), "turned " + k);
      assertFalse(turned.contains(new Point(-20, 0)), "turned " + k);
      assertFalse(turned.contains(new Point(-20, 10)), "turned " + k);
    }
  }

  @Test
  void seededPointsAreInsideJustWhereTheChordsWindRoundThem() {
    for (long seed = 1; seed <= 600; seed++) {
      Contour contour = MoreShapes.region(seed).outer();
      List<Point> ring = new Flattener(1e-4).add(contour, 0);
      Random random = new Random(seed);
      Box box = contour.box().grown(5);
      for (int k = 0; k < 30; k++) {
        Point p =
            new Point(
                box.minX() + box.width() * random.nextDouble(),
                // now and then at the very height of a joint
                k % 3 == 0
                    ? ring.get(random.nextInt(ring.size())).y()
                    : box.minY() + box.height() * random.nextDouble());
        if (contour.distance(p) > 2e-4) {
          assertEquals(winding(ring, p) != 0, contour.contains(p), "seed " + seed + " at " + p);
        }
      }
    }
  }

  /** Turns of the ring round a point, by the sum of the angles. */
  private static long winding(List<Point> ring, Point p) {
    double sum = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point u = ring.get(i).minus(p);
      Point v = ring.get((i + 1) % ring.size()).minus(p);
      sum += Math.atan2(u.cross(v), u.dot(v));
    }
    return Math.round(sum / (2 * Math.PI));
  }

  @Test
  void theShortestWayBetweenContoursAgreesWithBruteForce() {
    for (long seed = 1; seed <= 100; seed++) {
      Contour a = MoreShapes.region(seed).outer();
      Contour b = MoreShapes.region(seed + 1).outer().moved(RigidTransform.shift(260, seed));
      Gap gap = a.gap(b);
      double best = Double.POSITIVE_INFINITY;
      for (Segment s : a.segments()) {
        for (Segment t : b.segments()) {
          best = Math.min(best, Gap.between(s, t).distance());
        }
      }
      assertEquals(best, gap.distance(), 1e-12, "seed " + seed);
    }
  }
}
