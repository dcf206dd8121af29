package felloe.cutting;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Tells what the tabs of all plates on a sheet hold on to once everything is cut. The pieces into
 * which the cuts divide the sheet are found row by row, tabs taken away; a tab is a link between
 * the piece before it and the piece behind it. A tab of an outline holds its part when the piece
 * behind it hangs together with the edge of the sheet, directly or over further tabs, without the
 * part itself.
 */
final class HoldCheck {

  /** Tabs cut away themselves are told by another rule: a tab's own top may be this much lower. */
  private static final double LOWER = SweepCheck.LIMIT;

  private static final double WALL = Surroundings.WALL;

  /** A plan and its cuts as written. */
  private record Followed(CutPlan plan, List<WrittenMove> cuts) {}

  private final List<Followed> all = new ArrayList<>();

  /** Adds a plate of the sheet. */
  void add(CutPlan plan, List<WrittenMove> cuts) {
    all.add(new Followed(plan, cuts));
  }

  /** Counts every tab that holds nothing. */
  void run(SweepTally loose) {
    boolean tabs = all.stream().anyMatch(one -> !one.plan().tabs().isEmpty());
    if (!tabs) {
      return;
    }
    List<Segment> removed = removed();
    if (removed.isEmpty()) {
      return;
    }
    double half = all.get(0).plan().setup().half();
    Optional<SheetRoom> room = all.get(0).plan().surroundings().room();
    SheetPieces pieces = new SheetPieces(removed, half, room.map(SheetRoom::all));
    SegmentIndex cuts = new SegmentIndex(removed);
    List<Link> links = new ArrayList<>();
    for (Followed one : all) {
      SegmentIndex edges = SegmentIndex.of(one.plan().plate().region().contours());
      for (CutTab tab : one.plan().tabs()) {
        links.add(link(one.plan(), tab, edges, cuts, half, room, pieces));
      }
    }
    for (Followed one : all) {
      judge(one.plan(), links, pieces, loose);
    }
  }

  /** All that is cut at a height below the tops of tabs. */
  private List<Segment> removed() {
    Set<Segment> removed = new LinkedHashSet<>();
    for (Followed one : all) {
      double lower = -one.plan().setup().depths().stock();
      double top = one.plan().tabs().stream().mapToDouble(CutTab::top).max().orElse(lower) + LOWER;
      for (WrittenMove cut : one.cuts()) {
        if (cut.low() <= top) {
          removed.add(cut.below(top));
        }
      }
    }
    return List.copyOf(removed);
  }

  /**
   * What a tab joins.
   *
   * @param part the piece on the side of the finish line; -1 for none
   * @param behind the piece on the other side of the slot; -1 where no wall stands
   */
  private record Link(CutPlan plan, CutTab tab, int part, int behind) {
    boolean outside() {
      return tab.feature().kind() == CutFeature.Kind.OUTLINE;
    }
  }

  private static Link link(
      CutPlan plan,
      CutTab tab,
      SegmentIndex edges,
      SegmentIndex cuts,
      double half,
      Optional<SheetRoom> room,
      SheetPieces pieces) {
    Point at = tab.at();
    Point foot = edges.get(edges.nearest(at)).nearest(at);
    Point toPart = foot.minus(at).unit();
    int part = pieces.near(at.plus(toPart, half + WALL / 2), WALL / 2);
    Point wall = at.plus(toPart, -half - WALL / 2);
    boolean stands =
        cuts.distance(wall) >= half + WALL / 2 - SweepCheck.LIMIT
            && (room.isEmpty() || room.get().all().contains(wall));
    return new Link(plan, tab, part, stands ? pieces.near(wall, WALL / 2) : -1);
  }

  private void judge(CutPlan plan, List<Link> links, SheetPieces pieces, SweepTally loose) {
    int held = 0;
    List<Link> nothing = new ArrayList<>();
    for (Link link : links) {
      if (link.plan() != plan) {
        continue;
      }
      boolean holds =
          link.outside()
              ? link.behind() >= 0 && framed(link, links, pieces)
              : link.behind() >= 0 && link.part() >= 0;
      held += holds && link.outside() ? 1 : 0;
      if (!holds) {
        nothing.add(link);
      }
    }
    // A hollow's own slug is held by tabs beyond those that the part wants.
    boolean enough = held >= plan.setup().tabs().count();
    for (Link link : nothing) {
      if (!enough || !link.outside()) {
        loose.broken(
            "a tab of " + plan.plate().name() + " " + link.tab().feature().label(),
            link.tab().at());
      }
    }
  }

  /** Whether the piece behind a tab hangs together with the sheet's edge without the part. */
  private static boolean framed(Link tab, List<Link> links, SheetPieces pieces) {
    Map<Integer, Set<Integer>> joined = new HashMap<>();
    for (Link link : links) {
      if (link.part() >= 0 && link.behind() >= 0) {
        joined.computeIfAbsent(link.part(), k -> new HashSet<>()).add(link.behind());
        joined.computeIfAbsent(link.behind(), k -> new HashSet<>()).add(link.part());
      }
    }
    Set<Integer> seen = new HashSet<>(Set.of(tab.behind()));
    List<Integer> open = new ArrayList<>(seen);
    while (!open.isEmpty()) {
      int piece = open.remove(open.size() - 1);
      if (pieces.frame(piece)) {
        return true;
      }
      for (int next : joined.getOrDefault(piece, Set.of())) {
        if (next != tab.part() && seen.add(next)) {
          open.add(next);
        }
      }
    }
    return false;
  }
}
