package felloe.kit;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.files.OutFile;
import felloe.jig.JigPiece;
import felloe.out.About;
import felloe.out.StlWriter;
import felloe.out.ThreeMfWriter;
import felloe.plate.Plate;
import felloe.render.PageRenderer;
import felloe.service.JigOutcome;
import java.util.ArrayList;
import java.util.List;

/** The files of a jig: pages for the bench, each piece to print, and all of them in one file. */
public final class JigFiles {

  private JigFiles() {}

  /** The files, in memory. */
  public static List<OutFile> of(JigOutcome outcome, Report report, Paper paper) {
    Plate plate = outcome.plate();
    String stem = plate.name() + "-jig";
    List<JigPiece> pieces = outcome.plan().pieces();
    About about =
        new About(
            plate.title() + ", jig and template",
            plate.revision(),
            String.join(" ", outcome.cautions()));
    List<OutFile> files = new ArrayList<>();
    files.add(new OutFile(stem + "-" + paper.title() + ".pdf", PageRenderer.pdf(report, paper)));
    for (JigPiece piece : pieces) {
      files.add(new OutFile(stem + "-" + piece.name() + ".stl", StlWriter.write(piece.part())));
    }
    files.add(
        new OutFile(
            stem + ".3mf",
            ThreeMfWriter.write(pieces.stream().map(JigPiece::part).toList(), about)));
    return files;
  }
}
