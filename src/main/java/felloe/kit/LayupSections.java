package felloe.kit;

import felloe.geometry.Box;
import felloe.geometry.Numbers;
import felloe.layup.ClothPiece;
import felloe.layup.LayupPlan;
import felloe.layup.PotPlan;
import felloe.layup.Purchase;
import felloe.layup.ResinPlan;
import felloe.layup.StackPlan;
import felloe.layup.StockOption;
import felloe.layup.TestStrips;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** A plan of a lay-up in words. */
final class LayupSections {

  private final LayupPlan plan;

  LayupSections(LayupPlan plan) {
    this.plan = plan;
  }

  /** Everything, in the order of the work. */
  List<LayupSection> all() {
    List<LayupSection> all = new ArrayList<>();
    all.add(stack());
    all.add(purchases());
    all.add(cloth());
    all.add(resin());
    all.add(pots());
    all.add(mould());
    if (plan.blank().strips().asked() > 0) {
      all.add(strips());
    }
    all.add(ways());
    return all;
  }

  /** What it is made with, in a line. */
  String heading() {
    return plan.choice().cloth().title()
        + "; "
        + plan.choice().process().title()
        + "; "
        + plan.choice().resin().title()
        + "; "
        + Numbers.brief(plan.choice().temperature(), 1)
        + " degrees C";
  }

  LayupSection stack() {
    StackPlan stack = plan.stack();
    List<List<String>> rows = new ArrayList<>();
    row(rows, "figure", "value", "");
    row(rows, "plies", Integer.toString(stack.plies().size()), "");
    row(rows, "fibre volume fraction", Numbers.fixed(stack.fraction(), 3), "");
    row(rows, "thickness, planned", Numbers.fixed(stack.thickness(), 2), "mm");
    row(
        rows,
        "thickness, to be expected",
        Numbers.fixed(stack.least(), 2) + " to " + Numbers.fixed(stack.most(), 2),
        "mm");
    row(rows, "thickness, wanted", Numbers.fixed(stack.wanted(), 2), "mm");
    row(rows, "a ply", Numbers.fixed(stack.plyThickness(), 3), "mm");
    row(rows, "density", Numbers.fixed(plan.density(), 2), "g/cm3");
    row(rows, "mass of the finished plate", Numbers.fixed(plan.plateMass(), 0), "g");
    row(rows, "modulus, pulled along x", gigapascals(plan.moduli().inPlane().ex()), "GPa");
    row(rows, "modulus, bent along x", gigapascals(plan.moduli().bending().ex()), "GPa");
    row(rows, "modulus, bent along y", gigapascals(plan.moduli().bending().ey()), "GPa");
    List<String> lines = new ArrayList<>();
    lines.add("From the mould (the back face) up: " + order(stack) + ".");
    lines.add(properties(stack) + ".");
    return new LayupSection("Stack", "lrl", rows, lines);
  }

  private static String gigapascals(double megapascals) {
    return Numbers.fixed(megapascals / 1000, 1);
  }

  /** Directions in order. */
  private static String order(StackPlan stack) {
    return String.join(" ", stack.plies().stream().map(StackPlan.Ply::words).toList());
  }

  static String properties(StackPlan stack) {
    return (stack.symmetric() ? "Symmetric" : "Not symmetric")
        + ", "
        + (stack.balanced() ? "balanced" : "not balanced")
        + ", "
        + (stack.quasiIsotropic() ? "quasi-isotropic in its plane" : "not quasi-isotropic");
  }

  LayupSection purchases() {
    List<List<String>> rows = new ArrayList<>();
    row(rows, "to buy, or to have at hand", "how much", "got");
    for (Purchase purchase : plan.purchases()) {
      row(rows, purchase.what(), purchase.amount(), "[ ]");
    }
    return new LayupSection("Shopping list", "lrl", rows, List.of());
  }

  LayupSection cloth() {
    Map<String, List<ClothPiece>> kinds = new LinkedHashMap<>();
    for (ClothPiece piece : plan.cloth().pieces()) {
      kinds
          .computeIfAbsent(piece.words() + ", " + areaKey(piece), key -> new ArrayList<>())
          .add(piece);
    }
    List<List<String>> rows = new ArrayList<>();
    row(rows, "pieces", "direction", "area of one", "labels");
    for (List<ClothPiece> pieces : kinds.values()) {
      ClothPiece first = pieces.get(0);
      row(
          rows,
          Integer.toString(pieces.size()),
          first.words(),
          Numbers.fixed(first.region().properties().area() / 1e6, 3) + " m2",
          labels(pieces));
    }
    Box blank = plan.blank().box();
    List<String> lines = new ArrayList<>();
    lines.add(
        "Each ply covers "
            + Numbers.brief(blank.width(), 0)
            + " x "
            + Numbers.brief(blank.height(), 0)
            + " mm; warp along the roll.");
    lines.add(
        "From a roll "
            + Numbers.brief(plan.cloth().rollWidth(), 0)
            + " mm wide buy "
            + Numbers.fixed(plan.cloth().toBuy() / 1000, 1)
            + " m (the pieces end at "
            + Numbers.fixed(plan.cloth().used() / 1000, 2)
            + " m); "
            + Numbers.fixed(100 * plan.cloth().waste(), 0)
            + " % is waste.");
    lines.add(
        "Write the label and an arrow along the warp on a strip of tape on each piece, or tape on"
            + " the labels of the pages that --out makes.");
    return new LayupSection("Cloth", "rlrl", rows, lines);
  }

  private static String areaKey(ClothPiece piece) {
    return Numbers.fixed(piece.region().properties().area(), 0);
  }

  private static String labels(List<ClothPiece> pieces) {
    List<String> labels = pieces.stream().map(ClothPiece::label).toList();
    return String.join(" ", labels);
  }

  LayupSection resin() {
    ResinPlan resin = plan.resin();
    List<List<String>> rows = new ArrayList<>();
    row(rows, "resin, both parts", "g");
    row(rows, "cloth in the blank", Numbers.fixed(resin.fibre(), 0));
    row(rows, "resin that stays in the blank", Numbers.fixed(resin.inPart(), 0));
    for (ResinPlan.Loss loss : resin.losses()) {
      row(rows, "lost: " + loss.where(), Numbers.fixed(loss.grams(), 0));
    }
    row(rows, "needed", Numbers.fixed(resin.needed(), 0));
    row(rows, "mixed in all pots", grams(resin.mix()));
    row(rows, "of that resin", grams(resin.resin()));
    row(rows, "of that hardener", grams(resin.hardener()));
    List<String> lines = new ArrayList<>();
    lines.add(
        "Weigh: 100 g of resin take "
            + Numbers.brief(plan.choice().resin().byWeight(), 1)
            + " g of hardener"
            + volume()
            + ".");
    lines.add(
        "The mix is "
            + Numbers.fixed(resin.millilitres(), 0)
            + " ml, "
            + Numbers.fixed(resin.perSquareMetre() / 1000, 2)
            + " litres for a square metre of this blank; 400 ml would serve one of "
            + Numbers.fixed(1000 * Math.sqrt(400 / resin.perSquareMetre()), 0)
            + " mm square.");
    return new LayupSection("Resin", "lr", rows, lines);
  }

  private String volume() {
    OptionalDouble volume = plan.choice().resin().byVolume();
    return volume.isPresent()
        ? "; by volume it is another number, "
            + Numbers.brief(volume.getAsDouble(), 1)
            + " ml for 100 ml"
        : "";
  }

  private String grams(double grams) {
    return Numbers.fixed(
        grams, plan.choice().scale() < 0.1 ? 2 : plan.choice().scale() < 1 ? 1 : 0);
  }

  LayupSection pots() {
    PotPlan pots = plan.pots();
    List<List<String>> rows = new ArrayList<>();
    row(
        rows,
        "pot",
        "for",
        "mix at",
        "resin g",
        "hardener g",
        "spread",
        "empty by",
        "sets at",
        "done");
    for (PotPlan.Pot pot : pots.pots()) {
      row(
          rows,
          Integer.toString(pot.number()),
          pot.plies(),
          clock(pot.mixAt()),
          grams(pot.resin()),
          grams(pot.hardener()),
          clock(pot.spreadFrom()),
          clock(pot.emptyBy()),
          clock(pot.setsAt()),
          "[ ]");
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "Hours and minutes after the first pot is begun. Mix the next pot only when its time has"
            + " come.");
    lines.add(
        "Last ply down at "
            + clock(pots.lastPly())
            + ", closed and weighted at "
            + clock(pots.closed())
            + "; it must be closed by "
            + clock(pots.deadline())
            + ", when the first ply begins to set.");
    lines.add(
        "Lift it off after "
            + Numbers.brief(plan.choice().resin().cure().at(plan.choice().temperature()), 1)
            + " hours"
            + plan.choice()
                .resin()
                .postCure()
                .map(
                    post ->
                        ", then keep it flat at "
                            + Numbers.brief(post.temperature(), 0)
                            + " degrees C for "
                            + Numbers.brief(post.hours(), 1)
                            + " hours, warmed up slowly")
                .orElse("")
            + ".");
    return new LayupSection("Pots", "llrrrrrrl", rows, lines);
  }

  /** Minutes as {@code h:mm}. */
  static String clock(double minutes) {
    long whole = Math.round(minutes);
    String rest = Long.toString(whole % 60);
    return whole / 60 + ":" + (rest.length() < 2 ? "0" : "") + rest;
  }

  LayupSection mould() {
    List<List<String>> rows = new ArrayList<>();
    row(rows, "mould", "value", "");
    String size =
        Numbers.brief(plan.mould().width(), 0) + " x " + Numbers.brief(plan.mould().height(), 0);
    row(rows, plan.mould().plates() == 1 ? "one plate" : "two plates, each", size, "mm");
    row(rows, "faces that take release wax", Numbers.fixed(plan.mould().area() / 1e6, 2), "m2");
    row(
        rows,
        "coats on a new plate, " + Numbers.brief(plan.mould().between(), 0) + " min apart",
        Integer.toString(plan.mould().coats()),
        "");
    row(rows, "pressure", Numbers.brief(plan.mould().pressure(), 0), "kPa");
    if (plan.mould().byWeight()) {
      row(rows, "weights on top", Numbers.fixed(Math.ceil(plan.mould().weight()), 0), "kg");
    }
    row(rows, "tape lines for placing plies", Numbers.brief(plan.mould().grid(), 0), "mm apart");
    List<String> lines =
        List.of(
            "Stick the outline of the blank, both middle lines and both diagonals at 45 degrees on"
                + " the plate's underside, or on its face outside of the blank; lay each ply to"
                + " them.",
            "Hands on: some "
                + Numbers.fixed(plan.hours(), 1)
                + " hours, without cutting the plate.");
    return new LayupSection("Mould", "lrl", rows, lines);
  }

  LayupSection strips() {
    TestStrips strips = plan.blank().strips();
    List<List<String>> rows = new ArrayList<>();
    row(rows, "test strips", "value", "");
    row(rows, "placed on the blank", strips.placed().size() + " of " + strips.asked(), "");
    row(
        rows,
        "length x width",
        Numbers.brief(strips.length(), 1) + " x " + Numbers.brief(strips.width(), 1),
        "mm");
    row(rows, "span between the supports", Numbers.brief(strips.span(), 1), "mm");
    List<String> lines =
        List.of(
            "Three-point bending after ISO 14125, class "
                + strips.className()
                + ", for "
                + Numbers.fixed(strips.thickness(), 2)
                + " mm. Measure the panel first: span and length follow its true thickness.");
    return new LayupSection("Test strips", "lrl", rows, lines);
  }

  LayupSection ways() {
    List<List<String>> rows = new ArrayList<>();
    String currency = plan.choice().prices().currency().map(c -> ", " + c).orElse("");
    row(
        rows,
        "way",
        "thick mm",
        "plate g",
        "stiffness",
        "sheet mm",
        "material" + currency,
        "work" + currency,
        "hours",
        "wait h");
    for (StockOption way : plan.ways()) {
      boolean layup = way.name().equals(StockOption.LAY_UP);
      row(
          rows,
          way.title(),
          Numbers.fixed(way.thickness(), 2),
          Numbers.fixed(way.mass(), 0),
          Numbers.fixed(way.stiffness(), 2),
          layup
              ? "-"
              : way.sheet()
                  .map(s -> Numbers.brief(s.width(), 0) + " x " + Numbers.brief(s.height(), 0))
                  .orElse("none fits"),
          money(way.material()),
          money(way.work()),
          Numbers.fixed(way.hours(), 1),
          Numbers.fixed(way.waiting(), 0));
    }
    List<String> lines = new ArrayList<>();
    lines.add(
        "Stiffness in bending along x against the lay-up. Hours and waiting are those before"
            + " cutting; delivery is not in them.");
    List<String> missing = plan.ways().stream().flatMap(way -> way.missing().stream()).toList();
    if (!missing.isEmpty()) {
      lines.add(
          "No price is known for "
              + String.join(", ", missing)
              + ". Give yours in stock.layup.prices or with --materials FILE; the program knows"
              + " none.");
    }
    return new LayupSection("Ways of getting the stock", "lrrrrrrrr", rows, lines);
  }

  private static String money(OptionalDouble sum) {
    return sum.isPresent() ? Numbers.fixed(sum.getAsDouble(), 2) : "?";
  }

  /** The figures that the plan rests on. */
  LayupSection sources() {
    List<List<String>> rows = new ArrayList<>();
    row(rows, "figure", "value", "", "assumed", "where it comes from");
    for (SourcedFigure figure : plan.figures()) {
      row(
          rows,
          figure.name(),
          Numbers.brief(figure.value(), 3),
          figure.unit(),
          figure.assumed() ? "yes" : "",
          figure.basis());
    }
    return new LayupSection("What the plan rests on", "lrlll", rows, List.of());
  }

  private static void row(List<List<String>> rows, String... cells) {
    rows.add(List.of(cells));
  }
}
