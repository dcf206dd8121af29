package felloe.hub;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The placement of a set of screws in a set of holes that leaves the tightest screw most room:
 * which screw goes into which hole, and the turn and shift that carries the screws there.
 *
 * <p>The room of a screw is (hole diameter - screw diameter)/2 less the distance of their centres.
 * The smallest room is the greatest that any turn, any shift and any pairing allows, to 1e-9 mm,
 * proved as the private classes {@code TurnSearch} and {@code Matching} say; except where it is
 * below minus a quarter of the smallest spacing, where the patterns have nothing in common and the
 * best pairing round the circle is given.
 *
 * @param placement carries the screws, as given, into the holes
 * @param holes for each screw the index of its hole
 * @param clearances for each screw its room, mm; negative where it does not enter
 * @param clearance the smallest of them
 * @param symmetry into how many equal turns the screws' pattern repeats about the origin
 * @param complete false when there were so many holes that not every pairing was tried; then the
 *     result holds but a better one may exist
 */
public record RigidFit(
    RigidTransform placement,
    List<Integer> holes,
    List<Double> clearances,
    double clearance,
    int symmetry,
    boolean complete) {

  // Well below TurnSearch.PRECISION, so that placements called equal are.
  private static final double SAME = 1e-10;

  /**
   * A round thing with a place: a screw or a hole.
   *
   * @param centre its centre, mm
   * @param diameter mm
   */
  public record Round(Point centre, double diameter) {}

  public RigidFit {
    holes = List.copyOf(holes);
    clearances = List.copyOf(clearances);
  }

  /**
   * Finds the placement. Where turns about the origin carry the screws onto themselves, placements
   * that differ by such a turn are equally good and the one turned least is given.
   *
   * @param screws at least one
   * @param holes at least as many as there are screws
   * @throws IllegalArgumentException when there are no screws, or fewer holes than screws
   */
  public static RigidFit of(List<Round> screws, List<Round> holes) {
    if (screws.isEmpty() || holes.size() < screws.size()) {
      throw new IllegalArgumentException(
          screws.size() + " screws need as many holes, but there are " + holes.size());
    }
    int[][] symmetries = symmetries(screws);
    Matching matching = Matching.of(rows(screws, -0.5), rows(holes, 0.5), symmetries);
    TurnSearch found = matching.placement();
    double step = 2 * Math.PI / symmetries.length;
    double turn = screws.size() == 1 ? 0 : found.turn();
    int steps = (int) Tolerances.up(turn / step - 0.5);
    int[] which = symmetries[Math.floorMod(steps, symmetries.length)];
    int[] paired = matching.holes();
    double least = turn - steps * step;
    Point shift =
        screws.size() == 1
            ? holes.get(paired[0]).centre().minus(screws.get(0).centre())
            : new Point(found.shiftX(), found.shiftY());
    RigidTransform motion = new RigidTransform(false, least, shift);
    List<Integer> indices = new ArrayList<>();
    List<Double> clearances = new ArrayList<>();
    for (int i = 0; i < screws.size(); i++) {
      // Turning back by so many steps puts screw which[i] where screw i was.
      int hole = paired[inverse(which, i)];
      indices.add(hole);
      clearances.add(room(screws.get(i), holes.get(hole), motion));
    }
    double smallest = Collections.min(clearances);
    return new RigidFit(
        motion, indices, clearances, smallest, symmetries.length, matching.complete());
  }

  private static int inverse(int[] which, int i) {
    int k = 0;
    while (which[k] != i) {
      k++;
    }
    return k;
  }

  private static double room(Round screw, Round hole, RigidTransform motion) {
    return (hole.diameter() - screw.diameter()) / 2
        - motion.of(screw.centre()).distance(hole.centre());
  }

  private static double[][] rows(List<Round> rounds, double factor) {
    double[][] rows = new double[3][rounds.size()];
    for (int i = 0; i < rounds.size(); i++) {
      rows[0][i] = rounds.get(i).centre().x();
      rows[1][i] = rounds.get(i).centre().y();
      rows[2][i] = factor * rounds.get(i).diameter();
    }
    return rows;
  }

  /** For each turn of the screws onto themselves, the screw that each one then lies on. */
  private static int[][] symmetries(List<Round> screws) {
    for (int fold = screws.size(); fold > 1; fold--) {
      int[] step = stepped(screws, 2 * Math.PI / fold);
      if (step != null) {
        int[][] all = new int[fold][screws.size()];
        for (int i = 0; i < screws.size(); i++) {
          all[0][i] = i;
          for (int k = 1; k < fold; k++) {
            all[k][i] = step[all[k - 1][i]];
          }
        }
        return all;
      }
    }
    int[] same = new int[screws.size()];
    for (int i = 0; i < same.length; i++) {
      same[i] = i;
    }
    return new int[][] {same};
  }

  /** Where each screw lands after a turn about the origin; null when one lands on no other. */
  private static int[] stepped(List<Round> screws, double angle) {
    RigidTransform turn = RigidTransform.turn(angle);
    int[] lands = new int[screws.size()];
    for (int i = 0; i < lands.length; i++) {
      Point moved = turn.of(screws.get(i).centre());
      lands[i] = -1;
      for (int j = 0; j < lands.length; j++) {
        if (screws.get(j).centre().near(moved, SAME)
            && screws.get(j).diameter() == screws.get(i).diameter()) {
          lands[i] = j;
        }
      }
      if (lands[i] < 0) {
        return null;
      }
    }
    return lands;
  }
}
