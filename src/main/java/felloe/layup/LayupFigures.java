package felloe.layup;

import felloe.plate.Material;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** The figures that a plan rests on, each with where it comes from. */
final class LayupFigures {

  private static final String PRACTICE = "common practice";

  private final List<SourcedFigure> figures = new ArrayList<>();

  private LayupFigures() {}

  /**
   * The figures.
   *
   * @param sheets what can be bought
   * @param materials of sheet, by name
   */
  static List<SourcedFigure> of(
      LayupChoice choice,
      Collection<SheetStock> sheets,
      Function<String, Optional<Material>> materials) {
    LayupFigures all = new LayupFigures();
    all.cloth(choice);
    all.resin(choice);
    all.process(choice);
    all.habits(choice);
    sheets.forEach(sheet -> materials.apply(sheet.material()).ifPresent(m -> all.sheet(sheet, m)));
    return all.figures;
  }

  private void add(String name, double value, String unit, String basis) {
    figures.add(new SourcedFigure(name, value, unit, basis));
  }

  private void cloth(LayupChoice choice) {
    Cloth cloth = choice.cloth();
    Fibre fibre = cloth.fibre();
    add("density of the fibre", fibre.density(), "g/cm3", fibre.bases().of("density"));
    add("areal weight", cloth.arealWeight(), "g/m2", cloth.bases().of("areal-weight"));
    add(
        "roll width",
        choice.rollWidth(),
        "mm",
        choice.wish().rollWidth().isPresent() ? "as given" : cloth.bases().of("roll-width"));
    String stiffness = cloth.bases().of("stiffness");
    add("modulus of a ply along its warp", cloth.stiffness().e1(), "GPa", stiffness);
    add("shear modulus of a ply", cloth.stiffness().g12(), "GPa", stiffness);
    add("fraction that these are for", cloth.stiffness().fraction(), "", stiffness);
    LayupChoice.FractionChoice fraction = choice.fraction();
    add("fibre volume fraction, expected", fraction.usual(), "", fraction.basis());
    String range = fraction.own() ? "common practice, panels repeat to 0.02" : fraction.basis();
    add("fibre volume fraction, least", fraction.low(), "", range);
    add("fibre volume fraction, most", fraction.high(), "", range);
  }

  private void density(String name, OptionalDouble value, String basis) {
    if (value.isPresent()) {
      add(name, value.getAsDouble(), "g/cm3", basis);
    }
  }

  private void resin(LayupChoice choice) {
    ResinSystem resin = choice.resin();
    double at = choice.temperature();
    Bases bases = resin.bases();
    add("density of the mix", resin.density(), "g/cm3", bases.of("density"));
    density("density of the resin", resin.resinDensity(), bases.of("resin-density"));
    density("density of the hardener", resin.hardenerDensity(), bases.of("hardener-density"));
    add("hardener for 100 g of resin", resin.byWeight(), "g", bases.of("hardener-by-weight"));
    if (resin.byVolume().isPresent()) {
      add(
          "hardener for 100 ml of resin",
          resin.byVolume().getAsDouble(),
          "ml",
          bases.of("hardener-by-volume"));
    }
    add(
        "temperature of the workshop",
        at,
        "degC",
        choice.wish().temperature().isPresent() ? "as given" : PRACTICE);
    add("pot life there", resin.potLife().at(at), "min", bases.of("pot-life"));
    add("share of it left in a pot twice as heavy", resin.doubled(), "", pot(bases));
    add("degrees that halve a time", TimeCurve.HALVING, "degC", PRACTICE);
    add("working time there", resin.workingTime().at(at), "min", bases.of("working-time"));
    add("cure there", resin.cure().at(at), "h", bases.of("cure"));
    resin
        .postCure()
        .ifPresent(
            post -> {
              add("post-cure, temperature", post.temperature(), "degC", bases.of("post-cure"));
              add("post-cure, time", post.hours(), "h", bases.of("post-cure"));
            });
    add("most to mix at once", resin.potLimit(), "g", bases.of("pot-limit"));
  }

  /** The file may leave this one out, and then it is the usual one. */
  private static String pot(Bases bases) {
    return bases.words().getOrDefault("pot-life-doubled", PRACTICE + ", from memory");
  }

  private void process(LayupChoice choice) {
    Process process = choice.process();
    Bases bases = process.bases();
    String losses = bases.of("losses");
    add("stays in the brush", process.losses().brush(), "g", losses);
    add("stays in the roller", process.losses().roller(), "g", losses);
    add("stays in the pots", process.losses().pot(), "%", losses);
    add("squeezed out, at the least", process.losses().squeezeOut(), "%", losses);
    add("absorbed by peel ply and lines", process.losses().absorbed(), "g/m2", losses);
    String minutes = bases.of("minutes");
    add("time to place a ply", process.minutes().ply(), "min", minutes);
    add("time to wet a square metre out", process.minutes().squareMetre(), "min", minutes);
    add("time to mix a pot", process.minutes().mix(), "min", minutes);
    add("time to close the mould", process.minutes().close(), "min", minutes);
    String hours = bases.of("hours");
    add("work before the first pot", process.ready(), "h", hours);
    add("work after the cure", process.finish(), "h", hours);
    add("pressure", process.pressure(), "kPa", bases.of("pressure"));
  }

  private void sheet(SheetStock sheet, Material material) {
    add("density, " + sheet.title(), material.density(), "g/cm3", material.basis());
    add("modulus, " + sheet.title(), sheet.moduli().get(0), "GPa", sheet.bases().of("E"));
  }

  private static String scale(LayupChoice choice) {
    return choice.wish().scale().isPresent() ? "as given" : PRACTICE;
  }

  private void habits(LayupChoice choice) {
    add(
        "margin of the blank",
        choice.margin(),
        "mm",
        choice.wish().margin().isPresent() ? "as given" : PRACTICE);
    add("edge of the roll not used", ClothPlan.SELVEDGE, "mm", PRACTICE);
    add("room between pieces", ClothPlan.SPACING, "mm", PRACTICE);
    add("joints apart", ClothPlan.STAGGER, "mm", PRACTICE);
    add("cloth is sold by", ClothPlan.SOLD_BY, "mm", PRACTICE);
    add("share of the pot life that is used", PotPlan.SAFETY, "", PRACTICE);
    add("mould plate beyond the blank", MouldPlan.EDGE, "mm", PRACTICE);
    add("coats of release wax", MouldPlan.COATS, "", PRACTICE);
    add("time between coats", MouldPlan.BETWEEN, "min", PRACTICE);
    add("tape lines apart", MouldPlan.GRID, "mm", PRACTICE);
    add("most pressure by weights", MouldPlan.MOST_BY_WEIGHT, "kPa", PRACTICE);
    add("edge of a bought sheet not used", StockComparison.EDGE, "mm", PRACTICE);
    add("smallest step of the scale", choice.scale(), "g", scale(choice));
    add("time to cut a piece of cloth", LayupPlan.CUTTING, "min", PRACTICE + ", from memory");
    add(
        "class of the test strips",
        choice.cloth().stripClass(),
        "",
        choice.cloth().bases().of("strip-class"));
    add(
        "number of test strips",
        choice.strips(),
        "",
        choice.wish().strips().isPresent() ? "as given" : "ISO 14125, at least five; from memory");
    add("saw and file round a strip", TestStrips.GAP, "mm", PRACTICE);
  }
}
