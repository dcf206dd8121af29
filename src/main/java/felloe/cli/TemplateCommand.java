package felloe.cli;

import felloe.files.CannotWrite;
import felloe.files.Transaction;
import felloe.files.Written;
import felloe.kit.Kit;
import felloe.kit.TemplateFiles;
import felloe.report.TemplateReport;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.service.TemplateOutcome;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Paper templates alone. */
final class TemplateCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder(
          "Folder in which each shape has one of its own; the print check sheet goes there itself."
              + " Usually templates-out.");
  static final Opt<Boolean> PRINT_CHECK =
      Opt.flag(
          "--print-check",
          "Write the one-page print check sheet for the paper as well; no SHAPE is needed for it."
              + " Print it first: it finds a wrong scale before paper is spent.");

  static final Opt<Boolean> PHOTO_FRAME =
      Opt.flag(
          "--photo-frame",
          "Write the sheets of marks for a photo that a part is measured on; no SHAPE is needed for"
              + " them. See 'new --from'.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "template",
            "Writes true-scale templates only: tiled pages (SHAPE-template-PAPER.pdf), one"
                + " full-size page (SHAPE-plot.pdf) and a drawing (SHAPE.svg). Those for another"
                + " face than the shape file says end in -back or -front.");
    Options.shapes(spec, true);
    Options.add(spec, Options.HUB, OUT, PRINT_CHECK, PHOTO_FRAME);
    Answers.format(spec);
    Printing.templates(spec);
    Options.examples(
        spec,
        "  felloe template --print-check --paper A4",
        "  felloe template --photo-frame",
        "  felloe template heron.yaml --bars 99.6x100.2",
        "  felloe template heron.yaml --method traced --pen 0.7 --face back");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    TemplateOptions options = studies.with(() -> Printing.of(call));
    boolean printCheck = PRINT_CHECK.given(call);
    boolean photoFrame = PHOTO_FRAME.given(call);
    List<ShapeSource> shapes =
        printCheck || photoFrame ? Options.shapes(call) : Options.someShapes(call);
    List<Study> all = studies.all(shapes);
    List<TemplateOutcome> outcomes = new ArrayList<>();
    studies.each(all, one -> outcomes.add(TemplateOutcome.of(one, options)));
    Transaction files = kit.into(OUT.in(call).orElse(Options.USUAL_OUT));
    if (printCheck) {
      files = TemplateFiles.printCheck(files, options);
    }
    if (photoFrame) {
      files = TemplateFiles.photoFrame(files, options);
    }
    for (TemplateOutcome one : outcomes) {
      files = TemplateFiles.into(files, one);
    }
    Written written = files.commit();
    Answers.show(
        call,
        screen,
        Map.of("templates", outcomes),
        written,
        () ->
            photoFrame && !printCheck && outcomes.isEmpty()
                ? TemplateReport.photoFrame()
                : TemplateReport.of(outcomes));
    return all.stream().anyMatch(Study::fails) ? Exit.FAILS : Exit.WELL;
  }
}
