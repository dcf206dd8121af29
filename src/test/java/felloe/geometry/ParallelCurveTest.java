package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Edges that move by themselves, against the general method, which shares no code with it. */
class ParallelCurveTest {

  private static Contour some(long seed) {
    return switch ((int) (seed % 5)) {
      case 0 -> RandomShapes.contour(seed, 100);
      case 1 -> MoreShapes.smooth(seed, 200);
      case 2 -> MoreShapes.jagged(seed, 5 + (int) (seed % 9), 80);
      case 3 -> MoreShapes.chipped(seed, 120);
      default -> RandomShapes.roundedRectangle(40 + seed % 50, 30 + seed % 40, 1 + seed % 14);
    };
  }

  @Test
  void whatItGivesIsWhatTheChordsGive() {
    int direct = 0;
    int asked = 0;
    for (long seed = 1; seed <= 2000; seed++) {
      Contour source = some(seed);
      double d = Math.pow(10, -1 + 2.3 * new Random(seed).nextDouble()) * (seed % 3 == 0 ? 1 : -1);
      asked++;
      Optional<List<Region>> given = Offset.parallel(Region.of(source), d);
      if (given.isEmpty()) {
        continue;
      }
      direct++;
      String what = "seed " + seed + ", distance " + d;
      List<Region> chords = Offset.onChords(Region.of(source), d);
      assertEquals(1, chords.size(), what);
      Contour one = given.get().get(0).outer();
      Contour other = chords.get(0).outer();
      assertEquals(0, chords.get(0).holes().size(), what);
      assertEquals(other.area(), one.area(), 1e-5 * other.length(), what);
      for (Segment edge : one.segments()) {
        assertEquals(0, other.distance(edge.from()), 2e-5, what);
        assertEquals(0, other.distance(edge.at(0.5)), 2e-5, what);
      }
    }
    assertTrue(direct > 0.3 * asked, direct + " of " + asked);
  }

  @Test
  void aFigureThatFallsApartIsLeftToTheChords() {
    Contour source = MoreShapes.dumbbell(40, 10);
    assertEquals(Optional.empty(), ParallelCurve.of(source, -6));
    assertEquals(2, Offset.of(source, -6).size());
  }

  @Test
  void nothingComesOutOfAFigureThatIsUsedUp() {
    Contour source = RandomShapes.roundedRectangle(40, 30, 5);
    assertTrue(ParallelCurve.of(source, -14.9).isPresent());
    assertEquals(Optional.empty(), ParallelCurve.of(source, -15.1));
    assertEquals(List.of(), Offset.of(source, -15.1));
    assertEquals(Optional.empty(), ParallelCurve.of(Contour.circle(Point.ORIGIN, 5), -5.1));
  }

  @Test
  void roundsThatAreUsedUpLeaveTheMeetingOfTheirNeighbours() {
    // 40 by 30 with rounds of 5, moved inward by 8: 24 by 14 with sharp corners.
    Contour moved = ParallelCurve.of(RandomShapes.roundedRectangle(40, 30, 5), -8).orElseThrow();
    assertEquals(4, moved.segments().size());
    assertEquals(24 * 14, moved.area(), 1e-9);
  }

  @Test
  void twoEdgesThatCrossTwiceMeetAtEachEndOnce() {
    // A flat on a circle whose rounds are used up: the arc and the line meet at both ends.
    Contour d =
        Contour.of(
            new Line(new Point(-12, -16), new Point(12, -16)),
            Arc.about(Point.ORIGIN, new Point(12, -16), new Point(-12, -16), true));
    Contour moved = ParallelCurve.of(d, -3).orElseThrow();
    assertEquals(2, moved.segments().size());
    // A circle of 17 cut at 13: half the chord is the root of 289 - 169.
    assertEquals(2 * Math.sqrt(120), moved.segments().get(0).length(), 1e-9);
  }

  @Test
  void holesMoveTheOtherWay() {
    Region ring =
        new Region(Contour.circle(Point.ORIGIN, 50), List.of(Contour.circle(new Point(5, 0), 20)));
    Region moved = Offset.parallel(ring, -4).orElseThrow().get(0);
    assertEquals(46, moved.outer().asCircle().orElseThrow().radius(), 1e-12);
    assertEquals(24, moved.holes().get(0).asCircle().orElseThrow().radius(), 1e-12);
  }

  @Test
  void aHoleThatMeetsTheEdgeIsLeftToTheChords() {
    Region thin =
        new Region(Contour.circle(Point.ORIGIN, 50), List.of(Contour.circle(new Point(20, 0), 20)));
    assertEquals(Optional.empty(), Offset.parallel(thin, -6));
    assertEquals(1, Offset.of(thin, -6).size());
  }
}
