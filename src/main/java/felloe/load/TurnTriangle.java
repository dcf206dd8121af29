package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.Arrays;

/**
 * A triangle under loads in its plane, with displacements u and v and a turn at each corner.
 *
 * <p>What it strains is the mean over the triangle, into which the turns come through the sides
 * that they bow, and a part that changes linearly over it, from how the turns differ from that of
 * the triangle as a whole. A strip that is bent in its plane is as stiff as it is, however long or
 * short the triangles.
 *
 * <p>Source: Felippa, A study of optimal membrane triangles with drilling freedoms, CMAME 192
 * (2003) 2125, the triangle named OPT there; from memory, and held against bent strips. For stock
 * that is not the same in all directions the share of the changing part is the mean of what squares
 * need that are bent along x and along y.
 */
final class TurnTriangle implements PlateTriangle {

  /** How much of a bowed side's area counts for the mean strain. */
  private static final double BOW = 1.5;

  /** Least share of the changing part: without any, the triangle gives way in itself. */
  private static final double LEAST = 0.01;

  /** How the turns at the corners strain the sides at the first corner: [side][corner]. */
  private static final double[][] SIDES = {{1, 2, 1}, {0, 1, -1}, {-1, -1, -2}};

  private final PlaneStiffness a;
  private final double share;
  private final double[] x = new double[3];
  private final double[] y = new double[3];

  /** Mean strains by unknowns: [strain][unknown]. */
  private final double[][] mean = new double[3][UNKNOWNS];

  /** Turns of the corners against the whole, by unknowns: [corner][unknown]. */
  private final double[][] turn = new double[3][UNKNOWNS];

  /** Changing strains at the corners by turns of corners: [corner][strain][corner]. */
  private final double[][][] changing = new double[3][3][3];

  /** Strains from those along the sides: [strain][side]. */
  private final double[][] along = new double[3][3];

  private final double[][] b = new double[3][UNKNOWNS];
  private double area;

  /**
   * For a plate.
   *
   * @param a membrane stiffness, N/mm
   */
  TurnTriangle(PlaneStiffness a) {
    this(a, share(a));
  }

  private TurnTriangle(PlaneStiffness a, double share) {
    this.a = a;
    this.share = share;
  }

  /** The share of the changing part, such that bent squares are as stiff as they are. */
  private static double share(PlaneStiffness a) {
    // A square turned by a quarter under the same load is one of turned stock.
    return Math.max(LEAST, (alongX(a) + alongX(a.turned(90))) / 2);
  }

  private static double alongX(PlaneStiffness a) {
    double mean = energy(a, 0);
    // Twice the energy of a unit square under a pull that grows with y.
    return (a.underPull(1, 0, 0)[0] / 12 - mean) / (energy(a, 1) - mean);
  }

  /** Twice the energy of a bent unit square of two triangles, the mean of both ways to halve it. */
  private static double energy(PlaneStiffness a, double share) {
    double[] pull = a.underPull(1, 0, 0);
    double[] k = new double[UNKNOWNS * UNKNOWNS];
    double[] own = new double[UNKNOWNS];
    TurnTriangle triangle = new TurnTriangle(a, share);
    double sum = 0;
    for (int[] corners : new int[][] {{0, 1, 2}, {0, 2, 3}, {0, 1, 3}, {1, 2, 3}}) {
      for (int c = 0; c < 3; c++) {
        double x = corners[c] == 0 || corners[c] == 3 ? -0.5 : 0.5;
        double y = corners[c] < 2 ? -0.5 : 0.5;
        triangle.x[c] = x;
        triangle.y[c] = y;
        own[3 * c] = pull[0] * x * y + pull[2] * y * y / 2;
        own[3 * c + 1] = (pull[1] * y * y - pull[0] * x * x) / 2;
        own[3 * c + 2] = -pull[0] * x - pull[2] * y / 2;
      }
      triangle.set();
      triangle.stiffness(k, 0);
      for (int u = 0; u < k.length; u++) {
        sum += k[u] * own[u / UNKNOWNS] * own[u % UNKNOWNS] / 2;
      }
    }
    return sum;
  }

  @Override
  public void on(PlateMesh mesh, int t) {
    for (int c = 0; c < 3; c++) {
      x[c] = mesh.x(mesh.corner(t, c));
      y[c] = mesh.y(mesh.corner(t, c));
    }
    set();
  }

  private void set() {
    area = ((x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0])) / 2;
    for (int i = 0; i < 3; i++) {
      int j = (i + 1) % 3;
      int k = (i + 2) % 3;
      double dx = x[k] - x[j];
      double dy = y[j] - y[k];
      double ox = x[j] - x[i];
      double oy = y[j] - y[i];
      double px = x[k] - x[i];
      double py = y[i] - y[k];
      set(mean, 0, i, dy, 0, BOW / 6 * dy * (py - oy));
      set(mean, 1, i, 0, dx, BOW / 6 * dx * (px + ox));
      set(mean, 2, i, dx, dy, BOW / 3 * (px * py + ox * oy));
      for (int c = 0; c < 3; c++) {
        turn[c][3 * i] = dx / (4 * area);
        turn[c][3 * i + 1] = -dy / (4 * area);
        turn[c][3 * i + 2] = c == i ? 1 : 0;
      }
      // The side from corner i to the next.
      double square = 4 * area * area;
      along[0][i] = dy * py / square;
      along[1][i] = dx * px / square;
      along[2][i] = (dy * px + dx * py) / square;
    }
    changing();
  }

  private void set(double[][] into, int strain, int corner, double u, double v, double turn) {
    into[strain][3 * corner] = u / (2 * area);
    into[strain][3 * corner + 1] = v / (2 * area);
    into[strain][3 * corner + 2] = turn / (2 * area);
  }

  /** Strains at the corners that change over the triangle: those of its sides, put together. */
  private void changing() {
    double part = 1.5 * Math.sqrt(share) * 2 * area / 3;
    for (int at = 0; at < 3; at++) {
      for (int strain = 0; strain < 3; strain++) {
        for (int c = 0; c < 3; c++) {
          double sum = 0;
          for (int side = 0; side < 3; side++) {
            // The same for each corner, with sides and corners counted from it.
            sum += along[strain][side] * SIDES[(side - at + 3) % 3][(c - at + 3) % 3];
          }
          changing[at][strain][c] = part * sum;
        }
      }
    }
  }

  @Override
  public double area() {
    return area;
  }

  @Override
  public void stiffness(double[] k, int from) {
    Arrays.fill(k, from, from + UNKNOWNS * UNKNOWNS, 0);
    strains(0, 0, 0, 1);
    add(area, k, from);
    for (int side = 0; side < 3; side++) {
      strains(side == 0 ? 0 : 0.5, side == 1 ? 0 : 0.5, side == 2 ? 0 : 0.5, 0);
      add(area / 3, k, from);
    }
  }

  private void add(double weight, double[] k, int from) {
    for (int u = 0; u < UNKNOWNS; u++) {
      double nx = weight * a.x(b[0][u], b[1][u], b[2][u]);
      double ny = weight * a.y(b[0][u], b[1][u], b[2][u]);
      double nxy = weight * a.shear(b[0][u], b[1][u], b[2][u]);
      for (int v = 0; v < UNKNOWNS; v++) {
        k[from + UNKNOWNS * u + v] += nx * b[0][v] + ny * b[1][v] + nxy * b[2][v];
      }
    }
  }

  @Override
  public void at(double p, double q, double r) {
    strains(p, q, r, 1);
  }

  /** Sets {@link #b} to the changing strains by unknowns at a place, and so many times the mean. */
  private void strains(double p, double q, double r, double means) {
    for (int strain = 0; strain < 3; strain++) {
      for (int u = 0; u < UNKNOWNS; u++) {
        b[strain][u] = means * mean[strain][u];
      }
      for (int c = 0; c < 3; c++) {
        double by =
            p * changing[0][strain][c] + q * changing[1][strain][c] + r * changing[2][strain][c];
        for (int u = 0; u < UNKNOWNS; u++) {
          b[strain][u] += by * turn[c][u];
        }
      }
    }
  }

  @Override
  public void strains(double[] unknowns, double[] into, int from) {
    for (int row = 0; row < 3; row++) {
      double sum = 0;
      for (int u = 0; u < UNKNOWNS; u++) {
        sum += b[row][u] * unknowns[u];
      }
      into[from + row] = sum;
    }
  }
}
