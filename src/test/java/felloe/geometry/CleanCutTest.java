package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Topology.Operation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Regions whose edges cross cleanly or not at all: point by point, and against the chords. */
class CleanCutTest {

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
    int clean = 0;
    for (int i = 0; i < 4000; i++) {
      Optional<Region> first = region(random);
      Optional<Region> second = region(random);
      if (first.isEmpty() || second.isEmpty()) {
        continue;
      }
      Region a = first.get();
      Region b = second.get();
      Optional<List<Region>> common = CleanCut.of(Operation.INTERSECTION, a, b);
      Optional<List<Region>> less = CleanCut.of(Operation.DIFFERENCE, a, b);
      Optional<List<Region>> all = CleanCut.of(Operation.UNION, a, b);
      clean += common.isPresent() ? 1 : 0;
      for (int k = 0; k < 60; k++) {
        Point p = some(random, 140);
        int seed = i;
        common.ifPresent(
            r -> assertEquals(a.contains(p) && b.contains(p), in(r, p), seed + " common " + p));
        less.ifPresent(
            r -> assertEquals(a.contains(p) && !b.contains(p), in(r, p), seed + " less " + p));
        all.ifPresent(
            r -> assertEquals(a.contains(p) || b.contains(p), in(r, p), seed + " all " + p));
      }
    }
    assertTrue(clean > 1000, "so many were clean: " + clean);
  }

  @Test
  void areasAddUpAndAreThoseOfTheChords() {
    int crossing = 0;
    for (long seed = 1; seed <= 600; seed++) {
      Random random = new Random(seed);
      Region a = Region.of(MoreShapes.smooth(seed, 100));
      Contour other =
          seed % 2 == 0 ? MoreShapes.jagged(seed, 7, 90) : MoreShapes.smooth(seed + 7000, 80);
      Region b = Region.of(other.moved(new RigidTransform(false, 0, some(random, 60))));
      Optional<List<Region>> common = CleanCut.of(Operation.INTERSECTION, a, b);
      if (common.isEmpty()) {
        continue;
      }
      crossing++;
      String what = "seed " + seed;
      double both = area(common.get());
      double less = area(CleanCut.of(Operation.DIFFERENCE, a, b).orElseThrow());
      double more = area(CleanCut.of(Operation.UNION, a, b).orElseThrow());
      double one = a.properties().area();
      double two = b.properties().area();
      assertEquals(one, both + less, 1e-9 * one, what);
      assertEquals(one + two, both + more, 1e-9 * (one + two), what);
      for (Operation operation : Operation.values()) {
        List<Region> chords =
            operation == Operation.UNION
                ? Combine.onChords(operation, List.of(a, b), List.of())
                : Combine.onChords(operation, List.of(a), List.of(b));
        List<Region> exact = CleanCut.of(operation, a, b).orElseThrow();
        assertEquals(chords.size(), exact.size(), what + " " + operation);
        assertEquals(area(chords), area(exact), 1e-6 * one, what + " " + operation);
      }
    }
    assertTrue(crossing > 400, "so many crossed cleanly: " + crossing);
  }

  private static double area(List<Region> regions) {
    return regions.stream().mapToDouble(r -> r.properties().area()).sum();
  }

  @Test
  void aLensHasTheAreaOfTwoCircularSegments() {
    // Two circles of one radius r at a distance d: 2 r² acos(d / 2r) - d/2 root(4 r² - d²).
    Region a = Region.of(Contour.circle(Point.ORIGIN, 30));
    Region b = Region.of(Contour.circle(new Point(40, 0), 30));
    List<Region> lens = CleanCut.of(Operation.INTERSECTION, a, b).orElseThrow();
    double area = 2 * 900 * Math.acos(40 / 60.0) - 20 * Math.sqrt(3600 - 1600);
    assertEquals(area, area(lens), 1e-9);
    assertEquals(2, lens.get(0).outer().segments().size());
  }

  @Test
  void edgesThatGrazeAreLeftToTheChords() {
    Region a = Region.of(Contour.circle(Point.ORIGIN, 50));
    Region b = Region.of(Contour.rectangle(new Box(49.9999, -20, 80, 20)));
    assertTrue(CleanCut.of(Operation.INTERSECTION, a, b).isEmpty());
    Region corner = Region.of(Contour.rectangle(new Box(30, 40.001, 80, 60)));
    assertTrue(CleanCut.of(Operation.INTERSECTION, a, corner).isEmpty());
  }

  @Test
  void edgesThatComeNearAreLeftToTheChords() {
    Region a = Region.of(Contour.circle(Point.ORIGIN, 50));
    for (double gap : new double[] {0, 0.001, 0.0039}) {
      Region b = Region.of(Contour.circle(Point.ORIGIN, 50 - gap));
      assertTrue(CleanCut.of(Operation.INTERSECTION, a, b).isEmpty(), "gap " + gap);
      assertTrue(CleanCut.of(Operation.DIFFERENCE, a, b).isEmpty(), "gap " + gap);
    }
    Region clear = Region.of(Contour.circle(Point.ORIGIN, 50 - 0.005));
    assertEquals(List.of(clear), CleanCut.of(Operation.INTERSECTION, a, clear).orElseThrow());
    double ring =
        CleanCut.of(Operation.DIFFERENCE, a, clear).orElseThrow().get(0).properties().area();
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
