package felloe.load;

import felloe.geometry.Point;
import felloe.joints.BoltGroup;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the hub's screws give when the plate is taken as clamped: the hub's force and moments shared
 * out by the elastic bolt group, without prying.
 */
final class SharedBolts {

  private SharedBolts() {}

  /** The forces; empty when the screws cannot carry every tilt and torque. */
  static List<CaseField.BoltForce> of(List<Hole> holes, CaseField.HubForce hub) {
    if (holes.isEmpty()) {
      return List.of();
    }
    BoltGroup group = new BoltGroup(holes.stream().map(Hole::centre).toList());
    Point centre = group.centroid();
    // The hub's force balances the hands', so that the hands' is its opposite.
    double pull = -hub.z();
    Point moment = new Point(-hub.tiltX() - centre.y() * pull, -hub.tiltY() + centre.x() * pull);
    Optional<List<Double>> tilts = group.tilts(moment);
    if (tilts.isEmpty() || !group.carriesTorque()) {
      return List.of();
    }
    List<Point> shares = group.shares(new Point(-hub.x(), -hub.y()), Point.ORIGIN, -hub.torque());
    List<CaseField.BoltForce> bolts = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      double tension = Math.max(0, pull / holes.size() + tilts.get().get(i));
      bolts.add(new CaseField.BoltForce(holes.get(i).label(), tension, shares.get(i).norm()));
    }
    return bolts;
  }
}
