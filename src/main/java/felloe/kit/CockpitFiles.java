package felloe.kit;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.files.OutFile;
import felloe.out.About;
import felloe.out.SvgWriter;
import felloe.plate.Plate;
import felloe.render.PageRenderer;
import felloe.report.CockpitPictures;
import felloe.report.SightTelling;
import felloe.service.CockpitOutcome;
import java.util.ArrayList;
import java.util.List;

/** The files of a wheel in its car: pages, and the views as drawings. */
public final class CockpitFiles {

  private CockpitFiles() {}

  /** The files, in memory. */
  public static List<OutFile> of(CockpitOutcome outcome, Report report, Paper paper) {
    Plate plate = outcome.plate();
    String stem = plate.name() + "-cockpit";
    CockpitPictures pictures = new CockpitPictures(outcome);
    About about = new About(plate.title() + ", in the cockpit", plate.revision(), "");
    List<OutFile> files = new ArrayList<>();
    files.add(new OutFile(stem + "-" + paper.title() + ".pdf", PageRenderer.pdf(report, paper)));
    files.add(new OutFile(stem + "-front.svg", SvgWriter.write(pictures.front(), about)));
    files.add(new OutFile(stem + "-side.svg", SvgWriter.write(pictures.side(), about)));
    SightTelling.view(outcome)
        .ifPresent(
            view -> files.add(new OutFile(stem + "-view.svg", SvgWriter.write(view, about))));
    return files;
  }
}
