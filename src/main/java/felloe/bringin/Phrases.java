package felloe.bringin;

import felloe.geometry.Numbers;
import felloe.geometry.Point;

/** Words that messages of this room share. */
final class Phrases {

  private Phrases() {}

  static String gap(Point a, Point b, double apart) {
    return "has a line that ends at "
        + a
        + " and at "
        + b
        + ", "
        + Numbers.brief(apart, 3)
        + " mm away, and so does not close";
  }
}
