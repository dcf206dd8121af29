package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.measure.CircleFit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Finds equal holes that stand evenly on a circle. */
final class HoleRings {

  /** Fewer holes than this make no ring: two stand evenly on any circle through them. */
  private static final int FEWEST = 3;

  /** Holes are tried on a circle through three of them that they miss by no more than this, mm. */
  private static final double NEAR = 0.15;

  /** More holes of one diameter than this are not looked through. */
  private static final int MOST = 60;

  private HoleRings() {}

  /**
   * A ring.
   *
   * @param centre its middle
   * @param radius of the circle through the holes' middles, mm
   * @param holes counter-clockwise
   */
  record Found(Point centre, double radius, List<Arc> holes) {

    PlateOutline.Ring about() {
      double mean = holes.stream().mapToDouble(Arc::radius).average().orElseThrow();
      // Straight up first where one stands there: it is where people count from.
      double up = Math.PI / 2;
      Arc first =
          holes.stream().min(Comparator.comparingDouble(h -> away(angle(h), up))).orElseThrow();
      double step = 2 * Math.PI / holes.size();
      // The mean of what each hole says of the first one's direction.
      double sum = 0;
      for (Arc hole : holes) {
        double turn = angle(hole) - angle(first);
        sum += turn - step * Math.rint(turn / step);
      }
      return new PlateOutline.Ring(
          holes.size(),
          2 * radius,
          2 * mean,
          angle(first) + sum / holes.size(),
          List.of(),
          List.of());
    }

    private double angle(Arc hole) {
      return hole.centre().minus(centre).angle();
    }
  }

  private static double away(double a, double b) {
    return Math.abs(Math.atan2(Math.sin(a - b), Math.cos(a - b)));
  }

  /**
   * All rings, those with the most holes first; a hole may stand on several.
   *
   * @param widest hole that is looked at, mm
   * @param same places and diameters within this are one, mm
   * @param alike the same of the diameters of holes that stand evenly, as what was measured may
   *     differ
   */
  static List<Found> all(List<Arc> circles, double widest, double same, double alike) {
    List<Found> rings = new ArrayList<>();
    List<Arc> left =
        new ArrayList<>(circles.stream().filter(c -> 2 * c.radius() <= widest).toList());
    while (!left.isEmpty()) {
      double radius = left.get(0).radius();
      List<Arc> equal =
          left.stream()
              .filter(c -> Math.abs(c.radius() - radius) * 2 <= Math.max(same, alike))
              .toList();
      left.removeAll(equal);
      if (equal.size() >= FEWEST && equal.size() <= MOST) {
        rings.addAll(among(equal, same));
      }
    }
    rings.sort(
        Comparator.comparingInt((Found f) -> -f.holes().size()).thenComparingDouble(Found::radius));
    return rings;
  }

  /** The circles through three of the holes that others stand evenly on as well. */
  private static List<Found> among(List<Arc> equal, double same) {
    List<Found> rings = new ArrayList<>();
    Set<List<Arc>> seen = new HashSet<>();
    int n = equal.size();
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        for (int k = j + 1; k < n; k++) {
          if (rings.size() > 2_000) {
            return rings;
          }
          through(equal, i, j, k, seen, same, rings);
        }
      }
    }
    return rings;
  }

  private static void through(
      List<Arc> equal, int i, int j, int k, Set<List<Arc>> seen, double same, List<Found> rings) {
    Optional<CircleFit.Circle> circle =
        CircleFit.TAUBIN.of(
            List.of(equal.get(i).centre(), equal.get(j).centre(), equal.get(k).centre()));
    if (circle.isEmpty() || circle.get().radius() > 500) {
      return;
    }
    List<Arc> on =
        equal.stream()
            .filter(
                c ->
                    Math.abs(c.centre().distance(circle.get().centre()) - circle.get().radius())
                        <= Math.max(NEAR, same))
            .toList();
    if (on.size() >= FEWEST && seen.add(on)) {
      even(on, same).ifPresent(rings::add);
    }
  }

  private static Optional<Found> even(List<Arc> on, double same) {
    Optional<CircleFit.Circle> circle = CircleFit.TAUBIN.of(on.stream().map(Arc::centre).toList());
    if (circle.isEmpty()) {
      return Optional.empty();
    }
    Point centre = circle.get().centre();
    List<Arc> round =
        on.stream()
            .sorted(Comparator.comparingDouble(c -> c.centre().minus(centre).bearing()))
            .toList();
    double step = 2 * Math.PI / round.size();
    // By what all say together: one alone may be off.
    double first = round.get(0).centre().minus(centre).angle();
    double sum = 0;
    for (int i = 0; i < round.size(); i++) {
      double turn = round.get(i).centre().minus(centre).angle() - first - i * step;
      sum += Math.atan2(Math.sin(turn), Math.cos(turn));
    }
    first += sum / round.size();
    for (int i = 0; i < round.size(); i++) {
      Point stands = centre.plus(Point.polar(circle.get().radius(), first + i * step));
      if (stands.distance(round.get(i).centre()) > same) {
        return Optional.empty();
      }
    }
    return Optional.of(new Found(centre, circle.get().radius(), round));
  }
}
