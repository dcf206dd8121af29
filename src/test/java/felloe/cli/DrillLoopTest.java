package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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

  @Test
  void aFormWithNothingTypedInAsksForReadings() throws IOException {
    Run.of("drill", "shapes/heron.yaml", "--out", folder.toString());
    Measured measured = MeasuredFile.read(folder.resolve("heron/heron-measured.yaml"));
    assertEquals(21, measured.waiting().size());
    SurveyResult survey = Survey.of(measured);
    assertTrue(!survey.told() && !survey.next().isEmpty());
  }
}
