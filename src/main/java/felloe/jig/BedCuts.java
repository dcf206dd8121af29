package felloe.jig;

import felloe.geometry.Box;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A flat part cut into pieces that a printer's bed takes, joined by dovetails. Cuts run straight up
 * and across, where they meet no drilled hole and where every stretch of them has room for a
 * dovetail, if there is such a place.
 */
final class BedCuts {

  /** Left free round a print on the bed, mm; common practice. */
  static final double RIM = 5;

  /** Where cuts are tried, mm. */
  private static final double STEP = 1;

  private static final int MOST_PIECES = 10;

  /** Round holes up to this size are not cut through, mm. */
  private static final double HOLE = 30;

  /** An opening up to this size, such as a bore, is rather kept whole, mm. */
  private static final double BORE = 80;

  /** What it costs to split one. */
  private static final double SPLIT = 5;

  /** A stretch without room for a dovetail counts as much as so many with one. */
  private static final double NO_ROOM = 20;

  /** A stretch of this length is long: it has a second dovetail, and counts as much again, mm. */
  private static final double LONG = 60;

  /**
   * What it costs when a cut lies a whole piece off from where pieces are alike; the others are
   * tried where the pieces would not fit or hold together.
   */
  private static final double[] UNEVEN = {6, 2, 20, 0};

  /** Off the round figures at which edges often lie: a cut along an edge divides nothing, mm. */
  private static final double OFF = 0.37;

  private static final double FLATNESS = 0.02;

  /** How far cells reach beyond the part, mm. */
  private static final double BEYOND = 5;

  private final Region region;
  private final double gap;
  private final double wall;
  private final List<Contour> whole;
  private final List<List<Point>> rings;
  private final List<Point> corners;
  private final List<Dovetail> tails = new ArrayList<>();

  /**
   * A piece.
   *
   * @param name of its column and row, such as {@code A1}; empty when there is only one
   * @param region what it covers
   */
  record Cut(String name, Region region) {}

  /**
   * All pieces.
   *
   * @param cuts the pieces
   * @param joined for each piece the numbers of those it is joined to, one for each dovetail
   */
  record Result(List<Cut> cuts, List<List<Integer>> joined) {

    /** The number of the piece that holds a point. */
    int holding(Point p) {
      for (int i = 0; i < cuts.size(); i++) {
        if (cuts.get(i).region().contains(p)) {
          return i;
        }
      }
      return 0;
    }

    /** How many joints lie between two pieces, the shortest way. */
    int between(int from, int to) {
      Map<Integer, Integer> far = new HashMap<>(Map.of(from, 0));
      Deque<Integer> open = new ArrayDeque<>(List.of(from));
      while (!open.isEmpty()) {
        int at = open.poll();
        for (int next : joined.get(at)) {
          if (far.putIfAbsent(next, far.get(at) + 1) == null) {
            open.add(next);
          }
        }
      }
      return far.getOrDefault(to, 0);
    }
  }

  private BedCuts(Region region, double gap, double wall, List<Contour> whole) {
    this.region = region;
    this.gap = gap;
    this.wall = wall;
    this.whole = whole;
    this.rings = region.contours().stream().map(c -> c.chords(FLATNESS)).toList();
    this.corners = new ArrayList<>();
    rings.forEach(corners::addAll);
    whole.forEach(contour -> corners.addAll(contour.chords(FLATNESS)));
  }

  /**
   * The pieces.
   *
   * @param width of the bed, its rim taken off, mm
   * @param depth of the bed, likewise
   * @param gap between a tail and its socket, mm
   * @param wall least material round a socket, mm
   * @param more what must stay whole beside drilled holes
   * @return empty when no cuts serve
   */
  static Optional<Result> of(
      Region region, double width, double depth, double gap, double wall, List<Contour> more) {
    List<Contour> whole = new ArrayList<>(more);
    for (Contour hole : region.holes()) {
      Box box = hole.box();
      if (Math.max(box.width(), box.height()) <= HOLE) {
        whole.add(hole);
      }
    }
    return new BedCuts(region, gap, wall, whole).cut(width, depth);
  }

  private Optional<Result> cut(double width, double depth) {
    for (double uneven : UNEVEN) {
      tails.clear();
      Optional<Result> result = cut(width, depth, uneven);
      if (result.isPresent()) {
        return result;
      }
    }
    return Optional.empty();
  }

  private Optional<Result> cut(double width, double depth, double uneven) {
    Box box = region.outer().box();
    Optional<List<Double>> columns = cuts(box.minX(), box.maxX(), width, true, uneven);
    Optional<List<Double>> rows = cuts(box.minY(), box.maxY(), depth, false, uneven);
    if (columns.isEmpty() || rows.isEmpty()) {
      return Optional.empty();
    }
    tails(columns.get(), rows.get(), true);
    tails(rows.get(), columns.get(), false);
    List<Cut> pieces;
    try {
      pieces = pieces(box, columns.get(), rows.get());
    } catch (GeometryException touching) {
      // A tail or a cut that only just touches an edge.
      return Optional.empty();
    }
    List<List<Integer>> joined = joined(pieces);
    boolean fits =
        pieces.stream()
            .map(piece -> piece.region().outer().box())
            .allMatch(b -> b.width() <= width && b.height() <= depth);
    boolean held = pieces.size() == 1 || joined.stream().noneMatch(List::isEmpty);
    return fits && held ? Optional.of(new Result(pieces, joined)) : Optional.empty();
  }

  /** Where to cut, the least costly way with as few cuts as there can be. */
  private Optional<List<Double>> cuts(
      double low, double high, double room, boolean upright, double uneven) {
    if (high - low <= room) {
      return Optional.of(List.of());
    }
    double usable = room - Dovetail.DEEPEST;
    List<Double> places = new ArrayList<>();
    for (double at = low + STEP + OFF; at < high; at += STEP) {
      places.add(at);
    }
    double[] costs = places.stream().mapToDouble(at -> cost(at, upright)).toArray();
    int least = (int) Math.ceil((high - low) / usable) - 1;
    for (int count = Math.max(1, least); count < MOST_PIECES; count++) {
      Optional<List<Double>> found =
          CutPlaces.cheapest(places, costs, low, high, usable, count, uneven);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  /** What a cut costs: its stretches, dear where they have no room; endless through a hole. */
  private double cost(double at, boolean upright) {
    for (Contour one : whole) {
      Box box = one.box();
      double low = upright ? box.minX() : box.minY();
      double high = upright ? box.maxX() : box.maxY();
      if (at > low - wall && at < high + wall) {
        return Double.POSITIVE_INFINITY;
      }
    }
    double cost = 0;
    for (Contour hole : region.holes()) {
      Box box = hole.box();
      boolean bore = Math.max(box.width(), box.height()) <= BORE;
      boolean met =
          upright
              ? at > box.minX() - wall && at < box.maxX() + wall
              : at > box.minY() - wall && at < box.maxY() + wall;
      cost += bore && met ? SPLIT : 0;
    }
    for (double[] stretch : stretches(at, upright)) {
      Point from = on(at, stretch[0], upright);
      Point to = on(at, stretch[1], upright);
      boolean room = Dovetail.in(from, to, out(upright), region, corners, gap + wall).isPresent();
      cost += (room ? 1 : NO_ROOM) + (stretch[1] - stretch[0]) / LONG;
    }
    return cost;
  }

  private static Point on(double cut, double along, boolean upright) {
    return upright ? new Point(cut, along) : new Point(along, cut);
  }

  private static Point out(boolean upright) {
    return upright ? new Point(1, 0) : new Point(0, 1);
  }

  /** Where a cut runs through the part, from and to. */
  private List<double[]> stretches(double at, boolean upright) {
    List<Double> ends = new ArrayList<>();
    for (List<Point> ring : rings) {
      Point a = ring.get(ring.size() - 1);
      for (Point b : ring) {
        double pa = upright ? a.x() : a.y();
        double pb = upright ? b.x() : b.y();
        if (pa > at != pb > at) {
          Point p = a.towards(b, (at - pa) / (pb - pa));
          ends.add(upright ? p.y() : p.x());
        }
        a = b;
      }
    }
    ends.sort(Comparator.naturalOrder());
    List<double[]> stretches = new ArrayList<>();
    for (int i = 0; i + 1 < ends.size(); i += 2) {
      stretches.add(new double[] {ends.get(i), ends.get(i + 1)});
    }
    return stretches;
  }

  /** Dovetails in each stretch that has room, between cuts the other way. */
  private void tails(List<Double> cuts, List<Double> across, boolean upright) {
    for (double cut : cuts) {
      for (double[] stretch : stretches(cut, upright)) {
        List<Double> ends = new ArrayList<>(List.of(stretch[0], stretch[1]));
        across.stream().filter(a -> a > stretch[0] && a < stretch[1]).forEach(ends::add);
        ends.sort(Comparator.naturalOrder());
        for (int i = 0; i + 1 < ends.size(); i++) {
          Point from = on(cut, ends.get(i), upright);
          Point to = on(cut, ends.get(i + 1), upright);
          int count = Math.max(1, (int) Math.round(from.distance(to) / LONG));
          for (int k = 0; k < count; k++) {
            Point low = from.towards(to, (double) k / count);
            Point high = from.towards(to, (double) (k + 1) / count);
            List<Point> taken = new ArrayList<>(corners);
            tails.forEach(tail -> taken.addAll(tail.socket(gap).chords(FLATNESS)));
            Dovetail.in(low, high, out(upright), region, taken, gap + wall).ifPresent(tails::add);
          }
        }
      }
    }
  }

  private List<Cut> pieces(Box box, List<Double> columns, List<Double> rows) {
    List<Double> xs = new ArrayList<>(columns);
    xs.add(0, box.minX() - BEYOND);
    xs.add(box.maxX() + BEYOND);
    List<Double> ys = new ArrayList<>(rows);
    ys.add(0, box.minY() - BEYOND);
    ys.add(box.maxY() + BEYOND);
    if (columns.isEmpty() && rows.isEmpty()) {
      return List.of(new Cut("", region));
    }
    List<Cut> pieces = new ArrayList<>();
    for (int row = 0; row + 1 < ys.size(); row++) {
      for (int column = 0; column + 1 < xs.size(); column++) {
        Box cell = new Box(xs.get(column), ys.get(row), xs.get(column + 1), ys.get(row + 1));
        String name = (char) ('A' + column) + Integer.toString(row + 1);
        List<Region> parts = cell(cell);
        parts.sort(
            Comparator.comparingDouble((Region r) -> r.outer().box().minY())
                .thenComparingDouble(r -> r.outer().box().minX()));
        for (int i = 0; i < parts.size(); i++) {
          String end = parts.size() == 1 ? "" : Character.toString('a' + i);
          pieces.add(new Cut(name + end, parts.get(i)));
        }
      }
    }
    return pieces;
  }

  /** What stands in a cell, with its tails and without its sockets. */
  private List<Region> cell(Box cell) {
    List<Region> parts =
        Combine.intersection(List.of(region), List.of(Region.of(Contour.rectangle(cell))));
    List<Region> add = new ArrayList<>();
    List<Region> take = new ArrayList<>();
    for (Dovetail tail : tails) {
      Point foot = tail.foot();
      Box grown = cell.grown(STEP / 1000);
      if (!grown.contains(foot)) {
        continue;
      }
      boolean own = cell.contains(foot.plus(tail.out(), -STEP));
      (own ? add : take).add(Region.of(own ? tail.tail() : tail.socket(gap)));
    }
    List<Region> with = add.isEmpty() ? parts : Combine.union(both(parts, add));
    return new ArrayList<>(take.isEmpty() ? with : Combine.difference(with, take));
  }

  private static List<Region> both(List<Region> one, List<Region> two) {
    List<Region> all = new ArrayList<>(one);
    all.addAll(two);
    return all;
  }

  private List<List<Integer>> joined(List<Cut> pieces) {
    List<List<Integer>> joined = new ArrayList<>();
    pieces.forEach(piece -> joined.add(new ArrayList<>()));
    Result found = new Result(pieces, joined);
    for (Dovetail tail : tails) {
      int one = found.holding(tail.inTail());
      int two = found.holding(tail.beyond(gap));
      joined.get(one).add(two);
      joined.get(two).add(one);
    }
    return joined;
  }
}
