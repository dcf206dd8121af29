package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Strips along a stretch of a contour, against closed forms. */
class StripTest {

  @Test
  void alongALineItIsARectangle() {
    Contour square = Contour.rectangle(new Box(0, 0, 100, 100));
    List<Segment> stretch = List.of(new Line(new Point(20, 0), new Point(70, 0)));
    Region strip = Strip.along(square, stretch, 2, 10).orElseThrow();
    assertEquals(50 * 12, strip.outer().area(), 1e-9);
    assertEquals(new Box(20, -2, 70, 10), strip.outer().box());
  }

  @Test
  void alongAnArcItIsTheDifferenceOfTwoSectors() {
    Contour circle = Contour.circle(Point.ORIGIN, 140);
    List<Segment> stretch = List.of(Arc.of(Point.ORIGIN, 140, 0.3, 1.2));
    Region strip = Strip.along(circle, stretch, -1, 30).orElseThrow();
    assertEquals(1.2 / 2 * (139 * 139 - 110 * 110), strip.outer().area(), 1e-8);
  }

  @Test
  void alongSmoothContoursItHasTheAreaOfItsLengthAndTurn() {
    // Length times breadth, and the turn of the stretch times half the difference of the squares:
    // the integral over the normals of a curve (textbooks of differential geometry).
    int laid = 0;
    for (long seed = 1; seed <= 400; seed++) {
      Random random = new Random(seed);
      Contour contour = MoreShapes.smooth(seed, 300);
      ArcLengthIndex index = new ArcLengthIndex(contour);
      double from = random.nextDouble() * index.length();
      double to = (from + (0.1 + 0.5 * random.nextDouble()) * index.length()) % index.length();
      List<Segment> stretch =
          index.stretch(index.nearest(index.at(from)), index.nearest(index.at(to)));
      double out = random.nextInt(3) == 0 ? 0 : 4 * random.nextDouble() - 1;
      double in = 2 + 10 * random.nextDouble();
      Optional<Region> strip = Strip.along(contour, stretch, out, in);
      if (strip.isEmpty()) {
        continue;
      }
      laid++;
      double length = 0;
      double turn = 0;
      for (Segment edge : stretch) {
        length += edge.length();
        turn += edge.length() * edge.curvature();
      }
      double area = length * (out + in) + turn / 2 * (out * out - in * in);
      // What a sharp arc that folds away saves is not in the formula, and is no less.
      assertEquals(area, strip.get().outer().area(), 1e-6 * Math.abs(area) + folds(stretch, in));
    }
    assertTrue(laid > 150, laid + " laid");
  }

  /** The figures that arcs sharper than a distance would fold over, at the most. */
  private static double folds(List<Segment> stretch, double in) {
    double sum = 0;
    for (Segment edge : stretch) {
      double radius = 1 / Math.abs(edge.curvature());
      sum += radius < in ? (in - radius) * (in - radius) * 10 : 0;
    }
    return sum;
  }

  @Test
  void whereTheOtherEdgeOfTheFigureComesIntoItThereIsNone() {
    Contour thin = Contour.rectangle(new Box(0, 0, 100, 15));
    List<Segment> stretch = List.of(new Line(new Point(20, 0), new Point(70, 0)));
    assertTrue(Strip.along(thin, stretch, 0, 14.9).isPresent());
    assertEquals(Optional.empty(), Strip.along(thin, stretch, 0, 15));
    assertEquals(Optional.empty(), Strip.along(thin, stretch, 0, 16));
  }

  @Test
  void whatComesInThroughAnEndIsSeen() {
    // A notch as narrow as a saw's cut runs in from the side, below the end of the stretch.
    Contour notched =
        Contour.polygon(
            List.of(
                new Point(0, 0),
                new Point(100, 0),
                new Point(100, 8),
                new Point(60, 9),
                new Point(100, 10),
                new Point(100, 50),
                new Point(0, 50)));
    List<Segment> stretch = List.of(new Line(new Point(20, 0), new Point(70, 0)));
    assertTrue(Strip.along(notched, stretch, 0, 8).isPresent());
    assertEquals(Optional.empty(), Strip.along(notched, stretch, 0, 12));
  }

  @Test
  void whereAnEdgeWouldFoldThereIsNone() {
    Contour sharp = RandomShapes.roundedRectangle(80, 60, 6);
    Segment corner = sharp.segments().stream().filter(s -> s instanceof Arc).findFirst().get();
    assertTrue(Strip.along(sharp, List.of(corner), 0, 5).isPresent());
    assertEquals(Optional.empty(), Strip.along(sharp, List.of(corner), 0, 7));
  }
}
