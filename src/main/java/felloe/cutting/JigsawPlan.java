package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.Numbers;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What a jigsaw needs: rough lines outside the finish line in the waste, and the holes that a
 * person would drill first. A round opening that a hole saw makes is not sawn. Every other window
 * has a hole to start from; where the line turns more tightly than the blade, a hole as large as
 * the corner lets the saw turn, and serves to start from too. No two holes meet: the smaller gives
 * way, of two as large that in the wider angle, so that mirrored windows have mirrored holes. Each
 * turn that is left without a hole is told.
 *
 * <p>Only turns toward the waste need a hole. Where the line turns toward the part, the saw runs on
 * into the waste and starts again along the next stretch.
 *
 * @param lines the edges that are sawn, with their rough lines as paths
 * @param drilled the plate's own holes that are drilled and not sawn
 * @param holes what is drilled first, in the order of the lines
 * @param notes what the maker should know, such as a window too narrow for the blade
 * @param cautions how not to get hurt, in sentences
 */
public record JigsawPlan(
    List<CutLine> lines,
    List<Hole> drilled,
    List<WasteHole> holes,
    List<Note> notes,
    List<String> cautions)
    implements CutWork {

  /** Least material between two holes, mm; common practice: a drill runs off into the next hole. */
  private static final double WALL = 2;

  /** Holes are drilled in steps of this, mm: the sizes of drills and saws that are at hand. */
  private static final double STEP = 1;

  /** Why a hole is drilled. */
  public enum Why {
    /** The saw starts there. */
    START,
    /** The saw turns there. */
    TURN,
    /** The saw starts there and turns. */
    START_AND_TURN,
    /** A drill makes the whole opening. */
    DRILL,
    /** A hole saw makes the whole opening. */
    HOLE_SAW
  }

  /**
   * A hole to drill in the waste; it stays clear of the rough line or touches it. What a drill or a
   * hole saw makes goes to the finish line.
   *
   * @param feature the edge
   * @param at its centre
   * @param diameter mm
   * @param why what for
   */
  public record WasteHole(CutFeature feature, Point at, double diameter, Why why) {

    /** Whether the saw starts or turns there; else all of an opening is made so. */
    public boolean forTheSaw() {
      return why != Why.DRILL && why != Why.HOLE_SAW;
    }
  }

  /** Copies the lists. */
  public JigsawPlan {
    lines = List.copyOf(lines);
    drilled = List.copyOf(drilled);
    holes = List.copyOf(holes);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /** The edges of the holes. */
  public List<Contour> circles() {
    return holes.stream().map(hole -> Contour.circle(hole.at(), hole.diameter() / 2)).toList();
  }

  /**
   * Plans the sawing of a plate at its rough allowance.
   *
   * @param largestDrill round openings up to this are drilled and not sawn, mm; 0 for none
   * @param largestSaw round openings up to this are made by a hole saw or bit, mm; 0 for none
   */
  public static JigsawPlan of(
      Plate plate, JigsawBlade blade, double largestDrill, double largestSaw) {
    return new Planner(plate, blade, largestDrill, largestSaw).plan();
  }

  /** A turn, and the hole that it wants. */
  private record Turning(TightTurn turn, WasteHole hole) {}

  /**
   * Which hole is kept first where two meet: the larger one, then that of the sharper angle; of
   * equal ones the upper one, then that nearer to the middle line, so that a window and its mirror
   * image agree.
   */
  private static final Comparator<Turning> FIRST =
      Comparator.comparingDouble((Turning t) -> -t.hole().diameter())
          .thenComparingDouble(t -> -rounded(t.turn().turning()))
          .thenComparingDouble(t -> -rounded(t.hole().at().y()))
          .thenComparingDouble(t -> rounded(Math.abs(t.hole().at().x())))
          .thenComparingDouble(t -> t.hole().at().x());

  private static double rounded(double value) {
    return Math.rint(1e6 * value);
  }

  private static final class Planner {
    private final Plate plate;
    private final JigsawBlade blade;
    private final double largestDrill;
    private final double largestSaw;
    private final List<CutLine> lines = new ArrayList<>();
    private final List<WasteHole> holes = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();

    Planner(Plate plate, JigsawBlade blade, double largestDrill, double largestSaw) {
      this.plate = plate;
      this.blade = blade;
      this.largestDrill = largestDrill;
      this.largestSaw = largestSaw;
    }

    JigsawPlan plan() {
      double allowance = plate.making().roughAllowance();
      boolean rough = allowance > Tolerances.SAME_POINT;
      double width = rough ? 2 * allowance : 1;
      Compensation all = Compensation.of(plate, width, rough, this::drilled);
      for (CutFeature feature : all.closed()) {
        round(feature).ifPresentOrElse(this::saw, () -> narrow(feature));
      }
      for (CutLine line : all.lines()) {
        Optional<Hole> round = round(line.feature());
        if (round.isPresent()) {
          saw(round.get());
        } else {
          lines.add(line);
          along(line);
        }
      }
      return new JigsawPlan(
          lines,
          plate.holes().stream().filter(this::drilled).toList(),
          holes,
          notes,
          CutCautions.of(CutProcess.JIGSAW, plate.stock().material()));
    }

    private boolean drilled(Hole hole) {
      return hole.diameter() <= largestDrill + 1e-9;
    }

    /** The opening of a feature, where a drill or a hole saw makes all of it. */
    private Optional<Hole> round(CutFeature feature) {
      Optional<Hole> hole =
          feature.kind() == CutFeature.Kind.HOLE
              ? plate.holes().stream().filter(h -> h.label().equals(feature.label())).findFirst()
              : plate.windows().stream()
                  .filter(w -> w.label().equals(feature.label()))
                  .findFirst()
                  .flatMap(Window::asHole);
      return feature.kind() == CutFeature.Kind.OUTLINE
          ? Optional.empty()
          : hole.filter(h -> !h.isSlotted())
              .filter(h -> h.diameter() <= largestSaw + 1e-9 || drilled(h));
    }

    private void saw(Hole hole) {
      CutFeature.Kind kind =
          plate.holes().contains(hole) ? CutFeature.Kind.HOLE : CutFeature.Kind.WINDOW;
      CutFeature feature = new CutFeature(hole.label(), kind, hole.place());
      holes.add(
          new WasteHole(
              feature, hole.centre(), hole.diameter(), drilled(hole) ? Why.DRILL : Why.HOLE_SAW));
    }

    private void narrow(CutFeature feature) {
      notes.add(
          new Note(
              feature.place(),
              feature.label() + " is too narrow for the saw: drill a row of holes and file"));
    }

    private void along(CutLine line) {
      double least = blade.room();
      if (line.inside() && Offset.of(line.path(), -least / 2).isEmpty()) {
        lines.remove(line);
        narrow(line.feature());
        return;
      }
      List<Turning> wanted = new ArrayList<>();
      List<TightTurn> bare = new ArrayList<>();
      for (TightTurn turn : TightTurn.of(line, blade.turn())) {
        Optional<WasteHole> hole = corner(line, turn);
        if (hole.isPresent()) {
          wanted.add(new Turning(turn, hole.get()));
        } else if (turn.within() < least / 2) {
          notes.add(
              new Note(
                  line.feature().place(),
                  line.feature().label() + ": a corner is too narrow for a hole; file it out"));
        } else {
          bare.add(turn);
        }
      }
      List<WasteHole> kept = new ArrayList<>();
      wanted.stream().sorted(FIRST).map(Turning::hole).forEach(hole -> keep(kept, hole));
      wanted.stream().filter(w -> !kept.contains(w.hole())).map(Turning::turn).forEach(bare::add);
      bare(line.feature(), bare);
      if (!line.inside()) {
        holes.addAll(kept);
      } else if (kept.isEmpty()) {
        holes.add(start(line));
      } else {
        WasteHole first = kept.get(0);
        kept.set(0, hole(line, first.at(), first.diameter(), Why.START_AND_TURN));
        holes.addAll(kept);
      }
    }

    /** Tells the turns that the blade does not follow and that have no hole. */
    private void bare(CutFeature feature, List<TightTurn> turns) {
      if (turns.isEmpty()) {
        return;
      }
      String places =
          turns.stream()
              .map(TightTurn::deepest)
              .map(p -> "(" + Numbers.fixed(p.x(), 1) + ", " + Numbers.fixed(p.y(), 1) + ")")
              .collect(Collectors.joining(" and "));
      notes.add(
          new Note(
              feature.place(),
              feature.label()
                  + ": the blade does not follow the rough line round "
                  + places
                  + ", and no hole has room there beside the others: saw up to it from both sides,"
                  + " nibble away what is left, and file"));
    }

    /** The largest hole that reaches the deepest place of a turn, or the least that has room. */
    private Optional<WasteHole> corner(CutLine line, TightTurn turn) {
      double least = blade.room() / 2;
      double best = 0;
      double first = Double.NaN;
      for (double d = least; d <= blade.turn() + least; d += STEP / 2) {
        double room = room(line, turn.at(d));
        if (room >= d - Compensation.IGNORED && d <= blade.turn()) {
          best = d;
        }
        if (Double.isNaN(first) && room >= least) {
          first = d;
        }
      }
      if (best > 0) {
        return Optional.of(hole(line, turn.at(best), 2 * best, Why.TURN));
      }
      return Double.isNaN(first)
          ? Optional.empty()
          : Optional.of(hole(line, nearest(line, turn, first, least), 2 * least, Why.TURN));
    }

    /** Where a hole of a radius first has room on the way out of a sharp corner. */
    private static Point nearest(CutLine line, TightTurn turn, double has, double radius) {
      double low = 0;
      double high = has;
      for (int i = 0; i < 50; i++) {
        double middle = (low + high) / 2;
        if (room(line, turn.at(middle)) >= radius) {
          high = middle;
        } else {
          low = middle;
        }
      }
      return turn.at(high);
    }

    private static double room(CutLine line, Point p) {
      boolean waste = line.path().contains(p) == line.inside();
      return waste ? line.path().distance(p) : 0;
    }

    private static WasteHole hole(CutLine line, Point at, double diameter, Why why) {
      return new WasteHole(line.feature(), at, diameter, why);
    }

    /** Keeps a hole unless it meets one that is kept already. */
    private static void keep(List<WasteHole> holes, WasteHole hole) {
      if (holes.stream().noneMatch(other -> meets(other, hole))) {
        holes.add(hole);
      }
    }

    private static boolean meets(WasteHole a, WasteHole b) {
      return a.at().distance(b.at()) < (a.diameter() + b.diameter()) / 2 + WALL;
    }

    /** A hole to start from where the saw turns nowhere. */
    private WasteHole start(CutLine line) {
      Contour path = line.path();
      Segment longest = path.segments().get(0);
      for (Segment segment : path.segments()) {
        if (segment.length() > longest.length() + 1e-9) {
          longest = segment;
        }
      }
      double radius = blade.room() / 2;
      Point at = longest.at(0.5).plus(longest.tangent(0.5).left(), radius);
      if (!path.contains(at) || path.distance(at) < radius - 1e-6) {
        at = LargestCircle.inside(path).centre();
      }
      return hole(line, at, 2 * radius, Why.START);
    }
  }
}
