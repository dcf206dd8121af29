package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.Fineness;
import felloe.mesh.Grids;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rectangular plates against series and handbook tables: Timoshenko and Woinowsky-Krieger, Theory
 * of Plates and Shells (their printed figures from memory), and Roark's Formulas, 7th ed., Table
 * 11.4.
 */
class RectangularPlateTest {

  private static final double NU = 0.3;
  private static final PlaneStiffness D = Isotropic.stiffness(1e6, NU);
  private static final double A = 100;

  private static PlateMesh mesh(double a, double b) {
    Region region =
        Region.of(
            Contour.polygon(
                List.of(new Point(0, 0), new Point(a, 0), new Point(a, b), new Point(0, b))));
    Point middle = new Point(a / 2, b / 2);
    Point edge = new Point(a / 2, 0);
    Point side = new Point(0, b / 2);
    return PlateMesher.mesh(
        region, Fineness.of(Math.max(a, b) / 36), List.of(middle, edge, side), List.of());
  }

  private static BitSet edges(PlateMesh mesh, double a, double b, boolean clamped) {
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      boolean upright = mesh.x(i) < 1e-9 || mesh.x(i) > a - 1e-9;
      boolean level = mesh.y(i) < 1e-9 || mesh.y(i) > b - 1e-9;
      if (upright || level) {
        held.set(3 * i);
        held.set(3 * i + 1, clamped || level || held.get(3 * i + 1));
        held.set(3 * i + 2, clamped || upright);
      }
    }
    return held;
  }

  private static double moment(PlaneStiffness d, double[] k, int node) {
    return d.x(k[3 * node], k[3 * node + 1], k[3 * node + 2]);
  }

  private static double momentY(PlaneStiffness d, double[] k, int node) {
    return d.y(k[3 * node], k[3 * node + 1], k[3 * node + 2]);
  }

  /** Levy's series: deflection 0.0040624 q a^4 / D, and 0.010129 at b/a 2, and moments. */
  @ParameterizedTest
  @CsvSource({"1, 0.0040624, 0.04789, 0.04789", "2, 0.010129, 0.10168, 0.04635"})
  void simplySupportedUnderPressure(double ratio, double deflection, double mx, double my) {
    double b = ratio * A;
    PlateMesh mesh = mesh(A, b);
    BendingModel model = new BendingModel(mesh, D, edges(mesh, A, b, false));
    double[] u = model.solve(model.pressure(1));
    double[] k = model.curvatures(u);
    int middle = mesh.node(new Point(A / 2, b / 2)).orElseThrow();
    double scale = D.m11() / Math.pow(A, 4);
    assertEquals(deflection, u[3 * middle] * scale, 0.01 * deflection);
    assertEquals(mx, moment(D, k, middle) / A / A, 0.01 * mx);
    assertEquals(my, momentY(D, k, middle) / A / A, 0.01 * mx);
  }

  /** Series in hyperbolic tangents: 0.0116008, 0.014867 at 1.4, 0.016524 at 2. Roark case 1b. */
  @ParameterizedTest
  @CsvSource({"1, 0.0116008, 0.1267", "1.4, 0.014867, 0.1621", "2, 0.016524, 0.1805"})
  void simplySupportedUnderAForceInTheMiddle(double ratio, double deflection, double roark) {
    double b = ratio * A;
    PlateMesh mesh = mesh(A, b);
    BendingModel model = new BendingModel(mesh, D, edges(mesh, A, b, false));
    double[] load = new double[3 * mesh.nodes()];
    int middle = mesh.node(new Point(A / 2, b / 2)).orElseThrow();
    load[3 * middle] = 1000;
    double found = model.solve(load)[3 * middle] * D.m11() / 1000 / A / A;
    assertEquals(deflection, found, 0.01 * deflection);
    // Roark writes y = alpha W b^2 / (E t^3), and 12 (1 - nu^2) is 10.92.
    assertEquals(roark, 10.92 * found, 0.01 * roark);
  }

  /** Ritz with 16 by 16 terms: 0.0012653, and at b/a 2 0.002533, with moments at the edge. */
  @ParameterizedTest
  @CsvSource({"1, 0.0012653, 0.02291, -0.05133", "2, 0.002533, 0.04115, -0.08287"})
  void clampedUnderPressure(double ratio, double deflection, double centre, double edge) {
    double b = ratio * A;
    PlateMesh mesh = mesh(A, b);
    BendingModel model = new BendingModel(mesh, D, edges(mesh, A, b, true));
    double[] u = model.solve(model.pressure(1));
    double[] k = model.curvatures(u);
    int middle = mesh.node(new Point(A / 2, b / 2)).orElseThrow();
    int side = mesh.node(new Point(0, b / 2)).orElseThrow();
    double scale = D.m11() / Math.pow(A, 4);
    assertEquals(deflection, u[3 * middle] * scale, 0.01 * deflection);
    assertEquals(centre, moment(D, k, middle) / A / A, 0.01 * centre);
    assertEquals(edge, moment(D, k, side) / A / A, 0.02 * Math.abs(edge));
  }

  /** Ritz and Richardson 0.005612; Roark case 8b 0.0611; edge moment 0.1257 P, from memory. */
  @Test
  void clampedUnderAForceInTheMiddle() {
    PlateMesh mesh = mesh(A, A);
    BendingModel model = new BendingModel(mesh, D, edges(mesh, A, A, true));
    double[] load = new double[3 * mesh.nodes()];
    int middle = mesh.node(new Point(A / 2, A / 2)).orElseThrow();
    load[3 * middle] = 1000;
    double[] u = model.solve(load);
    double found = u[3 * middle] * D.m11() / 1000 / A / A;
    assertEquals(0.005612, found, 0.01 * 0.005612);
    assertEquals(0.0611, 10.92 * found, 0.01 * 0.0611);
    int side = mesh.node(new Point(0, A / 2)).orElseThrow();
    assertEquals(-0.1257, moment(D, model.curvatures(u), side) / 1000, 0.02 * 0.1257);
  }

  /** A square cantilever: independent triangles 48 by 48 gave 0.1291 and 0.1272 at the tip. */
  @Test
  void aSquareCantileverUnderPressure() {
    PlateMesh mesh = mesh(A, A);
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.x(i) < 1e-9) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    BendingModel model = new BendingModel(mesh, D, held);
    double[] u = model.solve(model.pressure(1));
    double scale = D.m11() / Math.pow(A, 4);
    assertEquals(0.1291, u[3 * mesh.nearest(new Point(A, A / 2))] * scale, 0.0013);
    assertEquals(0.1272, u[3 * mesh.nearest(new Point(A, A))] * scale, 0.0013);
    double root = moment(D, model.curvatures(u), mesh.node(new Point(0, A / 2)).orElseThrow());
    assertEquals(0.530, Math.abs(root) / A / A, 0.02 * 0.530);
  }

  /**
   * An orthotropic plate simply supported under pressure: Navier's double series, the closed form
   * of any text on laminates, w = 16 q / pi^6 sum 1 / (m n (D11 (m/a)^4 + 2 (D12 + 2 D66) (m n / a
   * b)^2 + D22 (n/b)^4)).
   */
  @ParameterizedTest
  @CsvSource({"12, 1, 0.3, 0.6", "1, 4, 0.3, 0.5", "3, 1, 0.1, 2"})
  void orthotropicSimplySupported(double d11, double d22, double d12, double d66) {
    double b = 1.3 * A;
    PlaneStiffness d = new PlaneStiffness(1e6 * d11, 1e6 * d12, 1e6 * d22, 0, 0, 1e6 * d66);
    PlateMesh mesh = mesh(A, b);
    BendingModel model = new BendingModel(mesh, d, edges(mesh, A, b, false));
    double[] u = model.solve(model.pressure(1));
    double w = 0;
    double mx = 0;
    for (int m = 1; m < 200; m += 2) {
      for (int n = 1; n < 200; n += 2) {
        double p = m / A;
        double q = n / b;
        double stiff =
            d.m11() * Math.pow(p, 4)
                + 2 * (d.m12() + 2 * d.m66()) * p * p * q * q
                + d.m22() * Math.pow(q, 4);
        double sign = Math.sin(m * Math.PI / 2) * Math.sin(n * Math.PI / 2);
        double term = 16 / Math.pow(Math.PI, 6) / m / n / stiff * sign;
        w += term;
        mx += term * Math.PI * Math.PI * (d.m11() * p * p + d.m12() * q * q);
      }
    }
    int middle = mesh.node(new Point(A / 2, b / 2)).orElseThrow();
    assertEquals(w, u[3 * middle], 0.01 * w);
    assertEquals(mx, moment(d, model.curvatures(u), middle), 0.015 * mx);
  }

  /**
   * A plate skewed by 60 degrees, two sides supported, two free: Razzaque 1973, 0.7945e-2 q L^4 /
   * D, from memory. Independent triangles 16, 32 and 64 a side gave 0.7869, 0.7914 and 0.7928.
   */
  @ParameterizedTest
  @CsvSource({"16, 0.7869", "32, 0.7914"})
  void aSkewPlate(int n, double independent) {
    double h = A * Math.sin(Math.PI / 3);
    PlateMesh mesh = Grids.grid(n, false, (x, y) -> A * (x + y / 2), (x, y) -> h * y);
    PlaneStiffness d = Isotropic.stiffness(1e6, 0.31);
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.y(i) < 1e-9 || mesh.y(i) > h - 1e-9) {
        held.set(3 * i, 3 * i + 2);
      }
    }
    BendingModel model = new BendingModel(mesh, d, held);
    double[] u = model.solve(model.pressure(1));
    int middle = mesh.nearest(new Point(0.75 * A, h / 2));
    double found = u[3 * middle] * d.m11() / Math.pow(A, 4) * 100;
    assertEquals(0.7945, found, 0.015 * 0.7945);
    assertEquals(independent, found, 0.005 * independent);
  }

  /**
   * The order of convergence on square grids of a quarter plate: the error falls by about four when
   * the elements are halved. Independent triangles gave, for N = 4, 8, 16: simply supported under
   * pressure +0.06, +0.03, +0.01 %; clamped under pressure +6.49, +1.68, +0.42 %; simply supported
   * under a force +0.29, +0.11, +0.04 %; clamped under a force +1.70, +0.52, +0.15 %. With the
   * squares cut the other way: simply supported under pressure -2.21, -0.54, -0.13 %; clamped under
   * a force +5.32, +1.71, +0.52 %.
   */
  @ParameterizedTest
  @CsvSource({
    "true, false, true, 0.00406235, 0.06, 0.03, 0.01",
    "true, true, true, 0.00126532, 6.49, 1.68, 0.42",
    "true, false, false, 0.01160084, 0.29, 0.11, 0.04",
    "true, true, false, 0.00561202, 1.70, 0.52, 0.15",
    "false, false, true, 0.00406235, -2.21, -0.54, -0.13",
    "false, true, false, 0.00561202, 5.32, 1.71, 0.52"
  })
  void theErrorFallsWithTheSquareOfTheElements(
      boolean rising,
      boolean clamped,
      boolean pressure,
      double exact,
      double four,
      double eight,
      double sixteen) {
    double[] published = {four, eight, sixteen};
    double[] errors = new double[3];
    for (int i = 0; i < 3; i++) {
      int n = 4 << i;
      errors[i] = 100 * (quarter(n, rising, clamped, pressure) / exact - 1);
      assertEquals(published[i], errors[i], 0.06 + 0.05 * Math.abs(published[i]), "N " + n);
    }
    if (clamped) {
      double order = Math.log(errors[1] / errors[2]) / Math.log(2);
      assertTrue(order > 1.6, "order " + order);
    }
  }

  /** A quarter of a square plate of side 2, centre at (0, 0): deflection over q a^4 or P a^2. */
  private static double quarter(int n, boolean rising, boolean clamped, boolean pressure) {
    PlateMesh mesh = Grids.grid(n, rising, (x, y) -> A / 2 * x, (x, y) -> A / 2 * y);
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      boolean right = mesh.x(i) > A / 2 - 1e-9;
      boolean top = mesh.y(i) > A / 2 - 1e-9;
      if (mesh.x(i) < 1e-9) {
        held.set(3 * i + 1);
      }
      if (mesh.y(i) < 1e-9) {
        held.set(3 * i + 2);
      }
      if (right || top) {
        held.set(3 * i);
        if (clamped || top) {
          held.set(3 * i + 1);
        }
        if (clamped || right) {
          held.set(3 * i + 2);
        }
      }
    }
    BendingModel model = new BendingModel(mesh, D, held);
    double[] load = new double[3 * mesh.nodes()];
    if (pressure) {
      load = model.pressure(1);
    } else {
      load[0] = 250;
    }
    double w = model.solve(load)[0] * D.m11();
    return pressure ? w / Math.pow(A, 4) : w / 1000 / A / A;
  }
}
