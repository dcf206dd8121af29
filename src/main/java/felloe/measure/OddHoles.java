package felloe.measure;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the holes that are the odd ones out of a drilled pattern: the fewest without which all
 * others lie where they were meant. One hole that is off draws the fit of all with it, so that
 * every hole looks off by a part; without it the others tell where it should be.
 *
 * <p>Every choice of one hole, then of two and so on up to {@link #MOST} is tried, each laid on its
 * places by least squares. A choice will do when each hole that is left keeps within its reach. The
 * one whose others agree best is the answer, if no other choice of as many does nearly as well.
 */
final class OddHoles {

  /** More holes off than this is another pattern, not some odd holes. */
  private static final int MOST = 3;

  /** Choices whose squares are within this factor of the best are as good. */
  private static final double AS_GOOD = 4;

  private final List<Point> found;
  private final List<Point> meant;
  private final List<Double> reach;
  private final double floor;

  private OddHoles(List<Point> found, List<Point> meant, List<Double> reach, double floor) {
    this.found = found;
    this.meant = meant;
    this.reach = reach;
    this.floor = floor;
  }

  private record Choice(List<Integer> odd, double squares) {}

  /**
   * The odd holes by their index; none when the holes have no odd ones, or when the readings do not
   * tell which they are.
   *
   * @param found where the holes are, seen from the same side as {@code meant}
   * @param meant where they should be
   * @param reach how far each may be off and still be in its place, mm
   * @param floor what the readings leave open about a hole, mm
   */
  static List<Integer> of(List<Point> found, List<Point> meant, List<Double> reach, double floor) {
    OddHoles search = new OddHoles(found, meant, reach, floor);
    int n = found.size();
    if (search.choice(List.of()).isPresent()) {
      return List.of();
    }
    for (int count = 1; count <= MOST && n - count > count && n - count >= 2; count++) {
      List<Choice> good = new ArrayList<>();
      search.choose(count, 0, new ArrayList<>(), good);
      if (!good.isEmpty()) {
        return only(good);
      }
    }
    return List.of();
  }

  private static List<Integer> only(List<Choice> good) {
    Choice best = good.get(0);
    for (Choice one : good) {
      best = one.squares() < best.squares() ? one : best;
    }
    for (Choice one : good) {
      if (one != best && one.squares() <= AS_GOOD * best.squares()) {
        return List.of();
      }
    }
    return best.odd();
  }

  private void choose(int count, int from, List<Integer> odd, List<Choice> good) {
    if (odd.size() == count) {
      choice(odd).ifPresent(good::add);
      return;
    }
    for (int i = from; i < found.size(); i++) {
      odd.add(i);
      choose(count, i + 1, odd, good);
      odd.remove(odd.size() - 1);
    }
  }

  /** The choice, if all holes that it leaves keep within their reach and those it names do not. */
  private Optional<Choice> choice(List<Integer> odd) {
    List<Point> from = new ArrayList<>();
    List<Point> to = new ArrayList<>();
    for (int i = 0; i < found.size(); i++) {
      if (!odd.contains(i)) {
        from.add(found.get(i));
        to.add(meant.get(i));
      }
    }
    RigidTransform motion = Alignment.squares(from, to, false);
    // Readings are never surer than this, so choices that differ by less are alike.
    double squares = from.size() * floor * floor;
    for (int i = 0; i < found.size(); i++) {
      double off = motion.of(found.get(i)).distance(meant.get(i));
      boolean keeps = off <= reach.get(i);
      if (keeps == odd.contains(i)) {
        return Optional.empty();
      }
      squares += odd.contains(i) ? 0 : off * off;
    }
    return Optional.of(new Choice(List.copyOf(odd), squares));
  }
}
