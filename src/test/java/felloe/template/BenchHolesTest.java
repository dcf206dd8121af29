package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.drilling.DrillStep;
import felloe.drilling.DrillingPlan;
import felloe.drilling.HoleGroup;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.out.HoleCsv;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Round windows are drilled or sawn, and slotted holes drilled at both ends: the bench knows them.
 */
class BenchHolesTest {

  /** Six round switch openings of 16 mm. */
  private static final Plate BUTTONS = PaperPlates.heron();

  @Test
  void roundWindowsAreInTableCsvAndOrderOfWork() {
    String csv = new String(HoleCsv.write(BUTTONS), StandardCharsets.UTF_8);
    PageSet set = Template.of(BUTTONS, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    String texts = set.pages().stream().map(SeamTest::texts).collect(Collectors.joining());
    HoleGroup group =
        DrillingPlan.of(BUTTONS, Optional.empty()).groups().stream()
            .filter(g -> g.role() == HoleRole.WINDOW)
            .findFirst()
            .orElseThrow();
    assertEquals(16, group.diameter(), 1e-12);
    for (Window window : BUTTONS.windows()) {
      Point at = window.asHole().orElseThrow().centre();
      String row = window.label() + ",round opening," + Numbers.fixed(at.x(), 4) + ",";
      assertTrue(csv.contains(row), row + " in " + csv);
      assertTrue(texts.contains("\n" + window.label() + "\n"), window.label() + " in the table");
      assertTrue(texts.contains(window.label() + "  \u00d816"), window.label() + " labelled");
      assertTrue(group.labels().contains(window.label()), group.labels().toString());
    }
  }

  @Test
  void aRoundWindowHasACrossOnItsCentreOnTemplateAndDrillingSheet() {
    for (MarkOut way : List.of(MarkOut.STUCK_ON, MarkOut.CENTRES)) {
      TemplateOptions options = UsualPrint.on(Paper.A3).withMarkOut(way);
      PageSet set = Template.of(BUTTONS, List.of(), options, Stamp.NONE).pages();
      for (Window window : BUTTONS.windows()) {
        assertEquals(2, arms(set, window.asHole().orElseThrow().centre()), window.label());
      }
    }
  }

  /** Straight lines about a point. */
  private static long arms(PageSet set, Point at) {
    Point there = set.motion().of(at);
    return SeamTest.layer(set.drawing(), "holes").stream()
        .map(m -> ((Mark.Stroke) m).segments().get(0))
        .filter(s -> s.curvature() == 0 && s.box().centre().near(there, 1e-9))
        .count();
  }

  @Test
  void aSlottedHoleHasACrossAtBothEndsAndItsLengthInTableLabelAndSteps() {
    Hole slot =
        new Hole(
            "H1",
            HoleRole.BOLT,
            new Point(30, 10),
            5.3,
            Optional.of(new Hole.Slot(2.7, Math.PI / 2)),
            Place.BUILT_IN);
    Plate plate = PaperPlates.of(PaperPlates.rounded(0, 0, 120, 90, 10), List.of(slot));
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    for (Point end : slot.ends()) {
      assertEquals(2, arms(set, end), end.toString());
    }
    String texts = set.pages().stream().map(SeamTest::texts).collect(Collectors.joining());
    assertTrue(texts.contains("H1  slot 5.3 \u00d7 8"), texts);
    String csv = new String(HoleCsv.write(plate), StandardCharsets.UTF_8);
    assertTrue(csv.contains(",5.3000,8.0000,90.0000\r\n"), csv);
    List<DrillStep> steps = DrillingPlan.of(plate, Optional.empty()).groups().get(0).steps();
    String words = steps.stream().map(DrillStep::words).collect(Collectors.joining(" "));
    assertTrue(words.contains("at both ends, 2.7 mm apart"), words);
    assertTrue(words.contains("8 mm long over all"), words);
  }

  @Test
  void theTableOfADrillingSheetHasRoundWindowsToo() {
    PageSet set = Template.of(BUTTONS, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
    Page last = set.pages().get(set.pages().size() - 1);
    assertTrue(SeamTest.texts(last).contains("round opening"), SeamTest.texts(last));
  }
}
