package felloe.measure;

import felloe.geometry.Point;
import java.util.Optional;

/**
 * A hole as the readings have it.
 *
 * @param label its label
 * @param at its centre, mm; see {@link Survey} for the axes
 * @param errorX standard error of x, mm
 * @param errorY standard error of y, mm
 * @param covariance of x and y, mm²
 * @param size its diameter, when the readings tell it, mm
 * @param sizeError standard error of that, mm
 */
public record FoundHole(
    String label,
    Point at,
    double errorX,
    double errorY,
    double covariance,
    Optional<Double> size,
    double sizeError) {

  /** Half-width of the wider axis of the ellipse that holds the centre in 95 of 100 cases, mm. */
  public double within() {
    double a = errorX * errorX;
    double b = errorY * errorY;
    double half = (a - b) / 2;
    double greatest = (a + b) / 2 + Math.sqrt(half * half + covariance * covariance);
    // The 95 % point of chi squared with two degrees of freedom is -2 ln 0.05.
    return Math.sqrt(-2 * Math.log(0.05) * Math.max(0, greatest));
  }
}
