package felloe.load;

import felloe.laminate.PlaneStiffness;
import java.util.Arrays;

/**
 * A triangle with six points under loads in its plane: displacements u and v at corners and middles
 * of sides, quadratic over it, with sides that may be curved (isoparametric).
 *
 * <p>Points: the three corners counter-clockwise, then the middles opposite them. Source: the
 * six-node triangle of any finite-element text, such as Zienkiewicz and Taylor, The Finite Element
 * Method; from memory.
 *
 * <p>One instance serves many triangles in turn. Not shared between threads.
 */
final class MembraneTriangle {

  /** Unknowns: u and v of each point. */
  static final int UNKNOWNS = 12;

  private static final double[][] POINTS = {
    {2.0 / 3, 1.0 / 6, 1.0 / 6}, {1.0 / 6, 2.0 / 3, 1.0 / 6}, {1.0 / 6, 1.0 / 6, 2.0 / 3}
  };

  private final double[] x = new double[6];
  private final double[] y = new double[6];
  private final double[] nx = new double[6];
  private final double[] ny = new double[6];
  private double jacobian;

  /** Takes a point (0 to 5). */
  void point(int number, double px, double py) {
    x[number] = px;
    y[number] = py;
  }

  /** Derivatives of the shape functions at area coordinates; the last follows from the others. */
  private void at(double p, double q, double r) {
    // By p and q, with r = 1 - p - q.
    double[] byP = {4 * p - 1, 0, 1 - 4 * r, -4 * q, 4 * (r - p), 4 * q};
    double[] byQ = {0, 4 * q - 1, 1 - 4 * r, 4 * (r - q), -4 * p, 4 * p};
    double xp = 0;
    double yp = 0;
    double xq = 0;
    double yq = 0;
    for (int i = 0; i < 6; i++) {
      xp += byP[i] * x[i];
      yp += byP[i] * y[i];
      xq += byQ[i] * x[i];
      yq += byQ[i] * y[i];
    }
    jacobian = xp * yq - xq * yp;
    for (int i = 0; i < 6; i++) {
      nx[i] = (yq * byP[i] - yp * byQ[i]) / jacobian;
      ny[i] = (xp * byQ[i] - xq * byP[i]) / jacobian;
    }
  }

  /** Puts the stiffness into an array, row by row, from a place on. */
  void stiffness(PlaneStiffness a, double[] k, int from) {
    Arrays.fill(k, from, from + UNKNOWNS * UNKNOWNS, 0);
    for (double[] point : POINTS) {
      at(point[0], point[1], point[2]);
      double weight = jacobian / 6;
      for (int i = 0; i < 6; i++) {
        double ux = weight * a.x(nx[i], 0, ny[i]);
        double uy = weight * a.y(nx[i], 0, ny[i]);
        double us = weight * a.shear(nx[i], 0, ny[i]);
        double vx = weight * a.x(0, ny[i], nx[i]);
        double vy = weight * a.y(0, ny[i], nx[i]);
        double vs = weight * a.shear(0, ny[i], nx[i]);
        int row = from + 2 * i * UNKNOWNS;
        for (int j = 0; j < 6; j++) {
          k[row + 2 * j] += ux * nx[j] + us * ny[j];
          k[row + 2 * j + 1] += uy * ny[j] + us * nx[j];
          k[row + UNKNOWNS + 2 * j] += vx * nx[j] + vs * ny[j];
          k[row + UNKNOWNS + 2 * j + 1] += vy * ny[j] + vs * nx[j];
        }
      }
    }
  }

  /** Goes to one of its three inner points. */
  void at(int inner) {
    at(POINTS[inner][0], POINTS[inner][1], POINTS[inner][2]);
  }

  /** Strains (x, y, shear) where it has gone to, from the twelve unknowns. */
  void strains(double[] unknowns, double[] into) {
    Arrays.fill(into, 0);
    for (int i = 0; i < 6; i++) {
      into[0] += nx[i] * unknowns[2 * i];
      into[1] += ny[i] * unknowns[2 * i + 1];
      into[2] += ny[i] * unknowns[2 * i] + nx[i] * unknowns[2 * i + 1];
    }
  }

  /** Abscissa of an inner point. */
  double innerX(int inner) {
    return inner(inner, x);
  }

  /** Ordinate of an inner point. */
  double innerY(int inner) {
    return inner(inner, y);
  }

  private static double inner(int inner, double[] along) {
    double p = POINTS[inner][0];
    double q = POINTS[inner][1];
    double r = POINTS[inner][2];
    return p * (2 * p - 1) * along[0]
        + q * (2 * q - 1) * along[1]
        + r * (2 * r - 1) * along[2]
        + 4 * (q * r * along[3] + p * r * along[4] + p * q * along[5]);
  }
}
