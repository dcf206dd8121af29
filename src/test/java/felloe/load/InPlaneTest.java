package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.laminate.PlaneStiffness;
import felloe.mesh.Grids;
import felloe.mesh.PlateMesh;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Plates in their plane: bent strips have closed forms in any text on the strength of materials.
 */
class InPlaneTest {

  private static final PlaneStiffness METAL = Isotropic.membrane(70_000, 0.33, 5);

  private static final PlaneStiffness CLOTH =
      new PlaneStiffness(45_000, 2_500, 45_000, 0, 0, 3_000);

  private static final PlaneStiffness WOOD = new PlaneStiffness(12_000, 300, 2_500, 0, 0, 700);

  private static PlateMesh strip(int n, boolean rising, double length, double height) {
    return Grids.grid(n, rising, (x, y) -> length * x, (x, y) -> height * (y - 0.5));
  }

  /** Energy of pure bending, as the triangles have it, over that of the closed form. */
  private static double bent(PlaneStiffness a, PlateMesh mesh, double length, double height) {
    double[] pull = a.underPull(1, 0, 0);
    double[] u = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      double x = mesh.x(i);
      double y = mesh.y(i);
      u[3 * i] = pull[0] * x * y + pull[2] * y * y / 2;
      u[3 * i + 1] = (pull[1] * y * y - pull[0] * x * x) / 2;
      u[3 * i + 2] = -pull[0] * x - pull[2] * y / 2;
    }
    double[] forces = new MembraneModel(mesh, a, new BitSet()).forces(u);
    double work = 0;
    for (int i = 0; i < u.length; i++) {
      work += forces[i] * u[i];
    }
    return work / (pull[0] * height * height * height / 12 * length);
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "4, 1", "1, 4", "40, 1"})
  void metalIsBentInItsPlaneExactlyByTrianglesOfAnyLength(double length, double height) {
    for (boolean rising : new boolean[] {true, false}) {
      PlateMesh mesh = strip(1, rising, length, height);
      assertEquals(1, bent(METAL, mesh, length, height), 1e-9);
    }
  }

  @ParameterizedTest
  @CsvSource({"1, 1", "4, 1", "1, 4"})
  void soAreClothAndWoodAlongTheirFibres(double length, double height) {
    for (PlaneStiffness a : List.of(CLOTH, WOOD, WOOD.turned(90))) {
      assertEquals(1, bent(a, strip(2, true, length, height), length, height), 1e-9);
    }
  }

  /** The stock is the same, only drawn aslant, so that finer triangles must agree. */
  @Test
  void clothAtAnAngleSettlesToTheSame() {
    for (PlaneStiffness a : List.of(CLOTH.turned(45), CLOTH.turned(20))) {
      double coarse = bent(a, strip(4, true, 1, 1), 1, 1) - 1;
      double fine = bent(a, strip(8, true, 1, 1), 1, 1) - 1;
      assertTrue(fine < 0.3 * coarse && fine < 0.04 && fine > 0, coarse + " " + fine);
    }
  }

  /** Timoshenko's cantilever: P L^3 / 3 E I + 1.2 P L / G A. */
  @Test
  void aCantileverSinksAsTimoshenkoSays() {
    PlateMesh mesh = strip(16, true, 100, 20);
    BitSet held = new BitSet();
    double[] load = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      if (mesh.x(i) < 1e-9) {
        held.set(3 * i);
        held.set(3 * i + 1, Math.abs(mesh.y(i)) < 1e-9);
      }
      if (mesh.x(i) > 100 - 1e-9) {
        load[3 * i + 1] = 1000.0 / 17;
      }
    }
    MembraneModel model = new MembraneModel(mesh, METAL, held);
    assertTrue(model.isHeld());
    double[] u = model.solve(load);
    double inertia = 5 * 20 * 20 * 20 / 12.0;
    double exact = 1000 * 1e6 / 3 / 70_000 / inertia + 1.2 * 1000 * 100 / (70_000 / 2.66 * 100);
    int tip = mesh.nearest(new Point(100, 0));
    assertEquals(exact, u[3 * tip + 1], 0.01 * exact);
  }
}
