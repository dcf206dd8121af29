package felloe.shape;

import felloe.geometry.*;
import java.util.*;

final class HoleRows {
  private HoleRows() {}

  static List<Point> line(Point a, Point b, int n) {
    return List.of();
  }

  static List<Point> arc(Point c, double r, double f, double t, int n) {
    return List.of();
  }

  static List<Point> edge(Contour o, double i, double f, double t, int n) {
    return List.of();
  }
}
