package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Joints put together by chance are planned soundly, or refused with a place and a cure. */
class RandomJointsTest {

  private final List<String> keys = new ArrayList<>();

  private static String one(Random random, String... words) {
    return words[random.nextInt(words.length)];
  }

  private void maybe(Random random, String key, String value) {
    if (random.nextInt(3) == 0) {
      keys.add(key + ": " + value);
    }
  }

  private String joined() {
    String text = "{" + String.join(", ", keys) + "}";
    keys.clear();
    return text;
  }

  private String joint(Random random, String holes) {
    maybe(random, "thread", one(random, "M3", "M4", "M5", "M5", "10-32", "8-32"));
    maybe(random, "head", one(random, "socket", "button", "countersunk"));
    maybe(random, "class", one(random, "8.8", "10.9", "12.9", "A2-70", "grade-5"));
    maybe(random, "length", Integer.toString(1 + random.nextInt(60)));
    maybe(random, "surface", one(random, "dry", "oiled"));
    maybe(random, "sunk", Integer.toString(random.nextInt(8)));
    String screw = joined();
    if (random.nextBoolean()) {
      keys.add("tapped: " + one(random, "steel", "aluminium", "plastic", "laminate", "insert"));
      maybe(random, "depth", Integer.toString(1 + random.nextInt(30)));
      maybe(random, "through", "true");
    } else {
      keys.add("nut: " + one(random, "plain", "lock"));
      maybe(random, "washer", one(random, "none", "plain", "large"));
      maybe(random, "sunk", Integer.toString(random.nextInt(8)));
    }
    String into = joined();
    keys.add("holes: " + holes);
    keys.add("screw: " + screw);
    maybe(random, "washer", one(random, "none", "plain", "large"));
    maybe(random, "front", "[" + random.nextInt(9) + ".5]");
    maybe(random, "back", "[" + random.nextInt(9) + ".5, 2]");
    maybe(random, "into", into);
    return joined();
  }

  @Test
  void everyPlanIsSoundOrIsRefusedWithItsPlace() {
    int planned = 0;
    int refused = 0;
    for (long seed = 1; seed <= 400; seed++) {
      Random random = new Random(seed);
      String text =
          "joints:\n  - " + joint(random, "hub") + "\n  - " + joint(random, "grip") + "\n";
      try {
        for (PlannedJoint joint : Shapes.plan(text).joints()) {
          isSound(joint, "seed " + seed + "\n" + text);
          planned++;
        }
      } catch (BadInput bad) {
        refused++;
        for (String line : bad.lines()) {
          assertTrue(line.matches("redshank\\.yaml:1[0-9]:\\d+ joints\\[.*"), line);
        }
      }
    }
    assertTrue(planned > 150 && refused > 50, planned + " planned, " + refused + " refused");
  }

  private static void isSound(PlannedJoint joint, String why) {
    assertFalse(joint.holes().isEmpty(), why);
    assertTrue(joint.clamped() > 0, why);
    double parts = joint.parts().stream().mapToDouble(ClampedPart::thickness).sum();
    assertTrue(joint.clamped() <= parts + 1e-9, why);
    assertTrue(joint.engagement() >= 0 && joint.engagement() <= joint.length(), why);
    assertTrue(joint.torque().torque() > 0, why);
    double most = 0.75 * joint.strength().proofLoad(joint.thread());
    assertTrue(joint.torque().clamp() <= most + 1e-9, why);
    assertTrue(joint.torque().leastClamp() < joint.torque().clamp(), why);
    assertEquals(joint.tapped().isPresent(), joint.nut().isEmpty(), why);
    assertEquals(StrengthClass.isInch(joint.thread()), joint.strength().inch(), why);
    assertTrue(joint.widest() > joint.thread().diameter(), why);
    if (!joint.screw("length")) {
      assertTrue(joint.standardLength(), why);
      joint.beyondNut().ifPresent(end -> assertTrue(end >= joint.thread().pitch() - 1e-6, why));
    }
  }

  @Test
  void theSameShapeGivesTheSamePlan() {
    assertEquals(Shapes.plan(""), Shapes.plan(""));
  }
}
