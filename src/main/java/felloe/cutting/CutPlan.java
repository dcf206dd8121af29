package felloe.cutting;

import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * How a plate is cut on a router, laser or waterjet: every move, in order. Holes come first, then
 * windows, the outline last, so that the part stays held; within each, from the nearest to the
 * next, beginning at work zero.
 *
 * <p>A plan is a claim until {@link SweepCheck} has proved it at the decimals that a file will
 * have; nobody may write one that it refuses.
 *
 * @param plate the plate
 * @param setup how it is cut
 * @param surroundings what lies round it: clamps, other parts, the edge of the sheet
 * @param compensation paths and left-overs; a router's drilled holes are not among them
 * @param height heights; for a beam only the clearance is read
 * @param operations what is done, in order
 * @param tabs what is left standing
 * @param figures lengths and times, one for each operation
 * @param notes what the maker should know, such as a slug that comes loose
 * @param cautions how not to get hurt, in sentences
 */
public record CutPlan(
    Plate plate,
    CutSetup setup,
    Surroundings surroundings,
    Compensation compensation,
    JobHeights height,
    List<Operation> operations,
    List<CutTab> tabs,
    List<OperationFigures> figures,
    List<Note> notes,
    List<String> cautions) {

  /** A way within this of a path goes along it, mm. */
  private static final double ON_PATH = 1e-6;

  /** Copies the lists. */
  public CutPlan {
    operations = List.copyOf(operations);
    tabs = List.copyOf(tabs);
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * Plans one plate alone on its sheet.
   *
   * @throws CutRefused with everything that is wrong with the setup for this plate
   */
  public static CutPlan of(Plate plate, CutSetup setup) {
    return of(plate, setup, Surroundings.NONE);
  }

  /**
   * Plans a plate beside things that must not be touched.
   *
   * @param surroundings none of its edges may reach into the plate
   * @throws CutRefused with everything that is wrong with the setup for this plate
   */
  public static CutPlan of(Plate plate, CutSetup setup, Surroundings surroundings) {
    return new CutPlanner(plate, setup, surroundings).plan();
  }

  /**
   * The way along one edge, as a beam goes it: the lead on, once round, the lead off.
   *
   * @param line one of the paths
   * @return empty when nothing goes along it
   */
  public List<Segment> way(CutLine line) {
    List<Segment> way = new ArrayList<>();
    for (Operation operation : operations) {
      for (Move move : operation.moves()) {
        if (move instanceof Move.Travel) {
          if (along(line, way)) {
            return way;
          }
          way.clear();
        } else if (move instanceof Move.Cut cut) {
          way.add(cut.along());
        }
      }
      if (along(line, way)) {
        return way;
      }
      way.clear();
    }
    return List.of();
  }

  /** All ways onto paths and off them. */
  public List<Segment> leads() {
    List<Segment> leads = new ArrayList<>();
    for (CutLine line : compensation.lines()) {
      List<Segment> way = way(line);
      int first = 0;
      while (first < way.size() && off(line, way.get(first))) {
        leads.add(way.get(first++));
      }
      for (int i = way.size() - 1; i > first && off(line, way.get(i)); i--) {
        leads.add(way.get(i));
      }
    }
    return leads;
  }

  private static boolean off(CutLine line, Segment segment) {
    return line.path().distance(segment.at(0.5)) > ON_PATH;
  }

  private static boolean along(CutLine line, List<Segment> way) {
    Point on = line.path().segments().get(0).at(0.3);
    return way.stream().anyMatch(segment -> segment.distance(on) < ON_PATH);
  }

  /** The whole estimate: lengths in mm, time in minutes, without tool changes. */
  public OperationFigures total() {
    return figures.stream().reduce(OperationFigures.NONE, OperationFigures::plus);
  }
}
