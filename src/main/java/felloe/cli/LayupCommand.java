package felloe.cli;

import felloe.document.Report;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.kit.Kit;
import felloe.kit.LayupFiles;
import felloe.laminate.StackResult;
import felloe.layup.LayupPlan;
import felloe.plate.LayupWish;
import felloe.plate.LayupWish.Panel;
import felloe.plate.LayupWish.Pieces;
import felloe.plate.Prices;
import felloe.plate.Requested;
import felloe.report.LayupReport;
import felloe.report.StackReport;
import felloe.report.StripsReport;
import felloe.report.Unfit;
import felloe.service.LayupPlanning;
import felloe.service.StackStudy;
import felloe.service.StripsOutcome;
import felloe.service.Studies;
import felloe.yaml.Overrides;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** The plan of a lay-up; stacks of plies on their own, and what broken test strips tell. */
final class LayupCommand implements Command {

  private static final double THICKEST = 100;

  private static final Opt.Reader<Double> SHARES =
      Read.number(LayupWish.LEAST_FRACTION, LayupWish.MOST_FRACTION, "");
  private static final Opt.Reader<Double> WARMTH = Read.number(5, 45, "degrees Celsius");
  private static final Opt.Reader<Pieces> CUTS = Read.choice(Pieces.values());
  private static final Opt<Path> SHAPE =
      Opt.argument("SHAPE", "0..1", Read::path, "The shape file.");
  private static final Opt<String> SETS =
      Options.sets("stock.thickness=6, stack[0].angle=45 or load.N=[10,0,0]");
  private static final Opt<Path> OUT =
      Options.folder(
          "Folder in which the shape gets one for pages and pictures, made only when given.");
  private static final Opt<String> CLOTH =
      Opt.one(
          "--cloth", "NAME", Read::text, "The cloth, such as carbon-twill-200 or glass-twill-300.");
  private static final Opt<String> PROCESS =
      Opt.one(
          "--process",
          "NAME",
          Read::text,
          "brush-and-roller (usual: between weighted plates), vacuum-bag, infusion, press, or one"
              + " of your own.");
  private static final Opt<Plies> PLIES =
      Opt.one(
          "--plies",
          "COUNT",
          LayupCommand::plies,
          "How many plies, or the direction of each from the mould up, such as 0,45,45,0. Usually"
              + " from the thickness.");
  private static final Opt<Double> FRACTION =
      Opt.one("--fraction", "SHARE", SHARES, "Share of fibre in the volume, 0.2 to 0.7.");
  private static final Opt<Panel> PANEL =
      Opt.one(
          "--panel",
          "MMxPLIES",
          Read.lengths(
              "x",
              LayupCommand::panel,
              "must be the thickness and the plies of a panel that you made, with an x between",
              "write 5.5x20"),
          "A panel that you made and measured, such as 5.4x20: it tells that share.");
  private static final Opt<Double> ROLL =
      Opt.one(
          "--roll-width", "MM", Read.length(50, 5000), "Width of the roll. Usually the cloth's.");
  private static final Opt<Double> MARGIN =
      Opt.one(
          "--margin",
          "MM",
          Read.length(0, 300),
          "What the blank is wider on each side. Usually 15.");
  private static final Opt<Pieces> PIECES =
      Opt.one("--pieces", "HOW", CUTS, "rectangle (usual) or outline: how plies are cut.");
  private static final Opt<Integer> STRIPS =
      Opt.one("--strips", "COUNT", Read.count(0, 30), "Test strips on the blank. Usually 5.");
  private static final Opt<String> RESIN =
      Opt.one(
          "--resin",
          "NAME",
          Read::text,
          "epoxy-slow (usual), epoxy-medium, epoxy-fast, or your own.");
  private static final Opt<Double> TEMPERATURE =
      Opt.one("--temperature", "DEGC", WARMTH, "Of the workshop, degrees Celsius. Usually 20.");
  private static final Opt<Double> SCALE =
      Opt.one(
          "--scale", "G", Read.number(0.01, 10, "g"), "Smallest step of your scale. Usually 1.");
  private static final Opt<Path> STACK =
      Opt.one(
          "--stack",
          "FILE",
          Read::path,
          "A stack on its own, such as my-stack.yaml; no shape is needed.");
  static final Opt<Path> TESTED =
      Opt.one(
          "--tested",
          "FILE",
          Read::path,
          "What was measured on broken test strips, such as my-strips.yaml.");

  private static final Opt<?>[] WISHES = {
    CLOTH, PROCESS, PLIES, FRACTION, PANEL, ROLL, MARGIN, PIECES, STRIPS, Printing.PAGES
  };
  private static final Opt<?>[] SHOP = {RESIN, TEMPERATURE, SCALE, Options.MATERIALS};

  /** So many plies, or the direction of each. */
  private record Plies(Optional<Integer> count, Optional<List<Double>> angles) {}

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "layup",
            "Plans the stock of a plate: plies, cloth, resin in pots, mould, test strips, time and"
                + " cost, beside sheet that can be bought. Tells as well how stiff a stack of plies"
                + " is, and what broken test strips tell of a laminate.");
    Options.add(spec, SHAPE, SETS, OUT);
    Answers.options(spec);
    Options.group(spec, "Laying up", 1, WISHES);
    Options.group(spec, "Resin and shop", 2, SHOP);
    Options.group(spec, "Without a shape", 3, STACK, TESTED);
    Options.examples(
        spec,
        "  felloe layup heron.yaml",
        "  felloe layup heron.yaml --cloth carbon-twill-245 --process vacuum-bag --out plans",
        "  felloe layup heron.yaml --panel 5.4x20 --materials my-materials.yaml",
        "  felloe layup --stack my-stack.yaml --format json",
        "  felloe layup --tested my-strips.yaml");
    return spec;
  }

  private static Plies plies(String option, String text) {
    List<Double> angles = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      angles.add(Read.plain(part).orElse(Double.NaN));
    }
    boolean few = angles.size() <= LayupWish.MOST_PLIES;
    if (angles.size() > 1 && few && angles.stream().allMatch(a -> Math.abs(a) <= 90)) {
      return new Plies(Optional.empty(), Optional.of(List.copyOf(angles)));
    }
    int count = text.matches("[0-9]{1,4}") ? Integer.parseInt(text) : 0;
    if (count < 1 || count > LayupWish.MOST_PLIES) {
      throw Read.wrong(
          option,
          text,
          "must be a whole number from 1 to "
              + LayupWish.MOST_PLIES
              + ", or directions such as 0,45,45,0, each from -90 to 90 degrees",
          "");
    }
    return new Plies(Optional.of(count), Optional.empty());
  }

  /** A thickness and a number of plies. */
  private static Optional<Panel> panel(List<Double> n) {
    boolean well = n.size() == 2 && n.get(0) > 0 && n.get(0) <= THICKEST;
    return well && n.get(1) >= 1 && n.get(1) <= LayupWish.MOST_PLIES && n.get(1) % 1 == 0
        ? Optional.of(new Panel(n.get(0), n.get(1).intValue()))
        : Optional.empty();
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    boolean shape = SHAPE.given(call);
    boolean tested = TESTED.given(call);
    if (Stream.of(shape, STACK.given(call), tested).filter(given -> given).count() != 1) {
      throw Read.wrong(
          "layup",
          "must have one of SHAPE, " + STACK.name() + " and " + TESTED.name(),
          "write felloe layup heron.yaml, say");
    }
    if (shape) {
      return plan(call, screen, kit);
    }
    String wanted = "only counts with a SHAPE";
    String cure = "take it out, or name the shape";
    Options.refuse(call, wanted, cure, WISHES);
    Options.refuse(call, wanted, cure, SHOP);
    Options.refuse(call, wanted, cure, OUT, Answers.SOURCES);
    Overrides overrides = new Overrides(SETS.place(), SETS.all(call));
    if (tested) {
      StripsOutcome outcome = StripsOutcome.of(TESTED.in(call).orElseThrow(), overrides);
      Answers.show(call, screen, outcome, () -> StripsReport.of(outcome));
    } else {
      StackResult result = StackStudy.of(STACK.in(call).orElseThrow(), overrides);
      Answers.show(call, screen, result, () -> StackReport.of(result));
    }
    return Exit.WELL;
  }

  private static int plan(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    Studies studies = new Studies(kit.folder(), Optional.empty());
    boolean out = OUT.given(call);
    studies.with(
        () -> {
          if (!out) {
            Options.refuse(
                call,
                "only counts with " + OUT.name(),
                "take it out, or name a folder",
                Printing.PAGES);
          }
          return out;
        });
    LayupPlanning.Request request =
        new LayupPlanning.Request(wish(call), Options.MATERIALS.in(call));
    LayupPlanning.Planned planned =
        LayupPlanning.of(Options.shape(call), request, studies, kit.folder());
    LayupPlan plan = planned.plan();
    Report report = Unfit.warned(planned.study(), LayupReport.of(plan));
    Written files =
        Printing.pages(
            call,
            kit,
            OUT.in(call).filter(folder -> plan.laidUp()),
            "layup",
            plan.plate(),
            paper -> LayupFiles.of(plan, report, paper));
    Answers.show(call, screen, plan, files, () -> report);
    if (!plan.laidUp()) {
      screen.say(
          (out ? "No pages are made for stock that is bought. " : "")
              + "To plan a lay-up of it, add "
              + CLOTH.name()
              + " NAME.");
    }
    boolean cannot = plan.laidUp() && !plan.possible();
    return cannot || planned.study().fails() ? Exit.FAILS : Exit.WELL;
  }

  private static LayupWish wish(ParseResult call) {
    Optional<Plies> plies = PLIES.in(call);
    return new LayupWish(
        CLOTH.requested(call),
        PROCESS.requested(call),
        RESIN.requested(call),
        plies.flatMap(Plies::count).map(count -> new Requested<>(count, PLIES.place())),
        plies.flatMap(Plies::angles).map(angles -> new Requested<>(angles, PLIES.place())),
        FRACTION.requested(call),
        PANEL.requested(call),
        TEMPERATURE.requested(call),
        ROLL.requested(call),
        MARGIN.requested(call),
        PIECES.requested(call),
        STRIPS.requested(call),
        SCALE.requested(call),
        Prices.NONE);
  }
}
