package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Looks at every edge of the plate for places that the cutter should have reached. */
final class SweepCover {

  /** A disc that comes this near to fitting fits, mm. */
  private static final double FITS = 1e-7;

  /** Less than this is left by rounding only, mm. */
  private static final double NOTHING = 1e-3;

  /** Room beyond the cutter's that an offset may overlook, mm. */
  private static final double NARROWEST = 1.25 * Tolerances.CHORD;

  private final CutPlan plan;
  private final Optional<SegmentIndex> through;
  private final Optional<SegmentIndex> overTabs;
  private final Optional<SegmentIndex> stated;
  private final SegmentIndex edges;
  private final double half;
  private final SweepTally missed;
  private final double nothingCut;

  /**
   * Prepares.
   *
   * @param through cuts at the full depth
   * @param cuts all cuts
   * @param edges every edge of the plate
   */
  SweepCover(
      CutPlan plan,
      Set<Segment> through,
      List<WrittenMove> cuts,
      SegmentIndex edges,
      double half,
      SweepTally missed) {
    this.plan = plan;
    this.through = index(through);
    Set<Segment> shallow = new LinkedHashSet<>();
    if (!plan.tabs().isEmpty()) {
      double top = plan.tabs().get(0).top();
      cuts.stream().filter(cut -> cut.high() <= top + 1e-3).forEach(cut -> shallow.add(cut.way()));
    }
    this.overTabs = index(shallow);
    Set<Segment> leftOvers = new LinkedHashSet<>();
    plan.compensation()
        .leftOvers()
        .forEach(left -> left.region().contours().forEach(c -> leftOvers.addAll(c.segments())));
    this.stated = index(leftOvers);
    this.edges = edges;
    this.half = half;
    this.missed = missed;
    this.nothingCut = plan.plate().box().width();
  }

  private static Optional<SegmentIndex> index(Set<Segment> segments) {
    return segments.isEmpty()
        ? Optional.empty()
        : Optional.of(new SegmentIndex(new ArrayList<>(segments)));
  }

  private static boolean within(Optional<SegmentIndex> index, Point p, double distance) {
    return index.isPresent() && index.get().distance(p) <= distance;
  }

  /** Looks at all edges but those of holes that are drilled. */
  void run(Set<Hole> drilled) {
    look("outline", plan.plate().outline(), false);
    for (Window window : plan.plate().windows()) {
      look(window.label(), window.contour(), true);
    }
    for (Hole hole : plan.plate().holes()) {
      if (!drilled.contains(hole)) {
        look(hole.label(), hole.contour(), true);
      }
    }
  }

  private void look(String label, Contour edge, boolean wasteLeft) {
    places(edge, wasteLeft, (p, waste, end) -> look(label, p, waste, end));
  }

  /** Receives places of an edge. */
  @FunctionalInterface
  interface Looker {
    /**
     * A place.
     *
     * @param waste from there to the waste, of length one
     * @param end whether two segments meet there
     */
    void at(Point p, Point waste, boolean end);
  }

  /** Visits an edge every {@value SweepCheck#SPACING} mm, and every end and middle. */
  static void places(Contour edge, boolean wasteLeft, Looker looker) {
    for (Segment segment : edge.segments()) {
      int parts = 2 * Math.max(1, (int) Math.ceil(segment.length() / (2 * SweepCheck.SPACING)));
      for (int i = 0; i < parts; i++) {
        double fraction = i / (double) parts;
        Point tangent = segment.tangent(fraction);
        Point waste = wasteLeft ? tangent.left() : tangent.right();
        looker.at(segment.at(fraction), waste, i == 0);
      }
    }
  }

  private void look(String label, Point p, Point waste, boolean end) {
    double left = through.map(index -> index.distance(p) - half).orElse(nothingCut);
    if (left > NOTHING && onTab(p)) {
      return;
    }
    if (left <= SweepCheck.LIMIT) {
      missed.add(Math.max(0, left), label, p);
      return;
    }
    // In a corner as sharp as a cusp a disc seems to fit beside its tip.
    boolean said = (end || !fits(edges, p, waste, half)) && within(stated, p, SweepCheck.LIMIT);
    if (!said) {
      missed.add(left, label, p);
    }
  }

  /** Whether a disc with some room to spare touches an edge from the waste at a place. */
  static boolean fits(SegmentIndex edges, Point p, Point waste, double half) {
    // A small one first, so that it does not jump over the other side of a sharp corner.
    double wide = half + NARROWEST;
    double small = wide / 16;
    return edges.distance(p.plus(waste, small)) >= small - FITS
        && edges.distance(p.plus(waste, wide)) >= wide - FITS;
  }

  private boolean onTab(Point p) {
    for (CutTab tab : plan.tabs()) {
      double reach = Math.max(tab.before(), tab.after()) + half + SweepCheck.LIMIT;
      if (p.near(tab.at(), reach)) {
        return within(overTabs, p, half + SweepCheck.LIMIT);
      }
    }
    return false;
  }
}
