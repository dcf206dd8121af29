package felloe.drilling;

import felloe.geometry.Numbers;
import java.util.List;
import java.util.Optional;

/** The diameters in which twist drills are made, mm. */
public final class DrillSizes {

  /** A diameter nearer than this to a drill's is that drill's, mm. */
  private static final double SAME = 0.005;

  /**
   * Diameters in even steps.
   *
   * @param from first, mm
   * @param to last, mm
   * @param step mm
   */
  record Series(double from, double to, double step) {}

  private final List<Series> series;

  DrillSizes(List<Series> series) {
    this.series = List.copyOf(series);
  }

  /** The smallest drill, mm. */
  public double smallest() {
    return series.get(0).from();
  }

  /** The largest drill, mm. */
  public double largest() {
    return series.get(series.size() - 1).to();
  }

  /** Whether a drill of that diameter is made. */
  public boolean has(double diameter) {
    return atOrBelow(diameter).filter(d -> Math.abs(d - diameter) <= SAME).isPresent();
  }

  /** The largest drill that is not larger; empty below the smallest. */
  public Optional<Double> atOrBelow(double diameter) {
    Numbers.finite("diameter", diameter);
    Optional<Double> best = Optional.empty();
    for (Series s : series) {
      if (diameter >= s.from() - SAME) {
        double steps = Math.floor((Math.min(diameter, s.to()) - s.from() + SAME) / s.step());
        best = Optional.of(tidy(s.from() + steps * s.step()));
      }
    }
    return best;
  }

  /** The smallest drill that is not smaller; empty above the largest. */
  public Optional<Double> atOrAbove(double diameter) {
    Numbers.finite("diameter", diameter);
    for (Series s : series) {
      if (diameter <= s.to() + SAME) {
        double steps = Math.ceil((Math.max(diameter, s.from()) - s.from() - SAME) / s.step());
        return Optional.of(tidy(s.from() + Math.max(0, steps) * s.step()));
      }
    }
    return Optional.empty();
  }

  /** Sums of steps leave hairs that no drill has. */
  private static double tidy(double diameter) {
    return Math.rint(diameter * 1000) / 1000;
  }
}
