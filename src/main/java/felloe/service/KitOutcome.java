package felloe.service;

import felloe.cutting.CutJob;
import felloe.cutting.CutRefused;
import felloe.cutting.MachineJob;
import felloe.geometry.GeometryException;
import felloe.plate.Plate;
import felloe.template.TemplateOptions;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * All that is made of a plate at once. What a machine would follow is held back while the plate
 * fails its review; templates and picture are not: on paper a maker sees best what is wrong, and
 * cardboard forgives.
 *
 * @param templates at true scale
 * @param router how it is cut by router with everything as usual; empty when it is not
 * @param refused why it is not, where nothing is held back
 */
public record KitOutcome(
    TemplateOutcome templates, Optional<CutJob> router, Optional<RuntimeException> refused) {

  /** How a router cuts it, or why none does. */
  private record Routing(Optional<CutJob> router, Optional<RuntimeException> refused) {
    static final Routing NONE = new Routing(Optional.empty(), Optional.empty());

    static Routing of(Plate plate) {
      try {
        return new Routing(Optional.of(PlateCutting.usual(plate)), Optional.empty());
      } catch (CutRefused | MachineJob.Unproved | GeometryException refused) {
        return new Routing(Optional.empty(), Optional.of(refused));
      }
    }
  }

  /**
   * Makes it. The paths of the router know nothing of pages, so both are worked out at once.
   *
   * @throws felloe.plate.BadInput when its templates cannot be printed so
   */
  public static KitOutcome of(Study study, TemplateOptions options) {
    CompletableFuture<Routing> routing =
        study.fails()
            ? CompletableFuture.completedFuture(Routing.NONE)
            : CompletableFuture.supplyAsync(() -> Routing.of(study.plate()));
    TemplateOutcome templates = TemplateOutcome.of(study, options);
    Routing routed = routing.join();
    return new KitOutcome(templates, routed.router(), routed.refused());
  }

  /** The plate. */
  public Study study() {
    return templates.study();
  }

  /** Whether what a machine would follow is held back. */
  public boolean held() {
    return study().fails();
  }
}
