package felloe.cli;

import felloe.kit.Kit;
import felloe.report.CheckReport;
import felloe.report.DrilledReport;
import felloe.service.DrilledCheck;
import felloe.service.DrilledOutcome;
import felloe.service.Studies;
import felloe.service.Study;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The review. */
final class CheckCommand implements Command {

  static final Opt<Path> MEASURED =
      Opt.one(
          "--measured",
          "FILE",
          Read::path,
          "A measured file of the plate as drilled: will it go on the hub? Exit code 1 when not.");
  private static final Opt<Boolean> BONUS =
      Opt.flag(
          "--bonus",
          "With --measured: a hole that is larger than drawn may be so much further off its place"
              + " (ISO 2692, maximum material condition).");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "check",
            "Reviews the plate: webs, edge distances, corners, finger room, sheet, weight, screws,"
                + " and whether it meets its hub. Exit code 1 when it fails a check.");
    Options.shapes(spec, false);
    Options.add(spec, Options.HUB, MEASURED, BONUS);
    Answers.options(spec);
    Options.examples(
        spec,
        "  felloe check heron.yaml",
        "  felloe check heron.yaml --hub 6x74-m5",
        "  felloe check heron.yaml --measured heron-measured.yaml",
        "  felloe check heron.yaml --format json > heron-check.json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    if (MEASURED.given(call)) {
      return drilled(call, screen, kit);
    }
    if (BONUS.given(call)) {
      throw Read.wrong(
          BONUS.name(), "needs " + MEASURED.name() + " FILE", "name the measured file");
    }
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    Study read = studies.one(Options.shape(call));
    Study study;
    try {
      study = studies.advised(read, screen::progress);
    } finally {
      screen.progressEnds();
    }
    Answers.show(call, screen, study, () -> CheckReport.of(study));
    if (study.hub().isEmpty()) {
      screen.say("To compare it with a hub, add " + Options.HUB.name() + " HUB.");
    }
    return study.fails() ? Exit.FAILS : Exit.WELL;
  }

  private static int drilled(ParseResult call, Screen screen, Kit kit) {
    DrilledOutcome outcome =
        DrilledCheck.of(
            new DrilledCheck.Request(
                Options.shape(call),
                Options.HUB.requested(call),
                MEASURED.requested(call).orElseThrow(),
                BONUS.given(call)),
            kit.folder());
    Answers.show(call, screen, outcome, () -> DrilledReport.of(outcome));
    return outcome.fails() ? Exit.FAILS : Exit.WELL;
  }
}
