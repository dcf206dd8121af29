package felloe.board;

import felloe.cutting.CutProcess;
import felloe.cutting.CutWish;
import felloe.cutting.DialectCatalogue;
import felloe.document.Report;
import felloe.files.OutFile;
import felloe.kit.CardFiles;
import felloe.kit.PictureFiles;
import felloe.kit.TemplateFiles;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.render.HtmlRenderer;
import felloe.render.PageRenderer;
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
import java.util.Locale;
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

  /** What a view is made of: the text as it is now, and where it lies. */
  private record Asked(ShapeSource source, Studies studies, Path folder) {
    static Asked of(Bench.Work work) {
      Desk desk = work.desk();
      ShapeSource source = ShapeSource.text(desk.name(), desk.state().seen().text());
      return new Asked(source, new Studies(desk.folder(), Optional.empty()), desk.folder());
    }

    Study study() {
      return studies.one(source);
    }

    Study advised() {
      return studies.advised(study());
    }
  }

  /**
   * A view.
   *
   * @throws felloe.plate.BadInput telling why there is none
   */
  String of(View view, Bench.Work work) {
    Asked asked = Asked.of(work);
    return switch (view) {
      case LOADS -> work.loads().article().orElse("");
      case TEMPLATE -> template(asked.study());
      case CUTTING -> cutting(asked);
      case GRIPS -> SOLID + HtmlRenderer.article(report(view, asked));
      case CARD, DRILLING -> HtmlRenderer.workSheet(report(view, asked));
      default -> HtmlRenderer.article(report(view, asked));
    };
  }

  /**
   * A view as a file to keep: pages, or the picture of the plate.
   *
   * @param view empty for the drawing
   * @throws felloe.plate.BadInput telling why there is none
   */
  OutFile saved(Optional<View> view, Bench.Work work) {
    Asked asked = Asked.of(work);
    if (view.isEmpty()) {
      Study study = asked.advised();
      return PictureFiles.of(study.plate(), study.findings());
    }
    if (view.get() == View.TEMPLATE) {
      return TemplateFiles.tiled(TemplateOutcome.of(asked.advised(), talk.options()));
    }
    Report report =
        view.get() == View.LOADS
            ? work.loads().report().orElseThrow(() -> notYet(work.desk().name()))
            : report(view.get(), asked);
    String name = asked.study().plate().name() + "-" + word(view.get());
    return new OutFile(name + ".pdf", PageRenderer.pdf(report, talk.options().paper()));
  }

  private static BadInput notYet(String name) {
    return new BadInput(
        new Problem(Place.ofFile(name), "loads", "", "are still being reckoned", "wait for them"));
  }

  /** What a view is called in a call. */
  static String word(View view) {
    return view.name().toLowerCase(Locale.ROOT);
  }

  private Report report(View view, Asked asked) {
    return switch (view) {
      case REVIEW -> CheckReport.of(asked.advised());
      case DRILLING -> DrillReport.of(DrillOutcome.of(asked.advised()));
      case GRIPS -> GripsReport.of(GripsOutcome.of(asked.study()));
      case COCKPIT -> CockpitReport.of(CockpitOutcome.of(asked.study()));
      case LAYUP -> layup(asked.source(), asked.studies(), asked.folder());
      case CARD -> card(asked.source(), asked.studies(), asked.folder());
      case CUTTING -> CutReport.of(cut(asked));
      default -> throw new IllegalStateException("no report: " + view);
    };
  }

  private static CutOutcome cut(Asked asked) {
    PlateCutting.Request request =
        new PlateCutting.Request(
            CutWish.usual(CutProcess.ROUTER),
            Optional.empty(),
            Optional.empty(),
            DialectCatalogue.standard(),
            false,
            figure -> Place.BUILT_IN);
    return PlateCutting.of(List.of(asked.source()), request, asked.studies());
  }

  /** The paths in their order, then the report; a plate that fails is not cut. */
  private static String cutting(Asked asked) {
    CutOutcome outcome = cut(asked);
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
