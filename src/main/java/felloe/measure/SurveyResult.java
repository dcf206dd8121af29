package felloe.measure;

import felloe.measure.Measured.Pair;
import felloe.plate.Problem;
import java.util.List;
import java.util.Optional;

/**
 * What the readings tell.
 *
 * @param measured what was measured
 * @param holes where they are, in order; empty when the readings do not tell it
 * @param even whether an even ring was taken for granted
 * @param pattern the circle; empty when the readings do not tell it, as for holes on one line
 * @param suspects readings that look like slips
 * @param readings all others, and how they agree
 * @param freedom how many readings there are beyond those that are needed
 * @param scattered whether the readings differ more than their plus and minus allows; the bounds
 *     are then from their own scatter (Student's t)
 * @param scatter by which factor they differ more; 1 when not scattered
 * @param clockwise whether the holes are numbered clockwise; only edges at right angles tell it,
 *     without them counter-clockwise is taken for granted
 * @param next readings that would make it surer, or that are wanted, the most useful first
 * @param refusals why the readings do not tell where the holes are; empty when they do
 */
public record SurveyResult(
    Measured measured,
    List<FoundHole> holes,
    boolean even,
    Optional<Pattern> pattern,
    List<Suspect> suspects,
    List<CheckedReading> readings,
    int freedom,
    boolean scattered,
    double scatter,
    boolean clockwise,
    List<Pair> next,
    List<Problem> refusals) {

  public SurveyResult {
    holes = List.copyOf(holes);
    suspects = List.copyOf(suspects);
    readings = List.copyOf(readings);
    next = List.copyOf(next);
    refusals = List.copyOf(refusals);
  }

  /** Why the readings tell no circle; empty when they do. */
  public List<Problem> noCircle() {
    return told() && pattern.isEmpty() ? List.of(Refusals.noCircle(this)) : refusals;
  }

  /** Whether the readings tell where the holes are. */
  public boolean told() {
    return !holes.isEmpty();
  }
}
