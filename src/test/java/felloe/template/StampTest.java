package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Report;
import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Picture;
import felloe.drawing.PictureDrawing;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What must be read at arm's length: that a plate fails and is not to be cut, and that a page is
 * mirrored. 10 mm is a letter height of ISO 3098-1 (2.5, 3.5, 5, 7, 10, 14, 20 mm).
 */
class StampTest {

  private static final double ARMS_LENGTH = 10;
  private static final Paper[] PAPERS = {Paper.A5, Paper.A4, Paper.LETTER, Paper.A3};
  private static final Stamp FAILING =
      Stamp.of(
          Stamp.Act.CUT,
          List.of(
              finding("narrowest-web", Verdict.FAIL),
              finding("narrowest-web", Verdict.FAIL),
              finding("hub-fit", Verdict.FAIL),
              finding("hole-pitch", Verdict.CAUTION)));

  private static Finding finding(String rule, Verdict verdict) {
    return new Finding(
        rule,
        "why",
        verdict,
        "H1",
        new Figure("width", 1, "mm"),
        Optional.empty(),
        Optional.of(new Point(35, 0)),
        Place.BUILT_IN,
        "mend it");
  }

  private static List<Plate> plates() {
    return List.of(
        PaperPlates.bittern(),
        PaperPlates.heron(),
        PaperPlates.rail(390),
        PaperPlates.bittern(640, 430, MaterialKind.METAL));
  }

  @Test
  void aStampTellsHowManyChecksFailAndWhichOfThem() {
    assertTrue(Stamp.of(Stamp.Act.CUT, List.of(finding("web", Verdict.CAUTION))).isNone());
    assertEquals(
        List.of("DO NOT CUT", "fails 3 checks:", "narrowest-web, hub-fit"), FAILING.lines(200, 2));
    assertEquals(
        List.of("DO NOT CUT: fails 3 checks:", "narrowest-web, hub-fit"), FAILING.head(200));
    assertEquals(
        List.of("DO NOT CUT", "fails 3 checks:", "narrowest-web", "and 1 more"),
        FAILING.lines(100, 1));
  }

  /** A tile on A5 is some 75 mm wide. */
  @Test
  void aWordOfAStampIsBrokenOnlyBehindItsHyphens() {
    assertEquals(
        List.of("DO NOT", "CUT", "fails 3", "checks:", "narrowest-", "web and 1", "more"),
        FAILING.lines(66, 2));
    List<String> rules =
        List.of("narrowest-web", "head-clearance", "countersink-land", "hub-hole-series", "slip");
    Stamp many =
        Stamp.of(Stamp.Act.CUT, rules.stream().map(rule -> finding(rule, Verdict.FAIL)).toList());
    for (double width = 20; width < 200; width += 3) {
      StringBuilder whole = new StringBuilder();
      for (String line : many.lines(width, 40)) {
        boolean parted = whole.toString().endsWith("-");
        whole.append(whole.isEmpty() || parted ? "" : " ").append(line);
      }
      assertEquals(
          "DO NOT CUT fails 5 checks: " + String.join(", ", rules), whole.toString(), "" + width);
    }
  }

  @Test
  void everyPageOfAPlateThatFailsSaysSoInLettersReadAtArmsLength() {
    for (Plate plate : plates()) {
      for (Paper paper : PAPERS) {
        for (MarkOut way : List.of(MarkOut.STUCK_ON, MarkOut.PRICKED)) {
          TemplateOptions options = UsualPrint.on(paper).withMarkOut(way);
          stamped(Template.of(plate, List.of(), options, FAILING).pages(), "DO NOT CUT");
        }
      }
      stamped(
          Template.of(plate, List.of(), UsualPrint.on(Paper.A4), FAILING).fullSize(), "DO NOT CUT");
      Stamp drill = new Stamp(Stamp.Act.DRILL, 0, List.of("misses the hub"));
      Report work = new Report("drilling sheet", List.of(new Block.Paragraph("Drill.")));
      stamped(
          Template.drilling(plate, UsualPrint.on(Paper.A4), work, List.of("Mask on."), drill),
          "DO NOT DRILL");
    }
  }

  private static void stamped(PageSet set, String order) {
    for (Page page : set.pages()) {
      String which = set.title() + ", page " + page.name();
      List<Mark.Label> large = large(page.parts().get(0).drawing());
      // On a narrow tile the order takes two lines.
      String words = String.join(" ", large.stream().map(Mark.Label::text).toList());
      assertTrue(words.startsWith(order), which + ": " + words);
      String texts = SeamTest.texts(page).replace('\n', ' ');
      assertFalse(texts.contains("cut through"), which + ": " + texts);
      assertFalse(texts.contains("prick through"), which + ": " + texts);
      assertTrue(texts.contains(order + ": this plate"), which + ": " + texts);
      assertTrue(texts.contains("The review tells more"), which);
    }
  }

  @Test
  void aStampHidesNoLineOfThePartAndStaysOnItsPage() {
    for (Plate plate : plates()) {
      PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), FAILING).pages();
      for (int i = 0; i < set.tiles().size(); i++) {
        Page.Placed tile = set.tiles().get(i).parts().get(0);
        List<Mark> lines =
            tile.drawing().layers().stream()
                .filter(layer -> List.of("outline", "windows", "holes").contains(layer.name()))
                .flatMap(layer -> layer.marks().stream())
                .toList();
        for (Mark.Label label : large(tile.drawing())) {
          assertTrue(
              label.hollow() || lines.stream().noneMatch(m -> crosses(m, label)), label.text());
          Box box = label.box();
          Box clip = tile.clip().orElseThrow();
          assertTrue(clip.contains(new Point(box.minX(), box.minY()).plus(tile.shift())));
          assertTrue(clip.contains(new Point(box.maxX(), box.maxY()).plus(tile.shift())));
        }
      }
    }
  }

  private static boolean crosses(Mark mark, Mark.Label label) {
    Box box = label.box();
    return ((Mark.Stroke) mark)
        .segments().stream()
            .anyMatch(
                segment -> {
                  for (int i = 0; i <= 400; i++) {
                    if (box.contains(segment.at(i / 400.0))) {
                      return true;
                    }
                  }
                  return false;
                });
  }

  @Test
  void theDrawingAndThePictureOfAPlateThatFailsAreStampedAndThoseOfOthersAreNot() {
    for (Plate plate : plates()) {
      Drawing drawing = TemplateDrawing.of(plate, MarkOut.STUCK_ON, Face.FRONT, FAILING);
      List<Mark.Label> large = large(drawing);
      assertTrue(large.stream().anyMatch(l -> l.text().equals("DO NOT CUT")), plate.name());
      Mark.Label order = large.get(0);
      assertTrue(plate.box().contains(order.box().centre()), "across the part");
      assertEquals(
          List.of(), large(TemplateDrawing.of(plate, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE)));
      Picture bad = PictureDrawing.of(plate, List.of(finding("hub-fit", Verdict.FAIL)));
      assertTrue(
          SeamTest.layer(bad.drawing(), "stamp").stream()
              .anyMatch(m -> m instanceof Mark.Label l && l.text().equals("DO NOT CUT")));
      Picture good = PictureDrawing.of(plate, List.of(finding("hub-fit", Verdict.CAUTION)));
      assertEquals(List.of(), SeamTest.layer(good.drawing(), "stamp"));
    }
  }

  @Test
  void aPageForTheBackSaysMirroredAtArmsLengthAndItsTableIsMirroredToo() {
    for (Plate plate : plates()) {
      for (Paper paper : PAPERS) {
        TemplateOptions options = UsualPrint.on(paper);
        PageSet back =
            Template.of(plate, List.of(), options.withFace(Face.BACK), Stamp.NONE).pages();
        for (Page page : back.tiles()) {
          assertTrue(
              large(page.parts().get(0).drawing()).stream()
                  .anyMatch(l -> l.text().equals("MIRRORED")),
              page.name());
        }
        List<String> texts = texts(back);
        assertTrue(texts.stream().anyMatch(t -> t.endsWith("BACK FACE: MIRRORED")), "" + texts);
        assertTrue(texts.stream().noneMatch(t -> t.contains("front face")), "" + texts);
        for (Hole hole : plate.holes()) {
          int row = texts.indexOf(hole.label());
          double x = Double.parseDouble(texts.get(row + 1));
          double y = Double.parseDouble(texts.get(row + 2));
          // Where the page draws it: the drawing's own coordinates, not turned.
          Point drawn = back.motion().of(hole.centre());
          assertEquals(drawn.x(), x, 0.005001, hole.label());
          assertEquals(drawn.y(), y, 0.005001, hole.label());
          double angle = Math.toRadians(Double.parseDouble(texts.get(row + 4)));
          assertEquals(drawn.x(), drawn.norm() * Math.cos(angle), 0.05, hole.label());
          assertEquals(drawn.y(), drawn.norm() * Math.sin(angle), 0.05, hole.label());
        }
        PageSet front =
            Template.of(plate, List.of(), options.withFace(Face.FRONT), Stamp.NONE).pages();
        assertTrue(texts(front).stream().noneMatch(t -> t.contains("MIRRORED")));
      }
    }
  }

  private static List<String> texts(PageSet set) {
    List<String> all = new ArrayList<>();
    for (Page page : set.pages()) {
      all.addAll(List.of(SeamTest.texts(page).split("\n")));
    }
    return all;
  }

  private static List<Mark.Label> large(Drawing drawing) {
    return drawing.marks().stream()
        .filter(m -> m instanceof Mark.Label)
        .map(m -> (Mark.Label) m)
        .filter(label -> label.height() >= ARMS_LENGTH)
        .toList();
  }
}
