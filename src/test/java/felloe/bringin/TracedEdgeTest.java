package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
    List<TracedEdge> all = List.of(OUTER, slot, hole);
    all.forEach(edge -> assertFalse(edge.strays(all), edge.toString()));
  }

  @Test
  void ofTwoOpeningsThatMeetTheOneThatWasSeenSmallerIsWrong() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge spot = round(82, 0, 0.6, 12);
    List<TracedEdge> all = List.of(OUTER, spot, slot);
    assertTrue(spot.strays(all));
    assertFalse(slot.strays(all));
    assertFalse(OUTER.strays(all));
  }

  @Test
  void anOpeningWithinAnotherOrRoundItOrAcrossTheOutlineIsWrong() {
    TracedEdge slot = round(60, 0, 20, 21);
    TracedEdge within = round(70, 0, 1, 1.5);
    TracedEdge about = round(60, 0, 1, 40);
    TracedEdge across = round(-140, 0, 1, 15);
    List<TracedEdge> all = List.of(OUTER, slot, within, about, across);
    assertTrue(within.strays(all));
    assertTrue(about.strays(all));
    assertTrue(across.strays(all));
    assertFalse(slot.strays(all));
  }
}
