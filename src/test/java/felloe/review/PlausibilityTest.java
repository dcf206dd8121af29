package felloe.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.HoleRole;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

/** Slips of the unit, and limits of one's own that let pass what nobody should. */
class PlausibilityTest {

  private static Wheel wheel(double diameter) {
    return new Wheel().outline(Contour.circle(Point.ORIGIN, diameter / 2));
  }

  private static Finding only(Wheel wheel, String rule) {
    List<Finding> found = wheel.findings(rule);
    assertEquals(1, found.size(), rule);
    return found.get(0);
  }

  @Test
  void aThicknessInMetresFailsAndIsToldSo() {
    Finding found = only(wheel(280).thickness(0.005), "stock-thickness");
    assertEquals(Verdict.FAIL, found.verdict());
    assertEquals("it looks like metres: write 5 or put m after it", found.advice());
  }

  @Test
  void anOutlineInInchesAndARadiusForADiameterAreTold() {
    Finding inches = only(wheel(11), "outline-width");
    assertEquals(Verdict.FAIL, inches.verdict());
    assertTrue(inches.advice().startsWith("it looks like inches"), inches.advice());
    Finding radius = only(wheel(140), "outline-width");
    assertEquals(Verdict.CAUTION, radius.verdict());
    assertTrue(radius.advice().contains("280 mm"), radius.advice());
    // The commonest wheels are 300 to 340 mm wide.
    for (double half : new double[] {150, 170}) {
      assertTrue(only(wheel(half), "outline-width").advice().contains("it may be the radius"));
    }
    assertEquals(Verdict.FAIL, only(wheel(1e-5), "outline-width").verdict());
  }

  @Test
  void aPlateOfUsualSizeIsToldNothingOfIt() {
    for (double width : new double[] {200, 280, 380}) {
      assertEquals(List.of(), wheel(width).thickness(1).findings("outline-width"));
      assertEquals(List.of(), wheel(width).thickness(1).findings("stock-thickness"));
    }
  }

  @Test
  void aLimitOfNoughtThatPassesAThinBridgeIsNamed() {
    Wheel bridge =
        wheel(280)
            .hole(HoleRole.BORE, 0, 0, 40)
            .hole(HoleRole.BORE, 40.2, 0, 40)
            .limit("narrowest-web", 0);
    assertTrue(
        bridge.findings("narrowest-web").stream().allMatch(f -> f.verdict() == Verdict.PASS));
    Finding named = only(bridge, "own-limit");
    assertEquals(Verdict.CAUTION, named.verdict());
    assertEquals(0.2, named.figure().value(), 1e-9);
    assertEquals(
        "passes only by your limit of 0; take 'limits.narrowest-web' out to have it judged as"
            + " usual",
        named.advice());
  }

  @Test
  void aLimitThatChangesNoVerdictIsNotNamed() {
    assertEquals(
        List.of(),
        wheel(280).hole(HoleRole.BORE, 0, 0, 40).limit("narrowest-web", 12).findings("own-limit"));
  }

  private static String refusal(String more) {
    return Assertions.assertThrows(
            BadInput.class,
            () ->
                ShapeFile.parse(
                    "ruff.yaml",
                    "felloe: 1\n"
                        + more
                        + "outline: {round: {diameter: 280}}\n"
                        + "stock: {material: birch-plywood, thickness: 9}\n",
                    Sets.of(),
                    HubCatalogue.here()))
        .getMessage();
  }

  @Test
  void aThreadForADiameterIsToldTheHolesOfItsSeries() {
    String told = refusal("holes: [{at: [60, 0], diameter: M5}]\n");
    assertTrue(
        told.contains(
            "M5 is a thread; for a hole that its screw passes write 5.3 (fine series), 5.5"
                + " (medium) or 5.8 (coarse)"),
        told);
  }

  @Test
  void marksThatTurnTheWritingAreRefusedInTexts() {
    String told = refusal("title: \"wheel \\u202egnorw\"\n");
    assertTrue(told.contains("cannot be seen or turn the direction of writing"), told);
    assertTrue(told.contains("U+202E"), told);
    assertTrue(told.chars().noneMatch(c -> c == 0x202e));
  }

  @Test
  void aPlateOfThousandsOfPiecesIsReviewedInTime() {
    StringBuilder path = new StringBuilder("M 140,0");
    for (int i = 1; i < 2990; i++) {
      double a = 2 * Math.PI * i / 2990;
      double r = i % 2 == 0 ? 140 : 140.05;
      path.append(" L ").append((float) (r * Math.cos(a))).append(',');
      path.append((float) (r * Math.sin(a)));
    }
    long before = cpu();
    Review.of(
        ShapeFile.parse(
            "ruff.yaml",
            "felloe: 1\noutline:\n  path: "
                + path
                + " Z\n"
                + "stock: {material: birch-plywood, thickness: 9}\n",
            Sets.of(),
            HubCatalogue.here()));
    double seconds = (cpu() - before) / 1e9;
    assertTrue(seconds < 6, seconds + " s of processor time; about one on a quiet machine");
  }

  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
