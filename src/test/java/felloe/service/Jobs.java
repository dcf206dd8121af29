package felloe.service;

import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.SolidPicture;
import felloe.layup.MaterialBook;
import felloe.report.CardCalls;
import felloe.template.PageSet;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Jobs of the demo shapes, their loads not reckoned. */
public final class Jobs {

  /** Calls that a test knows again. */
  public static final CardCalls CALLS =
      new CardCalls(
          "ask card",
          "ask template",
          "ask layup",
          "ask drill",
          "ask cut",
          "ask load",
          "ask proof",
          "ask measured",
          "ask tested");

  private Jobs() {}

  /** The job of a shape, its template printed on A4. */
  public static CardOutcome of(String shape, String... sets) {
    return on(Paper.A4, shape, sets);
  }

  public static CardOutcome on(Paper paper, String shape, String... sets) {
    Study study = study(shape, sets);
    return CardOutcome.unloaded(
        DrillOutcome.of(study), CardOutcome.Stocked.of(study), pages(study, paper));
  }

  /** The same with its loads, held in one way. */
  public static CardOutcome loaded(String shape) {
    PlateLoads.Request loads =
        new PlateLoads.Request(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return JobCard.of(
        ShapeSource.file(
            Path.of("shapes", shape + ".yaml"), Sets.of(List.of("load.clamp_diameter=80"))),
        loads,
        UsualPrint.on(Paper.A4),
        new Studies(Path.of(""), Optional.empty()),
        Path.of(""));
  }

  /** The same with prices and materials of the maker's own. */
  public static CardOutcome priced(String shape, MaterialBook book, String... sets) {
    Study study = study(shape, sets);
    return CardOutcome.of(
        DrillOutcome.of(study),
        Optional.of(CardOutcome.stock(study, book)),
        pages(study, Paper.A4),
        Optional.empty(),
        Optional.empty());
  }

  private static Study study(String shape, String... sets) {
    return new Studies(Path.of(""), Optional.empty())
        .one(ShapeSource.file(Path.of("shapes", shape + ".yaml"), Sets.of(List.of(sets))));
  }

  private static PageSet pages(Study study, Paper paper) {
    TemplateOptions options = UsualPrint.on(paper);
    return TemplateOutcome.of(study, options).tiled();
  }

  /** The picture of the finished wheel. */
  public static Picture finished(Study study) {
    return SolidPicture.of(study.plate().title() + ", finished", GripsOutcome.look(study));
  }
}
