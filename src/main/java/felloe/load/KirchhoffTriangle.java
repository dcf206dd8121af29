package felloe.load;

import felloe.laminate.PlaneStiffness;
import java.util.Arrays;

/**
 * The discrete Kirchhoff triangle: a thin plate in bending, with deflection w and its slopes w,x
 * and w,y at each corner.
 *
 * <p>The slopes are quadratic over the triangle. At the corners they are the unknowns; at the
 * middle of a side, along the side, they are those of the cubic that the side's ends ask for, and
 * across it the mean of the ends. Shear strain is zero at corners and along sides. Curvatures are
 * -w,xx, -w,yy and -2 w,xy, so that a fibre at height z above the middle is strained by z times
 * them.
 *
 * <p>Source: Batoz, Bathe and Ho, A study of three-node triangular plate bending elements, IJNME 15
 * (1980) 1771; written out from its assumptions, not from its tables.
 *
 * <p>One instance serves many triangles in turn. Not shared between threads.
 */
final class KirchhoffTriangle {

  /** Unknowns: w, w,x, w,y of the first corner, of the second, of the third. */
  static final int UNKNOWNS = 9;

  private final double[] x = new double[3];
  private final double[] y = new double[3];

  /** Slopes at the middles of the sides: [side][0 for w,x, 1 for w,y][unknown]. */
  private final double[][][] middle = new double[3][2][UNKNOWNS];

  /** Derivatives of the corners' area coordinates. */
  private final double[] dx = new double[3];

  private final double[] dy = new double[3];
  private final double[][] b = new double[3][UNKNOWNS];
  private double area;

  /** Takes the corners of a triangle, counter-clockwise. */
  void on(double x1, double y1, double x2, double y2, double x3, double y3) {
    x[0] = x1;
    y[0] = y1;
    x[1] = x2;
    y[1] = y2;
    x[2] = x3;
    y[2] = y3;
    area = ((x2 - x1) * (y3 - y1) - (x3 - x1) * (y2 - y1)) / 2;
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      dx[i] = (y[j] - y[k]) / (2 * area);
      dy[i] = (x[k] - x[j]) / (2 * area);
      side(i, j, k);
    }
  }

  /** The slopes at the middle of the side from corner i to j, which lies opposite a third. */
  private void side(int opposite, int i, int j) {
    double length = Math.hypot(x[j] - x[i], y[j] - y[i]);
    double sx = (x[j] - x[i]) / length;
    double sy = (y[j] - y[i]) / length;
    double[] gx = middle[opposite][0];
    double[] gy = middle[opposite][1];
    Arrays.fill(gx, 0);
    Arrays.fill(gy, 0);
    gx[3 * j] = 1.5 * sx / length;
    gx[3 * i] = -gx[3 * j];
    gy[3 * j] = 1.5 * sy / length;
    gy[3 * i] = -gy[3 * j];
    for (int end : new int[] {i, j}) {
      gx[3 * end + 1] = 0.5 - 0.75 * sx * sx;
      gx[3 * end + 2] = -0.75 * sx * sy;
      gy[3 * end + 1] = -0.75 * sx * sy;
      gy[3 * end + 2] = 0.5 - 0.75 * sy * sy;
    }
  }

  double area() {
    return area;
  }

  /** Sets {@link #b} to the curvatures by unknowns at area coordinates (p, q, r). */
  private void curvaturesByUnknowns(double p, double q, double r) {
    double[] at = {p, q, r};
    for (double[] row : b) {
      Arrays.fill(row, 0);
    }
    for (int i = 0; i < 3; i++) {
      double cornerX = (4 * at[i] - 1) * dx[i];
      double cornerY = (4 * at[i] - 1) * dy[i];
      b[0][3 * i + 1] -= cornerX;
      b[1][3 * i + 2] -= cornerY;
      b[2][3 * i + 1] -= cornerY;
      b[2][3 * i + 2] -= cornerX;
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      double midX = 4 * (at[j] * dx[k] + at[k] * dx[j]);
      double midY = 4 * (at[j] * dy[k] + at[k] * dy[j]);
      for (int u = 0; u < UNKNOWNS; u++) {
        double gx = middle[i][0][u];
        double gy = middle[i][1][u];
        b[0][u] -= midX * gx;
        b[1][u] -= midY * gy;
        b[2][u] -= midY * gx + midX * gy;
      }
    }
  }

  /** The stiffness, row by row; exact, since curvatures are linear. */
  void stiffness(PlaneStiffness d, double[] k) {
    Arrays.fill(k, 0);
    double weight = area / 3;
    for (int point = 0; point < 3; point++) {
      curvaturesByUnknowns(point == 0 ? 0 : 0.5, point == 1 ? 0 : 0.5, point == 2 ? 0 : 0.5);
      for (int u = 0; u < UNKNOWNS; u++) {
        double mx = weight * d.x(b[0][u], b[1][u], b[2][u]);
        double my = weight * d.y(b[0][u], b[1][u], b[2][u]);
        double mxy = weight * d.shear(b[0][u], b[1][u], b[2][u]);
        for (int v = 0; v < UNKNOWNS; v++) {
          k[UNKNOWNS * u + v] += mx * b[0][v] + my * b[1][v] + mxy * b[2][v];
        }
      }
    }
  }

  /** The curvatures at area coordinates (p, q, r), from the nine unknowns. */
  void curvatures(double p, double q, double r, double[] unknowns, double[] into) {
    curvaturesByUnknowns(p, q, r);
    for (int row = 0; row < 3; row++) {
      double sum = 0;
      for (int u = 0; u < UNKNOWNS; u++) {
        sum += b[row][u] * unknowns[u];
      }
      into[row] = sum;
    }
  }
}
