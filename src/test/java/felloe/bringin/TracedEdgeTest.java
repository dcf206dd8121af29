package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracedEdgeTest {

  private static final TracedEdge OUTER = round(0, 0, 150, 150);

  /** Seen as a circle of one radius, and measured as one of another. */
  private static TracedEdge round(double x, double y, double seen, double measured) {
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < 72; i++) {
      line.add(new Point(x, y).plus(Point.polar(seen, 2 * Math.PI * i / 72)));
    }
    return new TracedEdge(line, EdgeChain.circle(new Point(x, y), measured, false));
  }

  @Test
  void openingsThatLieApartStay() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge hole = round(87, 0, 2, 4);
    assertEquals(
        List.of(OUTER, hole, slot), TracedEdge.together(List.of(OUTER, hole, slot)), "all of them");
  }

  @Test
  void ofTwoOpeningsThatMeetTheOneThatWasSeenSmallerIsWrong() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge spot = round(82, 0, 0.6, 12);
    assertEquals(List.of(OUTER, slot), TracedEdge.together(List.of(OUTER, spot, slot)));
  }

  @Test
  void anOpeningWithinAnotherOrRoundItOrAcrossTheOutlineIsWrong() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge within = round(70, 0, 1, 1.5);
    TracedEdge about = round(60, 0, 1, 40);
    TracedEdge across = round(-140, 0, 1, 15);
    assertEquals(
        List.of(OUTER, slot), TracedEdge.together(List.of(OUTER, within, about, slot, across)));
  }

  @Test
  void aHoleStaysBesideAnEdgeThatIsWrongItself() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge spot = round(85, 0, 1.2, 15);
    TracedEdge hole = round(92, 0, 1, 3);
    assertEquals(List.of(OUTER, hole, slot), TracedEdge.together(List.of(OUTER, spot, hole, slot)));
  }
}
