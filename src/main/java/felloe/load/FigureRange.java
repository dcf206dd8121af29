package felloe.load;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/**
 * Values that a figure of a shape file may take.
 *
 * @param path the figure, such as {@code stock.thickness}
 * @param from the least
 * @param to the most
 */
public record FigureRange(String path, double from, double to) {

  /** Refuses ends that are not finite, or the wrong way round. */
  public FigureRange {
    Numbers.finite("from", from);
    Numbers.finite("to", to);
    if (!(from < to)) {
      throw new IllegalArgumentException("from must be below to");
    }
  }

  /** Values evenly over it, both ends among them. */
  public List<Double> values(int count) {
    List<Double> values = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      values.add(count == 1 ? (from + to) / 2 : from + (to - from) * i / (count - 1));
    }
    return values;
  }

  /** Whether a value lies in it, but for rounding. */
  public boolean holds(double value) {
    double slack = 1e-9 * (to - from);
    return value >= from - slack && value <= to + slack;
  }
}
