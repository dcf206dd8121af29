package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ArcFitTest {

  private static CubicCurve cubic(double... v) {
    return new CubicCurve(
        new Point(v[0], v[1]), new Point(v[2], v[3]), new Point(v[4], v[5]), new Point(v[6], v[7]));
  }

  private static double distance(List<Segment> segments, Point p) {
    return segments.stream().mapToDouble(s -> s.distance(p)).min().orElseThrow();
  }

  /** Greatest distance of the curve's samples from the segments. */
  private static double measured(ArcFit fit, FreeCurve curve, int samples) {
    double worst = 0;
    for (int i = 0; i <= samples; i++) {
      worst = Math.max(worst, distance(fit.segments(), curve.at(i / (double) samples)));
    }
    return worst;
  }

  private static void assertChain(ArcFit fit, FreeCurve curve, String who) {
    List<Segment> s = fit.segments();
    assertEquals(curve.from(), s.get(0).from(), who);
    assertEquals(curve.to(), s.get(s.size() - 1).to(), who);
    for (int i = 1; i < s.size(); i++) {
      assertEquals(s.get(i - 1).to(), s.get(i).from(), who);
    }
  }

  private static int corners(ArcFit fit) {
    int corners = 0;
    for (int i = 1; i < fit.segments().size(); i++) {
      Point in = fit.segments().get(i - 1).tangent(1);
      Point out = fit.segments().get(i).tangent(0);
      if (Math.abs(in.cross(out)) > 1e-9 || in.dot(out) < 0) {
        corners++;
      }
    }
    return corners;
  }

  private static ArcFit check(FreeCurve curve, double tolerance, int samples, String who) {
    ArcFit fit = ArcFit.of(curve, tolerance);
    assertChain(fit, curve, who);
    double measured = measured(fit, curve, samples);
    assertTrue(measured <= tolerance, who + " measured " + measured);
    assertTrue(fit.distance() <= tolerance, who);
    assertTrue(measured <= fit.distance() * 1.02 + 1e-7, who + ": " + measured + " > " + fit);
    assertTrue(fit.turn() <= Math.toRadians(0.5), who);
    return fit;
  }

  @Test
  void ellipseWithEqualHalfAxesIsOneArc() {
    EllipticalArc curve = EllipticalArc.about(new Point(3, 4), 25, 25, 0.7, 0.2, 1.9);
    ArcFit fit = ArcFit.of(curve);
    assertEquals(1, fit.segments().size());
    Arc arc = (Arc) fit.segments().get(0);
    assertEquals(new Point(3, 4), arc.centre());
    assertEquals(25, arc.radius(), 0);
    assertEquals(1.9, arc.sweep(), 0);
    assertEquals(0, fit.distance(), 0);
    Arc full =
        (Arc)
            ArcFit.of(EllipticalArc.about(Point.ORIGIN, 9, 9, 0, 0, -2 * Math.PI))
                .segments()
                .get(0);
    assertTrue(full.isCircle());
    assertTrue(full.sweep() < 0);
  }

  @Test
  void straightCurveIsOneLine() {
    assertEquals(
        List.of(new Line(Point.ORIGIN, new Point(30, 12))),
        ArcFit.of(cubic(0, 0, 10, 4, 20, 8, 30, 12)).segments());
    assertEquals(
        1,
        ArcFit.of(new QuadraticCurve(Point.ORIGIN, new Point(5, 5), new Point(9, 9)))
            .segments()
            .size());
    // All control points in the ends: the curve stands still there and runs straight between.
    assertEquals(1, ArcFit.of(cubic(0, 0, 0, 0, 30, 12, 30, 12)).segments().size());
  }

  @Test
  void straightCurveThatRunsBackIsLinesOutAndBack() {
    FreeCurve curve = cubic(0, 0, 50, 25, -20, -10, 30, 15);
    ArcFit fit = check(curve, 0.01, 2000, "overshoot");
    assertTrue(fit.segments().stream().allMatch(s -> s instanceof Line));
    assertEquals(3, fit.segments().size());
  }

  @Test
  void curveOfNoLengthIsNothing() {
    assertTrue(ArcFit.of(cubic(1, 1, 1, 1, 1, 1, 1, 1)).segments().isEmpty());
    assertTrue(ArcFit.of(cubic(1, 1, 1, 1 + 1e-7, 1, 1, 1, 1)).segments().isEmpty());
  }

  @Test
  void usualQuarterCircleCurveNeedsFewArcs() {
    // The common four-curve circle, control distance 0.5522847498 r (literature, from memory):
    // off by 2.7e-4 r, so 30 mm fits one arc within 0.01 mm.
    double k = 0.5522847498;
    assertEquals(
        1,
        check(cubic(30, 0, 30, 30 * k, 30 * k, 30, 0, 30), 0.01, 10_000, "r 30").segments().size());
    int large =
        check(cubic(150, 0, 150, 150 * k, 150 * k, 150, 0, 150), 0.01, 10_000, "r 150")
            .segments()
            .size();
    assertTrue(large <= 8, "r 150 took " + large);
  }

  @Test
  void ellipseIsSmoothAndFewArcs() {
    EllipticalArc full = EllipticalArc.about(new Point(2, 1), 150, 100, 0.3, 0, 2 * Math.PI);
    ArcFit fit = check(full, 0.01, 10_000, "ellipse");
    assertEquals(0, corners(fit));
    Contour contour = new Contour(fit.segments());
    // The area of an ellipse is pi a b.
    assertEquals(Math.PI * 150 * 100, contour.area(), 800 * 0.01);
    assertTrue(fit.segments().size() <= 40, "took " + fit.segments().size());
  }

  @Test
  void sharpCuspIsACornerOnTheCurve() {
    // Control points crossed over so that the curve stands still half way.
    FreeCurve cusp = cubic(0, 0, 40, 40, 0, 40, 40, 0);
    ArcFit fit = check(cusp, 0.01, 10_000, "cusp");
    assertEquals(1, corners(fit));
    // Nearly a cusp: one control point moved by a nanometre.
    check(cubic(0, 0, 40, 40, 1e-6, 40, 40, 0), 0.01, 10_000, "near cusp");
    check(cubic(0, 0, 40, 40, 1e-3, 40, 40, 0), 0.01, 10_000, "near cusp");
    check(cubic(0, 0, 40, 40, -1e-3, 40, 40, 0), 0.01, 10_000, "tiny loop");
    check(cubic(0, 0, 40, 40, 0.5, 40, 40, 0), 0.01, 10_000, "tight turn");
  }

  @Test
  void loopsInflectionsAndCoincidentControlPointsAreKept() {
    assertEquals(0, corners(check(cubic(0, 0, 90, 60, -50, 60, 40, 0), 0.01, 10_000, "loop")));
    assertEquals(0, corners(check(cubic(0, 0, 40, 0, 0, 40, 40, 40), 0.01, 10_000, "S")));
    check(cubic(0, 0, 0, 0, 10, 40, 50, 40), 0.01, 10_000, "start stands still");
    check(cubic(0, 0, 20, 40, 50, 40, 50, 40), 0.01, 10_000, "end stands still");
    check(cubic(0, 0, 0, 0, 10, 40, 0, 0), 0.01, 10_000, "out and back");
    check(cubic(0, 0, 30, 30, 10, 40, 0, 0), 0.01, 10_000, "closed drop");
    check(cubic(0, 0, 1e-8, 0, 10, 40, 50, 40), 0.01, 10_000, "start all but stands still");
  }

  @Test
  void hugeAndTinyCurvesAreKept() {
    check(cubic(-9000, 0, -9000, 9000, 9000, 9000, 9000, 0), 0.01, 10_000, "huge");
    check(cubic(0, 0, 1e-3, 0, 1e-3, 1e-3, 2e-3, 5e-3), 0.01, 1000, "tiny");
    check(EllipticalArc.about(Point.ORIGIN, 100, 0.01, 0, 0, 3), 0.01, 10_000, "flat ellipse");
    check(EllipticalArc.about(Point.ORIGIN, 100, 1e-7, 0, 0, 3), 0.01, 10_000, "flattest ellipse");
  }

  @Test
  void arcThroughTwoPointsFollowsTheImplementationNotes() {
    // W3C SVG 2, appendix B.2.4. 10,10 to 50,10 with radius 30, small, growing angle.
    Point a = new Point(10, 10);
    Point b = new Point(50, 10);
    EllipticalArc small = EllipticalArc.through(a, b, 30, 30, 0, false, true);
    assertTrue(small.centre().near(new Point(30, 32.36068), 1e-5));
    assertEquals(-131.810, Math.toDegrees(small.start()), 1e-3);
    assertEquals(83.621, Math.toDegrees(small.sweep()), 1e-3);
    EllipticalArc large = EllipticalArc.through(a, b, 30, 30, 0, true, false);
    assertTrue(large.centre().near(new Point(30, 32.36068), 1e-5));
    assertEquals(-276.379, Math.toDegrees(large.sweep()), 1e-3);
    // B.2.5: radii that do not reach are stretched.
    EllipticalArc stretched =
        EllipticalArc.through(Point.ORIGIN, new Point(40, 0), 10, 10, 0, false, true);
    assertEquals(20, stretched.rx(), 1e-12);
    assertTrue(stretched.centre().near(new Point(20, 0), 1e-12));
    assertEquals(Math.PI, stretched.sweep(), 1e-12);
    // An exact half circle, where rounding may throw the centre off.
    EllipticalArc half =
        EllipticalArc.through(Point.ORIGIN, new Point(60, 80), 50, 50, 0, false, true);
    assertTrue(half.centre().near(new Point(30, 40), 1e-12));
    assertEquals(Math.PI, half.sweep(), 1e-12);
  }

  @Test
  void randomArcsThroughTwoPointsReachThem() {
    for (long seed = 0; seed < 2000; seed++) {
      Random r = new Random(seed);
      Point a = new Point(100 * r.nextGaussian(), 100 * r.nextGaussian());
      Point b = new Point(100 * r.nextGaussian(), 100 * r.nextGaussian());
      EllipticalArc arc =
          EllipticalArc.through(
              a,
              b,
              1 + 200 * r.nextDouble(),
              1 + 200 * r.nextDouble(),
              7 * r.nextDouble(),
              r.nextBoolean(),
              r.nextBoolean());
      assertTrue(arc.at(1e-15).near(a, 1e-8), "seed " + seed);
      assertTrue(arc.at(1 - 1e-15).near(b, 1e-8), "seed " + seed);
    }
  }

  @Test
  void randomCurvesHoldToleranceDirectionAndTangency() {
    int arcs = 0;
    for (long seed = 0; seed < 2000; seed++) {
      Random r = new Random(seed);
      FreeCurve curve = random(r);
      ArcFit fit = check(curve, 0.01, 300, "seed " + seed);
      assertTrue(corners(fit) <= 2, "seed " + seed);
      assertDirections(fit, curve, seed);
      arcs += fit.segments().size();
    }
    assertTrue(arcs < 2000 * 24, "took " + arcs);
  }

  /** Measured apart from the fit's own figures, wherever the curve is no tighter than 0.01 mm. */
  private static void assertDirections(ArcFit fit, FreeCurve curve, long seed) {
    for (int i = 1; i < 100; i++) {
      double t = i / 100.0;
      if (Math.abs(curve.curvature(t)) > 100) {
        continue;
      }
      Point p = curve.at(t);
      Point along = curve.tangent(t, true);
      double best = Math.PI;
      for (Segment s : fit.segments()) {
        Point q = s.nearest(p);
        if (q.distance(p) <= 0.01) {
          Point d = s instanceof Arc a ? q.minus(a.centre()).left().times(a.sweep()) : s.tangent(0);
          best = Math.min(best, Math.abs(Math.atan2(d.cross(along), d.dot(along))));
        }
      }
      assertTrue(best <= Math.toRadians(0.51), "seed " + seed + " at " + t + ": " + best);
    }
  }

  private static FreeCurve random(Random r) {
    double size = Math.pow(10, 3 * r.nextDouble() - 0.5);
    List<Point> p = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      p.add(new Point(size * r.nextGaussian(), size * r.nextGaussian()));
    }
    return switch (r.nextInt(4)) {
      case 0 -> new QuadraticCurve(p.get(0), p.get(1), p.get(2));
      case 1 ->
          EllipticalArc.about(
              p.get(0),
              size * (0.1 + r.nextDouble()),
              size * (0.1 + r.nextDouble()),
              r.nextDouble(),
              6 * r.nextDouble(),
              6 * (r.nextDouble() - 0.5));
      default -> new CubicCurve(p.get(0), p.get(1), p.get(2), p.get(3));
    };
  }

  @Test
  void randomCuspsAndNearCuspsOfAnySizeAreKept() {
    Random r = new Random(11);
    for (int i = 0; i < 400; i++) {
      double off = Math.pow(10, -10 + 11 * r.nextDouble()) * (r.nextBoolean() ? 1 : -1);
      double size = Math.pow(10, 3 * r.nextDouble() - 1);
      RigidTransform motion =
          new RigidTransform(
              r.nextBoolean(), 7 * r.nextDouble(), new Point(90 * r.nextGaussian(), 5));
      Point a = motion.of(Point.ORIGIN);
      Point b = motion.of(new Point(40 * size, 40 * size));
      Point c = motion.of(new Point(off * size, 40 * size));
      Point d = motion.of(new Point(40 * size, 0));
      check(new CubicCurve(a, b, c, d), 0.01, 300, "round " + i);
      Point back = motion.of(new Point(off * size, 20 * size));
      check(new QuadraticCurve(a, b, back), 0.01, 300, "round " + i);
    }
  }

  @Test
  void badFiguresAreRefusedByName() {
    FreeCurve curve = cubic(0, 0, 1, 2, 3, 4, 9, 1);
    assertThrows(IllegalArgumentException.class, () -> ArcFit.of(curve, 0));
    assertThrows(IllegalArgumentException.class, () -> ArcFit.of(curve, Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> EllipticalArc.about(Point.ORIGIN, 0, 1, 0, 0, 1));
    assertThrows(
        GeometryException.class,
        () -> EllipticalArc.through(Point.ORIGIN, Point.ORIGIN, 1, 1, 0, false, false));
  }
}
