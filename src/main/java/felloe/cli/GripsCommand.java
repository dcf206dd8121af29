package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.GripFiles;
import felloe.kit.Kit;
import felloe.report.GripsReport;
import felloe.service.GripsOutcome;
import felloe.service.PlateCutting;
import felloe.service.Studies;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** What the grips weigh, how they feel, and the files that they are made from. */
final class GripsCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder for the files, in a folder of the shape's name; else none.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "grips",
            "Shows the grips that a shape describes: girth, mass, balance, pockets, wrap; with"
                + " --out, writes each printed piece (SHAPE-grip-LABEL.stl, all in"
                + " SHAPE-grips.3mf), of each flat scale its lines, program and template, patterns"
                + " of wraps, a picture of the finished wheel (SHAPE-grips.png) and pages"
                + " (SHAPE-grips-PAPER.pdf).");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, OUT);
    Answers.options(spec);
    Printing.parts(spec);
    Options.examples(
        spec,
        "  felloe grips heron.yaml",
        "  felloe grips bittern.yaml --out prints --paper A3",
        "  felloe grips bittern.yaml --set 'grips[0].back=12'");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    if (!OUT.given(call)) {
      Printing.refuseParts(call, "only counts with " + OUT.name(), "take it out, or name a folder");
    }
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    TemplateOptions options = studies.with(() -> Printing.of(call));
    GripsOutcome outcome = GripsOutcome.of(studies.one(Options.shape(call)));
    Report report = GripsReport.of(outcome);
    Written written = Written.NONE;
    List<PlateCutting.Usual> scales = OUT.given(call) ? PlateCutting.scales(outcome) : List.of();
    if (OUT.given(call)) {
      written = GripFiles.into(kit.into(OUT.in(call).get()), outcome, scales, options).commit();
    }
    Answers.show(call, screen, outcome, written, () -> report);
    scales.forEach(scale -> GripsReport.lacks(scale).ifPresent(screen::say));
    return outcome.study().fails() ? Exit.FAILS : Exit.WELL;
  }
}
