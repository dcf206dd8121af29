package felloe.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Bodies for tests. */
public final class Bodies {

  private Bodies() {}

  public static Solid cuboid(double x, double y, double z) {
    return Relief.slab(Region.of(Contour.rectangle(new Box(0, 0, x, y))), 0, z, 0.05);
  }

  /** A ring of round section in a given number of stations and rows, its axis along z. */
  static Solid ring(double radius, double section, int stations, int rows) {
    List<PlanLine> lines = new ArrayList<>();
    for (int row = 0; row <= rows; row++) {
      double at = radius - section * Math.cos(Math.PI * row / rows);
      List<Point> line = new ArrayList<>();
      for (int i = 0; i < stations; i++) {
        line.add(Point.polar(at, 2 * Math.PI * i / stations));
      }
      lines.add(PlanLine.closed(line));
    }
    for (int i = 0; i < stations; i++) {
      double angle = 2 * Math.PI * i / stations;
      lines.add(
          PlanLine.open(
              List.of(Point.polar(radius - section, angle), Point.polar(radius + section, angle))));
    }
    PlanLine inner = lines.get(0);
    PlanLine outer = lines.get(rows);
    Storey round =
        new Storey() {
          @Override
          public double top(Point p) {
            double across = p.norm() - radius;
            return Math.sqrt(Math.max(0, section * section - across * across));
          }

          @Override
          public double bottom(Point p) {
            return -top(p);
          }
        };
    return Relief.of(
        lines,
        p -> outer.surrounds(p) && !inner.surrounds(p) ? Optional.of(round) : Optional.empty());
  }

  static void clean(Solid solid) {
    assertEquals(Optional.empty(), SelfCrossing.of(solid));
  }
}
