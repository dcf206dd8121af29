package felloe.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReliefTest {

  private static double area(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  @Test
  void aSlabWithHolesHasTheVolumeOfItsAreaTimesItsHeight() {
    Contour outer = Contour.rectangle(new Box(0, 0, 100, 60));
    Contour hole = Contour.circle(new Point(30, 30), 12.5);
    Contour other = Contour.circle(new Point(70, 30), 4.3);
    Region region = new Region(outer, List.of(hole, other));
    Solid slab = Relief.slab(region, 0, 5, 0.01);
    double expected = 6000 - area(hole.chords(0.01)) - area(other.chords(0.01));
    assertEquals(5 * expected, slab.volume(), 1e-7);
    assertEquals(5 * region.properties().area(), slab.volume(), 5 * 0.01 * region.length());
    Bodies.clean(slab);
    for (Point p : hole.chords(0.01)) {
      assertTrue(slab.vertices().contains(Vertex.at(p, 5)), "bit for bit");
    }
  }

  @Test
  void aRingOfRoundSectionHasTheVolumeThatPappusGives() {
    Solid ring = Bodies.ring(150, 12, 240, 30);
    Bodies.clean(ring);
    // The section that was lofted, and the chords of the round: Pappus for the polygon of 240.
    double section = 0;
    double moment = 0;
    for (int row = 0; row < 30; row++) {
      double a = Math.PI * row / 30;
      double b = Math.PI * (row + 1) / 30;
      double width = 12 * (Math.cos(a) - Math.cos(b));
      section += width * 12 * (Math.sin(a) + Math.sin(b));
      moment += width * 12 * (Math.sin(a) + Math.sin(b)) * 150;
    }
    assertEquals(Math.PI * 144, section, 1.5);
    double pappus = 2 * Math.PI * moment;
    double chords = Math.sin(2 * Math.PI / 240) / (2 * Math.PI / 240);
    assertEquals(pappus * chords, ring.volume(), 1e-4 * pappus);
    assertEquals(0, ring.centroid().norm(), 1e-9);
    // Second moment of a torus about its axis: V (R² + 3/4 r²).
    double torus = 2 * Math.PI * 150 * Math.PI * 144 * (150 * 150 + 0.75 * 144);
    assertEquals(torus, ring.secondMoment(Point.ORIGIN), 3e-3 * torus);
  }

  /** Random rings over each other, each of its own height: each adds its area times its height. */
  @Test
  void randomHeapsAreClosedAndHoldTheSumOfTheirParts() {
    Random random = new Random(11);
    for (int round = 0; round < 40; round++) {
      PlanLine base = PlanLine.of(Contour.rectangle(new Box(0, 0, 100, 100)), 0.1);
      List<PlanLine> heaps = new ArrayList<>();
      double[] heights = new double[8];
      double[] dents = new double[8];
      double volume = 10_000 * 50;
      for (int i = 0; i < heights.length; i++) {
        double radius = 3 + 20 * random.nextDouble();
        Point centre =
            new Point(
                radius + 1 + (98 - 2 * radius) * random.nextDouble(),
                radius + 1 + (98 - 2 * radius) * random.nextDouble());
        heaps.add(PlanLine.circle(centre, radius, 0.2));
        heights[i] = 10 * random.nextDouble();
        dents[i] = 5 * random.nextDouble();
        volume += area(heaps.get(i).points()) * (heights[i] - dents[i]);
      }
      List<PlanLine> lines = new ArrayList<>(heaps);
      lines.add(base);
      Solid heap =
          Relief.of(
              lines,
              p -> {
                double top = 50;
                double bottom = 0;
                for (int i = 0; i < heights.length; i++) {
                  boolean in = heaps.get(i).surrounds(p);
                  top += in ? heights[i] : 0;
                  bottom += in ? dents[i] : 0;
                }
                return base.surrounds(p)
                    ? Optional.of(Storey.level(bottom, top))
                    : Optional.empty();
              });
      assertEquals(volume, heap.volume(), 1e-6 * volume);
      Bodies.clean(heap);
    }
  }

  private static Storey sloping(double bottom, double atOrigin, double perX) {
    return new Storey() {
      @Override
      public double top(Point p) {
        return atOrigin + perX * p.x();
      }

      @Override
      public double bottom(Point p) {
        return bottom;
      }
    };
  }

  private static final List<PlanLine> TWO_FIELDS =
      List.of(
          PlanLine.of(Contour.rectangle(new Box(0, 0, 10, 10)), 1),
          PlanLine.open(List.of(new Point(0, 5), new Point(10, 5))));

  @Test
  void facesThatCrossAlongTheirCommonSideAreCutThere() {
    Storey up = sloping(0, 1, 1);
    Storey down = sloping(0, 11, -1);
    Solid body = Relief.of(TWO_FIELDS, p -> Optional.of(p.y() < 5 ? up : down));
    assertEquals(2 * 50 * 6, body.volume(), 1e-9);
    Bodies.clean(body);
    assertTrue(body.vertices().contains(new Vertex(5, 5, 6)));
  }

  @Test
  void aWedgeEndsInAnEdgeWithoutWallsOfNoHeight() {
    Storey wedge = sloping(0, 0, 1);
    Solid body = Relief.of(TWO_FIELDS, p -> Optional.of(wedge));
    assertEquals(500, body.volume(), 1e-9);
    Bodies.clean(body);
    assertTrue(body.triangles().stream().allMatch(t -> t.area() > 1));
  }

  @Test
  void whereFacesMeetThereIsNoBody() {
    Solid half =
        Relief.of(
            TWO_FIELDS, p -> Optional.of(p.y() < 5 ? Storey.level(2, 2) : Storey.level(0, 3)));
    assertEquals(150, half.volume(), 1e-9);
    assertEquals(5, half.extent().least().y());
  }

  @Test
  void heightsThatAreNearlyOneAreOne() {
    Solid body =
        Relief.of(
            TWO_FIELDS,
            p -> Optional.of(p.y() < 5 ? Storey.level(0, 3) : Storey.level(1e-7, 3.00001)));
    assertEquals(300, body.volume(), 1e-2);
    assertEquals(20, body.triangles().size());
  }

  @Test
  void aTopBelowItsBottomAndAnEmptyPlanAreRefused() {
    String top =
        assertThrows(
                GeometryException.class,
                () -> Relief.of(TWO_FIELDS, p -> Optional.of(Storey.level(3, 2))))
            .getMessage();
    assertEquals("a top at 2 mm lies below its bottom at 3 mm", top);
    assertEquals(
        "a body needs triangles",
        assertThrows(GeometryException.class, () -> Relief.of(TWO_FIELDS, p -> Optional.empty()))
            .getMessage());
  }

  @Test
  void aBodyThatHangsTogetherAlongAnEdgeAloneIsRefused() {
    List<PlanLine> four = new ArrayList<>(TWO_FIELDS);
    four.add(PlanLine.open(List.of(new Point(5, 0), new Point(5, 10))));
    GeometryException fault =
        assertThrows(
            GeometryException.class,
            () ->
                Relief.of(
                    four,
                    p ->
                        p.x() > 5 == p.y() > 5
                            ? Optional.of(Storey.level(0, 3))
                            : Optional.empty()));
    assertEquals("the body touches itself along an edge", fault.getMessage().split(",")[0]);
    assertEquals(Optional.of(new Point(5, 5)), fault.where());
  }

  /** A grip's worth of stations and rows with holes, traps for nuts and a lip, in good time. */
  @Test
  void aLoftWithHolesAndPocketsIsClosed() {
    Solid grip = Lofts.grip();
    Bodies.clean(grip);
    assertTrue(grip.triangles().size() > 2000, "triangles: " + grip.triangles().size());
  }
}
