package felloe.solid;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A body like a grip: a loft along an arc with a lip, holes, counterbores and nut traps. */
final class Lofts {

  private static final double RADIUS = 150;
  private static final double HALF = 14;

  private Lofts() {}

  static Solid grip() {
    int stations = 60;
    int rows = 15;
    double from = 0.3;
    double to = 1.4;
    List<PlanLine> lines = new ArrayList<>();
    for (int row = 0; row <= rows; row++) {
      double at = RADIUS - HALF * Math.cos(Math.PI * row / rows);
      List<Point> line = new ArrayList<>();
      for (int i = 0; i <= stations; i++) {
        line.add(Point.polar(at, from + (to - from) * i / stations));
      }
      lines.add(PlanLine.open(line));
    }
    for (int i = 0; i <= stations; i++) {
      double angle = from + (to - from) * i / stations;
      lines.add(
          PlanLine.open(
              List.of(Point.polar(RADIUS - HALF, angle), Point.polar(RADIUS + HALF, angle))));
    }
    List<Point> lip = new ArrayList<>();
    for (int i = 0; i <= 77; i++) {
      lip.add(Point.polar(RADIUS + 9, from - 0.01 + (to - from + 0.02) * i / 77));
    }
    lines.add(PlanLine.open(lip));
    List<PlanLine> holes = new ArrayList<>();
    List<PlanLine> traps = new ArrayList<>();
    List<PlanLine> bores = new ArrayList<>();
    for (double angle : new double[] {0.5, 0.85, 1.2}) {
      Point centre = Point.polar(RADIUS, angle);
      holes.add(PlanLine.circle(centre, 2.2, 0.05));
      bores.add(PlanLine.circle(centre, 4.1, 0.05));
      List<Point> hexagon = new ArrayList<>();
      for (int k = 0; k < 6; k++) {
        hexagon.add(centre.plus(Point.polar(3.6 / Math.cos(Math.PI / 6), angle + k * Math.PI / 3)));
      }
      traps.add(PlanLine.closed(hexagon));
    }
    List<Point> edge = new ArrayList<>();
    for (int i = 0; i <= stations; i++) {
      edge.add(Point.polar(RADIUS + HALF, from + (to - from) * i / stations));
    }
    for (int i = stations; i >= 0; i--) {
      edge.add(Point.polar(RADIUS - HALF, from + (to - from) * i / stations));
    }
    PlanLine whole = PlanLine.closed(edge);
    lines.addAll(holes);
    lines.addAll(traps);
    lines.addAll(bores);
    return Relief.of(
        lines,
        p -> {
          boolean open = !whole.surrounds(p) || holes.stream().anyMatch(h -> h.surrounds(p));
          if (open) {
            return Optional.empty();
          }
          boolean trap = traps.stream().anyMatch(h -> h.surrounds(p));
          boolean bore = bores.stream().anyMatch(h -> h.surrounds(p));
          return Optional.of(new Loft(trap, bore, p.norm() > RADIUS + 9));
        });
  }

  private record Loft(boolean trap, boolean bore, boolean lip) implements Storey {
    @Override
    public double top(Point p) {
      double across = (p.norm() - RADIUS) / HALF;
      double full = 12 * Math.sqrt(Math.max(0, 1 - across * across)) + 6;
      return bore ? Math.min(full, 12) : full;
    }

    @Override
    public double bottom(Point p) {
      return lip ? 0 : trap ? 6.2 : 3;
    }
  }
}
