package felloe.layup;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the order and the directions of plies do to a laminate. A cloth counts as alike in warp and
 * weft, so a quarter turn changes nothing.
 */
final class Stacking {

  private static final double SAME = StackPlan.SAME;

  private final List<Double> angles;
  private final boolean woven;

  /**
   * A stack.
   *
   * @param angles directions in degrees, ply 1 first
   * @param woven whether a quarter turn changes nothing
   */
  Stacking(List<Double> angles, boolean woven) {
    this.angles = angles.stream().map(angle -> folded(angle, woven)).toList();
    this.woven = woven;
  }

  /** An angle in 0 up to but without 90 (cloth) or 180 degrees. */
  static double folded(double angle, boolean woven) {
    double period = woven ? 90 : 180;
    double a = angle % period;
    a = a < 0 ? a + period : a;
    return a > period - SAME ? 0 : a;
  }

  /** Whether it reads the same from both faces, so that it does not warp. */
  boolean symmetric() {
    for (int i = 0; i < angles.size() / 2; i++) {
      if (!same(angles.get(i), angles.get(angles.size() - 1 - i))) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether pulling does not shear it: as many plies at each angle as at the opposite one. A cloth
   * at 45 degrees is its own opposite.
   */
  boolean balanced() {
    return Math.abs(sum(2, true)) < SAME && Math.abs(sum(4, true)) < SAME;
  }

  /**
   * Whether it is as stiff one way in its plane as any other: the sums of cos and sin of two and
   * four times the angles vanish (Tsai and Pagano's invariants). For cloth the sums of twice the
   * angle count for nothing.
   */
  boolean quasiIsotropic() {
    boolean four = Math.abs(sum(4, false)) < SAME && Math.abs(sum(4, true)) < SAME;
    boolean two = Math.abs(sum(2, false)) < SAME && Math.abs(sum(2, true)) < SAME;
    return four && (woven || two);
  }

  private double sum(int times, boolean sine) {
    if (woven && times == 2) {
      return 0;
    }
    return angles.stream()
        .mapToDouble(a -> Math.toRadians(times * a))
        .map(a -> sine ? Math.sin(a) : Math.cos(a))
        .sum();
  }

  /** What a maker should know, in sentences without a full stop. */
  List<String> warnings() {
    List<String> warnings = new ArrayList<>();
    if (!symmetric()) {
      warnings.add(
          "the stack is not symmetric about its middle: it will warp as it cools, and more after a"
              + " post-cure; order the plies so that they read the same from both faces");
    }
    if (!balanced()) {
      warnings.add(
          "the stack is not balanced: pulled or heated it will shear; give each angle as many plies"
              + " as its opposite");
    }
    runs(warnings);
    counts(warnings);
    return warnings;
  }

  private void runs(List<String> warnings) {
    int from = 0;
    for (int i = 1; i <= angles.size(); i++) {
      if (i < angles.size() && same(angles.get(i), angles.get(from))) {
        continue;
      }
      int length = i - from;
      // Two alike in the middle are how an even number of plies is symmetric.
      boolean middle = length == 2 && from + 1 == angles.size() / 2 && angles.size() % 2 == 0;
      if (length > 1 && !middle) {
        warnings.add(
            "plies "
                + (from + 1)
                + " to "
                + i
                + " all lie at "
                + StackPlan.words(angles.get(from), woven)
                + ": a crack runs through a run of like plies unhindered; put another direction"
                + " between them");
      }
      from = i;
    }
  }

  private void counts(List<String> warnings) {
    Map<Double, Integer> counts = new TreeMap<>();
    angles.forEach(angle -> counts.merge(Math.rint(angle * 1e4) / 1e4, 1, Integer::sum));
    if (!quasiIsotropic()) {
      List<String> words = new ArrayList<>();
      counts.forEach((angle, count) -> words.add(count + " at " + StackPlan.words(angle, woven)));
      warnings.add(
          "the stack is not quasi-isotropic ("
              + String.join(", ", words)
              + "): it is stiffer along the directions that have more plies");
    }
    int size = angles.size();
    if (size % 2 == 1 && size > 1) {
      warnings.add(
          "an odd number of plies has one in the middle that is its own mirror image: symmetric if"
              + " the others are, but one direction has a ply more than the other");
    }
    if (size == 1) {
      warnings.add("a single ply is no plate: it tears along its yarns");
    }
    if (size % 4 == 2 && woven && symmetric() && counts.size() == 2) {
      warnings.add(
          Numbers.brief(size, 0)
              + " plies cannot be both symmetric and shared evenly between two directions; a"
              + " multiple of four can");
    }
  }

  private boolean same(double a, double b) {
    return Math.abs(a - b) < SAME;
  }
}
