package felloe.bringin;

import felloe.geometry.ArcFit;
import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes closed loops of what is drawn: doubles are dropped, ends that lie within a gap of each
 * other are brought together, lines that hang loose are passed over.
 *
 * @param loops closed, each stroke starting at the very point where the one before ends
 * @param doubles lines that were there twice
 * @param loose lines that belong to no loop, such as centre lines
 * @param closed the widest gap that was closed, mm
 * @param moved how far any line was moved for that, mm
 */
record Joining(List<Loop> loops, int doubles, int loose, double closed, double moved) {

  /** A line whose ends are as near as this to each other, for its length, was meant to close. */
  private static final double NEARLY = 0.1;

  /** Nothing smaller is an edge, mm. */
  private static final double SPECK = 1e-3;

  private static final int SAMPLES = 8;

  /** More gaps than this are not told one by one. */
  private static final int MOST_TOLD = 20;

  Joining {
    loops = List.copyOf(loops);
  }

  /** A closed line, and what it is; nothing is said of one that was joined of several. */
  record Loop(List<Stroke> strokes, DrawnAs as) {
    Loop {
      strokes = List.copyOf(strokes);
    }

    String layer() {
      return as.layer();
    }
  }

  /**
   * Joins.
   *
   * @param gap ends nearer than this are one, mm
   * @throws BadInput naming lines that all but close, and places where three lines meet
   */
  static Joining of(Drawn drawn, double gap, String file, Asked asked) {
    return new Maker(gap, file, asked).all(drawn);
  }

  static String unclosed(Point a, Point b, double apart) {
    return "has a line that ends at "
        + a
        + " and at "
        + b
        + ", "
        + Numbers.brief(apart, 3)
        + " mm away, and so does not close";
  }

  private static final class Maker {
    private final double gap;

    /** Lines as near as this are there twice; a wide gap makes no neighbours one. */
    private final double twice;

    private final String file;
    private final Asked asked;
    private final List<Loop> loops = new ArrayList<>();
    private final List<Stroke> open = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();
    private int doubles;
    private int loose;
    private double closed;
    private double moved;

    Maker(double gap, String file, Asked asked) {
      this.twice = Math.min(gap, BringIn.GAP);
      this.asked = asked;
      this.gap = gap;
      this.file = file;
    }

    Joining all(Drawn drawn) {
      for (Chain chain : Layers.edges(drawn.chains())) {
        double size = Stroke.size(chain.strokes());
        double apart = chain.from().distance(chain.to());
        boolean round =
            size > SPECK && (apart <= Meetings.TOUCH || (apart <= gap && size > 2 * gap));
        if (round && unbroken(chain)) {
          loop(chain.strokes(), chain.as());
        } else {
          open.addAll(chain.strokes());
        }
      }
      dropDoubles();
      walk();
      if (!problems.isEmpty()) {
        int shown = Math.min(problems.size(), MOST_TOLD);
        throw new BadInput(problems.subList(0, shown), problems.size() - shown);
      }
      return new Joining(dropDoubleLoops(), doubles, loose, closed, moved);
    }

    private boolean unbroken(Chain chain) {
      List<Stroke> strokes = chain.strokes();
      for (int i = 1; i < strokes.size(); i++) {
        if (strokes.get(i).from().distance(strokes.get(i - 1).to()) > gap) {
          return false;
        }
      }
      return true;
    }

    /** Closes strokes in their order, each joint at one point. */
    private void loop(List<Stroke> strokes, DrawnAs as) {
      if (strokes.size() == 1 && strokes.get(0).from().equals(strokes.get(0).to())) {
        loops.add(new Loop(strokes, as));
        return;
      }
      int n = strokes.size();
      List<Point> joints = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        joints.add(joint(strokes.get(i).to(), strokes.get((i + 1) % n).from()));
      }
      List<Stroke> all = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        Point from = joints.get((i + n - 1) % n);
        Point to = joints.get(i);
        if (!from.near(to, Tolerances.SAME_POINT) || n == 1) {
          Stroke drawn = strokes.get(i);
          Stroke joined = drawn.between(from, to);
          for (int k = 0; k <= SAMPLES && joined != drawn; k++) {
            double share = k / (double) SAMPLES;
            moved = Math.max(moved, drawn.at(share).distance(joined.at(share)));
          }
          all.add(joined);
        } else {
          moved = Math.max(moved, Stroke.size(List.of(strokes.get(i))));
        }
      }
      loops.add(new Loop(all, as));
    }

    private Point joint(Point a, Point b) {
      double apart = a.distance(b);
      closed = Math.max(closed, apart);
      return apart <= Tolerances.SAME_POINT ? b : a.middle(b);
    }

    private void dropDoubles() {
      Map<Long, List<Stroke>> seen = new HashMap<>();
      List<Stroke> kept = new ArrayList<>();
      for (Stroke stroke : open) {
        boolean twice = false;
        for (long cell : Cells.around(stroke.middle(), gap)) {
          for (Stroke other : seen.getOrDefault(cell, List.of())) {
            twice |= same(stroke, other);
          }
        }
        if (twice) {
          doubles++;
        } else {
          kept.add(stroke);
          seen.computeIfAbsent(Cells.of(stroke.middle(), gap), c -> new ArrayList<>()).add(stroke);
        }
      }
      open.clear();
      open.addAll(kept);
    }

    private boolean same(Stroke a, Stroke b) {
      double near =
          Math.min(
              twice, Meetings.SHARE * Math.min(Stroke.size(List.of(a)), Stroke.size(List.of(b))));
      boolean along = a.from().near(b.from(), near) && a.to().near(b.to(), near);
      boolean against = a.from().near(b.to(), near) && a.to().near(b.from(), near);
      return (along || against) && a.middle().near(b.middle(), near);
    }

    private Point end(int number) {
      Stroke stroke = open.get(number / 2);
      return number % 2 == 0 ? stroke.from() : stroke.to();
    }

    private void walk() {
      int[] group = Meetings.of(open, gap);
      Map<Integer, List<Integer>> ends = new HashMap<>();
      for (int i = 0; i < group.length; i++) {
        if (group[i] != group[i ^ 1]) {
          ends.computeIfAbsent(group[i], g -> new ArrayList<>()).add(i);
        } else if (i % 2 == 0) {
          loose++;
        }
      }
      boolean[] gone = new boolean[open.size()];
      tellNearlyClosed(group, ends);
      trim(group, ends, gone);
      for (List<Integer> at : ends.values()) {
        if (at.size() > 2) {
          Point p = end(at.get(0));
          problems.add(
              new Problem(
                  Place.ofFile(file),
                  "",
                  p.toString(),
                  "is where " + at.size() + " lines meet",
                  "leave out what is not an edge of the part"));
        }
      }
      if (problems.isEmpty()) {
        rings(group, ends, gone);
      }
    }

    /** Lines that hang loose are no edges; what remains has two lines at every place. */
    private void trim(int[] group, Map<Integer, List<Integer>> ends, boolean[] gone) {
      List<Integer> leaves = new ArrayList<>();
      ends.forEach(
          (place, at) -> {
            if (at.size() == 1) {
              leaves.add(place);
            }
          });
      while (!leaves.isEmpty()) {
        List<Integer> at = ends.get(leaves.remove(leaves.size() - 1));
        if (at.size() != 1) {
          continue;
        }
        int end = at.remove(0);
        int other = end ^ 1;
        gone[end / 2] = true;
        loose++;
        List<Integer> there = ends.get(group[other]);
        there.remove((Integer) other);
        if (there.size() == 1) {
          leaves.add(group[other]);
        }
      }
    }

    /** A line with two loose ends that come near to each other was meant to close. */
    private void tellNearlyClosed(int[] group, Map<Integer, List<Integer>> ends) {
      for (List<Integer> at : ends.values()) {
        if (at.size() == 1) {
          nearlyClosed(at.get(0), group, ends)
              .ifPresent(
                  problem -> {
                    if (!problems.contains(problem)) {
                      problems.add(problem);
                    }
                  });
        }
      }
    }

    private Optional<Problem> nearlyClosed(
        int start, int[] group, Map<Integer, List<Integer>> ends) {
      double length = 0;
      int at = start;
      for (int steps = 0; steps <= open.size(); steps++) {
        Stroke stroke = open.get(at / 2);
        length += stroke.from().distance(stroke.middle()) + stroke.middle().distance(stroke.to());
        int far = at ^ 1;
        List<Integer> there = ends.get(group[far]);
        if (there.size() != 2) {
          Point a = end(start);
          Point b = end(far);
          double apart = a.distance(b);
          // Told once, from the lower end.
          if (there.size() != 1 || apart > NEARLY * length || start > far) {
            return Optional.empty();
          }
          return Optional.of(
              new Problem(
                  Place.ofFile(file),
                  "",
                  "",
                  unclosed(a, b, apart),
                  "close it there, or allow it with "
                      + asked.gap()
                      + " "
                      + Numbers.brief(Math.ceil(apart * 100 + Tolerances.ROUNDING) / 100, 2)));
        }
        at = there.get(0) == far ? there.get(1) : there.get(0);
      }
      return Optional.empty();
    }

    private void rings(int[] group, Map<Integer, List<Integer>> ends, boolean[] gone) {
      for (int first = 0; first < open.size(); first++) {
        if (gone[first] || group[2 * first] == group[2 * first + 1]) {
          continue;
        }
        List<Stroke> ring = new ArrayList<>();
        int in = 2 * first;
        while (!gone[in / 2]) {
          gone[in / 2] = true;
          Stroke stroke = open.get(in / 2);
          ring.add(in % 2 == 0 ? stroke : stroke.reversed());
          int out = in ^ 1;
          List<Integer> there = ends.get(group[out]);
          in = there.get(0) == out ? there.get(1) : there.get(0);
        }
        loop(ring, DrawnAs.NOTHING);
      }
    }

    private List<Loop> dropDoubleLoops() {
      List<Loop> kept = new ArrayList<>();
      List<Box> boxes = new ArrayList<>();
      List<List<Segment>> drawn = new ArrayList<>();
      for (Loop loop : loops) {
        List<Segment> own = segments(loop);
        Box box = own.stream().map(Segment::box).reduce(Box::union).orElseThrow();
        boolean twice = false;
        for (int i = 0; i < kept.size() && !twice; i++) {
          twice = alike(box, boxes.get(i)) && on(loop, drawn.get(i)) && on(kept.get(i), own);
        }
        if (twice) {
          doubles++;
        } else {
          kept.add(loop);
          boxes.add(box);
          drawn.add(own);
        }
      }
      return kept;
    }

    private static List<Segment> segments(Loop loop) {
      List<Segment> all = new ArrayList<>();
      for (Stroke stroke : loop.strokes()) {
        ArcFit fit = stroke.fit(Tolerances.FREE_CURVE);
        all.addAll(fit.segments());
      }
      return all;
    }

    private boolean alike(Box a, Box b) {
      return Math.abs(a.minX() - b.minX()) <= twice
          && Math.abs(a.minY() - b.minY()) <= twice
          && Math.abs(a.maxX() - b.maxX()) <= twice
          && Math.abs(a.maxY() - b.maxY()) <= twice;
    }

    private boolean on(Loop loop, List<Segment> segments) {
      return loop.strokes().stream()
          .allMatch(
              stroke ->
                  segments.stream().anyMatch(s -> s.distance(stroke.middle()) <= twice)
                      && segments.stream().anyMatch(s -> s.distance(stroke.to()) <= twice));
    }
  }
}
