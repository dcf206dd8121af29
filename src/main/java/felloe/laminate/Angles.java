package felloe.laminate;

/** Sine and cosine of degrees, exact where a stack's usual angles make them 0 or 1. */
final class Angles {

  private Angles() {}

  static double cosine(double degrees) {
    return sine(degrees + 90);
  }

  static double sine(double degrees) {
    double turn = degrees % 360;
    double a = turn < 0 ? turn + 360 : turn;
    if (a == 0 || a == 180) {
      return 0;
    }
    if (a == 90) {
      return 1;
    }
    return a == 270 ? -1 : Math.sin(Math.toRadians(a));
  }
}
