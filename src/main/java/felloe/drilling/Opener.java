package felloe.drilling;

import java.util.List;
import java.util.Optional;

/**
 * A tool for openings wider than any drill.
 *
 * @param name such as {@code hole-saw}
 * @param sizes diameters in which it is made, mm, smallest first
 * @param under how far it stays inside the line, on the diameter, mm
 * @param pilot diameter of the hole that guides it, mm; 0 when it needs none
 * @param basis where the figures come from
 */
public record Opener(String name, List<Double> sizes, double under, double pilot, String basis) {

  private static final double SAME = 0.005;

  public Opener {
    sizes = List.copyOf(sizes);
  }

  /** The largest size for an opening, if there is one that leaves little to take off. */
  public Optional<Double> size(double opening) {
    return sizes.get(sizes.size() - 1) + REACH < opening
        ? Optional.empty()
        : sizes.stream().filter(s -> s <= opening - under + SAME).reduce((a, b) -> b);
  }

  /** The widest opening that it still makes, mm. */
  public double largest() {
    return sizes.get(sizes.size() - 1) + REACH;
  }

  /** So much more than the largest tool is still trimmed off by file, on the diameter, mm. */
  private static final double REACH = 4;
}
