package felloe.layup;

import static felloe.layup.LayupPlates.PLACE;
import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.plate.Prices;
import felloe.plate.Prices.Per;
import felloe.plate.Prices.Price;
import felloe.plate.Sheet;
import felloe.plate.SourcedFigure;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Ways of getting the stock, side by side. */
class StockComparisonTest {

  private static Price price(String item, double price, Per per) {
    return new Price(item, price, Optional.ofNullable(per), PLACE);
  }

  private static LayupPlan priced(Price... prices) {
    return plan(
        disc(290, 5),
        wish()
            .shop(null, null, null, 0, null)
            .prices(new Prices(Optional.of("pence"), List.of(prices)))
            .value());
  }

  private static StockOption way(LayupPlan plan, String name) {
    return plan.ways().stream().filter(way -> way.name().equals(name)).findFirst().orElseThrow();
  }

  @Test
  void withoutPricesNothingIsMadeUp() {
    LayupPlan plan = priced();
    for (StockOption way : plan.ways()) {
      assertTrue(way.materialCost().isEmpty() && way.workCost().isEmpty(), way.name());
      assertFalse(way.missingPrices().isEmpty(), way.name());
    }
    assertEquals(
        List.of("carbon-twill-200", "epoxy-slow", "sundries"), plan.ways().get(0).missingPrices());
  }

  @Test
  void costsAreThePricesTimesWhatIsBought() {
    LayupPlan plan =
        priced(
            price("carbon-twill-200", 30, null),
            price("epoxy-slow", 20, null),
            price("sundries", 12, null),
            price("work", 10, null),
            price("aluminium-6082", 100, null),
            price("plywood", 7, Per.SHEET));
    StockOption layup = plan.ways().get(0);
    double material = 30 * plan.cloth().bought() / 1e6 + 20 * plan.resin().mix() / 1000 + 12;
    assertEquals(material, layup.materialCost().orElseThrow(), 1e-9);
    assertEquals(10 * plan.hours(), layup.workCost().orElseThrow(), 1e-9);
    StockOption aluminium = way(plan, "aluminium-6082");
    assertEquals(new Sheet(300, 300), aluminium.sheet().orElseThrow());
    assertEquals(9, aluminium.materialCost().orElseThrow(), 1e-9);
    assertEquals(7, way(plan, "plywood").materialCost().orElseThrow(), 1e-9);
    LayupPlan byMetre =
        priced(price("carbon-twill-200", 30, Per.METRE), price("epoxy-slow", 0, null));
    assertEquals(
        30 * byMetre.cloth().toBuy() / 1000,
        byMetre.ways().get(0).materialCost().orElseThrow(),
        1e-9);
    assertEquals(List.of("sundries"), byMetre.ways().get(0).missingPrices());
  }

  /** Aluminum Association: 2.70 g/cm3; EN 485-2: 70 GPa, from memory. */
  @Test
  void massAndStiffnessAreThoseOfThePlate() {
    LayupPlan plan = priced();
    StockOption aluminium = way(plan, "aluminium-6082");
    double area = Math.PI * 145 * 145;
    assertEquals(5, aluminium.thickness(), 1e-12);
    assertEquals(area * 5 * 2.7 / 1000, aluminium.mass(), 1e-6);
    double layup = plan.moduli().bending().ex() / 1000 * Math.pow(plan.stack().thickness(), 3);
    assertEquals(70 * 125 / layup, aluminium.stiffness(), 1e-9);
    assertEquals(area * plan.stack().thickness() * plan.density() / 1000, plan.plateMass(), 1e-6);
    // Handbook of Finnish Plywood, from memory: 6.5 mm has 12737 MPa along the grain.
    assertEquals(12.737, way(plan, "plywood").modulus(), 1e-12);
    assertEquals(6.5, way(plan, "plywood").thickness(), 1e-12);
  }

  @Test
  void sheetFitsWithItsEdgeAndTurnsOnlyWithoutGrain() {
    Box box = new Box(0, 0, 290, 190);
    assertTrue(StockComparison.fits(box, new Sheet(300, 200), true));
    assertFalse(StockComparison.fits(box, new Sheet(299, 200), true));
    assertTrue(StockComparison.fits(box, new Sheet(200, 300), false));
    assertFalse(StockComparison.fits(box, new Sheet(200, 300), true));
  }

  @Test
  void pricesOfUnknownThingsAndInOddMeasuresAreRefusedTogether() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                priced(
                    price("carbon-twil-200", 30, null),
                    price("epoxy-slow", 20, Per.METRE),
                    price("work", 20, Per.KG)));
    assertEquals(3, bad.problems().size());
    assertTrue(bad.getMessage().contains("did you mean 'carbon-twill-200'?"), bad.getMessage());
    assertTrue(
        bad.getMessage().contains("'epoxy-slow per metre' must be per kg"), bad.getMessage());
    assertTrue(bad.getMessage().contains("'work per kg' must be per hour"), bad.getMessage());
  }

  @Test
  void aPriceOfTheCallGoesBeforeThatOfAFile() {
    Prices first = new Prices(Optional.empty(), List.of(price("sundries", 1, null)));
    Prices second =
        new Prices(
            Optional.of("crowns"), List.of(price("sundries", 2, null), price("work", 3, null)));
    Prices both = first.over(second);
    assertEquals(1, both.find("sundries").orElseThrow().price());
    assertEquals(3, both.find("work").orElseThrow().price());
    assertEquals("crowns", both.currency().orElseThrow());
  }

  @Test
  void figuresThatRestOnMemoryOrHabitAreMarked() {
    LayupPlan plan = plan(disc(290, 5), LayupWish.NONE);
    assertTrue(
        plan.figures().stream().anyMatch(f -> f.name().equals("pot life there") && f.assumed()));
    assertTrue(
        plan.figures().stream()
            .anyMatch(f -> f.name().equals("modulus of a ply along its warp") && !f.assumed()));
    for (SourcedFigure figure : plan.figures()) {
      assertFalse(figure.basis().isBlank() || figure.basis().equals("not stated"), figure.name());
    }
  }
}
