package felloe.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Designs to try: an even grid over some spans, and then finer ones about the best.
 *
 * @param spans the figures that vary, each within its bounds
 * @param steps values of each in the first round
 */
public record DesignSpace(List<FigureRange> spans, int steps) {

  /** The most designs of a first round. */
  public static final int MOST = 2000;

  /**
   * Refuses fewer than two steps, no span, and more designs than {@link #MOST}.
   *
   * @throws IllegalArgumentException saying which
   */
  public DesignSpace {
    spans = List.copyOf(spans);
    if (spans.isEmpty()) {
      throw new IllegalArgumentException("something must vary");
    }
    if (steps < 2) {
      throw new IllegalArgumentException("steps must be at least 2");
    }
    if (Math.pow(steps, spans.size()) > MOST) {
      throw new IllegalArgumentException("would be more than " + MOST + " designs");
    }
  }

  /** The first round: every combination, in a fixed order, rounded to hundredths. */
  public List<List<Double>> grid() {
    List<List<Double>> axes = spans.stream().map(span -> span.values(steps)).toList();
    return combinations(axes);
  }

  /**
   * A further round: the neighbours of a design on a grid twice as fine for each round before it.
   *
   * @param best the design
   * @param round 1 for the first round after the grid
   */
  public List<List<Double>> about(List<Double> best, int round) {
    List<List<Double>> axes = new ArrayList<>();
    for (int i = 0; i < spans.size(); i++) {
      FigureRange span = spans.get(i);
      double step = (span.to() - span.from()) / (steps - 1) / Math.pow(2, round);
      List<Double> near = new ArrayList<>();
      for (int k = -1; k <= 1; k++) {
        double value = best.get(i) + k * step;
        if (span.holds(value)) {
          near.add(value);
        }
      }
      axes.add(near);
    }
    return combinations(axes);
  }

  private static List<List<Double>> combinations(List<List<Double>> axes) {
    Set<List<Double>> all = new LinkedHashSet<>();
    all.add(List.of());
    for (List<Double> axis : axes) {
      Set<List<Double>> longer = new LinkedHashSet<>();
      for (List<Double> start : all) {
        for (double value : axis) {
          List<Double> one = new ArrayList<>(start);
          one.add(Math.round(value * 100) / 100.0);
          longer.add(List.copyOf(one));
        }
      }
      all = longer;
    }
    return List.copyOf(all);
  }
}
