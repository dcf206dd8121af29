package felloe.kit;

import felloe.drawing.Cautions;
import felloe.drawing.Drawing;
import felloe.drawing.Page;
import felloe.drawing.Picture;
import felloe.drawing.PictureDrawing;
import felloe.drawing.Stamp;
import felloe.files.OutFile;
import felloe.geometry.Box;
import felloe.out.About;
import felloe.out.FindingsJson;
import felloe.out.HoleCsv;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.out.PdfWriter;
import felloe.out.PngWriter;
import felloe.out.ShapeJson;
import felloe.out.SvgWriter;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.render.ResultJson;
import felloe.service.PlateCutting;
import felloe.service.Study;
import felloe.template.CheckSheet;
import felloe.template.MarkOut;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateDrawing;
import felloe.template.TemplateOptions;
import felloe.template.WasteHole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Future;

/** Makes the files of plates, in memory. */
final class Workshop {

  /** Room round a drawing, mm. */
  private static final double EDGE = 5;

  /** Size of a picture, pixels: the width wanted, and the height that it keeps under. */
  private static final double WIDTH = 1600;

  private static final double HEIGHT = 3200;

  private final TemplateOptions options;

  /** A workshop that lays templates out as the options say. */
  Workshop(TemplateOptions options) {
    this.options = options;
  }

  /** The whole kit of a plate; the report last, since it lists the others. */
  Prepared kit(Study studied, Easel easel) {
    Plate plate = studied.plate();
    Study check = studied;
    Stamp stamp = Stamp.of(Stamp.Act.CUT, check.findings());
    KitNames names = new KitNames(plate.name());
    Future<OutFile> drawing = easel.draw(() -> new OutFile(names.svg(), drawing(plate, stamp)));
    Future<OutFile> picture =
        easel.draw(() -> new OutFile(names.picture(), picture(plate, check.findings())));
    PageSet tiled = Template.pages(plate, waste(plate), options, stamp);
    OutFile template = new OutFile(names.template(options.paper().title()), PdfWriter.write(tiled));
    OutFile plot = new OutFile(names.plot(), plot(plate, stamp));
    OutFile holes = new OutFile(names.holes(), HoleCsv.write(plate));
    List<OutFile> files =
        new ArrayList<>(List.of(Easel.done(drawing), template, plot, holes, Easel.done(picture)));
    MachineFiles machine = MachineFiles.of(plate, check.verdict());
    files.addAll(machine.files());
    Pages pages = Pages.of(tiled);
    files.add(new OutFile(names.report(), report(check, pages, machine, files)));
    return new Prepared(plate, List.copyOf(files), pages, check, machine.lacks());
  }

  /** The templates of a plate alone. */
  List<OutFile> templates(Study check) {
    Plate plate = check.plate();
    Stamp stamp = Stamp.of(Stamp.Act.CUT, check.findings());
    KitNames names = new KitNames(plate.name());
    PageSet tiled = Template.pages(plate, waste(plate), options, stamp);
    return List.of(
        new OutFile(names.template(options.paper().title()), PdfWriter.write(tiled)),
        new OutFile(names.plot(), plot(plate, stamp)),
        new OutFile(names.svg(), drawing(plate, stamp)));
  }

  /** The sheet that proves a printer's scale before paper is spent. */
  OutFile printCheck() {
    String paper = options.paper().title();
    Page sheet =
        CheckSheet.of(options.paper(), options.margin(), options.bars(), options.barsPlace());
    byte[] pdf = PdfWriter.write(List.of(sheet), "Print check, " + paper);
    return new OutFile(KitNames.printCheck(paper), pdf);
  }

  /**
   * The full-size page. A reading of the bars belongs to the printer that printed them, so it does
   * not change what goes to a plotter.
   */
  private byte[] plot(Plate plate, Stamp stamp) {
    TemplateOptions uncorrected =
        new TemplateOptions(
            options.paper(),
            options.margin(),
            options.overlap(),
            options.markOut(),
            options.face(),
            options.turning(),
            Optional.empty(),
            options.barsPlace());
    return PdfWriter.write(Template.fullSize(plate, waste(plate), uncorrected, stamp));
  }

  /** The drawing. Its finish line is never moved for a pen: a machine may follow it. */
  private byte[] drawing(Plate plate, Stamp stamp) {
    Face face = options.face().orElse(plate.stock().templateFace());
    Drawing drawing = TemplateDrawing.of(plate, waste(plate), MarkOut.STUCK_ON, face, stamp);
    return SvgWriter.write(drawing, page(drawing, plate), about(plate, "template"));
  }

  private static List<WasteHole> waste(Plate plate) {
    return PlateCutting.wasteHoles(plate).stream()
        .map(hole -> new WasteHole(hole.at(), hole.diameter()))
        .toList();
  }

  /** The picture, findings marked. */
  static byte[] picture(Plate plate, List<Finding> findings) {
    Picture picture = PictureDrawing.of(plate, findings);
    Box page = picture.page();
    // A long narrow plate must not make a picture that is miles high.
    double pixels = Math.min(WIDTH, HEIGHT * page.width() / page.height());
    return PngWriter.write(
        picture.drawing(),
        page,
        picture.pen(),
        (int) Math.max(1, Math.round(pixels)),
        about(plate, "picture"));
  }

  private static Box page(Drawing drawing, Plate plate) {
    return drawing.box().orElse(plate.box()).grown(EDGE);
  }

  private static About about(Plate plate, String what) {
    return new About(
        plate.title() + ", " + what,
        plate.revision(),
        Cautions.all(plate.stock().material().kind()));
  }

  private byte[] report(Study check, Pages pages, MachineFiles machine, List<OutFile> files) {
    Plate plate = check.plate();
    Json.Members review = FindingsJson.of(AnswerJson.withoutFolders(check.findings()));
    Json report =
        Json.object()
            .with("felloe", Kit.version())
            .with("shape", ShapeJson.of(withoutFolders(plate)))
            .with("review", review)
            .with("hub_fit", ResultJson.of(check.fit()))
            .with("template", pages.json())
            .with("lacks", Json.maybe(machine.lacks(), Json::text))
            .with("cautions", Json.array(check.cautions(), Json::text))
            .with("files", Json.array(files, Workshop::file));
    return JsonWriter.write(report);
  }

  /** The report of a kit does not tell where on the maker's disk the shape file lies. */
  private static Plate withoutFolders(Plate plate) {
    List<Note> notes =
        plate.notes().stream()
            .map(note -> new Note(AnswerJson.withoutFolders(note.place()), note.text()))
            .toList();
    return new Plate(
        plate.name(),
        plate.title(),
        plate.revision(),
        plate.outline(),
        plate.windows(),
        plate.holes(),
        plate.boltCircles(),
        plate.hub(),
        plate.stock(),
        plate.making(),
        plate.limits(),
        notes,
        plate.joints(),
        plate.load());
  }

  private static Json file(OutFile file) {
    return Json.object()
        .with("name", file.name())
        .with("bytes", file.bytes().length)
        .with("sha256", file.sha256());
  }
}
