package felloe.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ShadedTest {

  private static final Solid PLATE =
      Relief.slab(
          new Region(
              Contour.rectangle(new Box(0, 0, 80, 40)),
              List.of(Contour.circle(new Point(20, 10), 6))),
          0,
          10,
          0.05);

  private static int grey(Shaded shaded, View view, Vertex at) {
    Point seen = view.at(at);
    Box box = shaded.box();
    int x = (int) ((seen.x() - box.minX()) / box.width() * shaded.width());
    int y = (int) ((box.maxY() - seen.y()) / box.height() * shaded.height());
    return shaded.grey(x, y);
  }

  @Test
  void holesAreWhiteFacesAreGreyAndEdgesAreDark() {
    Shaded shaded = Shaded.of(List.of(PLATE), View.FRONT, 400);
    assertEquals(400, shaded.width());
    assertEquals(255, grey(shaded, View.FRONT, new Vertex(20, 10, 10)));
    int face = grey(shaded, View.FRONT, new Vertex(60, 30, 10));
    assertEquals(face, grey(shaded, View.FRONT, new Vertex(5, 35, 10)));
    assertTrue(face > 150 && face < 240, "grey " + face);
    for (Point edge : List.of(new Point(26, 10), new Point(14, 10))) {
      int darkest = 255;
      for (double off = -0.3; off <= 0.3; off += 0.1) {
        Vertex near = new Vertex(edge.x() + off, edge.y() + off, 10);
        darkest = Math.min(darkest, grey(shaded, View.FRONT, near));
      }
      assertTrue(darkest < 100, "an edge as light as " + darkest);
    }
  }

  @Test
  void whatIsNearerHidesWhatIsFarther() {
    Solid ramp =
        Relief.of(
            List.of(PlanLine.of(Contour.rectangle(new Box(30, 10, 50, 30)), 1)),
            p ->
                Optional.of(
                    new Storey() {
                      @Override
                      public double top(Point q) {
                        return 20 + (q.x() - 30);
                      }

                      @Override
                      public double bottom(Point q) {
                        return 12;
                      }
                    }));
    int plate = grey(Shaded.of(List.of(PLATE), View.FRONT, 300), View.FRONT, at(40, 20));
    int above = grey(Shaded.of(List.of(PLATE, ramp), View.FRONT, 300), View.FRONT, at(40, 20));
    Solid below = ramp.moved(RigidTransform.NONE, -60);
    int under = grey(Shaded.of(List.of(PLATE, below), View.FRONT, 300), View.FRONT, at(40, 20));
    assertTrue(above != plate, "a slope has another light");
    assertEquals(plate, under);
  }

  private static Vertex at(double x, double y) {
    return new Vertex(x, y, 0);
  }

  @Test
  void slantedTheLongSideInFrontIsSeen() {
    Shaded shaded = Shaded.of(List.of(PLATE), View.SLANTED, 400);
    int side = grey(shaded, View.SLANTED, new Vertex(50, 0, 5));
    int top = grey(shaded, View.SLANTED, new Vertex(50, 20, 10));
    assertTrue(side < top && top < 255, side + " " + top);
  }

  /** Their chords differ by up to 0.2 mm, two fine dots here, which is no edge. */
  @Test
  void bodiesThatLieFlushLookLikeOne() {
    Region disc = Region.of(Contour.circle(new Point(0, 0), 60));
    Solid whole = Relief.slab(disc, 0, 16, 0.2);
    List<Solid> two = List.of(Relief.slab(disc, 0, 6, 0.02), Relief.slab(disc, 6, 16, 0.2));
    int one = dark(Shaded.of(List.of(whole), View.SLANTED, 400));
    int both = dark(Shaded.of(two, View.SLANTED, 400));
    assertTrue(one > 500, one + " dark dots");
    assertEquals(one, both, 0.03 * one);
  }

  private static int dark(Shaded shaded) {
    int dark = 0;
    for (int y = 0; y < shaded.height(); y++) {
      for (int x = 0; x < shaded.width(); x++) {
        dark += shaded.grey(x, y) < 80 ? 1 : 0;
      }
    }
    return dark;
  }
}
