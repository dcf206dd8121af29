package felloe.cli;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Figure;

/** How figures look in text for people. */
final class Figures {

  private Figures() {}

  /** A length or another figure with its unit, such as {@code 4.25 mm}. */
  static String of(double value, String unit) {
    return Numbers.brief(value, decimals(unit)) + (unit.isEmpty() ? "" : " " + unit);
  }

  /** A figure with its unit. */
  static String of(Figure figure) {
    return of(figure.value(), figure.unit());
  }

  /** A figure alone, with as many decimals as its unit asks for, zeros kept. */
  static String column(double value, String unit) {
    return Numbers.fixed(value, decimals(unit));
  }

  /** A place on the plate. */
  static String at(Point p) {
    return "(" + Numbers.fixed(p.x(), 1) + ", " + Numbers.fixed(p.y(), 1) + ")";
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
