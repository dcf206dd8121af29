package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.shape.DerivedWindows.Result;
import felloe.shape.DerivedWindows.Spoke;
import felloe.shape.FourSided.Rise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DerivedWindowsTest {

  private static final Contour WHEEL = Round.circle(300).contour();

  private static Spoke spoke(double degrees, double atHub, double atRim) {
    return new Spoke(Math.toRadians(degrees), atHub, atRim);
  }

  private static List<Spoke> three(double width) {
    return List.of(spoke(0, width, width), spoke(180, width, width), spoke(270, width, width));
  }

  private static DerivedWindows windows(double rim, double disc, double radius, List<Spoke> s) {
    return new DerivedWindows(rim, disc, s, radius, DerivedWindows.SMALLEST);
  }

  private static List<ShapeFault> faults(DerivedWindows windows, Contour outline) {
    return assertThrows(ShapeException.class, () -> windows.in(outline)).faults();
  }

  /** Area of a half ring between two circles less the strips of half a spoke at each side. */
  private static double halfRing(double outer, double inner, double strip) {
    return half(outer, strip) - half(inner, strip);
  }

  /** Area of the part of a circle above y = d: R² acos(d/R) - d sqrt(R² - d²). */
  private static double half(double r, double d) {
    return r * r * Math.acos(d / r) - d * Math.sqrt(r * r - d * d);
  }

  @Test
  void twoSpokesLeaveTwoHalfRings() {
    Result result = windows(30, 100, 0, List.of(spoke(0, 24, 24), spoke(180, 24, 24))).in(WHEEL);
    assertEquals(2, result.windows().size());
    for (Contour window : result.windows()) {
      assertEquals(4, window.segments().size());
      assertEquals(halfRing(120, 50, 12), window.area(), 1e-6);
    }
    assertTrue(result.windows().get(0).properties().centroid().y() > 0);
    assertEquals(List.of(), result.notes());
  }

  @Test
  void everyInsideCornerHasTheRadius() {
    Result result = windows(30, 100, 8, three(24)).in(WHEEL);
    assertEquals(3, result.windows().size());
    for (Contour window : result.windows()) {
      int rounded = 0;
      List<Segment> all = window.segments();
      for (int i = 0; i < all.size(); i++) {
        Segment a = all.get(i);
        Segment b = all.get((i + 1) % all.size());
        assertEquals(0, a.tangent(1).cross(b.tangent(0)), 1e-7);
        // Counter-clockwise: an arc that turns left is an inside corner for a cutter.
        if (a instanceof Arc arc && arc.sweep() > 0) {
          assertTrue(arc.radius() >= 8 - 1e-9, "radius " + arc.radius());
          rounded += Math.abs(arc.radius() - 8) < 1e-9 ? 1 : 0;
        }
      }
      assertTrue(rounded == 4, "rounded " + rounded);
      assertEquals(8, all.size());
    }
  }

  @Test
  void windowsRunClockwiseFromTwelve() {
    Result result = windows(30, 100, 5, three(24)).in(WHEEL);
    List<Point> c = result.windows().stream().map(w -> w.properties().centroid()).toList();
    // The wide one at the top is centred on 12 o'clock, then the lower right, the lower left.
    assertEquals(0, c.get(0).x(), 1e-9);
    assertTrue(c.get(0).y() > 0);
    assertTrue(c.get(1).x() > 0 && c.get(1).y() < 0);
    assertTrue(c.get(2).x() < 0 && c.get(2).y() < 0);
  }

  @Test
  void spokesTaperFromDiscToRim() {
    Contour window =
        windows(30, 100, 0, List.of(spoke(0, 40, 20), spoke(180, 40, 20)))
            .in(WHEEL)
            .windows()
            .get(0);
    // Where the side leaves the disc the spoke is 40 wide; where its middle meets the rim, 20.
    double leaves = Math.sqrt(50 * 50 - 20 * 20);
    assertEquals(0, window.distance(new Point(leaves, 20)), 1e-9);
    double slope = (10.0 - 20) / (120 - leaves);
    assertEquals(0, window.distance(new Point(90, 20 + slope * (90 - leaves))), 1e-9);
  }

  @Test
  void steepTapersEndInsideTheDiscAndBeyondTheRim() {
    windows(30, 100, 3, List.of(spoke(0, 2, 90), spoke(180, 90, 2))).in(WHEEL);
    Result result = windows(30, 100, 0, List.of(spoke(90, 1, 99), spoke(270, 99, 1))).in(WHEEL);
    assertEquals(2, result.windows().size());
  }

  @Test
  void smallLeftoversAreDroppedWithANote() {
    List<Spoke> spokes = List.of(spoke(0, 24, 24), spoke(180, 24, 24), spoke(16, 10, 10));
    Result result = windows(30, 150, 10, spokes).in(WHEEL);
    assertEquals(2, result.windows().size());
    assertEquals(1, result.notes().size());
    assertTrue(
        result
            .notes()
            .get(0)
            .endsWith(
                "left out: it is 14.384 mm wide at its widest; two corner radii are 20 mm, and it"
                    + " must be wider"),
        result.notes().toString());
    Result small = windows(30, 150, 1, spokes).in(WHEEL);
    assertEquals(3, small.windows().size() + small.notes().size());
  }

  @Test
  void flatBottomedAndFourSidedOutlinesKeepTheirRim() {
    Contour flat = new Round(320, Optional.empty(), Optional.of(new Round.Flat(120, 35))).contour();
    Contour four =
        new FourSided(280, 190, 50, 40, new Rise(10, 6, -8, -8), new Point(0, 10)).contour();
    for (Contour outline : List.of(flat, four)) {
      Result result = windows(28, 90, 9, three(30)).in(outline);
      assertTrue(result.windows().size() >= 2, result.toString());
      for (Contour window : result.windows()) {
        assertEquals(28, window.gap(outline).distance(), 1e-5);
        assertTrue(window.distance(Point.ORIGIN) >= 45 - 1e-6);
      }
    }
  }

  @Test
  void discThatWouldFallOutIsRefused() {
    ShapeFault f = faults(windows(30, 100, 5, List.of()), WHEEL).get(0);
    assertEquals("spokes", f.parameter());
    assertTrue(f.wanted().startsWith("do not hold the hub disc"));
  }

  @Test
  void impossibleParametersAreNamed() {
    assertEquals("rim_width", faults(windows(150, 100, 5, three(20)), WHEEL).get(0).parameter());
    assertTrue(
        faults(windows(160, 100, 5, three(20)), WHEEL).get(0).wanted().contains("below 149.9 mm"));
    assertEquals("hub_disc", faults(windows(30, 260, 5, three(20)), WHEEL).get(0).parameter());
    assertEquals(
        "spokes[1].hub_width",
        faults(windows(30, 60, 5, List.of(spoke(0, 20, 20), spoke(90, 60, 20))), WHEEL)
            .get(0)
            .parameter());
    assertEquals("radius", faults(windows(30, 150, 60, three(20)), WHEEL).get(0).parameter());
    assertEquals(
        List.of("rim_width", "hub_disc", "radius", "spokes[0].hub_width", "spokes[0].rim_width"),
        faults(windows(-1, 0, -2, List.of(spoke(0, -3, 0))), WHEEL).stream()
            .map(ShapeFault::parameter)
            .toList());
    assertThrows(IllegalArgumentException.class, () -> spoke(Double.NaN, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> windows(1, Double.NaN, 1, List.of()));
  }

  @Test
  void randomSpokesLeaveWindowsClearOfRimDiscAndSpokes() {
    for (long seed = 0; seed < 30; seed++) {
      Random r = new Random(seed);
      Contour outline =
          new FourSided(
                  240 + 80 * r.nextDouble(),
                  200 + 80 * r.nextDouble(),
                  20 + 50 * r.nextDouble(),
                  20 + 50 * r.nextDouble(),
                  new Rise(
                      20 * r.nextDouble() - 8,
                      20 * r.nextDouble() - 8,
                      20 * r.nextDouble() - 8,
                      20 * r.nextDouble() - 8),
                  Point.ORIGIN)
              .contour();
      int n = 1 + r.nextInt(5);
      List<Spoke> spokes = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        spokes.add(
            spoke(
                360.0 * (i + 0.5 * r.nextDouble()) / n,
                10 + 30 * r.nextDouble(),
                10 + 30 * r.nextDouble()));
      }
      double radius = 2 + 8 * r.nextDouble();
      Result result = windows(25, 80 + 20 * r.nextDouble(), radius, spokes).in(outline);
      for (Contour window : result.windows()) {
        assertTrue(window.gap(outline).distance() >= 25 - 1e-4, "seed " + seed);
        assertTrue(window.distance(Point.ORIGIN) >= 40 - 1e-4, "seed " + seed);
        for (Segment s : window.segments()) {
          assertTrue(
              !(s instanceof Arc a) || a.sweep() < 0 || a.radius() >= radius - 1e-6,
              "seed " + seed);
        }
        for (Spoke spoke : spokes) {
          assertTrue(!window.contains(Point.polar(60, spoke.direction())), "seed " + seed);
        }
      }
    }
  }

  @Test
  void aTaperEndsAtTheDiscHoweverSteep() {
    // Disc 100, rim at 120, 96 wide at the disc and 10 at the rim: carried back to the axis the
    // sides would stand 53.5 mm from it, beyond the disc.
    Result result = windows(30, 100, 0, List.of(spoke(0, 96, 10), spoke(180, 40, 40))).in(WHEEL);
    for (Contour window : result.windows()) {
      for (Segment s : window.segments()) {
        assertTrue(s.from().x() > -120, "a spike at " + s.from());
      }
    }
    Point spike = new Point(2, 51.5);
    assertTrue(result.windows().stream().anyMatch(w -> w.contains(spike)), "the disc has a spike");
  }

  @Test
  void aSpokeWhereTheDiscReachesTheRimIsLeftOutWithANote() {
    Contour egg = new FourSided(300, 160, 30, 30, Rise.NONE, Point.ORIGIN).contour();
    Result result =
        windows(30, 110, 0, List.of(spoke(0, 20, 20), spoke(90, 20, 20), spoke(180, 20, 20)))
            .in(egg);
    assertEquals(
        List.of("spokes[1] was left out: the hub disc reaches the rim there"), result.notes());
    assertEquals(
        windows(30, 110, 0, List.of(spoke(0, 20, 20), spoke(180, 20, 20))).in(egg).windows(),
        result.windows());
  }

  /**
   * Every point of the plate is judged by the definition alone: in the rim, in the disc, or beside
   * a spoke's middle line beyond where the spoke leaves the disc.
   */
  @Test
  void seededTaperedSpokesCoverWhatTheirDefinitionSays() {
    for (long seed = 1; seed <= 60; seed++) {
      Random r = new Random(seed * 7919);
      double disc = 60 + 70 * r.nextDouble();
      int n = 1 + r.nextInt(4);
      List<Spoke> spokes = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        double atHub = disc * (0.05 + 0.92 * r.nextDouble());
        spokes.add(spoke(360.0 * (i + 0.6 * r.nextDouble()) / n, atHub, 5 + 80 * r.nextDouble()));
      }
      Result result;
      try {
        result = new DerivedWindows(30, disc, spokes, 0, 0).in(WHEEL);
      } catch (ShapeException nothingLeft) {
        continue;
      }
      for (int k = 0; k < 1500; k++) {
        Point p = Point.polar(150 * Math.sqrt(r.nextDouble()), 2 * Math.PI * r.nextDouble());
        if (result.windows().stream().anyMatch(w -> w.distance(p) < 0.01)) {
          continue;
        }
        boolean solid = p.norm() > 120 || p.norm() < disc / 2;
        for (Spoke spoke : spokes) {
          solid |= covers(spoke, disc / 2, p);
        }
        boolean open = result.windows().stream().anyMatch(w -> w.contains(p));
        assertEquals(!solid, open, "seed " + seed + " at " + p);
      }
    }
  }

  private static boolean covers(Spoke spoke, double disc, Point p) {
    Point along = Point.polar(1, spoke.direction());
    double t = p.dot(along);
    double leaves = Math.sqrt(disc * disc - spoke.atHub() * spoke.atHub() / 4);
    double width = spoke.atHub() + (spoke.atRim() - spoke.atHub()) * (t - leaves) / (120 - leaves);
    return t > leaves && 2 * Math.abs(p.cross(along)) < width;
  }
}
