package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.valid.IsSimpleOp;

/**
 * A chain that meets itself is found on the exact curves, also where neighbours curve alike. The
 * second method is JTS's test of simple lines on chords within 1e-4 mm, on seeded chains; {@code
 * -Dfelloe.chains=100000} runs more of them.
 */
class SelfMeetingTest {

  private static final int CHAINS = Integer.getInteger("felloe.chains", 6_000);
  private static final double CHORD = 1e-4;

  private static String refusal(List<Segment> chain) {
    return assertThrows(GeometryException.class, () -> new Contour(chain)).getMessage();
  }

  @Test
  void neighboursOfOneRadiusThatCrossASecondTimeAreRefused() {
    // Two circles of radius 10 about (-6, 0) and (6, 0) meet at (0, -8) and (0, 8).
    Point low = new Point(0, -8);
    Point left = new Point(-6, 0);
    Point right = new Point(6, 0);
    Arc first = Arc.about(left, new Point(-6, -10), low, true);
    Arc once = Arc.about(right, low, new Point(-4, 0), false);
    Arc twice = Arc.about(right, low, Point.polar(10, Math.PI / 2).plus(right), false);
    Arc beyond = Arc.about(left, new Point(-16, 0), low, true);
    assertTrue(SelfMeeting.first(closed(first, once)).isEmpty());
    assertTrue(SelfMeeting.first(closed(beyond, once)).isEmpty());
    Arc over = Arc.about(left, Point.polar(10, 2.5).plus(left), low, false);
    assertEquals("edges 1 and 2 cross or touch", refusal(closed(over, twice)));
    assertTrue(
        new Point(0, 8).near(SelfMeeting.first(closed(over, twice)).orElseThrow().where(), 1e-9));
  }

  private static List<Segment> closed(Segment... chain) {
    List<Segment> all = new ArrayList<>(List.of(chain));
    all.add(new Line(chain[chain.length - 1].to(), chain[0].from()));
    return all;
  }

  @ParameterizedTest
  @ValueSource(doubles = {-60, -51, -50.1})
  void aSquareWhoseSidesBulgeAlikeBeyondTheirMeetingIsRefused(double rise) {
    // Side 100: bulging inward by more than 50, the sides cross.
    List<Segment> chain = new ArrayList<>();
    List<Point> corners = SharpChains.rectangle(100, 100);
    for (int i = 0; i < 4; i++) {
      chain.add(Arc.withRise(corners.get(i), corners.get((i + 1) % 4), rise));
    }
    assertTrue(refusal(chain).endsWith("cross or touch"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-20, -5, 5, 20, 49, 60})
  void aSquareWhoseSidesBulgeAlikeAndStayClearIsWelcome(double rise) {
    List<Segment> chain = new ArrayList<>();
    List<Point> corners = SharpChains.rectangle(100, 100);
    for (int i = 0; i < 4; i++) {
      chain.add(Arc.withRise(corners.get(i), corners.get((i + 1) % 4), rise));
    }
    double radius = (50 * 50 + rise * rise) / (2 * Math.abs(rise));
    double half = 2 * Math.atan(Math.abs(rise) / 50);
    double segment = radius * radius * (half - Math.sin(half) * Math.cos(half));
    assertEquals(10_000 + Math.signum(rise) * 4 * segment, new Contour(chain).area(), 1e-8);
  }

  @Test
  void aWholeCircleInAChainOfSeveralIsRefused() {
    Arc circle = Arc.circle(new Point(-10, 0), 10);
    Point q = new Point(20, 0);
    List<Segment> chain =
        List.of(Arc.withRise(circle.to(), q, 5), Arc.withRise(q, circle.from(), 5), circle);
    assertTrue(refusal(chain).endsWith("cross or touch"));
    Arc touching = new Arc(circle.to(), circle.to(), new Point(5, 0), 5, -2 * Math.PI);
    assertEquals("edges 1 and 2 cross or touch", refusal(List.of(circle, touching)));
  }

  /**
   * The two methods may differ only where a meeting is shallower than the chords can show: then the
   * point told must lie on both segments, measured by halving, well away from their joint.
   */
  @Test
  void seededChainsAreJudgedAsChordsJudgeThem() {
    int simple = 0;
    int crossed = 0;
    int shallow = 0;
    List<String> wrong = new ArrayList<>();
    for (long seed = 1; seed <= CHAINS; seed++) {
      List<Segment> chain = ChainSamples.chain(seed);
      if (chain.isEmpty()) {
        continue;
      }
      Optional<SegmentIndex.Clash> found = SelfMeeting.first(chain);
      boolean chordsCross = cross(chain, CHORD);
      if (found.isPresent() == chordsCross) {
        simple += chordsCross ? 0 : 1;
        crossed += chordsCross ? 1 : 0;
      } else if (found.isPresent() && sharedBeyondTheirJoint(chain, found.get())) {
        shallow++;
      } else if (found.isPresent() || cross(chain, CHORD / 1000)) {
        wrong.add("seed " + seed + ": " + found + ", chords cross: " + chordsCross);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(simple > CHAINS / 3 && crossed > CHAINS / 3, simple + " and " + crossed);
    assertTrue(shallow < CHAINS / 50, shallow + " shallow meetings");
    if (CHAINS > 10_000) {
      System.out.println(simple + " simple, " + crossed + " crossed, " + shallow + " shallow");
    }
  }

  private static boolean sharedBeyondTheirJoint(List<Segment> chain, SegmentIndex.Clash clash) {
    Segment a = chain.get(clash.first());
    Segment b = chain.get(clash.second());
    double fromJoint = Double.POSITIVE_INFINITY;
    for (Point end : List.of(a.from(), a.to())) {
      if (end.equals(b.from()) || end.equals(b.to())) {
        fromJoint = Math.min(fromJoint, end.distance(clash.where()));
      }
    }
    double apart = measured(a, clash.where()) + measured(b, clash.where());
    return apart <= 2.2 * Tolerances.SAME_POINT && fromJoint > 2 * Tolerances.SAME_POINT;
  }

  /** Distance of a point to a segment by sampling and halving, without the closed form. */
  private static double measured(Segment segment, Point p) {
    double best = 0;
    double step = 1e-3;
    for (double f = 0; f <= 1; f += step) {
      best = segment.at(f).distance(p) < segment.at(best).distance(p) ? f : best;
    }
    for (; step > 1e-13; step /= 2) {
      for (double f : new double[] {Math.max(0, best - step), Math.min(1, best + step)}) {
        best = segment.at(f).distance(p) < segment.at(best).distance(p) ? f : best;
      }
    }
    return segment.at(best).distance(p);
  }

  /** Whether the chords of a chain meet other than at their ends, by JTS. */
  private static boolean cross(List<Segment> chain, double chord) {
    List<Coordinate> points = new ArrayList<>();
    for (Segment segment : chain) {
      int pieces = 1;
      if (segment instanceof Arc arc) {
        double step = 2 * Math.acos(Math.max(0, 1 - chord / arc.radius()));
        pieces = (int) Math.max(2, Math.ceil(Math.abs(arc.sweep()) / Math.max(step, 1e-5)));
      }
      for (int k = 0; k < pieces; k++) {
        Point p = segment.at((double) k / pieces);
        points.add(new Coordinate(p.x(), p.y()));
      }
    }
    points.add(points.get(0).copy());
    return !IsSimpleOp.isSimple(
        new GeometryFactory().createLineString(points.toArray(Coordinate[]::new)));
  }
}
