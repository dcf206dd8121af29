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
        View.of(LoadOutcome.class)
            .with(LoadOutcome::plate)
            .with("material", one -> one.plate().stock().material().name())
            .with(LoadOutcome::plan)
            .with("met", LoadOutcome::met)
            .with("least_thickness", one -> one.least().map(t -> t.gauge().thickness()))
            .with("screws", LoadOutcome::screws)
            .with("screw_cures", LoadOutcome::screwCures)
            .with("widening", LoadOutcome::widening)
            .with("seconds", LoadOutcome::seconds)
            .with("cure", one -> LoadReport.cure(one))
            .with("cautions", one -> LoadReport.cautions(one.plate())),
        View.of(LoadPlan.class)
            .with("thickness", plan -> plan.gauge().thickness())
            .with("plies", plan -> plan.gauge().plies())
            .with("mass", plan -> plan.gauge().mass())
            .with("support", LoadPlan::hold)
            .with("wanted_margin", plan -> plan.wanted().margin())
            .with("wanted_deflection", plan -> plan.wanted().deflection())
            .with("cases", plan -> plan.cases().stream().map(one -> new Case(plan, one)).toList())
            .with("left_out", LoadPlan::leftOut)
            .with("thicknesses", LoadPlan::trials)
            .with("mesh", plan -> CaseMesh.of(plan.result()))
            .with("figures", LoadPlan::figures)
            .with("notes", LoadPlan::notes),
        View.of(felloe.load.HubHold.class)
            .with("hold", hold -> hold.support() instanceof Support.Clamped ? "clamped" : "bolts")
            .with(
                "clamp_diameter",
                hold ->
                    hold.support() instanceof Support.Clamped c
                        ? Optional.of(c.diameter())
                        : Optional.empty())
            .with(
                "face_diameter",
                hold ->
                    hold.support() instanceof Support.Bolted b && b.bearing().size() == 1
                        ? Optional.of(b.bearing().get(0).diameter())
                        : Optional.empty())
            .with(
                "spacer_diameter",
                hold ->
                    hold.support() instanceof Support.Bolted b && b.bearing().size() > 1
                        ? Optional.of(b.bearing().get(0).diameter())
                        : Optional.empty())
            .with("why", felloe.load.HubHold::why)
            .with("assumptions", felloe.load.HubHold::assumptions),
        View.of(Case.class)
            .with("name", c -> c.field().load().name())
            .with("title", c -> c.field().load().title())
            .with("basis", c -> c.field().load().basis())
            .with("forces", c -> c.field().load().forces())
            .with("patch", c -> c.field().load().patch())
            .with("deflection_at_load", c -> c.field().atLoad())
            .with("deflections_at_loads", c -> c.field().atLoads())
            .with("stiffness", c -> c.judged().stiffness())
            .with("peak_deflection", c -> c.field().peakDeflection())
            .with("peak_deflection_at", c -> c.field().peakDeflectionAt())
            .with("peak_stress", c -> c.field().worst().stress())
            .with("peak_strain", c -> c.field().worst().strain())
            .with("peak_at", c -> c.field().worstAt())
            .with("peak_z", c -> c.field().worst().z())
            .with(
                "ply",
                c ->
                    c.plan().gauge().plies().isPresent()
                        ? Optional.of(c.field().worst().ply())
                        : Optional.empty())
            .with("measure", c -> c.field().worst().measure())
            .with("ply_uses", c -> PlyPeak.of(c.plan().result(), c.field()))
            .with("use", c -> c.field().worst().use())
            .with("factor", c -> c.judged().factor())
            .with("margin", c -> c.judged().margin())
            .with("judged", c -> c.judged().fall().isEmpty())
            .with("met", c -> c.judged().met())
            .with("shear_share", c -> c.field().shearShare())
            .with("bolts", c -> c.judged().bolts())
            .with("warnings", c -> LoadReport.warnings(c.plan(), c.judged()))
            .with("hub", c -> c.field().hub())
            .with("mesh", c -> new CaseMesh(c.plan().result(), c.judged().change())),
        View.of(CaseMesh.class)
            .with("nodes", m -> m.result().mesh().nodes())
            .with("triangles", m -> m.result().mesh().triangles())
            .with("unknowns", m -> m.result().unknowns())
            .with("least_angle", m -> m.result().mesh().quality().leastAngle())
            .with("deflection_change", m -> m.change().map(LoadResult.Change::deflection))
            .with("use_change", m -> m.change().map(LoadResult.Change::use))
            .with("settled", m -> m.result().settled()),
        View.of(HandForce.class)
            .with("at", HandForce::at)
            .with("force", f -> List.of(f.x(), f.y(), f.z())),
        View.record(LoadPlan.Trial.class, "gauge")
            .with("thickness", t -> t.gauge().thickness())
            .with("plies", t -> t.gauge().plies())
            .with("mass", t -> t.gauge().mass())
            .with("cost", t -> t.gauge().cost()));
  }

  /** The mesh, and by how much a case's figures changed from the coarser one. */
  private record CaseMesh(LoadResult result, Optional<LoadResult.Change> change) {

    static CaseMesh of(LoadResult result) {
      return new CaseMesh(
          result,
          result.changes().isEmpty()
              ? Optional.empty()
              : Optional.of(new LoadResult.Change(result.deflectionChange(), result.useChange())));
    }
  }

  /** A case beside the plan that it belongs to. */
  private record Case(LoadPlan plan, LoadPlan.Judged judged) {
    CaseField field() {
      return judged.field();
    }
  }
}
