package felloe.laminate;

import static felloe.laminate.Printed.CLOTH;
import static felloe.laminate.Printed.T300;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What cooling does. */
class WarpTest {

  private static final long SEED = 77;

  // Timoshenko, Analysis of bi-metal thermostats, J. Opt. Soc. Am. 11, 1925, equation 4. For plates
  // of one Poisson's ratio both directions bend as his strip does.
  @Test
  void twoIsotropicSheetsBendAsTimoshenkosBimetalDoes() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      double nu = 0.3;
      double lowE = 50_000 + random.nextDouble() * 150_000;
      double highE = 50_000 + random.nextDouble() * 150_000;
      double lowT = 0.2 + random.nextDouble();
      double highT = 0.2 + random.nextDouble();
      double kelvin = random.nextDouble() * 200 - 100;
      Ply low = new Ply(isotropic(lowE, nu, 1e-5), lowT, 0);
      Ply high = new Ply(isotropic(highE, nu, 2.3e-5), highT, 30);
      Deformation e = Laminate.of(new Stack(List.of(low, high))).warmed(kelvin).deformation();
      double m = lowT / highT;
      double n = lowE / highE;
      double h = lowT + highT;
      double curvature =
          6
              * (2.3e-5 - 1e-5)
              * kelvin
              * (1 + m)
              * (1 + m)
              / (h * (3 * (1 + m) * (1 + m) + (1 + m * n) * (m * m + 1 / (m * n))));
      String which = "seed " + SEED + ", " + i;
      assertEquals(curvature, e.kx(), 1e-12 + 1e-9 * Math.abs(curvature), which);
      assertEquals(curvature, e.ky(), 1e-12 + 1e-9 * Math.abs(curvature), which);
      assertEquals(0, e.kxy(), 1e-12, which);
      assertEquals(
          Math.abs(curvature), e.largestCurvature(), 1e-12 + 1e-9 * Math.abs(curvature), which);
    }
  }

  private static PlyMaterial isotropic(double e, double nu, double alpha) {
    return new PlyMaterial(e, e, nu, e / (2 * (1 + nu))).with(new PlyExpansion(alpha, alpha));
  }

  // Two equal plies crossed: by symmetry ex = ey and kx = -ky, which leaves two equations in e and
  // k that are solved by hand here.
  @Test
  void crossedPliesBendIntoASaddleOfTheClosedForm() {
    PlyMaterial m = T300.with(new PlyExpansion(0.02e-6, 22.5e-6));
    double t = 0.125;
    double kelvin = -100;
    Deformation e = Laminate.of(Stack.of(m, t, 0, 90)).warmed(kelvin).deformation();
    PlaneStiffness q = m.reduced();
    double s = q.m11() + q.m22();
    double d = q.m11() - q.m22();
    double s0 = (q.m11() * 0.02e-6 + q.m12() * 22.5e-6) * kelvin;
    double s90 = (q.m12() * 0.02e-6 + q.m22() * 22.5e-6) * kelvin;
    // N: t (s + 2 c) e - t² d/2 k = t (s0 + s90); M: -t² d/2 e + t³ (s/3 - 2 c/3) k = t²/2 (s90 -
    // s0)
    double a11 = t * (s + 2 * q.m12());
    double a12 = -t * t * d / 2;
    double a22 = t * t * t * (s - 2 * q.m12()) / 3;
    double n = t * (s0 + s90);
    double b = t * t / 2 * (s90 - s0);
    double k = (a11 * b - a12 * n) / (a11 * a22 - a12 * a12);
    assertEquals(k, e.kx(), 1e-9 * Math.abs(k));
    assertEquals(-k, e.ky(), 1e-9 * Math.abs(k));
    assertEquals(e.ex(), e.ey(), 1e-12);
    assertTrue(Math.abs(k) > 1e-3, "such a thin sheet curls up: " + k);
  }

  @Test
  void whatCoolingLeavesBehindHoldsItselfInBalance() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      Laminate laminate = Laminate.of(LaminateLawsTest.stack(random, 1 + random.nextInt(9)));
      double[] sums = LaminateLawsTest.sums(laminate.warmed(-80));
      assertArrayEquals(new double[6], sums, 1e-7, "seed " + SEED + ", " + i);
    }
  }

  @Test
  void aSymmetricStackStaysFlat() {
    PlyMaterial m = T300.with(new PlyExpansion(0.02e-6, 22.5e-6));
    Deformation e =
        Laminate.of(Stack.of(m, 0.125, 0, 45, -45, 90).mirrored()).warmed(-100).deformation();
    assertEquals(0, e.largestCurvature(), 1e-15);
    assertEquals(e.ex(), e.ey(), 1e-15);
  }

  @Test
  void onePlyByItselfStretchesByItsOwnExpansionAndIsNotStressed() {
    PlyMaterial m = T300.with(new PlyExpansion(0.02e-6, 22.5e-6));
    LaminateResponse r = Laminate.of(Stack.of(m, 0.125, 90)).warmed(10);
    assertEquals(225e-6, r.deformation().ex(), 1e-12);
    assertEquals(0.2e-6, r.deformation().ey(), 1e-12);
    assertEquals(0, r.plies().get(0).top().ownStress().second(), 1e-9);
  }

  @Test
  void clothWithoutExpansionKeepsItsShape() {
    assertEquals(
        Deformation.NONE, Laminate.of(Stack.of(CLOTH, 0.24, 0, 45)).warmed(-60).deformation());
  }
}
