package felloe.render;

import felloe.layup.BlankPlan;
import felloe.layup.ClothPiece;
import felloe.layup.ClothPlan;
import felloe.layup.LayupPlan;
import felloe.layup.PotPlan;
import felloe.layup.ResinSystem;
import felloe.layup.StackPlan;
import felloe.layup.TestStrips;
import felloe.out.ShapeJson;
import felloe.plate.SourcedFigure;
import felloe.report.LayupReport;
import felloe.report.LayupShopping;
import java.util.List;
import java.util.Optional;

/** The plan of a lay-up as JSON. */
final class LayupViews {

  private LayupViews() {}

  /** The stack with what it comes to. */
  private record Panel(LayupPlan plan) {}

  /** A figure, and whether it rests on no source. */
  private record Told(SourcedFigure figure) {}

  /** Pots and cure on one clock. */
  private record Timeline(
      PotPlan pots, double cureHours, Optional<ResinSystem.PostCure> postCure, double workHours) {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            LayupPlan.class,
            (plan, to) ->
                to.addAll(plan.plate())
                    .add("laid_up", plan.laidUp())
                    .add("possible", plan.possible())
                    .add("obstacles", plan.pots().obstacles())
                    .add("cloth", plan.choice().cloth().name())
                    .add("process", plan.choice().process().name())
                    .add("resin", plan.choice().resin().name())
                    .add("temperature", plan.choice().temperature())
                    .add("stack", new Panel(plan))
                    .add("blank", plan.blank())
                    .add("roll", plan.cloth())
                    .add("mix", plan.resin())
                    .add("pots", plan.pots().pots())
                    .add("timeline", LayupViews.timeline(plan))
                    .add("mould", plan.mould())
                    .add("ways", plan.ways())
                    .add("currency", plan.choice().prices().currency())
                    .add("shopping", LayupShopping.of(plan))
                    .add("figures", plan.figures().stream().map(Told::new).toList())
                    .add("warnings", plan.stack().warnings())
                    .add("notes", plan.notes())
                    .add("cautions", LayupReport.cautions(plan))),
        View.of(
            Panel.class,
            (panel, to) ->
                to.addAll(panel.plan().stack())
                    .add("ply_thickness", panel.plan().stack().plyThickness())
                    .add("density", panel.plan().density())
                    .add("plate_mass", panel.plan().plateMass())
                    .addAll(panel.plan().moduli())),
        View.record(StackPlan.class, "warnings"),
        View.record(
            BlankPlan.class,
            (blank, to) ->
                to.add("x", blank.box().minX())
                    .add("y", blank.box().minY())
                    .add("width", blank.box().width())
                    .add("height", blank.box().height())
                    .add("segments", ShapeJson.segments(blank.contour())),
            "contour",
            "notes"),
        View.record(
            TestStrips.class,
            (strips, to) -> to.add("strip_class", strips.className()),
            "stripClass",
            "thickness"),
        View.record(
            TestStrips.Strip.class,
            (strip, to) -> to.add("segments", ShapeJson.segments(strip.contour())),
            "contour"),
        View.record(ClothPlan.class, "notes"),
        View.record(
            ClothPiece.class,
            (piece, to) ->
                to.add("area", piece.region().properties().area())
                    .add("turn", Math.toDegrees(piece.fromPlate().turn()))
                    .add("segments", ShapeJson.segments(piece.region().outer())),
            "region",
            "fromPlate"),
        View.record(Timeline.class, (timeline, to) -> to.addAll(timeline.pots()), "pots"),
        View.record(PotPlan.class, "pots", "obstacles"),
        View.of(
            Told.class,
            (told, to) -> to.addAll(told.figure()).add("assumed", told.figure().assumed())));
  }

  private static Timeline timeline(LayupPlan plan) {
    ResinSystem resin = plan.choice().resin();
    return new Timeline(
        plan.pots(), resin.cure().at(plan.choice().temperature()), resin.postCure(), plan.hours());
  }
}
