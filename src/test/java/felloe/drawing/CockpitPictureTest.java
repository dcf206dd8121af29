package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Segment;
import felloe.report.CockpitPictures;
import felloe.report.SightTelling;
import felloe.service.CockpitOutcome;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** No word of a cockpit's views meets a line, another word, or the edge of its picture. */
class CockpitPictureTest {

  private static CockpitOutcome outcome(String file, String... sets) {
    return CockpitOutcome.of(
        new Studies(Path.of(""), Optional.empty())
            .one(ShapeSource.file(Path.of(file), Sets.of(sets))));
  }

  private static Box box(Mark.Label label) {
    double width = TextWidth.of(label.text(), label.height());
    double before = label.anchor() == Anchor.MIDDLE ? width / 2 : 0;
    // Tails of DejaVu Sans Condensed hang 426 of 1493 parts of a capital's height.
    return new Box(
        label.at().x() - before,
        label.at().y() - 426.0 / 1493 * label.height(),
        label.at().x() - before + width,
        label.at().y() + label.height());
  }

  private static void assertClear(String what, Picture picture) {
    List<Mark.Label> labels = new ArrayList<>();
    List<Segment> lines = new ArrayList<>();
    for (Mark mark : picture.drawing().marks()) {
      if (mark instanceof Mark.Label label) {
        labels.add(label);
      } else if (mark instanceof Mark.Stroke stroke) {
        lines.addAll(stroke.segments());
      }
    }
    assertTrue(!labels.isEmpty(), what);
    for (Mark.Label label : labels) {
      Box box = box(label);
      String who = what + ": '" + label.text() + "' ";
      assertTrue(picture.page().contains(box), who + "leaves the picture");
      for (Mark.Label other : labels) {
        assertTrue(other == label || !box.touches(box(other)), who + "meets " + other.text());
      }
      List<Segment> sides = Contour.rectangle(box).segments();
      for (Segment line : lines) {
        boolean meets =
            box.contains(line.from())
                || sides.stream().anyMatch(side -> !Gap.meetings(side, line).isEmpty());
        assertTrue(!meets, who + "meets a line at " + line.from());
      }
    }
  }

  @Test
  void numbersStandClearOfLinesInEveryView() {
    List<String[]> sets =
        List.of(
            new String[] {},
            new String[] {"cockpit.column=5"},
            new String[] {"cockpit.column=60", "cockpit.stack=120"},
            new String[] {"cockpit.lock=20", "cockpit.instrument.turns=[0]"},
            new String[] {"cockpit.things[4].box.x=[-90, 200]"},
            new String[] {"cockpit.driver.heels={apart: 260, height: 60, ahead: 250}"});
    for (String[] set : sets) {
      CockpitOutcome outcome = outcome("shapes/bittern.yaml", set);
      String what = String.join(" ", set);
      CockpitPictures pictures = new CockpitPictures(outcome);
      assertClear("front " + what, pictures.front());
      assertClear("side " + what, pictures.side());
      assertClear("view " + what, SightTelling.view(outcome).orElseThrow());
    }
  }

  /** Each thing has its number once, also where two share a place. */
  @Test
  void everyThingHasItsNumber() {
    CockpitOutcome outcome = outcome("shapes/bittern.yaml");
    for (Picture picture :
        List.of(new CockpitPictures(outcome).front(), new CockpitPictures(outcome).side())) {
      List<String> numbers = new ArrayList<>();
      for (Mark mark : picture.drawing().marks()) {
        if (mark instanceof Mark.Label label && label.anchor() == Anchor.MIDDLE) {
          numbers.addAll(List.of(label.text().split(", ")));
        }
      }
      assertEquals(List.of("1", "2", "3", "4", "5", "6"), numbers.stream().sorted().toList());
    }
  }
}
