package felloe.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.layup.LayupPlan;
import felloe.service.CardOutcome;
import felloe.service.Jobs;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every act that a plate needs is there once and in its place, and none that it does not need. */
class WorkOrderTest {

  private static List<Act> acts(CardOutcome outcome) {
    List<Act> acts = new ArrayList<>();
    for (Task task : outcome.job().order().tasks()) {
      // A line for each size of holes is one act.
      if (acts.isEmpty() || acts.get(acts.size() - 1) != task.act()) {
        acts.add(task.act());
      }
    }
    return acts;
  }

  private static List<Act> acts(String shape, String... sets) {
    return acts(Jobs.of(shape, sets));
  }

  @Test
  void aPlateThatIsLaidUpAndSawnHasTheWholeOrder() {
    assertEquals(
        List.of(
            Act.CHECK_PRINT,
            Act.PRINT_TEMPLATE,
            Act.WAX_MOULD,
            Act.CUT_CLOTH,
            Act.LAY_UP,
            Act.CURE,
            Act.POST_CURE,
            Act.MEASURE_STOCK,
            Act.CUT_STRIPS,
            Act.BREAK_STRIPS,
            Act.STICK_TEMPLATE,
            Act.MARK_HOLES,
            Act.DRILL_HOLES,
            Act.MEASURE_HOLES,
            Act.START_HOLES,
            Act.SAW_WINDOWS,
            Act.SAW_OUTLINE,
            Act.FINISH,
            Act.BREAK_EDGES,
            Act.SEAL_EDGES,
            Act.WEIGH,
            Act.BOLT,
            Act.SETTLE,
            Act.PROVE,
            Act.FIT_GRIPS,
            Act.LOCK,
            Act.SIGN),
        acts("heron"));
  }

  @Test
  void boughtMetalIsNeitherLaidUpNorSealed() {
    assertEquals(
        List.of(
            Act.CHECK_PRINT,
            Act.PRINT_TEMPLATE,
            Act.MEASURE_STOCK,
            Act.STICK_TEMPLATE,
            Act.MARK_HOLES,
            Act.DRILL_HOLES,
            Act.MEASURE_HOLES,
            Act.START_HOLES,
            Act.SAW_WINDOWS,
            Act.SAW_OUTLINE,
            Act.FINISH,
            Act.BREAK_EDGES,
            Act.WEIGH,
            Act.BOLT,
            Act.SETTLE,
            Act.PROVE,
            Act.FIT_GRIPS,
            Act.LOCK,
            Act.SIGN),
        acts("dunlin"));
  }

  @Test
  void aMockUpIsTriedAndNotProved() {
    List<Act> acts = acts("avocet");
    assertTrue(acts.contains(Act.BOLT) && acts.contains(Act.SEAL_EDGES), acts.toString());
    for (Act no : List.of(Act.SETTLE, Act.PROVE, Act.LOCK, Act.FIT_GRIPS, Act.LAY_UP)) {
      assertFalse(acts.contains(no), no.toString());
    }
  }

  @Test
  void whatAMachineMakesIsNeitherPrintedMarkedDrilledNorSawn() {
    assertEquals(
        List.of(
            Act.MEASURE_STOCK,
            Act.MACHINE,
            Act.MEASURE_HOLES,
            Act.FINISH,
            Act.BREAK_EDGES,
            Act.WEIGH,
            Act.BOLT,
            Act.SETTLE,
            Act.PROVE,
            Act.FIT_GRIPS,
            Act.LOCK,
            Act.SIGN),
        acts("dunlin", "making.position=machine"));
  }

  /** A blade in the shape file says that windows and outline are sawn all the same. */
  @Test
  void holesOfAMachineComeBeforeTheTemplateThatIsLaidOnThem() {
    List<Act> acts = acts("dunlin", "making.position=machine", "making.blade=5");
    assertEquals(Act.STICK_TEMPLATE, acts.get(acts.indexOf(Act.MACHINE) + 1));
    assertTrue(acts.contains(Act.SAW_OUTLINE) && acts.contains(Act.PRINT_TEMPLATE));
    assertFalse(acts.contains(Act.MARK_HOLES) || acts.contains(Act.DRILL_HOLES));
  }

  @Test
  void whatThePlateDoesNotHaveIsNotDone() {
    assertFalse(acts("heron", "stock.layup.strips=0").contains(Act.BREAK_STRIPS));
    assertFalse(acts("dunlin", "making.grip_scale=0").contains(Act.FIT_GRIPS));
    assertFalse(acts("dunlin", "windows=[]").contains(Act.SAW_WINDOWS));
    assertTrue(acts("dunlin").contains(Act.FIT_GRIPS));
    assertTrue(acts("bittern").contains(Act.FIT_BODIES));
    assertFalse(acts("dunlin").contains(Act.FIT_BODIES));
    List<Act> bare = acts("dunlin", "bolt_circles=[]", "joints=[]");
    for (Act no : List.of(Act.BOLT, Act.SETTLE, Act.PROVE, Act.LOCK, Act.MEASURE_HOLES)) {
      assertFalse(bare.contains(no), no + " in " + bare);
    }
  }

  @Test
  void engravingsAreCut() {
    assertTrue(
        acts("dunlin", "engravings=[{text: UP, at: [0, 125], height: 5, depth: 0.2}]")
            .contains(Act.ENGRAVE));
    assertFalse(acts("dunlin").contains(Act.ENGRAVE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"avocet", "bittern", "dunlin", "heron"})
  void everyActStandsOnceAndEverySizeOfHolesToo(String shape) {
    CardOutcome outcome = Jobs.of(shape);
    List<Act> acts = acts(outcome);
    Set<Act> once = EnumSet.copyOf(acts);
    assertEquals(once.size(), acts.size(), acts.toString());
    assertEquals(
        outcome.drill().plan().groups(),
        outcome.job().order().tasks().stream().flatMap(t -> t.holes().stream()).toList());
  }

  /** The hours of a lay-up are those of its plan, and a day for the joint and the edges' cure. */
  @Test
  void theTimeLineAddsUpToThePlan() {
    CardOutcome outcome = Jobs.of("heron");
    LayupPlan plan = outcome.job().parts().laidUp().orElseThrow();
    WorkOrder order = outcome.job().order();
    assertEquals(plan.hours(), order.work(), 1e-9);
    double cure = plan.choice().resin().cure().at(plan.choice().temperature());
    assertEquals(plan.ways().get(0).waiting() + cure + 24, order.waiting(), 1e-9);
    double now = 0;
    for (Task task : order.tasks()) {
      assertEquals(now, order.begins(task), 1e-9, task.act().toString());
      now += task.hours();
    }
    Task cured =
        order.tasks().stream().filter(t -> t.act() == Act.POST_CURE).findFirst().orElseThrow();
    assertEquals(
        plan.choice().process().ready() + plan.cutting() + plan.pots().closed() / 60 + cure,
        order.begins(cured),
        1e-9);
  }

  @Test
  void aLayUpThatCannotBePlannedIsStillInTheOrder() {
    CardOutcome outcome = Jobs.of("heron", "stock.layup={cloth: no-such-cloth}");
    assertTrue(outcome.refused().orElseThrow().contains("is no cloth that is known"));
    List<Act> acts = acts(outcome);
    assertTrue(acts.contains(Act.LAY_UP) && acts.contains(Act.CURE), acts.toString());
    assertFalse(acts.contains(Act.WAX_MOULD) || acts.contains(Act.BREAK_STRIPS), acts.toString());
  }
}
