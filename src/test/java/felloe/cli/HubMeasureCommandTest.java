package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HubMeasureCommandTest {

  private static Path readings(Path folder) throws IOException {
    Path file = folder.resolve("readings.yaml");
    Files.writeString(
        file,
        "holes: 5\non: screws\nscrew_diameter: 5\nplus_minus: 0.05\nreadings:\n"
            + "  - {from: 1, to: 2, over: outside, reads: 45.56}\n"
            + "  - {from: 2, to: 3, over: outside, reads: 45.55}\n"
            + "  - {from: 3, to: 4, over: outside, reads: 45.57}\n"
            + "  - {from: 4, to: 5, over: outside, reads: 45.56}\n"
            + "  - {from: 5, to: 1, over: outside, reads: 45.55}\n"
            + "  - {from: 1, to: 3, over: outside, reads: 70.63}\n"
            + "  - {from: 2, to: 4, over: outside, reads: 70.62}\n"
            + "  - {from: 3, to: 5, over: outside, reads: 70.62}\n");
    return file;
  }

  @Test
  void theHubThatWasFoundIsWrittenAndReadWhereverAHubIs(@TempDir Path folder) throws IOException {
    Path hub = folder.resolve("my-hub.yaml");
    Run run = Run.of("hub", "measure", readings(folder).toString(), "--out", hub.toString());
    assertEquals(Exit.WELL, run.code(), run.err());
    String text = Files.readString(hub);
    assertTrue(text.contains("count: 5\n"), text);
    assertTrue(text.contains("thread: M5\n"), text);
    Run show = Run.of("hub", "show", hub.toString());
    assertEquals(Exit.WELL, show.code(), show.err());
    assertTrue(show.out().contains("measured with a calliper"), show.out());
    Run check = Run.of("check", "shapes/heron.yaml", "--hub", hub.toString());
    assertTrue(check.out().contains("5 M5 screws on a"), check.out());
  }

  /** Distances over outside and sizes disagree, so any size may be wrong; one word surely is. */
  @Test
  void aSureSlipIsToldApartFromReadingsOfWhichOneMayBe(@TempDir Path folder) throws IOException {
    double[] reads = {40.95, 66.57, 75.95, 66.57, 40.95};
    StringBuilder text = new StringBuilder("holes: 6\nplus_minus: 0.05\n");
    text.append("hole_diameter: [5.8, 5.8, 5.8, 5.8, 5.8, 5.8]\nreadings:\n");
    for (int i = 1; i <= 6; i++) {
      for (int k = i + 1; k <= 6; k++) {
        String over = i == 1 && k == 2 ? "inside" : "outside";
        text.append("  - {from: " + i + ", to: " + k + ", over: " + over + ", reads: ");
        text.append(reads[k - i - 1] + "}\n");
      }
    }
    Path file = Files.writeString(folder.resolve("mixed.yaml"), text);
    String out = Run.of("hub", "measure", file.toString()).out();
    int sure = out.indexOf("Looks like a slip:");
    int without = out.indexOf("The figures are without it.");
    int perhaps = out.indexOf("One of these looks like a slip");
    assertTrue(0 <= sure && sure < without && without < perhaps, out);
    assertTrue(out.substring(sure, without).contains("1 to 2   inside"), out);
    assertFalse(out.substring(sure, without).contains("diameter"), out);
    assertFalse(out.substring(perhaps).contains("1 to 2   inside"), out);
  }

  @Test
  void aHubFileThatIsThereIsReplacedOnlyWhenThatIsAskedFor(@TempDir Path folder)
      throws IOException {
    Path hub = folder.resolve("my-hub.yaml");
    Files.writeString(hub, "# mine");
    String readings = readings(folder).toString();
    Run refused = Run.of("hub", "measure", readings, "--out", hub.toString());
    assertEquals(Exit.WRONG, refused.code());
    assertEquals("", refused.out());
    assertTrue(
        refused
            .err()
            .contains("is there already; name another file, or replace this one with --force"),
        refused.err());
    assertEquals("# mine", Files.readString(hub));
    // Nobody types in readings for a file that cannot be written.
    Run early = Run.of("hub", "measure", "--out", hub.toString());
    assertTrue(early.err().contains("is there already"), early.err());
    Run forced = Run.of("hub", "measure", readings, "--out", hub.toString(), "--force");
    assertEquals(Exit.WELL, forced.code(), forced.err());
    assertTrue(Files.readString(hub).contains("count: 5\n"));
    Run alone = Run.of("hub", "measure", readings, "--force");
    assertEquals(Exit.WRONG, alone.code());
    assertTrue(alone.err().contains("--force: needs --out FILE"), alone.err());
  }

  /** What the size does not tell is asked for by the option that answers it. */
  @Test
  void twoThreadsThatSuitNameTheOptionThatChooses(@TempDir Path folder) throws IOException {
    Path file = readings(folder);
    String clear =
        Files.readString(file)
            .replace("on: screws\nscrew_diameter: 5\n", "hole_diameter: 5.5\n")
            .replace(" 45.5", " 46.0")
            .replace(" 70.6", " 71.1");
    Files.writeString(file, clear);
    Run run = Run.of("hub", "measure", file.toString(), "--out", folder.resolve("h").toString());
    assertEquals(Exit.WRONG, run.code());
    assertTrue(run.err().contains("suits "), run.err());
    assertTrue(run.err().contains(" (--thread)"), run.err());
  }

  @Test
  void aThreadWithoutAFileToWriteIsRefused(@TempDir Path folder) throws IOException {
    Run run = Run.of("hub", "measure", readings(folder).toString(), "--thread", "M5");
    assertEquals(Exit.WRONG, run.code());
    assertTrue(run.err().contains("--out"), run.err());
  }

  /** The first lines of a drilled plate tell the verdict and the hole that it hangs on. */
  @Test
  void theVerdictAndTheOddHoleComeFirst(@TempDir Path folder) throws IOException {
    StringBuilder text =
        new StringBuilder(
            "plate: heron\nholes: 6\nplus_minus: 0.05\nhole_diameter: 5.5\nreadings:\n");
    double[][] at = new double[6][];
    for (int i = 0; i < 6; i++) {
      double way = Math.toRadians(90 + 60 * i);
      at[i] = new double[] {35 * Math.cos(way), 35 * Math.sin(way)};
    }
    at[2][0] -= 0.5;
    at[2][1] += 0.3;
    for (int i = 0; i < 6; i++) {
      for (int j = i + 1; j < 6; j++) {
        double reads = Math.hypot(at[i][0] - at[j][0], at[i][1] - at[j][1]) + 5.5;
        text.append("  - {from: ").append(i + 1).append(", to: ").append(j + 1);
        text.append(", over: outside, reads: ");
        text.append(felloe.geometry.Numbers.fixed(reads, 2)).append("}\n");
      }
    }
    Path file = folder.resolve("heron-measured.yaml");
    Files.writeString(file, text.toString());
    Run run =
        Run.of(
            "check",
            "shapes/heron.yaml",
            "--set",
            "bolt-circles[0].diameter=5.5",
            "--measured",
            file.toString());
    String[] lines = run.out().split("\n");
    String first = String.join(" ", lines[0], lines[1], lines[2], lines[3]);
    assertTrue(first.contains("H3 is the odd one out"), run.out());
    String told = run.out().replaceAll("\\s+", " ");
    assertTrue(told.contains("H3 lies 0.58 mm from where"), told);
    assertTrue(told.contains("the zone that it just keeps, is 1.16 mm."), told);
    // The coarse drill would leave it 0.03 mm, less than the hub's own tolerance may take.
    int cure = run.out().indexOf("Cure: Make a slot of H3");
    assertTrue(cure > 0 && cure < run.out().indexOf("As drawn"), run.out());
    assertFalse(run.out().contains("Cure: open"), run.out());
  }
}
