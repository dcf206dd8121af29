package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.CardFiles;
import felloe.kit.Kit;
import felloe.report.CardSheet;
import felloe.service.CardOutcome;
import felloe.service.JobCard;
import felloe.service.PlateLoads;
import felloe.service.Studies;
import felloe.template.TemplateOptions;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The job card: the whole job on pages that hang on the wall. */
final class CardCommand implements Command {

  private static final Opt<Path> OUT =
      Options.folder("Folder in which the shape has one of its own. Usually templates-out.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "card",
            "Writes the job card (SHAPE-card-PAPER.pdf): drawing and verdict, bill of materials,"
                + " the order of work with boxes to tick, blanks for what is measured, open"
                + " findings, signatures, inspection; the bill as a table (SHAPE-bill.csv); forms"
                + " for readings. Reckons the loads too, which takes some seconds. Exit code 1 when"
                + " something is not as wanted.");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, Options.MATERIALS, LoadCommand.TESTED, OUT, Printing.PAGES);
    Answers.options(spec);
    Options.examples(
        spec,
        "  felloe card heron.yaml",
        "  felloe card heron.yaml --materials my-materials.yaml --paper A3",
        "  felloe card heron.yaml --format json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    TemplateOptions options = studies.with(() -> Printing.of(call));
    PlateLoads.Request loads =
        new PlateLoads.Request(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Options.MATERIALS.in(call),
            LoadCommand.TESTED.in(call));
    CardOutcome outcome = JobCard.of(Options.shape(call), loads, options, studies, kit.folder());
    CardSheet sheet = CardFiles.sheet(outcome, CardTalk.of(outcome.study(), call), options);
    Report report = sheet.report();
    Path out = OUT.in(call).orElse(Options.USUAL_OUT);
    Written files = kit.write(out, "card", outcome.plate(), CardFiles.of(sheet, report));
    Answers.show(call, screen, sheet, files, () -> report);
    return outcome.well() ? Exit.WELL : Exit.FAILS;
  }
}
