package felloe.kit;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.files.OutFile;
import felloe.layup.LayupPlan;
import felloe.out.About;
import felloe.out.SvgWriter;
import felloe.plate.Plate;
import felloe.render.PageRenderer;
import felloe.report.LayupPictures;
import felloe.report.LayupReport;
import java.util.List;

/** The files of a lay-up: pages for the bench; drawings of the stack, the cloth and the blank. */
public final class LayupFiles {

  private LayupFiles() {}

  /** The files, in memory. */
  public static List<OutFile> of(LayupPlan plan, Report report, Paper paper) {
    LayupPictures pictures = new LayupPictures(plan);
    return List.of(
        new OutFile(
            plan.plate().name() + "-layup-" + paper.title() + ".pdf",
            PageRenderer.pdf(report, paper)),
        drawing(plan, "stack", pictures.stack()),
        drawing(plan, "cloth", pictures.roll()),
        drawing(plan, "blank", pictures.blank()));
  }

  private static OutFile drawing(LayupPlan plan, String what, Picture picture) {
    Plate plate = plan.plate();
    About about =
        new About(
            plate.title() + ", " + what,
            plate.revision(),
            String.join(" ", LayupReport.cautions(plan)));
    return new OutFile(plate.name() + "-" + what + ".svg", SvgWriter.write(picture, about));
  }
}
