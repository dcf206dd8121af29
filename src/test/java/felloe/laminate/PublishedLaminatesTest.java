package felloe.laminate;

import static felloe.laminate.Printed.CLOTH;
import static felloe.laminate.Printed.T300;
import static felloe.laminate.Printed.holds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * Worked examples of textbooks and reports. Books with the z axis downward call "top" what is here
 * the face toward the back; the figures are the same.
 */
class PublishedLaminatesTest {

  private static final double GPA = 1e-3;

  /** Kaw, Mechanics of Composite Materials, 2nd edition, example 4.2: [0/30/-45], 5 mm plies. */
  private static final Laminate KAW = Laminate.of(Stack.of(T300, 5, 0, 30, -45));

  // Kaw, example 4.3: 1000 N/m along x and along y.
  private static final LaminateLoad PULL = new LaminateLoad(1, 1, 0, 0, 0, 0);

  // Books print 181.8, 2.897, 10.35, 7.17.
  @Test
  void theReducedStiffnessIsThatOfTheBook() {
    holds(T300.reduced(), GPA, "181.8", "2.897", "10.35", "0", "0", "7.17");
    holds(T300.reduced(), GPA, "181.811", "2.89692", "10.3462");
  }

  // Kaw, example 4.2: 109.4 32.46 23.65 54.19 20.05 36.74 GPa.
  @Test
  void theStiffnessAtThirtyDegreesIsThatOfTheBook() {
    PlaneStiffness turned = new Ply(T300, 5, 30).stiffness();
    holds(turned, GPA, "109.4", "32.46", "23.65", "54.19", "20.05", "36.74");
    holds(turned, GPA, "109.379", "32.4626", "23.6468", "54.1930", "20.0535", "36.7357");
    PlaneStiffness other = new Ply(T300, 5, -45).stiffness();
    holds(other, GPA, "56.6578", "42.3178", "56.6578", "-42.8662", "-42.8662", "46.5909");
  }

  // Tsai and Hahn 1980: 76.37 85.73 19.71 22.61 26.88 GPa.
  @Test
  void theInvariantsAreThoseOfTsaiAndPagano() {
    String[] printed = {"76.37", "85.73", "19.71", "22.61", "26.88"};
    double[] figures = T300.reduced().invariants();
    for (int i = 0; i < printed.length; i++) {
      holds(printed[i], figures[i] * GPA);
    }
  }

  // Kaw, example 4.2, in N/m, N and N m.
  @Test
  void kawsExampleHasItsStiffnesses() {
    holds(KAW.a(), 1e3, "1.739e9", "3.884e8", "4.533e8", "5.663e7", "-1.141e8", "4.525e8");
    holds(KAW.b(), 1, "-3.129e6", "9.855e5", "1.158e6", "-1.072e6", "-1.072e6", "9.855e5");
    holds(KAW.d(), 1e-3, "3.343e4", "6.461e3", "9.320e3", "-5.240e3", "-5.596e3", "7.663e3");
    holds(KAW.a(), 1e3, "1.73924e9", "3.88386e8", "4.53254e8", "5.66337e7", "-1.14064e8");
    holds(KAW.b(), 1, "-3.12883e6", "9.85522e5", "1.15779e6", "-1.07166e6");
    holds(KAW.d(), 1e-3, "33432.0", "6460.98", "9319.77", "-5240.29", "-5595.91", "7662.78");
  }

  // Kaw, example 4.3: strains, and curvatures in 1/m.
  @Test
  void kawsExampleHasItsStrainsAndCurvatures() {
    Deformation e = KAW.deformation(PULL);
    holds("3.123e-7", e.ex());
    holds("3.492e-6", e.ey());
    holds("-7.598e-7", e.gxy());
    holds("2.971e-5", e.kx() * 1000);
    holds("-3.285e-4", e.ky() * 1000);
    holds("4.101e-4", e.kxy() * 1000);
  }

  // Kaw, example 4.3, table of global stresses, in Pa.
  @Test
  void kawsExampleHasItsPlyStresses() {
    LaminateResponse r = KAW.response(PULL);
    stress(r.plies().get(0).bottom().stress(), "3.351e4", "6.188e4", "-2.750e4");
    stress(r.plies().get(1).bottom().stress(), "6.930e4", "7.391e4", "3.381e4");
    stress(r.plies().get(2).top().stress(), "-2.547e4", "-1.840e4", "4.091e4");
  }

  private static void stress(PlaneTriple mpa, String x, String y, String shear) {
    holds(x, mpa.first() * 1e6);
    holds(y, mpa.second() * 1e6);
    holds(shear, mpa.shear() * 1e6);
  }

  // Tsai and Hahn 1980 print 69.68, 0.30, 26.88.
  @Test
  void theQuasiIsotropicLaminateHasItsPublishedModuli() {
    Stack stack = Stack.of(T300, 0.125, 0, 45, -45, 90).mirrored();
    Laminate laminate = Laminate.of(stack);
    SheetModuli m = laminate.moduli().inPlane();
    holds("69.68", m.ex() * GPA);
    holds("69.68", m.ey() * GPA);
    holds("0.30", m.nuxy());
    holds("26.88", m.gxy() * GPA);
    holds(laminate.a(), GPA, "76.3682", "22.6074", "76.3682", "0", "0", "26.8804");
    holds(laminate.d(), 1e-3, "10.6907", "1.57597", "2.65328", "0.66979", "0.66979", "1.93206");
    holds("116.55", laminate.moduli().bending().ex() * GPA);
    holds("26.98", laminate.moduli().bending().ey() * GPA);
    assertTrue(laminate.a().anisotropy() < 1e-12);
    assertTrue(laminate.d().anisotropy() > 0.3);
  }

  @Test
  void crossPlyAndAnglePlyStacksHaveTheirComputedFigures() {
    Laminate cross = Laminate.of(Stack.of(T300, 0.125, 0, 90).mirrored());
    holds(cross.a(), GPA, "48.0393", "1.44846", "48.0393", "0", "0", "3.585");
    holds(cross.d(), 1e-3, "1.67060", "0.030176", "0.331034", "0", "0", "0.0746875");
    holds("160.11", cross.moduli().bending().ex() * GPA);
    holds("31.73", cross.moduli().bending().ey() * GPA);
    holds("5.0466", cross.d().m11() / cross.d().m22());
    Laminate angle = Laminate.of(Stack.of(T300, 0.125, 45, -45).mirrored());
    holds(angle.a(), GPA, "28.3289", "21.1589", "28.3289", "0", "0", "23.2954");
    holds(angle.d(), 1e-3, "0.59019", "0.44081", "0.59019", "0.33489", "0.33489", "0.48532");
    holds("25.051", angle.moduli().inPlane().ex() * GPA);
    holds("0.7469", angle.moduli().inPlane().nuxy());
    holds("46.591", angle.moduli().inPlane().gxy() * GPA);
  }

  @Test
  void theUnsymmetricCrossPlyCouplesStretchAndBending() {
    Laminate laminate = Laminate.of(Stack.of(T300, 0.125, 0, 90));
    holds(laminate.a(), GPA, "24.0197", "0.724231", "24.0197", "0", "0", "1.7925");
    holds(laminate.b(), 1, "-1339.57", "0", "1339.57", "0", "0", "0");
    holds("0.125102", laminate.d().m11() * 1e-3);
    assertTrue(laminate.isCoupled());
  }

  // Inputs: Texas A&M, Composite Plate Layup Examples, case 1, S-glass [90/0/90], in lb and in.
  @Test
  void theUniversityHandoutsGlassLaminateHasItsStrains() {
    double ksi = 6.894757293168;
    PlyMaterial glass = new PlyMaterial(6300 * ksi, 1290 * ksi, 0.27, 660 * ksi);
    Laminate laminate = Laminate.of(Stack.of(glass, 0.254, 90, 0, 90));
    double poundPerInch = 4.4482216152605 / 25.4;
    holds(laminate.a(), 1 / poundPerInch, "90145.6", "10607.3", "141005", "0", "0", "19800");
    Deformation e =
        laminate.deformation(
            new LaminateLoad(1000 * poundPerInch, 1000 * poundPerInch, 0, 0, 0, 0));
    holds("1.03503e-2", e.ex());
    holds("6.31334e-3", e.ey());
    double poundInch = 4.4482216152605 * 25.4;
    holds("3.3703", laminate.d().m11() / poundInch);
    holds("13.9660", laminate.d().m22() / poundInch);
  }

  @Test
  void wovenClothHasItsComputedFigures() {
    SheetModuli quasi = Laminate.of(Stack.of(CLOTH, 0.24, 0, 45, 45, 0)).moduli().inPlane();
    holds("42.028", quasi.ex() * GPA);
    holds("0.32055", quasi.nuxy());
    holds("15.913", quasi.gxy() * GPA);
    SheetModuli across = Laminate.of(Stack.of(CLOTH, 0.24, 45)).moduli().inPlane();
    holds("9.9329", across.ex() * GPA);
    holds("0.83942", across.nuxy());
    holds("29.1262", across.gxy() * GPA);
    Laminate outer = Laminate.of(Stack.of(CLOTH, 0.24, 0, 45).mirrored());
    Laminate inner = Laminate.of(Stack.of(CLOTH, 0.24, 45, 0).mirrored());
    holds("4.18412", outer.d().m11() * 1e-3);
    holds("2.72286", inner.d().m11() * 1e-3);
    assertEquals(outer.a().m11(), inner.a().m11(), 1e-6);
  }

  @Test
  void aPlateOfTwentyClothPliesBendsAsComputed() {
    Laminate laminate = Laminate.of(Stack.of(CLOTH, 0.24, 0, 45).repeated(5).mirrored());
    assertEquals(4.8, laminate.thickness(), 1e-12);
    holds(laminate.a(), GPA, "224.8365", "72.0707", "224.8365", "0", "0", "76.3829");
    holds(laminate.d(), 1e-3, "449.952", "120.110", "449.952", "0", "0", "128.389");
    holds("45.344", laminate.moduli().bending().ex() * GPA);
    LaminateResponse r = laminate.response(new LaminateLoad(0, 0, 0, 500, 0, 0));
    holds("1.19649", r.deformation().kx() * 1000);
    holds("-0.31939", r.deformation().ky() * 1000);
    PlyPoint outer = r.plies().get(19).top();
    holds("171.07", outer.stress().first());
    holds("-40.86", outer.stress().second());
    PlyPoint next = r.plies().get(18).top();
    holds("58.59", next.ownStress().first());
    holds("58.59", next.ownStress().second());
    holds("-8.84", next.ownStress().shear());
  }
}
