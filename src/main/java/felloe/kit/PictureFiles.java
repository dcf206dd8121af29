package felloe.kit;

import felloe.drawing.Cautions;
import felloe.drawing.PictureDrawing;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.out.About;
import felloe.out.PngWriter;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Sketch;
import felloe.report.BothSides;
import felloe.service.ShowOutcome;
import java.util.List;

/** The picture of a plate, or of what cannot be one, marked. */
public final class PictureFiles {

  private static final int PIXELS = 1600;

  private PictureFiles() {}

  /** With the picture of a plate, its findings marked, in its folder. */
  public static Transaction into(Transaction files, ShowOutcome outcome) {
    OutFile picture = of(outcome.plate(), outcome.findings());
    FileSet set = KitNames.set("show", outcome.plate(), List.of(picture));
    return files.folder(outcome.plate().name(), set);
  }

  /** With the picture of what clashes, in the folder that the plate's would be. */
  public static Transaction into(Transaction files, Sketch sketch) {
    About about = new About(sketch.title() + ", clashes", sketch.revision(), Cautions.USE);
    byte[] png = PngWriter.write(PictureDrawing.of(sketch), PIXELS, about);
    List<OutFile> picture = List.of(new OutFile(sketch.name() + ".png", png));
    return files.folder(
        sketch.name(), KitNames.set("show", sketch.place(), sketch.revision(), picture));
  }

  public static OutFile of(Plate plate, List<Finding> findings) {
    return new OutFile(
        plate.name() + ".png",
        PngWriter.write(
            PictureDrawing.of(plate, findings, BothSides.once(findings)),
            PIXELS,
            TemplateFiles.about(plate, "picture")));
  }
}
