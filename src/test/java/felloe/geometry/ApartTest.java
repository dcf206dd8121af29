package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What regions whose edges do not meet have in common, point by point. */
class ApartTest {

  private static Contour ring(Random random, Point at, double size) {
    if (random.nextBoolean()) {
      return Contour.circle(at, size);
    }
    double a = size * (0.4 + random.nextDouble() / 2);
    double b = size * (0.4 + random.nextDouble() / 2);
    return Contour.rectangle(new Box(at.x() - a, at.y() - b, at.x() + a, at.y() + b));
  }

  private static Point some(Random random, double reach) {
    return new Point((random.nextDouble() - 0.5) * reach, (random.nextDouble() - 0.5) * reach);
  }

  private static Optional<Region> region(Random random) {
    Point at = some(random, 60);
    List<Contour> holes = new ArrayList<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      holes.add(ring(random, at.plus(some(random, 40)), 2 + random.nextDouble() * 12));
    }
    try {
      return Optional.of(new Region(ring(random, at, 10 + random.nextDouble() * 50), holes));
    } catch (GeometryException touching) {
      return Optional.empty();
    }
  }

  private static boolean in(List<Region> regions, Point p) {
    return regions.stream().anyMatch(r -> r.contains(p));
  }

  @Test
  void everyPointIsWhereTheSetsHaveIt() {
    Random random = new Random(11);
    int apart = 0;
    for (int i = 0; i < 4000; i++) {
      Optional<Region> first = region(random);
      Optional<Region> second = region(random);
      if (first.isEmpty() || second.isEmpty()) {
        continue;
      }
      Region a = first.get();
      Region b = second.get();
      Optional<List<Region>> common = Apart.intersection(List.of(a), b);
      Optional<List<Region>> less = Apart.difference(List.of(a), List.of(b));
      apart += common.isPresent() ? 1 : 0;
      for (int k = 0; k < 60; k++) {
        Point p = some(random, 140);
        int seed = i;
        common.ifPresent(
            r -> assertEquals(a.contains(p) && b.contains(p), in(r, p), seed + " common " + p));
        less.ifPresent(
            r -> assertEquals(a.contains(p) && !b.contains(p), in(r, p), seed + " less " + p));
      }
    }
    assertTrue(apart > 150, "so many were apart: " + apart);
  }

  @Test
  void edgesThatComeNearAreLeftToTheChords() {
    Region a = Region.of(Contour.circle(Point.ORIGIN, 50));
    for (double gap : new double[] {0, 0.001, 0.0039}) {
      Region b = Region.of(Contour.circle(Point.ORIGIN, 50 - gap));
      assertTrue(Apart.intersection(List.of(a), b).isEmpty(), "gap " + gap);
      assertTrue(Apart.difference(List.of(a), List.of(b)).isEmpty(), "gap " + gap);
    }
    Region clear = Region.of(Contour.circle(Point.ORIGIN, 50 - 0.005));
    assertEquals(List.of(clear), Apart.intersection(List.of(a), clear).orElseThrow());
    double ring =
        Apart.difference(List.of(a), List.of(clear)).orElseThrow().get(0).properties().area();
    assertEquals(Math.PI * (50 * 50 - 49.995 * 49.995), ring, 1e-6);
  }

  @Test
  void whatIsTakenAwayTwiceIsTakenOnce() {
    Region a = Region.of(Contour.circle(Point.ORIGIN, 50));
    Region big = Region.of(Contour.circle(new Point(5, 0), 20));
    Region small = Region.of(Contour.circle(new Point(5, 0), 10));
    double area = a.properties().area() - big.properties().area();
    for (List<Region> both : List.of(List.of(big, small), List.of(small, big))) {
      List<Region> left = Combine.difference(List.of(a), both);
      assertEquals(1, left.size());
      assertEquals(area, left.get(0).properties().area(), 1e-9);
    }
  }
}
