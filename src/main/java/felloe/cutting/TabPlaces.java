package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import java.util.ArrayList;
import java.util.List;

/**
 * Where tabs stand on a path: as evenly as the long segments allow, clear of the joints where arcs
 * and lines meet, and of the start.
 */
final class TabPlaces {

  /** Rise onto a tab: one in one. A cutter may rise as steeply as it likes. */
  static final double RISE = 1;

  /** What rounding in a file may take from a wall, mm. */
  private static final double ROUNDING = 0.002;

  private final PathEntry way;
  private final List<Segment> ways;
  private final Leads leads;
  private final List<Contour> islands;
  private final double width;
  private final double half;
  private final PathIndex paths;
  private final SegmentIndex own;
  private final Loop loop;
  private final double before;
  private final double after;
  private final double flat;
  private final double apart;
  private final double clear;
  private final double ends;

  /**
   * Prepares.
   *
   * @param way the path, from its start
   * @param ways leads onto the path and off it
   * @param paths all paths
   * @param leads tells what lies behind the slot
   * @param setup width and height of tabs; the cutter, which makes the level way over a tab longer
   *     than the tab and stays this far from joints; the lead, which keeps clear of tabs
   * @param depth from the top of the tab down to the last pass
   * @param slope of the way down behind the tab, tangent
   */
  TabPlaces(
      PathEntry way,
      List<Segment> ways,
      PathIndex paths,
      Leads leads,
      CutSetup setup,
      double depth,
      double slope) {
    this.ways = List.copyOf(ways);
    this.leads = leads;
    this.islands = way.line().inside() ? List.of() : islands(way.line(), setup.half());
    this.way = way;
    this.paths = paths;
    this.loop = way.loop();
    this.own = new SegmentIndex(loop.segments());
    // On a curve the ends of the level way lie a little nearer in a straight line.
    this.apart = 0.95 * (setup.cutter() + setup.tabs().width()) / 2;
    this.flat = (setup.tabs().width() + setup.cutter()) / 2;
    this.before = flat + depth / RISE;
    this.after = flat + depth / slope;
    this.clear = setup.cutter();
    this.width = setup.tabs().width();
    this.half = setup.half();
    this.ends = setup.cutter() + setup.entry().lead();
  }

  /** From the middle of a tab back to where the cutter leaves the full depth, mm. */
  double before() {
    return before;
  }

  /** From the middle of a tab to where the cutter is back at the full depth, mm. */
  double after() {
    return after;
  }

  /** Half the length of the level way over a tab, mm. */
  double flat() {
    return flat;
  }

  /** Length of path that tabs need, each with its slopes and a cutter's width of path between. */
  double needed(int count) {
    return count * (before + after + clear);
  }

  /** A range of positions in which the middle of a tab may lie. */
  private record Range(double low, double high) {}

  /**
   * The positions of the middles of tabs, rising; empty when not all have room. Preferred is a
   * place with its slopes on one segment; then one with its level top on one segment; then any.
   */
  List<Double> places(int count) {
    if (needed(count) + 2 * ends > loop.length()) {
      return List.of();
    }
    List<List<Range>> steps =
        List.of(
            onSegments(before + clear, after + clear),
            onSegments(flat + clear, flat + clear),
            List.of(new Range(before + ends, loop.length() - after - ends)));
    for (List<Range> ranges : steps) {
      List<Double> places = choose(ranges, count);
      if (places.size() == count) {
        return places;
      }
    }
    return List.of();
  }

  private List<Range> onSegments(double left, double right) {
    List<Range> ranges = new ArrayList<>();
    double start = before + ends;
    double end = loop.length() - after - ends;
    for (int i = 0; i < loop.segments().size(); i++) {
      double low = Math.max(start, loop.start(i) + left);
      double high = Math.min(end, loop.start(i) + loop.segments().get(i).length() - right);
      if (low <= high) {
        ranges.add(new Range(low, high));
      }
    }
    return ranges;
  }

  private List<Double> choose(List<Range> ranges, int count) {
    List<Double> chosen = new ArrayList<>();
    double step = loop.length() / count;
    for (int k = 0; k < count; k++) {
      double ideal = (k + 0.5) * step;
      double least = chosen.isEmpty() ? 0 : chosen.get(k - 1) + before + after + clear;
      double best = Double.NaN;
      for (Range range : ranges) {
        double low = Math.max(range.low(), least);
        if (low <= range.high()) {
          double place = nearestFree(low, range.high(), ideal, Math.abs(best - ideal));
          best = Double.isNaN(place) ? best : place;
        }
      }
      if (Double.isNaN(best)) {
        return List.of();
      }
      chosen.add(best);
    }
    return chosen;
  }

  /**
   * The free place in a range that is nearest to the ideal one.
   *
   * @param within only nearer than this, unless it is no number
   * @return no number when there is none
   */
  private double nearestFree(double low, double high, double ideal, double within) {
    double from = Math.max(low, Math.min(high, ideal));
    for (double off = 0; from - off >= low || from + off <= high; off += clear) {
      for (double place : new double[] {from - off, from + off}) {
        if (Math.abs(place - ideal) >= within) {
          return Double.NaN;
        }
        if (place >= low && place <= high && free(place)) {
          return place;
        }
      }
    }
    return Double.NaN;
  }

  /**
   * Whether a tab at a place would stand: no other path, and no other stretch of this one, passes
   * so near that the cutter takes it away, as it would across a narrow slug.
   */
  private boolean free(double place) {
    Point at = loop.at(place);
    if (!holds(place) || !clearOf(ways, at) || !paths.othersClear(way.line(), at, apart)) {
      return false;
    }
    boolean[] free = {true};
    own.touching(
        Box.of(at, at).grown(apart),
        number -> {
          double start = loop.start(number);
          double end = loop.start(number + 1);
          free[0] = free[0] && clearOutside(number, start, Math.min(end, place - flat), at);
          free[0] = free[0] && clearOutside(number, Math.max(start, place + flat), end, at);
        });
    return free[0];
  }

  /**
   * Whether there is a wall behind the slot all along a tab, and it hangs together with the sheet.
   */
  private boolean holds(double place) {
    for (double s : new double[] {place - width / 2, place, place + width / 2}) {
      Point at = loop.at(s);
      Point travel = loop.tangent(s);
      Point wall = at.plus(leads.waste(travel), half + Surroundings.WALL);
      Point middle = at.plus(leads.waste(travel), half + Surroundings.WALL / 2);
      double apart = half + Surroundings.WALL / 2 - ROUNDING;
      if (!leads.wallBehind(at, travel)
          || own.distance(middle) < apart
          || !paths.othersClear(way.line(), middle, apart)
          || islands.stream().anyMatch(i -> i.contains(wall))) {
        return false;
      }
    }
    return true;
  }

  /** Waste that the slot round an outline cuts loose, as in a bay with a narrow mouth. */
  private static List<Contour> islands(CutLine line, double half) {
    return Offset.of(line.path(), half).stream().flatMap(r -> r.holes().stream()).toList();
  }

  /** Whether leads pass a tab's middle so far away that they leave its top standing. */
  boolean clearOf(List<Segment> others, Point at) {
    return others.stream().allMatch(arc -> arc.distance(at) >= apart);
  }

  private boolean clearOutside(int number, double from, double to, Point at) {
    if (to - from < 1e-3) {
      return true;
    }
    Segment segment = loop.segments().get(number);
    double start = loop.start(number);
    double a = (from - start) / segment.length();
    double b = Math.min(1, (to - start) / segment.length());
    return Loop.part(segment, a, b, segment.at(a), segment.at(b)).distance(at) >= apart;
  }
}
