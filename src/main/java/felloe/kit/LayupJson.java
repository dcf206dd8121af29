package felloe.kit;

import felloe.geometry.Box;
import felloe.laminate.SheetModuli;
import felloe.layup.BlankPlan;
import felloe.layup.ClothPiece;
import felloe.layup.ClothPlan;
import felloe.layup.LayupPlan;
import felloe.layup.MouldPlan;
import felloe.layup.PotPlan;
import felloe.layup.ResinPlan;
import felloe.layup.StackPlan;
import felloe.layup.StockOption;
import felloe.layup.TestStrips;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.out.ShapeJson;
import felloe.plate.SourcedFigure;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The plan of a lay-up as JSON. */
final class LayupJson {

  private static final int DECIMALS = 6;

  private LayupJson() {}

  static String text(LayupPlan plan, boolean laidUp, List<Path> files) {
    return JsonWriter.text(
        AnswerJson.plate(plan.plate())
            .with("laidUp", laidUp)
            .with("possible", plan.possible())
            .with("obstacles", Json.array(plan.pots().obstacles(), Json::text))
            .with("cloth", plan.choice().cloth().name())
            .with("process", plan.choice().process().name())
            .with("resin", plan.choice().resin().name())
            .with("temperature", plan.choice().temperature(), DECIMALS)
            .with("stack", stack(plan))
            .with("blank", blank(plan.blank()))
            .with("roll", roll(plan.cloth()))
            .with("mix", mix(plan.resin()))
            .with("pots", Json.array(plan.pots().pots(), LayupJson::pot))
            .with("timeline", timeline(plan))
            .with("mould", mould(plan.mould()))
            .with("ways", Json.array(plan.ways(), LayupJson::way))
            .with("currency", Json.maybe(plan.choice().prices().currency(), Json::text))
            .with(
                "shopping",
                Json.array(
                    plan.purchases(),
                    p -> Json.object().with("what", p.what()).with("amount", p.amount())))
            .with("figures", Json.array(plan.figures(), LayupJson::figure))
            .with("warnings", Json.array(plan.stack().warnings(), Json::text))
            .with("notes", Json.array(plan.notes(), Json::text))
            .with("cautions", Json.array(plan.cautions(), Json::text))
            .with("files", Json.array(files, file -> Json.text(file.toString()))));
  }

  private static Json stack(LayupPlan plan) {
    StackPlan stack = plan.stack();
    return Json.object()
        .with("plies", Json.array(stack.plies(), LayupJson::ply))
        .with("plyThickness", stack.plyThickness(), DECIMALS)
        .with("fraction", stack.fraction(), DECIMALS)
        .with("thickness", stack.thickness(), DECIMALS)
        .with("leastThickness", stack.least(), DECIMALS)
        .with("usualThickness", stack.usual(), DECIMALS)
        .with("mostThickness", stack.most(), DECIMALS)
        .with("wantedThickness", stack.wanted(), DECIMALS)
        .with("symmetric", stack.symmetric())
        .with("balanced", stack.balanced())
        .with("quasiIsotropic", stack.quasiIsotropic())
        .with("density", plan.density(), DECIMALS)
        .with("plateMass", plan.plateMass(), DECIMALS)
        .with("inPlane", moduli(plan.moduli().inPlane()))
        .with("bending", moduli(plan.moduli().bending()));
  }

  private static Json ply(StackPlan.Ply ply) {
    return Json.object()
        .with("number", ply.number())
        .with("angle", ply.angle(), DECIMALS)
        .with("direction", ply.words());
  }

  private static Json moduli(SheetModuli moduli) {
    return Json.object()
        .with("Ex", moduli.ex(), DECIMALS)
        .with("Ey", moduli.ey(), DECIMALS)
        .with("Gxy", moduli.gxy(), DECIMALS)
        .with("nuxy", moduli.nuxy(), DECIMALS);
  }

  private static Json blank(BlankPlan blank) {
    TestStrips strips = blank.strips();
    return box(blank.box())
        .with("area", blank.area(), DECIMALS)
        .with("margin", blank.margin(), DECIMALS)
        .with("segments", ShapeJson.segments(blank.contour()))
        .with(
            "strips",
            Json.object()
                .with("stripClass", strips.className())
                .with("length", strips.length(), DECIMALS)
                .with("width", strips.width(), DECIMALS)
                .with("span", strips.span(), DECIMALS)
                .with("asked", strips.asked())
                .with(
                    "placed",
                    Json.array(
                        strips.placed(),
                        strip ->
                            Json.object()
                                .with("label", strip.label())
                                .with("upright", strip.upright())
                                .with("segments", ShapeJson.segments(strip.contour())))));
  }

  private static Json.Members box(Box box) {
    return Json.object()
        .with("x", box.minX(), DECIMALS)
        .with("y", box.minY(), DECIMALS)
        .with("width", box.width(), DECIMALS)
        .with("height", box.height(), DECIMALS);
  }

  private static Json roll(ClothPlan cloth) {
    return Json.object()
        .with("rollWidth", cloth.rollWidth(), DECIMALS)
        .with("used", cloth.used(), DECIMALS)
        .with("toBuy", cloth.toBuy(), DECIMALS)
        .with("area", cloth.area(), DECIMALS)
        .with("bought", cloth.bought(), DECIMALS)
        .with("waste", cloth.waste(), DECIMALS)
        .with("jointedPlies", cloth.jointed())
        .with("pieces", Json.array(cloth.pieces(), LayupJson::piece));
  }

  private static Json piece(ClothPiece piece) {
    return Json.object()
        .with("label", piece.label())
        .with("ply", piece.ply())
        .with("direction", piece.words())
        .with("area", piece.region().properties().area(), DECIMALS)
        .with("turn", Math.toDegrees(piece.fromPlate().turn()), DECIMALS)
        .with("segments", ShapeJson.segments(piece.region().outer()));
  }

  private static Json mix(ResinPlan resin) {
    return Json.object()
        .with("fibre", resin.fibre(), DECIMALS)
        .with("inPart", resin.inPart(), DECIMALS)
        .with(
            "losses",
            Json.array(
                resin.losses(),
                loss ->
                    Json.object().with("where", loss.where()).with("mass", loss.grams(), DECIMALS)))
        .with("needed", resin.needed(), DECIMALS)
        .with("resin", resin.resin(), DECIMALS)
        .with("hardener", resin.hardener(), DECIMALS)
        .with("mix", resin.mix(), DECIMALS)
        .with("millilitres", resin.millilitres(), DECIMALS)
        .with("perSquareMetre", resin.perSquareMetre(), DECIMALS);
  }

  private static Json pot(PotPlan.Pot pot) {
    return Json.object()
        .with("number", pot.number())
        .with("for", pot.plies())
        .with("resin", pot.resin(), DECIMALS)
        .with("hardener", pot.hardener(), DECIMALS)
        .with("mixAt", pot.mixAt(), DECIMALS)
        .with("spreadFrom", pot.spreadFrom(), DECIMALS)
        .with("emptyBy", pot.emptyBy(), DECIMALS)
        .with("setsAt", pot.setsAt(), DECIMALS);
  }

  private static Json timeline(LayupPlan plan) {
    PotPlan pots = plan.pots();
    double temperature = plan.choice().temperature();
    return Json.object()
        .with("potLife", pots.potLife(), DECIMALS)
        .with("usablePotLife", pots.usable(), DECIMALS)
        .with("perPly", pots.perPly(), DECIMALS)
        .with("lastPly", pots.lastPly(), DECIMALS)
        .with("closed", pots.closed(), DECIMALS)
        .with("deadline", pots.deadline(), DECIMALS)
        .with("ratioError", pots.ratioError(), DECIMALS)
        .with("cureHours", plan.choice().resin().cure().at(temperature), DECIMALS)
        .with(
            "postCure",
            Json.maybe(
                plan.choice().resin().postCure(),
                post ->
                    Json.object()
                        .with("temperature", post.temperature(), DECIMALS)
                        .with("hours", post.hours(), DECIMALS)))
        .with("workHours", plan.hours(), DECIMALS);
  }

  private static Json mould(MouldPlan mould) {
    return Json.object()
        .with("plates", mould.plates())
        .with("width", mould.width(), DECIMALS)
        .with("height", mould.height(), DECIMALS)
        .with("area", mould.area(), DECIMALS)
        .with("coats", mould.coats())
        .with("minutesBetween", mould.between(), DECIMALS)
        .with("pressure", mould.pressure(), DECIMALS)
        .with(
            "weight",
            Json.maybe(
                mould.byWeight() ? Optional.of(mould.weight()) : Optional.<Double>empty(),
                kg -> Json.number(kg, DECIMALS)))
        .with("grid", mould.grid(), DECIMALS);
  }

  private static Json way(StockOption way) {
    return Json.object()
        .with("name", way.name())
        .with("title", way.title())
        .with("thickness", way.thickness(), DECIMALS)
        .with("mass", way.mass(), DECIMALS)
        .with("modulus", way.modulus(), DECIMALS)
        .with("stiffness", way.stiffness(), DECIMALS)
        .with("fits", way.fits())
        .with(
            "sheet",
            Json.maybe(
                way.sheet(),
                sheet ->
                    Json.object()
                        .with("width", sheet.width(), DECIMALS)
                        .with("height", sheet.height(), DECIMALS)))
        .with("materialCost", money(way.material()))
        .with("workCost", money(way.work()))
        .with("hours", way.hours(), DECIMALS)
        .with("waiting", way.waiting(), DECIMALS)
        .with("missingPrices", Json.array(way.missing(), Json::text));
  }

  private static Json money(OptionalDouble sum) {
    Optional<Double> value =
        sum.isPresent() ? Optional.of(sum.getAsDouble()) : Optional.<Double>empty();
    return Json.maybe(value, v -> Json.number(v, DECIMALS));
  }

  private static Json figure(SourcedFigure figure) {
    return Json.object()
        .with("name", figure.name())
        .with("value", figure.value(), DECIMALS)
        .with("unit", figure.unit())
        .with("assumed", figure.assumed())
        .with("basis", figure.basis());
  }
}
