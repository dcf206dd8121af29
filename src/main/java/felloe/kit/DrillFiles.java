package felloe.kit;

import felloe.document.Report;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.out.HoleCsv;
import felloe.out.MeasuredForm;
import felloe.out.PdfWriter;
import felloe.out.StepCsv;
import felloe.service.DrillOutcome;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The files of a plate that is drilled: the sheet, its steps, a form to type readings into. */
public final class DrillFiles {

  private DrillFiles() {}

  /**
   * With them, in the plate's folder. Steps and form are the same for both faces.
   *
   * @param options how the sheet is printed; how it marks out does not count
   * @throws felloe.plate.BadInput when it cannot be printed so
   */
  public static Transaction into(
      Transaction all, DrillOutcome outcome, Report report, TemplateOptions options) {
    String stem = outcome.plate().name();
    byte[] sheet = PdfWriter.write(sheet(outcome, report, options));
    List<OutFile> files = new ArrayList<>();
    String face = KitNames.face(outcome.plate(), options);
    files.add(new OutFile(stem + "-drill-" + options.paper().title() + face + ".pdf", sheet));
    files.add(new OutFile(stem + "-drill.csv", StepCsv.write(outcome.plan())));
    if (MeasuredForm.has(outcome.plan())) {
      byte[] form = MeasuredForm.write(outcome.plate(), outcome.plan());
      files.add(new OutFile(stem + "-measured.yaml", form, true));
    }
    return all.folder(stem, KitNames.set("drill" + face, outcome.plate(), files));
  }

  /**
   * The sheet's pages.
   *
   * @throws felloe.plate.BadInput when they cannot be printed so
   */
  static PageSet sheet(DrillOutcome outcome, Report report, TemplateOptions options) {
    return Template.drilling(outcome.plate(), options, report, outcome.cautions(), outcome.stamp());
  }

  /** The hole schedule alone, for a spreadsheet. */
  public static String schedule(DrillOutcome outcome) {
    return new String(HoleCsv.write(outcome.plate()), StandardCharsets.UTF_8);
  }
}
