package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chain moves to the places it is fitted to, all of it. */
class ChainFitTest {

  private static final double NOISE = 0.012;

  /** A rounded four-sided outline whose sides are bowed: arcs that run on into each other. */
  private static EdgeChain outline() {
    List<Point> at = new ArrayList<>();
    List<Double> bends = new ArrayList<>();
    double[][] corner = {{140, -55}, {140, 55}, {95, 100}, {-95, 100}};
    double[] rise = {1.6, 17.5, 2.7, 17.5};
    for (int k = 0; k < 8; k++) {
      double sign = k < 4 ? 1 : -1;
      at.add(new Point(sign * corner[k % 4][0], sign * corner[k % 4][1]));
      bends.add(rise[k % 4]);
    }
    return EdgeChain.of(at, bends);
  }

  /** Each joint moved along the edge by as much, at random forth or back, each arc kept. */
  private static EdgeChain slid(EdgeChain chain, double by, long seed) {
    Random random = new Random(seed);
    int n = chain.stretches();
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      Segment to = chain.segment(k);
      Segment from = chain.segment((k + n - 1) % n);
      joints.add(random.nextBoolean() ? to.at(by / to.length()) : from.at(1 - by / from.length()));
    }
    for (int k = 0; k < n; k++) {
      double radius = 1 / chain.segment(k).curvature();
      double half = joints.get(k).distance(joints.get((k + 1) % n)) / 2;
      rises.add(radius - Math.sqrt(radius * radius - half * half));
    }
    return EdgeChain.of(joints, rises);
  }

  private static List<Point> places(EdgeChain truth) {
    Random random = new Random(6);
    return truth.sites().stream()
        .map(site -> site.at().plus(site.outward(), NOISE * random.nextGaussian()))
        .toList();
  }

  private static double worst(EdgeChain chain, EdgeChain truth) {
    double worst = 0;
    for (Point p : chain.places()) {
      double off = truth.segments().stream().mapToDouble(s -> s.distance(p)).min().orElseThrow();
      worst = Math.max(worst, off);
    }
    return worst;
  }

  private static EdgeChain fitted(EdgeChain start, List<Point> places) {
    EdgeChain chain = start;
    for (int round = 0; round < 3; round++) {
      chain = ChainFit.of(chain, chain.assigned(places), places.size());
    }
    return chain;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void jointsThatLieFarAlongTheEdgeTakeNoArcWithThem(long seed) {
    EdgeChain truth = outline();
    EdgeChain fitted = fitted(slid(truth, 6, seed), places(truth));
    assertTrue(worst(fitted, truth) < 5 * NOISE, worst(fitted, truth) + " mm");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1.5, -0.8, 0.8, 1.5})
  void aStretchOffWhichAllItsPlacesLieMovesToThem(double off) {
    EdgeChain truth = outline();
    List<Double> rises = new ArrayList<>();
    List<Point> joints = new ArrayList<>();
    for (int k = 0; k < truth.stretches(); k++) {
      joints.add(truth.joint(k));
      rises.add(truth.rise(k) + (k == 1 ? off : 0));
    }
    EdgeChain fitted = fitted(EdgeChain.of(joints, rises), places(truth));
    assertTrue(worst(fitted, truth) < 5 * NOISE, worst(fitted, truth) + " mm");
  }
}
