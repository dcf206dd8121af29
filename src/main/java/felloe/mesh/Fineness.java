package felloe.mesh;

import felloe.geometry.Point;
import java.util.List;

/**
 * How fine a mesh is to be.
 *
 * @param edge the longest edge, mm
 * @param across the least number of edges across the narrowest of the material
 * @param round the least number of edges on a whole circle
 * @param growth how much an edge may be longer than another, for each millimetre between them
 * @param spots places where edges are to be shorter than all that asks for
 * @param most the most nodes that a mesh may have
 * @param rows distances from the edges of the material, mm, at which rows of nodes follow them,
 *     nearest first: there stresses change within less than the plate's thickness
 */
public record Fineness(
    double edge,
    double across,
    int round,
    double growth,
    List<Spot> spots,
    int most,
    List<Double> rows) {

  /** Without rows. */
  public Fineness(
      double edge, double across, int round, double growth, List<Spot> spots, int most) {
    this(edge, across, round, growth, spots, most, List.of());
  }

  /**
   * A place that wants short edges.
   *
   * @param at its middle
   * @param edge the longest edge there, mm
   */
  public record Spot(Point at, double edge) {
    /** Refuses a length that is not above 0. */
    public Spot {
      positive(edge, "edge");
    }
  }

  /** Refuses figures that are not above 0, and fewer than 6 edges on a circle. */
  public Fineness {
    positive(edge, "edge");
    positive(across, "across");
    positive(growth, "growth");
    if (round < 6) {
      throw new IllegalArgumentException("round must be at least 6");
    }
    if (most < 3) {
      throw new IllegalArgumentException("most must be at least 3");
    }
    spots = List.copyOf(spots);
    rows = List.copyOf(rows);
    rows.forEach(row -> positive(row, "row"));
  }

  /**
   * The usual fineness for a longest edge: four edges across the narrowest material, 32 on a
   * circle, and edges that grow by a third of the way between them.
   */
  public static Fineness of(double edge) {
    return new Fineness(edge, 4, 32, 0.33, List.of(), 200_000);
  }

  /** The same with every edge times a factor; counts change against it. */
  public Fineness times(double factor) {
    List<Spot> scaled = spots.stream().map(s -> new Spot(s.at(), s.edge() * factor)).toList();
    int ring = Math.max(6, (int) Math.round(round / factor));
    return new Fineness(edge * factor, across / factor, ring, growth, scaled, most, rows);
  }

  /** The same with other spots. */
  public Fineness withSpots(List<Spot> others) {
    return new Fineness(edge, across, round, growth, others, most, rows);
  }

  /** The same with rows of nodes along the edges of the material. */
  public Fineness withRows(List<Double> distances) {
    return new Fineness(edge, across, round, growth, spots, most, distances);
  }

  private static void positive(double value, String name) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(name + " must be above 0");
    }
  }
}
