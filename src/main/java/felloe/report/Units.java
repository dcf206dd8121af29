package felloe.report;

import felloe.document.Quantity;
import felloe.plate.Figure;

/** With how many places figures of a unit are told. */
final class Units {

  private Units() {}

  /** A figure without zeros at its end. */
  static Quantity brief(double value, String unit) {
    return Quantity.brief(value, decimals(unit), unit);
  }

  /** A figure with as many places as its unit asks for. */
  static Quantity fixed(double value, String unit) {
    return Quantity.fixed(value, decimals(unit), unit);
  }

  /** A figure of a finding. */
  static Quantity brief(Figure figure) {
    return brief(figure.value(), figure.unit());
  }

  private static int decimals(String unit) {
    return switch (unit) {
      case "g", "mm2" -> 1;
      case "mm4" -> 0;
      case "N m" -> 3;
      default -> 2;
    };
  }
}
