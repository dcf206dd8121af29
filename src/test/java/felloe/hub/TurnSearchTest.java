package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class TurnSearchTest {

  private static final long SEED = 7L;

  @Test
  void theSmallestCircleRoundATriangleIsTheCircumcircleOrStandsOnTheLongSide() {
    SmallestReach acute =
        SmallestReach.of(new double[] {0, 4, 2}, new double[] {0, 0, 3}, new double[3]);
    // Circumradius abc / (4 area) with sides 4, sqrt 13, sqrt 13 and area 6.
    assertEquals(4 * 13 / 24.0, acute.value(), 1e-12);
    SmallestReach blunt =
        SmallestReach.of(new double[] {0, 4, 2}, new double[] {0, 0, 1}, new double[3]);
    assertEquals(2, blunt.value(), 1e-12);
    assertEquals(2, blunt.x(), 1e-12);
  }

  @Test
  void slackMovesThePlaceTowardTheTightPoint() {
    SmallestReach reach =
        SmallestReach.of(new double[] {0, 10}, new double[] {0, 0}, new double[] {1, 3});
    // Reach r + 1 from one and r + 3 from the other, together 10.
    assertEquals(3, reach.value(), 1e-12);
    assertEquals(4, reach.x(), 1e-12);
    SmallestReach swallowed =
        SmallestReach.of(new double[] {0, 1}, new double[] {0, 0}, new double[] {1, 3});
    assertEquals(-1, swallowed.value(), 1e-12);
    assertEquals(0, swallowed.x(), 1e-12);
  }

  @Test
  void noStepInAnyDirectionBettersTheSmallestReach() {
    Random random = new Random(SEED);
    for (int run = 0; run < 2000; run++) {
      int n = 1 + random.nextInt(8);
      double[] x = random.doubles(n, -5, 5).toArray();
      double[] y = random.doubles(n, -5, 5).toArray();
      double[] slack = random.doubles(n, 0, run % 2 == 0 ? 1 : 4).toArray();
      SmallestReach reach = SmallestReach.of(x, y, slack);
      assertEquals(reach.value(), most(x, y, slack, reach.x(), reach.y()), 1e-11, "run " + run);
      // The function is convex: what no small step betters, nothing betters.
      for (int k = 0; k < 64; k++) {
        double way = 2 * Math.PI * k / 64;
        for (double step : new double[] {1e-5, 1e-2}) {
          double there =
              most(x, y, slack, reach.x() + step * Math.cos(way), reach.y() + step * Math.sin(way));
          assertTrue(there >= reach.value() - 1e-11, "seed " + SEED + ", run " + run);
        }
      }
    }
  }

  private static double most(double[] x, double[] y, double[] slack, double tx, double ty) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      most = Math.max(most, Math.hypot(tx - x[i], ty - y[i]) - slack[i]);
    }
    return most;
  }

  @Test
  void noTurnOfAFineGridGivesMoreRoomThanTheSearchFound() {
    Random random = new Random(SEED);
    double[] spreads = {0, 1e-7, 0.2, 1, 5};
    for (int run = 0; run < 100; run++) {
      int n = 2 + random.nextInt(7);
      double spread = spreads[run % spreads.length];
      double[][] screws = new double[2][n];
      double[][] holes = new double[2][n];
      double[] slack = new double[n];
      for (int i = 0; i < n; i++) {
        double way = 2 * Math.PI * i / n;
        screws[0][i] = 35 * Math.cos(way);
        screws[1][i] = 35 * Math.sin(way);
        holes[0][i] = 35 * Math.cos(way + 1) + spread * random.nextGaussian();
        holes[1][i] = 35 * Math.sin(way + 1) + spread * random.nextGaussian();
        slack[i] = random.nextInt(3) == 0 ? 0.25 : random.nextDouble();
      }
      TurnSearch found = TurnSearch.of(screws, holes, slack, Double.NEGATIVE_INFINITY);
      assertTrue(found.found());
      assertEquals(found.value(), at(screws, holes, slack, found.turn()), 1e-11);
      for (int k = 0; k < 3000; k++) {
        double turn =
            k < 1000 ? 2 * Math.PI * k / 1000 : found.turn() + Math.pow((k - 2000) / 1000.0, 5);
        assertTrue(
            at(screws, holes, slack, turn) <= found.value() + 1e-9 + 1e-12,
            "seed " + SEED + ", run " + run + ", turn " + turn);
      }
      assertFalse(TurnSearch.of(screws, holes, slack, found.value() + 1e-9).found());
    }
  }

  private static double at(double[][] screws, double[][] holes, double[] slack, double turn) {
    int n = slack.length;
    double[] x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = holes[0][i] - Math.cos(turn) * screws[0][i] + Math.sin(turn) * screws[1][i];
      y[i] = holes[1][i] - Math.sin(turn) * screws[0][i] - Math.cos(turn) * screws[1][i];
    }
    return -SmallestReach.of(x, y, slack).value();
  }
}
