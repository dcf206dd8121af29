package felloe.load;

import felloe.geometry.Region;
import felloe.mesh.PlateMesh;
import java.util.ArrayList;
import java.util.List;

/**
 * What other thicknesses would do. They are compared on a mesh that is coarser than that of the
 * plate itself, and each figure is brought to what the fine mesh said of the plate's own thickness.
 *
 * <p>Forces in the plane are left out of the comparison where there is a force across it as well;
 * those that lie in the plane alone go against the thickness. Falls are left out.
 */
final class Thicknesses {

  private final Region region;
  private final Gauge own;
  private final HubHold hold;
  private final CasePlan plan;
  private final LoadPlan.Wanted wanted;
  private final List<CaseField> fine;

  /**
   * Ready to compare.
   *
   * @param own the plate's own thickness
   * @param fine what it does, in the order of the plan's cases
   */
  Thicknesses(
      Region region,
      Gauge own,
      HubHold hold,
      CasePlan plan,
      LoadPlan.Wanted wanted,
      List<CaseField> fine) {
    this.region = region;
    this.own = own;
    this.hold = hold;
    this.plan = plan;
    this.wanted = wanted;
    this.fine = fine;
  }

  /** What each of some thicknesses does; all cores work at it. */
  List<LoadPlan.Trial> trials(List<Gauge> gauges) {
    if (plan.cases().stream().allMatch(planned -> planned.fall().isPresent())) {
      // Falls are told and not judged, so there is nothing to compare thicknesses by.
      return List.of();
    }
    List<LoadCase> across = across();
    boolean alone = gauges.stream().allMatch(gauge -> same(gauge, own));
    if (alone || across.isEmpty()) {
      return gauges.stream().map(gauge -> trial(gauge, List.of(), List.of())).toList();
    }
    PlateMesh mesh = study(own, across).coarse();
    List<CaseField> base = study(own, across).reckon(mesh).cases();
    return gauges.parallelStream()
        .map(
            gauge ->
                trial(
                    gauge,
                    base,
                    same(gauge, own) ? base : study(gauge, across).reckon(mesh).cases()))
        .toList();
  }

  private LoadPlan.Trial trial(Gauge gauge, List<CaseField> base, List<CaseField> there) {
    boolean isOwn = same(gauge, own);
    return trial(gauge, isOwn ? fine : brought(gauge, base, there), isOwn);
  }

  private LoadStudy study(Gauge gauge, List<LoadCase> cases) {
    return new LoadStudy(region, gauge.section(), hold.support(), cases);
  }

  private static boolean same(Gauge a, Gauge b) {
    return a.plies().equals(b.plies()) && Math.abs(a.thickness() - b.thickness()) < 1e-9;
  }

  /** The cases with forces across the plate, their parts in the plane left out. */
  private List<LoadCase> across() {
    List<LoadCase> across = new ArrayList<>();
    for (CasePlan.Planned planned : plan.cases()) {
      LoadCase load = planned.load();
      List<HandForce> forces =
          load.forces().stream()
              .filter(f -> f.z() != 0)
              .map(f -> new HandForce(f.at(), 0, 0, f.z()))
              .toList();
      if (!forces.isEmpty()) {
        across.add(new LoadCase(load.name(), load.title(), forces, load.patch(), load.basis()));
      }
    }
    return across;
  }

  /** The fine fields as another thickness has them, by the coarse ones. */
  private List<CaseField> brought(Gauge gauge, List<CaseField> base, List<CaseField> there) {
    List<CaseField> all = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < fine.size(); i++) {
      CasePlan.Planned planned = plan.cases().get(i);
      boolean bends = planned.load().forces().stream().anyMatch(f -> f.z() != 0);
      double use;
      double deflection;
      if (bends) {
        CaseField before = base.get(next);
        CaseField after = there.get(next);
        next++;
        use = after.worst().use() / before.worst().use();
        deflection = after.atLoad() / before.atLoad();
      } else {
        use = own.thickness() / gauge.thickness();
        deflection = use;
      }
      CaseField field = fine.get(i).scaled(deflection, use);
      all.add(field);
    }
    return all;
  }

  private LoadPlan.Trial trial(Gauge gauge, List<CaseField> fields, boolean isOwn) {
    double margin = Double.POSITIVE_INFINITY;
    double deflection = 0;
    String marginCase = "";
    String deflectionCase = "";
    for (int i = 0; i < fields.size(); i++) {
      CasePlan.Planned planned = plan.cases().get(i);
      if (planned.fall().isPresent()) {
        continue;
      }
      double here = LoadPlan.margin(fields.get(i), planned.factor());
      if (here < margin) {
        margin = here;
        marginCase = planned.load().name();
      }
      if (fields.get(i).atLoad() > deflection) {
        deflection = fields.get(i).atLoad();
        deflectionCase = planned.load().name();
      }
    }
    boolean met = wanted.met(margin, deflection);
    return new LoadPlan.Trial(gauge, margin, marginCase, deflection, deflectionCase, met, isOwn);
  }
}
