package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A chain that leaves the edge it was made of is told. */
class PartEdgesTest {

  private static final EdgeChain SQUARE =
      EdgeChain.of(
          List.of(new Point(0, 0), new Point(40, 0), new Point(40, 40), new Point(0, 40)),
          List.of(0.0, 0.0, 0.0, 0.0));

  @Test
  void aCornerThatWasCutOffIsTold() {
    EdgeChain cut =
        EdgeChain.of(
            List.of(
                new Point(0, 0),
                new Point(40, 0),
                new Point(40, 34),
                new Point(34, 40),
                new Point(0, 40)),
            List.of(0.0, 0.0, 0.0, 0.0, 0.0));
    EdgeChain.Astray told = PartEdges.held(cut, SQUARE.places()).astray().orElseThrow();
    assertTrue(told.at().near(new Point(40, 40), 1), told.toString());
    assertEquals(6 / Math.sqrt(2), told.off(), 0.5);
  }

  @Test
  void aChainOnItsEdgeIsNotDoubted() {
    assertTrue(PartEdges.held(SQUARE, SQUARE.places()).astray().isEmpty());
  }
}
