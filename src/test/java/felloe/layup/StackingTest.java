package felloe.layup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.laminate.Laminate;
import felloe.laminate.PlyMaterial;
import felloe.laminate.Stack;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is said about a stack, against laminate theory. */
class StackingTest {

  private static Stacking cloth(double... angles) {
    return new Stacking(list(angles), true);
  }

  private static List<Double> list(double... angles) {
    List<Double> list = new ArrayList<>();
    for (double angle : angles) {
      list.add(angle);
    }
    return list;
  }

  @Test
  void theUsualStackOfEightPliesTurnsByHalvesAndIsMirrored() {
    assertEquals(list(0, 45, 0, 45, 45, 0, 45, 0), StackPlan.usual(8, Weave.TWILL));
    assertEquals(list(0, 45, 90, -45, -45, 90, 45, 0), StackPlan.usual(8, Weave.UNIDIRECTIONAL));
    assertEquals(List.of(), new Stacking(StackPlan.usual(8, Weave.TWILL), true).warnings());
  }

  @Test
  void anUnsymmetricStackWarps() {
    Stacking stacking = cloth(0, 45, 0, 45);
    assertFalse(stacking.symmetric());
    assertTrue(stacking.warnings().get(0).contains("will warp"), stacking.warnings().toString());
  }

  @Test
  void aQuarterTurnOfClothChangesNothing() {
    assertTrue(cloth(0, 45, -45, 90).symmetric());
    assertFalse(new Stacking(list(0, 45, -45, 90), false).symmetric());
  }

  @Test
  void aStackAtOneAngleOnlyIsNotBalanced() {
    assertFalse(cloth(30, 0, 0, 30).balanced());
    assertTrue(cloth(30, -30, -30, 30).balanced());
    assertTrue(cloth(45, 45).balanced());
    assertFalse(new Stacking(list(45, 45), false).balanced());
    assertTrue(cloth(30, 0, 0, 30).warnings().get(0).contains("not balanced"));
  }

  @Test
  void runsOfLikePliesAreNamedAndThePairInTheMiddleIsNot() {
    List<String> warnings = cloth(0, 0, 45, 45, 45, 45, 0, 0).warnings();
    assertTrue(warnings.get(0).startsWith("plies 1 to 2 all lie at 0/90"), warnings.toString());
    assertTrue(warnings.get(1).startsWith("plies 3 to 6 all lie at \u00b145"), warnings.toString());
    assertEquals(3, warnings.size(), warnings.toString());
    assertEquals(List.of(), cloth(0, 45, 45, 0).warnings());
  }

  @Test
  void oddNumbersHaveAPlyInTheMiddle() {
    List<String> warnings = cloth(0, 45, 0, 45, 0).warnings();
    assertTrue(warnings.get(0).contains("3 at 0/90, 2 at \u00b145"), warnings.toString());
    assertTrue(warnings.get(1).startsWith("an odd number"), warnings.toString());
  }

  @Test
  void sixPliesCannotBeSharedEvenly() {
    assertTrue(
        cloth(0, 45, 0, 0, 45, 0).warnings().stream()
            .anyMatch(warning -> warning.contains("a multiple of four can")));
  }

  /**
   * Classical laminate theory: B vanishes for what is called symmetric, A16 and A26 for balanced.
   */
  @Test
  void theWordsHoldAgainstLaminateTheoryForSeededStacks() {
    long seed = 14125;
    Random random = new Random(seed);
    PlyMaterial woven = new PlyMaterial(60_000, 60_000, 0.03, 2700);
    PlyMaterial one = new PlyMaterial(104_000, 6500, 0.3, 3000);
    double[] choices = {0, 45, -45, 90, 30, -30, 60, -60};
    for (int i = 0; i < 300; i++) {
      boolean cloth = random.nextBoolean();
      double[] half =
          random.doubles(1 + random.nextInt(4), 0, 1).map(r -> choices[(int) (r * 8)]).toArray();
      Stack stack = Stack.of(cloth ? woven : one, 0.25, half);
      stack = random.nextBoolean() ? stack.mirrored() : stack;
      List<Double> angles = stack.plies().stream().map(ply -> ply.angle()).toList();
      Stacking stacking = new Stacking(angles, cloth);
      Laminate laminate = Laminate.of(stack);
      String about = "seed " + seed + ", stack " + angles + (cloth ? " of cloth" : "");
      double scale = laminate.a().m11();
      if (stacking.symmetric()) {
        assertEquals(0, laminate.b().largest(), 1e-9 * scale, about);
      }
      boolean straight =
          Math.abs(laminate.a().m16()) < 1e-9 * scale
              && Math.abs(laminate.a().m26()) < 1e-9 * scale;
      assertEquals(straight, stacking.balanced(), about);
      assertEquals(laminate.a().anisotropy() < 1e-9, stacking.quasiIsotropic(), about);
    }
  }
}
