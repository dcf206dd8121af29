package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages and pictures of loads, from the command line. */
class LoadFilesTest {

  @TempDir Path folder;

  private String shape;

  @BeforeEach
  void shape() throws IOException {
    Path file = folder.resolve("teal.yaml");
    Files.writeString(
        file,
        "felloe: 1\ntitle: Teal, test disc\noutline:\n  round: {diameter: 240}\n"
            + "bolt-circles:\n  - {count: 6, pcd: 70, diameter: 5.5}\n"
            + "stock:\n  material: aluminium-6082-t6\n  thickness: 6\n"
            + "load:\n  clamp_diameter: 90\n  cases:\n"
            + "    - {name: tug, at: [100, 0], force: [0, 0, 200], patch: 40}\n"
            + "    - {name: twirl, at: [100, 0], force: [0, 300, 0], patch: 40}\n");
    shape = file.toString();
  }

  private Run load(String out, String... more) {
    List<String> args =
        Stream.concat(
                Stream.of(
                    "load",
                    shape,
                    "--case",
                    "tug",
                    "--case",
                    "twirl",
                    "--thicknesses",
                    "5,6,8",
                    "--out",
                    folder.resolve(out).toString()),
                Stream.of(more))
            .toList();
    return Run.of(args.toArray(String[]::new));
  }

  @Test
  void eachCaseHasAPictureAndAllHavePages() throws IOException {
    Run run = load("plans", "--format", "json");
    assertEquals(0, run.code(), run.err());
    JsonNode answer = new ObjectMapper().readTree(run.out());
    List<String> names =
        List.of("teal-load-tug.svg", "teal-load-twirl.svg", "teal-load.png", "teal-load-A4.pdf");
    assertEquals(names.size(), answer.get("files").size());
    Path plans = folder.resolve("plans/teal");
    for (String name : names) {
      assertTrue(Files.size(plans.resolve(name)) < 500_000, name);
    }
    String tug = Files.readString(plans.resolve("teal-load-tug.svg"));
    assertTrue(tug.contains("Deflection toward the driver") && tug.contains("200 N"));
    String twirl = Files.readString(plans.resolve("teal-load-twirl.svg"));
    assertTrue(twirl.contains("Movement in the plane of the plate"));
    assertFalse(twirl.contains("Deflection toward the driver"));
    try (PDDocument pages = Loader.loadPDF(Files.readAllBytes(plans.resolve("teal-load-A4.pdf")))) {
      String text = new PDFTextStripper().getText(pages);
      for (String words :
          List.of(
              "Teal, test disc, revision",
              "An estimate to choose by",
              "What other thicknesses do",
              "Thicknesses of Teal",
              "held fast within the dashed circle",
              "What this rests on",
              "have the last word")) {
        assertTrue(text.contains(words), words);
      }
    }
  }

  /** The peak that is told, the peak on the picture and the table tell one figure. */
  @Test
  void thePictureTellsTheFiguresOfTheTable() throws IOException {
    Run run = load("plans", "--format", "json");
    JsonNode tug = new ObjectMapper().readTree(run.out()).get("cases").get(0);
    String svg = Files.readString(folder.resolve("plans/teal").resolve("teal-load-tug.svg"));
    double used = 100 / (1 + tug.get("margin").asDouble());
    assertTrue(svg.contains(">" + Math.round(used) + " %<"), "use " + used);
    double peak = tug.get("peak_deflection").asDouble();
    String told = Long.toString(Math.round(peak * 100) % 100);
    assertTrue(svg.contains((long) peak + "." + (told.length() < 2 ? "0" : "") + told + " mm<"));
  }

  @Test
  void theSameCallWritesTheSameBytes() throws IOException {
    load("one");
    load("two");
    for (String name : List.of("teal-load-tug.svg", "teal-load.png", "teal-load-A4.pdf")) {
      assertArrayEquals(
          Files.readAllBytes(folder.resolve("one/teal").resolve(name)),
          Files.readAllBytes(folder.resolve("two/teal").resolve(name)),
          name);
    }
  }

  @Test
  void otherPaperIsTakenAndUnknownPaperRefused() {
    assertEquals(0, load("plans", "--paper", "Letter").code());
    assertTrue(Files.exists(folder.resolve("plans/teal").resolve("teal-load-Letter.pdf")));
    Run bad = load("none", "--paper", "A44");
    assertEquals(2, bad.code());
    assertTrue(bad.err().contains("--paper") && bad.err().contains("did you mean"), bad.err());
    assertFalse(Files.exists(folder.resolve("none")));
  }

  @Test
  void nothingIsWrittenWithoutAFolderOrIntoAFile() throws IOException {
    Run none = Run.of("load", shape, "--case", "tug", "--thicknesses", "6");
    assertEquals(0, none.code(), none.err());
    assertFalse(none.err().contains("Written"));
    Files.writeString(folder.resolve("taken"), "a file");
    assertEquals(3, load("taken").code());
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(2, all.filter(file -> !Run.isList(file)).count());
    }
  }
}
