package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.measure.Pattern.Spacing;
import java.util.List;
import org.junit.jupiter.api.Test;

class SurveyTest {

  private static final MeasurePractice PRACTICE = MeasurePractice.standard();

  private static SurveyResult of(Calliper calliper) {
    return Survey.of(calliper.measured(), PRACTICE);
  }

  @Test
  void allPairsWithoutErrorsGiveTheHolesBack() {
    for (int n = 2; n <= 9; n++) {
      SurveyResult result =
          of(new Calliper(Calliper.ring(n, 70), 5.5, 0.05, null).diameter(0).allPairs());
      Pattern pattern = result.pattern().orElseThrow();
      assertFalse(result.even());
      assertEquals(70, pattern.pcd(), 1e-7, "n " + n);
      assertEquals(5.5, pattern.size().orElseThrow(), 1e-7);
      assertEquals(Spacing.EVEN, pattern.spacing());
      for (int i = 0; i < n; i++) {
        assertTrue(
            result.holes().get(i).at().near(Calliper.ring(n, 70).get(i), 1e-6),
            n + " " + result.holes());
      }
    }
  }

  @Test
  void fourReadingsOfSixHolesTellAnEvenRing() {
    Calliper calliper =
        new Calliper(Calliper.ring(6, 70), 5.5, 0.1, null)
            .diameter(0)
            .over(Over.OUTSIDE, 0, 3)
            .over(Over.OUTSIDE, 1, 4)
            .over(Over.OUTSIDE, 0, 1);
    SurveyResult result = of(calliper);
    assertTrue(result.even());
    assertEquals(70, result.pattern().orElseThrow().pcd(), 1e-7);
    assertEquals(Spacing.ASSUMED, result.pattern().orElseThrow().spacing());
  }

  @Test
  void nextReadingsFollowedLeadToAFreeNetwork() {
    for (int n = 2; n <= 8; n++) {
      Calliper calliper = new Calliper(Calliper.ring(n, 70), 5.5, 0.1, null);
      int taken = 0;
      SurveyResult result = of(calliper);
      StringBuilder order = new StringBuilder();
      while (!result.told() || result.even()) {
        Measured.Pair pair = result.next().get(0);
        order.append(result.measured().holes(pair)).append(' ').append(pair.over()).append("; ");
        if (pair.over() == Over.DIAMETER) {
          calliper.diameter(pair.from());
        } else {
          calliper.over(pair.over(), pair.from(), pair.to());
        }
        taken++;
        assertTrue(taken < 30, order.toString());
        result = of(calliper);
      }
    }
  }

  @Test
  void edgesAtRightAnglesGiveThePlaceTurnAndHand() {
    List<Point> centres = Calliper.ring(5, 69);
    Calliper calliper = new Calliper(centres, 5.2, 0.1, null).diameter(0).allPairs();
    for (int i = 0; i < 5; i++) {
      calliper.edge(i, Edge.LEFT, Over.CENTRES, 60).edge(i, Edge.BOTTOM, Over.NEAR_SIDE, 80);
    }
    SurveyResult result = of(calliper);
    for (int i = 0; i < 5; i++) {
      Point at = result.holes().get(i).at();
      assertTrue(at.near(centres.get(i).plus(new Point(60, 80)), 1e-6), at + "");
    }
    assertTrue(result.pattern().orElseThrow().centre().near(new Point(60, 80), 1e-6));
  }
}
