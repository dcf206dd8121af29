package felloe.kit;

import felloe.cutting.CutCautions;
import felloe.cutting.CutProcess;
import felloe.cutting.DialectCatalogue;
import felloe.drawing.Picture;
import felloe.drawing.SolidPicture;
import felloe.drawing.Stamp;
import felloe.files.FileSet;
import felloe.files.OutFile;
import felloe.files.Transaction;
import felloe.grips.GripBody;
import felloe.out.About;
import felloe.out.CutDrawing;
import felloe.out.DxfWriter;
import felloe.out.PdfWriter;
import felloe.out.PngWriter;
import felloe.out.StlWriter;
import felloe.out.ThreeMfWriter;
import felloe.plate.Grip;
import felloe.plate.Plate;
import felloe.render.PageRenderer;
import felloe.report.GripsReport;
import felloe.service.GripParts;
import felloe.service.GripsOutcome;
import felloe.service.PlateCutting;
import felloe.service.PlateCutting.Usual;
import felloe.service.Study;
import felloe.service.TemplateOutcome;
import felloe.solid.Part;
import felloe.template.MarkOut;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import java.util.ArrayList;
import java.util.List;

/**
 * The files of grips: each piece of a shell as STL and all of them as 3MF; of each flat scale its
 * lines, a router's program and a template; patterns of wraps; a picture of the wheel; pages.
 */
public final class GripFiles {

  private static final int PIXELS = 1600;

  private GripFiles() {}

  /** With the files of a plate's grips, in its folder. */
  public static Transaction into(
      Transaction files, GripsOutcome outcome, List<Usual> scales, TemplateOptions options) {
    Plate plate = outcome.study().plate();
    FileSet set = KitNames.set("grips", plate, of(outcome, scales, options));
    return files.folder(plate.name(), set);
  }

  /** The finished wheel as it looks. */
  static Picture finished(Study study) {
    return SolidPicture.of(study.plate().title() + ", finished", GripsOutcome.look(study));
  }

  /** The files, in memory. */
  private static List<OutFile> of(
      GripsOutcome outcome, List<Usual> scales, TemplateOptions options) {
    Plate plate = outcome.study().plate();
    List<GripBody> bodies = outcome.bodies();
    Picture finished = finished(outcome.study());
    List<OutFile> files = new ArrayList<>(printed(outcome, bodies));
    files.addAll(flat(outcome, scales, options));
    String stem = plate.name() + "-grips";
    About about = about(outcome);
    files.add(new OutFile(stem + ".png", PngWriter.write(finished, PIXELS, about)));
    files.add(
        new OutFile(
            stem + "-" + options.paper().title() + ".pdf",
            PageRenderer.pdf(GripsReport.of(outcome, bodies, finished), options.paper())));
    return files;
  }

  /** Those that they are made from; none for a plate without grips. */
  static List<OutFile> made(GripsOutcome outcome, TemplateOptions options) {
    if (outcome.grips().isEmpty()) {
      return List.of();
    }
    boolean shells =
        outcome.grips().stream().anyMatch(g -> g.placed().grip().form() == Grip.Form.SHELL);
    List<OutFile> files = new ArrayList<>(shells ? printed(outcome, outcome.bodies()) : List.of());
    files.addAll(flat(outcome, PlateCutting.scales(outcome), options));
    return files;
  }

  /** What is printed or carved: one STL a piece, all in one 3MF; held back while it fails. */
  private static List<OutFile> printed(GripsOutcome outcome, List<GripBody> bodies) {
    Plate plate = outcome.study().plate();
    List<OutFile> files = new ArrayList<>();
    if (outcome.study().fails()) {
      return files;
    }
    List<Part> parts = new ArrayList<>();
    for (GripBody body : bodies) {
      if (form(outcome, body.label()) == Grip.Form.SHELL) {
        Part part = new Part(plate.name() + " " + body.name(), body.onBed().uncrossed());
        parts.add(part);
        String name = GripParts.fileName(body.name());
        files.add(new OutFile(plate.name() + "-grip-" + name + ".stl", StlWriter.write(part)));
      }
    }
    if (!parts.isEmpty()) {
      byte[] all = ThreeMfWriter.write(parts, about(outcome));
      files.add(new OutFile(plate.name() + "-grips.3mf", all));
    }
    return files;
  }

  private static Grip.Form form(GripsOutcome outcome, String label) {
    return outcome.grips().stream()
        .map(one -> one.placed().grip())
        .filter(grip -> grip.label().equals(label))
        .findFirst()
        .orElseThrow()
        .form();
  }

  /** What is sawn or milled of sheet, and what is cut of leather. */
  private static List<OutFile> flat(
      GripsOutcome outcome, List<Usual> scales, TemplateOptions options) {
    List<OutFile> files = new ArrayList<>();
    Stamp stamp = TemplateOutcome.stamp(outcome.study());
    for (Usual usual : scales) {
      Plate scale = usual.plate();
      files.add(template(scale, stamp, options.marked(options.markOut())));
      if (!outcome.study().fails()) {
        List<String> cautions = CutCautions.of(CutProcess.ROUTER, scale.stock().material());
        About about =
            new About(
                scale.title() + ", finish lines", scale.revision(), String.join(" ", cautions));
        byte[] lines = DxfWriter.write(CutDrawing.finish(scale), about);
        files.add(new OutFile(scale.name() + ".dxf", lines));
        usual
            .router()
            .map(job -> CutFiles.program(job, DialectCatalogue.standard(), false))
            .ifPresent(program -> files.add(new OutFile(scale.name() + ".nc", program)));
      }
    }
    for (Plate wrap : GripParts.wraps(outcome)) {
      files.add(template(wrap, stamp, options.marked(MarkOut.PATTERN)));
    }
    return files;
  }

  private static OutFile template(Plate part, Stamp stamp, TemplateOptions options) {
    return new OutFile(
        part.name() + "-template-" + options.paper().title() + ".pdf",
        PdfWriter.write(Template.of(part, TemplateOutcome.waste(part), options, stamp).pages()));
  }

  private static About about(GripsOutcome outcome) {
    Plate plate = outcome.study().plate();
    return new About(
        plate.title() + ", grips",
        plate.revision(),
        String.join(" ", GripsReport.cautions(outcome)));
  }
}
