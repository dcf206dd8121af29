package felloe.load;

/** Plane strains. */
final class Strains {

  private Strains() {}

  /** The largest direct strain in any direction, without sign (Mohr's circle). */
  static double largest(double x, double y, double shear) {
    double middle = (x + y) / 2;
    double radius = Math.hypot((x - y) / 2, shear / 2);
    return Math.max(Math.abs(middle - radius), Math.abs(middle + radius));
  }
}
