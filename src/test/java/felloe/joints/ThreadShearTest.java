package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import org.junit.jupiter.api.Test;

/** Shear areas of threads by FED-STD-H28/2B, at the worst of printed tolerances. */
class ThreadShearTest {

  private static ScrewThread thread(String name) {
    return ScrewThreads.find(name).orElseThrow();
  }

  /** The formulas of FED-STD-H28/2B with limits as printed, mm² a mm. */
  private static double internal(double p, double leastMajor, double mostPitch) {
    return Math.PI / p * leastMajor * (p / 2 + 0.57735 * (leastMajor - mostPitch));
  }

  private static double external(double p, double mostMinor, double leastPitch) {
    return Math.PI / p * mostMinor * (p / 2 + 0.57735 * (leastPitch - mostMinor));
  }

  /** Limits of size of ISO 965-2, 6g and 6H, from memory. */
  @Test
  void metricAreasAreThoseOfThePrintedLimits() {
    ThreadShear m5 = ThreadShear.of(thread("M5"));
    // A reckoned reference has 10.0 mm2 a mm for the internal thread of M5.
    assertEquals(10.0, m5.internal(), 0.05);
    assertEquals(internal(0.8, 4.826, 4.605), m5.internal(), 0.05);
    assertEquals(external(0.8, 4.334, 4.361), m5.external(), 0.1);
    ThreadShear m6 = ThreadShear.of(thread("M6"));
    assertEquals(internal(1, 5.794, 5.500), m6.internal(), 0.1);
    assertEquals(external(1, 5.153, 5.212), m6.external(), 0.1);
    ThreadShear m8 = ThreadShear.of(thread("M8"));
    assertEquals(internal(1.25, 7.760, 7.348), m8.internal(), 0.15);
    assertEquals(external(1.25, 6.912, 7.042), m8.external(), 0.12);
  }

  /** Limits of size of ASME B1.1, 1/4-20 UNC 2A and 2B, inches, from memory. */
  @Test
  void unifiedAreasAreThoseOfThePrintedLimits() {
    ThreadShear quarter = ThreadShear.of(thread("1/4-20"));
    double in = 25.4;
    assertEquals(internal(in / 20, 0.2408 * in, 0.2224 * in), quarter.internal(), 0.12);
    assertEquals(external(in / 20, 0.2070 * in, 0.2127 * in), quarter.external(), 0.15);
  }

  /**
   * A bolted-joint handbook page: an M10 of class 10.9 wants 21.6 mm in aluminium of 130 MPa until
   * the screw breaks first.
   */
  @Test
  void theEngagementOfAPublishedExampleComesOut() {
    ScrewThread m10 = thread("M10");
    double tensile =
        StrengthClass.stressArea(m10)
            * Fasteners.standard().strength("10.9").orElseThrow().tensile();
    double length = tensile / (130 * ThreadShear.of(m10).internal());
    assertEquals(21.6, length, 21.6 * 0.05);
  }

  @Test
  void theTappedThreadIsTheLargerCylinderForEveryThread() {
    for (ScrewThread thread : ScrewThreads.all()) {
      ThreadShear areas = ThreadShear.of(thread);
      assertTrue(areas.internal() > areas.external(), thread.name());
      assertTrue(areas.internal() < Math.PI * thread.diameter(), thread.name());
      assertTrue(areas.external() > 0.4 * Math.PI * thread.diameter() * 0.8, thread.name());
    }
  }
}
