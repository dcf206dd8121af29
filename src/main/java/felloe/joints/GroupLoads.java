package felloe.joints;

import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint.HandLoads;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts the hands' loads on the hub screws of a plate. */
final class GroupLoads {

  private GroupLoads() {}

  /** The loads; empty when no hub screw is planned, or when one alone cannot carry the torque. */
  static Optional<GroupLoad> of(
      Plate plate, List<PlannedJoint> joints, Fasteners fasteners, Judging judging) {
    List<PlannedJoint> hub = joints.stream().filter(j -> j.role() == HoleRole.BOLT).toList();
    List<Hole> holes = hub.stream().flatMap(j -> j.holes().stream()).toList();
    if (holes.isEmpty()) {
      return Optional.empty();
    }
    BoltGroup group = new BoltGroup(holes.stream().map(Hole::centre).toList());
    return group.carriesTorque()
        ? Optional.of(load(plate, hub, holes, group, fasteners, judging))
        : Optional.empty();
  }

  private static GroupLoad load(
      Plate plate,
      List<PlannedJoint> hub,
      List<Hole> holes,
      BoltGroup group,
      Fasteners fasteners,
      Judging judging) {
    HandLoads own =
        hub.stream()
            .map(j -> j.joint().loads())
            .filter(l -> !l.usual())
            .findFirst()
            .orElse(HandLoads.USUAL);
    double reach = plate.outline().farthest(group.centroid());
    double torque = own.torque().orElse(fasteners.couple().value() * 2 * reach / 1000);
    double pull = own.pull().orElse(fasteners.pull().value());
    double push = own.push().orElse(fasteners.push().value());
    List<String> basis =
        List.of(
            basis("torque", own.torque(), fasteners.couple()),
            basis("pull", own.pull(), fasteners.pull()),
            basis("push", own.push(), fasteners.push()));
    List<ScrewDemand> demands = new ArrayList<>();
    boolean asWritten = own.torque().isPresent() || own.pull().isPresent();
    if (asWritten) {
      shear(holes, "torque and pull of the shape file", group.worst(pull, torque * 1000), demands);
    } else {
      shear(holes, "both hands turn", group.worst(0, torque * 1000), demands);
      shear(holes, "one hand turns", group.worst(pull, pull * reach), demands);
    }
    double direct = push / holes.size();
    Optional<List<Double>> tilts = group.worstTilt(push * reach);
    for (int i = 0; i < holes.size() && tilts.isPresent(); i++) {
      double stiff = tilts.get().get(i) + direct;
      demands.add(
          new ScrewDemand(
              holes.get(i).label(), "one hand at the rim", judging.prying().value() * stiff, 0));
    }
    return new GroupLoad(torque, pull, push, reach, basis, tilts.isPresent(), demands);
  }

  private static void shear(
      List<Hole> holes, String cause, List<Double> shares, List<ScrewDemand> demands) {
    for (int i = 0; i < holes.size(); i++) {
      demands.add(new ScrewDemand(holes.get(i).label(), cause, 0, shares.get(i)));
    }
  }

  private static String basis(String name, Optional<Double> own, SourcedFigure usual) {
    return name + ": " + (own.isPresent() ? "set in the shape file" : usual.basis());
  }
}
