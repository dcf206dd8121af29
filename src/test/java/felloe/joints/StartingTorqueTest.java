package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import org.junit.jupiter.api.Test;

class StartingTorqueTest {

  private static final String[] SIZES = {"M4", "M5", "M6", "M8"};

  private static double clamp(String strength, ScrewThread thread) {
    return 0.75 * Fasteners.standard().strength(strength).orElseThrow().proofLoad(thread);
  }

  private static StartingTorque torque(String strength, String name, double k) {
    ScrewThread thread = ScrewThreads.find(name).orElseThrow();
    NutFactor factor = new NutFactor(k, k, "one value");
    return StartingTorque.of(thread.diameter(), clamp(strength, thread), factor, "the screw");
  }

  @Test
  void theClampForceIsThreeQuartersOfTheProofLoad() {
    // Computed from ISO 898-1: 3819, 6177, 8744, 15921 N for 8.8 with the table's rounded areas.
    double[] published = {3819, 6177, 8744, 15_921};
    for (int i = 0; i < 4; i++) {
      double force = torque("8.8", SIZES[i], 0.2).clamp();
      assertEquals(published[i], force, published[i] * 0.0015, SIZES[i]);
    }
  }

  @Test
  void theTorqueIsKTimesDiameterTimesForce() {
    // Computed by the short form T = K d F: K 0.20 and 0.15.
    double[] dry = {3.06, 6.18, 10.49, 25.47};
    double[] oiled = {2.29, 4.63, 7.87, 19.11};
    for (int i = 0; i < 4; i++) {
      assertEquals(dry[i], torque("8.8", SIZES[i], 0.20).torque(), dry[i] * 0.002, SIZES[i]);
      assertEquals(oiled[i], torque("8.8", SIZES[i], 0.15).torque(), oiled[i] * 0.002, SIZES[i]);
    }
    assertEquals(8.84, torque("10.9", "M5", 0.20).torque(), 0.02);
    assertEquals(10.33, torque("12.9", "M5", 0.20).torque(), 0.02);
    assertEquals(15.01, torque("10.9", "M6", 0.20).torque(), 0.03);
    assertEquals(17.55, torque("12.9", "M6", 0.20).torque(), 0.03);
  }

  @Test
  void theSlipperiestThreadReachesTheClampForceAndTheDriestTheLeast() {
    StartingTorque torque = StartingTorque.of(5, 6000, new NutFactor(0.17, 0.22, "b"), "x");
    assertEquals(0.17 * 0.005 * 6000, torque.torque(), 1e-12);
    // The low torque with the high factor.
    assertEquals(torque.torque() / (0.22 * 0.005), torque.leastClamp(), 1e-9);
    assertTrue(torque.leastClamp() < torque.clamp());
  }

  @Test
  void theRingUnderAHeadIsThatOfThePublishedFigures() {
    // Computed: 6177 N on ISO 4762 M5 (dw 8.03, hole 5.5) 229.8 MPa; on a washer of 10 mm 112.8.
    assertEquals(229.8, 6177 / StartingTorque.ring(8.03, 5.5), 0.1);
    assertEquals(112.8, 6177 / StartingTorque.ring(10, 5.5), 0.1);
  }

  @Test
  void whatIsNotFiniteOrNoRangeIsRefused() {
    assertThrows(
        IllegalArgumentException.class,
        () -> StartingTorque.of(5, Double.NaN, new NutFactor(0.1, 0.2, ""), ""));
    assertThrows(IllegalArgumentException.class, () -> new NutFactor(0.2, 0.1, ""));
    assertThrows(IllegalArgumentException.class, () -> new NutFactor(0, 0.1, ""));
  }
}
