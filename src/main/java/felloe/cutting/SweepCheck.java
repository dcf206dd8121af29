package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Proves a plan before it is written, from the moves as a file will say them and the plate alone:
 * it shares nothing with the code that made the paths. Distances are exact, between lines and arcs;
 * those of moves of less than about 0.1 mm are told from the safe side.
 *
 * <ul>
 *   <li>No cut comes nearer to the plate than the cutter's edge may, by more than {@value #LIMIT}
 *       mm, and none runs in the plate.
 *   <li>Each place of each edge, looked at every {@value #SPACING} mm and at every end and middle,
 *       has the cutter's edge within {@value #LIMIT} mm of it at the full depth, except at a stated
 *       tab, or where no cutter fits and a left-over says so.
 *   <li>Tabs stand, and what stands behind them hangs together with the sheet after every cut.
 *   <li>What any cut takes, leads too, stays within the margin of the sheet.
 *   <li>Holes are drilled at the right place, to size and through.
 *   <li>Nothing goes deeper than said; no end mill goes down steeper than the ramp.
 *   <li>The finish line lies on the side of travel that was asked for.
 *   <li>What a V tool does to the face is proved by {@link FaceCheck}.
 *   <li>The two radii of each arc differ by at most {@value #ARC_RADII} mm (NISTIR 6556, section
 *       3.5.3.2).
 * </ul>
 */
public final class SweepCheck {

  /** Greatest gouge, and greatest remainder that is not stated, mm. */
  public static final double LIMIT = 0.01;

  /** The rule that tabs hold on to the sheet: which of them do is a matter of how parts lie. */
  public static final String HOLD = "sweep-hold";

  /** Greatest difference of an arc's two radii, mm. */
  public static final double ARC_RADII = 0.002;

  /** Distance of the places that are looked at along an edge, mm. */
  static final double SPACING = 0.5;

  /** How far the figure of a short move may be off, to the safe side, mm. */
  private static final double SHORT = 2e-4;

  private static final String OWN = "the accuracy that a cut file is held to";

  private final CutPlan plan;
  private final int decimals;
  private final double half;
  private final SegmentIndex plateEdges;
  private final SegmentIndex edges;
  private final PointInContour inside;
  private Point lastAsked;
  private double lastAnswer;

  private final SweepTally gouge =
      tally("sweep-gouge", "The cutter must not take from the plate.", "gouge", "mm", LIMIT, OWN);
  private final SweepTally missed =
      tally("sweep-missed", "Every edge must be cut to its line.", "left", "mm", LIMIT, OWN);
  private final SweepTally tabs =
      tally("sweep-tabs", "Every tab must stand.", "tabs wrong", "", 0, OWN);
  private final SweepTally holes =
      tally("sweep-holes", "Drilled holes: place, size, depth.", "off", "mm", LIMIT, OWN);
  private final SweepTally depth =
      tally("sweep-depth", "Nothing goes deeper than said.", "too deep", "mm", LIMIT, OWN);
  private final SweepTally plunge;
  private final SweepTally way =
      tally("sweep-way", "Each move begins where the last ended.", "breaks", "", 0, OWN);
  private final SweepTally side =
      tally("sweep-side", "Climb or conventional, as asked for.", "wrong moves", "", 0, OWN);
  private final SweepTally sheet =
      tally(
          "sweep-sheet",
          "No cut may come nearer to the sheet's edge than its margin.",
          "beyond",
          "mm",
          LIMIT,
          OWN);
  private final SweepTally lines =
      tally("sweep-engraving", "Lines stay shallow and on the plate.", "off", "mm", LIMIT, OWN);
  private final SweepTally chamfer =
      tally("sweep-edge", "No more is taken off an edge than wished.", "off", "mm", LIMIT, OWN);
  private final SweepTally faceLeft =
      tally("sweep-face-missed", "Lines and edges are all cut.", "left", "mm", LIMIT, OWN);
  private final SweepTally arcs =
      tally(
          "sweep-arcs",
          "A controller stops at an arc whose ends do not fit.",
          "difference of radii",
          "mm",
          ARC_RADII,
          "NISTIR 6556 section 3.5.3.2");

  private SweepCheck(CutPlan plan, int decimals) {
    this.plan = plan;
    this.decimals = decimals;
    this.half = plan.setup().half();
    List<Contour> all = new ArrayList<>(plan.plate().region().contours());
    this.plateEdges = SegmentIndex.of(all);
    all.addAll(plan.surroundings().edges());
    this.edges = SegmentIndex.of(all);
    this.inside =
        new PointInContour(edges, all.stream().map(Contour::box).reduce(Box::union).get().maxX());
    double ramp = Math.toDegrees(plan.setup().entry().ramp());
    this.plunge =
        tally(
            "sweep-plunge",
            "An end mill goes down on a ramp only.",
            "slope",
            "deg",
            ramp + 0.1,
            "the ramp that was asked for");
  }

  private static SweepTally tally(
      String rule, String why, String figure, String unit, double limit, String source) {
    return new SweepTally(rule, why, figure, unit, limit, source);
  }

  /**
   * Checks the plan of a plate that is cut alone.
   *
   * @param decimals places that coordinates will be rounded to in the file
   */
  public static SweepResult of(CutPlan plan, int decimals) {
    return of(List.of(plan), decimals);
  }

  /**
   * Checks the plans of all plates that are cut from one sheet: each against its plate, and all of
   * them together for what their tabs hold on to.
   *
   * @param plans at least one
   * @param decimals places that coordinates will be rounded to in the file
   */
  public static SweepResult of(List<CutPlan> plans, int decimals) {
    HoldCheck hold = new HoldCheck();
    List<Finding> findings = new ArrayList<>();
    double gouge = 0;
    double left = 0;
    double arcs = 0;
    double deepest = 0;
    for (CutPlan plan : plans) {
      SweepResult one = new SweepCheck(plan, decimals).run(hold);
      findings.addAll(one.findings());
      gouge = Math.max(gouge, one.worstGouge());
      left = Math.max(left, one.worstRemaining());
      arcs = Math.max(arcs, one.worstArc());
      deepest = Math.min(deepest, one.deepest());
    }
    SweepTally held = tally(HOLD, "Every tab must hold on to the sheet.", "tabs loose", "", 0, OWN);
    hold.run(held);
    findings.add(held.finding(plans.get(0).plate().stock().place()));
    return new SweepResult(findings, gouge, left, arcs, deepest);
  }

  private SweepResult run(HoldCheck hold) {
    RoundedToolpath written = new RoundedToolpath(plan, decimals, way, plunge, arcs, depth).run();
    hold.add(plan, written.cuts());
    gouges(written.cuts());
    plan.surroundings().room().ifPresent(room -> sheet(room.cut(), written.cuts()));
    Set<Hole> drilled = drilled(written);
    Set<Segment> through = new LinkedHashSet<>();
    double lower = -plan.setup().depths().stock();
    for (WrittenMove cut : written.cuts()) {
      if (cut.beam() || cut.high() <= lower + 1e-6) {
        through.add(cut.way());
      }
    }
    sides(through);
    new SweepCover(plan, through, written.cuts(), plateEdges, half, missed).run(drilled);
    tabs(written.cuts());
    new FaceCheck(plan, lines, chamfer, faceLeft).run(written.faceCuts(), sheet);
    Place place = plan.plate().stock().place();
    List<Finding> findings = new ArrayList<>();
    List<SweepTally> all =
        new ArrayList<>(List.of(gouge, missed, tabs, holes, depth, plunge, way, side, arcs, sheet));
    if (plan.setup().vTool().isPresent() || !written.faceCuts().isEmpty()) {
      all.addAll(List.of(lines, chamfer, faceLeft));
    }
    all.forEach(tally -> findings.add(tally.finding(place)));
    return new SweepResult(
        findings,
        Math.max(gouge.worst(), Math.max(lines.worst(), chamfer.worst())),
        Math.max(missed.worst(), faceLeft.worst()),
        arcs.worst(),
        written.deepest());
  }

  /** What any cut takes stays within the sheet's margin. */
  private void sheet(Box room, List<WrittenMove> cuts) {
    for (WrittenMove cut : cuts) {
      if (cut.cuts()) {
        Box swept = cut.way().box().grown(half);
        double out =
            Math.max(
                Math.max(room.minX() - swept.minX(), swept.maxX() - room.maxX()),
                Math.max(room.minY() - swept.minY(), swept.maxY() - room.maxY()));
        sheet.add(out, cut.operation(), cut.way().at(0.5));
      }
    }
  }

  private void gouges(List<WrittenMove> cuts) {
    Set<Segment> seen = new HashSet<>();
    boolean checked = false;
    for (WrittenMove cut : cuts) {
      checked &= !cut.starts();
      if (!cut.cuts()) {
        continue;
      }
      if (!checked) {
        // A way that crosses no edge is all in the plate or all outside.
        checked = true;
        Point start = cut.way().from();
        if (inside.material(start)) {
          gouge.add(half + edges.distance(start), cut.operation(), start);
        }
      }
      if (seen.add(cut.way()) && !shortAndClear(cut)) {
        edges.touching(
            cut.way().box().grown(half),
            number -> {
              Gap gap = Gap.between(cut.way(), edges.get(number));
              gouge.add(half - gap.distance(), cut.operation(), gap.from());
            });
      }
    }
  }

  /**
   * Whether a short way is clear by what its ends say. A place that lies d from both ends of a
   * chord lies at least sqrt(d2 - c2 / 4) from all of it, and an arc strays from its chord by no
   * more than its rise. Told from the safe side, by at most {@value #SHORT} mm.
   */
  private boolean shortAndClear(WrittenMove cut) {
    Segment path = cut.way();
    double chord = path.from().distance(path.to());
    double rise = path instanceof Arc arc ? arc.radius() * (1 - Math.cos(arc.sweep() / 2)) : 0;
    if (chord * chord > 8 * half * SHORT || rise > SHORT / 2) {
      return false;
    }
    double ends = Math.min(fromEdges(path.from()), fromEdges(path.to()));
    double least = Math.sqrt(Math.max(0, ends * ends - chord * chord / 4)) - rise;
    if (least < half - LIMIT || ends - least > SHORT) {
      return false;
    }
    gouge.add(half - least, cut.operation(), path.at(0.5));
    return true;
  }

  /** The distance to the nearest edge; the last answer is kept, for the next move starts there. */
  private double fromEdges(Point p) {
    if (!p.equals(lastAsked)) {
      lastAsked = p;
      lastAnswer = edges.distance(p);
    }
    return lastAnswer;
  }

  private Set<Hole> drilled(RoundedToolpath written) {
    Set<Hole> found = new HashSet<>();
    for (int i = 0; i < written.drills().size(); i++) {
      Move.Drill drill = written.drills().get(i);
      CutterTool tool = written.drillTool(i);
      Hole nearest = null;
      for (Hole hole : plan.plate().holes()) {
        if (nearest == null
            || hole.centre().distance(drill.at()) < nearest.centre().distance(drill.at())) {
          nearest = hole;
        }
      }
      if (nearest == null) {
        holes.add(tool.diameter(), "a drilled hole that the plate has not", drill.at());
        continue;
      }
      holes.add(nearest.centre().distance(drill.at()), nearest.label(), drill.at());
      if (tool.kind() != CutterTool.Kind.DRILL
          || Math.abs(tool.diameter() - nearest.diameter()) > HoleWork.SAME_SIZE + 1e-9) {
        holes.add(
            Math.abs(tool.diameter() - nearest.diameter()),
            nearest.label() + " with a " + tool.name(),
            drill.at());
      }
      double through = -plan.setup().depths().stock() - HoleWork.tip(tool.diameter());
      holes.add(drill.bottom() - through, nearest.label() + " not through", drill.at());
      if (!found.add(nearest)) {
        holes.add(nearest.diameter(), nearest.label() + " twice", drill.at());
      }
    }
    return found;
  }

  private void sides(Set<Segment> through) {
    boolean right = plan.setup().direction() == CutDirection.CLIMB;
    for (Segment cut : through) {
      Point p = cut.at(0.5);
      Segment edge = plateEdges.get(plateEdges.nearest(p));
      Point foot = edge.nearest(p);
      if (foot.distance(p) <= half + LIMIT && foot.distance(p) > LIMIT) {
        double left = cut.tangent(0.5).cross(foot.minus(p));
        if (left > 0 == right) {
          side.broken("a move with the finish line on its " + (right ? "left" : "right"), p);
        }
      }
    }
  }

  private void tabs(List<WrittenMove> cuts) {
    int wanted = plan.setup().tabs().count();
    long outside =
        plan.tabs().stream().filter(tab -> tab.feature().kind() == CutFeature.Kind.OUTLINE).count();
    if (outside < wanted) {
      tabs.broken("outline has " + outside + " tabs of " + wanted, Point.ORIGIN);
    }
    for (CutTab tab : plan.tabs()) {
      // The material on top of a tab lies in the way of the cutter's round at half its width.
      double clear = half + tab.width() / 2 - 0.1 * (half + tab.width());
      boolean stands = true;
      Box near = Box.of(tab.at(), tab.at()).grown(clear);
      for (WrittenMove cut : cuts) {
        if (cut.low() < tab.top() - LIMIT
            && cut.way().box().touches(near)
            && cut.below(tab.top() - LIMIT).distance(tab.at()) < clear) {
          stands = false;
        }
      }
      if (!stands) {
        tabs.broken("a tab of " + tab.feature().label() + " is cut away", tab.at());
      }
    }
  }
}
