package felloe.out;

import felloe.cutting.JobHeights;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import java.util.List;

/**
 * All that a G-code program holds.
 *
 * @param about title, revision and cautions, written as comments at its head
 * @param workZero where x, y and z are 0, in words, such as {@code hub axis, upper face of the
 *     stock}
 * @param notes further lines for its head, such as the size of the stock
 * @param height heights of the job
 * @param coolant whether coolant or air is wanted, where the machine has any
 * @param operations in order
 */
public record GcodeJob(
    About about,
    String workZero,
    List<String> notes,
    JobHeights height,
    boolean coolant,
    List<Operation> operations) {

  public GcodeJob {
    notes = List.copyOf(notes);
    operations = List.copyOf(operations);
  }

  /** The lowest height that any move reaches, mm. */
  double deepest() {
    double deepest = 0;
    for (Operation operation : operations) {
      for (Move move : operation.moves()) {
        if (move instanceof Move.Cut cut) {
          deepest = Math.min(deepest, Math.min(cut.fromZ(), cut.toZ()));
        } else if (move instanceof Move.Sink sink) {
          deepest = Math.min(deepest, sink.toZ());
        } else if (move instanceof Move.Drill drill) {
          deepest = Math.min(deepest, drill.bottom());
        }
      }
    }
    return deepest;
  }
}
