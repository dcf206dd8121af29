package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block.Depth;
import felloe.plate.Place;
import felloe.plate.Requested;
import felloe.render.TextRenderer;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.service.Study;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckReportTest {

  private static Study study(String name, String... sets) {
    return Studies.of(
        ShapeSource.file(Path.of("shapes", name + ".yaml"), List.of(sets)), Path.of(""));
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
    Requested<String> other = new Requested<>("6x74-m5", Place.ofOption("--hub", ""));
    ShapeSource heron = ShapeSource.file(Path.of("shapes", "heron.yaml"), List.of());
    Study study = new Studies(Path.of(""), Optional.of(other)).one(heron);
    List<String> lines = lines(study, 80);
    assertTrue(lines.get(1).startsWith("FAILS: "), lines.get(1));
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
