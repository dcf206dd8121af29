package felloe.cli;

import felloe.kit.DrilledAnswer;
import felloe.kit.Kit;
import felloe.plate.Verdict;
import felloe.report.CheckReport;
import felloe.service.Studies;
import felloe.service.Study;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The review. */
final class CheckCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "check",
            "Reviews the plate: webs, edge distances, corners, finger room, sheet, weight, screws,"
                + " and whether it meets its hub. Exit code 1 when it fails a check.");
    Options.shapes(spec, false);
    spec.addOption(Options.HUB.spec());
    spec.addOption(
        Options.text(
            "--measured",
            "FILE",
            "A measured file of the plate as drilled: will it go on the hub? Exit code 1 when"
                + " not."));
    spec.addOption(
        Options.flag(
            "--bonus",
            "With --measured: a hole that is larger than drawn may be so much further off its place"
                + " (ISO 2692, maximum material condition)."));
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
    Optional<String> measured = Options.value(call, "--measured");
    if (measured.isPresent()) {
      return drilled(call, Options.path(measured.get()), screen, kit);
    }
    if (Options.has(call, "--bonus")) {
      throw Calls.wrong("--bonus", "needs --measured FILE", "name the measured file");
    }
    Study study = new Studies(kit.folder(), Options.HUB.requested(call)).one(Options.shape(call));
    Answers.show(call, screen, study, () -> CheckReport.of(study));
    if (study.hub().isEmpty()) {
      screen.say("To compare it with a hub, add " + Options.HUB.name() + " HUB.");
    }
    return study.fails() ? Exit.FAILS : Exit.WELL;
  }

  private static int drilled(ParseResult call, Path measured, Screen screen, Kit kit) {
    DrilledAnswer answer =
        kit.checkDrilled(
            Options.shape(call), Options.HUB.in(call), measured, Options.has(call, "--bonus"));
    if (Answers.format(call) == Answers.Format.JSON) {
      screen.data(answer.json());
    } else {
      boolean all = Options.has(call, "--all");
      new DrilledText(screen, all, Options.has(call, "--sources")).show(answer);
    }
    return answer.worst() == Verdict.FAIL ? Exit.FAILS : Exit.WELL;
  }
}
