package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertSame;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Of several chains the right one is taken, though a wrong one sees little of what it lacks. */
class ChainChoiceTest {

  private static final double RADIUS = 8;

  /** A square of 40 mm with one corner rounded. */
  private static EdgeChain rounded() {
    return EdgeChain.of(
        List.of(
            new Point(0, 0),
            new Point(40, 0),
            new Point(40, 40 - RADIUS),
            new Point(40 - RADIUS, 40),
            new Point(0, 40)),
        List.of(0.0, 0.0, RADIUS * (1 - Math.sqrt(0.5)), 0.0, 0.0));
  }

  /** The same with the corner cut by a line that touches the round in its middle. */
  private static EdgeChain cut() {
    double c = RADIUS * (2 - Math.sqrt(2));
    return EdgeChain.of(
        List.of(
            new Point(0, 0),
            new Point(40, 0),
            new Point(40, 40 - c),
            new Point(40 - c, 40),
            new Point(0, 40)),
        List.of(0.0, 0.0, 0.0, 0.0, 0.0));
  }

  private static EdgeChain square() {
    return EdgeChain.of(
        List.of(new Point(0, 0), new Point(40, 0), new Point(40, 40), new Point(0, 40)),
        List.of(0.0, 0.0, 0.0, 0.0));
  }

  /** What is seen of a true edge along a chain, beside corners nothing. */
  private static List<EdgeChain.Measured> seen(EdgeChain chain, EdgeChain truth) {
    Random random = new Random(3);
    List<EdgeChain.Measured> all = new ArrayList<>();
    for (EdgeChain.Site site : chain.sites()) {
      Point true0 =
          truth.places().stream()
              .min((a, b) -> Double.compare(a.distance(site.at()), b.distance(site.at())))
              .orElseThrow();
      double off = true0.minus(site.at()).dot(site.outward()) + 0.015 * random.nextGaussian();
      if (site.counts() && Math.abs(off) < 0.8) {
        all.add(new EdgeChain.Measured(site.stretch(), site.at().plus(site.outward(), off)));
      }
    }
    return all;
  }

  private static EdgeChain chosen(EdgeChain truth, List<EdgeChain> chains) {
    List<List<EdgeChain.Measured>> seen = chains.stream().map(c -> seen(c, truth)).toList();
    return ChainChoice.of(chains, seen, truth.places(), 0.6, p -> 0);
  }

  @Test
  void aRoundedCornerIsNotTakenForOneThatIsCutOff() {
    EdgeChain right = rounded();
    assertSame(right, chosen(right, List.of(cut(), right, square())));
  }

  @Test
  void aSharpCornerIsNotTakenForARoundedOne() {
    EdgeChain right = square();
    assertSame(right, chosen(right, List.of(rounded(), cut(), right)));
  }

  @Test
  void ofTwoThatLieAsWellTheOneOfFewerStretchesIsTaken() {
    EdgeChain right = square();
    EdgeChain more =
        EdgeChain.of(
            List.of(
                new Point(0, 0),
                new Point(20, 0),
                new Point(40, 0),
                new Point(40, 40),
                new Point(0, 40)),
            List.of(0.0, 0.0, 0.0, 0.0, 0.0));
    assertSame(right, chosen(right, List.of(more, right)));
  }

  @Test
  void aChainWithALoopWhereNoEdgeIsIsNotTaken() {
    EdgeChain right = rounded();
    EdgeChain loop =
        EdgeChain.of(
            List.of(
                new Point(0, 0),
                new Point(40, 0),
                new Point(40, 20),
                new Point(90, 22),
                new Point(40, 24),
                new Point(40, 40 - RADIUS),
                new Point(40 - RADIUS, 40),
                new Point(0, 40)),
            List.of(0.0, 0.0, 0.0, 0.0, 0.0, RADIUS * (1 - Math.sqrt(0.5)), 0.0, 0.0));
    assertSame(right, chosen(right, List.of(loop, right)));
  }
}
