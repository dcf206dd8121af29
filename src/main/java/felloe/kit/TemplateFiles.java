package felloe.kit;

import felloe.drawing.Cautions;
import felloe.drawing.Drawing;
import felloe.drawing.Page;
import felloe.drawing.Picture;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.out.About;
import felloe.out.PdfWriter;
import felloe.out.SvgWriter;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.service.Study;
import felloe.service.TemplateOutcome;
import felloe.template.CheckSheet;
import felloe.template.MarkOut;
import felloe.template.PhotoSheet;
import felloe.template.TemplateDrawing;
import felloe.template.TemplateOptions;
import java.util.ArrayList;
import java.util.List;

/** The files of templates: the tiled pages, the full-size page, a drawing; a sheet by itself. */
public final class TemplateFiles {

  /** Room round a drawing, mm. */
  private static final double EDGE = 5;

  private TemplateFiles() {}

  /** With the templates of a plate, in its folder. */
  public static Transaction into(Transaction files, TemplateOutcome outcome) {
    Study study = outcome.study();
    List<OutFile> all = List.of(tiled(outcome), plot(outcome), drawing(study, outcome.options()));
    String set = "template" + KitNames.face(study.plate(), outcome.options());
    return files.folder(study.plate().name(), KitNames.set(set, study.plate(), all));
  }

  /** With the sheet that proves a printer's scale before paper is spent; it is of no plate. */
  public static Transaction printCheck(Transaction files, TemplateOptions options) {
    String paper = options.paper().title();
    Page sheet =
        CheckSheet.of(options.paper(), options.margin(), options.bars(), options.asked().bars());
    String name = "print-check-" + paper + ".pdf";
    byte[] pdf = PdfWriter.write(List.of(sheet), "Print check, " + paper);
    return files.here(new FileSet(name, "", List.of(new OutFile(name, pdf))));
  }

  /** With the sheets of marks for a photo that a part is measured on; they are of no plate. */
  public static Transaction photoFrame(Transaction files, TemplateOptions options) {
    OutFile sheets = photoFrame(options);
    return files.here(new FileSet(sheets.name(), "", List.of(sheets)));
  }

  /** The sheets of marks alone. */
  public static OutFile photoFrame(TemplateOptions options) {
    List<Page> pages = new ArrayList<>();
    for (PhotoSheet sheet : PhotoFrame.sheets()) {
      pages.add(sheet.on(options.paper(), options.margin(), options.bars(), options.asked()));
    }
    String paper = options.paper().title();
    String name = "photo-frame-" + paper + ".pdf";
    return new OutFile(name, PdfWriter.write(pages, "Photo frame, " + paper));
  }

  public static OutFile tiled(TemplateOutcome outcome) {
    String paper = outcome.options().paper().title();
    String name = named(outcome.study(), "-template-" + paper, outcome.options());
    return new OutFile(name + ".pdf", PdfWriter.write(outcome.tiled()));
  }

  static OutFile plot(TemplateOutcome outcome) {
    String name = named(outcome.study(), "-plot", outcome.options());
    return new OutFile(name + ".pdf", PdfWriter.write(outcome.fullSize()));
  }

  private static String named(Study study, String what, TemplateOptions options) {
    return study.plate().name() + what + KitNames.face(study.plate(), options);
  }

  /** The drawing. Its finish line is never moved for a pen: a machine may follow it. */
  static OutFile drawing(Study study, TemplateOptions options) {
    Plate plate = study.plate();
    Face face = options.face().orElse(plate.stock().templateFace());
    Drawing drawing =
        TemplateDrawing.of(
            plate,
            TemplateOutcome.waste(plate),
            MarkOut.STUCK_ON,
            face,
            TemplateOutcome.stamp(study));
    Picture picture = new Picture(drawing, drawing.box().orElse(plate.box()).grown(EDGE), 1);
    return new OutFile(
        named(study, "", options) + ".svg", SvgWriter.write(picture, about(plate, "template")));
  }

  /** What a file says of itself. */
  static About about(Plate plate, String what) {
    return new About(
        plate.title() + ", " + what, plate.revision(), Cautions.all(plate.stock().material()));
  }
}
