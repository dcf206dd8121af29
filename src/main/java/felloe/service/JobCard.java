package felloe.service;

import felloe.layup.StockSource;
import felloe.plate.BadInput;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.Optional;

/** Plans the whole job of a plate, its loads and its proof too. */
public final class JobCard {

  private JobCard() {}

  /**
   * The job of a plate.
   *
   * @param loads how its loads are asked for; its file of materials is that of the bill too
   * @param options how its template is printed
   * @param studies what reads the shape; its problems and the request's are told together
   * @param folder where names of files start from
   * @throws BadInput with everything that is wrong
   */
  public static CardOutcome of(
      ShapeSource shape,
      PlateLoads.Request loads,
      TemplateOptions options,
      Studies studies,
      Path folder) {
    PlateLoads.Sources sources = studies.with(() -> PlateLoads.Sources.of(loads, folder));
    Study study = studies.advised(studies.one(shape));
    StockSource stock = CardOutcome.stock(study, sources.book());
    PageSet template =
        Template.of(
                study.plate(),
                TemplateOutcome.waste(study.plate()),
                options,
                TemplateOutcome.stamp(study))
            .pages();
    DrillOutcome drill = DrillOutcome.of(study);
    try {
      LoadOutcome load = PlateLoads.own(study, loads, sources, studies);
      return CardOutcome.of(
          drill, Optional.of(stock), template, Optional.of(load), Optional.empty());
    } catch (BadInput cannot) {
      return CardOutcome.of(
          drill,
          Optional.of(stock),
          template,
          Optional.empty(),
          Optional.of(CardOutcome.words(cannot)));
    }
  }
}
