package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import felloe.cockpit.CockpitPlan;
import felloe.cockpit.Shade;
import felloe.cockpit.Sight;
import felloe.cockpit.WheelAxes;
import felloe.geometry.Point;
import felloe.geometry.Polygons.Polygon;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Instrument;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.service.CockpitOutcome;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The wheel in its car from the command line. */
class CockpitCommandTest {

  private static final String SHAPE = "shapes/bittern.yaml";

  @TempDir Path folder;

  @Test
  void theAnswerTellsTheNearestThingFirstAndWritesAllViews() throws Exception {
    Run run = Run.of("cockpit", SHAPE, "--out", folder.toString());
    assertEquals(0, run.code(), run.out() + run.err());
    String second = run.out().lines().skip(1).findFirst().orElseThrow();
    assertTrue(second.startsWith("Clear of everything: "), run.out());
    for (String name :
        List.of("cockpit-A4.pdf", "cockpit-front.svg", "cockpit-side.svg", "cockpit-view.svg")) {
      assertTrue(Files.exists(folder.resolve("bittern/bittern-" + name)), name);
    }
  }

  @Test
  void whatIsTooNearHasExitCodeOneAndSaysHowMuchIsMissing() {
    Run near = Run.of("cockpit", SHAPE, "--set", "cockpit.clearance=60");
    assertEquals(1, near.code(), near.err());
    assertTrue(near.out().contains("Too near for a hand: "), near.out());
    Run meets = Run.of("cockpit", SHAPE, "--set", "cockpit.things[4].box.z=[-190, 0]");
    assertEquals(1, meets.code(), meets.err());
    assertTrue(meets.out().contains("THE WHEEL MEETS dash as it is turned."), meets.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "shapes/dunlin.yaml||shapes/dunlin.yaml cockpit: is missing: nothing is known of the car",
        "shapes/bittern.yaml|cockpit.column=95|--set cockpit.column: '95' must be at most 80 deg",
        "shapes/bittern.yaml|cockpit.lock=0|--set cockpit.lock: '0' must be at least 1 deg",
        "shapes/bittern.yaml|cockpit.things=[]|must have 1 to 24 items, but has 0",
        "shapes/bittern.yaml|cockpit.things[4].box.y=[300, 800]|",
        "shapes/bittern.yaml|cockpit.things[4].box={x: [-9, 9], y: [400, 700], z: [-100,"
            + " 300]}|dash: holds the middle of the wheel itself",
        "shapes/bittern.yaml|cockpit.eye=[0, 500, -300]|cockpit.eye: puts the eye behind the wheel",
        "shapes/bittern.yaml|cockpit.eye=[0, 900]|must have 3 items, but has 2",
        "shapes/bittern.yaml|cockpit.instrument.at=[0, 600, 90]|mm before the back of the wheel",
        "shapes/bittern.yaml|cockpit.instrument.lean=-80|cockpit.instrument: turns its back",
        "shapes/bittern.yaml|cockpit.instrument.turns=[0, 120]|turns[1]: '120' must be at most 110"
            + " deg",
        "shapes/bittern.yaml|cockpit.driver.percentile=60|is no percentile of the tables",
        "shapes/bittern.yaml|cockpit.driver.heels={apart: 200, height: 0, ahead: 1000}|farther than"
            + " the"
      })
  void aCockpitThatCannotBeIsRefusedAndWritesNothing(String shape, String set, String said) {
    String out = folder.resolve("none").toString();
    Run run =
        set == null
            ? Run.of("cockpit", shape, "--out", out)
            : Run.of("cockpit", shape, "--set", set, "--out", out);
    if (said == null) {
      // A tall dash is in the way, and no wrong input.
      assertTrue(run.code() <= 1, run.err());
      return;
    }
    assertEquals(2, run.code(), run.out());
    assertTrue(run.err().contains(said), run.err());
    assertFalse(Files.exists(folder.resolve("none")));
  }

  /** Copies of the outline turned and united by shapely, distances from a cloud of places. */
  @Test
  void clearancesAgreeWithACountByOtherLibraries() throws Exception {
    Run run = Run.of("cockpit", SHAPE, "--format", "json");
    JsonNode answer = new ObjectMapper().readTree(run.out());
    List<String> lines = told("clearances.py", asked(answer));
    double area = Double.parseDouble(lines.get(0).split(" ")[1]);
    assertEquals(area, answer.get("swept_area").asDouble(), 1e-4 * area);
    for (int i = 0; i < answer.get("clearances").size(); i++) {
      JsonNode one = answer.get("clearances").get(i);
      double other = Double.parseDouble(lines.get(i + 1).split(" ")[1]);
      assertEquals(other, one.get("clear").asDouble(), 0.1, one.get("thing").asText());
    }
  }

  /** Rays from the eye, of which shapely says whether they go through what stands between. */
  @Test
  void whatIsHiddenAgreesWithACountOfRays() throws Exception {
    CockpitOutcome outcome =
        CockpitOutcome.of(
            new Studies(Path.of(""), Optional.empty())
                .one(ShapeSource.file(Path.of(SHAPE), Sets.of())));
    Cockpit cockpit = outcome.plan().cockpit();
    Instrument instrument = cockpit.instrument().orElseThrow();
    WheelAxes axes = WheelAxes.of(cockpit);
    Spot middle = axes.toWheel(instrument.at());
    Spot up =
        new Spot(
            instrument.at().x(),
            instrument.at().y() + Math.cos(instrument.lean()),
            instrument.at().z() - Math.sin(instrument.lean()));
    StringBuilder text =
        new StringBuilder("eye " + words(axes.toWheel(outcome.sight().orElseThrow().eye())));
    text.append("\nface " + words(middle) + " 1 0 0 " + words(axes.toWheel(up).plus(middle, -1)));
    text.append(
        " " + instrument.width() + " " + instrument.height() + (instrument.round() ? " 1" : " 0"));
    instrument.turns().forEach(turn -> text.append("\nturn " + Math.toDegrees(turn)));
    for (Shade shade :
        Shade.of(outcome.plate(), outcome.study().joints().grips().grips(), cockpit.stack())) {
      text.append("\nshade " + shade.back() + " " + shade.front());
      for (Polygon polygon : shade.polygons()) {
        text.append("\npiece");
        for (List<Point> ring : polygon.rings()) {
          text.append("\nring");
          ring.forEach(p -> text.append(String.format(Locale.ROOT, " %.6f,%.6f", p.x(), p.y())));
        }
      }
    }
    List<String> lines = told("sight.py", text.append("\n").toString());
    List<Sight.Hidden> hidden = outcome.sight().orElseThrow().hidden();
    assertEquals(hidden.size(), lines.size());
    for (int i = 0; i < hidden.size(); i++) {
      assertEquals(Double.parseDouble(lines.get(i)), hidden.get(i).share(), 0.006, "turn " + i);
    }
  }

  private static String words(Spot spot) {
    return String.format(Locale.ROOT, "%.9f %.9f %.9f", spot.x(), spot.y(), spot.z());
  }

  /** What another program says to a file; visibly skipped where it cannot run, but for CI. */
  private List<String> told(String program, String text) throws Exception {
    Optional<String> python = python();
    if (python.isEmpty() && "true".equals(System.getenv("CI"))) {
      fail("shapely is not installed (Debian: python3-shapely)");
    }
    assumeTrue(python.isPresent(), "skipped: shapely is not installed (Debian: python3-shapely)");
    Path script = folder.resolve(program);
    try (InputStream in =
        CockpitCommandTest.class.getResourceAsStream("/felloe/cockpit/" + program)) {
      Files.write(script, in.readAllBytes());
    }
    Path asked = Files.writeString(folder.resolve("asked.txt"), text);
    Path told = folder.resolve("told.txt");
    int exit =
        new ProcessBuilder(python.get(), script.toString(), asked.toString())
            .redirectErrorStream(true)
            .redirectOutput(told.toFile())
            .start()
            .waitFor();
    List<String> lines = Files.readAllLines(told);
    assertEquals(0, exit, () -> String.join("\n", lines));
    return lines;
  }

  /** The wheel and its car, in plain words for the other program. */
  private static String asked(JsonNode answer) {
    CockpitPlan plan =
        CockpitOutcome.of(
                new Studies(Path.of(""), Optional.empty())
                    .one(ShapeSource.file(Path.of(SHAPE), Sets.of())))
            .plan();
    Cockpit cockpit = plan.cockpit();
    StringBuilder text = new StringBuilder();
    text.append(
        String.format(
            Locale.ROOT,
            "wheel %f %f %f %f %f%noutline",
            Math.toDegrees(cockpit.column()),
            cockpit.hub(),
            answer.get("back").asDouble(),
            answer.get("front").asDouble(),
            Math.toDegrees(cockpit.lock())));
    for (Point p : plan.outline().chords(0.005)) {
      text.append(String.format(Locale.ROOT, " %.6f,%.6f", p.x(), p.y()));
    }
    for (Thing thing : cockpit.things()) {
      String name = thing.name().replace(' ', '-');
      if (thing.room() instanceof Block b) {
        text.append(
            String.format(
                Locale.ROOT,
                "%nbox %s %f %f %f %f %f %f",
                name,
                b.low().x(),
                b.high().x(),
                b.low().y(),
                b.high().y(),
                b.low().z(),
                b.high().z()));
      } else {
        Limb l = (Limb) thing.room();
        text.append(
            String.format(
                Locale.ROOT,
                "%nlimb %s %f %f %f %f %f %f %f",
                name,
                l.from().x(),
                l.from().y(),
                l.from().z(),
                l.to().x(),
                l.to().y(),
                l.to().z(),
                l.radius()));
      }
    }
    return text.append(System.lineSeparator()).toString();
  }

  private static Optional<String> python() throws Exception {
    for (String name : List.of("python3", "/usr/bin/python3")) {
      try {
        if (new ProcessBuilder(name, "-c", "import shapely, numpy").start().waitFor() == 0) {
          return Optional.of(name);
        }
      } catch (java.io.IOException absent) {
        // The next one, then.
        continue;
      }
    }
    return Optional.empty();
  }

  /** A swell that stands out 10 mm more takes up to 10 mm off the room, and some of it at least. */
  @Test
  void aSwellOfTheGripsCountsToo() {
    double plain = nearest("grips[0].swell={at: 3:05, length: 70, back: 1, edge: 0}");
    double swollen = nearest("grips[0].swell={at: 3:05, length: 70, back: 1, edge: 10}");
    assertTrue(plain - swollen > 5 && plain - swollen <= 10.01, plain + " and " + swollen);
  }

  private static double nearest(String set) {
    Run run = Run.of("cockpit", "shapes/bittern.yaml", "--set", set);
    Matcher figure = Pattern.compile("([0-9.]+)\\s+mm\\s+to\\s+left\\s+thigh").matcher(run.out());
    assertTrue(figure.find(), run.out() + run.err());
    return Double.parseDouble(figure.group(1));
  }
}
