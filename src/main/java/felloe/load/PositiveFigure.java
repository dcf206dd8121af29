package felloe.load;

/** Refusal of figures that must be above 0. */
final class PositiveFigure {

  private PositiveFigure() {}

  static void zero(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above 0");
    }
  }
}
