package felloe.plate;

/** What sheets weigh, and with what force: one calculation for every answer. */
public final class Weights {

  /** Standard acceleration of gravity, m/s² (CGPM 1901, ISO 80000-3). */
  public static final double GRAVITY = 9.80665;

  private Weights() {}

  /**
   * Mass of a piece of sheet, g.
   *
   * @param area mm²
   * @param thickness mm
   * @param density g/cm³
   */
  public static double sheet(double area, double thickness, double density) {
    return area * thickness * density / 1000;
  }
}
