package felloe.load;

import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;

/**
 * How much the hub's face pushes at each of some places, so that the plate nowhere sinks into it
 * and the face nowhere pulls: a linear complementarity problem, solved by guessing which places
 * touch, and correcting the guess until it holds.
 *
 * <p>The matrix of deflections by unit pushes is symmetric and positive definite, so there is one
 * answer. When the guesses go round in a circle, the places are swept one by one instead (Gauss and
 * Seidel, never below zero), until they stand still.
 */
final class UnilateralContact {

  private static final int GUESSES = 60;
  private static final int SWEEPS = 4000;

  /** A change of the pushes, as a part of the largest, that no longer matters. */
  private static final double STILL = 1e-9;

  private final IntFunction<double[]> columns;

  /** The columns that were asked for. */
  private double[][] known = {};

  /**
   * Takes the deflections.
   *
   * @param columns gives, for a place, the deflections of all places under a push of 1 N there, mm;
   *     asked only for places that come to touch, and once
   */
  UnilateralContact(IntFunction<double[]> columns) {
    this.columns = columns;
  }

  private double deflection(int at, int push) {
    if (known[push] == null) {
      known[push] = columns.apply(push);
    }
    return known[push][at];
  }

  /**
   * The pushes, N.
   *
   * @param free deflections at the places when nothing pushes, mm; below zero is into the hub
   */
  double[] against(double[] free) {
    int n = free.length;
    if (known.length != n) {
      known = new double[n][];
    }
    boolean[] touches = new boolean[n];
    for (int i = 0; i < n; i++) {
      touches[i] = free[i] < 0;
    }
    for (int guess = 0; guess < GUESSES; guess++) {
      Optional<double[]> guessed = pushes(touches, free);
      if (guessed.isEmpty()) {
        break;
      }
      double[] push = guessed.get();
      boolean holds = true;
      for (int i = 0; i < n; i++) {
        if (touches[i] && push[i] < 0) {
          touches[i] = false;
          holds = false;
        } else if (!touches[i] && gap(i, push, free) < -1e-12) {
          touches[i] = true;
          holds = false;
        }
      }
      if (holds) {
        return push;
      }
    }
    return sweep(free);
  }

  private double gap(int place, double[] push, double[] free) {
    double gap = free[place];
    for (int j = 0; j < push.length; j++) {
      gap += push[j] == 0 ? 0 : deflection(place, j) * push[j];
    }
    return gap;
  }

  /**
   * Pushes that keep the touching places at zero, by Cholesky's factors. What is to be balanced is
   * eliminated with them, as a last row below the matrix.
   */
  private Optional<double[]> pushes(boolean[] touches, double[] free) {
    int[] on = IntStream.range(0, free.length).filter(i -> touches[i]).toArray();
    int n = on.length;
    double[][] l = new double[n + 1][n + 1];
    double[] diagonal = new double[n];
    for (int j = 0; j < n; j++) {
      for (int i = j; i < n; i++) {
        l[j][i] = deflection(on[j], on[i]);
      }
      l[j][n] = -free[on[j]];
      diagonal[j] = l[j][j];
    }
    if (!DenseFront.eliminate(l, n, diagonal)) {
      return Optional.empty();
    }
    double[] push = new double[free.length];
    for (int j = n - 1; j >= 0; j--) {
      double sum = l[j][n];
      for (int i = j + 1; i < n; i++) {
        sum -= l[j][i] * push[on[i]];
      }
      push[on[j]] = sum / l[j][j];
    }
    return Optional.of(push);
  }

  private double[] sweep(double[] free) {
    double[] push = new double[free.length];
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double change = 0;
      double most = 0;
      for (int i = 0; i < push.length; i++) {
        double better = Math.max(0, push[i] - gap(i, push, free) / deflection(i, i));
        change = Math.max(change, Math.abs(better - push[i]));
        push[i] = better;
        most = Math.max(most, better);
      }
      if (change <= STILL * most) {
        return push;
      }
    }
    throw new LoadException(
        "support", "where the hub's face pushes could not be settled; clamp the plate instead");
  }
}
