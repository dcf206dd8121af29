package felloe.kit;

import felloe.cutting.CutDirection;
import felloe.cutting.CutFigure;
import felloe.cutting.CutProcess;
import felloe.cutting.CutRefused;
import felloe.cutting.CutSetup;
import felloe.cutting.Dialect;
import felloe.cutting.DialectCatalogue;
import felloe.cutting.FeedTable;
import felloe.cutting.JigsawBlade;
import felloe.cutting.SheetRequest;
import felloe.cutting.StartingFeed;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.yaml.Problems;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * A cut request that was read: what is left open is filled in from the plate and the table of
 * feeds.
 */
final class CutOrder {

  /** Largest hole that a drill press takes, mm; common practice. Wider ones are sawn. */
  private static final double LARGEST_BY_HAND = 13;

  /** Largest hole saw that is at hand, mm; as in the drilling tables. Wider ones are sawn. */
  static final double LARGEST_HOLE_SAW = 76;

  /**
   * Feed of a beam when the maker gave none, mm/min. Only lengths are told from such a plan, never
   * times.
   */
  private static final double ANY_FEED = 1000;

  private static final Map<String, CutProcess> PROCESSES =
      Map.of(
          "router", CutProcess.ROUTER,
          "laser", CutProcess.LASER,
          "waterjet", CutProcess.WATERJET,
          "jigsaw", CutProcess.JIGSAW);

  private static final List<String> NAMES = List.of("router", "laser", "waterjet", "jigsaw");

  private static final List<String> ROUTER_ONLY =
      List.of(
          "--cutter",
          "--flutes",
          "--flute-length",
          "--step-down",
          "--breakthrough",
          "--bed",
          "--ramp",
          "--clearance",
          "--approach",
          "--tabs",
          "--tab-width",
          "--tab-height",
          "--drills",
          "--speed",
          "--ramp-feed",
          "--drill-feed",
          "--drill-surface-speed",
          "--highest-speed",
          "--dialect",
          "--coolant");

  private static final List<String> SHEET_ONLY =
      List.of(
          "--sheet",
          "--sheet-margin",
          "--spacing",
          "--keep-out",
          "--grain",
          "--strips",
          "--copies");

  /** Decimals of the drawings that a beam follows: those of the SVG file, the coarser. */
  private static final int BEAM_DECIMALS = 5;

  private final CutWords words;
  private final String name;
  private final CutProcess process;
  private final Optional<Dialect> dialect;
  private final Optional<SheetRequest> sheet;
  private final Optional<String> direction;
  private final Optional<Integer> flutes;
  private final Optional<Integer> tabs;
  private final List<Double> drills;
  private final Map<String, OptionalDouble> figures;

  private CutOrder(CutWords words, Path folder, Problems problems) {
    this.words = words;
    this.name = words.word("--process", NAMES).orElse("router");
    if (!words.has("--process")) {
      words.problem("--process", "", "must be given", "write router, laser, waterjet or jigsaw");
    }
    this.process = PROCESSES.get(name);
    this.flutes = words.count("--flutes", 12);
    this.tabs = words.count("--tabs", 40);
    this.drills = words.sizes("--drills");
    this.direction = words.word("--direction", List.of("climb", "conventional"));
    Map<String, OptionalDouble> read = new java.util.HashMap<>();
    for (String option :
        List.of(
            "--cutter",
            "--flute-length",
            "--kerf",
            "--thickness",
            "--breakthrough",
            "--bed",
            "--step-down",
            "--clearance",
            "--approach",
            "--lead",
            "--tab-width",
            "--tab-height",
            "--largest-drill",
            "--drill-feed",
            "--blade",
            "--turn")) {
      read.put(option, words.length(option));
    }
    for (String option :
        List.of(
            "--ramp",
            "--speed",
            "--feed",
            "--ramp-feed",
            "--travel",
            "--drill-surface-speed",
            "--highest-speed")) {
      read.put(option, words.number(option));
    }
    this.figures = Map.copyOf(read);
    this.dialect = dialect(folder, problems);
    this.sheet = words.has("--nest") ? Optional.of(sheetOrder()) : Optional.empty();
    whatCounts();
  }

  /**
   * Reads a request.
   *
   * @param folder where the name of a dialect file starts from
   * @throws BadInput with everything that is wrong with its words
   */
  static CutOrder of(CutRequest request, Path folder) {
    Problems problems = new Problems();
    CutOrder order = new CutOrder(new CutWords(request, problems), folder, problems);
    problems.throwIfAny();
    return order;
  }

  private Optional<Dialect> dialect(Path folder, Problems problems) {
    String asked = words.text("--dialect").orElse(DialectCatalogue.names().get(0));
    try {
      return Optional.of(DialectCatalogue.named(asked, folder, Place.ofOption("--dialect", "")));
    } catch (BadInput bad) {
      problems.add(bad);
      return Optional.empty();
    }
  }

  /** Where a figure of a cut was asked for: the option of its name. */
  static Place place(CutFigure figure) {
    return Place.ofOption("--" + figure.name().toLowerCase(Locale.ROOT).replace('_', '-'), "");
  }

  /** Does work, and tells what is refused by the options that asked for it. */
  static <T> T told(Supplier<T> work) {
    try {
      return work.get();
    } catch (CutRefused refused) {
      Problems problems = new Problems();
      refused.faults().forEach(fault -> problems.add(fault.problem(CutOrder::place)));
      throw problems.asBadInput();
    }
  }

  /** Decimals of coordinates in the files. */
  int decimals() {
    return process == CutProcess.ROUTER ? dialect().decimals() : BEAM_DECIMALS;
  }

  private SheetRequest sheetOrder() {
    return new SheetRequest(
        words.sheet("--sheet"),
        words.length("--sheet-margin", 0).orElse(5),
        words.length("--spacing", 0).orElse(2),
        words.boxes("--keep-out"),
        words.word("--grain", List.of("held", "free")).orElse("held").equals("held"),
        Math.max(1, words.count("--copies", 99).orElse(1)),
        words.strips("--strips"));
  }

  private void whatCounts() {
    for (String option : ROUTER_ONLY) {
      words.only(option, process == CutProcess.ROUTER, "for --process router");
    }
    for (String option : SHEET_ONLY) {
      words.only(option, sheet.isPresent(), "with --nest");
    }
    boolean beam = process == CutProcess.LASER || process == CutProcess.WATERJET;
    boolean saw = process == CutProcess.JIGSAW;
    words.only("--kerf", beam, "for --process laser or waterjet");
    words.only("--owner-consents", process == CutProcess.LASER, "for --process laser");
    words.only("--blade", saw, "for --process jigsaw");
    words.only("--turn", saw, "for --process jigsaw");
    words.only("--largest-drill", !beam, "for --process router or jigsaw");
    for (String option :
        List.of(
            "--feed", "--lead", "--direction", "--thickness", "--travel", "--no-compensation")) {
      words.only(option, !saw, "for a machine, not for --process jigsaw");
    }
    words.only("--nest", !saw, "for a machine, not for --process jigsaw");
    for (String option : List.of("--blade", "--turn")) {
      if (figures.get(option).isPresent() && !(figures.get(option).getAsDouble() > 0)) {
        words.problem(option, words.text(option).orElse(""), "must be more than 0", "");
      }
    }
    if (sheet.isPresent() && words.count("--copies", 99).orElse(1) == 0) {
      words.problem("--copies", words.text("--copies").orElse(""), "must be at least 1", "");
    }
    if (flutes.isPresent() && flutes.get() == 0) {
      words.problem("--flutes", "0", "must be at least 1", "");
    }
  }

  CutProcess process() {
    return process;
  }

  /** The process in a word, such as {@code router}. */
  String processName() {
    return name;
  }

  /** Whether the maker gave an option. */
  boolean asked(String option) {
    return words.has(option);
  }

  /** Whether paths leave the finish line by half the cutter's width. */
  boolean compensates() {
    return !words.has("--no-compensation");
  }

  Dialect dialect() {
    return dialect.orElseThrow();
  }

  boolean coolant() {
    return words.has("--coolant");
  }

  Optional<SheetRequest> sheet() {
    return sheet;
  }

  /** Whether times can be told: a beam's feed is known to its owner alone. */
  boolean timed() {
    return process == CutProcess.ROUTER || figures.get("--feed").isPresent();
  }

  private double figure(String option, double usual) {
    return figures.get(option).orElse(usual);
  }

  /** The width that is cut: as asked for, else the usual one, mm. */
  double width(List<Plate> plates, FeedTable feeds) {
    return switch (process) {
      case ROUTER ->
          figure(
              "--cutter",
              plates.stream().mapToDouble(p -> p.making().cutterDiameter()).min().orElse(0));
      case LASER -> figure("--kerf", feeds.laser().width());
      case WATERJET -> figure("--kerf", feeds.waterjet().width());
      case JIGSAW -> feeds.blade().kerf();
    };
  }

  /** Cutting edges: as asked for, else one, which keeps the feed on the safe side. */
  int flutes() {
    return flutes.orElse(1);
  }

  /**
   * How a plate is cut.
   *
   * @param cutter the width that is cut, mm
   */
  CutSetup setup(Plate plate, double cutter, FeedTable feeds) {
    CutSetup usual =
        process == CutProcess.ROUTER
            ? router(plate, cutter, feeds)
            : CutSetup.beam(process, plate, cutter, figure("--feed", ANY_FEED));
    CutSetup.Depths deep = usual.depths();
    CutSetup.Rates rates = usual.rates();
    CutSetup.Tabs held = usual.tabs();
    double thick = figure("--thickness", deep.stock());
    int count = tabs.orElse(held.count());
    double feed = figure("--feed", rates.feed());
    return new CutSetup(
        process,
        cutter,
        usual.flutes(),
        figures.get("--flute-length").stream().boxed().findFirst(),
        direction.orElse("climb").equals("climb") ? CutDirection.CLIMB : CutDirection.CONVENTIONAL,
        new CutSetup.Depths(
            thick,
            figure("--breakthrough", deep.breakthrough()),
            figure("--bed", deep.bed()),
            figure("--step-down", process == CutProcess.ROUTER ? deep.stepDown() : thick),
            figure("--clearance", deep.clearance()),
            figure("--approach", deep.approach())),
        new CutSetup.Entry(
            words.has("--ramp") ? Math.toRadians(figure("--ramp", 0)) : usual.entry().ramp(),
            figure("--lead", usual.entry().lead())),
        count == 0
            ? CutSetup.Tabs.NONE
            : new CutSetup.Tabs(
                count,
                figure("--tab-width", held.width()),
                figure("--tab-height", Math.min(held.height(), thick / 3))),
        new CutSetup.Drills(drills, largestDrill(usual.drills().largest())),
        new CutSetup.Rates(
            figure("--speed", rates.speed()),
            feed,
            figure("--ramp-feed", feed > 0 ? feed / 2 : rates.rampFeed()),
            figure("--travel", rates.travel()),
            figure("--drill-surface-speed", rates.drillSurfaceSpeed()),
            figure("--drill-feed", rates.drillFeed()),
            figure("--highest-speed", rates.highestSpeed())),
        usual.start(),
        words.has("--owner-consents"));
  }

  private CutSetup router(Plate plate, double cutter, FeedTable feeds) {
    // A cutter of no width has no feed; the plan says what is wrong with it.
    double wide = cutter > 0 ? cutter : 1;
    StartingFeed start =
        feeds.routing(
            plate.stock().material(),
            wide,
            flutes(),
            figure("--highest-speed", feeds.highestSpeed()),
            figures.get("--speed"));
    return CutSetup.router(plate, wide, flutes(), feeds, start);
  }

  private double largestDrill(double usual) {
    // A maker who has no drill bores everything.
    boolean none = words.text("--drills").orElse("").equals("none");
    return none ? 0 : figure("--largest-drill", usual);
  }

  /** The blade of a jigsaw. */
  JigsawBlade blade(FeedTable feeds) {
    JigsawBlade usual = feeds.blade();
    return new JigsawBlade(
        figure("--blade", usual.width()), usual.kerf(), figure("--turn", usual.turn()));
  }

  /** Which holes are drilled where the rest is sawn by hand. */
  Predicate<Hole> drilledByHand() {
    double largest = figure("--largest-drill", LARGEST_BY_HAND);
    return hole -> hole.diameter() <= largest + 1e-9;
  }
}
