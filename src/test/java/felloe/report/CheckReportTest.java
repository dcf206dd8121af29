package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block.Depth;
import felloe.drawing.Mark;
import felloe.drawing.PictureDrawing;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.plate.Verdict;
import felloe.render.TextRenderer;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckReportTest {

  private static Study study(String name, String... sets) {
    return new Studies(Path.of(""), Optional.empty())
        .one(ShapeSource.file(Path.of("shapes", name + ".yaml"), Sets.of(sets)));
  }

  private static List<String> lines(Study study, int width) {
    return TextRenderer.lines(CheckReport.of(study), width, EnumSet.of(Depth.SCREEN));
  }

  @ParameterizedTest
  @ValueSource(strings = {"avocet", "bittern", "dunlin", "heron"})
  void aDemoFitsOneScreenWithItsVerdictFirst(String name) {
    List<String> lines = lines(study(name), 100);
    assertTrue(lines.size() <= 39, lines.size() + " lines");
    assertTrue(lines.stream().allMatch(line -> line.length() <= 100));
    String first = String.join(" ", lines.subList(0, 3));
    assertTrue(first.toLowerCase(java.util.Locale.ROOT).contains("passes"), first);
  }

  @Test
  void aFailIsTheFirstThingTold() {
    Requested<String> other = new Requested<>("6x74-m5", Place.ofOption("--hub"));
    ShapeSource heron = ShapeSource.file(Path.of("shapes", "heron.yaml"), Sets.of());
    Study study = new Studies(Path.of(""), Optional.of(other)).one(heron);
    List<String> lines = lines(study, 80);
    assertTrue(lines.get(1).startsWith("FAILS: "), lines.get(1));
  }

  @Test
  void lettersThatAreUnitsAreToldBelowTheTableAndNoOthers() {
    List<String> near = lines(study("heron", "limits={edge-distance: 4}"), 100);
    assertTrue(near.stream().anyMatch(line -> line.contains(" D ")), near.toString());
    assertTrue(near.stream().anyMatch(line -> line.startsWith("D hole diameters")), "" + near);
    List<String> thin = lines(study("heron", "making.chamfer=2"), 100);
    assertTrue(
        thin.stream().anyMatch(line -> line.endsWith("t thicknesses of the stock.")), "" + thin);
    Study good = study("dunlin");
    boolean pitches =
        good.review().findings().stream()
            .filter(f -> f.verdict() != Verdict.PASS)
            .anyMatch(f -> f.figure().unit().equals("P"));
    assertEquals(
        pitches, lines(good, 100).stream().anyMatch(line -> line.contains("P thread pitches")));
  }

  @Test
  void aPictureTellsMirroredFindingsOnceAndCountsAllFails() {
    Study study = study("heron", "limits={edge-distance: 9}");
    List<Finding> all =
        study.review().with(Verdict.CAUTION).stream()
            .map(
                f ->
                    new Finding(
                        f.rule(),
                        f.why(),
                        Verdict.FAIL,
                        f.subject(),
                        f.figure(),
                        f.limit(),
                        f.at(),
                        f.place(),
                        f.advice()))
            .toList();
    List<Finding> once = BothSides.once(all);
    assertTrue(once.size() < all.size());
    String text =
        PictureDrawing.of(study.plate(), all, once).drawing().marks().stream()
            .filter(Mark.Label.class::isInstance)
            .map(mark -> ((Mark.Label) mark).text())
            .collect(Collectors.joining(" "));
    assertTrue(text.contains("on both sides"), text);
    assertTrue(text.contains("fails " + all.size() + " checks"), text);
  }

  /** Three windows of one rim, two of them mirrored, have one cure. */
  @Test
  void aPictureTellsACureOnce() {
    List<Finding> told =
        Stream.of("W1", "W2", "W3")
            .map(
                of ->
                    new Finding(
                        "grip-girth-least",
                        "A thin grip is hard to hold.",
                        Verdict.CAUTION,
                        "rim beside " + of,
                        new Figure("grip girth", 66.85, "mm"),
                        Optional.empty(),
                        Optional.empty(),
                        Place.BUILT_IN,
                        "make it wider"))
            .toList();
    List<String> words =
        PictureDrawing.of(study("heron").plate(), told, told).drawing().marks().stream()
            .filter(Mark.Label.class::isInstance)
            .map(mark -> ((Mark.Label) mark).text())
            .toList();
    assertEquals(1, words.stream().filter(w -> w.equals("make it wider")).count());
    assertEquals(2, words.stream().filter(w -> w.equals("What to do: as for 1.")).count());
  }

  @Test
  void noCureIsToldTwice() {
    String text = String.join(" ", lines(study("heron"), 100));
    String cure = "the tightest screw then has";
    assertEquals(1, text.split(cure, -1).length - 1, text);
  }

  @Test
  void whatIsAlikeOnBothSidesIsToldOnce() {
    Study study = study("bittern", "windows[0].rectangle.height=80");
    assertEquals(2, study.review().of("finger-length").size());
    String text = String.join(" ", lines(study, 120));
    assertEquals(2, text.split("L1 and L2", -1).length, text);
    assertTrue(text.contains("L1 and L2, on both sides"), text);
  }
}
