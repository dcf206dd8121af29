package felloe.laminate;

import static felloe.laminate.Printed.CLOTH;
import static felloe.laminate.Printed.T300;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What holds for every laminate. */
class LaminateLawsTest {

  private static final long SEED = 20_251;

  @Test
  void theStiffnessOfAPlyTurnsAsItsClosedFormDoes() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      PlyMaterial m = material(random);
      double angle = random.nextDouble() * 720 - 360;
      PlaneStiffness q = m.reduced();
      double c = Math.cos(Math.toRadians(angle));
      double s = Math.sin(Math.toRadians(angle));
      // Jones, Mechanics of Composite Materials, equation 2.80.
      double q11 =
          q.m11() * Math.pow(c, 4)
              + 2 * (q.m12() + 2 * q.m66()) * s * s * c * c
              + q.m22() * Math.pow(s, 4);
      double q16 =
          (q.m11() - q.m12() - 2 * q.m66()) * s * c * c * c
              + (q.m12() - q.m22() + 2 * q.m66()) * s * s * s * c;
      double q66 =
          (q.m11() + q.m22() - 2 * q.m12() - 2 * q.m66()) * s * s * c * c
              + q.m66() * (Math.pow(s, 4) + Math.pow(c, 4));
      PlaneStiffness turned = q.turned(angle);
      double near = 1e-10 * m.e1();
      assertEquals(q11, turned.m11(), near, "seed " + SEED + ", " + i);
      assertEquals(q16, turned.m16(), near, "seed " + SEED + ", " + i);
      assertEquals(q66, turned.m66(), near, "seed " + SEED + ", " + i);
      double[] before = q.invariants();
      double[] after = turned.invariants();
      assertEquals(before[0], after[0], near);
      assertEquals(before[3], after[3], near);
      assertEquals(before[4], after[4], near);
      assertEquals(q.anisotropy(), turned.anisotropy(), 1e-9);
    }
  }

  @Test
  void aQuasiIsotropicStackPullsTheSameHoweverItIsTurned() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      PlyMaterial m = material(random);
      int directions = 3 + random.nextInt(6);
      double t = 0.1 + random.nextDouble();
      double turn = random.nextDouble() * 180;
      List<Ply> plies = new ArrayList<>();
      for (int k = 0; k < directions; k++) {
        plies.add(new Ply(m, t, turn + 180.0 * k / directions));
      }
      Laminate laminate = Laminate.of(new Stack(plies));
      double[] u = m.reduced().invariants();
      double h = laminate.thickness();
      String which = "seed " + SEED + ", " + i;
      double near = 1e-9 * u[0] * h;
      assertEquals(u[0] * h, laminate.a().m11(), near, which);
      assertEquals(u[0] * h, laminate.a().m22(), near, which);
      assertEquals(u[3] * h, laminate.a().m12(), near, which);
      assertEquals(u[4] * h, laminate.a().m66(), near, which);
      assertEquals(0, laminate.a().m16(), near, which);
      assertTrue(laminate.a().anisotropy() < 1e-9, which);
      SheetModuli held = laminate.heldModuli().inPlane();
      assertEquals((u[0] * u[0] - u[3] * u[3]) / u[0], held.ex(), 1e-8 * held.ex(), which);
      assertEquals(held.highest(), held.lowest(), 1e-7 * held.highest(), which);
    }
  }

  @Test
  void anyStackTurnedAsAWholeHasItsStiffnessesTurned() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      Stack stack = stack(random, 1 + random.nextInt(9));
      double turn = random.nextDouble() * 180;
      Stack turned =
          new Stack(
              stack.plies().stream()
                  .map(p -> new Ply(p.material(), p.thickness(), p.angle() + turn))
                  .toList());
      Laminate before = Laminate.of(stack);
      Laminate after = Laminate.of(turned);
      same(before.a().turned(turn), after.a(), 1e-9, "seed " + SEED + ", A of " + i);
      same(before.b().turned(turn), after.b(), 1e-9, "seed " + SEED + ", B of " + i);
      same(before.d().turned(turn), after.d(), 1e-9, "seed " + SEED + ", D of " + i);
    }
  }

  private static void same(PlaneStiffness a, PlaneStiffness b, double share, String which) {
    double near = share * Math.max(1e-3, a.largest());
    for (int i = 0; i < 3; i++) {
      assertArrayEquals(a.rows()[i], b.rows()[i], near, which);
    }
  }

  @Test
  void aSymmetricStackHasNoCouplingToTheLastBit() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      Stack stack = stack(random, 1 + random.nextInt(20)).mirrored();
      assertTrue(stack.isSymmetric());
      assertEquals(PlaneStiffness.ZERO, Laminate.of(stack).b(), "seed " + SEED + ", " + i);
      assertFalse(Laminate.of(stack).isCoupled());
    }
  }

  @Test
  void aBalancedStackDoesNotShearWhenPulled() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      PlyMaterial m = material(random);
      double angle = random.nextDouble() * 90;
      double other = random.nextDouble() * 90;
      Stack stack = Stack.of(m, 0.2, angle, 0, -other, -angle, 90, other);
      assertTrue(stack.isBalanced(), "seed " + SEED + ", " + i);
      assertFalse(Stack.of(m, 0.2, angle, 0).isBalanced(), "seed " + SEED + ", " + i);
    }
  }

  @Test
  void clothAtFortyFiveDegreesIsItsOwnTwin() {
    assertTrue(Stack.of(CLOTH, 0.24, 0, 45).isBalanced());
    assertFalse(Stack.of(T300, 0.24, 0, 45).isBalanced());
    assertTrue(Stack.of(CLOTH, 0.24, 45, 0, -45).isSymmetric());
    assertFalse(Stack.of(T300, 0.24, 45, 0, -45).isSymmetric());
    assertTrue(Stack.of(T300, 0.24, 90, 0, -90).isSymmetric());
  }

  @Test
  void theOrderOfPliesChangesBendingAndNotStretching() {
    Laminate one = Laminate.of(Stack.of(T300, 0.125, 0, 45, -45, 90).mirrored());
    Laminate other = Laminate.of(Stack.of(T300, 0.125, 90, -45, 45, 0).mirrored());
    same(one.a(), other.a(), 1e-12, "A");
    assertTrue(one.d().m11() > 3 * other.d().m11());
  }

  @Test
  void readFromTheOtherFaceOnlyTheCouplingChangesItsSign() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      Stack stack = stack(random, 2 + random.nextInt(9));
      List<Ply> back = new ArrayList<>(stack.plies());
      java.util.Collections.reverse(back);
      Laminate one = Laminate.of(stack);
      Laminate other = Laminate.of(new Stack(back));
      String which = "seed " + SEED + ", " + i;
      same(one.a(), other.a(), 1e-11, which);
      same(one.b(), other.b().times(-1), 1e-9, which);
      same(one.d(), other.d(), 1e-11, which);
    }
  }

  @Test
  void everyDeformationTakesEnergyAndEveryLoadComesBack() {
    Random random = new Random(SEED);
    for (int i = 0; i < 300; i++) {
      Laminate laminate = Laminate.of(stack(random, 1 + random.nextInt(9)));
      double h = laminate.thickness();
      double[] r = random.doubles(6, -1, 1).toArray();
      Deformation e = new Deformation(r[0], r[1], r[2], r[3] * 2 / h, r[4] * 2 / h, r[5] * 2 / h);
      LaminateLoad n = laminate.load(e);
      double energy =
          n.nx() * e.ex()
              + n.ny() * e.ey()
              + n.nxy() * e.gxy()
              + n.mx() * e.kx()
              + n.my() * e.ky()
              + n.mxy() * e.kxy();
      String which = "seed " + SEED + ", " + i;
      assertTrue(energy > 0, which);
      Deformation back = laminate.deformation(n);
      assertEquals(e.ex(), back.ex(), 1e-9, which);
      assertEquals(e.ky(), back.ky(), 1e-9 / h, which);
      assertEquals(e.kxy(), back.kxy(), 1e-9 / h, which);
    }
  }

  @Test
  void plyStressesAddUpToTheLoad() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      Laminate laminate = Laminate.of(stack(random, 1 + random.nextInt(12)));
      double[] r = random.doubles(6, -100, 100).toArray();
      LaminateLoad load = new LaminateLoad(r[0], r[1], r[2], r[3], r[4], r[5]);
      assertArrayEquals(r, sums(laminate.response(load)), 1e-6, "seed " + SEED + ", " + i);
    }
  }

  /** Forces and moments of the stresses, by Simpson's rule, which is exact here. */
  static double[] sums(LaminateResponse response) {
    double[] n = new double[6];
    for (PlyResponse ply : response.plies()) {
      double low = ply.bottom().z();
      double high = ply.top().z();
      double[] bottom = ply.bottom().stress().figures();
      double[] top = ply.top().stress().figures();
      for (int j = 0; j < 3; j++) {
        double middle = (bottom[j] + top[j]) / 2;
        n[j] += (high - low) * middle;
        n[j + 3] +=
            (high - low) / 6 * (bottom[j] * low + 4 * middle * (low + high) / 2 + top[j] * high);
      }
    }
    return n;
  }

  @Test
  void anIsotropicSheetIsTheTextbookPlate() {
    double nu = 0.33;
    double e = 68_900;
    PlyMaterial aluminium = new PlyMaterial(e, e, nu, e / (2 * (1 + nu)));
    Laminate laminate = Laminate.of(Stack.of(aluminium, 2, 17, 80));
    assertEquals(e * 64 / (12 * (1 - nu * nu)), laminate.d().m11(), 1e-6);
    assertEquals(e, laminate.moduli().bending().lowest(), 1e-6);
    assertEquals(e, laminate.moduli().inPlane().highest(), 1e-6);
    assertTrue(Stack.of(aluminium, 2, 17, 80).isBalanced());
  }

  @Test
  void thinAndThickStacksKeepTheirDigits() {
    for (double t : new double[] {0.001, 0.125, 100}) {
      Laminate laminate = Laminate.of(Stack.of(T300, t, 0, 45, -45, 90).mirrored());
      assertEquals(69_676, laminate.moduli().inPlane().ex(), 1);
      assertEquals(0, laminate.compliance(0, 3));
    }
  }

  @Test
  void impossiblePliesAreRefusedByName() {
    refused("e1", () -> new PlyMaterial(0, 1, 0, 1));
    refused("e2", () -> new PlyMaterial(1, -1, 0, 1));
    refused("g12", () -> new PlyMaterial(1, 1, 0, Double.NaN));
    refused("nu12", () -> new PlyMaterial(10, 10, 1, 1));
    refused("nu12", () -> new PlyMaterial(10, 40, 0.5, 1));
    refused("nu12", () -> new PlyMaterial(10, 10, Double.NaN, 1));
    refused("thickness", () -> new Ply(T300, 0, 0));
    refused("angle", () -> new Ply(T300, 1, Double.POSITIVE_INFINITY));
    refused("plies", () -> new Stack(List.of()));
    refused("plies", () -> Stack.of(T300, 1, 0, 90).repeated(501));
    refused("xc", () -> new PlyStrength(1, 0, 1, 1, 1));
    refused("g12", () -> new StrainLimits(1, 1, 1, 1, -1));
    refused("along2", () -> new PlyExpansion(0, Double.NaN));
    refused("mxy", () -> new LaminateLoad(0, 0, 0, 0, 0, Double.NaN));
    refused("m26", () -> new PlaneStiffness(1, 1, 1, 1, Double.NaN, 1));
  }

  private static void refused(String field, Runnable make) {
    IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, make::run);
    assertTrue(refusal.getMessage().startsWith(field), refusal.getMessage());
  }

  static PlyMaterial material(Random random) {
    double e1 = 5_000 + random.nextDouble() * 200_000;
    double e2 = 3_000 + random.nextDouble() * 60_000;
    double nu = (random.nextDouble() * 1.6 - 0.6) * 0.9 * Math.min(1, Math.sqrt(e1 / e2));
    double g = 1_000 + random.nextDouble() * 20_000;
    return new PlyMaterial(
        e1,
        e2,
        nu,
        g,
        Optional.of(new PlyStrength(800, 500, 60, 150, 70)),
        Optional.empty(),
        Optional.of(new PlyExpansion(random.nextDouble() * 1e-5, random.nextDouble() * 4e-5)));
  }

  static Stack stack(Random random, int count) {
    List<Ply> plies = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      plies.add(
          new Ply(material(random), 0.05 + random.nextDouble(), random.nextDouble() * 360 - 180));
    }
    return new Stack(plies);
  }
}
