package felloe.layup;

import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.LayupWish;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Resin weighed into pots. */
class PotPlanTest {

  static void holds(LayupPlan plan, String about) {
    ResinPlan resin = plan.resin();
    PotPlan pots = plan.pots();
    double scale = plan.choice().scale();
    assertEquals(resin.mix(), resin.resin() + resin.hardener(), 1e-9, about);
    double sum = 0;
    double now = 0;
    for (PotPlan.Pot pot : pots.pots()) {
      sum += pot.mix();
      assertTrue(pot.mix() <= plan.choice().resin().potLimit(), about + pot);
      assertEquals(0, Math.IEEEremainder(pot.resin(), scale), 1e-9, about);
      assertEquals(0, Math.IEEEremainder(pot.hardener(), scale), 1e-9, about);
      assertEquals(now, pot.mixAt(), 1e-9, about);
      assertTrue(pot.spreadFrom() > pot.mixAt() && pot.emptyBy() > pot.spreadFrom(), about);
      if (plan.possible()) {
        assertTrue(
            pot.emptyBy() - pot.mixAt() <= PotPlan.SAFETY * (pot.setsAt() - pot.mixAt()) + 1e-9,
            about + pot);
        double doublings = Math.max(0, Math.log(pot.mix() / 100) / Math.log(2));
        assertEquals(
            pots.potLife() * Math.pow(plan.choice().resin().doubled(), doublings),
            pot.setsAt() - pot.mixAt(),
            1e-9,
            about + pot);
      }
      now = pot.emptyBy();
    }
    assertEquals(resin.mix(), sum, 1e-9, about);
    assertEquals(now, pots.lastPly(), 1e-9, about);
    double losses = resin.losses().stream().mapToDouble(ResinPlan.Loss::grams).sum();
    assertEquals(resin.needed(), resin.inPart() + losses, 1e-9, about);
    assertTrue(resin.mix() >= resin.needed() - scale * pots.pots().size(), about);
    // Rounding up the hardener by a step takes as much resin along as the ratio asks.
    double step = scale * (1 + 100 / plan.choice().resin().byWeight()) + scale;
    assertTrue(resin.mix() <= resin.needed() + step * pots.pots().size(), about);
    if (plan.possible()) {
      assertTrue(pots.closed() <= pots.deadline(), about);
    }
  }

  @Test
  void theRatioIsKeptWithinTwoPerCentOrTheScaleIsNamed() {
    LayupPlan fine = plan(disc(290, 5.5), wish().shop(null, null, null, 5, 0.1).value());
    holds(fine, "fine scale");
    assertTrue(fine.pots().ratioError() < 0.002);
    int told = 0;
    for (int diameter = 100; diameter <= 200; diameter += 10) {
      LayupPlan coarse = plan(disc(diameter, 1.1), wish().shop(null, null, null, 0, 5.0).value());
      holds(coarse, "coarse scale");
      boolean off = coarse.pots().ratioError() > PotPlan.RATIO;
      assertEquals(off, coarse.notes().toString().contains("too coarse"), "at " + diameter);
      told += off ? 1 : 0;
    }
    assertTrue(told > 0);
  }

  @Test
  void noPotIsHeavierThanItsLimitAndPliesAreSharedEvenly() {
    LayupPlan plan = plan(disc(290, 8), wish().value());
    holds(plan, "8 mm");
    assertTrue(plan.pots().pots().size() >= 3);
    assertEquals("plies 1 to 7", plan.pots().pots().get(0).plies());
  }

  /** Common practice, from memory: a pot twice as heavy lives seven tenths as long. */
  @Test
  void aHeavyPotLivesShorterThanTheHundredGramsOfTheDataSheet() {
    ResinSystem slow = LayupPlates.BOOK.resins().get("epoxy-slow");
    assertEquals(60, slow.potLife(20, 100), 1e-9);
    assertEquals(42, slow.potLife(20, 200), 1e-9);
    assertEquals(29.4, slow.potLife(20, 400), 1e-9);
    assertEquals(21, slow.potLife(30, 200), 1e-9);
    assertEquals(60, slow.potLife(20, 20), 1e-9);
  }

  /** A gram a step: rounding up took pots of 297 to 300 g past a limit of 300. */
  @Test
  void aPotIsWithinItsLimitAsItIsWeighedOut() {
    LayupChoice usual = plan(disc(290, 5.5), wish().value()).choice();
    for (double grams = 250; grams < 1500; grams += 0.7) {
      ResinPlan.Need need = new ResinPlan.Need(grams, grams, List.of(), grams);
      for (PotPlan.Pot pot : PotPlan.of(need, 4, 1e4, usual).pots()) {
        assertTrue(pot.mix() <= usual.resin().potLimit(), grams + " g: " + pot);
      }
    }
  }

  /** 100 g at 1.15 and 30 g at 0.96 are 118.2 ml; cured, at 1.15, they are 113. */
  @Test
  void theVolumeIsThatOfThePartsBeforeTheyAreMixed() {
    ResinSystem slow = LayupPlates.BOOK.resins().get("epoxy-slow");
    assertEquals(100 / 1.15 + 30 / 0.96, slow.millilitres(100, 30), 1e-9);
    assertEquals(1.046, slow.millilitres(100, 30) / (130 / slow.density()), 0.001);
    ResinPlan resin = plan(disc(290, 5.5), wish().value()).resin();
    assertEquals(resin.resin() / 1.15 + resin.hardener() / 0.96, resin.millilitres(), 1e-9);
  }

  @Test
  void theFiguresThatAPlanRestsOnAreAllTold() {
    List<String> told =
        plan(disc(290, 5.5), wish().value()).figures().stream().map(f -> f.name()).toList();
    for (String name :
        List.of(
            "work before the first pot",
            "work after the cure",
            "coats of release wax",
            "time between coats",
            "tape lines apart",
            "share of it left in a pot twice as heavy",
            "density of the hardener")) {
      assertTrue(told.contains(name), name);
    }
  }

  @Test
  void aPlyThatTakesMoreThanAPotHasSeveral() {
    LayupPlan plan =
        plan(
            disc(900, 8),
            wish()
                .named("carbon-twill-400", null, "epoxy-fast")
                .shop(5.0, 1270.0, 20.0, 0, null)
                .value());
    holds(plan, "large");
    assertTrue(
        plan.pots().pots().get(0).plies().startsWith("ply 1, part 1 of "),
        plan.pots().pots().get(0).plies());
  }

  @Test
  void aPotLifeShorterThanOnePlyTakesIsAnObstacle() {
    LayupPlan plan =
        plan(
            disc(290, 5.5),
            wish().named(null, null, "epoxy-fast").shop(40.0, null, null, 5, null).value());
    assertFalse(plan.possible());
    // 15 min at 20 degrees are 3.75 at 40, of which 3 are planned with; mixing alone takes 3.
    assertTrue(
        plan.pots()
            .obstacles()
            .get(0)
            .startsWith("a pot is too thick after 3 min (pot life 3.8 min"),
        plan.pots().obstacles().toString());
    assertTrue(plan.pots().obstacles().get(0).contains("take a slower hardener"));
  }

  @Test
  void aFirstPlyThatSetsBeforeTheLastIsDownIsAnObstacle() {
    LayupPlan plan = plan(disc(290, 5.5), wish().named(null, null, "epoxy-fast").value());
    List<String> obstacles = plan.pots().obstacles();
    assertEquals(1, obstacles.size(), obstacles.toString());
    assertTrue(
        obstacles.get(0).startsWith("the first ply begins to set after 45 min at 20 degrees"),
        obstacles.get(0));
  }

  @Test
  void infusionTakesAllPotsAtOnce() {
    LayupPlan plan = plan(disc(290, 5), wish().named(null, "infusion", null).value());
    holds(plan, "infusion");
    assertTrue(plan.pots().pots().get(0).plies().startsWith("all plies"));
  }

  @Test
  void aBagHasNoStopsAndComesToItsUsualThickness() {
    LayupPlan plan = plan(disc(290, 5), wish().named(null, "vacuum-bag", null).value());
    assertEquals(plan.stack().usual(), plan.stack().thickness(), 1e-12);
    assertEquals(0.5, plan.stack().fraction(), 1e-12);
    holds(plan, "bag");
    assertTrue(plan.mould().weight().isEmpty());
    assertTrue(plan.mould().kilograms().isEmpty());
  }

  /** Common practice: 15 to 30 % more than stays in the part; as much resin as cloth by mass. */
  @Test
  void whatIsLostIsAsMuchAsTheTradeReckonsWith() {
    LayupWish noStrips = wish().shop(null, null, null, 0, null).value();
    for (double thickness : new double[] {3.4, 4.5, 5.5}) {
      ResinPlan resin = plan(disc(290, thickness), noStrips).resin();
      double share = resin.needed() / resin.inPart() - 1;
      assertTrue(share > 0.15 && share < 0.30, thickness + " mm: " + share);
      assertEquals(1, resin.mix() / resin.fibre(), 0.25, "at " + thickness);
    }
  }
}
