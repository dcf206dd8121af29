package felloe.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SolidTest {

  private static final Solid BRICK = Bodies.cuboid(10, 20, 30);

  private static String refusal(List<Triangle> triangles) {
    return assertThrows(GeometryException.class, () -> Solid.of(triangles)).getMessage();
  }

  @Test
  void aBrickHasTheVolumeAndMomentsOfABrick() {
    assertEquals(12, BRICK.triangles().size());
    assertEquals(8, BRICK.vertices().size());
    assertEquals(6000, BRICK.volume(), 1e-9);
    assertEquals(0, BRICK.centroid().minus(new Vertex(5, 10, 15)).norm(), 1e-12);
    assertEquals(6000 * (100 + 400) / 12.0, BRICK.secondMoment(new Point(5, 10)), 1e-6);
    assertEquals(6000 * ((100 + 400) / 12.0 + 25 + 100), BRICK.secondMoment(Point.ORIGIN), 1e-6);
    assertEquals(new Vertex(10, 20, 30), BRICK.extent().size());
    Bodies.clean(BRICK);
  }

  @Test
  void aBodyMovedMirroredOrTurnedOverIsTheSameBody() {
    Solid wedge = wedge();
    for (Solid moved :
        List.of(
            wedge.moved(RigidTransform.turn(0.7), 5),
            wedge.moved(RigidTransform.MIRROR, 0),
            wedge.turnedOver())) {
      assertEquals(wedge.volume(), moved.volume(), 1e-9);
      assertEquals(
          wedge.secondMoment(wedge.centroid().plan()),
          moved.secondMoment(moved.centroid().plan()),
          1e-7);
    }
    assertEquals(wedge.extent(), wedge.turnedOver().extent());
    assertEquals(30 - wedge.centroid().z(), wedge.turnedOver().centroid().z(), 1e-12);
    assertEquals(wedge.triangles(), wedge.turnedOver().turnedOver().triangles());
    assertEquals(2 * 3 * 4 * wedge.volume(), wedge.scaled(2, 3, 4).volume(), 1e-7);
  }

  private static Solid wedge() {
    Vertex a = new Vertex(0, 0, 0);
    Vertex b = new Vertex(10, 0, 0);
    Vertex c = new Vertex(0, 20, 0);
    Vertex d = new Vertex(0, 0, 30);
    return Solid.of(
        List.of(
            new Triangle(a, c, b),
            new Triangle(a, b, d),
            new Triangle(b, c, d),
            new Triangle(c, a, d)));
  }

  @Test
  void noOpenBodyIsMade() {
    List<Triangle> open = new ArrayList<>(BRICK.triangles());
    open.remove(5);
    assertEquals("the skin is open", refusal(open).split(",")[0]);
    assertEquals("a body needs triangles", refusal(List.of()));
  }

  @Test
  void noInsideOutBodyIsMade() {
    List<Triangle> reversed = BRICK.triangles().stream().map(Triangle::reversed).toList();
    assertEquals("the skin is inside out", refusal(reversed).split(",")[0]);
    List<Triangle> one = new ArrayList<>(BRICK.triangles());
    one.set(3, one.get(3).reversed());
    assertEquals("the body touches itself along an edge", refusal(one).split(",")[0]);
    List<Triangle> far = new ArrayList<>(BRICK.triangles());
    wedge().moved(RigidTransform.shift(50, 0), 0).triangles().forEach(t -> far.add(t.reversed()));
    assertEquals("the skin is inside out, at height 0", refusal(far));
  }

  @Test
  void noTriangleIsTwiceOrWithoutArea() {
    List<Triangle> twice = new ArrayList<>(BRICK.triangles());
    twice.add(twice.get(0));
    assertEquals("the body touches itself along an edge", refusal(twice).split(",")[0]);
    List<Triangle> sliver = new ArrayList<>(BRICK.triangles());
    Triangle t = sliver.get(0);
    sliver.add(new Triangle(t.a(), t.b(), t.a()));
    assertEquals("a triangle of the skin has no area", refusal(sliver).split(",")[0]);
  }
}
