package felloe.load;

import felloe.joints.ScrewDemand;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * What other thicknesses would do: each reckoned as the plate's own is, on the same mesh, held in
 * the same ways, with all forces. Falls are told of the plate's own alone.
 *
 * @param own the plate's own thickness
 * @param fields what it does, in the order of the plan's cases
 * @param held the plate on its hub
 * @param other the same plate held in the other way, where both count
 * @param plan the cases
 * @param hold how the hub holds it
 * @param wanted what is wanted
 */
record Thicknesses(
    Gauge own,
    List<CaseField> fields,
    PlateOnHub held,
    Optional<PlateOnHub> other,
    CasePlan plan,
    HubHold hold,
    LoadPlan.Wanted wanted) {

  /**
   * Tries thicknesses.
   *
   * @param choice which
   * @return thinnest first, the plate's own among them
   */
  List<LoadPlan.Trial> trials(LoadPlan.Compared choice) {
    if (plan.cases().stream().allMatch(planned -> planned.fall().isPresent())) {
      // Falls are told and not judged, so there is nothing to compare thicknesses by.
      return List.of();
    }
    List<LoadPlan.Trial> trials = new ArrayList<>();
    LoadPlan.Trial now = trial(choice, own, fields, true);
    int at = thinner(choice.gauges());
    for (int i = at - 1; i >= 0; i--) {
      trials.add(0, trial(choice, choice.gauges().get(i)));
      if (!choice.all() && !trials.get(0).met()) {
        break;
      }
    }
    trials.add(now);
    boolean met = now.met();
    for (int i = at; i < choice.gauges().size() && (choice.all() || !met); i++) {
      if (!same(choice.gauges().get(i), own)) {
        LoadPlan.Trial thicker = trial(choice, choice.gauges().get(i));
        trials.add(thicker);
        met = thicker.met();
      }
    }
    return trials;
  }

  /** How many of them are thinner than the plate's own. */
  private int thinner(List<Gauge> gauges) {
    return (int)
        gauges.stream()
            .filter(gauge -> gauge.thickness() < own.thickness() && !same(gauge, own))
            .count();
  }

  private static boolean same(Gauge a, Gauge b) {
    return a.plies().equals(b.plies()) && Math.abs(a.thickness() - b.thickness()) < 1e-9;
  }

  private LoadPlan.Trial trial(LoadPlan.Compared choice, Gauge gauge) {
    LoadStudy.stopIfTold();
    List<LoadCase> loads = plan.cases().stream().map(CasePlan.Planned::load).toList();
    CompletableFuture<Optional<List<CaseField>>> otherwise =
        CompletableFuture.supplyAsync(() -> other.map(o -> o.of(gauge.section()).solve(loads)));
    List<CaseField> there = held.of(gauge.section()).solve(loads);
    return trial(choice, gauge, CaseField.worse(there, otherwise.join()), false);
  }

  private LoadPlan.Trial trial(
      LoadPlan.Compared choice, Gauge gauge, List<CaseField> fields, boolean isOwn) {
    List<ScrewDemand> demands = new ArrayList<>();
    double margin = Double.POSITIVE_INFINITY;
    double deflection = 0;
    String marginCase = "";
    String deflectionCase = "";
    for (int i = 0; i < fields.size(); i++) {
      CasePlan.Planned planned = plan.cases().get(i);
      if (planned.fall().isPresent()) {
        continue;
      }
      demands.addAll(ScrewUse.demands(hold, fields.get(i)));
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
    boolean screws = choice.screws().test(gauge, demands);
    boolean met = screws && !gauge.section().coupled() && wanted.met(margin, deflection);
    return new LoadPlan.Trial(
        gauge, margin, marginCase, deflection, deflectionCase, screws, met, isOwn);
  }
}
