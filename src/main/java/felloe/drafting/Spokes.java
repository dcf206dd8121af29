package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Widths and directions of spokes, each told once with the number of spokes that have it. */
final class Spokes {

  private static final double STEP = 2;

  private final Board board;
  private final Views views;

  Spokes(Board board) {
    this.board = board;
    this.views = board.views();
  }

  /**
   * Draws widths and directions.
   *
   * @param untold windows beside a spoke that is not told in full are added
   */
  void draw(List<Spoke> spokes, Set<Window> untold) {
    Map<List<String>, List<Spoke>> widths = new LinkedHashMap<>();
    Map<String, List<Spoke>> ways = new LinkedHashMap<>();
    for (Spoke spoke : spokes) {
      widths.computeIfAbsent(figures(spoke), k -> new ArrayList<>()).add(spoke);
      if (!spoke.isOnAxis()) {
        ways.computeIfAbsent(way(spoke), k -> new ArrayList<>()).add(spoke);
      }
    }
    widths.forEach(
        (figures, alike) -> {
          boolean told = widths(figures, alike);
          if (!told) {
            add(alike, untold);
          }
        });
    ways.forEach(
        (figure, alike) -> {
          if (!direction(alike)) {
            add(alike, untold);
          }
        });
  }

  private static void add(List<Spoke> spokes, Set<Window> untold) {
    for (Spoke spoke : spokes) {
      untold.add(spoke.left().window());
      untold.add(spoke.right().window());
    }
  }

  /** What spokes have in common that are told with one angle: mirrored about an axis. */
  private static String way(Spoke spoke) {
    Point d = spoke.direction();
    return Board.figure(Math.toDegrees(Math.atan2(Math.abs(d.y()), Math.abs(d.x()))));
  }

  private static List<String> figures(Spoke spoke) {
    String atHub = Board.figure(2 * spoke.half(spoke.atHub()));
    return spoke.isParallel()
        ? List.of(atHub)
        : List.of(atHub, Board.figure(2 * spoke.half(spoke.atRim())));
  }

  private boolean widths(List<String> figures, List<Spoke> spokes) {
    String times = Board.times(spokes.size());
    if (figures.size() == 1) {
      List<Option> options = new ArrayList<>();
      spokes.forEach(spoke -> options.addAll(anywhere(spoke, times + figures.get(0))));
      return board.place(options);
    }
    List<Option> hub = new ArrayList<>();
    List<Option> rim = new ArrayList<>();
    for (Spoke spoke : spokes) {
      hub.addAll(at(spoke, spoke.atHub(), true, times + figures.get(0)));
      rim.addAll(at(spoke, spoke.atRim(), false, times + figures.get(1)));
    }
    return board.place(hub) & board.place(rim);
  }

  /** The width of a spoke with parallel sides. */
  private List<Option> anywhere(Spoke spoke, String figure) {
    Linear linear = new Linear(spoke.direction().left(), figure, board.text());
    Linear.End a = side(linear, spoke.right());
    Linear.End b = side(linear, spoke.left());
    double middle = (a.low() + a.high()) / 2;
    for (double v = a.low() + STEP; v <= a.high() - STEP; v += STEP) {
      linear.line(a, b, v, Math.abs(v - middle) / 4);
    }
    return linear.options();
  }

  private Linear.End side(Linear linear, Spoke.Side side) {
    return linear.at(
        views.scaled().point(side.line().from()), views.scaled().point(side.line().to()), 0);
  }

  /** The width at the hub disc or at the rim, between the sides prolonged. */
  private List<Option> at(Spoke spoke, double out, boolean inner, String figure) {
    Linear linear = new Linear(spoke.direction().left(), figure, board.text());
    Linear.End[] ends = new Linear.End[2];
    for (int i = 0; i < 2; i++) {
      boolean left = i == 1;
      Spoke.Side side = left ? spoke.left() : spoke.right();
      Point end = views.scaled().point(inner ? side.line().from() : side.line().to());
      Point corner = views.scaled().point(spoke.corner(out, left));
      ends[i] = linear.at(corner, 0);
      double gap = corner.distance(end);
      if (gap > Tolerances.SAME_POINT) {
        double start = Math.min(DimensionStyle.GAP / 2, gap / 3);
        linear.prolong(
            end.towards(corner, start / gap), end.towards(corner, 1 + DimensionStyle.BEYOND / gap));
      }
    }
    linear.line(ends[0], ends[1], ends[0].low(), 0).farther(ends[0], ends[1], ends[0].low(), 0);
    return linear.options();
  }

  private boolean direction(List<Spoke> spokes) {
    Angular angular = new Angular(views.origin(), Board.times(spokes.size()), board.text());
    for (Spoke spoke : spokes) {
      double rim = views.factor() * spoke.atRim();
      double hub = views.factor() * spoke.atHub();
      angular.to(spoke.direction().angle(), rim, hub + 2 * STEP, rim - STEP);
    }
    return board.place(angular.options());
  }
}
