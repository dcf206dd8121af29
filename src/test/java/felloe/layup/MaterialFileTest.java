package felloe.layup;

import static felloe.layup.LayupPlates.BOOK;
import static felloe.layup.LayupPlates.disc;
import static felloe.layup.LayupPlates.plan;
import static felloe.layup.LayupPlates.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A maker's own materials, and what is wrong with them. */
class MaterialFileTest {

  private static final String RESIN =
      """
      felloe-materials: 1
      resins:
        shelf:
          density: 1.15
          resin-density: 1.15
          hardener-density: 0.95
          hardener-by-weight: 28
          hardener-by-volume: 34
          pot-life: [{at: 20, minutes: 50}]
          working-time: [{at: 20, minutes: 150}]
          cure: [{at: 20, hours: 24}]
          pot-limit: 250
          basis: {all: data sheet}
      """;

  private static String complaint(String text) {
    return assertThrows(BadInput.class, () -> BOOK.with("shelf.yaml", text)).getMessage();
  }

  @Test
  void theProgramsOwnFilesAreWhole() {
    assertEquals(9, BOOK.cloths().size());
    assertEquals(
        List.of("epoxy-fast", "epoxy-medium", "epoxy-slow"), List.copyOf(BOOK.resins().keySet()));
    assertEquals(4, BOOK.processes().size());
    assertEquals(6, BOOK.sheets().size());
    assertTrue(BOOK.prices().list().isEmpty());
  }

  @Test
  void whatTheProgramBringsNamesNoMaker() {
    BOOK.resins().values().forEach(r -> assertTrue(r.title().startsWith("laminating epoxy")));
    BOOK.cloths()
        .values()
        .forEach(c -> assertEquals(c.arealWeight() + "", c.name().replaceAll("\\D", "") + ".0"));
  }

  @Test
  void aTimeThatIsLongerInTheWarmIsRefused() {
    String wrong =
        RESIN.replace("[{at: 20, minutes: 50}]", "[{at: 20, minutes: 24}, {at: 30, minutes: 50}]");
    assertTrue(complaint(wrong).contains("pot-life"), complaint(wrong));
    assertTrue(complaint(wrong).contains("is longer when it is warmer"), complaint(wrong));
  }

  @Test
  void anOwnResinStandsBesideTheOthersAndIsPlannedWith() {
    MaterialBook book = BOOK.with("shelf.yaml", RESIN);
    assertEquals(4, book.resins().size());
    LayupPlan plan =
        LayupPlan.of(
            disc(290, 5), wish().named(null, null, "shelf").value(), book, LayupPlates::materials);
    assertEquals(0.28, plan.resin().hardener() / plan.resin().resin(), 0.006);
    assertFalse(
        plan.figures().stream().anyMatch(f -> f.name().equals("pot life there") && f.assumed()));
  }

  @Test
  void aMissingHardenerRatioIsRefused() {
    String bad = RESIN.replaceAll(".*hardener-by-.*\n", "");
    assertEquals(
        "shelf.yaml:4:5 resins.shelf.hardener-by-weight: is missing; add 'hardener-by-weight:' with"
            + " a number such as 1.5",
        complaint(bad));
  }

  @Test
  void aRatioByVolumeAloneIsRefusedAndTheOneByWeightIsHintedAt() {
    assertEquals(
        "shelf.yaml:7:25 resins.shelf.hardener-by-volume: '34' will not do alone: resin is weighed,"
            + " and a ratio by volume is another number than one by weight; add hardener-by-weight"
            + " from the data sheet, near 28.1 by these densities",
        complaint(RESIN.replaceAll(".*hardener-by-weight.*\n", "")));
  }

  @Test
  void aRatioByVolumeGivenAsOneByWeightIsNoticed() {
    String complaint = complaint(RESIN.replace("hardener-by-weight: 28", "hardener-by-weight: 34"));
    assertTrue(
        complaint.startsWith(
            "shelf.yaml:7:25 resins.shelf.hardener-by-weight: '34' does not agree with"
                + " hardener-by-volume and the densities, which make it 28.1 by weight"),
        complaint);
  }

  @Test
  void allMistakesOfAFileComeOutTogether() {
    String complaint =
        complaint(
            """
            felloe-materials: 1
            cloths:
              thin:
                fibre: carbn
                areal-weight: 0
                weave: twill
                roll-width: 1000
                stiffness: {E1: 60 GPa, E2: 60 GPa, G12: 2.7 GPa, nu12: 0.03, fraction: 0.75}
                strip-class: 5
                basis: {areal-weight: guessed}
            processes:
              hands:
                fraction: {low: 0.15, usual: 0.4, high: 0.35}
                losses: {brush: 10, roller: 15, pot: 3, squeeze-out: 8, absorbed: 0}
                minutes: {ply: 1.5, square-metre: 10, mix: 3, close: 10}
                pressure: 4
                plates: 3
                hours: {ready: 1, finish: 1}
                basis: {all: guessed}
            prices:
              - {item: thin, price: -3}
            """);
    for (String part :
        List.of(
            "did you mean 'carbon'?",
            "cloths.thin.areal-weight: '0' must be at least 10",
            "cloths.thin.stiffness.fraction: '0.75' must be at most 0.7",
            "cloths.thin.strip-class: '5' must be at most 4",
            "must say where 'roll-width' comes from",
            "processes.hands.fraction.low: '0.15' must be at least 0.2",
            "processes.hands.fraction.high: '0.35' must be at least 0.4",
            "processes.hands.plates: '3' must be at most 2",
            "prices[0].price: '-3' must be at least 0")) {
      assertTrue(complaint.contains(part), part + "\n" + complaint);
    }
  }

  @Test
  void aFractionThatNoLaminateHasIsRefused() {
    BadInput bad =
        assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().fraction(0.75).value()));
    assertEquals(
        "ruff.yaml:7:3 fraction: '0.75' must be from 0.2 to 0.7: hand lay-up reaches 0.35 to 0.45,"
            + " a press 0.6",
        bad.getMessage());
    BadInput percent =
        assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().fraction(40).value()));
    assertTrue(percent.getMessage().endsWith("write it as a share, such as 0.4"));
    BadInput low =
        assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().fraction(0.19).value()));
    assertEquals(1, low.problems().size());
  }

  @Test
  void aPanelThatCannotBeIsRefused() {
    BadInput bad =
        assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().panel(2, 20).value()));
    assertTrue(
        bad.getMessage().contains("comes to a fibre volume fraction of 1.124"), bad.getMessage());
  }

  @Test
  void zeroPliesAreRefused() {
    BadInput bad = assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().plies(0).value()));
    assertEquals(
        "ruff.yaml:7:3 plies: '0' must be from 1 to 200; leave it out, and it follows from the"
            + " thickness",
        bad.getMessage());
    BadInput none = assertThrows(BadInput.class, () -> plan(disc(290, 5), wish().angles().value()));
    assertTrue(none.getMessage().contains("must have at least one ply"), none.getMessage());
  }

  @Test
  void unknownNamesAreAllToldWithTheNearest() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () ->
                plan(disc(290, 5), wish().named("carbon-twil-200", "vacuumbag", "epoxy").value()));
    assertEquals(3, bad.problems().size());
    assertTrue(bad.getMessage().contains("did you mean 'carbon-twill-200'?"), bad.getMessage());
    assertTrue(bad.getMessage().contains("did you mean 'vacuum-bag'?"), bad.getMessage());
    assertTrue(bad.getMessage().contains("'epoxy' is no resin that is known"), bad.getMessage());
  }
}
