package felloe.service;

import felloe.drawing.Stamp;
import felloe.plate.Plate;
import felloe.template.PageSaving;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import felloe.template.WasteHole;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/**
 * A plate at true scale on paper.
 *
 * @param study the plate
 * @param options how it is printed
 * @param tiled on pages of the paper
 * @param fullSize on one page as large as the part
 * @param savings what would take fewer pages
 */
public record TemplateOutcome(
    Study study,
    TemplateOptions options,
    PageSet tiled,
    PageSet fullSize,
    List<PageSaving> savings) {

  public TemplateOutcome {
    savings = List.copyOf(savings);
  }

  /**
   * Lays it out. A reading of the bars belongs to the printer that printed them, so it does not
   * change the full-size page, which goes to a plotter.
   *
   * @throws felloe.plate.BadInput when it cannot be printed so
   */
  public static TemplateOutcome of(Study study, TemplateOptions options) {
    Template template = Template.of(study.plate(), waste(study.plate()), options, stamp(study));
    PageSet tiled = template.pages();
    // Neither knows of the other: the wait is that of the longer.
    CompletableFuture<List<PageSaving>> savings =
        CompletableFuture.supplyAsync(() -> template.savings(tiled));
    PageSet fullSize = template.fullSize();
    return new TemplateOutcome(study, options, tiled, fullSize, savings.join());
  }

  /** Holes to drill in the waste first, of a plate that is sawn by hand. */
  public static List<WasteHole> waste(Plate plate) {
    return PlateCutting.wasteHoles(plate).stream()
        .map(hole -> new WasteHole(hole.at(), hole.diameter()))
        .toList();
  }

  /** What is printed across a plate that fails. */
  public static Stamp stamp(Study study) {
    return Stamp.of(Stamp.Act.CUT, study.findings());
  }
}
