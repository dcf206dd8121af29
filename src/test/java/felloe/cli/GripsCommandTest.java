package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.grips.GripPlan;
import felloe.grips.GripWeight;
import felloe.grips.Pocket;
import felloe.hub.HubCatalogue;
import felloe.joints.GripPockets;
import felloe.joints.JointPlan;
import felloe.out.BodyReaders;
import felloe.plate.Plate;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The grips of whole wheels: told, written, and read back by tools that are not ours. */
class GripsCommandTest {

  private static final String BITTERN = "shapes/bittern.yaml";
  private static final String HERON = "shapes/heron.yaml";

  @TempDir Path folder;

  private List<Path> written(String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
    }
  }

  @Test
  void printedShellsAreReadCleanAndHoldWhatIsTold() throws Exception {
    Run run = Run.of("grips", BITTERN, "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals(4, written(".stl").size());
    double volume = 0;
    for (Path stl : written(".stl")) {
      byte[] bytes = Files.readAllBytes(stl);
      String told = BodyReaders.run(folder, "admesh", ".stl", bytes);
      BodyReaders.nothingMended(told);
      Matcher figure = Pattern.compile("Volume\\s*:\\s*([\\d.]+)").matcher(told);
      assertTrue(figure.find(), told);
      volume += Double.parseDouble(figure.group(1));
    }
    Plate plate = ShapeFile.read(Path.of(BITTERN), Sets.of(), HubCatalogue.here());
    JointPlan joints = JointPlan.of(plate);
    List<Pocket> pockets = GripPockets.of(joints);
    GripPlan plan = joints.grips();
    double weighed =
        plan.grips().stream()
            .mapToDouble(
                g ->
                    GripWeight.of(
                            g,
                            pockets.stream()
                                .filter(
                                    p ->
                                        g.holes().stream()
                                            .anyMatch(h -> h.label().equals(p.hole())))
                                .toList())
                        .volume())
            .sum();
    assertEquals(weighed, volume, 0.005 * weighed);
    byte[] all = Files.readAllBytes(written(".3mf").get(0));
    String told = BodyReaders.run(folder, "assimp", ".3mf", all, "info");
    assertTrue(told.replaceAll("[ \\t]+", " ").contains("Meshes: 4"), told);
  }

  /** Its own cutter, material and thickness; its files lie beside those of the plate. */
  @Test
  void aFlatScaleIsCutWithFiguresOfItsOwn() throws Exception {
    String[] call = {"cut", HERON, "--process", "router", "--grip", "gr2", "--cutter", "6"};
    List<String> all = new ArrayList<>(List.of(call));
    all.addAll(List.of("--out", folder.toString()));
    Run run = Run.of(all.toArray(String[]::new));
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("Clamp ash wood, 10 mm"), run.out());
    assertTrue(run.out().contains("6 mm end mill"), run.out());
    // The image of a scale is cut as that one.
    String program = Files.readString(folder.resolve("heron/heron-grip-gr1-router.nc"));
    assertTrue(program.contains("grip scale GR1"), program.substring(0, 400));
    Run shell = Run.of("cut", BITTERN, "--process", "router", "--grip", "GR1");
    assertEquals(2, shell.code());
    assertTrue(
        shell.err().contains("--grip: 'GR1' is a shell of bittern, which no router cuts"),
        shell.err());
    Run none = Run.of("cut", HERON, "--process", "router", "--grip", "GR9");
    assertEquals(2, none.code());
    assertTrue(none.err().contains("its flat scales are GR1, GR2"), none.err());
  }

  /** Printed shells have the cones of their screws; what they weigh is told without them. */
  @Test
  void countersunkHeadsHaveTheirConesInShells() throws Exception {
    String screw = "joints[0].screw={head: countersunk, sunk: 0.5}";
    Run run = Run.of("grips", BITTERN, "--set", screw, "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("countersunk head"), run.out());
    for (Path stl : written(".stl")) {
      BodyReaders.nothingMended(BodyReaders.run(folder, "admesh", ".stl", Files.readAllBytes(stl)));
    }
    String scale = "joints[0].screw={head: countersunk, sunk: 0.5}";
    assertFalse(Run.of("grips", HERON, "--set", scale).out().contains("countersunk head"));
  }

  @Test
  void aShellLongerThanTheBedComesInPiecesWithTongues() throws Exception {
    String bed = "making.printer={bed: {width: 120, depth: 120, height: 100}}";
    Run run = Run.of("grips", BITTERN, "--set", bed, "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals(8, written(".stl").size());
    for (Path stl : written(".stl")) {
      BodyReaders.nothingMended(BodyReaders.run(folder, "admesh", ".stl", Files.readAllBytes(stl)));
    }
    Run small =
        Run.of(
            "grips",
            BITTERN,
            "--set",
            "making.printer={bed: {width: 50, depth: 50, height: 100}}",
            "--out",
            folder.resolve("small").toString());
    assertEquals(2, small.code());
    assertTrue(small.err().contains("not even a piece of grip GR1"), small.err());
    assertFalse(Files.exists(folder.resolve("small")));
  }

  @Test
  void scalesHaveTheirLinesProgramAndTemplateOnceForAllThatAreAlike() throws Exception {
    Run run = Run.of("grips", HERON, "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    List<String> names =
        written("").stream()
            .filter(Files::isRegularFile)
            .map(p -> p.getFileName().toString())
            .toList();
    assertTrue(
        names.containsAll(
            List.of(
                "heron-grip-gr1.dxf",
                "heron-grip-gr1.nc",
                "heron-grip-gr1-template-A4.pdf",
                "heron-grips.png",
                "heron-grips-A4.pdf")),
        names.toString());
    assertTrue(written(".stl").isEmpty());
  }

  @Test
  void aPlateWithoutGripsSaysHowToDescribeThem() {
    Run run = Run.of("grips", "shapes/dunlin.yaml");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("No grips are described"), run.out());
    assertTrue(run.out().contains("12 mm"), run.out());
  }

  @Test
  void whileThePlateFailsNothingForAMachineIsWritten() throws Exception {
    String weak = "joints[0].into={tapped: insert, hole: 5.6, depth: 7}";
    Run run = Run.of("grips", BITTERN, "--set", weak, "--out", folder.toString());
    assertEquals(1, run.code(), run.out() + run.err());
    assertTrue(written(".stl").isEmpty());
    assertTrue(run.out().contains("DO NOT MAKE IT YET"), run.out());
  }

  @Test
  void anInsertSitsOnThePlatesSideOfABlindHole() {
    Run run =
        Run.of(
            "grips",
            BITTERN,
            "--format",
            "json",
            "--set",
            "joints[0].into={tapped: insert, hole: 5.6, depth: 8}");
    assertEquals(0, run.code(), run.err());
    assertTrue(run.out().contains("\"from_plate\": true"), run.out());
    assertTrue(run.out().contains("\"size\": 5.6"), run.out());
    Run which = Run.of("grips", BITTERN, "--set", "joints[0].into={tapped: insert, depth: 8}");
    assertEquals(2, which.code());
    assertTrue(which.err().contains("the diameter of its hole"), which.err());
    Run deep =
        Run.of("grips", BITTERN, "--set", "joints[0].into={tapped: insert, hole: 5.6, depth: 12}");
    assertEquals(2, deep.code());
    assertTrue(deep.err().contains("the grip behind"), deep.err());
  }

  @Test
  void aScaleThatNoRouterCutsAsUsualHasItsLinesAndNoProgram() throws Exception {
    Run run = Run.of("grips", HERON, "--set", "making.cutter=0", "--out", folder.toString());
    assertEquals(0, run.code(), run.err());
    assertEquals(1, written(".dxf").size());
    assertTrue(written(".nc").isEmpty());
    String why = "heron-grip-gr1 has no router program: the usual figures do not suit this plate";
    assertTrue(run.err().replaceAll("\\s+", " ").contains(why), run.err());
  }
}
