package felloe.joints;

import felloe.grips.GripPlan;
import felloe.grips.PlacedGrip;
import felloe.grips.Pocket;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.Joint;
import felloe.plate.Printer;
import felloe.plate.Requested;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What grip screws need let into the grips: room for heads, traps that hold nuts (across flats and
 * a gap), holes for inserts, cones for countersunk heads. In a flat scale a cone is cut with a
 * countersink afterwards.
 */
public final class GripPockets {

  /** Room round a head or a washer, on the diameter, mm: common practice. */
  private static final double ROUND_A_HEAD = 0.6;

  /** What a hole for an insert or a tap goes on past the screw's end, mm: common practice. */
  private static final double BEYOND = 1;

  private GripPockets() {}

  /** All pockets of all grips, in the order of joints and holes. */
  public static List<Pocket> of(JointPlan plan) {
    List<Pocket> all = new ArrayList<>();
    plan.joints().forEach(joint -> all.addAll(of(plan.grips(), joint)));
    return all;
  }

  /** Those of one joint. */
  static List<Pocket> of(GripPlan grips, PlannedJoint joint) {
    List<Pocket> all = new ArrayList<>();
    double gap = 2 * Requested.or(grips.plate().making().printer(), Printer.USUAL).clearance();
    for (Hole hole : joint.holes()) {
      grip(grips, hole)
          .ifPresent(
              grip -> {
                front(joint, hole, grip).ifPresent(all::add);
                back(joint, hole, grip, gap).ifPresent(all::add);
              });
    }
    return all;
  }

  static Optional<PlacedGrip> grip(GripPlan plan, Hole hole) {
    return plan.grips().stream().filter(grip -> grip.holes().contains(hole)).findFirst();
  }

  private static Optional<Pocket> front(PlannedJoint joint, Hole hole, PlacedGrip grip) {
    double sunk = joint.joint().screw().sunk();
    if (joint.head() == Joint.Head.COUNTERSUNK) {
      return cone(joint, hole, grip, sunk);
    }
    if (sunk <= 0 || !grip.grip().faces().has(Face.FRONT)) {
      return Optional.empty();
    }
    return Optional.of(
        new Pocket(
            hole.label(),
            Face.FRONT,
            hole.centre(),
            Pocket.Form.ROUND,
            joint.frontDiameter() + ROUND_A_HEAD,
            sunk,
            false,
            joint.washer().isPresent() ? "head and washer" : "head"));
  }

  /** As wide as the sharp edge of the cone, which the head itself never has. */
  private static Optional<Pocket> cone(
      PlannedJoint joint, Hole hole, PlacedGrip grip, double sunk) {
    double deep = joint.headSize().coneDepth(hole.diameter());
    if (deep <= 0
        || grip.grip().form() == Grip.Form.SCALE
        || !grip.grip().faces().has(Face.FRONT)) {
      return Optional.empty();
    }
    return Optional.of(
        new Pocket(
            hole.label(),
            Face.FRONT,
            hole.centre(),
            Pocket.Form.ROUND,
            joint.headSize().diameter(),
            sunk + deep,
            Optional.of(new Pocket.Cone(deep, hole.diameter())),
            false,
            "countersunk head"));
  }

  private static Optional<Pocket> back(PlannedJoint joint, Hole hole, PlacedGrip grip, double gap) {
    if (!grip.grip().faces().has(Face.BACK)) {
      return Optional.empty();
    }
    if (joint.tapped().isPresent()) {
      return tapped(joint, hole, grip);
    }
    double sunk = joint.inNut().map(Joint.InNut::sunk).orElse(0.0);
    if (sunk <= 0) {
      return Optional.empty();
    }
    boolean washer = joint.nutWashers() > 0;
    return Optional.of(
        new Pocket(
            hole.label(),
            Face.BACK,
            hole.centre(),
            washer ? Pocket.Form.ROUND : Pocket.Form.HEXAGON,
            washer ? joint.backDiameter() + ROUND_A_HEAD : joint.nut().orElseThrow().flats() + gap,
            sunk,
            false,
            washer ? "nut and washer" : "nut"));
  }

  /** Set into the side toward the plate: pulled, an insert then leans on the plate. */
  private static Optional<Pocket> tapped(PlannedJoint joint, Hole hole, PlacedGrip grip) {
    Joint.InTapped into = joint.tapped().orElseThrow();
    if (into.through()) {
      return Optional.empty();
    }
    double drill =
        into.material() == Joint.Tapped.INSERT
            ? into.hole().orElse(0.0)
            : joint.thread().diameter() - joint.thread().pitch();
    double depth = Math.max(into.depth().orElse(0.0), Math.max(0, joint.reach()) + BEYOND);
    return drill <= 0
        ? Optional.empty()
        : Optional.of(
            new Pocket(
                hole.label(),
                Face.BACK,
                hole.centre(),
                Pocket.Form.ROUND,
                drill,
                Math.min(depth, grip.surface(Face.BACK, hole.centre()) - BEYOND),
                true,
                into.material() == Joint.Tapped.INSERT ? "insert" : "thread"));
  }
}
