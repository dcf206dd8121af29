package felloe.kit;

import felloe.document.Report;
import felloe.drawing.LoadPicture;
import felloe.drawing.LoadView;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.load.LoadPlan;
import felloe.out.About;
import felloe.out.PngWriter;
import felloe.out.SvgWriter;
import felloe.render.PageRenderer;
import felloe.report.LoadMaps;
import felloe.report.LoadReport;
import felloe.service.LoadOutcome;
import java.util.ArrayList;
import java.util.List;

/** The files of a plate under load: a picture of each case, that of the worst as PNG, pages. */
public final class LoadFiles {

  private static final int PIXELS = 1800;

  private LoadFiles() {}

  /** The files, in memory. */
  public static List<OutFile> of(LoadOutcome outcome, Report report, Paper paper) {
    String stem = outcome.plate().name() + "-load";
    LoadMaps maps = new LoadMaps(outcome);
    List<OutFile> files = new ArrayList<>();
    for (LoadPlan.Judged one : outcome.plan().cases()) {
      LoadView view = maps.view(one);
      Picture picture = LoadPicture.of(view);
      files.add(
          new OutFile(
              stem + "-" + one.field().load().name() + ".svg",
              SvgWriter.write(picture, about(outcome, view))));
    }
    LoadView worst = maps.view(outcome.worst());
    Picture picture = LoadPicture.of(worst);
    files.add(new OutFile(stem + ".png", PngWriter.write(picture, PIXELS, about(outcome, worst))));
    files.add(new OutFile(stem + "-" + paper.title() + ".pdf", PageRenderer.pdf(report, paper)));
    return files;
  }

  /** The sheet of a proof load. */
  public static List<OutFile> proof(LoadOutcome outcome, Report report, Paper paper) {
    String name = outcome.plate().name() + "-proof-" + paper.title() + ".pdf";
    return List.of(new OutFile(name, PageRenderer.pdf(report, paper)));
  }

  private static About about(LoadOutcome outcome, LoadView view) {
    return new About(
        view.title() + ": " + view.load(),
        outcome.plate().revision(),
        String.join(" ", LoadReport.cautions(outcome.plate())));
  }
}
