package felloe.cli;

import felloe.kit.CannotWrite;
import felloe.kit.Kit;
import felloe.kit.LoadAnswer;
import felloe.kit.LoadRequest;
import felloe.kit.ShapeSource;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How the plate bends under the driver's hands, and what thickness would do. */
final class LoadCommand implements Command {

  private static final String SUPPORT = "--support";
  private static final String CASE = "--case";
  private static final String THICKNESSES = "--thicknesses";
  private static final String MATERIALS = "--materials";
  private static final String TESTED = "--tested";

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "load",
            "Estimates how far the plate bends under the driver's hands, what it stands, what its"
                + " screws carry, and what other thicknesses would do. An estimate to choose by,"
                + " not an approval.");
    Options.shapes(spec, false);
    spec.addOption(
        Options.text(
            SUPPORT,
            "HOW",
            "bolts (usual: held by the hub's screws with its face behind) or clamped (held fast"
                + " within load.clamp_diameter, and usual where that is given)."));
    spec.addOption(
        OptionSpec.builder(CASE)
            .paramLabel("NAME")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("1")
            .description("A load case; else all. May be given more than once.")
            .build());
    spec.addOption(
        Options.text(
            THICKNESSES,
            "MM",
            "Thicknesses to compare: a list such as 4,5,6 or a range such as 3-8; usually those"
                + " about the plate's own that the stock comes in."));
    spec.addOption(Options.text(MATERIALS, "FILE", "Materials of your own, see layup."));
    spec.addOption(
        Options.text(
            TESTED,
            "FILE",
            "What was measured on broken test strips of the same laminate, cut along the plate's"
                + " x; it stands in for the tables."));
    spec.addOption(
        Options.out("Folder for pages and pictures, which are made only when it is given."));
    spec.addOption(Options.text("--paper", "PAPER", "Paper of the pages. Usually A4."));
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe load heron.yaml",
        "  felloe load heron.yaml --case pull --thicknesses 4-8",
        "  felloe load heron.yaml --out plans",
        "  felloe load heron.yaml --set load.clamp_diameter=84 --format json");
    return spec;
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String format = Options.chosenFormat(call, "text", "json");
    ShapeSource shape = Options.shape(call);
    LoadRequest request =
        new LoadRequest(
            Options.value(call, SUPPORT),
            call.matchedOptionValue(CASE, List.<String>of()),
            Options.value(call, THICKNESSES),
            Options.value(call, MATERIALS),
            Options.value(call, TESTED),
            Options.value(call, "--paper"));
    LoadAnswer answer = kit.load(shape, request, Options.chosenOut(call));
    if (format.equals("json")) {
      screen.data(answer.json());
    } else {
      new LoadText(screen).show(answer);
    }
    answer.files().forEach(file -> screen.say("Written: " + file));
    answer
        .cure()
        .ifPresent(
            cure ->
                screen.say(answer.plate().name() + " is NOT as wanted under load: " + cure + "."));
    return answer.met() ? Exit.WELL : Exit.FAILS;
  }
}
