package felloe.service;

import felloe.cutting.CutJob;
import felloe.cutting.CutRefused;
import felloe.cutting.MachineJob;
import felloe.geometry.GeometryException;
import felloe.template.TemplateOptions;
import java.util.Optional;

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
   * Makes it.
   *
   * @throws felloe.plate.BadInput when its templates cannot be printed so
   */
  public static KitOutcome of(Study study, TemplateOptions options) {
    TemplateOutcome templates = TemplateOutcome.of(study, options);
    if (study.fails()) {
      return new KitOutcome(templates, Optional.empty(), Optional.empty());
    }
    try {
      CutJob router = PlateCutting.usual(study.plate());
      return new KitOutcome(templates, Optional.of(router), Optional.empty());
    } catch (CutRefused | MachineJob.Unproved | GeometryException refused) {
      return new KitOutcome(templates, Optional.empty(), Optional.of(refused));
    }
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
