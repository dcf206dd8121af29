package felloe.joints;

import felloe.plate.SourcedFigure;

/**
 * Strength of a plate at a screw, MPa: estimates to judge a joint by.
 *
 * @param bearing of the screw against the side of its hole
 * @param shear of a plug torn out toward an edge
 * @param tension of the section that is left beside a hole
 * @param face pressure under a head that the face stands for long
 */
public record Allowables(
    SourcedFigure bearing, SourcedFigure shear, SourcedFigure tension, SourcedFigure face) {

  /**
   * Refuses strengths that are not above zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Allowables {
    if (!(bearing.value() > 0 && shear.value() > 0 && tension.value() > 0 && face.value() > 0)) {
      throw new IllegalArgumentException("strengths must be above zero");
    }
  }
}
