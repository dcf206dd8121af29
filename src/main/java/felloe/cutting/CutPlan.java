package felloe.cutting;

import felloe.geometry.Contour;
import felloe.plate.BadInput;
import felloe.plate.Note;
import felloe.plate.Plate;
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
 * @param keepOut what else must not be touched, such as clamps and other parts on the sheet
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
    List<Contour> keepOut,
    Compensation compensation,
    JobHeights height,
    List<Operation> operations,
    List<CutTab> tabs,
    List<OperationFigures> figures,
    List<Note> notes,
    List<String> cautions) {

  /** Copies the lists. */
  public CutPlan {
    keepOut = List.copyOf(keepOut);
    operations = List.copyOf(operations);
    tabs = List.copyOf(tabs);
    figures = List.copyOf(figures);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * Plans one plate alone on its sheet.
   *
   * @throws BadInput with everything that is wrong with the setup for this plate
   */
  public static CutPlan of(Plate plate, CutSetup setup) {
    return of(plate, setup, List.of());
  }

  /**
   * Plans a plate beside things that must not be touched.
   *
   * @param keepOut their edges; none may reach into the plate
   * @throws BadInput with everything that is wrong with the setup for this plate
   */
  public static CutPlan of(Plate plate, CutSetup setup, List<Contour> keepOut) {
    return new CutPlanner(plate, setup, keepOut).plan();
  }

  /** The whole estimate: lengths in mm, time in minutes, without tool changes. */
  public OperationFigures total() {
    return figures.stream().reduce(OperationFigures.NONE, OperationFigures::plus);
  }
}
