package felloe.load;

import felloe.laminate.PlaneStiffness;
import felloe.mesh.PlateMesh;
import java.util.Arrays;

/**
 * The discrete Kirchhoff-Mindlin triangle: a plate in bending that also gives in shear across its
 * thickness, with deflection w and the slopes of its cross-sections at each corner.
 *
 * <p>The slopes g are quadratic over the triangle: at the middle of a side, along the side, they
 * are the mean of its ends and a part of their own; across it the mean. Shear strain along a side
 * is constant, w,s less the mean of g; the part of its own follows from the balance of a strip
 * along the side, moment against shear. In a plate that does not give in shear it is the discrete
 * Kirchhoff triangle. Shear strain at a corner is that of its two sides, and linear between.
 * Curvatures are -gx,x, -gy,y and -(gx,y + gy,x), so that a fibre at height z above the middle is
 * strained by z times them.
 *
 * <p>Source: Katili, A new discrete Kirchhoff-Mindlin element (DKMT), IJNME 36 (1993) 1859; written
 * out from its assumptions, from memory. Thin limit: Batoz, Bathe and Ho, A study of three-node
 * triangular plate bending elements, IJNME 15 (1980) 1771.
 *
 * <p>Unknowns of a corner: w, gx, gy. What it strains are curvatures.
 */
final class ShearTriangle implements PlateTriangle {

  private final PlaneStiffness d;
  private final double shear;
  private final double[] x = new double[3];
  private final double[] y = new double[3];

  /** Slopes at the middles of the sides: [side][0 for gx, 1 for gy][unknown]. */
  private final double[][][] middle = new double[3][2][UNKNOWNS];

  /** Shear strain along the sides: [side][unknown]. */
  private final double[][] along = new double[3][UNKNOWNS];

  private final boolean[] free = new boolean[3];
  private final double[] sx = new double[3];
  private final double[] sy = new double[3];

  /** Shear strains at the corners: [corner][0 for x, 1 for y][unknown]. */
  private final double[][][] corner = new double[3][2][UNKNOWNS];

  /** Derivatives of the corners' area coordinates. */
  private final double[] dx = new double[3];

  private final double[] dy = new double[3];
  private final double[][] b = new double[3][UNKNOWNS];
  private double area;

  /**
   * For a plate.
   *
   * @param d bending stiffness, N mm
   * @param shear stiffness against shear across the thickness, N/mm; infinite for a thin plate
   */
  ShearTriangle(PlaneStiffness d, double shear) {
    this.d = d;
    this.shear = shear;
  }

  /**
   * Takes a triangle of a mesh. Along a side beside a free edge the slope is straight: there shear
   * balances the twist that ends at the edge, and not the moment along it.
   */
  @Override
  public void on(PlateMesh mesh, int t) {
    int p = mesh.corner(t, 0);
    int q = mesh.corner(t, 1);
    int r = mesh.corner(t, 2);
    free[0] = mesh.besideEdge(q) && mesh.besideEdge(r);
    free[1] = mesh.besideEdge(r) && mesh.besideEdge(p);
    free[2] = mesh.besideEdge(p) && mesh.besideEdge(q);
    on(mesh.x(p), mesh.y(p), mesh.x(q), mesh.y(q), mesh.x(r), mesh.y(r));
  }

  private void on(double x1, double y1, double x2, double y2, double x3, double y3) {
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
    for (int i = 0; i < 3 && shear < Double.POSITIVE_INFINITY; i++) {
      corner(i);
    }
  }

  /** The slopes at the middle of the side from corner i to j, which lies opposite a third. */
  private void side(int opposite, int i, int j) {
    double ox = x[j] - x[i];
    double oy = y[j] - y[i];
    double length = Math.sqrt(ox * ox + oy * oy);
    double cx = ox / length;
    double cy = oy / length;
    sx[opposite] = cx;
    sy[opposite] = cy;
    double xx = cx * cx;
    double yy = cy * cy;
    double xy = 2 * cx * cy;
    double stiff = d.square(xx, yy, xy);
    double phi = 12 * stiff / (shear * length * length);
    double[] gx = middle[opposite][0];
    double[] gy = middle[opposite][1];
    double[] g = along[opposite];
    Arrays.fill(gx, 0);
    Arrays.fill(gy, 0);
    Arrays.fill(g, 0);
    // What w,s lies above the mean slope, shared between a curved slope and shear.
    double[] gap = {-1 / length, -cx / 2, -cy / 2};
    boolean straight = free[opposite] && shear < Double.POSITIVE_INFINITY;
    double bend = straight ? 0 : 1.5 / (1 + phi);
    double slip = straight ? 1 : phi / (1 + phi);
    for (int end : new int[] {i, j}) {
      for (int u = 0; u < 3; u++) {
        double part = u == 0 && end == j ? -gap[0] : gap[u];
        gx[3 * end + u] += bend * part * cx;
        gy[3 * end + u] += bend * part * cy;
        g[3 * end + u] += slip * part;
      }
      gx[3 * end + 1] += 0.5;
      gy[3 * end + 2] += 0.5;
    }
  }

  /** Shear strain at a corner, from those along the two sides that meet there. */
  private void corner(int i) {
    int p = (i + 1) % 3;
    int q = (i + 2) % 3;
    double det = sx[p] * sy[q] - sy[p] * sx[q];
    for (int u = 0; u < UNKNOWNS; u++) {
      corner[i][0][u] = (along[p][u] * sy[q] - along[q][u] * sy[p]) / det;
      corner[i][1][u] = (along[q][u] * sx[p] - along[p][u] * sx[q]) / det;
    }
  }

  @Override
  public double area() {
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

  @Override
  public void stiffness(double[] k, int from) {
    Arrays.fill(k, from, from + UNKNOWNS * UNKNOWNS, 0);
    double weight = area / 3;
    for (int point = 0; point < 3; point++) {
      curvaturesByUnknowns(point == 0 ? 0 : 0.5, point == 1 ? 0 : 0.5, point == 2 ? 0 : 0.5);
      for (int u = 0; u < UNKNOWNS; u++) {
        double mx = weight * d.x(b[0][u], b[1][u], b[2][u]);
        double my = weight * d.y(b[0][u], b[1][u], b[2][u]);
        double mxy = weight * d.shear(b[0][u], b[1][u], b[2][u]);
        for (int v = 0; v < UNKNOWNS; v++) {
          k[from + UNKNOWNS * u + v] += mx * b[0][v] + my * b[1][v] + mxy * b[2][v];
        }
      }
      if (shear < Double.POSITIVE_INFINITY) {
        shearStiffness((point + 1) % 3, (point + 2) % 3, weight * shear / 4, k, from);
      }
    }
  }

  /** What shear at the middle between two corners adds. */
  private void shearStiffness(int i, int j, double weight, double[] k, int from) {
    for (int way = 0; way < 2; way++) {
      double[] one = corner[i][way];
      double[] two = corner[j][way];
      for (int u = 0; u < UNKNOWNS; u++) {
        double force = weight * (one[u] + two[u]);
        for (int v = 0; v < UNKNOWNS; v++) {
          k[from + UNKNOWNS * u + v] += force * (one[v] + two[v]);
        }
      }
    }
  }

  @Override
  public void at(double p, double q, double r) {
    curvaturesByUnknowns(p, q, r);
  }

  @Override
  public void strains(double[] unknowns, double[] into, int from) {
    for (int row = 0; row < 3; row++) {
      double[] by = b[row];
      double sum = 0;
      for (int u = 0; u < UNKNOWNS; u++) {
        sum += by[u] * unknowns[u];
      }
      into[from + row] = sum;
    }
  }
}
