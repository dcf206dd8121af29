package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.measure.Candidate;
import felloe.measure.Candidates;
import felloe.measure.Measured;
import felloe.measure.MeasuredFile;
import felloe.measure.Survey;
import felloe.measure.SurveyResult;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The form of a drilling sheet, its readings typed in, tells the hub again. */
class DrillLoopTest {

  private static final long SEED = 72_315L;
  private static final Pattern SIZE = Pattern.compile("^  (\\w+):   #.*");
  private static final Pattern PAIR =
      Pattern.compile("^  - \\{from: (\\w+), to: (\\w+), over: outside, reads: \\}.*");

  @TempDir Path folder;

  /**
   * Drills the demo shape with errors and types in what a calliper reads, three rows in four or
   * all.
   */
  private Measured typed(String name, Random random, boolean all) throws IOException {
    Run run = Run.of("drill", "shapes/" + name + ".yaml", "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    Map<String, Point> at = new HashMap<>();
    Map<String, Double> size = new HashMap<>();
    for (String line :
        Run.of("drill", "shapes/" + name + ".yaml", "--format", "csv")
            .out()
            .lines()
            .skip(1)
            .toList()) {
      String[] cells = line.split(",");
      Point stray = Point.polar(0.05 * random.nextDouble(), 2 * Math.PI * random.nextDouble());
      Point centre = new Point(Double.parseDouble(cells[2]), Double.parseDouble(cells[3]));
      at.put(cells[0], centre.plus(stray));
      size.put(cells[0], Double.parseDouble(cells[6]) + 0.1 * random.nextDouble());
    }
    List<String> lines = new ArrayList<>();
    int row = 0;
    for (String line : Files.readAllLines(folder.resolve(name).resolve(name + "-measured.yaml"))) {
      Matcher hole = SIZE.matcher(line);
      Matcher pair = PAIR.matcher(line);
      double error = 0.02 * random.nextGaussian();
      if (hole.matches()) {
        String reads = Numbers.fixed(size.get(hole.group(1)) + error, 2);
        line = line.replaceFirst(":   #", ": " + reads + "   #");
      } else if (pair.matches() && (all || row++ % 4 != 3)) {
        String a = pair.group(1);
        String b = pair.group(2);
        double over = at.get(a).distance(at.get(b)) + (size.get(a) + size.get(b)) / 2;
        line = line.replace("reads: }", "reads: " + Numbers.fixed(over + error, 2) + "}");
      }
      lines.add(line);
    }
    Path form = folder.resolve(name).resolve(name + "-measured.yaml");
    Files.write(form, lines);
    return MeasuredFile.read(form);
  }

  @ParameterizedTest
  @CsvSource({
    "heron, 6x70-m5, 70, true",
    "bittern, 6x70-m5, 70, false",
    "dunlin, 3x58-m6, 58, true"
  })
  void readingsTypedIntoTheFormTellTheHub(String name, String hub, double circle, boolean all)
      throws IOException {
    Measured measured = typed(name, new Random(SEED), all);
    SurveyResult survey = Survey.of(measured);
    assertTrue(survey.told(), "seed " + SEED);
    assertEquals(circle, survey.pattern().orElseThrow().pcd(), 0.15, "seed " + SEED);
    assertTrue(survey.suspects().isEmpty(), "seed " + SEED + ": " + survey.suspects());
    List<Candidate> candidates = Candidates.of(survey, HubCatalogue.here().all());
    Candidate first = candidates.get(0);
    boolean named = first.hub().name().equals(hub) || first.like().contains(hub);
    assertTrue(named, first.hub().name() + " " + first.like());
    String form = folder.resolve(name).resolve(name + "-measured.yaml").toString();
    Run told = Run.of("hub", "measure", form, "--format", "json");
    assertEquals(0, told.code(), told.err());
    JsonNode json = new ObjectMapper().readTree(told.out());
    assertEquals(measured.count(), json.get("count").asInt());
    assertEquals(circle, json.get("pcd").asDouble(), 0.15);
  }

  /** Holes of 5.5 mm and more, within 0.05 mm of their places: M5 screws enter by a wide margin. */
  @Test
  void readingsTypedIntoTheFormProveThePlateAgainstItsHub() throws IOException {
    typed("bittern", new Random(SEED), true);
    String form = folder.resolve("bittern/bittern-measured.yaml").toString();
    Run proof = Run.of("check", "shapes/bittern.yaml", "--measured", form);
    assertTrue(proof.out().contains("its screws enter the hub 6x70-m5"), proof.out());
    // Its friction joint is at its limit as drawn: wider holes leave the heads less to press on.
    long fails = proof.out().lines().filter(line -> line.startsWith("FAIL ")).count();
    long slips = proof.out().lines().filter(line -> line.startsWith("FAIL  slip ")).count();
    assertEquals(fails, slips, proof.out());
  }

  /**
   * A hole 0.45 mm off is named with its way and cured; screws that the drilling did not make worse
   * are not told anew, though holes of other sizes make joints of their own.
   */
  @Test
  void aHoleOffItsPlaceIsToldAloneAndHasOneCure() throws IOException {
    double[] size = {5.50, 5.52, 5.54, 5.53, 5.54, 5.51};
    List<Point> at = new ArrayList<>();
    StringBuilder form = new StringBuilder("holes: 6\nplus_minus: 0.05\nhole_diameter: [");
    for (int i = 0; i < 6; i++) {
      at.add(Point.polar(35, Math.toRadians(90 + 60 * i)));
      form.append(i == 0 ? "" : ", ").append(size[i]);
    }
    at.set(2, at.get(2).plus(new Point(0, -0.45)));
    form.append("]\nreadings:\n");
    for (int i = 0; i < 6; i++) {
      for (int k = i + 1; k < 6; k++) {
        double reads = at.get(i).distance(at.get(k)) + (size[i] + size[k]) / 2;
        form.append("  - {from: " + (i + 1) + ", to: " + (k + 1) + ", over: outside, reads: ");
        form.append(Numbers.fixed(reads, 2)).append("}\n");
      }
    }
    Path file = Files.writeString(folder.resolve("drilled.yaml"), form);
    Run run =
        Run.of(
            "check",
            "shapes/heron.yaml",
            "--set",
            "bolt_circles[0].diameter=5.5",
            "--measured",
            file.toString());
    assertEquals(0, run.code(), run.err());
    String drilled = run.out().substring(0, run.out().indexOf("As drawn"));
    assertTrue(drilled.contains("H3 lies 0.45 mm from where the other holes have it"), drilled);
    assertTrue(drilled.contains("0.45 mm down"), drilled);
    assertTrue(drilled.contains("Cure: open"), drilled);
    assertFalse(drilled.contains("Or: Open"), drilled);
    assertFalse(drilled.contains("Drill through"), drilled);
    assertFalse(drilled.contains("thread-strip"), drilled);
  }

  @Test
  void aFormWithNothingTypedInAsksForReadings() throws IOException {
    Run.of("drill", "shapes/heron.yaml", "--out", folder.toString());
    Measured measured = MeasuredFile.read(folder.resolve("heron/heron-measured.yaml"));
    assertEquals(21, measured.waiting().size());
    SurveyResult survey = Survey.of(measured);
    assertTrue(!survey.told() && !survey.next().isEmpty());
  }
}
