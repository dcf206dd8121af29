package felloe.kit;

import felloe.geometry.Point;
import felloe.load.CaseField;
import felloe.load.HandForce;
import felloe.load.LoadPlan;
import felloe.load.LoadResult;
import felloe.load.PlyPeak;
import felloe.load.ScrewUse;
import felloe.load.Support;
import felloe.out.Json;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Loads as JSON. N, mm, MPa. */
final class LoadJson {

  private static final int PLACE = 3;

  private LoadJson() {}

  static Json of(LoadAnswer answer) {
    LoadPlan plan = answer.plan();
    Plate plate = plan.plate();
    return Json.object()
        .with("name", plate.name())
        .with("title", plate.title())
        .with("revision", plate.revision())
        .with("material", plate.stock().material().name())
        .with("thickness", figure(plan.gauge().thickness()))
        .with("plies", Json.maybe(answer.plyCount(), n -> Json.number(n, 0)))
        .with("mass", figure(plan.gauge().mass()))
        .with("support", support(plan))
        .with("wanted_margin", figure(plan.wanted().margin()))
        .with("wanted_deflection", Json.maybe(plan.wanted().deflection(), LoadJson::figure))
        .with("met", answer.met())
        .with("cases", Json.array(plan.cases(), one -> oneCase(answer, one)))
        .with("left_out", Json.array(plan.leftOut(), Json::text))
        .with("screws", Json.array(answer.screws(), LoadJson::screw))
        .with("thicknesses", Json.array(plan.trials(), LoadJson::trial))
        .with("least_thickness", Json.maybe(plan.least(), t -> figure(t.gauge().thickness())))
        .with("cure", Json.maybe(answer.cure(), Json::text))
        .with("mesh", mesh(plan))
        .with("seconds", seconds(answer))
        .with(
            "figures",
            Json.array(
                plan.figures(),
                f ->
                    Json.object()
                        .with("name", f.name())
                        .with("value", figure(f.value()))
                        .with("unit", f.unit())
                        .with("basis", f.basis())))
        .with("notes", Json.array(plan.notes(), Json::text))
        .with("cautions", Json.array(answer.cautions(), Json::text))
        .with("files", Json.array(answer.files(), file -> Json.text(file.toString())));
  }

  private static Json seconds(LoadAnswer answer) {
    return Json.number(answer.seconds(), 3);
  }

  private static Json figure(double value) {
    return Significant.number(value);
  }

  private static Json figure(OptionalDouble value) {
    return Json.maybe(
        value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty(), LoadJson::figure);
  }

  private static Json point(Point p) {
    return new Json.Array(List.of(Json.number(p.x(), PLACE), Json.number(p.y(), PLACE)));
  }

  private static Json support(LoadPlan plan) {
    Support support = plan.hold().support();
    Json.Members json =
        Json.object().with("hold", support instanceof Support.Clamped ? "clamped" : "bolts");
    Optional<Double> clamp =
        support instanceof Support.Clamped c ? Optional.of(c.diameter()) : Optional.empty();
    Optional<Double> face =
        support instanceof Support.Bolted b ? Optional.of(b.face()) : Optional.empty();
    return json.with("clamp_diameter", Json.maybe(clamp, LoadJson::figure))
        .with("face_diameter", Json.maybe(face, LoadJson::figure))
        .with("why", plan.hold().why())
        .with("assumptions", Json.array(plan.hold().assumptions(), Json::text));
  }

  private static Json oneCase(LoadAnswer answer, LoadPlan.Judged one) {
    CaseField field = one.field();
    CaseField.HubForce hub = field.hub();
    return Json.object()
        .with("name", field.load().name())
        .with("title", field.load().title())
        .with("basis", field.load().basis())
        .with("forces", Json.array(field.load().forces(), LoadJson::force))
        .with("patch", figure(field.load().patch()))
        .with("deflection_at_load", figure(field.atLoad()))
        .with("deflections_at_loads", Json.array(field.atLoads(), LoadJson::figure))
        .with("stiffness", figure(one.stiffness()))
        .with("peak_deflection", figure(field.peakDeflection()))
        .with("peak_deflection_at", point(field.peakDeflectionAt()))
        .with("peak_stress", figure(field.worst().stress()))
        .with("peak_strain", figure(field.worst().strain()))
        .with("peak_at", point(field.worstAt()))
        .with("peak_z", figure(field.worst().z()))
        .with(
            "ply",
            Json.maybe(
                answer.plies() ? Optional.of(field.worst().ply()) : Optional.empty(),
                n -> Json.number(n, 0)))
        .with("measure", field.worst().measure())
        .with("ply_uses", Json.array(PlyPeak.of(answer.plan().result(), field), LoadJson::ply))
        .with("use", figure(field.worst().use()))
        .with("factor", figure(one.factor()))
        .with("margin", figure(one.margin()))
        .with("judged", one.fall().isEmpty())
        .with("met", one.met())
        .with("shear_share", figure(field.shearShare()))
        .with("warnings", Json.array(answer.warnings(one), Json::text))
        .with("bolts", Json.array(one.bolts(), LoadJson::bolt))
        .with(
            "hub",
            Json.object()
                .with("x", figure(hub.x()))
                .with("y", figure(hub.y()))
                .with("z", figure(hub.z()))
                .with("tilt_x", figure(hub.tiltX()))
                .with("tilt_y", figure(hub.tiltY()))
                .with("torque", figure(hub.torque())))
        .with("mesh", mesh(answer.plan(), one.change()))
        .with("seconds", seconds(answer));
  }

  private static Json force(HandForce f) {
    return Json.object()
        .with("at", point(f.at()))
        .with("force", new Json.Array(List.of(figure(f.x()), figure(f.y()), figure(f.z()))));
  }

  private static Json ply(PlyPeak peak) {
    return Json.object()
        .with("ply", peak.ply())
        .with("use", figure(peak.use()))
        .with("at", point(peak.at()));
  }

  private static Json bolt(CaseField.BoltForce bolt) {
    return Json.object()
        .with("label", bolt.label())
        .with("tension", bolt.tension(), PLACE)
        .with("shear", bolt.shear(), PLACE);
  }

  private static Json screw(ScrewUse s) {
    return Json.object()
        .with("label", s.label())
        .with("tension", s.tension(), PLACE)
        .with("tension_case", s.tensionCase())
        .with("shear", s.shear(), PLACE)
        .with("shear_case", s.shearCase())
        .with("clamp_ratio", Json.maybe(s.clampRatio(), LoadJson::figure))
        .with("bearing", Json.maybe(s.bearing(), LoadJson::figure))
        .with("bearing_limit", figure(s.bearingLimit()));
  }

  private static Json trial(LoadPlan.Trial t) {
    return Json.object()
        .with("thickness", figure(t.gauge().thickness()))
        .with(
            "plies",
            Json.maybe(
                t.gauge().plies().isPresent()
                    ? Optional.of(t.gauge().plies().getAsInt())
                    : Optional.empty(),
                n -> Json.number(n, 0)))
        .with("mass", figure(t.gauge().mass()))
        .with("cost", figure(t.gauge().cost()))
        .with("margin", figure(t.margin()))
        .with("margin_case", t.marginCase())
        .with("deflection", figure(t.deflection()))
        .with("deflection_case", t.deflectionCase())
        .with("met", t.met())
        .with("own", t.own());
  }

  private static Json mesh(LoadPlan plan) {
    LoadResult result = plan.result();
    return mesh(
        plan,
        result.changes().isEmpty()
            ? Optional.empty()
            : Optional.of(new LoadResult.Change(result.deflectionChange(), result.useChange())));
  }

  private static Json mesh(LoadPlan plan, Optional<LoadResult.Change> change) {
    LoadResult result = plan.result();
    return Json.object()
        .with("nodes", result.mesh().nodes())
        .with("triangles", result.mesh().triangles())
        .with("unknowns", result.unknowns())
        .with("least_angle", figure(result.mesh().quality().leastAngle()))
        .with("deflection_change", Json.maybe(change, c -> Json.number(c.deflection(), 5)))
        .with("use_change", Json.maybe(change, c -> Json.number(c.use(), 5)))
        .with("settled", result.settled());
  }
}
