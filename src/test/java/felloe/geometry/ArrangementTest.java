package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arrangement.Triangle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ArrangementTest {

  private static double area(Triangle t) {
    return t.b().minus(t.a()).cross(t.c().minus(t.a())) / 2;
  }

  private static List<Point> closed(List<Point> ring) {
    List<Point> path = new ArrayList<>(ring);
    path.add(ring.get(0));
    return path;
  }

  private static List<Point> square(double low, double high) {
    return closed(
        List.of(
            new Point(low, low),
            new Point(high, low),
            new Point(high, high),
            new Point(low, high)));
  }

  @Test
  void aSquareInASquareIsFilledAndTheRingAroundItToo() {
    List<Triangle> all = Arrangement.triangles(List.of(square(0, 10), square(4, 6)));
    assertEquals(100, all.stream().mapToDouble(ArrangementTest::area).sum(), 1e-9);
    assertEquals(10, all.size());
  }

  @Test
  void linesThatCrossCutThePlaneAndLooseEndsDoNot() {
    List<Triangle> all =
        Arrangement.triangles(
            List.of(
                square(0, 10),
                List.of(new Point(-1, 5), new Point(11, 5)),
                List.of(new Point(2, 2), new Point(3, 3))));
    assertEquals(100, all.stream().mapToDouble(ArrangementTest::area).sum(), 1e-9);
    for (Triangle t : all) {
      assertTrue(t.a().y() >= 5 == t.centroid().y() > 5 || t.a().y() == 5, t.toString());
    }
  }

  @Test
  void thinPiecesStayBetweenTheirLines() {
    List<List<Point>> lines = new ArrayList<>();
    lines.add(square(0, 8));
    for (int i = 1; i < 26; i++) {
      lines.add(List.of(new Point(0, 0.3 * i), new Point(8, 0.3 * i)));
    }
    List<Triangle> all = Arrangement.triangles(lines);
    assertEquals(2 * 26, all.size());
  }

  /** Edge to edge, nothing twice, nothing missing, whatever lines there are. */
  @Test
  void randomLinesAreFilledEdgeToEdge() {
    Random random = new Random(7);
    for (int round = 0; round < 60; round++) {
      List<List<Point>> lines = new ArrayList<>();
      lines.add(square(0, 100));
      Set<Point> given = new HashSet<>(lines.get(0));
      for (int i = 0; i < 12; i++) {
        List<Point> line = new ArrayList<>();
        for (int k = 0; k < 3 + random.nextInt(6); k++) {
          line.add(new Point(1 + 98 * random.nextDouble(), 1 + 98 * random.nextDouble()));
        }
        lines.add(closed(line));
        given.addAll(line);
      }
      List<Triangle> all = Arrangement.triangles(lines);
      assertEquals(10_000, all.stream().mapToDouble(ArrangementTest::area).sum(), 1e-6);
      Map<List<Point>, Integer> sides = new HashMap<>();
      for (Triangle t : all) {
        assertTrue(area(t) > 0, t.toString());
        sides.merge(List.of(t.a(), t.b()), 1, Integer::sum);
        sides.merge(List.of(t.b(), t.c()), 1, Integer::sum);
        sides.merge(List.of(t.c(), t.a()), 1, Integer::sum);
        given.removeAll(List.of(t.a(), t.b(), t.c()));
      }
      assertEquals(Set.of(), given, "corners that were given are corners still");
      int outside = 0;
      for (Map.Entry<List<Point>, Integer> side : sides.entrySet()) {
        assertEquals(1, side.getValue());
        outside += sides.containsKey(List.of(side.getKey().get(1), side.getKey().get(0))) ? 0 : 1;
      }
      assertEquals(4, outside);
    }
  }
}
