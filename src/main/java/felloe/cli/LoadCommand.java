package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.DesignFile;
import felloe.kit.Kit;
import felloe.kit.LoadFiles;
import felloe.load.DesignSpace;
import felloe.load.FigureRange;
import felloe.load.ProofLoad;
import felloe.plate.LoadWish;
import felloe.plate.Requested;
import felloe.report.LoadReport;
import felloe.report.ProofReport;
import felloe.report.SearchReport;
import felloe.service.DesignSearch;
import felloe.service.LoadOutcome;
import felloe.service.PlateLoads;
import felloe.service.PlateLoads.ThicknessChoice;
import felloe.service.SearchOutcome;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** How the plate bends under the driver's hands, and what thickness would do. */
final class LoadCommand implements Command {

  private static final double THICKEST = 100;
  private static final double THINNEST = 0.1;
  private static final int MOST = 20;
  private static final int STEPS = 4;
  private static final int MOST_SPANS = 6;

  private static final Opt<LoadWish.Hold> SUPPORT =
      Opt.one(
          "--support",
          "HOW",
          Read.choice(LoadWish.Hold.values()),
          "bolts (usual: held by the hub's screws with its face behind) or clamped (held fast"
              + " within load.clamp_diameter, and usual where that is given).");
  private static final Opt<String> CASE =
      Opt.many("--case", "NAME", Read::text, "A load case; else all.");
  private static final Opt<ThicknessChoice> THICKNESSES =
      Opt.one(
          "--thicknesses",
          "MM",
          LoadCommand::thicknesses,
          "Thicknesses to compare: a list such as 4,5,6 or a range such as 3-8; usually those"
              + " about the plate's own that the stock comes in.");
  static final Opt<Path> TESTED =
      Opt.one(
          "--tested",
          "FILE",
          Read::path,
          "What was measured on broken test strips of the same laminate, cut along the plate's"
              + " x; it stands in for the tables.");
  private static final Opt<Path> OUT =
      Options.folder(
          "Folder in which the shape gets a folder for pages and pictures, which are made only when"
              + " it is given; with --least-mass for SHAPE-designs.csv, by which a search that was"
              + " stopped goes on.");
  static final Opt<Boolean> PROOF =
      Opt.flag(
          "--proof",
          "Tells how to prove the finished wheel with weights, off the car; with --out as a sheet"
              + " to work by.");
  private static final Opt<Boolean> LEAST_MASS =
      Opt.flag(
          "--least-mass",
          "Looks for the lightest plate that passes its review and does what is wanted, by --vary;"
              + " on all cores.");
  private static final Opt<FigureRange> VARY =
      Opt.many(
          "--vary",
          "PATH=FROM-TO",
          LoadCommand::span,
          "A figure of the shape file and its bounds, such as stock.thickness=3-6.");
  private static final Opt<Integer> STEPS_EACH =
      Opt.one(
          "--steps",
          "COUNT",
          Read.count(2, 40),
          "Values of each in the first round; 4 when left out.");

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "load",
            "Estimates how far the plate bends under the driver's hands, what it stands, what its"
                + " screws carry, and what other thicknesses would do. An estimate to choose by,"
                + " not an approval.");
    Options.shapes(spec, false);
    Options.add(
        spec,
        Options.HUB,
        SUPPORT,
        CASE,
        THICKNESSES,
        Options.MATERIALS,
        TESTED,
        PROOF,
        OUT,
        Printing.PAGES);
    Options.group(spec, "Least mass", 1, LEAST_MASS, VARY, STEPS_EACH);
    Answers.options(spec);
    Options.examples(
        spec,
        "  felloe load heron.yaml",
        "  felloe load heron.yaml --case pull --thicknesses 4-8",
        "  felloe load heron.yaml --out plans",
        "  felloe load heron.yaml --proof --out plans",
        "  felloe load heron.yaml --set load.clamp_diameter=84 --format json");
    return spec;
  }

  private static ThicknessChoice thicknesses(String option, String text) {
    boolean range = text.matches("[^,-]+-[^,-]+");
    List<Double> values = Read.lengths(text, range ? "-" : ",");
    boolean well = !values.isEmpty() && values.size() <= MOST;
    if (!well
        || values.stream().anyMatch(t -> t < THINNEST || t > THICKEST)
        || range && values.get(0) >= values.get(1)) {
      throw Read.wrong(
          option,
          text,
          "must be up to " + MOST + " thicknesses from 0.1 to 100 mm, or the ends of a range",
          "write 4,5,6 or 3-8");
    }
    return new ThicknessChoice(values, range);
  }

  private static FigureRange span(String option, String text) {
    int equals = text.indexOf('=');
    List<Double> ends = Read.lengths(text.substring(equals + 1), "-");
    if (equals <= 0 || ends.size() != 2 || ends.get(0) >= ends.get(1)) {
      throw Read.wrong(
          option,
          text,
          "must be PATH=FROM-TO, with FROM below TO, in mm or degrees",
          "write stock.thickness=3-6, say");
    }
    return new FigureRange(text.substring(0, equals).strip(), ends.get(0), ends.get(1));
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    List<String> cases = CASE.all(call);
    PlateLoads.Request request =
        new PlateLoads.Request(
            SUPPORT.requested(call),
            cases.isEmpty() ? Optional.empty() : Optional.of(new Requested<>(cases, CASE.place())),
            THICKNESSES.in(call),
            Options.MATERIALS.in(call),
            TESTED.in(call));
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call));
    ShapeSource shape = Options.shape(call);
    if (LEAST_MASS.given(call)) {
      refuse(
          studies, call, "does not go with " + LEAST_MASS.name(), "prove what you choose", PROOF);
      return search(call, screen, kit, studies, shape, request);
    }
    String wanted = "only counts with " + LEAST_MASS.name();
    refuse(studies, call, wanted, "add it, or take this out", VARY, STEPS_EACH);
    if (PROOF.given(call)) {
      refuse(
          studies,
          call,
          "does not go with " + PROOF.name(),
          "a proof load is of the plate as it is made: leave it out",
          THICKNESSES);
      return proof(call, screen, kit, PlateLoads.own(shape, request, studies, kit.folder()));
    }
    LoadOutcome outcome;
    try {
      outcome = PlateLoads.of(shape, request, studies, kit.folder(), screen::progress);
    } finally {
      screen.progressEnds();
    }
    Report report = LoadReport.of(outcome);
    Written files =
        Printing.pages(
            call,
            kit,
            OUT.in(call),
            "load",
            outcome.plate(),
            paper -> LoadFiles.of(outcome, report, paper));
    Answers.show(call, screen, outcome, files, () -> report);
    screen.say("Reckoned in " + felloe.geometry.Numbers.fixed(outcome.seconds(), 1) + " s.");
    return outcome.met() && !outcome.study().fails() ? Exit.WELL : Exit.FAILS;
  }

  /** Refuses options; told with what is wrong with the shape. */
  private static void refuse(
      Studies studies, ParseResult call, String wanted, String cure, Opt<?>... options) {
    studies.with(
        () -> {
          Options.refuse(call, wanted, cure, options);
          return call;
        });
  }

  private static int proof(ParseResult call, Screen screen, Kit kit, LoadOutcome outcome)
      throws CannotWrite {
    ProofLoad proof = ProofLoad.of(outcome.plan());
    Report report = ProofReport.of(outcome, proof);
    Written files =
        Printing.pages(
            call,
            kit,
            OUT.in(call),
            "proof",
            outcome.plate(),
            paper -> LoadFiles.proof(outcome, report, paper));
    Answers.show(call, screen, proof, files, () -> report);
    boolean well = outcome.met() && !outcome.study().fails() && !proof.hangs().isEmpty();
    return well ? Exit.WELL : Exit.FAILS;
  }

  private static int search(
      ParseResult call,
      Screen screen,
      Kit kit,
      Studies studies,
      ShapeSource shape,
      PlateLoads.Request request)
      throws CannotWrite {
    DesignSpace space = studies.with(() -> space(call));
    PlateLoads.Sources sources = studies.with(() -> PlateLoads.Sources.of(request, kit.folder()));
    Study study = studies.one(shape);
    Optional<DesignFile> file = OUT.in(call).map(out -> kit.designs(out, study, request, space));
    DesignSearch.Keeper keeper =
        file.<DesignSearch.Keeper>map(f -> f).orElse(DesignSearch.Keeper.NONE);
    SearchOutcome outcome;
    try {
      outcome =
          DesignSearch.of(study, kit.folder(), request, sources, space, keeper, screen::progress);
    } finally {
      screen.progressEnds();
    }
    Answers.show(call, screen, outcome, () -> SearchReport.of(outcome));
    if (file.isPresent()) {
      screen.say("Written: " + file.get().written());
    }
    outcome
        .lightest()
        .ifPresent(
            one -> screen.say("The lightest: felloe load SHAPE " + sets(outcome, one.values())));
    return outcome.lightest().isPresent() ? Exit.WELL : Exit.FAILS;
  }

  private static String sets(SearchOutcome outcome, List<Double> values) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < values.size(); i++) {
      String value = felloe.geometry.Numbers.brief(values.get(i), 6);
      words.add("--set '" + outcome.spans().get(i).path() + "=" + value + "'");
    }
    return String.join(" ", words);
  }

  private static DesignSpace space(ParseResult call) {
    List<FigureRange> spans = VARY.all(call);
    if (spans.isEmpty() || spans.size() > MOST_SPANS) {
      throw Read.wrong(
          VARY.name(),
          "",
          "must be given from once to " + MOST_SPANS + " times with " + LEAST_MASS.name(),
          "write --vary stock.thickness=3-6, say");
    }
    for (int i = 0; i < spans.size(); i++) {
      String path = spans.get(i).path();
      if (spans.subList(0, i).stream().anyMatch(s -> s.path().equals(path))) {
        throw Read.wrong(VARY.name(), path, "varies the same figure again", "give it once");
      }
    }
    int steps = STEPS_EACH.in(call).orElse(STEPS);
    if (Math.pow(steps, spans.size()) > DesignSpace.MOST) {
      throw Read.wrong(
          STEPS_EACH.name(),
          Integer.toString(steps),
          "would be more than " + DesignSpace.MOST + " designs",
          "take fewer steps, or vary less");
    }
    return new DesignSpace(spans, steps);
  }
}
