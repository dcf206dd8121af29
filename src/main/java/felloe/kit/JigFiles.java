package felloe.kit;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.SolidPicture;
import felloe.drawing.StampedPicture;
import felloe.files.OutFile;
import felloe.geometry.RigidTransform;
import felloe.jig.JigPiece;
import felloe.out.About;
import felloe.out.PngWriter;
import felloe.out.StlWriter;
import felloe.out.ThreeMfWriter;
import felloe.plate.Plate;
import felloe.render.PageRenderer;
import felloe.service.JigOutcome;
import felloe.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * The files of a jig: pages for the bench, how it looks, each piece to print, and all of them in
 * one file.
 */
public final class JigFiles {

  private static final int PIXELS = 1600;

  /** Between template and drill jig in the picture, mm. */
  private static final double APART = 20;

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
    files.add(new OutFile(stem + ".png", PngWriter.write(picture(outcome), PIXELS, about)));
    for (JigPiece piece : pieces) {
      files.add(new OutFile(stem + "-" + piece.name() + ".stl", StlWriter.write(piece.part())));
    }
    files.add(
        new OutFile(
            stem + ".3mf",
            ThreeMfWriter.write(pieces.stream().map(JigPiece::part).toList(), about)));
    return files;
  }

  /** The template, and the drill jig to the right of it, each put together. */
  private static Picture picture(JigOutcome outcome) {
    List<Solid> all =
        new ArrayList<>(outcome.plan().template().stream().map(JigPiece::body).toList());
    List<Solid> drill = outcome.plan().drill().stream().map(JigPiece::body).toList();
    double right = all.stream().mapToDouble(b -> b.extent().most().x()).max().orElseThrow();
    double left = drill.stream().mapToDouble(b -> b.extent().least().x()).min().orElseThrow();
    RigidTransform beside = RigidTransform.shift(right + APART - left, 0);
    drill.forEach(body -> all.add(body.moved(beside, 0)));
    String title = outcome.plate().title() + ": template, and drill jig as it is printed";
    Picture picture = SolidPicture.of(title, all);
    return StampedPicture.of(picture, picture.page().width(), outcome.stamp());
  }
}
