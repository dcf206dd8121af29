package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is not known or fails is said wherever the plate is spoken of, and never passes. */
class UnjudgedPlateTest {

  private static final String RING =
      """
      felloe: 1
      title: Turnstone
      outline: {round: {diameter: 280}}
      bolt_circles: [{count: %d, pcd: %s, diameter: %s}]
      stock: {material: aluminium-6082-t6, thickness: 6}
      """;

  @TempDir Path folder;

  private String shape(int count, String pcd, String diameter, String more) throws IOException {
    Path file = folder.resolve("turnstone.yaml");
    Files.writeString(file, RING.formatted(count, pcd, diameter) + more);
    return file.toString();
  }

  private static String words(Run run) {
    return run.out().replaceAll("\\s+", " ");
  }

  /**
   * ISO 273: 6.6 and 7 are M6's, 7.4 is M7's fine hole, which no hub of ours has; 7.2 is none's.
   */
  @Test
  void aHoleThatNoScrewSuitsIsToldAndNotPassed() throws IOException {
    String shape = shape(6, "70", "7.2", "");
    Run check = Run.of("check", shape);
    assertTrue(words(check).contains("caution screw-suits H1"), check.out());
    assertTrue(words(check).contains("No metric screw suits a hole of 7.2 mm"), check.out());
    Run load = Run.of("load", shape, "--case", "pull");
    assertEquals(1, load.code());
    assertTrue(words(load).contains("NOT AS WANTED"), load.out());
    assertTrue(words(load).contains("No screw is known in 6 of its hub holes"), load.out());
    // Nor does any other thickness do, whose screws are no better known.
    Run all = Run.of("load", shape, "--thicknesses", "5,10");
    assertTrue(words(all).contains("None of these does."), all.out());
    assertFalse(words(all).contains("The least of these that does"), all.out());
  }

  @Test
  void noCureTakesTheScrewsAway() throws IOException {
    Run check = Run.of("check", shape(3, "44", "6.6", ""), "--set", "stock.thickness=3");
    assertTrue(check.out().contains("slip") || check.out().contains("clamp-force"), check.out());
    assertFalse(check.out().contains("diameter: 3.9"), check.out());
    assertFalse(check.out().contains("diameter: 2 "), check.out());
  }

  /** What mends is told of the screw that fails, not of one that warns with a smaller figure. */
  @Test
  void whatMendsIsToldOfTheScrewThatFails() throws IOException {
    String shape = shape(6, "70", "5.5", "");
    Run check =
        Run.of(
            "check",
            shape,
            "--set",
            "outline.round.diameter=140",
            "--set",
            "stock={material: birch-plywood, thickness: 9}",
            "--set",
            "limits={narrowest-web: 0, edge-distance: 0.1}",
            "--set",
            "holes=[{at: [66, 0], diameter: 6, role: grip}]");
    assertTrue(words(check).contains("Screw G1 does not hold"), check.out());
    assertFalse(words(check).contains("Screw H1 does not hold"), check.out());
  }

  @Test
  void aPlateThatFailsItsReviewIsToldSoByEveryAnswer() throws IOException {
    String shape = shape(6, "70", "5.5", "bore: 62\n");
    assertEquals(1, Run.of("check", shape).code());
    for (String[] call :
        new String[][] {
          {"load", shape, "--case", "pull"},
          {"load", shape, "--case", "pull", "--proof"},
          {"layup", shape}
        }) {
      Run run = Run.of(call);
      assertEquals(1, run.code(), run.out());
      String first = String.join(" ", run.out().lines().limit(3).toList());
      assertTrue(first.contains("DO NOT MAKE IT YET: the plate fails its review"), run.out());
    }
  }

  @Test
  void aSearchHoldsEveryDesignToTheHubThatIsNamed() throws IOException {
    String shape = shape(6, "74", "5.5", "load: {clamp_diameter: 80}\n");
    Run run =
        Run.of(
            "load",
            shape,
            "--hub",
            "6x70-m5",
            "--least-mass",
            "--vary",
            "stock.thickness=5-8",
            "--steps",
            "2",
            "--case",
            "pull");
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(words(run).contains("review hub-fit"), run.out());
  }
}
