package felloe.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a network of readings is to find: the centres of the holes, their sizes, and where the edges
 * lie. All of it stands in one row of numbers: x and y of each hole, then the sizes, then for each
 * edge what must be added to a hole's place along its {@link ReferenceEdge#inward} to give the
 * distance.
 *
 * @param holes number of holes
 * @param group for each hole which of the sizes is its own; holes that nobody told apart share one
 * @param sizes number of sizes
 * @param edges the edges that readings were taken from
 */
record Unknowns(int holes, List<Integer> group, int sizes, List<ReferenceEdge> edges) {

  /** From what was measured. Where not every hole has a size of its own, all are alike. */
  static Unknowns of(Measured measured) {
    int n = measured.count();
    boolean[] own = new boolean[n];
    List<ReferenceEdge> edges = new ArrayList<>();
    for (Reading reading : measured.readings()) {
      if (reading.over() == ReadingKind.DIAMETER) {
        own[reading.from()] = true;
      }
      reading.edge().filter(edge -> !edges.contains(edge)).ifPresent(edges::add);
    }
    int owned = 0;
    for (boolean one : own) {
      owned += one ? 1 : 0;
    }
    Integer[] group = new Integer[n];
    Arrays.fill(group, 0);
    if (owned < n && measured.size().isEmpty()) {
      return new Unknowns(n, List.of(group), 1, List.copyOf(edges));
    }
    int next = owned < n ? 1 : 0;
    for (int i = 0; i < n; i++) {
      group[i] = own[i] ? next++ : 0;
    }
    return new Unknowns(n, List.of(group), Math.max(1, next), List.copyOf(edges));
  }

  int all() {
    return 2 * holes + sizes + edges.size();
  }

  int x(int hole) {
    return 2 * hole;
  }

  int y(int hole) {
    return 2 * hole + 1;
  }

  int size(int hole) {
    return 2 * holes + group.get(hole);
  }

  int offset(ReferenceEdge edge) {
    return 2 * holes + sizes + edges.indexOf(edge);
  }

  /**
   * The motions that no reading feels, as rows of length one: two shifts, and a turn where no edge
   * holds the direction. The turn is about the middle of the holes.
   */
  double[][] motions(double[] z) {
    boolean turns = edges.isEmpty();
    double[][] rows = new double[turns ? 3 : 2][all()];
    double mx = 0;
    double my = 0;
    for (int i = 0; i < holes; i++) {
      mx += z[x(i)] / holes;
      my += z[y(i)] / holes;
    }
    for (int i = 0; i < holes; i++) {
      rows[0][x(i)] = 1;
      rows[1][y(i)] = 1;
      if (turns) {
        rows[2][x(i)] = my - z[y(i)];
        rows[2][y(i)] = z[x(i)] - mx;
      }
    }
    for (ReferenceEdge edge : edges) {
      rows[0][offset(edge)] = -edge.inward().x();
      rows[1][offset(edge)] = -edge.inward().y();
    }
    for (double[] row : rows) {
      double norm = Math.sqrt(Arrays.stream(row).map(v -> v * v).sum());
      for (int k = 0; k < row.length; k++) {
        row[k] /= norm;
      }
    }
    return rows;
  }
}
