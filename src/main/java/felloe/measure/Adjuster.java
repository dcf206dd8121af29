package felloe.measure;

import java.util.Optional;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * Finds the figures that make the weighted squares of the residuals least, from a first guess, by
 * the method of Levenberg and Marquardt with the damping of H. B. Nielsen (Damping Parameter in
 * Marquardt's Method, IMM-REP-1999-05). A reading changes with five unknowns of a hundred, so the
 * normal equations are summed from what is not zero; that is fifty times faster than to break down
 * the whole table of derivatives, as a solver for any equations does.
 */
final class Adjuster {

  /** Steps end when one is this share of all unknowns: near the rounding of double arithmetic. */
  private static final double STILL = 1e-11;

  private static final double FIRST_DAMPING = 1e-3;
  private static final double MOST_DAMPING = 1e12;
  private static final double ROUNDING = 1e-15;

  /** How far Hipparchus lets the normal matrix be from symmetric before it refuses it. */
  private static final double SYMMETRIC = 1e-6;

  private static final int ROUNDS = 150;

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
   * Adjusts.
   *
   * @param start the first guess of the layout's figures
   */
  static Adjustment adjust(Equations equations, Layout layout, double[] start) {
    return new Adjuster(equations, layout, start).search();
  }

  /** The normal equations at some figures: their matrix, right side and sum of squares. */
  private record Normal(double[][] matrix, double[] right, double cost) {

    double largest() {
      double largest = 0;
      for (int i = 0; i < right.length; i++) {
        largest = Math.max(largest, matrix[i][i]);
      }
      return largest;
    }

    /** The step with some damping; empty when rounding leaves the matrix none. */
    Optional<double[]> step(double damping) {
      double[][] damped = new double[right.length][];
      for (int i = 0; i < right.length; i++) {
        damped[i] = matrix[i].clone();
        damped[i][i] += damping;
      }
      try {
        return Optional.of(
            new CholeskyDecomposition(
                    MatrixUtils.createRealMatrix(damped), SYMMETRIC, damping * ROUNDING)
                .getSolver()
                .solve(new ArrayRealVector(right, false))
                .toArray());
      } catch (MathIllegalArgumentException notPositive) {
        return Optional.empty();
      }
    }

    /** By how much a step should make the sum less, were all linear. */
    double gain(double[] step, double damping) {
      double gain = 0;
      for (int i = 0; i < step.length; i++) {
        gain += step[i] * (damping * step[i] + right[i]);
      }
      return gain;
    }
  }

  private Adjustment search() {
    double[] at = start.clone();
    Normal normal = normal(at);
    double scale = Math.max(normal.largest(), Double.MIN_NORMAL);
    double damping = FIRST_DAMPING * scale;
    double grow = 2;
    for (int round = 0; round < ROUNDS && damping < MOST_DAMPING * scale; round++) {
      Optional<double[]> step = normal.step(damping);
      if (step.isPresent()) {
        double[] next = at.clone();
        double length = 0;
        double size = 0;
        for (int i = 0; i < next.length; i++) {
          next[i] += step.get()[i];
          length = Math.max(length, Math.abs(step.get()[i]));
          size = Math.max(size, Math.abs(at[i]));
        }
        double hoped = normal.gain(step.get(), damping);
        if (length <= STILL * (size + STILL) || hoped <= ROUNDING * normal.cost()) {
          return new Adjustment(equations, layout, at, true);
        }
        double part = (normal.cost() - cost(next)) / hoped;
        if (part > 0) {
          at = next;
          normal = normal(at);
          damping *= Math.max(1.0 / 3, 1 - Math.pow(2 * part - 1, 3));
          grow = 2;
          continue;
        }
      }
      damping *= grow;
      grow *= 2;
    }
    // So damped that no step of any length is left is an end; no more rounds is none.
    return new Adjustment(equations, layout, at, damping >= MOST_DAMPING * scale);
  }

  private double cost(double[] figures) {
    double[] z = layout.all(figures);
    double cost = 0;
    for (int k = 0; k < equations.count(); k++) {
      double residual = residual(k, z);
      cost += residual * residual;
    }
    for (double[] motion : motions) {
      double moved = moved(motion, figures);
      cost += moved * moved;
    }
    return cost;
  }

  private double residual(int k, double[] z) {
    Reading reading = equations.readings().get(k);
    return (reading.reads() - equations.value(k, z)) / reading.sigma();
  }

  private double moved(double[] motion, double[] figures) {
    double moved = 0;
    for (int i = 0; i < figures.length; i++) {
      moved -= motion[i] * (figures[i] - start[i]);
    }
    return moved;
  }

  private Normal normal(double[] figures) {
    double[] z = layout.all(figures);
    int n = figures.length;
    double[][] matrix = new double[n][n];
    double[] right = new double[n];
    double cost = 0;
    for (int k = 0; k < equations.count(); k++) {
      double residual = residual(k, z);
      double weight = 1 / equations.readings().get(k).sigma();
      cost += residual * residual;
      add(matrix, right, layout.row(equations.gradient(k, z), figures), weight, residual);
    }
    for (double[] motion : motions) {
      double moved = moved(motion, figures);
      cost += moved * moved;
      add(matrix, right, motion, 1, moved);
    }
    return new Normal(matrix, right, cost);
  }

  private static void add(
      double[][] matrix, double[] right, double[] row, double weight, double residual) {
    int[] some = new int[row.length];
    int count = 0;
    for (int i = 0; i < row.length; i++) {
      if (row[i] != 0) {
        some[count++] = i;
      }
    }
    for (int a = 0; a < count; a++) {
      int i = some[a];
      right[i] += row[i] * weight * residual;
      for (int b = 0; b < count; b++) {
        matrix[i][some[b]] += row[i] * row[some[b]] * weight * weight;
      }
    }
  }
}
