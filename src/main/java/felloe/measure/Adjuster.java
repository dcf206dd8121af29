package felloe.measure;

import org.hipparchus.exception.LocalizedCoreFormats;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/** Finds the figures that make the weighted squares of the residuals least, from a first guess. */
final class Adjuster {

  private static final double TOLERANCE = 1e-10;
  private static final int ROUNDS = 400;

  private final Equations equations;
  private final Layout layout;
  private final double[] start;
  private final double[][] motions;

  private Adjuster(Equations equations, Layout layout, double[] start) {
    this.equations = equations;
    this.layout = layout;
    this.start = start;
    // The whole is held where the guess has it: readings do not feel it, so it bends nothing.
    this.motions =
        layout instanceof Layout.Free ? equations.unknowns().motions(start) : new double[0][];
  }

  /**
   * Adjusts by the method of Levenberg and Marquardt.
   *
   * @param start the first guess of the layout's figures
   */
  static Adjustment adjust(Equations equations, Layout layout, double[] start) {
    return new Adjuster(equations, layout, start).search();
  }

  private Adjustment search() {
    int rows = equations.count() + motions.length;
    if (rows < start.length) {
      // The method wants at least as many rows as unknowns; rows of nothing change nothing.
      rows = start.length;
    }
    int all = rows;
    MultivariateJacobianFunction model = point -> evaluate(point.toArray(), all);
    double[] target = new double[all];
    for (int k = 0; k < equations.count(); k++) {
      Reading reading = equations.readings().get(k);
      target[k] = reading.reads() / reading.sigma();
    }
    try {
      double[] found =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(TOLERANCE)
              .withParameterRelativeTolerance(TOLERANCE)
              .withOrthoTolerance(TOLERANCE)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(start)
                      .model(model)
                      .target(target)
                      .maxEvaluations(ROUNDS)
                      .maxIterations(ROUNDS)
                      .build())
              .getPoint()
              .toArray();
      return new Adjustment(equations, layout, found, true);
    } catch (MathRuntimeException end) {
      // It ends so when rounding lets it get no better, which is an end as good as any; and when it
      // has no more rounds, which is none.
      return new Adjustment(equations, layout, last, !outOfRounds(end));
    }
  }

  private static boolean outOfRounds(MathRuntimeException end) {
    return end.getSpecifier() == LocalizedCoreFormats.MAX_COUNT_EXCEEDED;
  }

  private double[] last;
  private double lastCost = Double.POSITIVE_INFINITY;

  private Pair<RealVector, org.hipparchus.linear.RealMatrix> evaluate(double[] figures, int rows) {
    double[] z = layout.all(figures);
    double[] values = new double[rows];
    double[][] jacobian = new double[rows][figures.length];
    double cost = 0;
    for (int k = 0; k < equations.count(); k++) {
      double sigma = equations.readings().get(k).sigma();
      values[k] = equations.value(k, z) / sigma;
      cost += Math.pow(values[k] - equations.readings().get(k).reads() / sigma, 2);
      double[] row = layout.row(equations.gradient(k, z), figures);
      for (int i = 0; i < row.length; i++) {
        jacobian[k][i] = row[i] / sigma;
      }
    }
    for (int c = 0; c < motions.length; c++) {
      int k = equations.count() + c;
      for (int i = 0; i < figures.length; i++) {
        values[k] += motions[c][i] * (figures[i] - start[i]);
      }
      jacobian[k] = motions[c].clone();
    }
    if (cost < lastCost) {
      lastCost = cost;
      last = figures.clone();
    }
    return new Pair<>(new ArrayRealVector(values, false), MatrixUtils.createRealMatrix(jacobian));
  }
}
