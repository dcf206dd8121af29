package felloe.service;

import felloe.cockpit.Arms;
import felloe.cockpit.CockpitPlan;
import felloe.cockpit.Hands;
import felloe.cockpit.Reach;
import felloe.cockpit.Shade;
import felloe.cockpit.Sight;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Region;
import felloe.grips.GripPlan;
import felloe.plate.BadInput;
import felloe.plate.Cockpit;
import felloe.plate.Grip;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.review.RimHold;
import java.util.List;
import java.util.Optional;

/**
 * A wheel in its car.
 *
 * @param study the plate
 * @param plan what it sweeps, and how near it comes to what is about it
 * @param hands where they hold it
 * @param arms what becomes of them to the left and to the right; none where nobody sits there
 * @param rim what a hand finds round it
 * @param reach whether its switches are reached from there
 * @param sight what it hides of the instrument, where one is told of
 */
public record CockpitOutcome(
    Study study,
    CockpitPlan plan,
    Hands hands,
    List<Arms> arms,
    List<RimHold> rim,
    List<Reach> reach,
    Optional<Sight> sight) {

  public CockpitOutcome {
    arms = List.copyOf(arms);
    rim = List.copyOf(rim);
    reach = List.copyOf(reach);
  }

  /**
   * Plans it.
   *
   * @throws BadInput when the shape file tells of no cockpit, or a thing holds the wheel
   */
  public static CockpitOutcome of(Study study) {
    Plate plate = study.plate();
    Cockpit cockpit =
        plate
            .cockpit()
            .orElseThrow(
                () ->
                    new BadInput(
                        new Problem(
                            Place.ofFile(plate.stock().place().file()),
                            "cockpit",
                            "",
                            "is missing: nothing is known of the car",
                            "write a section cockpit with column, lock, hub_height and things")));
    double scale = plate.making().gripScale();
    double before = scale;
    double behind = scale;
    double past = 0;
    for (Grip grip : plate.grips()) {
      Grip.Profile profile = grip.profile();
      before = Math.max(before, profile.front() + grip.swell().map(Grip.Swell::front).orElse(0.0));
      behind = Math.max(behind, profile.back() + grip.swell().map(Grip.Swell::back).orElse(0.0));
      past = Math.max(past, profile.pastEdge() + grip.swell().map(Grip.Swell::edge).orElse(0.0));
    }
    CockpitPlan plan = CockpitPlan.of(plate, cockpit, grown(plate.outline(), past), behind, before);
    GripPlan grips = study.joints().grips();
    Hands hands = Hands.of(plate, grips.grips());
    return new CockpitOutcome(
        study,
        plan,
        hands,
        Arms.of(plate, cockpit, plan.seated(), hands),
        RimHold.along(plate, grips),
        Reach.of(plate, plan.seated(), hands, behind, before),
        Sight.of(
            plate,
            cockpit,
            plan.seated(),
            Shade.of(plate, grips.grips(), cockpit.stack()),
            plan.back(),
            plan.front()));
  }

  /** The outline with what sticks out past it at its widest, all round. */
  private static Contour grown(Contour outline, double past) {
    return past > 0 ? Offset.of(Region.of(outline), past).get(0).outer() : outline;
  }

  public Plate plate() {
    return study.plate();
  }

  /** Whether a hand has its room beside everything, and the plate passes its review. */
  public boolean well() {
    return plan.well() && !study.fails();
  }
}
