package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Thin plates against closed forms, at about the fineness that demo plates get. */
class PlateBendingTest {

  private static final double NU = 0.3;
  private static final PlaneStiffness D = Isotropic.bending(70_000, NU, 5);
  private static final double A = 150;

  private static Region ring(double inner) {
    return new Region(
        Contour.circle(Point.ORIGIN, A), List.of(Contour.circle(Point.ORIGIN, inner)));
  }

  private static BitSet clampedWithin(PlateMesh mesh, double radius) {
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (Math.hypot(mesh.x(i), mesh.y(i)) < radius + 1e-6) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    return held;
  }

  /** Any constant curvature is met exactly: the patch test. */
  @ParameterizedTest
  @CsvSource({"1, 0, 0", "0, 1, 0", "0, 0, 1", "0.4, -0.7, 0.3"})
  void constantCurvaturesAreExact(double xx, double yy, double xy) {
    PlateMesh mesh = PlateMesher.mesh(ring(40), Fineness.of(25));
    double[] unknowns = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      double x = mesh.x(i);
      double y = mesh.y(i);
      unknowns[3 * i] = -(xx * x * x + yy * y * y + xy * x * y) / 2 + 3 + 0.1 * x;
      unknowns[3 * i + 1] = -(2 * xx * x + xy * y) / 2 + 0.1;
      unknowns[3 * i + 2] = -(2 * yy * y + xy * x) / 2;
    }
    BitSet held = new BitSet();
    held.set(0, 3);
    BendingModel model = new BendingModel(mesh, D, held);
    double[] found = model.curvatures(unknowns);
    double[] forces = model.forces(unknowns);
    for (int i = 0; i < mesh.nodes(); i++) {
      assertEquals(xx, found[3 * i], 1e-8);
      assertEquals(yy, found[3 * i + 1], 1e-8);
      assertEquals(xy, found[3 * i + 2], 1e-8);
      if (!mesh.onEdge(i)) {
        // Constant moments need no load within.
        assertEquals(0, forces[3 * i], 1e-6 * D.m11());
        assertEquals(0, forces[3 * i + 1], 1e-6 * D.m11());
      }
    }
  }

  /**
   * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, art. 16: clamped circular plate
   * under uniform pressure.
   */
  @Test
  void aClampedCircularPlateUnderPressure() {
    PlateMesh mesh = PlateMesher.mesh(Region.of(Contour.circle(Point.ORIGIN, A)), Fineness.of(10));
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.onEdge(i)) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    BendingModel model = new BendingModel(mesh, D, held);
    double[] u = model.solve(model.pressure(0.01));
    double[] k = model.curvatures(u);
    int middle = mesh.nearest(Point.ORIGIN);
    int edge = mesh.nearest(new Point(A, 0));
    double q = 0.01 * A * A;
    assertEquals(1.0 / 64, u[3 * middle] * D.m11() / q / A / A, 0.01 / 64);
    assertEquals(0.08125, moment(k, middle) / q, 0.0008);
    assertEquals(-0.125, moment(k, edge) / q, 0.00125);
  }

  private static double moment(double[] curvatures, int node) {
    return D.x(curvatures[3 * node], curvatures[3 * node + 1], curvatures[3 * node + 2]);
  }

  /**
   * A ring clamped at the hub, one force on its rim. Deflection: closed form by Fourier sum, n = 0
   * to 400. Moment at the hub beside the load, by the same sum; its figure is met within 3 %, since
   * the moment of a held node is spread evenly over its two sides.
   */
  @ParameterizedTest
  @CsvSource({"0.2, 0.17916, 1.6111", "0.3, 0.12645, 1.2349", "0.5, 0.05626, 0.8693"})
  void aRingClampedAtItsHubUnderAForceOnItsRim(double part, double deflection, double moment) {
    Point at = new Point(A, 0);
    Point hub = new Point(A * part, 0);
    PlateMesh mesh = PlateMesher.mesh(ring(A * part), Fineness.of(7), List.of(at, hub), List.of());
    BendingModel model = new BendingModel(mesh, D, clampedWithin(mesh, A * part));
    double[] load = new double[3 * mesh.nodes()];
    int node = mesh.node(at).orElseThrow();
    load[3 * node] = 400;
    double[] u = model.solve(load);
    double[] k = model.curvatures(u);
    assertEquals(deflection, u[3 * node] * D.m11() / 400 / A / A, 0.01 * deflection);
    double found = moment(k, mesh.node(hub).orElseThrow()) / 400;
    assertEquals(moment, Math.abs(found), 0.03 * moment);
    double[] forces = model.forces(u);
    double sum = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      sum += Math.hypot(mesh.x(i), mesh.y(i)) < A * part + 1e-6 ? forces[3 * i] : 0;
    }
    assertEquals(-400, sum, 1e-6);
  }

  /** Goodier and Peterson: a hole much wider than thick in bending, (5 + 3 nu) / (3 + nu). */
  @Test
  void aHoleInABentPlateRaisesTheMomentAsPetersonSays() {
    double expected = (5 + 3 * NU) / (3 + NU);
    PlateMesh mesh = PlateMesher.mesh(square(200, 10), Fineness.of(20));
    assertEquals(expected, atHole(mesh, Double.POSITIVE_INFINITY, 10), 0.01 * expected);
  }

  /**
   * A hole about as wide as the plate is thick, in bending, by Reissner: 3/2 + (3 (1 + nu) K2 - 2
   * K0) / 2 / ((1 + nu) K2 + 2 K0), modified Bessel functions of sqrt(10) radius over thickness.
   * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, from memory; its ends are 3 for
   * a pinhole and Goodier's for a wide hole. On meshes as the program makes them.
   */
  @ParameterizedTest
  @CsvSource({"5, 5", "5.5, 5", "4.3, 6", "3.2, 6", "6.5, 4", "8, 5", "12, 6", "20, 5"})
  void aSmallHoleInABentPlateRaisesTheMomentAsReissnerSays(double hole, double t) {
    PlateSection section = PlateSection.isotropic(70_000, NU, t, 240);
    double mu = Math.sqrt(10) * hole / 2 / t;
    double k0 = besselK(0, mu);
    double k2 = besselK(2, mu);
    double expected = 1.5 + (3 * (1 + NU) * k2 - 2 * k0) / 2 / ((1 + NU) * k2 + 2 * k0);
    Region square = square(15 * hole, hole / 2);
    double edge = 290.0 / 28 * 0.6;
    List<Fineness.Spot> worst = new WorstSpots(square, section).about(new Point(0, hole / 2), edge);
    Fineness fine = new Fineness(edge, 5, 27, 0.33, worst, 40_000, section.edgeRows());
    PlateMesh mesh = PlateMesher.mesh(square, fine);
    double found = atHole(mesh, section.shear() / section.d().m11() * D.m11(), hole / 2);
    assertEquals(expected, found, 0.03 * expected, "hole " + hole + " in " + t);
  }

  /** By its integral: exp(-x cosh s) cosh(n s) over all s above 0. */
  private static double besselK(int n, double x) {
    double sum = 0;
    double step = 1e-3;
    for (int i = 0; i < 8000; i++) {
      double s = (i + 0.5) * step;
      sum += Math.exp(-x * Math.cosh(s)) * Math.cosh(n * s) * step;
    }
    return sum;
  }

  /** The moment beside a hole in the middle of a square that is bent by 1 along x. */
  private static double atHole(PlateMesh mesh, double shear, double radius) {
    double half = 0;
    for (int i = 0; i < mesh.nodes(); i++) {
      half = Math.max(half, mesh.x(i));
    }
    BitSet held = new BitSet();
    held.set(3 * mesh.nearest(new Point(-half, -half)));
    held.set(3 * mesh.nearest(new Point(half, -half)));
    held.set(3 * mesh.nearest(new Point(-half, half)));
    BendingModel model = new BendingModel(mesh, D, shear, held);
    assertTrue(model.isHeld());
    double[] load = new double[3 * mesh.nodes()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        int i = mesh.corner(t, (c + 1) % 3);
        int j = mesh.corner(t, (c + 2) % 3);
        double side = Math.signum(mesh.x(i));
        if (Math.abs(mesh.x(i)) > half - 1e-6 && mesh.x(i) == mesh.x(j)) {
          double length = Math.abs(mesh.y(i) - mesh.y(j));
          load[3 * i + 1] -= side * length / 2;
          load[3 * j + 1] -= side * length / 2;
        }
      }
    }
    double[] k = model.curvatures(model.solve(load));
    return moment(k, mesh.nearest(new Point(0, radius)));
  }

  private static Region square(double half, double radius) {
    return new Region(
        Contour.polygon(
            List.of(
                new Point(-half, -half),
                new Point(half, -half),
                new Point(half, half),
                new Point(-half, half))),
        List.of(Contour.circle(Point.ORIGIN, radius)));
  }

  /**
   * Kirsch, with the finite width of Roark Table 17.1 (Kt on the net section 3 - 3.13 d/w + 3.66
   * (d/w)^2 - 1.53 (d/w)^3): d/w 0.05.
   */
  @Test
  void aHoleInAPulledPlateRaisesTheStressAsKirschSays() {
    double half = 200;
    double width = 2 * half;
    PlateMesh mesh = PlateMesher.mesh(square(half, 10), Fineness.of(20));
    BitSet held = new BitSet();
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.x(i) < -half + 1e-6) {
        held.set(3 * i);
      }
    }
    held.set(3 * mesh.nearest(new Point(-half, -half)) + 1);
    PlaneStiffness a = Isotropic.membrane(70_000, NU, 1);
    MembraneModel model = new MembraneModel(mesh, a, held);
    assertTrue(model.isHeld());
    double[] load = new double[3 * mesh.nodes()];
    for (int t = 0; t < mesh.triangles(); t++) {
      for (int c = 0; c < 3; c++) {
        int i = mesh.corner(t, (c + 1) % 3);
        int j = mesh.corner(t, (c + 2) % 3);
        if (mesh.x(i) > half - 1e-6 && mesh.x(j) > half - 1e-6) {
          double length = Math.abs(mesh.y(i) - mesh.y(j));
          load[3 * i] += length / 2;
          load[3 * j] += length / 2;
        }
      }
    }
    double[][] moved = {model.solve(load)};
    double[] strains = model.strains(moved, NodalRecovery.Told.NONE)[0];
    int top = mesh.nearest(new Point(0, 10));
    double stress = a.x(strains[3 * top], strains[3 * top + 1], strains[3 * top + 2]);
    double part = 20 / width;
    double net = 3 - 3.13 * part + 3.66 * part * part - 1.53 * part * part * part;
    assertEquals(net / (1 - part), stress, 0.01 * 3);
  }

  @Test
  void constantStrainsAreExactInThePlane() {
    PlateMesh mesh = PlateMesher.mesh(ring(40), Fineness.of(25));
    double[] u = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      u[3 * i] = 0.3 * mesh.x(i) + 0.1 * mesh.y(i) + 5;
      u[3 * i + 1] = -0.2 * mesh.y(i) + 0.4 * mesh.x(i);
      u[3 * i + 2] = (0.4 - 0.1) / 2;
    }
    BitSet held = new BitSet();
    held.set(0, 3);
    MembraneModel model = new MembraneModel(mesh, Isotropic.stiffness(1000, 0.3), held);
    double[] found = model.strains(u);
    for (int i = 0; i < mesh.nodes(); i++) {
      assertEquals(0.3, found[3 * i], 1e-8);
      assertEquals(-0.2, found[3 * i + 1], 1e-8);
      assertEquals(0.5, found[3 * i + 2], 1e-8);
    }
  }

  @Test
  void aPlateThatNothingHoldsIsToldApart() {
    PlateMesh mesh = PlateMesher.mesh(ring(40), Fineness.of(40));
    BitSet held = new BitSet();
    held.set(0);
    assertFalse(new BendingModel(mesh, D, held).isHeld());
  }
}
