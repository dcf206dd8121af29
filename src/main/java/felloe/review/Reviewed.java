package felloe.review;

import felloe.grips.GripStation;
import felloe.grips.GripStations;
import felloe.grips.PlacedGrip;
import felloe.joints.JointPlan;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * What the rules look at.
 *
 * @param plate the plate
 * @param joints the plan of its screws, made for the hub that it goes on
 * @param grips its grips with places along them, in the order of the plan
 */
public record Reviewed(Plate plate, JointPlan joints, List<Held> grips) {

  public Reviewed {
    grips = List.copyOf(grips);
  }

  /**
   * A grip on the rim.
   *
   * @param grip where it lies
   * @param stations places along it
   */
  public record Held(PlacedGrip grip, List<GripStation> stations) {

    public Held {
      stations = List.copyOf(stations);
    }
  }

  /** A plate with its plan. */
  static Reviewed of(Plate plate, JointPlan joints) {
    List<Held> grips = new ArrayList<>();
    for (PlacedGrip grip : joints.grips().grips()) {
      grips.add(new Held(grip, GripStations.of(plate, grip)));
    }
    return new Reviewed(plate, joints, grips);
  }
}
