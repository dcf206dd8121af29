package felloe.board;

import felloe.cutting.CutProcess;
import felloe.cutting.CutWish;
import felloe.cutting.DialectCatalogue;
import felloe.document.Report;
import felloe.kit.CardFiles;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.render.HtmlRenderer;
import felloe.report.CheckReport;
import felloe.report.CockpitReport;
import felloe.report.CutReport;
import felloe.report.DrillReport;
import felloe.report.GripsReport;
import felloe.report.LayupReport;
import felloe.report.TemplateReport;
import felloe.service.CardOutcome;
import felloe.service.CockpitOutcome;
import felloe.service.CutOutcome;
import felloe.service.DrillOutcome;
import felloe.service.GripsOutcome;
import felloe.service.JobCard;
import felloe.service.LayupPlanning;
import felloe.service.PlateCutting;
import felloe.service.PlateLoads;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.service.TemplateOutcome;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The answers of the command line about a text, as parts of a page. */
final class Views {

  /** What can be looked at. */
  enum View {
    REVIEW,
    LOADS,
    TEMPLATE,
    LAYUP,
    CUTTING,
    DRILLING,
    GRIPS,
    COCKPIT,
    CARD
  }

  /** Bodies are fetched and drawn by the page. */
  private static final String SOLID =
      "<canvas class=\"solid\" tabindex=\"0\" role=\"img\" aria-label=\"the finished wheel: drag"
          + " it, or turn it with the arrow keys; plus and minus go nearer and"
          + " farther\"></canvas>\n";

  private final BoardTalk talk;

  Views(BoardTalk talk) {
    this.talk = talk;
  }

  /**
   * A view.
   *
   * @throws felloe.plate.BadInput telling why there is none
   */
  String of(View view, Bench.Work work) {
    Desk desk = work.desk();
    if (view == View.LOADS) {
      return work.loads().article().orElse("");
    }
    String text = desk.state().seen().text();
    ShapeSource source = ShapeSource.text(desk.name(), text);
    Path folder = desk.folder();
    Studies studies = new Studies(folder, Optional.empty());
    if (view == View.TEMPLATE) {
      return template(studies.one(source));
    }
    if (view == View.CUTTING) {
      return cutting(source, studies);
    }
    if (view == View.GRIPS) {
      return SOLID + HtmlRenderer.article(report(view, source, studies, folder));
    }
    Report report = report(view, source, studies, folder);
    return view == View.CARD || view == View.DRILLING
        ? HtmlRenderer.workSheet(report)
        : HtmlRenderer.article(report);
  }

  private Report report(View view, ShapeSource source, Studies studies, Path folder) {
    return switch (view) {
      case REVIEW -> CheckReport.of(studies.advised(studies.one(source)));
      case DRILLING -> DrillReport.of(DrillOutcome.of(studies.advised(studies.one(source))));
      case GRIPS -> GripsReport.of(GripsOutcome.of(studies.one(source)));
      case COCKPIT -> CockpitReport.of(CockpitOutcome.of(studies.one(source)));
      case LAYUP -> layup(source, studies, folder);
      case CARD -> card(source, studies, folder);
      default -> throw new IllegalStateException("no report: " + view);
    };
  }

  /** The paths in their order, then the report; a plate that fails is not cut. */
  private static String cutting(ShapeSource source, Studies studies) {
    PlateCutting.Request request =
        new PlateCutting.Request(
            CutWish.usual(CutProcess.ROUTER),
            Optional.empty(),
            Optional.empty(),
            DialectCatalogue.standard(),
            false,
            figure -> Place.BUILT_IN);
    CutOutcome outcome = PlateCutting.of(List.of(source), request, studies);
    StringBuilder html = new StringBuilder();
    outcome.jobs().forEach(job -> html.append(CutOrder.of(job)));
    return html.append(HtmlRenderer.article(CutReport.of(outcome))).toString();
  }

  private static Report layup(ShapeSource source, Studies studies, Path folder) {
    LayupPlanning.Request request = new LayupPlanning.Request(LayupWish.NONE, Optional.empty());
    return LayupReport.of(LayupPlanning.of(source, request, studies, folder).plan());
  }

  private Report card(ShapeSource source, Studies studies, Path folder) {
    TemplateOptions options = talk.options();
    CardOutcome outcome = JobCard.of(source, PlateLoads.Request.USUAL, options, studies, folder);
    return CardFiles.sheet(outcome, talk.calls().apply(outcome.study()), options).report();
  }

  private String template(Study study) {
    TemplateOutcome outcome = TemplateOutcome.of(study, talk.options());
    StringBuilder html = new StringBuilder();
    html.append(HtmlRenderer.article(TemplateReport.of(List.of(outcome))));
    return html.append(Papers.of(outcome)).toString();
  }
}
