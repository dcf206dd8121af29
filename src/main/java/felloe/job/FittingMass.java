package felloe.job;

import felloe.joints.HeadSize;
import felloe.joints.NutSize;
import felloe.joints.PlannedJoint;
import felloe.joints.StartingTorque;
import felloe.joints.WasherSize;

/**
 * What screws, washers and nuts of steel weigh, g, from above: of the nominal thread's full
 * diameter, without socket, grooves and chamfers, which make them up to a fifth lighter.
 */
final class FittingMass {

  /** Density of steel, g/mm³: common practice, 7.85 g/cm³. */
  private static final double STEEL = 7.85e-3;

  /** Where the figures come from. */
  static final String BASIS =
      "computed from the standard's sizes as solid steel of 7.85 g/cm3, so at most";

  private FittingMass() {}

  /** One screw of a joint. */
  static double screw(PlannedJoint joint) {
    double d = joint.thread().diameter();
    HeadSize head = joint.headSize();
    double length = joint.length();
    if (head.angle() == 0) {
      return STEEL * (disc(d) * length + disc(head.diameter()) * head.height());
    }
    // A countersunk screw's length is overall; its head is a cone down to the shank.
    double cone = head.coneDepth(d);
    double r = d / 2;
    double sharp = head.diameter() / 2;
    double volume = Math.PI / 3 * cone * (sharp * sharp + sharp * r + r * r);
    return STEEL * (volume + disc(d) * Math.max(0, length - cone));
  }

  static double washer(WasherSize washer) {
    return STEEL * StartingTorque.ring(washer.diameter(), washer.hole()) * washer.thickness();
  }

  /** A hexagon nut: 3 √3/8 of its corners' square, less the thread. */
  static double nut(NutSize nut, double thread) {
    double hexagon = 3 * Math.sqrt(3) / 8 * nut.corners() * nut.corners();
    return STEEL * (hexagon - disc(thread)) * nut.height();
  }

  private static double disc(double diameter) {
    return StartingTorque.ring(diameter, 0);
  }
}
