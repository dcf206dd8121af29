package felloe.service;

import felloe.cutting.CutJob;
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

  /**
   * Makes it. The paths of the router know nothing of pages, so both are worked out at once.
   *
   * @throws felloe.plate.BadInput when its templates cannot be printed so
   */
  public static KitOutcome of(Study study, TemplateOptions options) {
    CompletableFuture<PlateCutting.Usual> routing =
        study.fails()
            ? CompletableFuture.completedFuture(PlateCutting.Usual.held(study.plate()))
            : CompletableFuture.supplyAsync(() -> PlateCutting.Usual.of(study.plate()));
    TemplateOutcome templates = TemplateOutcome.of(study, options);
    PlateCutting.Usual routed = routing.join();
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
