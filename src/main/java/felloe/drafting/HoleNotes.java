package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Holes and round windows: bolt circles by their pitch circle and the direction of a hole, single
 * ones by their distances from the hub axis if they are few, and each size once with the number of
 * holes that have it.
 */
final class HoleNotes {

  /** Of many holes of one size a leader goes to one of so many. */
  private static final int LOOKED_AT = 12;

  /** More single holes than this are clearer in a table. */
  private static final int MOST_PLACES = 4;

  /** The arc of an angle lies at most so far outside of the pitch circle, mm. */
  private static final double REACH = 40;

  /** Leaders to a pitch circle are looked for every so many degrees. */
  private static final int EVERY = 5;

  private final Board board;
  private final Views views;
  private final List<Hole> all;
  private final Map<BoltCircle, List<Hole>> rings = new LinkedHashMap<>();
  private final List<Hole> single = new ArrayList<>();
  private final Set<Hole> untold = new HashSet<>();

  HoleNotes(Board board) {
    this.board = board;
    this.views = board.views();
    this.all = views.plate().benchHoles(Double.POSITIVE_INFINITY);
    single.addAll(all);
    for (BoltCircle ring : views.plate().boltCircles()) {
      List<Hole> mine = on(ring, single);
      if (isEven(ring, mine)) {
        rings.put(ring, mine);
        single.removeAll(mine);
      }
    }
  }

  /** All holes and round windows. */
  List<Hole> all() {
    return all;
  }

  /** Those that the drawing does not tell in full. */
  List<Hole> untold() {
    return all.stream().filter(untold::contains).toList();
  }

  /** The holes of a ring in its order; those that are no longer there are missing. */
  private static List<Hole> on(BoltCircle ring, List<Hole> holes) {
    List<Hole> mine = new ArrayList<>();
    for (Point centre : ring.centres()) {
      holes.stream()
          .filter(hole -> hole.centre().near(centre, Tolerances.SAME_POINT))
          .findFirst()
          .ifPresent(mine::add);
    }
    return mine;
  }

  /** Whether all holes of a ring are there, round and of one size. */
  private static boolean isEven(BoltCircle ring, List<Hole> holes) {
    return holes.size() == ring.count()
        && holes.stream().noneMatch(Hole::isSlotted)
        && holes.stream().map(Hole::size).distinct().count() == 1;
  }

  /** Draws directions of bolt circles. */
  void directions() {
    rings.forEach(
        (ring, holes) -> {
          if (!direction(ring, holes)) {
            untold.addAll(holes);
          }
        });
  }

  /** Draws sizes and pitch circles of bolt circles. */
  void rings() {
    rings.forEach(
        (ring, holes) -> {
          if (!ring(holes) | !pitch(ring)) {
            untold.addAll(holes);
          }
        });
  }

  /** Draws distances of single holes. */
  void places() {
    Map<String, List<Hole>> twins = new LinkedHashMap<>();
    for (Hole hole : single) {
      Point c = hole.centre();
      if (hole.isSlotted()) {
        untold.add(hole);
      } else if (c.norm() > Tolerances.SAME_POINT) {
        String key = Board.figure(Math.abs(c.x())) + " " + Board.figure(c.y()) + " " + hole.size();
        twins.computeIfAbsent(key, k -> new ArrayList<>()).add(hole);
      }
    }
    for (List<Hole> alike : twins.values()) {
      if (twins.size() > MOST_PLACES || !place(Places.RIGHT, alike) || !place(Places.UP, alike)) {
        untold.addAll(alike);
      }
    }
  }

  private boolean place(Point along, List<Hole> alike) {
    Places places = new Places(board);
    List<Option> options = new ArrayList<>();
    for (Hole hole : alike) {
      Point c = hole.centre();
      if (Math.abs(c.dot(along)) < Tolerances.SAME_LENGTH) {
        return true;
      }
      double gap = views.factor() * hole.diameter() / 2 + DimensionStyle.BEYOND;
      options.addAll(places.fromAxis(along, c, c, gap, Board.times(alike.size())));
    }
    return board.place(options);
  }

  /** The direction of a hole, unless one lies on an axis. */
  private boolean direction(BoltCircle ring, List<Hole> holes) {
    if (holes.stream().anyMatch(hole -> Angular.aside(hole.centre()).equals("0"))) {
      return true;
    }
    Angular angular = new Angular(views.origin(), "", board.text());
    for (Hole hole : holes) {
      double radius = views.factor() * (ring.pitchDiameter() + hole.diameter()) / 2;
      double from = radius + DimensionStyle.BEYOND;
      angular.to(hole.centre().angle(), from, from + 2, from + REACH);
    }
    return board.place(angular.options());
  }

  /** Draws sizes of single holes. */
  void sizes() {
    Map<String, List<Hole>> sizes = new LinkedHashMap<>();
    single.forEach(hole -> sizes.computeIfAbsent(hole.size(), k -> new ArrayList<>()).add(hole));
    sizes.forEach(
        (size, holes) -> {
          if (!note(List.of(Board.times(holes.size()) + size), holes)) {
            untold.addAll(holes);
          }
        });
  }

  private boolean ring(List<Hole> holes) {
    int count = holes.size();
    List<String> lines = new ArrayList<>();
    lines.add(Board.times(count) + holes.get(0).size());
    if (count > 1) {
      lines.add(Board.times(count) + Board.figure(360.0 / count) + "\u00b0");
    }
    return note(lines, holes);
  }

  /** The diameter of the pitch circle, an arrow on it. */
  private boolean pitch(BoltCircle ring) {
    Leader leader = new Leader(List.of(Hole.size(ring.pitchDiameter(), 0)), board.text());
    double radius = views.factor() * ring.pitchDiameter() / 2;
    for (int degrees = EVERY; degrees < 360; degrees += EVERY) {
      Point out = Point.polar(1, Math.toRadians(degrees));
      Point tip = views.origin().plus(out, radius);
      leader.to(tip, out, 0).to(tip, out.times(-1), 0);
    }
    return board.place(leader.options());
  }

  private boolean note(List<String> lines, List<Hole> holes) {
    Leader leader = new Leader(lines, board.text());
    int step = (holes.size() + LOOKED_AT - 1) / LOOKED_AT;
    for (int i = 0; i < holes.size(); i += step) {
      Hole hole = holes.get(i);
      for (Point end : hole.ends()) {
        // The half circle at the end of a slot has an edge on its outer side only.
        Point outer = end.minus(hole.centre());
        leader.toCircle(
            views.scaled().point(end),
            views.factor() * hole.diameter() / 2,
            out -> out.dot(outer) >= 0);
      }
    }
    return board.place(leader.options());
  }
}
