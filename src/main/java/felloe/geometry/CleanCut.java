package felloe.geometry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Two regions combined where their edges cross cleanly or stay clear of each other: no edge comes
 * near an end of another, and none meets another at a grazing angle. Then the closed-form meetings
 * of the edges tell all, no curve is flattened, and the answer is exact and comes in a fraction of
 * the time. Where that is not so, there is no answer, and the general method has to find it.
 *
 * <p>Source: the edge of an intersection is what of each region's edge lies in the other; that of a
 * union what lies outside the other; that of a difference, what of the first's lies outside the
 * second, and of the second's inside the first (the rules of every boundary evaluation). Between
 * two meetings an edge lies in or out as a whole.
 */
final class CleanCut {

  /**
   * Edges that come nearer than this without crossing are left to the chords, which err by half.
   */
  private static final double CLEAR = 2 * Tolerances.CHORD;

  /** Edges that meet at a flatter angle are left to the chords: its sine. */
  private static final double GRAZING = 0.01;

  /** The number of no meeting. */
  private static final int NONE = -1;

  private final Side first;
  private final Side second;
  private int meetings;

  private CleanCut(Region first, Region second) {
    this.first = new Side(first);
    this.second = new Side(second);
  }

  /** A place on an edge: how far along, as a share of it, and the number of the meeting there. */
  private record Cut(double share, Point at, int meeting) {}

  /** The rings of a region, all with the material to the left, and where they are cut. */
  private static final class Side {
    private final Region region;
    private final List<List<Segment>> rings = new ArrayList<>();
    private final List<Segment> edges = new ArrayList<>();
    private final List<List<Cut>> cuts = new ArrayList<>();

    Side(Region region) {
      this.region = region;
      rings.add(region.outer().segments());
      region.holes().forEach(hole -> rings.add(hole.clockwise()));
      rings.forEach(edges::addAll);
      edges.forEach(edge -> cuts.add(new ArrayList<>(0)));
    }

    void cut(int edge, Point at, int meeting) {
      cuts.get(edge).add(new Cut(share(edges.get(edge), at), at, meeting));
    }

    /**
     * What of all rings lies inside another region, or outside of it. A ring that crosses changes
     * sides at each meeting, so that one look a ring tells for all of its stretches.
     */
    List<Stretch> stretches(boolean inside, Region other) {
      List<Stretch> kept = new ArrayList<>();
      int start = 0;
      for (List<Segment> ring : rings) {
        List<Stretch> all = stretches(start, ring);
        boolean in = all.get(0).in(other);
        for (Stretch stretch : all) {
          if (in == inside) {
            kept.add(stretch);
          }
          in = !in;
        }
        start += ring.size();
      }
      return kept;
    }

    private List<Stretch> stretches(int start, List<Segment> ring) {
      List<Stretch> all = new ArrayList<>();
      List<Segment> before = new ArrayList<>();
      List<Segment> open = before;
      Cut first = null;
      Cut last = null;
      for (int i = 0; i < ring.size(); i++) {
        Segment edge = ring.get(i);
        List<Cut> here = cuts.get(start + i);
        here.sort(Comparator.comparingDouble(Cut::share));
        Cut from = new Cut(0, edge.from(), NONE);
        for (Cut cut : here) {
          open.add(part(edge, from, cut));
          if (first == null) {
            first = cut;
          } else {
            all.add(new Stretch(open, last.meeting, cut.meeting));
          }
          open = new ArrayList<>();
          last = cut;
          from = cut;
        }
        open.add(part(edge, from, new Cut(1, edge.to(), NONE)));
      }
      if (first == null) {
        all.add(new Stretch(ring, NONE, NONE));
      } else if (ring.size() == 1) {
        // A circle has no corner where it starts.
        Cut on = new Cut(1 + first.share, first.at, first.meeting);
        all.add(new Stretch(List.of(part(ring.get(0), last, on)), last.meeting, first.meeting));
      } else {
        open.addAll(before);
        all.add(new Stretch(open, last.meeting, first.meeting));
      }
      return all;
    }
  }

  /** Part of a ring between two meetings; a whole ring where there are none. */
  private record Stretch(List<Segment> edges, int from, int to) {

    boolean ring() {
      return from == NONE;
    }

    Stretch reversed() {
      List<Segment> back = new ArrayList<>();
      edges.forEach(edge -> back.add(edge.reversed()));
      Collections.reverse(back);
      return new Stretch(back, to, from);
    }

    /** Whether it lies in a region that it crosses nowhere. */
    boolean in(Region region) {
      Segment longest = Collections.max(edges, Comparator.comparingDouble(Segment::length));
      Point p = longest.at(0.5);
      return region.outer().box().contains(p) && region.contains(p);
    }
  }

  /**
   * Combines two regions.
   *
   * @return empty where their edges do not cross cleanly
   */
  static Optional<List<Region>> of(Topology.Operation operation, Region a, Region b) {
    CleanCut cut = new CleanCut(a, b);
    try {
      return cut.meet() ? cut.linked(cut.kept(operation)) : Optional.empty();
    } catch (GeometryException sliver) {
      return Optional.empty();
    }
  }

  /**
   * Combines some regions with others, one after the other. Those of the first list lie apart, as
   * regions of one list do.
   *
   * @return empty where edges do not cross cleanly
   */
  static Optional<List<Region>> of(Topology.Operation operation, List<Region> a, List<Region> b) {
    return switch (operation) {
      case UNION -> union(a);
      case INTERSECTION -> b.size() == 1 ? each(operation, a, b.get(0)) : Optional.empty();
      case DIFFERENCE -> {
        Optional<List<Region>> left = Optional.of(a);
        for (Region other : b) {
          left = left.flatMap(regions -> each(operation, regions, other));
        }
        yield left;
      }
    };
  }

  private static Optional<List<Region>> each(
      Topology.Operation operation, List<Region> regions, Region other) {
    List<Region> all = new ArrayList<>();
    for (Region one : regions) {
      Optional<List<Region>> some = of(operation, one, other);
      if (some.isEmpty()) {
        return Optional.empty();
      }
      all.addAll(some.get());
    }
    return Optional.of(all);
  }

  private static Optional<List<Region>> union(List<Region> regions) {
    List<Region> apart = new ArrayList<>();
    for (Region region : regions) {
      Region grown = region;
      List<Region> rest = new ArrayList<>();
      for (Region other : apart) {
        Optional<List<Region>> both = of(Topology.Operation.UNION, grown, other);
        if (both.isEmpty()) {
          return Optional.empty();
        }
        if (both.get().size() == 1) {
          grown = both.get().get(0);
        } else {
          rest.add(other);
        }
      }
      rest.add(grown);
      apart = rest;
    }
    return Optional.of(apart);
  }

  /** Finds all meetings; whether they are clean. */
  private boolean meet() {
    Box reach = second.region.outer().box().grown(CLEAR);
    if (!first.region.outer().box().touches(reach)) {
      return true;
    }
    SegmentIndex index = new SegmentIndex(second.edges);
    boolean[] clean = {true};
    for (int i = 0; i < first.edges.size() && clean[0]; i++) {
      Box box = first.edges.get(i).box().grown(CLEAR);
      if (box.touches(reach)) {
        int edge = i;
        index.touching(box, other -> clean[0] = clean[0] && meet(edge, other));
      }
    }
    return clean[0];
  }

  private boolean meet(int one, int other) {
    Segment a = first.edges.get(one);
    Segment b = second.edges.get(other);
    List<Point> points = Gap.meetings(a, b);
    if (points.isEmpty()) {
      return Gap.between(a, b).distance() > CLEAR;
    }
    boolean free =
        a.distance(b.from()) > CLEAR
            && a.distance(b.to()) > CLEAR
            && b.distance(a.from()) > CLEAR
            && b.distance(a.to()) > CLEAR;
    for (Point p : points) {
      double slant = a.tangent(share(a, p)).cross(b.tangent(share(b, p)));
      if (!free || Math.abs(slant) < GRAZING) {
        return false;
      }
      first.cut(one, p, meetings);
      second.cut(other, p, meetings);
      meetings++;
    }
    return true;
  }

  private List<Stretch> kept(Topology.Operation operation) {
    boolean inside = operation == Topology.Operation.INTERSECTION;
    boolean turned = operation == Topology.Operation.DIFFERENCE;
    List<Stretch> kept = new ArrayList<>(first.stretches(inside, second.region));
    for (Stretch stretch : second.stretches(inside || turned, first.region)) {
      kept.add(turned ? stretch.reversed() : stretch);
    }
    return kept;
  }

  /** Puts what is kept end to end; empty where ends are left over. */
  private Optional<List<Region>> linked(List<Stretch> kept) {
    Map<Integer, Stretch> byStart = new HashMap<>();
    List<List<Segment>> rings = new ArrayList<>();
    for (Stretch stretch : kept) {
      if (stretch.ring()) {
        rings.add(stretch.edges());
      } else if (byStart.put(stretch.from(), stretch) != null) {
        return Optional.empty();
      }
    }
    for (Stretch start : kept) {
      Stretch next = start.ring() ? null : byStart.remove(start.from());
      if (next != null) {
        List<Segment> ring = new ArrayList<>(next.edges());
        while (next.to() != start.from()) {
          next = byStart.remove(next.to());
          if (next == null) {
            return Optional.empty();
          }
          ring.addAll(next.edges());
        }
        rings.add(ring);
      }
    }
    return regions(rings);
  }

  private static Optional<List<Region>> regions(List<List<Segment>> rings) {
    List<Contour> outers = new ArrayList<>();
    List<Contour> holes = new ArrayList<>();
    for (List<Segment> ring : rings) {
      (AreaProperties.of(ring).area() > 0 ? outers : holes).add(new Contour(ring));
    }
    Map<Contour, List<Contour>> of = new HashMap<>();
    for (Contour hole : holes) {
      Point p = hole.segments().get(0).from();
      Optional<Contour> about =
          outers.stream()
              .filter(outer -> outer.contains(p))
              .min(Comparator.comparingDouble(Contour::area));
      if (about.isEmpty()) {
        return Optional.empty();
      }
      of.computeIfAbsent(about.get(), key -> new ArrayList<>()).add(hole);
    }
    return Optional.of(
        outers.stream()
            .map(outer -> new Region(outer, of.getOrDefault(outer, List.of())))
            .toList());
  }

  /** How far along an edge a point of it lies, as a share. */
  private static double share(Segment edge, Point p) {
    if (edge instanceof Arc arc) {
      double turn =
          arc.sweep() > 0
              ? Arc.sweepBetween(arc.centre(), arc.from(), p)
              : Arc.sweepBetween(arc.centre(), p, arc.from());
      return turn / Math.abs(arc.sweep());
    }
    Point way = edge.to().minus(edge.from());
    return p.minus(edge.from()).dot(way) / way.dot(way);
  }

  private static Segment part(Segment edge, Cut from, Cut to) {
    if (from.share == 0 && to.share == 1) {
      return edge;
    }
    return edge instanceof Arc arc
        ? new Arc(from.at, to.at, arc.centre(), arc.radius(), arc.sweep() * (to.share - from.share))
        : new Line(from.at, to.at);
  }
}
