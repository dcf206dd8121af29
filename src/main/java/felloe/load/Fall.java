package felloe.load;

import felloe.geometry.AreaProperties;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Weights;

/**
 * A fall that the plate's own springing takes up.
 *
 * @param height of the fall, mm
 * @param mass that falls with the plate, kg
 */
public record Fall(double height, double mass) {

  /** Refuses figures that are not finite. */
  public Fall {
    Numbers.finite("height", height);
    Numbers.finite("mass", mass);
  }

  /**
   * The static force that bends the plate as far as the fall does, N. The wheel strikes with its
   * rim, square to the plate, and turns away under the blow: what is felt there is the mass m with
   * 1/m = 1/M + r²/I. What its weight does on its way, height and deflection, is what the bent
   * plate holds as a spring, F²/2k. Sources: impact of a rigid body at a point, and suddenly
   * applied loads of machine-design textbooks, F = m g + sqrt((m g)² + 2 k m g h).
   *
   * @param plate mass of the plate, kg
   * @param inertia of the plate about the axis that it turns about, kg mm²
   * @param reach from there to where it strikes, mm
   * @param stiffness of the plate where it strikes, N/mm
   */
  double force(double plate, double inertia, double reach, double stiffness) {
    double felt = 1 / (1 / (plate + mass) + reach * reach / inertia);
    double weight = felt * Weights.GRAVITY;
    return weight + Math.sqrt(weight * weight + 2 * stiffness * weight * height);
  }

  /** The same for a plate of a region, struck at its first force. */
  double force(Region region, Gauge gauge, CaseField trial) {
    AreaProperties area = region.properties();
    HandForce blow = trial.load().forces().get(0);
    Point along = blow.at().unit();
    double second =
        area.iyy() * along.x() * along.x()
            + area.ixx() * along.y() * along.y()
            + 2 * area.ixy() * along.x() * along.y();
    double kilograms = gauge.mass() / 1000;
    return force(
        kilograms,
        kilograms * second / area.area(),
        blow.at().norm(),
        blow.size() / trial.atLoad());
  }
}
