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
        View.of(LayupPlan.class)
            .with(LayupPlan::plate)
            .with("laid_up", LayupPlan::laidUp)
            .with("possible", LayupPlan::possible)
            .with("obstacles", plan -> plan.pots().obstacles())
            .with("cloth", plan -> plan.choice().cloth().name())
            .with("process", plan -> plan.choice().process().name())
            .with("resin", plan -> plan.choice().resin().name())
            .with("temperature", plan -> plan.choice().temperature())
            .with("stack", Panel::new)
            .with("blank", LayupPlan::blank)
            .with("roll", LayupPlan::cloth)
            .with("mix", LayupPlan::resin)
            .with("pots", plan -> plan.pots().pots())
            .with("timeline", LayupViews::timeline)
            .with("mould", LayupPlan::mould)
            .with("ways", LayupPlan::ways)
            .with("currency", plan -> plan.choice().prices().currency())
            .with("shopping", LayupShopping::of)
            .with("figures", plan -> plan.figures().stream().map(Told::new).toList())
            .with("warnings", plan -> plan.stack().warnings())
            .with("notes", LayupPlan::notes)
            .with("cautions", LayupReport::cautions),
        View.of(Panel.class)
            .with(panel -> panel.plan().stack())
            .with("ply_thickness", panel -> panel.plan().stack().plyThickness())
            .with("density", panel -> panel.plan().density())
            .with("plate_mass", panel -> panel.plan().plateMass())
            .with(panel -> panel.plan().moduli()),
        View.record(StackPlan.class, "warnings"),
        View.record(BlankPlan.class, "contour", "notes")
            .with("x", blank -> blank.box().minX())
            .with("y", blank -> blank.box().minY())
            .with("width", blank -> blank.box().width())
            .with("height", blank -> blank.box().height())
            .with("segments", blank -> ShapeJson.segments(blank.contour())),
        View.record(TestStrips.class, "stripClass", "thickness")
            .with("strip_class", TestStrips::className),
        View.record(TestStrips.Strip.class, "contour")
            .with("segments", strip -> ShapeJson.segments(strip.contour())),
        View.record(ClothPlan.class, "notes"),
        View.record(ClothPiece.class, "region", "fromPlate")
            .with("area", piece -> piece.region().properties().area())
            .with("turn", piece -> Math.toDegrees(piece.fromPlate().turn()))
            .with("segments", piece -> ShapeJson.segments(piece.region().outer())),
        View.record(Timeline.class, "pots").with(Timeline::pots),
        View.record(PotPlan.class, "pots", "obstacles"),
        View.of(Told.class).with(Told::figure).with("assumed", told -> told.figure().assumed()));
  }

  private static Timeline timeline(LayupPlan plan) {
    ResinSystem resin = plan.choice().resin();
    return new Timeline(
        plan.pots(), resin.cure().at(plan.choice().temperature()), resin.postCure(), plan.hours());
  }
}
