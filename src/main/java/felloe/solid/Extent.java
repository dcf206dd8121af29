package felloe.solid;

import java.util.List;

/**
 * The upright box round a body, mm.
 *
 * @param least its corner where all three coordinates are least
 * @param most the opposite corner
 */
public record Extent(Vertex least, Vertex most) {

  static Extent of(List<Vertex> vertices) {
    double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (Vertex v : vertices) {
      double[] at = {v.x(), v.y(), v.z()};
      for (int i = 0; i < 3; i++) {
        low[i] = Math.min(low[i], at[i]);
        high[i] = Math.max(high[i], at[i]);
      }
    }
    return new Extent(new Vertex(low[0], low[1], low[2]), new Vertex(high[0], high[1], high[2]));
  }

  /** Sizes in x, y and z. */
  public Vertex size() {
    return most.minus(least);
  }

  /** The middle. */
  public Vertex centre() {
    return least.plus(most.minus(least), 0.5);
  }
}
