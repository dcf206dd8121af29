package felloe.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Handbook figures brought to what strips showed. */
class StripCalibrationTest {

  private static final long SEED = 606;

  private static TestedStrips strips(Random random, int count) {
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      strips.add(
          new Strip(
              "T" + i,
              StripMethod.THREE_POINT,
              15,
              5,
              200,
              640 + 30 * random.nextDouble(),
              OptionalDouble.of(9.8 + 0.4 * random.nextDouble()),
              List.of(),
              true));
    }
    return TestedStrips.of(strips);
  }

  @Test
  void theCalibratedStackGivesTheStripsBack() {
    Random random = new Random(SEED);
    for (int i = 0; i < 30; i++) {
      TestedStrips tested = strips(random, 5);
      double direction = random.nextInt(180) - 90;
      Stack stack = LaminateLawsTest.stack(random, 1 + random.nextInt(6));
      Stack calibrated = StripCalibration.of(stack, tested, direction).apply(stack);
      Laminate along =
          Laminate.of(
              new Stack(
                  calibrated.plies().stream()
                      .map(p -> new Ply(p.material(), p.thickness(), p.angle() - direction))
                      .toList()));
      String which = "seed " + SEED + ", " + i;
      double mean = tested.modulus().mean();
      assertEquals(mean, along.moduli().bending().ex(), 1e-9 * mean, which);
      double design = tested.designStrength().getAsDouble();
      double h = along.thickness();
      double worst = 0;
      for (int sign : new int[] {-1, 1}) {
        LaminateLoad load = new LaminateLoad(0, 0, 0, sign * design * h * h / 6, 0, 0);
        worst =
            Math.max(
                worst,
                FirstFailure.of(
                        FailureCriterion.MAXIMUM_STRAIN, along.response(load), Optional.empty())
                    .orElseThrow()
                    .index());
      }
      assertEquals(1, worst, 1e-9, which);
    }
  }

  @Test
  void withoutADesignStrengthOnlyTheStiffnessIsCalibrated() {
    TestedStrips two = strips(new Random(SEED), 2);
    Stack stack = Stack.of(Printed.T300.with(Printed.T300_STRENGTH), 0.125, 0, 90).mirrored();
    StripCalibration calibration = StripCalibration.of(stack, two, 0);
    assertTrue(two.designStrength().isEmpty() == calibration.strength().isEmpty());
    Stack unknown = Stack.of(Printed.T300, 0.125, 0, 90).mirrored();
    StripCalibration bare = StripCalibration.of(unknown, strips(new Random(SEED), 5), 0);
    assertTrue(bare.strength().isEmpty());
    PlyMaterial m = bare.apply(unknown).plies().get(0).material();
    assertEquals(Printed.T300.e1() * bare.stiffness(), m.e1(), 1e-6);
    assertEquals(0.28, m.nu12());
  }
}
