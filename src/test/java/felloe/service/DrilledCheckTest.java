package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.plate.Verdict;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a drilled plate is told of holes whose screws have nothing to hold or to bear on. */
class DrilledCheckTest {

  @TempDir Path folder;

  /** Heron with its hub holes where they belong, each of a size. */
  private List<Finding> bearing(String joints, double... sizes) throws IOException {
    StringBuilder form = new StringBuilder("holes: 6\nplus_minus: 0.05\nhole_diameter: [");
    for (int i = 0; i < 6; i++) {
      form.append(i == 0 ? "" : ", ").append(sizes[i]);
    }
    form.append("]\nreadings:\n");
    for (int i = 0; i < 6; i++) {
      for (int k = i + 1; k < 6; k++) {
        double reads = at(i).distance(at(k)) + (sizes[i] + sizes[k]) / 2;
        form.append("  - {from: " + (i + 1) + ", to: " + (k + 1) + ", over: outside, reads: ");
        form.append(Numbers.fixed(reads, 2)).append("}\n");
      }
    }
    Path shape = folder.resolve("heron.yaml");
    String heron = Files.readString(Path.of("shapes/heron.yaml"));
    Files.writeString(shape, heron.replace("joints:\n", "joints:\n" + joints));
    Path file = Files.writeString(folder.resolve("drilled.yaml"), form);
    DrilledOutcome outcome =
        DrilledCheck.of(
            new DrilledCheck.Request(
                ShapeSource.file(shape, Sets.of()),
                Optional.empty(),
                new Requested<>(file, Place.BUILT_IN),
                false),
            Path.of(""));
    assertTrue(outcome.fails());
    assertTrue(outcome.findings().stream().noneMatch(f -> f.rule().equals("screw-suits")));
    return outcome.findings().stream().filter(f -> f.rule().equals("head-bearing")).toList();
  }

  private static Point at(int i) {
    return Point.polar(35, Math.toRadians(90 + 60 * i));
  }

  @Test
  void aHoleThatItsScrewDoesNotEnterIsNamedWithItsOwnSize() throws IOException {
    Finding one = bearing("", 5.8, 5.8, 4.9, 5.8, 5.8, 5.8).get(0);
    assertEquals(Verdict.FAIL, one.verdict());
    assertEquals("H3 as drilled", one.subject());
    assertEquals(4.9, one.figure().value(), 0.005);
    assertTrue(one.advice().contains("M5 does not enter a hole of 4.9 mm"), one.advice());
  }

  /** A washer was written, so the joint can't be planned at all: still its hole is known. */
  @Test
  void aHoleThatItsWasherDoesNotCoverIsNamedWithItsOwnSize() throws IOException {
    List<Finding> found = bearing("  - {holes: hub, washer: plain}\n", 5.8, 12, 6.5, 5.8, 5.8, 13);
    assertEquals(
        List.of("H2 as drilled", "H6 as drilled"), found.stream().map(Finding::subject).toList());
    assertEquals(12, found.get(0).figure().value(), 0.005);
    assertEquals(13, found.get(1).figure().value(), 0.005);
  }
}
