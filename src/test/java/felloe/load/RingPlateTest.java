package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.Fineness;
import felloe.mesh.PlateMesh;
import felloe.mesh.PlateMesher;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Ring plates against Roark's Formulas, 7th ed., Table 11.2, and closed forms of the same kind:
 * outer radius a, inner b, nu 0.3. Deflections within 1 %, moments within 2 %.
 */
class RingPlateTest {

  private static final PlaneStiffness D = Isotropic.stiffness(1e6, 0.3);
  private static final double A = 150;

  /** A ring with its mesh. */
  private static final class Ring {

    private final double part;
    private final PlateMesh mesh;

    Ring(double part) {
      this.part = part;
      Region ring =
          new Region(
              Contour.circle(Point.ORIGIN, A), List.of(Contour.circle(Point.ORIGIN, A * part)));
      double edge = Math.min(A / 20, A * (1 - part) / 8);
      mesh =
          PlateMesher.mesh(
              ring, Fineness.of(edge), List.of(new Point(A, 0), new Point(A * part, 0)), List.of());
    }

    private boolean outer(int node) {
      return Math.hypot(mesh.x(node), mesh.y(node)) > A - 1e-6;
    }

    private boolean inner(int node) {
      return Math.hypot(mesh.x(node), mesh.y(node)) < A * part + 1e-6;
    }

    BendingModel held(boolean innerW, boolean innerSlope, boolean outerW, boolean slope) {
      BitSet held = new BitSet();
      for (int i = 0; i < mesh.nodes(); i++) {
        if (inner(i)) {
          held.set(3 * i, innerW);
          held.set(3 * i + 1, 3 * i + 3, innerSlope);
        }
        if (outer(i)) {
          held.set(3 * i, outerW);
          held.set(3 * i + 1, 3 * i + 3, slope);
        }
      }
      return new BendingModel(mesh, D, held);
    }

    /** A line load along the rim, w cos(n theta) a millimetre: half of each side to each end. */
    double[] rim(int n) {
      double[] load = new double[3 * mesh.nodes()];
      for (int t = 0; t < mesh.triangles(); t++) {
        for (int c = 0; c < 3; c++) {
          int i = mesh.corner(t, (c + 1) % 3);
          int j = mesh.corner(t, (c + 2) % 3);
          if (outer(i) && outer(j)) {
            double length = 2 * A * Math.asin(mesh.point(i).distance(mesh.point(j)) / 2 / A);
            load[3 * i] += length / 2 * Math.cos(n * mesh.point(i).angle());
            load[3 * j] += length / 2 * Math.cos(n * mesh.point(j).angle());
          }
        }
      }
      return load;
    }

    double deflection(double[] u, double r) {
      return u[3 * mesh.node(new Point(r, 0)).orElseThrow()];
    }

    double radialMoment(BendingModel model, double[] u, double r) {
      double[] k = model.curvatures(u);
      int node = mesh.node(new Point(r, 0)).orElseThrow();
      return D.x(k[3 * node], k[3 * node + 1], k[3 * node + 2]);
    }
  }

  /**
   * Hub clamped, line load on the free rim (Roark 1l with r0 = a): y_a and the moment at the hub.
   */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.269130, 2.55536",
    "0.2, 0.201532, 1.82852",
    "0.3, 0.138947, 1.38200",
    "0.5, 0.050455, 0.788875",
    "0.7, 0.010318, 0.390857"
  })
  void hubClampedLineLoadOnTheRim(double part, double deflection, double moment) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(true, true, false, false);
    double[] u = model.solve(ring.rim(0));
    double scale = D.m11() / Math.pow(A, 3);
    assertEquals(deflection, ring.deflection(u, A) * scale, 0.01 * deflection);
    double found = Math.abs(ring.radialMoment(model, u, A * part)) / A;
    assertEquals(moment, found, 0.02 * moment);
  }

  /** Hub clamped, rim loaded by w cos(theta), which tilts it (closed form with n = 1). */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.403375, 4.960395",
    "0.2, 0.236016, 2.419542",
    "0.3, 0.144563, 1.542970",
    "0.5, 0.048520, 0.779439",
    "0.7, 0.010016, 0.382660"
  })
  void hubClampedRimTilted(double part, double deflection, double moment) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(true, true, false, false);
    double[] u = model.solve(ring.rim(1));
    double scale = D.m11() / Math.pow(A, 3);
    assertEquals(deflection, ring.deflection(u, A) * scale, 0.01 * deflection);
    double found = Math.abs(ring.radialMoment(model, u, A * part)) / A;
    assertEquals(moment, found, 0.02 * moment);
  }

  /** Hub simply supported, line load on the free rim: y_a. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.363864", "0.3, 0.421872", "0.5, 0.386692", "0.7, 0.275324"})
  void hubSupportedLineLoadOnTheRim(double part, double deflection) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(true, false, false, false);
    double[] u = model.solve(ring.rim(0));
    double scale = D.m11() / Math.pow(A, 3);
    assertEquals(deflection, ring.deflection(u, A) * scale, 0.01 * deflection);
  }

  /** Hub clamped, uniform pressure, rim free: y_a and the moment at the hub. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.075693, 0.964567",
    "0.3, 0.031818, 0.410338",
    "0.5, 0.008589, 0.173569",
    "0.7, 0.001096, 0.054076"
  })
  void hubClampedUnderPressure(double part, double deflection, double moment) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(true, true, false, false);
    double[] u = model.solve(model.pressure(1));
    double scale = D.m11() / Math.pow(A, 4);
    assertEquals(deflection, ring.deflection(u, A) * scale, 0.01 * deflection);
    double found = Math.abs(ring.radialMoment(model, u, A * part)) / A / A;
    assertEquals(moment, found, 0.02 * moment);
  }

  /**
   * Roark Table 11.2 case 2b: rim supported, hub guided, uniform pressure: Ky at the hub, printed
   * to four decimals, so the last is the bound where it is more than 1 %.
   */
  @ParameterizedTest
  @CsvSource({"0.1, 0.0575", "0.3, 0.0314", "0.5, 0.0103", "0.7, 0.0015"})
  void rimSupportedHubGuided(double part, double deflection) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(false, true, true, false);
    double[] u = model.solve(model.pressure(1));
    double found = Math.abs(ring.deflection(u, A * part)) * D.m11() / Math.pow(A, 4);
    assertEquals(deflection, found, Math.max(0.00005, 0.01 * deflection));
  }

  /** Roark Table 11.2 case 2e: rim clamped, hub free, uniform pressure: Ky b and K Mra. */
  @ParameterizedTest
  @CsvSource({
    "0.1, 0.0166, 0.1246",
    "0.3, 0.0132, 0.1135",
    "0.5, 0.0053, 0.0800",
    "0.7, 0.0009, 0.0361"
  })
  void rimClampedHubFree(double part, double deflection, double moment) {
    Ring ring = new Ring(part);
    BendingModel model = ring.held(false, false, true, true);
    double[] u = model.solve(model.pressure(1));
    double found = Math.abs(ring.deflection(u, A * part)) * D.m11() / Math.pow(A, 4);
    assertEquals(deflection, found, Math.max(0.00005, 0.01 * deflection));
    double at = Math.abs(ring.radialMoment(model, u, A)) / A / A;
    assertEquals(moment, at, 0.02 * moment);
  }

  /**
   * A line load P on the rim of a ring clamped at its hub: by the closed form the shear Q = P / (2
   * pi r) adds P ln(a/b) / (2 pi k G t) to the deflection, with k 5/6 (Reissner).
   */
  @ParameterizedTest
  @CsvSource({"0.2, 0.201532", "0.3, 0.138947", "0.5, 0.050455"})
  void transverseShearAddsWhatTheClosedFormSays(double part, double deflection) {
    Ring ring = new Ring(part);
    PlateSection section = PlateSection.isotropic(70_000, 0.3, 20, 240);
    BitSet held = new BitSet();
    for (int i = 0; i < ring.mesh.nodes(); i++) {
      if (ring.inner(i)) {
        held.set(3 * i, 3 * i + 3);
      }
    }
    BendingModel model = new BendingModel(ring.mesh, section.d(), section.shear(), held);
    double[] u = model.solve(ring.rim(0));
    double bent = deflection * A * A * A / section.d().m11();
    double sheared = A * Math.log(1 / part) / section.shear();
    double whole = bent + sheared;
    assertEquals(whole, ring.deflection(u, A), 0.005 * whole);
    double share = sheared / bent;
    assertEquals(share, model.shearShare(u), 0.02 * share);
  }
}
