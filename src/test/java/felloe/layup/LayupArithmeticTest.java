package felloe.layup;

import static felloe.layup.LayupPlates.BOOK;
import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.laminate.Laminate;
import felloe.plate.BadInput;
import felloe.plate.FibreKind;
import felloe.plate.LayupWish;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Thickness, resin and stiffness against figures from outside. */
class LayupArithmeticTest {

  private static Cloth cloth(double weight, double density) {
    Fibre fibre = new Fibre("f", "f", FibreKind.OTHER, density, 200, 10, new Bases(Map.of()));
    return new Cloth(
        "c",
        "c",
        fibre,
        weight,
        Weave.TWILL,
        1000,
        new Cloth.Stiffness(60, 60, 2.7, 0.03, 0.45),
        4,
        new Bases(Map.of()));
  }

  /** Definition of the fibre volume fraction; common densities of handbooks. */
  @Test
  void aPlyIsAsThickAsItsFibresAndItsFractionMakeIt() {
    assertEquals(0.2778, cloth(200, 1.80).plyThickness(0.40), 5e-5);
    assertEquals(0.2469, cloth(200, 1.80).plyThickness(0.45), 5e-5);
    assertEquals(4.938, 20 * cloth(200, 1.80).plyThickness(0.45), 5e-4);
    assertEquals(0.3093, cloth(245, 1.76).plyThickness(0.45), 5e-5);
    assertEquals(0.2584, cloth(300, 2.58).plyThickness(0.45), 5e-5);
    assertEquals(0.2623, cloth(170, 1.44).plyThickness(0.45), 5e-5);
    assertEquals(0.2857, cloth(150, 1.50).plyThickness(0.35), 5e-5);
  }

  /** ISO 12215-5 Annex C, from memory: t/W by the mass fraction; carbon at 0.55. */
  @Test
  void thicknessAgreesWithTheFormulaForBoatsByMassFraction() {
    double psi = 0.55;
    double perKilogram = (1.8 / psi - 0.6) / 2.16;
    double rhoResin = 1.2;
    double fraction = psi / 1.8 / (psi / 1.8 + (1 - psi) / rhoResin);
    assertEquals(perKilogram, cloth(1000, 1.8).plyThickness(fraction), 1e-4);
  }

  /** Published page on composites theory: resin to carbon by mass with 1.1 and 1.78 g/cm3. */
  @Test
  void resinForAGramOfCarbonAgreesWithAPublishedTable() {
    double[][] published = {{0.3, 1.46}, {0.4, 0.94}, {0.5, 0.63}, {0.6, 0.42}, {0.7, 0.27}};
    for (double[] row : published) {
      double exact = (1 - row[0]) / row[0] * 1.1 / 1.78;
      // The page rounds 1.78 / 1.1 to 1.6.
      assertEquals(row[1], exact, 0.02);
    }
    // 200 g of carbon of 1.80 with resin of 1.15: 156.2 g at 0.45, 191.7 at 0.40.
    assertEquals(156.2, 200 * (0.55 / 0.45) * 1.15 / 1.8, 0.05);
    LayupPlan plan = plan(disc(280, 5.5), wish().fraction(0.45).value());
    double each = 200 * (0.55 / 0.45) * 1.15 / 1.78;
    assertEquals(
        each * plan.stack().plies().size() * plan.blank().area() / 1e6,
        plan.resin().inPart(),
        1e-9);
  }

  /**
   * Common practice: twenty plies of 200 g/m2 carbon twill, wet out by roller between two weighted
   * glass plates, came to 5.5 mm, and about 400 ml of resin served a blank for one wheel.
   */
  @Test
  void theTradesPanelIsMet() {
    LayupWish noStrips = wish().shop(null, null, null, 0, null).value();
    LayupPlan plan = plan(disc(290, 5.5), noStrips);
    assertEquals(20, plan.stack().plies().size());
    assertEquals(5.5, plan.stack().thickness(), 1e-9);
    assertEquals(0.4086, plan.stack().fraction(), 1e-4);
    assertTrue(plan.stack().least() < 5.5 && plan.stack().most() > 5.5);
    assertEquals(5.62, plan.stack().usual(), 0.01);
    assertEquals(320, plan.blank().box().width(), 1e-9);
    assertEquals(320, plan.blank().box().height(), 1e-9);
    assertEquals(400, plan.resin().millilitres(), 20);
    // "About" is 5 % of the volume, so 2.5 % of the side of the blank that 400 ml serve.
    double side = 1000 * Math.sqrt(400 / plan.resin().perSquareMetre());
    assertEquals(320, side, 0.025 * 320);
    assertTrue(plan.possible());
    assertTrue(plan.stack().quasiIsotropic() && plan.stack().symmetric());
  }

  @Test
  void aMeasuredPanelSetsTheFractionOfTheNext() {
    LayupPlan plan = plan(disc(290, 5.5), wish().panel(5.5, 20).value());
    assertEquals(0.40858, plan.choice().fraction().usual(), 1e-5);
    assertEquals(5.5, plan.stack().thickness(), 1e-9);
    LayupPlan twice = plan(disc(290, 5.5), wish().panel(11, 40).plies(10).value());
    assertEquals(2.75, twice.stack().thickness(), 1e-9);
  }

  /** W2 cloth, 20 plies [(0/45)5]s of 0.24 mm: D11 449.952 N m, flexural modulus 45.344 GPa. */
  @Test
  void theStackOfTwentyPliesIsAsStiffAsWorkedOutElsewhere() {
    Cloth cloth = BOOK.cloths().get("carbon-twill-200");
    double fraction = cloth.stiffness().fraction();
    LayupPlan plan =
        plan(disc(290, 20 * cloth.plyThickness(fraction)), wish().fraction(fraction).value());
    assertEquals(20, plan.stack().plies().size());
    assertEquals(45.344e3, plan.moduli().bending().ex(), 1);
    assertEquals(42.028e3, plan.moduli().inPlane().ex(), 1);
    assertEquals(0.32055, plan.moduli().inPlane().nuxy(), 1e-5);
    // Moduli do not depend on the thickness; D does.
    double scale = Math.pow(4.8 / plan.stack().thickness(), 3);
    Laminate laminate = Laminate.of(LayupLaminate.of(plan.stack(), cloth));
    assertEquals(449.952e3, laminate.d().m11() * scale, 1);
    assertEquals(0, laminate.b().largest(), 1e-6);
  }

  @Test
  void stiffnessFollowsTheFractionAndShearDoesNot() {
    Cloth.Stiffness at = new Cloth.Stiffness(60, 60, 2.7, 0.03, 0.45).at(0.36);
    assertEquals(48, at.e1(), 1e-9);
    assertEquals(2.7, at.g12(), 1e-9);
  }

  @Test
  void pliesFollowFromTheThicknessInMultiplesOfFour() {
    for (double thickness : new double[] {2.2, 3.4, 4.5, 5, 5.6, 6, 8}) {
      LayupPlan plan = plan(disc(290, thickness), wish().shop(null, null, null, 0, null).value());
      assertEquals(0, plan.stack().plies().size() % 4, "at " + thickness);
      assertTrue(plan.stack().quasiIsotropic(), "at " + thickness);
      assertEquals(thickness, plan.stack().thickness(), 1e-9);
      assertEquals(List.of(), plan.stack().warnings());
    }
  }

  @Test
  void whatNoMultipleOfFourReachesTakesTheNearestNumberAndSaysSo() {
    LayupPlan plan = plan(disc(200, 0.6), wish().shop(null, null, null, 0, null).value());
    assertEquals(2, plan.stack().plies().size());
    assertTrue(
        plan.stack().warnings().get(0).startsWith("the stack is not quasi-isotropic"),
        plan.stack().warnings().toString());
  }

  @Test
  void moreThanTwoHundredPliesAreRefusedWhereTheThicknessStands() {
    BadInput bad = assertThrows(BadInput.class, () -> plan(disc(200, 90), LayupWish.NONE));
    assertEquals(
        "ruff.yaml:7:3 stock.thickness: '90 mm' takes 320 plies of carbon-twill-200; at most 200"
            + " are planned; take a heavier cloth",
        bad.getMessage());
  }

  /** Common practice: the pot life halves for every 10 degrees. */
  @Test
  void timesHalveForEveryTenDegreesBeyondWhatIsKnown() {
    TimeCurve one = new TimeCurve(List.of(new TimeCurve.Known(20, 60)));
    assertEquals(30, one.at(30), 1e-9);
    assertEquals(120, one.at(10), 1e-9);
    TimeCurve two =
        new TimeCurve(List.of(new TimeCurve.Known(15, 90), new TimeCurve.Known(25, 40)));
    assertEquals(60, two.at(20), 1e-9);
    assertEquals(40, two.at(25), 1e-9);
    assertEquals(20, two.at(35), 1e-9);
  }

  /** ISO 14125 table 3, from memory: 80 x 15 at a span of 64 for 4 mm glass; 100 x 15, 80 for 2. */
  @Test
  void stripsHaveTheStandardsSizes() {
    double[][] table = {
      {1, 4, 80, 10, 64}, {2, 4, 80, 15, 64}, {3, 2, 60, 15, 40}, {4, 2, 100, 15, 80}
    };
    for (double[] row : table) {
      TestStrips strips = TestStrips.sized((int) row[0], row[1], 5);
      assertEquals(row[2], strips.length(), 1e-9);
      assertEquals(row[3], strips.width(), 1e-9);
      assertEquals(row[4], strips.span(), 1e-9);
    }
    assertEquals("IV", TestStrips.sized(4, 2, 5).className());
  }
}
