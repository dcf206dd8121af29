package felloe.job;

import felloe.cutting.JigsawPlan;
import felloe.cutting.MachineJob;
import java.util.List;
import java.util.Optional;

/** How windows and outline come out of the stock. */
public sealed interface Cutting {

  /**
   * They are sawn by hand outside the rough line, and filed to the finish line.
   *
   * @param plan what is sawn, and what is drilled for the saw; empty where the rough line could not
   *     be worked out
   * @param blade width of the blade from teeth to back, mm
   */
  record Saw(Optional<JigsawPlan> plan, double blade) implements Cutting {

    /** Holes in the waste that the saw starts from or turns in. */
    public List<JigsawPlan.WasteHole> holes() {
      return plan.stream()
          .flatMap(p -> p.holes().stream())
          .filter(JigsawPlan.WasteHole::forTheSaw)
          .toList();
    }
  }

  /**
   * A machine cuts them.
   *
   * @param router what a router does with everything as usual; empty where that does not suit
   */
  record Machine(Optional<MachineJob> router) implements Cutting {}
}
