package felloe.cutting;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * What a jigsaw needs: rough lines outside the finish line in the waste, holes in the waste where
 * the blade cannot turn, and holes to start windows from.
 *
 * <p>Only turns toward the waste need a hole. Where the line turns toward the part, the saw runs on
 * into the waste and starts again along the next stretch.
 *
 * @param lines the edges with their rough lines as paths
 * @param reliefs holes at turns that the blade cannot follow
 * @param starts holes from which windows are started; none where a relief hole serves
 * @param notes what the maker should know, such as a window too narrow for the blade
 * @param cautions how not to get hurt, in sentences
 */
public record JigsawPlan(
    List<CutLine> lines,
    List<WasteHole> reliefs,
    List<WasteHole> starts,
    List<Note> notes,
    List<String> cautions) {

  /** Room between blade and hole, mm; common practice. */
  private static final double PLAY = 1;

  private static final double SMOOTH = 1e-9;

  /**
   * A hole to drill in the waste; it stays clear of the rough line or touches it.
   *
   * @param feature the edge
   * @param at its centre
   * @param diameter mm
   * @param turn the radius that the line turns there, mm; 0 in a sharp corner; infinite at a start
   */
  public record WasteHole(CutFeature feature, Point at, double diameter, double turn) {}

  /** Copies the lists. */
  public JigsawPlan {
    lines = List.copyOf(lines);
    reliefs = List.copyOf(reliefs);
    starts = List.copyOf(starts);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * Plans the sawing of a plate at its rough allowance.
   *
   * @param drilled which holes are drilled and not sawn
   */
  public static JigsawPlan of(Plate plate, JigsawBlade blade, Predicate<Hole> drilled) {
    return new Planner(plate, blade, drilled).plan();
  }

  private static final class Planner {
    private final Plate plate;
    private final JigsawBlade blade;
    private final Predicate<Hole> drilled;
    private final double hole;
    private final List<CutLine> lines = new ArrayList<>();
    private final List<WasteHole> reliefs = new ArrayList<>();
    private final List<WasteHole> starts = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    Planner(Plate plate, JigsawBlade blade, Predicate<Hole> drilled) {
      this.plate = plate;
      this.blade = blade;
      this.drilled = drilled;
      this.hole = (blade.width() + PLAY) / 2;
    }

    JigsawPlan plan() {
      double allowance = plate.making().roughAllowance();
      boolean rough = allowance > Tolerances.SAME_POINT;
      double width = rough ? 2 * allowance : 1;
      Compensation all = Compensation.of(plate, width, rough, drilled);
      lines.addAll(all.lines());
      for (CutFeature feature : all.closed()) {
        narrow(feature);
      }
      lines.forEach(this::along);
      return new JigsawPlan(
          lines,
          reliefs,
          starts,
          notes,
          CutCautions.of(CutProcess.JIGSAW, plate.stock().material()));
    }

    private void narrow(CutFeature feature) {
      notes.add(
          new Note(
              feature.place(),
              feature.label() + " is too narrow for the saw: drill a row of holes and file"));
    }

    private void along(CutLine line) {
      boolean inside = line.inside();
      int before = reliefs.size();
      if (inside && Offset.of(line.path(), -hole).isEmpty()) {
        narrow(line.feature());
        return;
      }
      List<UncutMaterial.Corner> stuck = corners(line, blade.turn());
      List<UncutMaterial.Corner> tight = corners(line, hole);
      PathLength along = new PathLength(line.path());
      if (inside && Offset.of(line.path(), -blade.turn()).isEmpty()) {
        // Nowhere wide enough for the whole round: every turn toward the waste is too tight.
        everyTurn(line, along, tight);
      } else {
        for (UncutMaterial.Corner place : stuck) {
          relief(line, along, place, tight);
        }
      }
      if (inside && reliefs.size() == before) {
        start(line);
      }
    }

    /** Where a disc rolling along the line in the waste stands still. */
    private static List<UncutMaterial.Corner> corners(CutLine line, double radius) {
      boolean inside = line.inside();
      List<CutLine> paths = new ArrayList<>();
      CutFeature.Kind kind = inside ? CutFeature.Kind.WINDOW : CutFeature.Kind.OUTLINE;
      CutFeature as = new CutFeature(line.feature().label(), kind, line.feature().place());
      for (Region region : Offset.of(line.path(), inside ? -radius : radius)) {
        region.holes().forEach(hollow -> paths.add(new CutLine(as, line.path(), hollow)));
        paths.add(new CutLine(as, line.path(), region.outer()));
      }
      return new UncutMaterial(as, line.path(), paths, radius).corners();
    }

    private void relief(
        CutLine line,
        PathLength along,
        UncutMaterial.Corner stuck,
        List<UncutMaterial.Corner> tight) {
      double from = stuck.leaves().position();
      double length = along.length();
      double span = forward(from, stuck.meets().position(), length);
      boolean found = false;
      for (UncutMaterial.Corner corner : tight) {
        double leaves = forward(from, corner.leaves().position(), length);
        double meets = forward(from, corner.meets().position(), length);
        if (leaves <= span + 1e-6 && meets <= span + 1e-6) {
          reliefs.add(
              new WasteHole(line.feature(), corner.at(), 2 * hole, radius(line, along, corner)));
          found = true;
        }
      }
      if (!found) {
        arcs(line, along.stretch(stuck.leaves(), stuck.meets()));
      }
    }

    /** Holes that touch the middle of arcs too tight for the blade but wide enough for a hole. */
    private void arcs(CutLine line, List<Segment> stretch) {
      for (Segment segment : stretch) {
        if (segment instanceof Arc arc && towardWaste(line, arc) && arc.radius() < blade.turn()) {
          Point middle = arc.at(0.5);
          Point inward = arc.centre().minus(middle).unit();
          reliefs.add(
              new WasteHole(line.feature(), middle.plus(inward, hole), 2 * hole, arc.radius()));
        }
      }
    }

    private static boolean towardWaste(CutLine line, Arc arc) {
      // On a counter-clockwise contour the inside lies to the left, as does the centre of a
      // counter-clockwise arc.
      return (arc.sweep() > 0) == line.inside();
    }

    private void everyTurn(CutLine line, PathLength along, List<UncutMaterial.Corner> tight) {
      for (UncutMaterial.Corner corner : tight) {
        reliefs.add(
            new WasteHole(line.feature(), corner.at(), 2 * hole, radius(line, along, corner)));
      }
      arcs(
          line,
          line.path().segments().stream()
              .filter(s -> s instanceof Arc arc && arc.radius() >= hole)
              .toList());
    }

    /** The tightest turn toward the waste between two touches; 0 at a sharp corner. */
    private static double radius(CutLine line, PathLength along, UncutMaterial.Corner corner) {
      List<Segment> stretch = along.stretch(corner.leaves(), corner.meets());
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < stretch.size(); i++) {
        if (stretch.get(i) instanceof Arc arc && towardWaste(line, arc)) {
          least = Math.min(least, arc.radius());
        }
        if (i > 0) {
          Point in = stretch.get(i - 1).tangent(1);
          Point out = stretch.get(i).tangent(0);
          double turn = in.cross(out);
          if (Math.abs(turn) > SMOOTH && turn > 0 == line.inside()) {
            least = 0;
          }
        }
      }
      return Double.isInfinite(least) ? 0 : least;
    }

    private static double forward(double from, double to, double length) {
      double way = to - from;
      return way < -1e-9 ? way + length : Math.max(0, way);
    }

    private void start(CutLine line) {
      Contour path = line.path();
      Segment longest = path.segments().get(0);
      for (Segment segment : path.segments()) {
        if (segment.length() > longest.length() + 1e-9) {
          longest = segment;
        }
      }
      Point at = longest.at(0.5).plus(longest.tangent(0.5).left(), hole);
      if (!path.contains(at) || path.distance(at) < hole - 1e-6) {
        at = LargestCircle.inside(path).centre();
      }
      starts.add(new WasteHole(line.feature(), at, 2 * hole, Double.POSITIVE_INFINITY));
    }
  }
}
