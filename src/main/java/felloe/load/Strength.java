package felloe.load;

/**
 * What a plate's material stands. A use of 1 is the edge of failure at first yield, first ply or
 * first crack; it grows in step with the load.
 *
 * <p>Strains are those of the middle plane (x, y, whole shear angle) and curvatures, 1/mm, by which
 * a fibre at height z is strained by z times them.
 */
public interface Strength {

  /** The highest use through the thickness. */
  double use(double ex, double ey, double gxy, double kx, double ky, double kxy);

  /** Where through the thickness the use is highest, and what it is there. */
  Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy);

  /** How many plies it is laid up of; 0 where it has none. */
  default int plies() {
    return 0;
  }

  /**
   * The use of one ply, at the worse of its faces.
   *
   * @param ply number from 1 at the back
   */
  default double plyUse(
      int ply, double ex, double ey, double gxy, double kx, double ky, double kxy) {
    throw new IllegalArgumentException("there is no ply " + ply);
  }

  /**
   * The worst place through the thickness.
   *
   * @param use 1 is the edge of failure
   * @param z height above the middle plane, mm
   * @param ply number from 1 at the back; 0 where the plate has no plies
   * @param measure what {@code stress} is, in words
   * @param stress MPa
   * @param strain the largest direct strain there, without sign
   */
  record Worst(double use, double z, int ply, String measure, double stress, double strain) {}
}
