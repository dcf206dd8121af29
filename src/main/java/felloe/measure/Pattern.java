package felloe.measure;

import felloe.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * The circle that the holes stand on. Bounds hold in 95 of 100 cases.
 *
 * @param count number of holes
 * @param pcd pitch circle diameter, mm
 * @param pcdLow lower bound, mm
 * @param pcdHigh upper bound, mm
 * @param pcdError standard error, mm
 * @param centre of the circle; the origin where no edge was measured
 * @param centreHalfX half-width of the bounds of the centre's x, mm; 0 where no edge was measured
 * @param centreHalfY the same of its y, mm
 * @param startAngle direction of the first hole from the centre, radians counter-clockwise from +x;
 *     straight up where no edge was measured
 * @param startHalf half-width of its bounds, radians; 0 where no edge was measured
 * @param size of the holes or screws, when the readings tell it and all are alike, mm
 * @param sizeError standard error of it, mm
 * @param spacing whether they stand evenly
 * @param unevenness how far a hole is from where the nearest even ring has it, at most, mm; 0 where
 *     an even ring was taken for granted
 * @param evenPcd what the diameter is if the holes do stand evenly, where that was not taken for
 *     granted and the readings do not speak against it
 * @param readsAs usual figures within the bounds: whole and half millimetres, sixteenths of an inch
 */
public record Pattern(
    int count,
    double pcd,
    double pcdLow,
    double pcdHigh,
    double pcdError,
    Point centre,
    double centreHalfX,
    double centreHalfY,
    double startAngle,
    double startHalf,
    Optional<Double> size,
    double sizeError,
    Spacing spacing,
    double unevenness,
    Optional<Bounded> evenPcd,
    List<String> readsAs) {

  /** How the holes stand round the circle. */
  public enum Spacing {
    /** Evenly, as far as the readings tell. */
    EVEN("even"),
    /** Not evenly. */
    UNEVEN("uneven"),
    /** Taken as even: there are too few readings to tell. */
    ASSUMED("taken as even");

    private final String words;

    Spacing(String words) {
      this.words = words;
    }

    /** In words, such as {@code taken as even}. */
    public String words() {
      return words;
    }
  }

  /**
   * A figure with its bounds.
   *
   * @param value mm
   * @param low lower bound, mm
   * @param high upper bound, mm
   */
  public record Bounded(double value, double low, double high) {}

  public Pattern {
    readsAs = List.copyOf(readsAs);
  }
}
