package felloe.solid;

import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SelfCrossingTest {

  private static Solid both(Solid one, Solid two) {
    List<Triangle> all = new ArrayList<>(one.triangles());
    all.addAll(two.triangles());
    return Solid.of(all);
  }

  private static boolean crosses(Solid one, Solid two) {
    return SelfCrossing.of(both(one, two)).isPresent();
  }

  @Test
  void bodiesThatRunIntoEachOtherAreFound() {
    Solid brick = Bodies.cuboid(10, 10, 10);
    Solid other = Bodies.cuboid(3, 3, 30);
    assertTrue(crosses(brick, other.moved(RigidTransform.shift(4, 4), -10)));
    assertTrue(crosses(brick, other.moved(RigidTransform.shift(8, 8), 5)));
  }

  @Test
  void bodiesThatOnlyTouchAreFound() {
    Solid brick = Bodies.cuboid(10, 10, 10);
    Solid other = Bodies.cuboid(4, 4, 4);
    assertTrue(crosses(brick, other.moved(RigidTransform.shift(3, 3), 10)), "face on face");
    assertTrue(crosses(brick, other.moved(RigidTransform.shift(10, 3), 2)), "side on side");
    Solid turned = other.moved(RigidTransform.turn(Math.PI / 4), 0);
    assertTrue(crosses(brick, turned.moved(RigidTransform.shift(5, 10), 3)), "an edge on a face");
  }

  @Test
  void bodiesThatAreClearAreNot() {
    Solid brick = Bodies.cuboid(10, 10, 10);
    Solid other = Bodies.cuboid(4, 4, 4);
    assertTrue(!crosses(brick, other.moved(RigidTransform.shift(3, 3), 10.001)));
    assertTrue(!crosses(brick, other.moved(RigidTransform.shift(10.001, 3), 2)));
  }

  /** A corner pulled into another stretch of a ring: closed still, of positive volume. */
  @Test
  void aCornerPulledThroughASkinIsFound() {
    Solid ring = Bodies.ring(30, 5, 24, 8);
    assertSame(ring, ring.uncrossed());
    Random random = new Random(3);
    for (int i = 0; i < 20; i++) {
      Vertex from = ring.vertices().get(random.nextInt(ring.vertices().size()));
      Vertex to = Vertex.at(Point.polar(30, from.plan().angle() + 1.5), 0);
      Solid pulled = with(ring, from, to);
      assertTrue(SelfCrossing.of(pulled).isPresent());
      String told = assertThrows(GeometryException.class, pulled::uncrossed).getMessage();
      assertTrue(told.startsWith("the skin crosses itself, at height"), told);
    }
  }

  private static Solid with(Solid solid, Vertex from, Vertex to) {
    return Solid.of(
        solid.triangles().stream()
            .map(t -> new Triangle(of(t.a(), from, to), of(t.b(), from, to), of(t.c(), from, to)))
            .toList());
  }

  private static Vertex of(Vertex v, Vertex from, Vertex to) {
    return v.equals(from) ? to : v;
  }
}
