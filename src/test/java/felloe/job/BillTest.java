package felloe.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.job.Bill.Group;
import felloe.job.Bill.Item;
import felloe.layup.LayupPlan;
import felloe.layup.MaterialBook;
import felloe.layup.StockOption;
import felloe.service.CardOutcome;
import felloe.service.Jobs;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a job takes, its masses and its costs. */
class BillTest {

  private static final double STEEL = 7.85e-3;

  private static Item item(CardOutcome outcome, String begin) {
    return outcome.job().bill().items().stream()
        .filter(item -> item.supply().what().startsWith(begin))
        .findFirst()
        .orElseThrow(() -> new AssertionError(begin));
  }

  private static boolean has(CardOutcome outcome, String begin) {
    return outcome.job().bill().items().stream()
        .anyMatch(item -> item.supply().what().startsWith(begin));
  }

  @ParameterizedTest
  @ValueSource(strings = {"avocet", "bittern", "dunlin", "heron"})
  void whatStaysOfTheStockWeighsAsMuchAsThePlate(String shape) {
    CardOutcome outcome = Jobs.of(shape);
    Bill bill = outcome.job().bill();
    assertEquals(outcome.plate().mass(), bill.plateMass(), 1e-9 * bill.plateMass());
    assertEquals(outcome.job().parts().mass(), bill.plateMass(), 1e-9 * bill.plateMass());
    double fittings = bill.of(Group.FITTINGS).stream().mapToDouble(i -> i.mass().orElse(0)).sum();
    assertEquals(bill.mass(), bill.plateMass() + fittings, 1e-9 * bill.mass());
    for (Group none : List.of(Group.CUTTERS, Group.USED_UP, Group.AT_HAND, Group.WORK)) {
      bill.of(none).forEach(item -> assertTrue(item.mass().isEmpty(), item.toString()));
    }
  }

  /** The share of fibre in the plate is that of the blank: volume fraction times density. */
  @Test
  void clothAndResinShareThePlateAsTheFractionSays() {
    CardOutcome outcome = Jobs.of("heron");
    LayupPlan plan = outcome.job().parts().laidUp().orElseThrow();
    double vf = plan.stack().fraction();
    double fibre = vf * plan.choice().cloth().fibre().density();
    double share = fibre / (fibre + (1 - vf) * plan.choice().resin().density());
    double mass = outcome.plate().mass();
    assertEquals(share * mass, item(outcome, "carbon twill").mass().getAsDouble(), 1e-6 * mass);
    double area = outcome.plate().region().properties().area();
    double byCloth = plan.stack().plies().size() * plan.choice().cloth().arealWeight() * area / 1e6;
    assertEquals(byCloth, item(outcome, "carbon twill").mass().getAsDouble(), 1e-6 * mass);
  }

  /** Six screws of M5 x 16 with knurled heads of 8.72 by 5 mm (ISO 4762), as solid cylinders. */
  @Test
  void screwsAndWashersWeighWhatTheirSizesSay() {
    CardOutcome outcome = Jobs.of("heron");
    double screw = STEEL * Math.PI / 4 * (25 * 16 + 8.72 * 8.72 * 5);
    Item screws = item(outcome, "screws M5 x 16 socket, ISO 4762");
    assertEquals(6, screws.supply().amount());
    assertEquals(6 * screw, screws.mass().getAsDouble(), 1e-9);
    // ISO 7089: 5.3 by 10 by 1 mm.
    double washer = STEEL * Math.PI / 4 * (100 - 5.3 * 5.3) * 1;
    assertEquals(6 * washer, item(outcome, "washers M5").mass().getAsDouble(), 1e-9);
    // ISO 4032, M4: 7.66 over corners, 3.2 high; a hexagon's area is 3 sqrt(3)/8 of its square.
    double nut = STEEL * 3.2 * (3 * Math.sqrt(3) / 8 * 7.66 * 7.66 - Math.PI / 4 * 16);
    assertEquals(10 * nut, item(outcome, "nuts M4").mass().getAsDouble(), 1e-9);
  }

  /** A countersunk screw is a cone and a shank, its length over all. */
  @Test
  void aCountersunkScrewIsAConeOnItsShank() {
    CardOutcome outcome =
        Jobs.of("dunlin", "joints=[{holes: hub, screw: {head: countersunk, length: 20}}]");
    Item screws = item(outcome, "screws M6 x 20 countersunk");
    double sharp = outcome.study().joints().joints().get(0).headSize().diameter() / 2;
    double cone = sharp - 3;
    double volume =
        Math.PI / 3 * cone * (sharp * sharp + 3 * sharp + 9) + Math.PI * 9 * (20 - cone);
    assertEquals(3 * STEEL * volume, screws.mass().getAsDouble(), 1e-9);
  }

  @Test
  void pricedStockCostsTheSumOfItsItems() {
    MaterialBook book =
        MaterialBook.builtIn()
            .with(
                "mine.yaml",
                "felloe-materials: 1\ncurrency: EUR\nprices:\n"
                    + "  - {item: carbon-twill-200, price: 30, per: metre}\n"
                    + "  - {item: epoxy-slow, price: 26}\n"
                    + "  - {item: sundries, price: 25}\n  - {item: work, price: 12}\n"
                    + "  - {item: aluminium-6082, price: 110}\n");
    CardOutcome outcome = Jobs.priced("heron", book);
    Bill bill = outcome.job().bill();
    StockOption way = outcome.job().parts().stock().orElseThrow().option().orElseThrow();
    double all = way.materialCost().getAsDouble() + way.workCost().getAsDouble();
    assertEquals(all, bill.cost().getAsDouble(), 1e-9);
    LayupPlan plan = outcome.job().parts().laidUp().orElseThrow();
    double byHand =
        30 * plan.cloth().toBuy() / 1000 + 26 * plan.resin().mix() / 1000 + 25 + 12 * plan.hours();
    assertEquals(byHand, bill.cost().getAsDouble(), 1e-9);
    assertEquals("EUR", bill.currency().orElseThrow());
    assertTrue(bill.missingPrices().isEmpty());

    Bill sheet = Jobs.priced("dunlin", book).job().bill();
    assertEquals(110 * 0.3 * 0.3, sheet.cost().getAsDouble(), 1e-9);
  }

  @Test
  void whatHasNoPriceIsNamedAndCostsNothing() {
    MaterialBook book =
        MaterialBook.builtIn()
            .with("mine.yaml", "felloe-materials: 1\nprices:\n  - {item: epoxy-slow, price: 26}\n");
    Bill some = Jobs.priced("heron", book).job().bill();
    assertEquals(List.of("carbon-twill-200", "sundries"), some.missingPrices());
    assertTrue(some.cost().isPresent());
    Bill none = Jobs.of("heron").job().bill();
    assertEquals(OptionalDouble.empty(), none.cost());
    none.items().forEach(item -> assertTrue(item.cost().isEmpty(), item.toString()));
  }

  /** By area, by length of edge, by hole: rounded up to whole steps. */
  @Test
  void consumablesFollowTheSizeOfThePlate() {
    CardOutcome outcome = Jobs.of("dunlin");
    double face = 0.28 * 0.28;
    assertEquals(Math.ceil(22 * face), item(outcome, "masking tape").supply().amount());
    assertEquals(5 * Math.ceil(80 * face / 5), item(outcome, "spray glue").supply().amount());
    double edge =
        Math.PI * 0.28
            + outcome.plate().windows().stream().mapToDouble(w -> w.contour().length()).sum()
                / 1000;
    assertEquals(Math.ceil(0.5 * edge), item(outcome, "abrasive paper P120").supply().amount());
    // Four holes: three for the hub and the bore; a drop each, in steps of 5 ml.
    assertEquals(5, item(outcome, "cutting fluid").supply().amount());
    assertTrue(item(outcome, "jigsaw blades, for metal, 5 mm").supply().spent());
  }

  @Test
  void onlyWhatTheJobNeedsIsOnTheBill() {
    CardOutcome machine = Jobs.of("dunlin", "making.position=machine");
    for (String none : List.of("paper", "masking tape", "jigsaw", "centre punch", "high-speed")) {
      assertFalse(has(machine, none), none);
    }
    assertTrue(has(machine, "6 mm end mill"), machine.job().bill().toString());
    CardOutcome mockUp = Jobs.of("avocet");
    assertFalse(has(mockUp, "threadlocker") || has(mockUp, "dial") || has(mockUp, "grip"));
    assertTrue(has(mockUp, "brad-point wood drill, \u00d85.5 mm") && has(mockUp, "varnish"));
    assertFalse(has(Jobs.of("dunlin"), "release wax"));
    for (Item item : machine.job().bill().items()) {
      assertTrue(machine.job().order().has(item.act()), item.toString());
      assertFalse(item.basis().isBlank(), item.toString());
    }
  }

  @Test
  void stockIsAskedForByItsCutSize() {
    CardOutcome heron = Jobs.of("heron");
    LayupPlan plan = heron.job().parts().laidUp().orElseThrow();
    Item plies = item(heron, "pieces of it, 0/90");
    assertEquals(10, plies.supply().amount());
    assertEquals("415 x 295 mm", plies.supply().each());
    assertEquals(415, plan.blank().box().width(), 1e-9);
    assertEquals(
        "300 x 300 mm", item(Jobs.of("dunlin"), "aluminium 6082-T6, 6 mm").supply().each());
    // No usual sheet is known of it, and the shape file names none: the plate and 5 mm all round.
    CardOutcome own = Jobs.of("dunlin", "stock={material: acrylic, thickness: 6}");
    assertEquals("290 x 290 mm", item(own, "cast acrylic").supply().each());
  }

  @Test
  void insertsAreOnePerScrew() {
    CardOutcome outcome =
        Jobs.of("dunlin", "joints=[{holes: hub, into: {tapped: insert, depth: 12}}]");
    assertEquals(3, item(outcome, "threaded inserts M6").supply().amount());
  }
}
