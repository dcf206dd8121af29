package felloe.cutting;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.SegmentIndex;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Proves what a V tool does to the upper face, from its moves as written and the plate alone.
 *
 * <ul>
 *   <li>A move along a line of an engraving of the front face goes no deeper than that engraving
 *       says, and as wide as the tool is at the face it stays in the material of the plate.
 *   <li>Any other move has its tip in the waste. It takes no more than is wished off an edge of
 *       outline or windows, neither of the face nor of the wall, and nothing off other edges.
 *   <li>Each line of an engraving is cut at its depth, and each place of an edge that the tool can
 *       reach has all taken off that is wished, looked at every {@value SweepCheck#SPACING} mm.
 *   <li>What is cut stays within the margin of the sheet.
 * </ul>
 */
final class FaceCheck {

  /** Less than this is left by rounding only, mm. */
  private static final double NOTHING = 1e-3;

  private final CutPlan plan;
  private final List<Engraving> wanted;
  private final double size;
  private final SegmentIndex edges;
  private final int broken;
  private final PointInContour inside;
  private final SweepTally lines;
  private final SweepTally chamfer;
  private final SweepTally missed;

  /**
   * A cut of a V tool as written.
   *
   * @param tool its angle and its tip
   */
  record FaceCut(WrittenMove move, CutterTool tool) {

    double deep() {
      return -move.low();
    }

    double slope() {
      return Math.tan(tool.angle() / 2);
    }

    /** Half its width at the face. */
    double half() {
      return tool.tip() / 2 + deep() * slope();
    }

    /** What it takes off a face and off the wall below it, beside an edge so far off. */
    double taken(double away) {
      double face = half() - away;
      double wall = deep() - Math.max(0, away - tool.tip() / 2) / slope();
      return face > 0 ? Math.max(face, wall) : face;
    }
  }

  /**
   * Prepares.
   *
   * @param lines takes engravings that are too deep, or leave the plate
   * @param chamfer takes what is taken off the plate beyond what is wished
   * @param missed takes what is not done
   */
  FaceCheck(CutPlan plan, SweepTally lines, SweepTally chamfer, SweepTally missed) {
    this.plan = plan;
    this.lines = lines;
    this.chamfer = chamfer;
    this.missed = missed;
    Optional<VTool> tool = plan.setup().vTool();
    this.wanted = tool.isEmpty() ? List.of() : plan.plate().engravings(Face.FRONT);
    this.size = tool.map(v -> v.edge(plan.plate().making().edges())).orElse(0.0);
    List<Contour> all = new ArrayList<>(List.of(plan.plate().outline()));
    plan.plate().windows().stream().map(Window::contour).forEach(all::add);
    this.broken = all.stream().mapToInt(contour -> contour.segments().size()).sum();
    plan.plate().holes().stream().map(Hole::contour).forEach(all::add);
    all.addAll(plan.surroundings().edges());
    this.edges = SegmentIndex.of(all);
    this.inside =
        new PointInContour(edges, all.stream().map(Contour::box).reduce(Box::union).get().maxX());
  }

  /** Looks at every move, and at everything that should have been done. */
  void run(List<FaceCut> cuts, SweepTally sheet) {
    Map<Engraving, List<Segment>> cut = new LinkedHashMap<>();
    List<FaceCut> beside = new ArrayList<>();
    for (FaceCut one : cuts) {
      if (one.deep() <= 0) {
        continue;
      }
      plan.surroundings().room().ifPresent(room -> sheet(one, room.cut(), sheet));
      Optional<Engraving> line = wanted.stream().filter(e -> on(e, one.move().way())).findFirst();
      if (line.isPresent()) {
        line(one, line.get(), cut);
      } else {
        beside.add(one);
        edge(one);
      }
    }
    wanted.forEach(engraving -> covered(engraving, cut.getOrDefault(engraving, List.of())));
    if (size > 0) {
      covered(beside);
    }
  }

  private static void sheet(FaceCut cut, Box room, SweepTally sheet) {
    Box swept = cut.move().way().box().grown(cut.half());
    double out =
        Math.max(
            Math.max(room.minX() - swept.minX(), swept.maxX() - room.maxX()),
            Math.max(room.minY() - swept.minY(), swept.maxY() - room.maxY()));
    sheet.add(out, cut.move().operation(), cut.move().way().at(0.5));
  }

  /** Whether a way lies on one of an engraving's lines. */
  private static boolean on(Engraving engraving, Segment way) {
    return engraving.strokes().stream()
        .flatMap(List::stream)
        .anyMatch(
            line ->
                line.distance(way.from()) <= SweepCheck.LIMIT
                    && line.distance(way.at(0.5)) <= SweepCheck.LIMIT
                    && line.distance(way.to()) <= SweepCheck.LIMIT);
  }

  private void line(FaceCut cut, Engraving engraving, Map<Engraving, List<Segment>> done) {
    Segment way = cut.move().way();
    lines.add(cut.deep() - engraving.depth(), engraving.label() + " too deep", way.at(0.5));
    if (!inside.material(way.from())) {
      lines.add(cut.half(), engraving.label() + " off the plate", way.from());
    }
    edges.touching(
        way.box().grown(cut.half()),
        i -> {
          Gap gap = Gap.between(way, edges.get(i));
          lines.add(cut.half() - gap.distance(), engraving.label() + " at an edge", gap.from());
        });
    if (-cut.move().high() >= engraving.depth() - SweepCheck.LIMIT) {
      done.computeIfAbsent(engraving, e -> new ArrayList<>()).add(way);
    }
  }

  private void edge(FaceCut cut) {
    Segment way = cut.move().way();
    if (inside.material(way.from()) && edges.distance(way.from()) > NOTHING) {
      chamfer.add(
          cut.half() + edges.distance(way.from()), cut.move().operation() + " in it", way.from());
    }
    edges.touching(
        way.box().grown(cut.half()),
        i -> {
          Gap gap = Gap.between(way, edges.get(i));
          double wished = i < broken ? size : 0;
          chamfer.add(cut.taken(gap.distance()) - wished, cut.move().operation(), gap.from());
        });
  }

  private void covered(Engraving engraving, List<Segment> done) {
    Optional<SegmentIndex> cut =
        done.isEmpty() ? Optional.empty() : Optional.of(new SegmentIndex(done));
    for (Segment line : engraving.strokes().stream().flatMap(List::stream).toList()) {
      int parts = Math.max(1, (int) Math.ceil(line.length() / SweepCheck.SPACING));
      for (int i = 0; i <= parts; i++) {
        Point p = line.at(i / (double) parts);
        double off = cut.map(index -> index.distance(p)).orElse(engraving.lineWidth());
        missed.add(off, engraving.label(), p);
      }
    }
  }

  private void covered(List<FaceCut> beside) {
    double deepest = beside.stream().mapToDouble(cut -> -cut.move().high()).max().orElse(0);
    List<FaceCut> full =
        beside.stream().filter(cut -> -cut.move().high() >= deepest - NOTHING).toList();
    List<Contour> contours = new ArrayList<>();
    contours.add(plan.plate().outline());
    plan.plate().windows().forEach(window -> contours.add(window.contour()));
    SegmentIndex plate = SegmentIndex.of(plan.plate().region().contours());
    SegmentIndex cut =
        full.isEmpty()
            ? null
            : new SegmentIndex(full.stream().map(one -> one.move().way()).toList());
    for (Contour contour : contours) {
      boolean wasteLeft = contour != plan.plate().outline();
      SweepCover.places(
          contour,
          wasteLeft,
          (p, waste, end) -> {
            double taken = cut == null ? 0 : full.get(0).taken(cut.distance(p));
            double left = size - Math.max(0, taken);
            // How far off the edge the tool's middle goes when it takes all of it.
            double off =
                cut == null ? 0 : full.get(0).half() - size * Math.min(1, full.get(0).slope());
            if (left <= SweepCheck.LIMIT || SweepCover.fits(plate, p, waste, off)) {
              missed.add(left, "edge", p);
            }
          });
    }
  }
}
