package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every answer for programs is as it was: each member and each value, so that a change is seen and
 * wanted. Run with {@code -Dfelloe.golden=write} to write the answers of today over those of old,
 * and tell a changed member in {@code docs/json.md}. What differs from run to run is masked:
 * seconds, lengths and digests of files, and where the files lie.
 */
class GoldenJsonTest {

  private static final String ROOM = "src/test/resources/felloe/golden";
  private static final String INPUT = ROOM + "/input/";
  private static final boolean WRITE = "write".equals(System.getProperty("felloe.golden"));
  private static final Set<String> MASKED = Set.of("seconds", "bytes");
  private static final int TOLD = 40;

  @TempDir Path folder;

  /** Name of the golden file, and the call; OUT is a folder of the test. */
  static Map<String, String> calls() {
    Map<String, String> calls = new TreeMap<>();
    for (String shape : List.of("avocet", "bittern", "dunlin", "heron")) {
      for (String command : List.of("check", "show", "drill")) {
        calls.put(command + "-" + shape, command + " shapes/" + shape + ".yaml");
      }
    }
    calls.put("check-hub", "check shapes/heron.yaml --hub 6x74-m5");
    calls.put(
        "check-measured", "check shapes/heron.yaml --measured " + INPUT + "heron-measured.yaml");
    calls.put("layup-heron", "layup shapes/heron.yaml");
    calls.put(
        "layup-dunlin",
        "layup shapes/dunlin.yaml --cloth carbon-twill-245 --process vacuum-bag --scale 0.1");
    calls.put("layup-out", "layup shapes/heron.yaml --panel 5.4x20 --pieces outline --out OUT");
    calls.put(
        "layup-stack",
        "layup --set cooling=60 --set ply.expansion={\"along1\":3e-6,\"along2\":3e-6} --stack "
            + INPUT
            + "stack.yaml");
    calls.put("layup-tested", "layup --tested " + INPUT + "strips.yaml");
    calls.put("grips-bittern", "grips shapes/bittern.yaml");
    calls.put("load-dunlin", "load shapes/dunlin.yaml --case pull --case turn --out OUT");
    calls.put(
        "load-tested",
        "load shapes/bittern.yaml --case pull --support clamped --set load.clamp_diameter=84"
            + " --tested "
            + INPUT
            + "strips.yaml");
    calls.put(
        "search",
        "load shapes/dunlin.yaml --least-mass --vary stock.thickness=4-6 --steps 2 --case pull"
            + " --set load.clamp_diameter=80");
    calls.put("card-dunlin", "card shapes/dunlin.yaml --set load.clamp_diameter=80 --out OUT");
    calls.put("template", "template shapes/dunlin.yaml --print-check --out OUT");
    calls.put("make", "make shapes/heron.yaml --out OUT");
    calls.put("cut-router", "cut shapes/dunlin.yaml --process router --cutter 3 --out OUT");
    calls.put("cut-laser", "cut shapes/avocet.yaml --process laser --out OUT");
    calls.put("cut-waterjet", "cut shapes/heron.yaml --process waterjet --out OUT");
    calls.put("cut-jigsaw", "cut shapes/avocet.yaml --process jigsaw --out OUT");
    calls.put(
        "cut-nest",
        "cut shapes/bittern.yaml --process router --cutter 8 --nest --keep-out 380,280,10,10"
            + " --out OUT");
    calls.put("cockpit-bittern", "cockpit shapes/bittern.yaml");
    calls.put("jig-heron", "jig shapes/heron.yaml --bushes --gauge 99.6x99.7 --out OUT");
    calls.put("jig-avocet", "jig shapes/avocet.yaml --pins H1,H4");
    calls.put("hub-list", "hub list");
    calls.put("hub-show", "hub show 6x70-m5");
    calls.put("hub-measure", "hub measure " + INPUT + "readings.yaml");
    return calls;
  }

  static Stream<String> names() {
    return calls().keySet().stream();
  }

  @ParameterizedTest
  @MethodSource("names")
  void answersAsItDid(String name) throws IOException {
    String[] words = (calls().get(name) + " --format json").split(" ");
    for (int i = 0; i < words.length; i++) {
      words[i] = words[i].equals("OUT") ? folder.toString() : words[i];
    }
    compare(name, Run.of(words).out());
    if (name.equals("make")) {
      compare("make-report", Files.readString(folder.resolve("heron/heron-report.json")));
    }
  }

  @Test
  void noGoldenFileIsLeftOver() throws IOException {
    Set<String> wanted = new TreeSet<>(calls().keySet());
    wanted.add("make-report");
    try (Stream<Path> files = Files.list(Path.of(ROOM))) {
      Set<String> there = new TreeSet<>();
      files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(".json"))
          .forEach(file -> there.add(file.substring(0, file.length() - ".json".length())));
      assertEquals(wanted, there);
    }
  }

  private void compare(String name, String answer) throws IOException {
    assertTrue(answer.startsWith("{"), name + " answers nothing");
    ObjectMapper json = new ObjectMapper();
    JsonNode now = masked(json.readTree(answer));
    Path golden = Path.of(ROOM, name + ".json");
    if (WRITE) {
      Files.writeString(golden, now.toPrettyString() + "\n");
      return;
    }
    List<String> changes = new ArrayList<>();
    tell("", json.readTree(Files.readString(golden)), now, changes);
    int more = changes.size() - TOLD;
    String told =
        String.join("\n", changes.subList(0, Math.min(TOLD, changes.size())))
            + (more > 0 ? "\nand " + more + " more" : "");
    assertEquals("", told, name + ": if it is wanted, run with -Dfelloe.golden=write");
  }

  private JsonNode masked(JsonNode node) {
    if (node instanceof ObjectNode object) {
      for (Map.Entry<String, JsonNode> field : object.properties()) {
        field.setValue(
            MASKED.contains(field.getKey())
                ? TextNode.valueOf(field.getKey())
                : masked(field.getValue()));
      }
    } else if (node instanceof ArrayNode array) {
      for (int i = 0; i < array.size(); i++) {
        array.set(i, masked(array.get(i)));
      }
    } else if (node.isTextual()) {
      String text = node.asText().replace(folder.toString(), "OUT");
      return TextNode.valueOf(text.matches("[0-9a-f]{64}") ? "digest" : text);
    }
    return node;
  }

  private static void tell(String path, JsonNode was, JsonNode now, List<String> changes) {
    if (was.isObject() && now.isObject()) {
      Set<String> members = new TreeSet<>();
      was.fieldNames().forEachRemaining(members::add);
      now.fieldNames().forEachRemaining(members::add);
      for (String member : members) {
        String at = path.isEmpty() ? member : path + "." + member;
        if (!now.has(member)) {
          changes.add("gone: " + at);
        } else if (!was.has(member)) {
          changes.add("new: " + at);
        } else {
          tell(at, was.get(member), now.get(member), changes);
        }
      }
    } else if (was.isArray() && now.isArray()) {
      if (was.size() != now.size()) {
        changes.add(path + ": " + was.size() + " entries, now " + now.size());
      }
      for (int i = 0; i < Math.min(was.size(), now.size()); i++) {
        tell(path + "[" + i + "]", was.get(i), now.get(i), changes);
      }
    } else if (!was.equals(now)) {
      changes.add(path + ": " + was + ", now " + now);
    }
  }
}
