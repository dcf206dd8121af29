package felloe.cutting;

import felloe.plate.Note;
import felloe.plate.Plate;
import java.util.List;

/**
 * The finish lines as they are, for a shop that moves the path itself. Nothing is planned or
 * checked.
 */
public record FinishLines(List<Note> notes, List<String> cautions) implements CutWork {

  public FinishLines {
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  static FinishLines of(Plate plate, CutProcess process) {
    Note moved =
        new Note(
            plate.stock().place(),
            "the files hold the finish lines: whoever runs the machine must move the path by half"
                + " the cutter or kerf, outside the outline and inside windows and holes; nothing"
                + " was checked");
    return new FinishLines(List.of(moved), CutCautions.of(process, plate.stock().material()));
  }
}
