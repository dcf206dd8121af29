package felloe.laminate;

import static felloe.laminate.Printed.holds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.yaml.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What broken strips tell. */
class StripsTest {

  private static final long SEED = 5_150;

  private static Strip strip(StripMethod method, double load, double deflection) {
    return new Strip("T1", method, 15, 2, 80, load, OptionalDouble.of(deflection), List.of(), true);
  }

  // ISO 178, ISO 14125, ASTM D790: 3 F L/(2 b h²), L³ m/(4 b h³), 6 s h/L².
  @Test
  void aStripOnTwoSupportsHasTheStandardsStressModulusAndStrain() {
    Strip s = strip(StripMethod.THREE_POINT, 100, 1.778);
    assertEquals(200, s.strength().getAsDouble(), 1e-9);
    assertEquals(60_000, s.modulus(), 15);
    assertEquals(6 * 1.778 * 2 / 6400, s.strain().getAsDouble(), 1e-12);
    // Stress over modulus is the strain, as the three formulas must agree.
    assertEquals(s.strain().getAsDouble(), s.strength().getAsDouble() / s.modulus(), 1e-12);
  }

  // A cantilever of any textbook: M = F L, s = F L³/(3 E I), I = b h³/12.
  @Test
  void aStripInAViceIsTheTextbooksCantilever() {
    double inertia = 15 * 8 / 12.0;
    double e = 45_000;
    double force = 20;
    double deflection = force * 80 * 80 * 80 / (3 * e * inertia);
    Strip s = strip(StripMethod.BENCH_VICE, force, deflection);
    assertEquals(force * 80 * 1 / inertia, s.strength().getAsDouble(), 1e-9);
    assertEquals(e, s.modulus(), 1e-6);
    assertEquals(s.strength().getAsDouble() / e, s.strain().getAsDouble(), 1e-12);
  }

  // ISO 14125 and ASTM D790, from memory: 1 + 6 (s/L)² - 3 s h/L² beyond a tenth of the span, and
  // strain h/L (6 s/L - 24.37 (s/L)³ + 62.17 (s/L)⁵).
  @Test
  void aStripBentFarIsCorrectedAsTheStandardsDo() {
    Strip near = strip(StripMethod.THREE_POINT, 100, 8);
    assertEquals(200, near.strength().getAsDouble(), 1e-9);
    Strip far = strip(StripMethod.THREE_POINT, 100, 16);
    assertEquals(200 * (1 + 6 * 0.04 - 3 * 16 * 2 / 6400.0), far.strength().getAsDouble(), 1e-9);
    assertEquals(
        0.025 * (1.2 - 24.37 * 0.008 + 62.17 * 0.00032), far.strain().getAsDouble(), 1e-12);
    assertTrue(far.bentFar());
  }

  @Test
  void theModulusIsTheSlopeOfTheReadingsWhereverTheyStart() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      double slope = 10 + random.nextDouble() * 100;
      double settled = random.nextDouble() * 0.5;
      List<Strip.Reading> readings = new ArrayList<>();
      for (int j = 1; j <= 2 + random.nextInt(5); j++) {
        readings.add(new Strip.Reading(10 * j, settled + 10 * j / slope));
      }
      Strip s =
          new Strip(
              "a", StripMethod.THREE_POINT, 15, 2, 80, 200, OptionalDouble.of(99), readings, false);
      double expected = 80.0 * 80 * 80 * slope / (4 * 15 * 8);
      assertEquals(expected, s.modulus(), 1e-8 * expected, "seed " + SEED + ", " + i);
      assertTrue(s.strength().isEmpty());
    }
  }

  // One-sided tolerance factors for 90 % with 95 % confidence as MIL-HDBK-17 and NBS Handbook 91
  // print them, from memory.
  @ParameterizedTest
  @CsvSource({
    "2, 20.581",
    "3, 6.155",
    "4, 4.162",
    "5, 3.407",
    "6, 3.006",
    "7, 2.755",
    "8, 2.582",
    "9, 2.454",
    "10, 2.355",
    "15, 2.068",
    "20, 1.926",
    "30, 1.777"
  })
  void toleranceFactorsAreThoseOfTheHandbooks(int count, String k) {
    assertEquals(Double.parseDouble(k), ToleranceFactor.of(count, 0.90, 0.95), 1.01e-3);
  }

  // The same handbooks for 99 % with 95 % confidence, from memory.
  @Test
  void strictToleranceFactorsAreThoseOfTheHandbooks() {
    assertEquals(5.741, ToleranceFactor.of(5, 0.99, 0.95), 1.01e-3);
    assertEquals(3.981, ToleranceFactor.of(10, 0.99, 0.95), 1.01e-3);
  }

  @Test
  void withVeryManyStripsTheFactorNearsTheNormalQuantile() {
    double k = ToleranceFactor.of(100_000, 0.90, 0.95);
    assertTrue(k > 1.2816 && k < 1.2816 + 0.01, "" + k);
  }

  @Test
  void theBoundKeepsItsConfidence() {
    Random random = new Random(SEED);
    double k = ToleranceFactor.of(5, NormalSample.SHARE, NormalSample.CONFIDENCE);
    int kept = 0;
    int trials = 20_000;
    for (int i = 0; i < trials; i++) {
      double sum = 0;
      double squares = 0;
      for (int j = 0; j < 5; j++) {
        double x = random.nextGaussian();
        sum += x;
        squares += x * x;
      }
      double mean = sum / 5;
      double deviation = Math.sqrt((squares - 5 * mean * mean) / 4);
      kept += mean - k * deviation <= -1.2815515655 ? 1 : 0;
    }
    assertEquals(0.95, kept / (double) trials, 0.006, "seed " + SEED);
  }

  // Student's t for 4 degrees of freedom, two-sided 95 %: 2.776 (any table).
  @Test
  void aSampleHasItsMeanDeviationIntervalAndBound() {
    NormalSample s = NormalSample.of(List.of(500.0, 510.0, 520.0, 530.0, 540.0));
    assertEquals(520, s.mean(), 1e-9);
    assertEquals(Math.sqrt(250), s.deviation(), 1e-9);
    assertEquals(500, s.least());
    double reach = 2.776 * Math.sqrt(250 / 5.0);
    assertEquals(520 - reach, s.interval().orElseThrow().from(), 0.01);
    assertEquals(520 + reach, s.interval().orElseThrow().to(), 0.01);
    assertEquals(520 - 3.407 * Math.sqrt(250), s.lower().getAsDouble(), 0.02);
  }

  @Test
  void oneStripHasNoBoundAndTwoThatDifferMuchHaveNone() {
    NormalSample one = NormalSample.of(List.of(500.0));
    assertEquals(500, one.mean());
    assertTrue(one.lower().isEmpty() && one.interval().isEmpty());
    NormalSample two = NormalSample.of(List.of(450.0, 550.0));
    holds("20.581", two.factor().getAsDouble());
    assertTrue(two.lower().isEmpty());
    assertTrue(NormalSample.of(List.of(500.0, 500.0)).lower().isEmpty());
  }

  // Grubbs' two-sided limits at 5 % are 1.715 for five figures and 2.290 for ten (tables, from
  // memory).
  @Test
  void aFigureIsOddJustBeyondGrubbsLimit() {
    assertTrue(odd(0, 5));
    assertTrue(odd(9, 10));
    List<Double> even = List.of(500.0, 505.0, 495.0, 502.0, 498.0);
    assertTrue(NormalSample.of(even).outlier(even).isEmpty());
    assertEquals(1.715, limit(5), 2e-3);
    assertEquals(2.290, limit(10), 2e-3);
  }

  /** Whether one figure far from the others, which differ a little, is found. */
  private static boolean odd(int at, int count) {
    List<Double> figures = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      figures.add(i == at ? 900.0 : 500 + (i % 3));
    }
    return NormalSample.of(figures).outlier(figures).orElse(-1) == at;
  }

  /** Residual over deviation at which a figure becomes odd, found by moving it outward. */
  private static double limit(int count) {
    double low = 0;
    double high = 1000;
    for (int step = 0; step < 60; step++) {
      double middle = (low + high) / 2;
      List<Double> figures = figures(count, middle);
      if (NormalSample.of(figures).outlier(figures).isPresent()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    NormalSample s = NormalSample.of(figures(count, high));
    return (1000 + high - s.mean()) / s.deviation();
  }

  private static List<Double> figures(int count, double out) {
    List<Double> figures = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      figures.add(1000.0 + (i % 2 == 0 ? 1 : -1));
    }
    figures.add(1000 + out);
    return figures;
  }

  @Test
  void strengthComesFromTheBrokenStripsAndStiffnessFromAll() {
    Strip held =
        new Strip(
            "H",
            StripMethod.THREE_POINT,
            15,
            2,
            80,
            50,
            OptionalDouble.of(0.889),
            List.of(),
            false);
    TestedStrips t =
        TestedStrips.of(
            List.of(
                strip(StripMethod.THREE_POINT, 100, 1.8),
                strip(StripMethod.THREE_POINT, 102, 1.8),
                strip(StripMethod.THREE_POINT, 101, 1.8),
                strip(StripMethod.THREE_POINT, 103, 1.8),
                strip(StripMethod.THREE_POINT, 104, 1.8),
                held));
    assertEquals(5, t.strength().orElseThrow().count());
    assertEquals(6, t.modulus().count());
    assertEquals(
        t.designStrength().getAsDouble() / t.modulus().mean(),
        t.designStrain().getAsDouble(),
        1e-15);
    assertTrue(TestedStrips.of(List.of(held)).designStrength().isEmpty());
  }

  @Test
  void impossibleStripsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> strip(StripMethod.THREE_POINT, -1, 1));
    assertThrows(
        IllegalArgumentException.class, () -> strip(StripMethod.THREE_POINT, 1, Double.NaN));
    assertThrows(
        IllegalArgumentException.class,
        () ->
            new Strip(
                "a",
                StripMethod.THREE_POINT,
                1,
                1,
                80,
                1,
                OptionalDouble.empty(),
                List.of(new Strip.Reading(1, 1)),
                true));
    assertThrows(IllegalArgumentException.class, () -> NormalSample.of(List.of()));
    assertThrows(IllegalArgumentException.class, () -> NormalSample.of(List.of(1.0, -1.0)));
    assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.of(1, 0.9, 0.95));
    assertThrows(IllegalArgumentException.class, () -> ToleranceFactor.of(5, 1, 0.95));
  }

  /** 14 CFR 25.613(b), single load path; k from the noncentral t: 5.741 for five, 3.981 for ten. */
  @Test
  void aSingleLoadPathAsksForNinetyNineInAHundred() {
    NormalSample five = NormalSample.of(List.of(460.0, 480.0, 500.0, 520.0, 540.0));
    assertEquals(5.741, five.designFactor().getAsDouble(), 0.001);
    // Scatter of 6.3 % counts as 3.2 + 4 % (CMH-17, modified coefficient of variation, from
    // memory).
    double variation = Math.sqrt(1000) / 500;
    assertEquals(variation / 2 + 0.04, five.designVariation(), 1e-12);
    assertEquals(500 * (1 - 5.741 * (variation / 2 + 0.04)), five.design().getAsDouble(), 0.1);
    List<Double> ten = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      ten.add(400.0 + 25 * i);
    }
    assertEquals(3.981, NormalSample.of(ten).designFactor().getAsDouble(), 0.001);
    assertEquals(NormalSample.of(ten).variation(), NormalSample.of(ten).designVariation(), 1e-12);
  }

  /** Two equal strips had their mean for a bound once. */
  @Test
  void fewOrEqualStripsAreWorthLittle() {
    NormalSample two = NormalSample.of(List.of(500.0, 500.0));
    assertTrue(two.design().isEmpty());
    NormalSample five = NormalSample.of(List.of(500.0, 500.0, 500.0, 500.0, 500.0));
    assertEquals(500 * (1 - 5.741 * 0.06), five.design().getAsDouble(), 0.1);
    List<Strip> strips = new ArrayList<>();
    for (String label : List.of("A", "B", "C")) {
      strips.add(
          new Strip(
              label,
              StripMethod.THREE_POINT,
              15,
              4,
              160,
              600,
              OptionalDouble.of(8),
              List.of(),
              true));
    }
    List<String> worth = TestedStrips.of(strips).worth();
    assertEquals(2, worth.size(), worth.toString());
    assertTrue(worth.get(0).startsWith("3 broken strips tell little"), worth.get(0));
    assertTrue(worth.get(1).startsWith("strips that scatter by less than 1 %"), worth.get(1));
  }

  @Test
  void whatNoLaminateCanHaveIsRefusedWithTheLikelySlip() {
    String strip = "span: 160\nstrips:\n  - {width: 15, thickness: 4, load: %s, deflection: %s}\n";
    // 600 N come to 600 MPa; 600 kg for 600 N to ten times that.
    refuses(
        strip.formatted("600 kg", "8"), "comes to a modulus of", "kilograms written as newtons");
    refuses(strip.formatted("600 N", "0.2"), "comes to a modulus of", "measure thickness again");
    refuses(strip.formatted("6 N", "0.1"), "comes to a strength of 6 MPa", "kilograms");
  }

  private static void refuses(String text, String... words) {
    BadInput bad =
        assertThrows(
            BadInput.class, () -> StripsFile.read(YamlTree.parse("strips.yaml", text)), text);
    for (String word : words) {
      assertTrue(bad.getMessage().contains(word), bad.getMessage());
    }
  }

  /** Copies of one figure tell no scatter, so that no bound and no interval is told of them. */
  @Test
  void copiesOfOneFigureHaveNoBound() {
    for (int n : new int[] {2, 5, 30}) {
      NormalSample copies = NormalSample.of(java.util.Collections.nCopies(n, 518.4));
      assertTrue(copies.lower().isEmpty(), "of " + n);
      assertTrue(copies.interval().isEmpty(), "of " + n);
    }
    NormalSample real = NormalSample.of(java.util.List.of(500.0, 520.0, 540.0, 510.0, 530.0));
    assertTrue(real.lower().getAsDouble() < 500);
  }
}
