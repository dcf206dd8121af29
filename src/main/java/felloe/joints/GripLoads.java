package felloe.joints;

import felloe.plate.Hole;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.List;

/**
 * What the screws of grips carry: a hand's force, shared by two of them where two lie within its
 * breadth (common practice). A scale on one face alone is pulled off by the hand; between two
 * scales the far one presses on the plate, and the screws are not pulled.
 */
final class GripLoads {

  private GripLoads() {}

  static List<ScrewDemand> of(List<PlannedJoint> joints, Fasteners fasteners, Judging judging) {
    List<PlannedJoint> grips = joints.stream().filter(j -> j.role() == HoleRole.GRIP).toList();
    List<Hole> holes = grips.stream().flatMap(j -> j.holes().stream()).toList();
    List<ScrewDemand> demands = new ArrayList<>();
    for (PlannedJoint joint : grips) {
      boolean oneFace = faces(joint) == 1;
      for (Hole hole : joint.holes()) {
        boolean shared =
            holes.stream()
                .anyMatch(
                    other ->
                        other != hole
                            && other.centre().distance(hole.centre()) <= judging.hand().value());
        double part = shared ? 0.5 : 1;
        demands.add(
            new ScrewDemand(
                hole.label(),
                "one hand on the grip",
                oneFace ? part * fasteners.push().value() : 0,
                part * fasteners.pull().value()));
      }
    }
    return demands;
  }

  /** On how many faces of the plate something lies. */
  private static int faces(PlannedJoint joint) {
    boolean before = false;
    boolean behind = false;
    boolean passed = false;
    for (ClampedPart part : joint.parts()) {
      if (part.name().equals(ClampedPart.PLATE)) {
        passed = true;
      } else if (!part.name().contains("washer")) {
        before |= !passed;
        behind |= passed;
      }
    }
    return (before ? 1 : 0) + (behind ? 1 : 0);
  }
}
