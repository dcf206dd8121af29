package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Basis;
import felloe.plate.HubPattern;
import felloe.plate.Place;
import felloe.plate.SourcedFigure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class HubCatalogueTest {

  private static final Path SPECS = Path.of("src/main/resources/felloe/hubs");

  @Test
  void theIndexNamesEverySpecInTheJarAndNoOther() throws IOException {
    try (var files = Files.list(SPECS)) {
      List<String> names =
          files
              .map(f -> f.getFileName().toString())
              .filter(f -> f.endsWith(".yaml"))
              .map(f -> f.substring(0, f.length() - 5))
              .sorted()
              .toList();
      assertEquals(names, HubCatalogue.here().names());
    }
  }

  @Test
  void everySpecIsNamedAfterItsPatternAndGivesEachFigureABasis() {
    for (HubSpec spec : HubCatalogue.here().all()) {
      String pattern =
          String.join(
              "-",
              spec.rings().stream()
                  .map(r -> r.count() + "x" + Numbers.brief(r.pitchDiameter(), 3))
                  .toList());
      String thread = spec.ring().thread().name().toLowerCase(Locale.ROOT).replace('/', '-');
      assertEquals(pattern + "-" + thread, spec.name());
      assertTrue(HubCatalogue.here().names().contains(spec.name()));
      for (SourcedFigure figure : spec.figures().values()) {
        assertFalse(figure.basis().isBlank(), spec.name() + " " + figure.name());
      }
    }
  }

  @Test
  void sixM5OnSeventyMillimetresHasFiveMillimetreHoles() {
    HubPattern pattern = HubCatalogue.here().find("6x70-m5").orElseThrow();
    assertEquals(new HubPattern("6x70-m5", 6, 70, 5, Math.PI / 2, Optional.empty()), pattern);
  }

  @Test
  void anUnknownNameOffersTheNearest() {
    BadInput bad =
        assertThrows(
            BadInput.class,
            () -> HubCatalogue.here().spec("6x70m5", Place.ofOption("--hub").naming("6x70m5")));
    assertTrue(
        bad.getMessage()
            .startsWith(
                "--hub 6x70m5 hub: '6x70m5' is not a known hub; did you mean '6x70-m5'? known: "),
        bad.getMessage());
    assertEquals(Optional.empty(), HubCatalogue.here().find("6x70m5"));
    assertEquals(Optional.empty(), HubCatalogue.here().find("index.txt"));
  }

  @Test
  void aFileOfTheUserIsReadFromTheFolderOfTheCatalogue(@TempDir Path folder) throws IOException {
    Files.writeString(
        folder.resolve("my-hub.yaml"),
        """
        felloe-hub: 1
        name: my-hub
        count: 5
        pcd: 2.75 in
        thread: 1/4-28
        pilot: 30
        bore: 31 mm
        position-tolerance: 0.1
        basis: measured with a calliper, three times each
        """);
    HubSpec spec = new HubCatalogue(folder).spec("my-hub.yaml", Place.BUILT_IN);
    assertEquals(69.85, spec.ring().pitchDiameter(), 1e-9);
    assertEquals(6.35, spec.ring().thread().diameter(), 1e-9);
    assertEquals(0.281 * 25.4, spec.ring().plateHole(), 1e-9);
    assertEquals(Optional.of(30.0), spec.pilot());
    assertEquals(Basis.Kind.MEASURED, spec.bases().get("bore").kind());
    assertEquals(8, spec.figures().size());
  }

  private static List<String> refusal(Path folder, String text) throws IOException {
    Files.writeString(folder.resolve("h.yaml"), text);
    BadInput bad =
        assertThrows(BadInput.class, () -> new HubCatalogue(folder).spec("h.yaml", Place.BUILT_IN));
    String where = folder.resolve("h.yaml").toString();
    return bad.lines().stream().map(line -> line.replace(where, "h.yaml")).toList();
  }

  @Test
  void everyMistakeOfASpecIsFoundInOneRun(@TempDir Path folder) throws IOException {
    List<String> lines =
        refusal(
            folder,
            """
            felloe-hub: 2
            name: My Hub
            count: 0
            pcd: -70
            thread: M55
            plate-hole: 5,3
            pilott: 20
            position-tolerance: 0.2
            basis: a friend told me
            """);
    assertEquals(8, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).startsWith("h.yaml:1:13 felloe-hub: '2' must be"), lines.get(0));
    assertTrue(lines.get(1).startsWith("h.yaml:2:7 name: 'My Hub' must be"), lines.get(1));
    assertTrue(lines.get(2).startsWith("h.yaml:3:8 count: '0' must be at least 1"), lines.get(2));
    assertTrue(lines.get(3).startsWith("h.yaml:4:6 pcd: '-70' must be more"), lines.get(3));
    assertTrue(lines.get(4).startsWith("h.yaml:5:9 thread: 'M55' must be one of M3"));
    assertTrue(lines.get(4).endsWith("did you mean 'M5'?"), lines.get(4));
    assertTrue(lines.get(5).startsWith("h.yaml:6:13 plate-hole: '5,3'"), lines.get(5));
    assertTrue(lines.get(6).contains("pilott: is not a known key; did you mean 'pilot'?"));
    assertEquals(
        "h.yaml:9:8 basis: 'a friend told me' must be a text that begins with standard, measured,"
            + " common practice or from memory; say how you know the figure, such as: measured",
        lines.get(7));
  }

  @Test
  void aHoleSmallerThanItsScrewAndABoreSmallerThanThePilotAreRefused(@TempDir Path folder)
      throws IOException {
    List<String> lines =
        refusal(
            folder,
            """
            felloe-hub: 1
            name: h
            count: 6
            pcd: 70
            thread: M5
            plate-hole: 4.8
            pilot: 32
            bore: 30
            position-tolerance: 0.2
            basis: measured
            """);
    assertEquals(2, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).startsWith("h.yaml:6:13 plate-hole: '4.8' must be at least 5 mm"));
    assertTrue(lines.get(1).startsWith("h.yaml:8:7 bore: '30' must be at least the pilot"));
  }

  @Test
  void screwsThatOverlapAreRefused(@TempDir Path folder) throws IOException {
    List<String> lines =
        refusal(
            folder,
            "felloe-hub: 1\nname: h\ncount: 24\npcd: 20\nthread: M5\n"
                + "position-tolerance: 0.2\nbasis: measured\n");
    assertEquals(1, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).startsWith("h.yaml:4:6 pcd: '20' is so small that neighbouring"));
  }

  @Test
  void aFigureWithoutABasisIsAskedForOne(@TempDir Path folder) throws IOException {
    String head = "felloe-hub: 1\nname: h\ncount: 6\npcd: 70\nthread: M5\nposition-tolerance: 0\n";
    List<String> none = refusal(folder, head);
    assertEquals(1, none.size());
    assertTrue(none.get(0).contains("basis: is missing; add 'basis:'"), none.get(0));
    List<String> some = refusal(folder, head + "basis: {pcd: measured, count: measured}\n");
    assertEquals(1, some.size());
    assertTrue(
        some.get(0).contains("must say where thread, first, plate-hole, position-tolerance comes"),
        some.get(0));
  }

  @Test
  void aSecondRingMustSayHowItIsUsed(@TempDir Path folder) throws IOException {
    List<String> lines =
        refusal(
            folder,
            "felloe-hub: 1\nname: h\ncount: 3\npcd: 50\nthread: M6\nposition-tolerance: 0\n"
                + "second: {count: 3, pcd: 58, thread: M6, first: 30}\nbasis: measured\n");
    assertEquals(1, lines.size(), String.join("\n", lines));
    assertTrue(lines.get(0).contains("second.use: is missing"), lines.get(0));
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    BadInput bad =
        assertThrows(
            BadInput.class, () -> HubCatalogue.here().spec("no-such.yaml", Place.BUILT_IN));
    assertTrue(bad.getMessage().startsWith("no-such.yaml: does not exist"), bad.getMessage());
  }

  @Test
  void aShapeFileNamesHubFilesBelowItsFolderAlone(@TempDir Path folder) throws IOException {
    Path home = Files.createDirectory(folder.resolve("shapes"));
    String spec =
        "felloe-hub: 1\nname: h\ncount: 3\npcd: 50\nthread: M6\nposition-tolerance: 0.2\n"
            + "basis: {pattern: measured, thread: measured, position-tolerance: measured}\n";
    Files.writeString(folder.resolve("secret.yaml"), "pass-word: 12345\n");
    Files.writeString(home.resolve("h.yaml"), spec);
    Files.createSymbolicLink(home.resolve("link.yaml"), folder.resolve("secret.yaml"));
    HubCatalogue hubs = new HubCatalogue(home);
    for (String name :
        List.of("../secret.yaml", folder.resolve("secret.yaml").toString(), "link.yaml")) {
      String told = assertThrows(BadInput.class, () -> hubs.find(name)).getMessage();
      assertTrue(told.contains("does not lie in the folder of the shape file"), told);
      assertTrue(!told.contains("12345"), told);
    }
    // What the maker names on the command line may lie anywhere.
    String told =
        assertThrows(BadInput.class, () -> hubs.spec("../secret.yaml", Place.BUILT_IN))
            .getMessage();
    assertTrue(told.contains("pass-word"), told);
  }

  @Test
  @Timeout(20)
  void aPipeIsRefusedAndNotWaitedFor(@TempDir Path folder) throws Exception {
    Path pipe = folder.resolve("hub.yaml");
    assumeTrue(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0);
    String told =
        assertThrows(BadInput.class, () -> new HubCatalogue(folder).find("hub.yaml")).getMessage();
    assertTrue(told.endsWith("is not a plain file; name a plain file"), told);
  }
}
