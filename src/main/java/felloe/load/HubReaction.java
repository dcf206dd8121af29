package felloe.load;

import java.util.ArrayList;
import java.util.List;

/** What the hub gives to the plate. */
final class HubReaction {

  private final Support support;
  private final HeldPoints held;

  HubReaction(Support support, HeldPoints held) {
    this.support = support;
    this.held = held;
  }

  /** The bolts' forces from the nodal forces out of the plane and in it. */
  List<CaseField.BoltForce> bolts(double[] out, double[] flat) {
    List<CaseField.BoltForce> bolts = new ArrayList<>();
    if (support instanceof Support.Bolted bolted) {
      for (int b = 0; b < bolted.bolts().size(); b++) {
        double z = 0;
        double x = 0;
        double y = 0;
        for (int node : held.bolts().get(b)) {
          z += out[3 * node];
          x += flat[3 * node];
          y += flat[3 * node + 1];
        }
        // A bolt pulls the plate onto the hub, away from the driver.
        double tension = Math.max(0, -z);
        String label = bolted.bolts().get(b).label();
        bolts.add(new CaseField.BoltForce(label, tension, Math.hypot(x, y)));
      }
    }
    return bolts;
  }

  /** The force and moment about the hub axis that balance the hands. */
  static CaseField.HubForce balancing(LoadCase load) {
    double x = 0;
    double y = 0;
    double z = 0;
    double tiltX = 0;
    double tiltY = 0;
    double torque = 0;
    for (HandForce f : load.forces()) {
      x -= f.x();
      y -= f.y();
      z -= f.z();
      tiltX -= f.at().y() * f.z();
      tiltY += f.at().x() * f.z();
      torque -= f.at().x() * f.y() - f.at().y() * f.x();
    }
    return new CaseField.HubForce(x, y, z, tiltX, tiltY, torque);
  }
}
