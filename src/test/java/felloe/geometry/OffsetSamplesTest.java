package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Offsets of seeded random regions of every kind, sampled densely on both sides. */
class OffsetSamplesTest {

  @Test
  void everyPointOfAnOffsetKeepsItsDistanceAndNoneIsMissing() {
    for (long seed = 1; seed <= 800; seed++) {
      Region source = MoreShapes.region(seed);
      double d = MoreShapes.distance(source, seed);
      check(source, d, "seed " + seed);
    }
  }

  @Test
  void anOffsetOfAnOffsetIsAsGood() {
    for (long seed = 1; seed <= 300; seed++) {
      Region source = MoreShapes.region(seed);
      double d = MoreShapes.distance(source, seed);
      for (Region once : Offset.of(source, d)) {
        check(once, seed % 2 == 0 ? -d : d / 3, "again, seed " + seed);
      }
    }
  }

  @Test
  void shapesThatBeatAPlainBufferAreOffsetAllTheSame() {
    // Short edges at shallow corners, where a buffer of chords takes shortcuts.
    for (long seed : new long[] {864, 1151, 1207, 1494, 1520}) {
      Region source = MoreShapes.region(seed);
      check(source, MoreShapes.distance(source, seed), "seed " + seed);
    }
  }

  private static void check(Region source, double d, String what) {
    try {
      Optional<String> fault = OffsetOracle.fault(source, d, Offset.of(source, d));
      assertEquals(Optional.empty(), fault, what + ", distance " + d);
    } catch (GeometryException e) {
      throw new AssertionError(what + ", distance " + d + ": " + e.getMessage(), e);
    }
  }

  @Test
  void distancesThatJustUseUpARadiusLeaveNothingOrTheRest() {
    Region slot = Region.of(MoreShapes.slot(new Point(-20, 3), new Point(20, -3), 5));
    assertTrue(Offset.of(slot, -5).isEmpty());
    assertTrue(Offset.of(Region.of(Contour.circle(Point.ORIGIN, 5)), -5).isEmpty());
    Region square = Region.of(RandomShapes.roundedRectangle(100, 60, 8));
    List<Region> sharp = Offset.of(square, -8);
    assertEquals(1, sharp.size());
    assertEquals(4, sharp.get(0).outer().segments().size());
    assertEquals(84 * 44, sharp.get(0).outer().area(), 1e-9);
    Region holed =
        new Region(
            RandomShapes.roundedRectangle(100, 60, 8), List.of(Contour.circle(Point.ORIGIN, 5)));
    assertTrue(Offset.of(holed, 5).get(0).holes().isEmpty());
  }
}
