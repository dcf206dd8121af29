package felloe.cli;

import felloe.files.CannotWrite;
import felloe.kit.Kit;
import felloe.kit.LoadAnswer;
import felloe.kit.LoadRequest;
import felloe.kit.SearchAnswer;
import felloe.kit.SearchRequest;
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
  private static final String LEAST_MASS = "--least-mass";
  private static final String VARY = "--vary";
  private static final String STEPS = "--steps";

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
        Options.out(
            "Folder for pages and pictures, which are made only when it is given; with --least-mass"
                + " for SHAPE-designs.csv, by which a search that was stopped goes on."));
    spec.addOption(Options.text("--paper", "PAPER", "Paper of the pages. Usually A4."));
    Options.group(spec, "Least mass", 1, search());
    spec.addOption(Options.format("text or json"));
    Options.examples(
        spec,
        "  felloe load heron.yaml",
        "  felloe load heron.yaml --case pull --thicknesses 4-8",
        "  felloe load heron.yaml --out plans",
        "  felloe load heron.yaml --set load.clamp_diameter=84 --format json");
    return spec;
  }

  private static OptionSpec[] search() {
    return new OptionSpec[] {
      Options.flag(
          LEAST_MASS,
          "Looks for the lightest plate that passes its review and does what is wanted, by --vary;"
              + " on all cores."),
      OptionSpec.builder(VARY)
          .paramLabel("PATH=FROM-TO")
          .type(List.class)
          .auxiliaryTypes(String.class)
          .arity("1")
          .description(
              "A figure of the shape file and its bounds, such as stock.thickness=3-6. May be given"
                  + " more than once.")
          .build(),
      Options.text(STEPS, "COUNT", "Values of each in the first round; 4 when left out.")
    };
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
    if (Options.has(call, LEAST_MASS)) {
      return search(call, screen, kit, shape, request);
    }
    refuseSearch(call);
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

  private static int search(
      ParseResult call, Screen screen, Kit kit, ShapeSource shape, LoadRequest request)
      throws CannotWrite {
    SearchRequest search =
        new SearchRequest(
            call.matchedOptionValue(VARY, List.<String>of()), Options.value(call, STEPS));
    SearchAnswer answer;
    try {
      answer = kit.leastMass(shape, request, search, Options.chosenOut(call), screen::progress);
    } finally {
      screen.progressEnds();
    }
    if (Options.chosenFormat(call, "text", "json").equals("json")) {
      screen.data(answer.json());
    } else {
      SearchText.show(screen, answer);
    }
    answer.file().ifPresent(file -> screen.say("Written: " + file));
    return answer.doing() > 0 ? Exit.WELL : Exit.FAILS;
  }

  /** What counts for a search only is not passed over in silence. */
  private static void refuseSearch(ParseResult call) {
    for (String option : List.of(VARY, STEPS)) {
      if (call.hasMatchedOption(option)) {
        throw Calls.wrong(option, "only counts with " + LEAST_MASS, "add it, or take this out");
      }
    }
  }
}
