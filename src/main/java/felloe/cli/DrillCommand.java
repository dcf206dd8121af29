package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.DrillFiles;
import felloe.kit.Kit;
import felloe.report.DrillReport;
import felloe.service.DrillOutcome;
import felloe.service.Studies;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The order of work at the drill, the hole schedule, and the drilling sheet. */
final class DrillCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder for the drilling sheet, in a folder of the shape's name; else none.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "drill",
            "Shows the order of work: drills, speeds, what to measure, screws, the hole schedule;"
                + " with --out, writes the drilling sheet (SHAPE-drill-PAPER.pdf, for the"
                + " other face SHAPE-drill-PAPER-back.pdf), its steps"
                + " (SHAPE-drill.csv) and a form for readings (SHAPE-measured.yaml).");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, OUT);
    Answers.optionsWithTable(spec);
    Printing.centres(spec);
    Options.examples(
        spec,
        "  felloe drill heron.yaml",
        "  felloe drill heron.yaml --out prints --paper A3",
        "  felloe drill heron.yaml --format csv > holes.csv");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    if (!OUT.given(call)) {
      Printing.refuse(call, "only counts with " + OUT.name(), "take it out, or name a folder");
    }
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    TemplateOptions sheet = studies.with(() -> Printing.of(call));
    DrillOutcome outcome = DrillOutcome.of(studies.advised(studies.one(Options.shape(call))));
    Report report = DrillReport.of(outcome);
    Written written = Written.NONE;
    if (OUT.given(call)) {
      written = DrillFiles.into(kit.into(OUT.in(call).get()), outcome, report, sheet).commit();
    }
    if (Answers.format(call) == Answers.Format.CSV) {
      screen.data(DrillFiles.schedule(outcome));
      Answers.say(screen, written);
    } else {
      Answers.show(call, screen, outcome, written, () -> report);
    }
    return outcome.stops() ? Exit.FAILS : Exit.WELL;
  }
}
