package felloe.measure;

import java.util.Arrays;

/**
 * What is taken for granted about where the holes lie: nothing, or that they stand evenly on a
 * circle. It turns the few figures that are then unknown into all of {@link Unknowns}.
 */
sealed interface Layout {

  /** Number of figures. */
  int size();

  /** All unknowns for given figures. */
  double[] all(double[] figures);

  /** How a row of changes in all unknowns reads as a row of changes in the figures. */
  double[] row(double[] gradient, double[] figures);

  /** For each figure how all unknowns change with it, a row for each unknown. */
  double[][] spread(double[] figures);

  /** Nothing is taken for granted. */
  record Free(Unknowns unknowns) implements Layout {
    @Override
    public int size() {
      return unknowns.all();
    }

    @Override
    public double[] all(double[] figures) {
      return figures;
    }

    @Override
    public double[] row(double[] gradient, double[] figures) {
      return gradient;
    }

    @Override
    public double[][] spread(double[] figures) {
      double[][] one = new double[size()][size()];
      for (int i = 0; i < size(); i++) {
        one[i][i] = 1;
      }
      return one;
    }
  }

  /**
   * The holes stand evenly on a circle about the origin, in their order. Figures: its radius; the
   * direction of the first hole where edges hold the direction; sizes; edges.
   *
   * @param clockwise whether the order runs clockwise
   */
  record EvenRing(Unknowns unknowns, boolean clockwise) implements Layout {

    /** Direction of the first hole where nothing tells it: straight up. */
    static final double UP = Math.PI / 2;

    private boolean turns() {
      return !unknowns.edges().isEmpty();
    }

    private int rest() {
      return unknowns.sizes() + unknowns.edges().size();
    }

    @Override
    public int size() {
      return (turns() ? 2 : 1) + rest();
    }

    private double angle(int hole, double[] figures) {
      double step = 2 * Math.PI * hole / unknowns.holes();
      return (turns() ? figures[1] : UP) + (clockwise ? -step : step);
    }

    @Override
    public double[] all(double[] figures) {
      double[] z = new double[unknowns.all()];
      for (int i = 0; i < unknowns.holes(); i++) {
        double angle = angle(i, figures);
        z[unknowns.x(i)] = figures[0] * Math.cos(angle);
        z[unknowns.y(i)] = figures[0] * Math.sin(angle);
      }
      System.arraycopy(figures, size() - rest(), z, 2 * unknowns.holes(), rest());
      return z;
    }

    @Override
    public double[] row(double[] gradient, double[] figures) {
      double[] row = new double[size()];
      for (int i = 0; i < unknowns.holes(); i++) {
        double gx = gradient[unknowns.x(i)];
        double gy = gradient[unknowns.y(i)];
        if (gx != 0 || gy != 0) {
          double angle = angle(i, figures);
          row[0] += gx * Math.cos(angle) + gy * Math.sin(angle);
          if (turns()) {
            row[1] += figures[0] * (gy * Math.cos(angle) - gx * Math.sin(angle));
          }
        }
      }
      System.arraycopy(gradient, 2 * unknowns.holes(), row, size() - rest(), rest());
      return row;
    }

    @Override
    public double[][] spread(double[] figures) {
      double[][] all = new double[unknowns.all()][];
      double[] unit = new double[unknowns.all()];
      for (int k = 0; k < unit.length; k++) {
        Arrays.fill(unit, 0);
        unit[k] = 1;
        all[k] = row(unit, figures);
      }
      return all;
    }
  }
}
