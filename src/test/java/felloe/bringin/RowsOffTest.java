package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A chain that lacks an arc is told by the row of places that lies off it. */
class RowsOffTest {

  private static final double NOISE = 0.015;

  /** An oblong whose ends are arcs of three radii that run on into each other. */
  private static final EdgeChain TRUTH =
      EdgeChain.of(
          List.of(
              new Point(-40, -20),
              new Point(40, -20),
              new Point(52, -12),
              new Point(52, 12),
              new Point(40, 20),
              new Point(-40, 20)),
          List.of(0.0, 2.2, 3.5, 2.2, 0.0, 12.0));

  /** The same edge as a chain that lacks stretches. */
  private static EdgeChain without(int stretch) {
    List<Point> joints = new ArrayList<>();
    List<Double> rises = new ArrayList<>();
    int n = TRUTH.stretches();
    for (int k = 0; k < n; k++) {
      if (k != stretch) {
        boolean after = k == (stretch + 1) % n;
        joints.add(after ? TRUTH.joint(stretch).middle(TRUTH.joint(k)) : TRUTH.joint(k));
        rises.add(TRUTH.rise(k));
      }
    }
    return EdgeChain.of(joints, rises);
  }

  private static List<Point> places(long seed) {
    Random random = new Random(seed);
    return TRUTH.sites().stream()
        .map(site -> site.at().plus(site.outward(), NOISE * random.nextGaussian()))
        .toList();
  }

  private static EdgeChain fitted(EdgeChain start, List<Point> places) {
    EdgeChain chain = start;
    for (int round = 0; round < 4; round++) {
      chain = ChainFit.of(chain, chain.assigned(places), places.size());
    }
    return chain;
  }

  private static double worst(EdgeChain chain) {
    return TRUTH.places().stream()
        .mapToDouble(p -> ChainChoice.off(chain.segments(), p))
        .max()
        .orElseThrow();
  }

  private static List<EdgeChain.Measured> inOrder(EdgeChain chain, List<Point> places) {
    return chain.inOrder(chain.assigned(places));
  }

  @Test
  void whereAnArcIsLackingIsTold() {
    int lacking = 2;
    List<Point> places = places(1);
    EdgeChain less = fitted(without(lacking), places);
    assertTrue(worst(less) > 0.25, worst(less) + " mm");
    EdgeChain.Astray told = RowsOff.of(less, inOrder(less, places)).orElseThrow();
    assertTrue(told.at().distance(TRUTH.joint(lacking)) < TRUTH.segment(lacking).length());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whatChanceExplainsIsNotTold(long seed) {
    List<Point> places = places(seed);
    EdgeChain right = fitted(TRUTH, places);
    assertTrue(RowsOff.of(right, inOrder(right, places)).isEmpty());
  }
}
