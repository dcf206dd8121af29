package felloe.board;

import felloe.board.Handle.Kind;
import felloe.geometry.Point;
import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Keyed;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The middles of the edges of a corner outline: each can be pulled out or in, and goes by itself to
 * where the edge runs on from its neighbour without a corner.
 *
 * <p>An arc over a chord of length c that leaves it at an angle a rises by c/2 tan(a/2): half the
 * chord and the rise span half of that angle.
 */
final class Bulges {

  /** Beyond this angle to its neighbour, radians, an edge would be more than a half circle. */
  private static final double STEEPEST = Math.PI / 2;

  /**
   * A corner as it is written.
   *
   * @param path the way to it
   * @param rise of the edge to the next
   */
  private record Corner(String path, Point at, double rise) {}

  private final List<Corner> corners = new ArrayList<>();
  private final boolean half;

  /** 1 where the corners run counter-clockwise, so that outward is to the right of travel. */
  private final double sense;

  private Bulges(String path, Mapping points) {
    this.half = value(points, "half") instanceof Scalar one && one.text().equals("true");
    if (value(points, "corners") instanceof Sequence list) {
      for (int i = 0; i < list.items().size(); i++) {
        corner(path + ".corners[" + i + "]", list.items().get(i)).ifPresent(corners::add);
      }
    }
    double area = 0;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i).at();
      area += a.cross(corners.get((i + 1) % corners.size()).at());
    }
    this.sense = area >= 0 ? 1 : -1;
  }

  /**
   * Those of a group of points.
   *
   * @param path the way to it
   * @param frame how what is written lies on the plate
   */
  static List<Handle> of(String path, Mapping points, Handle frame) {
    Bulges bulges = new Bulges(path, points);
    List<Handle> all = new ArrayList<>();
    int edges = bulges.corners.size() - (bulges.half ? 1 : 0);
    for (int i = 0; i < edges; i++) {
      bulges.edge(i, frame).ifPresent(all::add);
    }
    return all;
  }

  private static YamlValue value(Mapping group, String key) {
    Keyed one = group.entries().get(key);
    return one == null ? null : one.value();
  }

  private static Optional<Corner> corner(String path, YamlValue value) {
    if (value instanceof Sequence) {
      return Handles.point(value).map(at -> new Corner(path, at, 0));
    }
    if (value instanceof Mapping group) {
      double rise = Handles.figure(value(group, "rise")).orElse(0);
      return Handles.point(value(group, "at")).map(at -> new Corner(path, at, rise));
    }
    return Optional.empty();
  }

  private Optional<Handle> edge(int i, Handle frame) {
    int count = corners.size();
    Corner from = corners.get(i);
    Corner to = corners.get((i + 1) % count);
    Point chord = to.at().minus(from.at());
    double length = chord.norm();
    if (length == 0) {
      return Optional.empty();
    }
    List<Double> stops = new ArrayList<>(List.of(0.0));
    if (!half || i > 0) {
      stop(end(corners.get((i + count - 1) % count), from), chord.angle(), length, -1, stops);
    }
    if (!half || i + 2 < count) {
      stop(begin(to, corners.get((i + 2) % count)), chord.angle(), length, 1, stops);
    }
    // Outward is to the right of travel of what runs counter-clockwise.
    double outward = chord.angle() - sense * Math.PI / 2;
    Point middle = frame.placed(from.at().plus(chord, 0.5));
    double turn = outward + frame.turn();
    Point at = middle.plus(Point.polar(from.rise(), turn));
    return Optional.of(
        new Handle(from.path() + ".rise", Kind.RISE, at, middle, turn, length / 2, stops));
  }

  /** By how much an edge turns between its chord and either end, to the right for a rise. */
  private double lean(Corner from, Corner to) {
    return 2 * Math.atan2(2 * from.rise() * sense, to.at().distance(from.at()));
  }

  /** The direction in which an edge ends. */
  private double end(Corner from, Corner to) {
    return to.at().minus(from.at()).angle() + lean(from, to);
  }

  /** The direction in which an edge begins. */
  private double begin(Corner from, Corner to) {
    return to.at().minus(from.at()).angle() - lean(from, to);
  }

  /**
   * The rise at which an edge goes on as its neighbour does.
   *
   * @param neighbour direction of the neighbour where they meet
   * @param side -1 for the neighbour before, 1 for the one behind
   */
  private void stop(double neighbour, double chord, double length, int side, List<Double> stops) {
    double turn = Math.IEEEremainder(neighbour - chord, 2 * Math.PI) * side;
    if (Math.abs(turn) < STEEPEST) {
      stops.add(length / 2 * Math.tan(turn / 2) * sense);
    }
  }
}
