package felloe.cli;

import felloe.kit.CheckAnswer;
import felloe.kit.DrilledAnswer;
import felloe.kit.Kit;
import felloe.plate.Verdict;
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
    spec.addOption(
        Options.text(
            "--hub",
            "HUB",
            "Compare with this hub instead of the shape file's own: a name from 'felloe hub list',"
                + " or a hub file."));
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
    spec.addOption(
        Options.flag("--all", "Show all that passed, not just the nearest to its limit."));
    spec.addOption(Options.flag("--sources", "Tell where each limit comes from."));
    spec.addOption(Options.format("text or json"));
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
    String format = Options.chosenFormat(call, "text", "json");
    Optional<String> measured = Options.value(call, "--measured");
    if (measured.isPresent()) {
      return drilled(call, Options.path(measured.get()), format, screen, kit);
    }
    if (Options.has(call, "--bonus")) {
      throw Calls.wrong("--bonus", "needs --measured FILE", "name the measured file");
    }
    CheckAnswer answer = kit.check(Options.shape(call), Options.value(call, "--hub"));
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      new CheckText(screen, Options.has(call, "--all"), Options.has(call, "--sources"))
          .show(answer);
    }
    return answer.verdict() == Verdict.FAIL ? Exit.FAILS : Exit.WELL;
  }

  private static int drilled(
      ParseResult call, Path measured, String format, Screen screen, Kit kit) {
    DrilledAnswer answer =
        kit.checkDrilled(
            Options.shape(call),
            Options.value(call, "--hub"),
            measured,
            Options.has(call, "--bonus"));
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      boolean all = Options.has(call, "--all");
      new DrilledText(screen, all, Options.has(call, "--sources")).show(answer);
    }
    return answer.worst() == Verdict.FAIL ? Exit.FAILS : Exit.WELL;
  }
}
