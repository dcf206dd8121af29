package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** Offsets against other ways to know them: Steiner's formula, the way home, a plain buffer. */
class OffsetSecondMethodTest {

  @Test
  void convexFiguresGrowBySteinersFormula() {
    // Area + perimeter d + pi d², perimeter + 2 pi d (integral geometry; any convex figure)
    for (long seed = 1; seed <= 300; seed++) {
      double w = 20 + seed % 90;
      double h = 20 + seed % 71;
      Contour source =
          switch ((int) (seed % 3)) {
            case 0 -> RandomShapes.roundedRectangle(w, h, 1 + seed % 9);
            case 1 -> MoreShapes.slot(new Point(0, 0), Point.polar(w, seed), h / 5);
            default ->
                Contour.polygon(
                    List.of(
                        new Point(0, 0), new Point(w, 0), new Point(w + 10, h), new Point(5, h)));
          };
      double d = 0.01 + (seed % 53) * 0.7;
      List<Region> grown = Offset.of(source, d);
      assertEquals(1, grown.size());
      double area = source.area() + source.length() * d + Math.PI * d * d;
      assertEquals(area, grown.get(0).outer().area(), 1e-10 * area, "seed " + seed);
      double length = source.length() + 2 * Math.PI * d;
      assertEquals(length, grown.get(0).length(), 1e-10 * length, "seed " + seed);
    }
  }

  @Test
  void smoothContoursShrinkAndGrowBySteinersFormulaAndComeHome() {
    int home = 0;
    for (long seed = 1; seed <= 1000; seed++) {
      Contour source = MoreShapes.smooth(seed, 300);
      double least = Double.POSITIVE_INFINITY;
      for (Segment s : source.segments()) {
        least = s instanceof Arc arc ? Math.min(least, arc.radius()) : least;
      }
      double d = 0.8 * least * (seed % 2 == 0 ? 1 : -1);
      if (!free(source, d)) {
        continue; // parts of the contour face each other across less than the distance
      }
      home++;
      String what = "seed " + seed + " distance " + d;
      List<Region> moved = Offset.of(source, d);
      assertEquals(1, moved.size(), what);
      Contour there = moved.get(0).outer();
      double area = source.area() + source.length() * d + Math.PI * d * d;
      assertEquals(area, there.area(), 1e-9 * source.area(), what);
      assertEquals(source.segments().size(), there.segments().size(), what);
      List<Region> back = Offset.of(there, -d);
      assertEquals(1, back.size(), what);
      assertEquals(source.area(), back.get(0).outer().area(), 1e-9 * source.area(), what);
      assertEquals(source.segments().size(), back.get(0).outer().segments().size(), what);
      for (Segment s : back.get(0).outer().segments()) {
        assertEquals(0, source.distance(s.from()), 1e-6, what);
      }
    }
    assertTrue(home > 400, "only " + home + " had room");
  }

  /** Whether every point of the contour can move by the distance without meeting another part. */
  private static boolean free(Contour source, double d) {
    SegmentIndex index = SegmentIndex.of(List.of(source));
    for (Segment s : source.segments()) {
      for (int k = 0; k <= 60; k++) {
        Point q = s.at(k / 60.0).plus(s.tangent(k / 60.0).right(), 1.01 * d);
        if (index.distance(q) < 1.01 * Math.abs(d) - 1e-7) {
          return false;
        }
      }
    }
    return true;
  }

  @Test
  void theAreaAgreesWithAPlainBufferOfFineChords() {
    BufferParameters fine = new BufferParameters(400);
    fine.setSimplifyFactor(1e-9);
    for (long seed = 1; seed <= 400; seed++) {
      Region source = MoreShapes.region(seed);
      double d = MoreShapes.distance(source, seed);
      double expected = BufferOp.bufferOp(polygon(source), d, fine).getArea();
      double area = Offset.of(source, d).stream().mapToDouble(r -> r.properties().area()).sum();
      // The buffer leaves out rounds shorter than a twentieth of the distance, which moves an edge
      // by up to half of 0.05² of it.
      double limit = (2e-3 + 1.25e-3 * Math.abs(d)) * source.length() + 1e-6;
      assertEquals(expected, area, limit, "seed " + seed + " distance " + d);
    }
  }

  private static Polygon polygon(Region region) {
    GeometryFactory factory = new GeometryFactory();
    LinearRing[] holes =
        region.holes().stream().map(h -> ring(factory, h)).toArray(LinearRing[]::new);
    return factory.createPolygon(ring(factory, region.outer()), holes);
  }

  private static LinearRing ring(GeometryFactory factory, Contour contour) {
    List<Point> ring = new Flattener(1e-3).add(contour, 0);
    Coordinate[] at = new Coordinate[ring.size() + 1];
    for (int i = 0; i < at.length; i++) {
      at[i] = new Coordinate(ring.get(i % ring.size()).x(), ring.get(i % ring.size()).y());
    }
    return factory.createLinearRing(at);
  }
}
