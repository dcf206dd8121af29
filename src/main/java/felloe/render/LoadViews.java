package felloe.render;

import felloe.load.CaseField;
import felloe.load.HandForce;
import felloe.load.LoadPlan;
import felloe.load.LoadResult;
import felloe.load.PlyPeak;
import felloe.load.Support;
import felloe.report.LoadReport;
import felloe.service.LoadOutcome;
import java.util.List;
import java.util.Optional;

/** Loads as JSON: N, mm, MPa. */
final class LoadViews {

  private LoadViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            LoadOutcome.class,
            (one, to) ->
                to.addAll(one.plate())
                    .add("material", one.plate().stock().material().name())
                    .addAll(one.plan())
                    .add("met", one.met())
                    .add("least_thickness", one.least().map(t -> t.gauge().thickness()))
                    .add("screws", one.screws())
                    .add("screw_cures", one.screwCures())
                    .add("widening", one.widening())
                    .add("seconds", one.seconds())
                    .add("cure", LoadReport.cure(one))
                    .add("cautions", LoadReport.cautions(one.plate()))),
        View.of(
            LoadPlan.class,
            (plan, to) ->
                to.add("thickness", plan.gauge().thickness())
                    .add("plies", plan.gauge().plies())
                    .add("mass", plan.gauge().mass())
                    .add("support", plan.hold())
                    .add("wanted_margin", plan.wanted().margin())
                    .add("wanted_deflection", plan.wanted().deflection())
                    .add("cases", plan.cases().stream().map(one -> new Case(plan, one)).toList())
                    .add("left_out", plan.leftOut())
                    .add("thicknesses", plan.trials())
                    .add("mesh", CaseMesh.of(plan.result()))
                    .add("figures", plan.figures())
                    .add("notes", plan.notes())),
        View.of(
            felloe.load.HubHold.class,
            (hold, to) ->
                to.add("hold", hold.support() instanceof Support.Clamped ? "clamped" : "bolts")
                    .add(
                        "clamp_diameter",
                        hold.support() instanceof Support.Clamped c
                            ? Optional.of(c.diameter())
                            : Optional.empty())
                    .add(
                        "face_diameter",
                        hold.support() instanceof Support.Bolted b && b.bearing().size() == 1
                            ? Optional.of(b.bearing().get(0).diameter())
                            : Optional.empty())
                    .add(
                        "spacer_diameter",
                        hold.support() instanceof Support.Bolted b && b.bearing().size() > 1
                            ? Optional.of(b.bearing().get(0).diameter())
                            : Optional.empty())
                    .add("why", hold.why())
                    .add("assumptions", hold.assumptions())),
        View.of(
            Case.class,
            (c, to) ->
                to.add("name", c.field().load().name())
                    .add("title", c.field().load().title())
                    .add("basis", c.field().load().basis())
                    .add("forces", c.field().load().forces())
                    .add("patch", c.field().load().patch())
                    .add("deflection_at_load", c.field().atLoad())
                    .add("deflections_at_loads", c.field().atLoads())
                    .add("stiffness", c.judged().stiffness())
                    .add("peak_deflection", c.field().peakDeflection())
                    .add("peak_deflection_at", c.field().peakDeflectionAt())
                    .add("peak_stress", c.field().worst().stress())
                    .add("peak_strain", c.field().worst().strain())
                    .add("peak_at", c.field().worstAt())
                    .add("peak_z", c.field().worst().z())
                    .add(
                        "ply",
                        c.plan().gauge().plies().isPresent()
                            ? Optional.of(c.field().worst().ply())
                            : Optional.empty())
                    .add("measure", c.field().worst().measure())
                    .add("ply_uses", PlyPeak.of(c.plan().result(), c.field()))
                    .add("use", c.field().worst().use())
                    .add("factor", c.judged().factor())
                    .add("margin", c.judged().margin())
                    .add("judged", c.judged().fall().isEmpty())
                    .add("met", c.judged().met())
                    .add("shear_share", c.field().shearShare())
                    .add("bolts", c.judged().bolts())
                    .add("warnings", LoadReport.warnings(c.plan(), c.judged()))
                    .add("hub", c.field().hub())
                    .add("mesh", new CaseMesh(c.plan().result(), c.judged().change()))),
        View.of(
            CaseMesh.class,
            (m, to) ->
                to.add("nodes", m.result().mesh().nodes())
                    .add("triangles", m.result().mesh().triangles())
                    .add("unknowns", m.result().unknowns())
                    .add("least_angle", m.result().mesh().quality().leastAngle())
                    .add("deflection_change", m.change().map(LoadResult.Change::deflection))
                    .add("use_change", m.change().map(LoadResult.Change::use))
                    .add("use_left", m.change().map(LoadResult.Change::left))
                    .add("settled", m.result().settled())),
        View.of(
            HandForce.class,
            (f, to) -> to.add("at", f.at()).add("force", List.of(f.x(), f.y(), f.z()))),
        View.record(
            LoadPlan.Trial.class,
            (t, to) ->
                to.add("thickness", t.gauge().thickness())
                    .add("plies", t.gauge().plies())
                    .add("mass", t.gauge().mass())
                    .add("cost", t.gauge().cost()),
            "gauge"));
  }

  /** The mesh, and by how much a case's figures changed from the coarser one. */
  private record CaseMesh(LoadResult result, Optional<LoadResult.Change> change) {

    static CaseMesh of(LoadResult result) {
      return new CaseMesh(
          result,
          result.changes().isEmpty()
              ? Optional.empty()
              : Optional.of(
                  new LoadResult.Change(
                      result.deflectionChange(), result.useChange(), result.useLeft())));
    }
  }

  /** A case beside the plan that it belongs to. */
  private record Case(LoadPlan plan, LoadPlan.Judged judged) {
    CaseField field() {
      return judged.field();
    }
  }
}
