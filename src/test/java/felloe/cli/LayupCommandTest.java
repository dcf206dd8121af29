package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A stack on its own, and tested strips, from the command line. */
class LayupCommandTest {

  @TempDir Path folder;

  private String crossed;
  private String strips;

  @BeforeEach
  void files() throws IOException {
    String ply = "{E1: 181 GPa, E2: 10.3 GPa, nu12: 0.28, G12: 7.17 GPa, thickness: 0.125, angle: ";
    crossed =
        write(
            "crossed.yaml",
            "stack:\n  - "
                + ply
                + "0}\n  - "
                + ply
                + "90}\nload: {N: [1.0, 0, 0], M: [0, 0, 0]}\n");
    strips = write("my-strips.yaml", DocsPage.of("docs/layup.md").yamlFile("my-strips.yaml"));
  }

  private String write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.writeString(file, text);
    return file.toString();
  }

  private static JsonNode json(String... args) throws IOException {
    Run run = Run.of(args);
    assertEquals(0, run.code(), run.err());
    return new ObjectMapper().readTree(run.out());
  }

  @Test
  void aStackOnItsOwnAnswersInNewtonsAndMillimetres() throws IOException {
    JsonNode answer = json("layup", "--stack", crossed, "--format", "json");
    assertEquals(24_019.7, answer.get("a").get(0).get(0).asDouble(), 0.05);
    assertEquals(-1339.57, answer.get("b").get(0).get(0).asDouble(), 0.005);
    assertEquals(1339.57, answer.get("b").get(1).get(1).asDouble(), 0.005);
    assertEquals(125.102, answer.get("d").get(0).get(0).asDouble(), 0.0005);
    JsonNode plies = answer.get("loaded").get("plies");
    assertEquals(-0.125, plies.get(0).get("bottom").get("z").asDouble());
    assertTrue(answer.get("coupled").asBoolean());
    assertTrue(answer.get("cooling").isNull());
    assertTrue(answer.get("cooled").isNull());
    // The stresses along x carry the load: 1 N/mm.
    double sum = 0;
    for (JsonNode p : plies) {
      double bottom = p.get("bottom").get("stress").get(0).asDouble();
      double top = p.get("top").get("stress").get(0).asDouble();
      sum += 0.125 * (bottom + top) / 2;
    }
    assertEquals(1, sum, 1e-8);
  }

  @Test
  void smallFiguresKeepTheirDigits() throws IOException {
    JsonNode answer =
        json("layup", "--stack", crossed, "--format", "json", "--set", "load.N=[0.0000001,0,0]");
    JsonNode deformation = answer.get("loaded").get("deformation");
    assertEquals(1.035841018e-11, deformation.get("ex").asDouble(), 1e-20);
    assertEquals(0, deformation.get("gxy").asDouble());
  }

  /** 1 N/mm on a plate of E 1e4 MPa and 1 mm: 1 MPa, strained by 1e-4, and by -0.3e-4 across. */
  @Test
  void withoutALoadAUnitPullIsTaken() throws IOException {
    String bare =
        write(
            "bare.yaml",
            "stack: [{E1: 1e4, E2: 1e4, nu12: 0.3, G12: 1e3, thickness: 1, angle: 0}]\n");
    JsonNode answer = json("layup", "--stack", bare, "--format", "json");
    assertEquals(1, answer.get("load").get("nx").asDouble());
    assertEquals(0, answer.get("load").get("mx").asDouble());
    JsonNode loaded = answer.get("loaded");
    assertEquals(1e-4, loaded.get("deformation").get("ex").asDouble(), 1e-12);
    assertEquals(-0.3e-4, loaded.get("deformation").get("ey").asDouble(), 1e-12);
    JsonNode top = loaded.get("plies").get(0).get("top");
    assertEquals(1, top.get("stress").get(0).asDouble(), 1e-9);
    assertEquals(0, answer.get("first_failure").size());
  }

  @Test
  void theTextWarnsOfAWarpingStack() {
    Run run = Run.of("layup", "--stack", crossed);
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("2 plies, 0.25 mm; not symmetric; balanced"), run.out());
    String words = run.out().replaceAll("\\s+", " ");
    assertTrue(words.contains("it warps when it cools"), run.out());
    Run page = Run.of("layup", "--stack", crossed, "--format", "html");
    assertTrue(page.out().contains("not symmetric; balanced"), page.out());
    assertTrue(run.out().contains("not an approval"), run.out());
  }

  @Test
  void testedStripsGiveABoundToDesignBy() throws IOException {
    JsonNode answer = json("layup", "--tested", strips, "--format", "json");
    JsonNode strength = answer.get("strength");
    assertEquals(5, strength.get("count").asInt());
    assertEquals(3.407, strength.get("k").asDouble(), 1e-3);
    // 99/95 of five: k = 5.741 (noncentral t). Five strips scatter less than all that are made: the
    // modified coefficient of variation of CMH-17 (from memory) is 6 % below 4 %, cv / 2 + 4 %
    // below 8 %.
    double mean = strength.get("mean").asDouble();
    double cv = strength.get("deviation").asDouble() / mean;
    double modified = cv < 0.04 ? 0.06 : cv < 0.08 ? cv / 2 + 0.04 : cv;
    assertEquals(mean * (1 - 5.741 * modified), answer.get("design_strength").asDouble(), 0.05);
    Run text = Run.of("layup", "--tested", strips);
    assertTrue(text.out().contains("Design by "), text.out());
    assertTrue(text.out().contains("Wear glasses"), text.out());
    List<String> first = text.out().lines().limit(10).toList();
    assertTrue(first.toString().contains("Design by "), first.toString());
    Run page = Run.of("layup", "--tested", strips, "--format", "html");
    assertTrue(page.out().contains("Design by "), page.out());
  }

  @Test
  void aBadFileIsToldWithItsPlaceAndNothingIsAnswered() throws IOException {
    String bad = write("bad.yaml", "stack: []\n");
    Run run = Run.of("layup", "--stack", bad);
    assertEquals(2, run.code());
    assertEquals("", run.out());
    assertEquals(bad + ":1:8 stack: must have 1 to 1000 items, but has 0\n", run.err());
    assertEquals(2, Run.of("layup", "--stack", folder.resolve("none.yaml").toString()).code());
  }

  @Test
  void oneOfShapeStackAndTestedMustBeGiven() {
    for (Run run :
        List.of(Run.of("layup"), Run.of("layup", "--stack", crossed, "--tested", strips))) {
      assertEquals(2, run.code());
      assertTrue(run.err().contains("must have one of SHAPE, --stack and --tested"), run.err());
    }
  }
}
