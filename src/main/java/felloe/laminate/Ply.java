package felloe.laminate;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;

/**
 * One layer of a stack.
 *
 * @param material what it is made of
 * @param thickness mm, as cured
 * @param angle of axis 1 from the plate's x, degrees counter-clockwise as the driver sees the
 *     wheel; degrees, since a stack's usual angles are whole ones and are turned by without
 *     rounding
 */
public record Ply(PlyMaterial material, double thickness, double angle) {

  /**
   * Refuses figures that are not finite and a thickness that is not positive.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Ply {
    Numbers.positive("thickness", thickness);
    Numbers.finite("angle", angle);
  }

  /** Stiffness along the plate's axes, MPa. */
  public PlaneStiffness stiffness() {
    return material.reduced().turned(angle);
  }

  /**
   * Whether two plies are the same to a plate: alike in material and thickness, and of one
   * direction (half a turn changes nothing, nor does a quarter in a balanced cloth).
   */
  public boolean sameAs(Ply other) {
    return material.equals(other.material)
        && Math.abs(thickness - other.thickness) <= Tolerances.ROUNDING * thickness
        && sameDirection(other);
  }

  /** Whether axis 1 of both points one way; in a balanced cloth, axis 1 or 2. */
  public boolean sameDirection(Ply other) {
    double period = material.square() && other.material.square() ? 90 : 180;
    double turn = Math.abs(angle - other.angle) % period;
    return Math.min(turn, period - turn) <= Tolerances.ROUNDING;
  }
}
