package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;
import static felloe.document.Quantity.grams;

import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.PageBreak;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.layup.ClothPiece;
import felloe.layup.LayupChoice;
import felloe.layup.LayupPlan;
import felloe.layup.PotPlan;
import felloe.layup.ResinPlan;
import felloe.layup.StackPlan;
import felloe.layup.StockOption;
import felloe.plate.SourcedFigure;
import felloe.plate.Stock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The plan of a lay-up, told: what comes out, what to do, what it takes, what it rests on. */
public final class LayupReport {

  private static final String FOOT =
      "Gloves, goggles, long sleeves, fresh air; mask for dust. Small pots. The resin maker's data"
          + " sheet first. "
          + Cautions.USE;

  private final LayupPlan plan;
  private final StackPlan stack;
  private final LayupChoice choice;
  private final Telling told = new Telling();

  private LayupReport(LayupPlan plan) {
    this.plan = plan;
    this.stack = plan.stack();
    this.choice = plan.choice();
  }

  /** The plan, told; of stock that is bought only the ways of getting it. */
  public static Report of(LayupPlan plan) {
    LayupReport report = new LayupReport(plan);
    if (plan.laidUp()) {
      report.verdict();
      report.told.head("What to do").add(LayupSteps.of(plan));
      report.pots();
      report.material();
      report.cloth();
      report.drawn();
    } else {
      report.bought();
    }
    report.ways();
    if (plan.laidUp()) {
      report.sources();
    }
    report.told.cautions(cautions(plan));
    return report.told.under(
        Words.title(plan.plate(), "lay-up"), plan.laidUp() ? FOOT : Cautions.USE);
  }

  /** Sentences that go with the plan wherever it is shown. */
  public static List<String> cautions(LayupPlan plan) {
    if (plan.laidUp()) {
      return LayupCautions.of(plan);
    }
    List<String> all = new ArrayList<>(Cautions.cutting(plan.plate().stock().material()));
    all.add(Cautions.USE);
    return List.copyOf(all);
  }

  /** A mass as finely as the maker's scale reads. */
  static Quantity weighed(LayupPlan plan, double grams) {
    double step = plan.choice().scale();
    return fixed(grams, step < 0.1 ? 2 : step < 1 ? 1 : 0, "g");
  }

  static String size(double width, double height) {
    return Phrase.of("{} x {}", brief(width, 1, ""), brief(height, 1, "mm"));
  }

  /** The thickness that is to be expected. */
  static String range(StackPlan stack) {
    return Phrase.of("{} to {}", fixed(stack.least(), 2, ""), fixed(stack.most(), 2, "mm"));
  }

  static String properties(StackPlan stack) {
    return Phrase.of(
        "{}ymmetric, {}balanced, {}",
        stack.symmetric() ? "S" : "Not s",
        stack.balanced() ? "" : "not ",
        stack.quasiIsotropic() ? "quasi-isotropic in its plane" : "not quasi-isotropic");
  }

  /** Minutes as {@code h:mm}. */
  static String clock(double minutes) {
    int whole = (int) Math.round(minutes);
    return Phrase.of("{}:{}{}", whole / 60, whole % 60 < 10 ? "0" : "", whole % 60);
  }

  private void verdict() {
    List<String> why =
        plan.pots().obstacles().stream().map(o -> "CANNOT BE DONE AS PLANNED: " + o + ".").toList();
    told.callout(Tone.FAIL, why);
    ResinPlan resin = plan.resin();
    String panel =
        Phrase.of(
            "{} of {}: a panel of {} ({} is to be expected); the plate weighs {}.",
            Words.plies(stack.plies().size()),
            choice.cloth().title(),
            fixed(stack.thickness(), 2, "mm"),
            range(stack),
            grams(plan.plateMass()));
    String mix =
        Phrase.of(
            "Resin {} and hardener {}, {}, in {}.",
            weighed(plan, resin.resin()),
            weighed(plan, resin.hardener()),
            fixed(resin.millilitres(), 0, "ml"),
            each());
    String rest =
        Phrase.of(
            "Cloth {}, {} wide. {} Hands on it takes some {}.",
            fixed(plan.cloth().toBuy() / 1000, 1, "m"),
            brief(plan.cloth().rollWidth(), 0, "mm"),
            cost(plan.ways().get(0)),
            fixed(plan.hours(), 1, "hours"));
    told.callout(plan.possible() ? Tone.WELL : Tone.NOTE, List.of(panel, mix, rest));
    String way = Phrase.begin(choice.process().title());
    told.say(
        "{}; {}; {} C.", way, choice.resin().title(), brief(choice.temperature(), 1, "degrees"));
    List<String> warned = new ArrayList<>(stack.warnings());
    warned.addAll(plan.notes());
    told.cautions(warned.stream().map(Phrase::sentence).toList());
  }

  /** The pots, with what each holds where they are alike. */
  private String each() {
    List<PotPlan.Pot> pots = plan.pots().pots();
    PotPlan.Pot one = pots.get(0);
    boolean alike =
        pots.stream().allMatch(p -> p.resin() == one.resin() && p.hardener() == one.hardener());
    Quantity resin = weighed(plan, one.resin());
    Quantity hardener = weighed(plan, one.hardener());
    Quantity both = fixed(one.millilitres(), 0, "ml");
    String told = Phrase.of("{} of resin and {} of hardener, {}", resin, hardener, both);
    String many = Phrase.count(pots.size(), "pot") + ", each " + (alike ? told : "by the table");
    return pots.size() == 1 ? "one pot" : many;
  }

  private String cost(StockOption way) {
    if (way.materialCost().isEmpty()) {
      return "What it costs is not known, for want of prices.";
    }
    String work = way.workCost().isPresent() ? ", work " + money(way.workCost()).text("") : "";
    return Phrase.of("Material costs {}{}.", money(way.materialCost()).text(""), work);
  }

  private Cell money(OptionalDouble sum) {
    String currency = choice.prices().currency().orElse("");
    return sum.isPresent() ? fixed(sum.getAsDouble(), 2, currency) : Cell.UNKNOWN;
  }

  /** Which pot is mixed when, and of how much. */
  static Rows<PotPlan.Pot> pots(LayupPlan plan) {
    return Rows.of(plan.pots().pots())
        .words("pot", PotPlan.Pot::number)
        .wrapped("for", PotPlan.Pot::plies)
        .figures("mix at", pot -> clock(pot.mixAt()))
        .figures("resin", "g", pot -> weighed(plan, pot.resin()))
        .figures("hardener", "g", pot -> weighed(plan, pot.hardener()))
        .fixed("both", "ml", 0, pot -> pot.millilitres())
        .figures("spread", pot -> clock(pot.spreadFrom()))
        .figures("empty by", pot -> clock(pot.emptyBy()))
        .figures("sets at", pot -> clock(pot.setsAt()))
        .tick("done");
  }

  /** The plies from the mould up, to be ticked off. */
  static Table plies(LayupPlan plan) {
    return Rows.of(plan.stack().plies())
        .figures("ply", StackPlan.Ply::number)
        .words("direction", StackPlan.Ply::direction)
        .tick("down")
        .table()
        .sideBySide();
  }

  private void pots() {
    told.head("Pots; hours and minutes after the first one is begun");
    told.fold(Depth.PAPER, new Telling().cautions(List.of(LayupCautions.MIXING)));
    told.add(pots(plan));
    told.fold(
        Depth.PAPER,
        new Telling()
            .head("Plies, tick them off")
            .cautions(List.of(LayupCautions.WETTING))
            .add(plies(plan)));
  }

  private void material() {
    told.head("Shopping list");
    told.add(
        Rows.of(LayupShopping.of(plan))
            .wrapped("to buy, or to have at hand", LayupShopping.Item::what)
            .figures("how much", LayupShopping.Item::amount)
            .tick("got"));
    ResinPlan resin = plan.resin();
    List<List<Cell>> both = new ArrayList<>();
    both.add(Cell.row("cloth in the blank", grams(resin.fibre())));
    both.add(Cell.row("resin that stays in the blank", grams(resin.inPart())));
    resin.losses().forEach(l -> both.add(Cell.row("lost: " + l.where(), grams(l.grams()))));
    both.add(Cell.row("needed", grams(resin.needed())));
    both.add(Cell.row("mixed in all pots", weighed(plan, resin.mix())));
    List<List<Cell>> panel =
        List.of(
            Cell.row("fibre volume fraction", fixed(stack.fraction(), 3, "")),
            Cell.row("thickness, planned", fixed(stack.thickness(), 2, "mm")),
            Cell.row("thickness, to be expected", range(stack)),
            Cell.row("thickness, wanted", fixed(stack.wanted(), 2, "mm")),
            Cell.row("a ply", fixed(stack.plyThickness(), 3, "mm")),
            Cell.row("density", fixed(plan.density(), 2, "g/cm3")),
            modulus("pulled along x", plan.moduli().inPlane().ex()),
            modulus("bent along x", plan.moduli().bending().ex()),
            modulus("bent along y", plan.moduli().bending().ey()));
    List<Column> figure = List.of(Column.words("figure"), Column.figures("value", ""));
    String square =
        Phrase.of(
            "{} for a square metre of this blank; 400 ml would serve one of {} square.",
            fixed(resin.perSquareMetre() / 1000, 2, "litres"),
            fixed(1000 * Math.sqrt(400 / resin.perSquareMetre()), 0, "mm"));
    told.fold(
        Depth.ALL,
        new Telling()
            .head("Resin, both parts")
            .add(Table.of(figure, both))
            .say(square)
            .head("Stack")
            .add(Table.of(figure, panel))
            .say(properties(stack) + "."));
  }

  private static List<Cell> modulus(String how, double megapascals) {
    return Cell.row("modulus, " + how, fixed(megapascals / 1000, 1, "GPa"));
  }

  private void cloth() {
    Map<String, List<ClothPiece>> kinds = new LinkedHashMap<>();
    for (ClothPiece piece : plan.cloth().pieces()) {
      String kind = piece.direction() + area(piece, 6).text();
      kinds.computeIfAbsent(kind, key -> new ArrayList<>()).add(piece);
    }
    told.head("Cloth");
    told.add(
        Rows.of(List.copyOf(kinds.values()))
            .figures("pieces", List::size)
            .words("direction", alike -> alike.get(0).direction())
            .figures("each", "m2", alike -> area(alike.get(0), 3))
            .wrapped("labels", LayupReport::labels));
    told.say(
        "Each ply covers {}; warp along the roll. The pieces end at {}; {} of the cloth is waste.",
        size(plan.blank().box().width(), plan.blank().box().height()),
        fixed(plan.cloth().used() / 1000, 2, "m"),
        Quantity.percent(plan.cloth().waste(), 0));
  }

  private static String labels(List<ClothPiece> pieces) {
    return String.join(" ", pieces.stream().map(ClothPiece::label).toList());
  }

  private void drawn() {
    LayupPictures pictures = new LayupPictures(plan);
    PageBreak turned = new PageBreak();
    told.add(new Figure(pictures.stack()), turned, new Figure(pictures.rollOnPage()));
    told.fold(
        Depth.PAPER,
        new Telling()
            .add(turned)
            .head("Labels")
            .say("Cut them out and tape one on each piece, the arrow along the warp.")
            .add(new Figure(pictures.labels()), turned));
    told.add(new Figure(pictures.blank()));
  }

  private static Quantity area(ClothPiece piece, int decimals) {
    return fixed(piece.region().properties().area() / 1e6, decimals, "m2");
  }

  /** A title without the word that the sentence has already. */
  private static String named(String title) {
    return title.replaceFirst("^bought ", "");
  }

  private void bought() {
    Stock stock = plan.plate().stock();
    List<String> buy = new ArrayList<>();
    buy.add(Phrase.of("The stock is {}, which is bought.", named(stock.material().title())));
    for (StockOption way : plan.ways()) {
      if (way.own()) {
        buy.add(
            Phrase.of(
                "Buy {}, {}: {}; the plate weighs {}. {}",
                named(way.title()),
                Quantity.mm(way.thickness()),
                way.sheet()
                    .map(s -> "it fits on the usual size of " + size(s.width(), s.height()))
                    .orElse("no usual size is large enough for the plate"),
                grams(way.mass()),
                cost(way)));
      }
    }
    told.callout(Tone.NOTE, buy);
    told.say("The lay-up below is for comparing.");
  }

  private void ways() {
    List<StockOption> ways = plan.ways();
    String currency = choice.prices().currency().orElse("");
    Rows<StockOption> rows =
        Rows.of(ways)
            .wrapped("way", way -> way.title() + (named(way) ? ", as in the shape file" : ""))
            .fixed("thick", "mm", 2, way -> way.thickness())
            .figures("plate", "g", way -> grams(way.mass()))
            .fixed("stiffness", "", 2, way -> way.stiffness())
            .figures("sheet", "mm", LayupReport::sheet);
    // What is not known has its sign only beside what is.
    if (ways.stream().anyMatch(way -> way.materialCost().isPresent())) {
      rows = rows.figures("material", currency, way -> money(way.materialCost()));
    }
    if (ways.stream().anyMatch(way -> way.workCost().isPresent())) {
      rows = rows.figures("work", currency, way -> money(way.workCost()));
    }
    told.head("Ways of getting the stock");
    told.add(
        rows.fixed("hours", "", 1, way -> way.hours()).fixed("wait", "h", 0, way -> way.waiting()));
    told.say(
        "Stiffness in bending along x against the lay-up. Hours and waiting are those before"
            + " cutting; delivery is not in them.");
    List<String> missing =
        ways.stream().flatMap(way -> way.missingPrices().stream()).distinct().toList();
    if (!missing.isEmpty()) {
      told.say(
          "No price is known for {}. Give yours in stock.layup.prices or in a file of materials;"
              + " the program knows none.",
          Phrase.list(missing));
    }
  }

  private boolean named(StockOption way) {
    return way.own() && !plan.laidUp();
  }

  private static String sheet(StockOption way) {
    return way.sheet()
        .map(s -> Phrase.of("{} x {}", brief(s.width(), 0, ""), brief(s.height(), 0, "")))
        .orElse(way.fits() ? "-" : "none fits");
  }

  private void sources() {
    List<SourcedFigure> figures = plan.figures();
    told.say(
        "Assumed, from common practice or from memory: {} of the {} that the plan rests on. Put"
            + " your own in a file of materials.",
        (int) figures.stream().filter(SourcedFigure::assumed).count(),
        Phrase.count(figures.size(), "figure"));
    told.fold(
        Depth.SOURCES,
        new Telling()
            .head("What the plan rests on")
            .add(
                Rows.of(figures)
                    .wrapped("figure", SourcedFigure::name)
                    .figures("value", f -> brief(f.value(), 3, f.unit()))
                    .words("assumed", f -> f.assumed() ? "yes" : "")
                    .wrapped("where it comes from", SourcedFigure::basis)));
  }
}
