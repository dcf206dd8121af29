package felloe.hub;

import felloe.geometry.Numbers;

/**
 * A figure of a hub spec with its basis, for showing.
 *
 * @param key the key in the spec's file, such as {@code second.pcd}
 * @param name what it is, such as {@code pitch circle diameter}
 * @param value the figure; angles in degrees
 * @param unit {@code mm}, {@code deg} or empty
 * @param basis where it comes from
 */
public record HubFigure(String key, String name, double value, String unit, Basis basis) {

  /**
   * Refuses a value that is not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public HubFigure {
    Numbers.finite("value", value);
  }
}
