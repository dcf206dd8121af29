package felloe.laminate;

import felloe.geometry.Numbers;

/**
 * Three figures of a point in the plane: strains (with engineering shear), or stresses in MPa.
 * Which axes they are told in, the plate's or the ply's, stands where one is handed out.
 *
 * @param first along x, or along the ply's axis 1
 * @param second along y, or along the ply's axis 2
 * @param shear between both
 */
public record PlaneTriple(double first, double second, double shear) {

  public static final PlaneTriple ZERO = new PlaneTriple(0, 0, 0);

  /**
   * Refuses figures that are not finite.
   *
   * @throws IllegalArgumentException naming the field
   */
  public PlaneTriple {
    Numbers.finite("first", first);
    Numbers.finite("second", second);
    Numbers.finite("shear", shear);
  }

  /** A strain of the plate's axes, told in axes turned by so many degrees. */
  public PlaneTriple strainTurned(double degrees) {
    double c = Angles.cosine(degrees);
    double s = Angles.sine(degrees);
    return new PlaneTriple(
        c * c * first + s * s * second + c * s * shear,
        s * s * first + c * c * second - c * s * shear,
        2 * c * s * (second - first) + (c * c - s * s) * shear);
  }

  /** A stress of the plate's axes, told in axes turned by so many degrees. */
  public PlaneTriple stressTurned(double degrees) {
    double c = Angles.cosine(degrees);
    double s = Angles.sine(degrees);
    return new PlaneTriple(
        c * c * first + s * s * second + 2 * c * s * shear,
        s * s * first + c * c * second - 2 * c * s * shear,
        c * s * (second - first) + (c * c - s * s) * shear);
  }

  /** What is left when another is taken away. */
  public PlaneTriple minus(PlaneTriple other) {
    return new PlaneTriple(first - other.first, second - other.second, shear - other.shear);
  }

  /** The three figures, a fresh array. */
  public double[] figures() {
    return new double[] {first, second, shear};
  }
}
