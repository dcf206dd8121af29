package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.kit.TemplateAnswer;
import felloe.service.ShapeSource;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Paper templates alone. */
final class TemplateCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "template",
            "Writes true-scale templates only: tiled pages (SHAPE-template-PAPER.pdf), one"
                + " full-size page (SHAPE-plot.pdf) and a drawing (SHAPE.svg).");
    Options.shapes(spec, true);
    spec.addOption(Options.out("Folder for the files. Usually templates-out."));
    spec.addOption(
        Options.flag(
            "--print-check",
            "Write the one-page print check sheet for the paper as well; no SHAPE is needed for"
                + " it. Print it first: it finds a wrong scale before paper is spent."));
    Printing.templates(spec);
    Options.examples(
        spec,
        "  felloe template --print-check --paper A4",
        "  felloe template heron.yaml --bars 99.6x100.2",
        "  felloe template heron.yaml --method traced --pen 0.7 --face back");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    boolean printCheck = Options.has(call, "--print-check");
    List<ShapeSource> shapes = printCheck ? Options.shapes(call) : Calls.someShapes(call);
    TemplateAnswer answer =
        kit.template(shapes, Printing.of(call), printCheck, Options.outFolder(call));
    answer.files().forEach(file -> screen.line(file.toString()));
    return Calls.verdicts(screen, answer.checks(), "Its template");
  }
}
