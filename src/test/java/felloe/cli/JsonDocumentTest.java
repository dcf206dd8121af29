package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on answers for programs names every member that an answer has. */
class JsonDocumentTest {

  @TempDir Path folder;

  @Test
  void everyMemberOfEveryAnswerIsOnThePage() throws IOException {
    Set<String> members = new TreeSet<>();
    for (String command : new String[] {"show", "check", "drill"}) {
      collect(Run.of(command, "shapes/dunlin.yaml", "--format", "json").out(), members);
      collect(Run.of(command, "shapes/bittern.yaml", "--format", "json").out(), members);
    }
    collect(
        Run.of("check", "shapes/heron.yaml", "--hub", "6x74-m5", "--format", "json").out(),
        members);
    collect(Run.of("jig", "shapes/dunlin.yaml", "--bushes", "--format", "json").out(), members);
    collect(Run.of("hub", "list", "--format", "json").out(), members);
    Path readings = folder.resolve("readings.yaml");
    Files.writeString(readings, DocsPage.of("docs/measuring.md").yamlBlocks().get(0));
    Path drilled = folder.resolve("drilled.yaml");
    Files.writeString(drilled, DocsPage.of("docs/measuring.md").yamlBlocks().get(1));
    String[] proof = {
      "check", "shapes/heron.yaml", "--measured", drilled.toString(), "--format", "json"
    };
    collect(Run.of(proof).out(), members);
    collect(Run.of("hub", "measure", readings.toString(), "--format", "json").out(), members);
    collect(
        Run.of("make", "shapes/heron.yaml", "--format", "json", "--out", folder.toString()).out(),
        members);
    String out = folder.toString();
    collect(
        Run.of("template", "shapes/dunlin.yaml", "--format", "json", "--out", out).out(), members);
    String sheet =
        "shapes/bittern.yaml --process router --cutter 8 --nest --keep-out 380,280,10,10";
    collect(cut(out, sheet), members);
    collect(cut(out, "shapes/avocet.yaml --process jigsaw"), members);
    collect(Files.readString(folder.resolve("heron/heron-report.json")), members);
    Path stack = folder.resolve("my-stack.yaml");
    Files.writeString(stack, DocsPage.of("docs/layup.md").yamlFile("my-stack.yaml"));
    collect(
        Run.of(
                ("layup --format json --set cooling=60 --set"
                        + " ply.expansion={\"along1\":3e-6,\"along2\":3e-6} --stack "
                        + stack)
                    .split(" "))
            .out(),
        members);
    String search =
        "load shapes/dunlin.yaml --least-mass --vary stock.thickness=4-6 --steps 2 --case pull"
            + " --set load.clamp_diameter=80 --format json";
    collect(Run.of(search.split(" ")).out(), members);
    Path strips = folder.resolve("my-strips.yaml");
    Files.writeString(strips, DocsPage.of("docs/layup.md").yamlFile("my-strips.yaml"));
    collect(Run.of("layup", "--tested", strips.toString(), "--format", "json").out(), members);
    collect(Run.of("layup", "shapes/heron.yaml", "--format", "json").out(), members);
    String card = "card shapes/heron.yaml --set load.clamp_diameter=84 --format json --out " + out;
    collect(Run.of(card.split(" ")).out(), members);
    String load = "load shapes/dunlin.yaml --case pull --case turn --format json";
    collect(Run.of(load.split(" ")).out(), members);
    String page = Files.readString(Path.of("docs/json.md"));
    Set<String> missing = new TreeSet<>(members);
    missing.removeIf(
        name ->
            page.contains("`" + name + "`")
                || page.contains("`" + name + "[]`")
                || page.contains("\"" + name + "\""));
    assertEquals(Set.of(), missing);
    assertTrue(members.size() > 60, members.toString());
  }

  private static String cut(String out, String words) {
    return Run.of(("cut " + words + " --format json --out " + out).split(" ")).out();
  }

  private static void collect(String text, Set<String> members) throws IOException {
    assertTrue(text.startsWith("{"), "no answer");
    collect(new ObjectMapper().readTree(text), members);
  }

  private static void collect(JsonNode node, Set<String> members) {
    node.fieldNames().forEachRemaining(members::add);
    node.forEach(child -> collect(child, members));
  }
}
