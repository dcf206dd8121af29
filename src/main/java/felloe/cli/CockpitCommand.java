package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.CockpitFiles;
import felloe.kit.Kit;
import felloe.report.CockpitReport;
import felloe.service.CockpitOutcome;
import felloe.service.Studies;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The wheel in the car: what it is clear of, what hands reach, what the driver sees. */
final class CockpitCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder for the files, in a folder of the shape's name; else none.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "cockpit",
            "Tells how near the wheel comes to what is about it as it is turned from lock to lock:"
                + " knees, thighs, dash, levers, as the shape file's section cockpit has them; what"
                + " hands hold and reach, and what the wheel hides of an instrument. With --out,"
                + " writes pages and views (SHAPE-cockpit-*). Exit code 1 when it comes too near"
                + " for a hand.");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, OUT, Printing.PAGES);
    Answers.options(spec);
    Options.examples(
        spec,
        "  felloe cockpit bittern.yaml",
        "  felloe cockpit bittern.yaml --out prints",
        "  felloe cockpit bittern.yaml --set cockpit.column=30");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    if (!OUT.given(call)) {
      Options.refuse(
          call, "only counts with " + OUT.name(), "take it out, or name a folder", Printing.PAGES);
    }
    CockpitOutcome outcome = CockpitOutcome.of(studies.one(Options.shape(call)));
    Report report = CockpitReport.of(outcome);
    Written files =
        Printing.pages(
            call,
            kit,
            OUT.in(call),
            "cockpit",
            outcome.plate(),
            paper -> CockpitFiles.of(outcome, report, paper));
    Answers.show(call, screen, outcome, files, () -> report);
    return outcome.well() ? Exit.WELL : Exit.FAILS;
  }
}
