package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.laminate.Laminate;
import felloe.laminate.PlaneStiffness;
import felloe.laminate.PlyMaterial;
import felloe.laminate.PlyStrength;
import felloe.laminate.Stack;
import felloe.layup.MaterialBook;
import felloe.layup.SheetStock;
import felloe.shape.Materials;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** How sheet stock bears load. */
class StockSectionTest {

  private static final StockBook BOOK = StockBook.builtIn();

  @Test
  void everyMaterialIsLaidUpOrHasFigures() {
    for (String name : Materials.builtIn().names()) {
      boolean own = Materials.builtIn().find(name).orElseThrow().laidUp();
      assertTrue(own != BOOK.find(name).isPresent(), name);
    }
  }

  /** Handbook of Finnish Plywood, from memory: along and across sum to 17500 MPa in each sheet. */
  @Test
  void plywoodsModuliAlongAndAcrossSumAsTheHandbookHasThem() {
    StockStrength.Grain grain =
        (StockStrength.Grain) BOOK.find("birch-plywood").orElseThrow().strength();
    SheetStock sheet = MaterialBook.builtIn().sheets().get("plywood");
    assertEquals(sheet.thicknesses(), grain.thicknesses());
    for (int i = 0; i < grain.thicknesses().size(); i++) {
      assertEquals(17_500, 1000 * sheet.moduli().get(i) + grain.across().get(i), 1e-6);
    }
    assertEquals(
        (6105 + 6781) / 2.0,
        TableInterpolation.at(grain.thicknesses(), grain.across(), 10.5),
        1e-9);
    assertEquals(4763, TableInterpolation.at(grain.thicknesses(), grain.across(), 3), 1e-9);
    assertEquals(7452, TableInterpolation.at(grain.thicknesses(), grain.across(), 30), 1e-9);
  }

  /** Orthotropic plate: D11 = E1 t^3 / 12 (1 - nu12 nu21), and G t^3 / 12 in twist. */
  @Test
  void plywoodBendsAsAnOrthotropicPlate() {
    StockStrength.Grain grain =
        (StockStrength.Grain) BOOK.find("birch-plywood").orElseThrow().strength();
    PlaneStiffness d = grain.section(10_719, 12).d();
    double k = 1 - 0.05 * 0.05 * 6781 / 10_719;
    assertEquals(10_719 * 144 / k, d.m11(), 1e-6 * d.m11());
    assertEquals(6781 * 144 / k, d.m22(), 1e-6 * d.m22());
    assertEquals(620 * 144, d.m66(), 1e-6 * d.m66());
  }

  /** Norris's criterion: at each strength alone the use is 1. */
  @Test
  void plywoodFailsAtEachOfItsStrengths() {
    PlaneStiffness q = new PlaneStiffness(10_000, 0, 7000, 0, 0, 600);
    GrainStrength wood = new GrainStrength(q, 12, 42.9, 33.2, 9.5);
    double h = 6;
    assertEquals(1, wood.use(0, 0, 0, 42.9 / 10_000 / h, 0, 0), 1e-12);
    assertEquals(1, wood.use(0, 0, 0, 0, 33.2 / 7000 / h, 0), 1e-12);
    assertEquals(1, wood.use(0, 0, 0, 0, 0, 9.5 / 600 / h), 1e-12);
    assertEquals(Math.sqrt(3), wood.use(42.9 / 1e4, -33.2 / 7e3, 0, 0, 0, 0), 1e-12);
    assertEquals("across the grain", wood.worst(0, -0.001, 0, 0, 0, 0).measure());
  }

  /** Rankine's criterion in plane stress. */
  @Test
  void acrylicCracksByItsLargestPullAlone() {
    PullStrength acrylic = new PullStrength(3000, 0.37, 5, 70);
    // Pulled along x to 70 MPa.
    assertEquals(1, acrylic.use(70 / 3000.0, -0.37 * 70 / 3000, 0, 0, 0, 0), 1e-12);
    // Pressed along x it does not crack.
    assertEquals(0, acrylic.use(-70 / 3000.0, 0.37 * 70 / 3000, 0, 0, 0, 0), 1e-12);
    // Sheared by 70 MPa: the largest pull is 70 too.
    assertEquals(1, acrylic.use(0, 0, 70 / (3000 / 2.74), 0, 0, 0), 1e-12);
    // Bent, one face is pulled.
    assertEquals(1, acrylic.use(0, 0, 0, 70 / 3000.0 / 2.5, -0.37 * 70 / 3000 / 2.5, 0), 1e-12);
  }

  /**
   * Plies of one direction on one face, bent by a moment along x that nothing hinders: by the whole
   * compliance of classical laminate theory the middle plane stretches by b11 M and curves by d11
   * M, and the plies bear both.
   */
  @Test
  void aStackThatIsNotSymmetricBearsTheStretchOfItsBending() {
    PlyMaterial elastic = new PlyMaterial(120_000, 8000, 0.3, 4000);
    PlyMaterial ply = elastic.with(new PlyStrength(1500, 900, 40, 150, 60));
    double[] angles = new double[15];
    Arrays.fill(angles, 5, 15, 90);
    Laminate laminate = Laminate.of(Stack.of(ply, 0.2, angles));
    PlateSection section = PlateSection.of(laminate, 4000);
    double m = 100;
    double kx = laminate.compliance(3, 3) * m;
    double ky = laminate.compliance(4, 3) * m;
    double kxy = laminate.compliance(5, 3) * m;
    double whole =
        PlyStrengths.of(laminate)
            .use(
                laminate.compliance(0, 3) * m,
                laminate.compliance(1, 3) * m,
                laminate.compliance(2, 3) * m,
                kx,
                ky,
                kxy);
    assertEquals(whole, section.strength().use(0, 0, 0, kx, ky, kxy), 1e-9 * whole);
    double without = PlyStrengths.of(laminate).use(0, 0, 0, kx, ky, kxy);
    assertTrue(whole > 1.2 * without, whole + " " + without);
  }
}
