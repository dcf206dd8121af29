package felloe.cli;

import static felloe.cutting.CutProcess.JIGSAW;
import static felloe.cutting.CutProcess.LASER;
import static felloe.cutting.CutProcess.ROUTER;
import static felloe.cutting.CutProcess.WATERJET;

import felloe.cutting.CutDirection;
import felloe.cutting.CutFigure;
import felloe.cutting.CutProcess;
import felloe.cutting.CutWish;
import felloe.cutting.Dialect;
import felloe.cutting.DialectCatalogue;
import felloe.cutting.SheetRequest;
import felloe.files.CannotWrite;
import felloe.files.Written;
import felloe.geometry.Box;
import felloe.kit.CutFiles;
import felloe.kit.Kit;
import felloe.plate.Place;
import felloe.plate.Sheet;
import felloe.report.CutReport;
import felloe.service.CutOutcome;
import felloe.service.PlateCutting;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Files for machines that cut, and rough lines for a saw. */
final class CutCommand implements Command {

  /** Beyond this a figure is taken for a slip, whatever the plate. */
  private static final double FASTEST = 1e6;

  private static final List<CutProcess> MILL = List.of(ROUTER);
  private static final List<CutProcess> BEAMS = List.of(LASER, WATERJET);
  private static final List<CutProcess> MACHINES = List.of(ROUTER, LASER, WATERJET);
  private static final List<CutProcess> SAW = List.of(JIGSAW);

  static final Opt<CutProcess> PROCESS =
      Opt.one(
          "--process",
          "PROCESS",
          Read.choice(CutProcess.values()),
          "router, laser, waterjet or jigsaw. Must be given.");
  private static final Opt<Path> OUT =
      Options.folder(
          "Folder in which each shape has one of its own; a sheet of several goes there itself."
              + " Usually templates-out.");
  private static final Opt<String> GRIP =
      Opt.one(
          "--grip",
          "LABEL",
          (option, text) -> text.strip(),
          "Cut the flat scale of that grip, such as GR1, instead of the plate.");
  private static final Opt<Boolean> FINISH_LINES =
      Opt.flag(
          "--no-compensation",
          "Write the finish lines, for a shop that moves the path itself. No G-code then.");
  private static final Opt<CutDirection> DIRECTION =
      Opt.one(
          "--direction",
          "WAY",
          Read.choice(CutDirection.values()),
          "climb (usual) or conventional.");
  private static final Opt<Boolean> OWNER =
      Opt.flag(
          "--owner-consents",
          "The laser's owner agrees to cut this laminate. Never PVC, whoever agrees.");
  private static final Opt<List<Double>> DRILLS =
      Opt.one(
          "--drills",
          "MM,MM",
          CutCommand::drills,
          "Drills at hand, such as 5,4.3, or none. Usually any size.");
  private static final Opt<Dialect> DIALECT =
      Opt.one(
          "--dialect",
          "NAME",
          (option, text) -> DialectCatalogue.named(text, Path.of(""), Place.ofOption(option)),
          "How the controller wants its words: plain-rs274 (usual), numbered-lines,"
              + " no-drill-cycles, or a file of your own.");
  private static final Opt<Boolean> COOLANT =
      Opt.flag("--coolant", "Switch coolant or air on, where the dialect knows how.");
  private static final Opt<Boolean> NEST =
      Opt.flag("--nest", "Place all shapes on one sheet, and cut them in one go.");
  private static final Opt<Integer> COPIES =
      Opt.one("--copies", "COUNT", Read.count(1, 99), "How many of each shape. Usually 1.");
  private static final Opt<Sheet> SHEET =
      Opt.one(
          "--sheet",
          "WxH",
          Read.lengths(
              "x",
              CutCommand::sheet,
              "must be width and height in mm with an x between, each above 0",
              "write 600x400"),
          "Its size. Usually the shape file's.");
  private static final Opt<Double> MARGIN =
      mm("--sheet-margin", "Edge of the sheet that no cut touches. Usually 5.");
  private static final Opt<Double> SPACING =
      mm("--spacing", "Room between parts beyond the cutter. Usually 2.");
  private static final Opt<Box> KEEP_OUT =
      Opt.many(
          "--keep-out",
          "X,Y,W,H",
          Read.lengths(
              ",",
              CutCommand::box,
              "must be x,y,width,height in mm from the sheet's lower left corner, width and height"
                  + " above 0",
              "write 0,180,30,40"),
          "A clamp: a box from the sheet's lower left corner.");
  private static final Opt<Boolean> HELD =
      Opt.one(
          "--grain",
          "HOW",
          Read.word(Map.of("held", true, "free", false)),
          "held (usual): 0 or 180 degrees only; free: any eighth of a turn.");
  private static final Opt<SheetRequest.Strips> STRIPS =
      Opt.many(
          "--strips",
          "NxWxL",
          Read.lengths(
              "x",
              CutCommand::strips,
              "must be how many (1 to 99), width and length in mm with an x between",
              "write 6x15x80"),
          "Test strips to cut along: how many, width, length along the grain.");

  private static final List<Counts> WIDTHS =
      List.of(
          new Counts(MILL, mm("--cutter", "Diameter of the cutter. Usually the shape file's.")),
          new Counts(BEAMS, mm("--kerf", "Width that beam or jet takes. Usually 0.2 or 1.")),
          new Counts(MACHINES, FINISH_LINES),
          new Counts(MACHINES, DIRECTION),
          new Counts(MACHINES, mm("--thickness", "What the stock measures. Usually the file's.")),
          new Counts(List.of(LASER), OWNER));
  private static final List<Counts> DEPTHS =
      List.of(
          new Counts(MILL, mm("--flute-length", "Length of the cutter's edges; for thick stock.")),
          new Counts(MILL, count("--flutes", 1, 12, "Cutting edges. Usually 1: a low feed.")),
          new Counts(MILL, mm("--step-down", "Depth of a pass. Usually from the table.")),
          new Counts(MILL, mm("--breakthrough", "How far below the stock it cuts. Usually 0.3.")),
          new Counts(MILL, mm("--bed", "How far below the stock anything may go. Usually 3.")),
          new Counts(MILL, rate("--ramp", "DEG", "Steepest way down. Usually from the table.")),
          new Counts(
              MACHINES, mm("--lead", "Radius of the arcs onto the path and off it; beams too.")),
          new Counts(MILL, mm("--clearance", "Height of travel above the stock. Usually 10.")),
          new Counts(MILL, mm("--approach", "Height where the way down slows. Usually 2.")),
          new Counts(MILL, rate("--v-angle", "DEG", "V tool for engravings and broken edges.")),
          new Counts(MILL, mm("--v-tip", "Width of the V tool's tip. Usually 0.2.")));
  private static final List<Counts> HOLDING =
      List.of(
          new Counts(MILL, count("--tabs", 0, 40, "Bridges that hold, or none. Usually 2 to 4.")),
          new Counts(MILL, mm("--tab-width", "Width of a bridge's top. Usually 5.")),
          new Counts(MILL, mm("--tab-height", "Height of a bridge. Usually 1, at most a third.")),
          new Counts(MILL, DRILLS),
          new Counts(
              List.of(ROUTER, JIGSAW),
              mm("--largest-drill", "Wider holes are bored or sawn. Usually 8; jigsaw 13.")),
          new Counts(MILL, DIALECT),
          new Counts(MILL, COOLANT));
  private static final List<Counts> FEEDS =
      List.of(
          new Counts(MILL, rate("--speed", "RPM", "Spindle speed, turns a minute.")),
          new Counts(MACHINES, rate("--feed", "MM/MIN", "Feed along the path.")),
          new Counts(MILL, rate("--ramp-feed", "MM/MIN", "Feed on the way down. Usually half.")),
          new Counts(MILL, rate("--drill-surface-speed", "M/MIN", "Surface speed of drills.")),
          new Counts(MILL, mm("--drill-feed", "Feed of drills, mm a turn.")),
          new Counts(MILL, rate("--highest-speed", "RPM", "The spindle's highest. Usually 24000.")),
          new Counts(MACHINES, rate("--travel", "MM/MIN", "Travel, for the time. Usually 3000.")));
  private static final List<Counts> BLADE =
      List.of(
          new Counts(SAW, saw("--blade", "Width from teeth to back. Usually the file's, or 5.")),
          new Counts(SAW, saw("--turn", "Least radius that it follows. Usually 15.")));
  private static final Opt<?>[] OF_SHEET = {COPIES, SHEET, MARGIN, SPACING, KEEP_OUT, HELD, STRIPS};

  /** An option that counts for some processes. One with a number gives the figure of its name. */
  private record Counts(List<CutProcess> by, Opt<?> option) {}

  private static Stream<Counts> counts() {
    return Stream.of(WIDTHS, DEPTHS, HOLDING, FEEDS, BLADE).flatMap(List::stream);
  }

  private static Opt<Double> mm(String name, String help) {
    return Opt.one(name, "MM", Read.length(0, Read.LONGEST), help);
  }

  private static Opt<Double> saw(String name, String help) {
    return Opt.one(name, "MM", Read.length(0.5, 1000), help);
  }

  private static Opt<Double> rate(String name, String unit, String help) {
    return Opt.one(name, unit, Read.number(0, FASTEST, unit.toLowerCase(Locale.ROOT)), help);
  }

  /** A whole number; {@code none} is 0 where that is allowed. */
  private static Opt<Integer> count(String name, int least, int most, String help) {
    Opt.Reader<Integer> number = Read.count(least, most);
    return Opt.one(
        name,
        "COUNT",
        (option, text) -> least == 0 && text.equals("none") ? 0 : number.read(option, text),
        help);
  }

  @Override
  public CommandSpec spec() {
    CommandSpec spec =
        Options.command(
            "cut",
            "Writes files that a router, laser or waterjet can run, or rough lines for a jigsaw."
                + " Paths leave the finish line after the cutter or beam has taken its width, and"
                + " are checked against the plate before they are written. Nothing is written"
                + " while the plate fails a check.");
    Options.shapes(spec, true);
    Options.add(spec, PROCESS, GRIP, Options.HUB, OUT);
    group(spec, "What the cut takes", 1, WIDTHS);
    group(spec, "Router: depths and entries", 2, DEPTHS);
    group(spec, "Router: holding and drilling", 3, HOLDING);
    group(spec, "Speeds and feeds", 4, FEEDS);
    Options.group(spec, "Sheet", 5, NEST, COPIES, SHEET, MARGIN, SPACING, KEEP_OUT, HELD, STRIPS);
    group(spec, "Jigsaw", 6, BLADE);
    Answers.options(spec);
    Options.examples(
        spec,
        "  felloe cut heron.yaml --process router",
        "  felloe cut dunlin.yaml --process waterjet --kerf 0.9",
        "  felloe cut heron.yaml bittern.yaml --process router --nest --sheet 700x400 \\",
        "      --set stock.thickness=5 --keep-out 0,180,30,40 --strips 6x15x80",
        "  felloe cut avocet.yaml --process jigsaw",
        "  felloe cut heron.yaml --process router --grip GR1 --cutter 6");
    return spec;
  }

  private static void group(CommandSpec spec, String heading, int order, List<Counts> counts) {
    Options.group(spec, heading, order, counts.stream().map(Counts::option).toArray(Opt<?>[]::new));
  }

  @Override
  public int run(ParseResult call, Screen screen, Kit kit) throws CannotWrite {
    String twice = "name it once; " + NEST.name() + " " + COPIES.name() + " 2 cuts two of it";
    Studies studies = new Studies(kit.folder(), Options.HUB.requested(call), twice);
    CutProcess process = studies.with(() -> process(call));
    List<ShapeSource> shapes = studies.with(() -> Options.someShapes(call));
    if (process != null) {
      refuse(call, process, studies);
    }
    CutOutcome outcome =
        PlateCutting.of(
            shapes == null ? List.of() : shapes,
            request(call, process == null ? ROUTER : process),
            studies);
    Path out = OUT.in(call).orElse(Options.USUAL_OUT);
    Written files = CutFiles.into(kit.into(out), outcome).commit();
    Answers.show(call, screen, outcome, files, () -> CutReport.of(outcome));
    return outcome.held() ? Exit.FAILS : Exit.WELL;
  }

  private static CutProcess process(ParseResult call) {
    String cure = "write router, laser, waterjet or jigsaw";
    return PROCESS
        .in(call)
        .orElseThrow(() -> Read.wrong(PROCESS.name(), "", "must be given", cure));
  }

  /** What counts for nothing here, all of it. */
  private static void refuse(ParseResult call, CutProcess process, Studies studies) {
    for (Counts one : counts().filter(one -> !one.by().contains(process)).toList()) {
      String by = String.join(" or ", one.by().stream().map(CutProcess::word).toList());
      refuse(call, studies, "for " + PROCESS.name() + " " + by, one.option());
    }
    if (process == JIGSAW) {
      refuse(call, studies, "for a machine", NEST);
    }
    if (!NEST.given(call)) {
      refuse(call, studies, "with " + NEST.name(), OF_SHEET);
    }
  }

  private static void refuse(ParseResult call, Studies studies, String where, Opt<?>... options) {
    for (Opt<?> option : options) {
      studies.with(
          () -> {
            Options.refuse(call, "only counts " + where, "add that, or take this out", option);
            return option;
          });
    }
  }

  private static PlateCutting.Request request(ParseResult call, CutProcess process) {
    Map<CutFigure, Double> figures = new EnumMap<>(CutFigure.class);
    for (Counts one : counts().toList()) {
      String name = one.option().name();
      if (!one.option().label().isEmpty()
          && one.option().in(call).orElse(null) instanceof Number value) {
        String figure = name.substring(2).toUpperCase(Locale.ROOT).replace('-', '_');
        figures.put(CutFigure.valueOf(figure), value.doubleValue());
      }
    }
    CutWish wish =
        new CutWish(
            process,
            !FINISH_LINES.given(call),
            DIRECTION.in(call).orElse(CutDirection.CLIMB),
            figures,
            DRILLS.in(call),
            OWNER.given(call));
    return new PlateCutting.Request(
        wish,
        GRIP.requested(call),
        NEST.given(call) ? Optional.of(sheet(call)) : Optional.empty(),
        DIALECT.in(call).orElseGet(DialectCatalogue::standard),
        COOLANT.given(call),
        CutCommand::place);
  }

  /** The option by which a figure is asked for bears its name. */
  private static Place place(CutFigure figure) {
    return Place.ofOption("--" + figure.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private static SheetRequest sheet(ParseResult call) {
    return new SheetRequest(
        SHEET.in(call),
        MARGIN.in(call).orElse(5.0),
        SPACING.in(call).orElse(2.0),
        KEEP_OUT.all(call),
        HELD.in(call).orElse(true),
        COPIES.in(call).orElse(1),
        STRIPS.all(call));
  }

  private static List<Double> drills(String option, String text) {
    List<Double> sizes = Read.lengths(text, ",");
    if (sizes.isEmpty() && !text.equals("none")) {
      throw Read.wrong(
          option, text, "must be diameters in mm with commas between, or none", "write 5,4.3");
    }
    return sizes;
  }

  private static Optional<Sheet> sheet(List<Double> sides) {
    boolean well = sides.size() == 2 && sides.stream().allMatch(side -> side > 0);
    return well ? Optional.of(new Sheet(sides.get(0), sides.get(1))) : Optional.empty();
  }

  private static Optional<Box> box(List<Double> b) {
    return b.size() == 4 && b.get(2) > 0 && b.get(3) > 0
        ? Optional.of(new Box(b.get(0), b.get(1), b.get(0) + b.get(2), b.get(1) + b.get(3)))
        : Optional.empty();
  }

  private static Optional<SheetRequest.Strips> strips(List<Double> n) {
    boolean well = n.size() == 3 && n.stream().allMatch(v -> v > 0) && n.get(0) <= 99;
    return well && n.get(0) % 1 == 0
        ? Optional.of(new SheetRequest.Strips(n.get(0).intValue(), n.get(1), n.get(2)))
        : Optional.empty();
  }
}
