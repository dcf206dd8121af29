package felloe.cutting;

import felloe.plate.Note;
import java.util.List;

/** What is done to cut plates out. */
public sealed interface CutWork permits MachineJob, JigsawPlan, FinishLines {

  /** What the maker should know. */
  List<Note> notes();

  /** How not to get hurt, in sentences, the most pressing first. */
  List<String> cautions();
}
