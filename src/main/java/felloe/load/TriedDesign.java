package felloe.load;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A design that was tried.
 *
 * @param values of the figures that vary, in their order
 * @param mass of the finished plate, g; 0 when it cannot be drawn
 * @param deflection the most that a hand moves it, mm; 0 when it was not loaded
 * @param margin the least of its load cases; 0 when it was not loaded
 * @param fault why it will not do; empty when it passes the review and does all that is wanted
 */
public record TriedDesign(
    List<Double> values, double mass, double deflection, double margin, String fault) {

  /** Copies the list; refuses figures that are not finite. */
  public TriedDesign {
    values = List.copyOf(values);
    Numbers.finite("mass", mass);
    Numbers.finite("deflection", deflection);
    Numbers.finite("margin", margin);
  }

  /** Whether it does all that is wanted. */
  public boolean does() {
    return fault.isEmpty();
  }

  /** The lightest design that does; of equals the stiffer. */
  public static Optional<TriedDesign> lightest(List<TriedDesign> designs) {
    return designs.stream()
        .filter(TriedDesign::does)
        .min(
            Comparator.comparingDouble(TriedDesign::mass)
                .thenComparingDouble(TriedDesign::deflection));
  }

  /**
   * The front between mass and stiffness: the designs that do and to which no other is both no
   * heavier and no softer. Lightest first.
   */
  public static List<TriedDesign> front(List<TriedDesign> designs) {
    List<TriedDesign> sorted =
        designs.stream()
            .filter(TriedDesign::does)
            .sorted(
                Comparator.comparingDouble(TriedDesign::mass)
                    .thenComparingDouble(TriedDesign::deflection))
            .toList();
    List<TriedDesign> front = new ArrayList<>();
    for (TriedDesign one : sorted) {
      if (front.isEmpty() || one.deflection() < front.get(front.size() - 1).deflection()) {
        front.add(one);
      }
    }
    return front;
  }
}
