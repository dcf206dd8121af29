package felloe.cli;

import felloe.kit.CheckAnswer;
import felloe.kit.Kit;
import felloe.plate.Verdict;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The review. */
final class CheckCommand implements Command {

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "check",
            "Reviews the plate: webs, edge distances, corners, finger room, sheet, weight, and"
                + " whether it meets its hub. Exit code 1 when it fails a check.");
    Options.shapes(spec, false);
    spec.addOption(
        Options.text(
            "--hub",
            "HUB",
            "Compare with this hub instead of the shape file's own: a name from 'felloe hub list',"
                + " or a hub file."));
    spec.addOption(
        Options.flag("--all", "Show all that passed, not just the nearest to its limit."));
    spec.addOption(Options.flag("--sources", "Tell where each limit comes from."));
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe check heron.yaml",
        "  felloe check heron.yaml --hub 6x74-m5",
        "  felloe check heron.yaml --format json > heron-check.json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) {
    String format = Options.chosenFormat(call, "text", "json");
    CheckAnswer answer = kit.check(Options.shape(call), Options.value(call, "--hub"));
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      new CheckText(screen, Options.has(call, "--all"), Options.has(call, "--sources"))
          .show(answer);
    }
    return answer.verdict() == Verdict.FAIL ? Exit.FAILS : Exit.WELL;
  }
}
