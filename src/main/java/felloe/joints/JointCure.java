package felloe.joints;

/**
 * One figure of the shape file that mends a joint when it is changed.
 *
 * @param joint the joint, such as {@code hub}
 * @param key where the figure stands in the shape file, such as {@code bolt_circles[0].count};
 *     empty before {@code washer} or {@code screw} when the shape file has no such joint yet
 * @param figure which figure
 * @param from what it is now
 * @param to what mends it
 */
public record JointCure(String joint, String key, Figure figure, String from, String to) {

  /** A figure that may be changed. */
  public enum Figure {
    /** The washer under the head. */
    WASHER,
    /** The strength class of the screws. */
    STRENGTH,
    /** The length of the screws, mm. */
    LENGTH,
    /** The thickness of the stock, mm. */
    THICKNESS,
    /** How many screws stand on the hub's circle; the hub must have as many. */
    COUNT,
    /** The diameter of that circle, mm; the hub must have the same. */
    CIRCLE
  }
}
