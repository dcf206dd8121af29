package felloe.drawing;

import felloe.geometry.Numbers;
import java.util.Arrays;

/**
 * A value at each corner of triangles that cover an area, such as a deflection over a plate;
 * between corners it changes evenly.
 *
 * <p>The arrays are not copied and must not be changed.
 *
 * @param x abscissas of the points, mm
 * @param y ordinates
 * @param corners three numbers of points a triangle, counter-clockwise; triangles that meet share
 *     whole sides
 * @param values of the points
 */
public record NodalField(double[] x, double[] y, int[] corners, double[] values) {

  /**
   * Checks the arrays.
   *
   * @throws IllegalArgumentException when they do not fit each other, when there is no triangle,
   *     when a corner is none of the points, or when a figure is not finite
   */
  public NodalField {
    if (x.length != y.length || x.length != values.length) {
      throw new IllegalArgumentException("x, y and values must be of one length");
    }
    if (corners.length == 0 || corners.length % 3 != 0) {
      throw new IllegalArgumentException("corners must hold three points a triangle");
    }
    if (Arrays.stream(corners).anyMatch(c -> c < 0 || c >= values.length)) {
      throw new IllegalArgumentException("corners must be numbers of points");
    }
    finite("x", x);
    finite("y", y);
    finite("values", values);
  }

  private static void finite(String name, double[] figures) {
    for (double figure : figures) {
      Numbers.finite(name, figure);
    }
  }

  /** The least value. */
  public double least() {
    return Arrays.stream(values).min().orElseThrow();
  }

  /** The greatest value. */
  public double most() {
    return Arrays.stream(values).max().orElseThrow();
  }
}
