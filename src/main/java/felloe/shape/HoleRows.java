package felloe.shape;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Centres of holes in rows, evenly spaced. Millimetres and radians. */
final class HoleRows {

  private HoleRows() {}

  /** Along a straight line, the first and the last hole at its ends. */
  static List<Point> line(Point from, Point to, int count) {
    return IntStream.range(0, count)
        .mapToObj(i -> from.towards(to, (double) i / (count - 1)))
        .toList();
  }

  /**
   * Along an arc, the first and the last hole at its ends; a whole turn is divided evenly.
   *
   * @param to angle of the last hole; above {@code from} the row runs counter-clockwise
   */
  static List<Point> arc(Point centre, double radius, double from, double to, int count) {
    boolean whole = Math.abs(Math.abs(to - from) - 2 * Math.PI) < Tolerances.SAME_DIRECTION;
    double step = (to - from) / (whole ? count : count - 1);
    return IntStream.range(0, count)
        .mapToObj(i -> centre.plus(Point.polar(radius, from + i * step)))
        .toList();
  }

  /**
   * Along the outline at an inset, equally spaced by length along the inset line, clockwise from
   * one direction to another; from a direction to itself all the way round.
   *
   * @param inside what is left of the outline when it is moved inward
   * @param inset by how far it was moved
   * @param from direction of the first hole from the hub axis
   * @param to direction of the last
   * @throws ShapeException when the inset line is broken or misses a direction
   */
  static List<Point> edge(List<Region> inside, double inset, double from, double to, int count) {
    List<Row> rows = new ArrayList<>();
    for (Region region : inside) {
      ArcLengthIndex stations = new ArcLengthIndex(region.outer());
      Optional<Point> first = stations.outermost(from);
      Optional<Point> last = stations.outermost(to);
      if (first.isPresent() && last.isPresent()) {
        rows.add(new Row(stations, stations.position(first.get()), stations.position(last.get())));
      }
    }
    if (rows.isEmpty()) {
      throw new ShapeException(
          List.of(
              new ShapeFault(
                  "inset",
                  Numbers.brief(inset, 3) + " mm",
                  "leaves no unbroken line inside the outline between the two directions",
                  "lower the inset")));
    }
    Row row = rows.get(0);
    double whole = row.stations.length();
    double travel = row.start - row.end;
    boolean round = Math.abs(from - to) < Tolerances.SAME_DIRECTION;
    travel = round ? whole : travel - whole * Math.floor(travel / whole);
    double step = travel / (round ? count : count - 1);
    List<Point> centres = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      centres.add(row.stations.at(row.start - i * step));
    }
    return centres;
  }

  private record Row(ArcLengthIndex stations, double start, double end) {}
}
