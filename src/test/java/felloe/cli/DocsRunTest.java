package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import felloe.bringin.InventedPhoto;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** What the pages tell a reader to type is typed here, and does what they say. */
class DocsRunTest {

  @TempDir Path folder;

  @Test
  void whatTheReadmeTellsToTypeDoesWhatItSays() throws IOException {
    shapesInto(folder.resolve("shapes"));
    List<DocsCall> calls = DocsPage.of("README.md").calls();
    StringBuilder answers = new StringBuilder();
    for (DocsCall call : calls) {
      Run run = call.runIn(folder);
      assertEquals(call.code(), run.code(), call + "\n" + run.err());
      answers.append(run.out()).append(run.err());
    }
    assertTrue(calls.size() >= 8, "calls found: " + calls);
    Path kits = folder.resolve("templates-out");
    for (String made : List.of("heron", "bittern", "avocet", "dunlin", "curlew")) {
      assertTrue(Files.isDirectory(kits.resolve(made)), made);
    }
    assertTrue(Files.isRegularFile(kits.resolve("print-check-A4.pdf")));
    String told = answers.toString().replaceAll(folder + "/", "");
    for (String block : DocsPage.of("README.md").blocks("text")) {
      for (String line : block.split("\n")) {
        assertTrue(told.contains(line), "no answer says: " + line + "\n" + told);
      }
    }
  }

  @Test
  void theReadmesTableOfAKitNamesEveryFileAndNoOther() throws IOException {
    Run run = Run.of("make", "shapes/heron.yaml", "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    Set<String> named = new TreeSet<>();
    for (String line : DocsPage.of("README.md").lines()) {
      Matcher file = Pattern.compile("\\| `((?:heron|felloe)[^`]*)` \\|.*").matcher(line);
      if (file.matches()) {
        named.add(file.group(1));
      }
    }
    Set<String> made = new TreeSet<>();
    try (Stream<Path> files = Files.list(folder.resolve("heron"))) {
      files.forEach(file -> made.add(file.getFileName().toString()));
    }
    assertEquals(made, named);
  }

  @TestFactory
  Stream<DynamicTest> theOtherPagesCallsEndAsTheySay() throws IOException {
    shapesInto(folder);
    shapesInto(folder.resolve("shapes"));
    Files.writeString(folder.resolve("my-hub.yaml"), hubFile());
    for (String name : List.of("my-stack.yaml", "my-strips.yaml", "my-materials.yaml")) {
      Files.writeString(folder.resolve(name), DocsPage.of("docs/layup.md").yamlFile(name));
    }
    Files.writeString(
        folder.resolve("cutout.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' width='280mm' viewBox='-140 -140 280 280'>"
            + "<circle r='140'/><rect x='60' y='-50' width='45' height='100' rx='20'/>"
            + "<rect x='-105' y='-50' width='45' height='100' rx='20'/></svg>");
    Files.write(folder.resolve("wheel.jpg"), InventedPhoto.small());
    Files.writeString(
        folder.resolve("friend.dxf"),
        String.join(
            "\n", "0 SECTION 2 ENTITIES 0 CIRCLE 10 0 20 0 40 5.5 0 ENDSEC 0 EOF".split(" ")));
    List<String> measured = DocsPage.of("docs/measuring.md").yamlBlocks();
    Files.writeString(folder.resolve("readings.yaml"), measured.get(0));
    Files.writeString(folder.resolve("heron-measured.yaml"), measured.get(1));
    Set<List<String>> done = new HashSet<>();
    // What the README tells to type is typed above.
    DocsPage.of("README.md").calls().forEach(call -> done.add(call.words()));
    List<DynamicTest> tests = new ArrayList<>();
    for (DocsPage page : DocsPage.all()) {
      if (page.file().startsWith("docs")) {
        for (DocsCall call : page.calls()) {
          if (done.add(call.words())) {
            tests.add(dynamicTest(call.toString(), () -> endsAsItSays(call)));
          }
        }
      }
    }
    assertFalse(tests.isEmpty());
    return tests.stream();
  }

  private void endsAsItSays(DocsCall call) throws IOException {
    Run run = call.runIn(folder);
    assertEquals(call.code(), run.code(), run.err());
  }

  @TestFactory
  Stream<DynamicTest> everyWholeFileThatAPageShowsIsRead() {
    List<DynamicTest> tests = new ArrayList<>();
    for (DocsPage page : DocsPage.all()) {
      for (String block : page.yamlBlocks()) {
        String first = block.lines().filter(l -> !l.matches("\\s*(#.*)?")).findFirst().orElse("");
        if (first.startsWith("felloe: ") || first.startsWith("felloe-hub: ")) {
          tests.add(dynamicTest(page + " block " + tests.size(), () -> isRead(first, block)));
        }
      }
    }
    assertFalse(tests.isEmpty());
    return tests.stream();
  }

  private void isRead(String first, String block) throws IOException {
    Path file = folder.resolve("block.yaml");
    Files.writeString(file, block);
    boolean hub = first.startsWith("felloe-hub");
    Files.writeString(folder.resolve("my-hub.yaml"), hubFile());
    Run run = hub ? Run.of("hub", "show", file.toString()) : Run.of("check", file.toString());
    assertNotEquals(Exit.WRONG, run.code(), run.err());
    assertNotEquals(Exit.TROUBLE, run.code(), run.err());
  }

  /** The hub file that the pages speak of as {@code my-hub.yaml}. */
  private static String hubFile() {
    return DocsPage.of("docs/hubs.md").yamlBlocks().get(0);
  }

  private static void shapesInto(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (Stream<Path> shapes = Files.list(Path.of("shapes"))) {
      for (Path shape : shapes.toList()) {
        Files.copy(shape, folder.resolve(shape.getFileName()));
      }
    }
  }
}
