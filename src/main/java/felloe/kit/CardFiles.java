package felloe.kit;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.out.BillCsv;
import felloe.out.MeasuredForm;
import felloe.out.StripsForm;
import felloe.render.PageRenderer;
import felloe.report.CardCalls;
import felloe.report.CardSheet;
import felloe.report.DrillReport;
import felloe.service.CardOutcome;
import felloe.service.DrillOutcome;
import felloe.template.PageSet;
import felloe.template.TemplateOptions;
import java.util.ArrayList;
import java.util.List;

/** The files of a job card: its pages, its bill, forms to type its readings into. */
public final class CardFiles {

  private CardFiles() {}

  /**
   * A job with where more stands about each of its acts.
   *
   * @param options how its template is printed
   */
  public static CardSheet sheet(CardOutcome outcome, CardCalls calls, TemplateOptions options) {
    return sheet(
        outcome,
        drilling(outcome.drill(), options),
        calls,
        options.paper(),
        GripFiles.finished(outcome.study()));
  }

  static CardSheet sheet(
      CardOutcome outcome, PageSet drilling, CardCalls calls, Paper paper, Picture finished) {
    return new CardSheet(outcome, CardLeads.of(outcome, drilling, paper), calls, paper, finished);
  }

  /** The drilling sheet, whose pages a card names. */
  static PageSet drilling(DrillOutcome drill, TemplateOptions options) {
    return DrillFiles.sheet(drill, DrillReport.of(drill), options);
  }

  /** Its pages and its bill, in memory. */
  static List<OutFile> pages(CardSheet sheet, Report report) {
    String stem = sheet.outcome().plate().name();
    return List.of(
        new OutFile(
            stem + "-card-" + sheet.paper().title() + ".pdf",
            PageRenderer.pdf(report, sheet.paper())),
        new OutFile(stem + "-bill.csv", BillCsv.write(sheet.outcome().job().bill())));
  }

  /** The same with forms to type readings into. */
  public static List<OutFile> of(CardSheet sheet, Report report) {
    CardOutcome outcome = sheet.outcome();
    String stem = outcome.plate().name();
    List<OutFile> files = new ArrayList<>(pages(sheet, report));
    if (MeasuredForm.has(outcome.drill().plan())) {
      byte[] form = MeasuredForm.write(outcome.plate(), outcome.drill().plan());
      files.add(new OutFile(stem + "-measured.yaml", form, true));
    }
    outcome
        .job()
        .readings()
        .strips()
        .map(strips -> StripsForm.write(outcome.plate(), strips))
        .ifPresent(form -> files.add(new OutFile(stem + "-strips.yaml", form, true)));
    return List.copyOf(files);
  }
}
