package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What pages carry, and that it lies where a printer can print it. */
class TemplateTest {

  private static final Place BARS = UsualPrint.ASKED.bars();

  private static List<Plate> plates() {
    return List.of(
        PaperPlates.bittern(),
        PaperPlates.heron(),
        PaperPlates.dunlin(),
        PaperPlates.rail(390),
        PaperPlates.bittern(1200, 700, MaterialKind.WOOD));
  }

  /** Built once; nothing in it can change. */
  private static final List<PageSet> SETS = sets();

  private static List<PageSet> sets() {
    List<PageSet> sets = new ArrayList<>();
    for (Plate plate : plates()) {
      for (Paper paper : Paper.values()) {
        sets.add(Template.of(plate, List.of(), UsualPrint.on(paper), Stamp.NONE).pages());
      }
      sets.add(Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).fullSize());
    }
    return sets;
  }

  @Test
  void nothingIsDrawnOnTheMarginCorrectedOrNot() {
    Plate plate = PaperPlates.bittern();
    for (Paper paper : List.of(Paper.A4, Paper.A5, Paper.LEGAL)) {
      for (double margin : new double[] {5, 10}) {
        double bar = Template.bar(paper, margin);
        for (double[] off : new double[][] {{1, 1}, {0.953, 1.047}, {1.047, 0.953}}) {
          BarReading reading = new BarReading(bar * off[0], bar * off[1]);
          TemplateOptions options = UsualPrint.on(paper).withMargin(margin).withBars(reading);
          assertInside(Template.of(plate, List.of(), options, Stamp.NONE).pages(), margin);
          assertInside(
              Template.of(
                      plate,
                      List.of(),
                      options.withBars(new BarReading(100 * off[0], 100 * off[1])),
                      Stamp.NONE)
                  .fullSize(),
              margin);
        }
      }
    }
  }

  private static void assertInside(PageSet set, double margin) {
    for (Page page : set.pages()) {
      Box printable = new Box(margin, margin, page.width() - margin, page.height() - margin);
      for (Page.Placed part : page.parts()) {
        for (Mark mark : part.drawing().marks()) {
          Box box = mark.box();
          Point low = new Point(box.minX(), box.minY()).plus(part.shift());
          Point high = new Point(box.maxX(), box.maxY()).plus(part.shift());
          if (part.clip().isPresent()) {
            Box clip = part.clip().get();
            low = new Point(Math.max(low.x(), clip.minX()), Math.max(low.y(), clip.minY()));
            high = new Point(Math.min(high.x(), clip.maxX()), Math.min(high.y(), clip.maxY()));
          }
          // Half a line's width is allowed to the frame's own lines.
          Box grown = printable.grown(0.4);
          assertTrue(
              grown.contains(page.correction().of(low, page.centre()))
                  && grown.contains(page.correction().of(high, page.centre())),
              set.paper() + " " + page.name() + ": " + mark);
        }
      }
    }
  }

  @Test
  void everyPageSaysWhatItIsAndCarriesTheCautionsOrNamesThePageThatDoes() {
    for (PageSet set : SETS) {
      int number = 1;
      for (Page page : set.pages()) {
        String texts = SeamTest.texts(page).replace('\n', ' ');
        assertTrue(texts.contains("page " + number++ + " of " + set.pages().size()), texts);
        assertTrue(texts.contains(page.name()), texts);
        assertTrue(texts.contains("rev 1f2e3d4c"), texts);
        boolean tile = number - 2 < set.tiles().size();
        assertEquals(tile, texts.contains("Scale 1:1"), texts);
        assertTrue(texts.contains("FRONT face"), texts);
        assertTrue(hasCautions(page) || refersToCautions(page, set), texts);
        assertTrue(texts.contains("finish line"), texts);
      }
      assertTrue(set.pages().stream().anyMatch(TemplateTest::hasCautions), set.paper());
    }
  }

  private static boolean hasCautions(Page page) {
    String texts = SeamTest.texts(page).replace('\n', ' ');
    return texts.contains("Not for public roads")
        && texts.contains("qualified person have the last word")
        && texts.contains("eye protection");
  }

  private static boolean refersToCautions(Page page, PageSet set) {
    String texts = SeamTest.texts(page).replace('\n', ' ');
    return set.pages().stream()
        .filter(TemplateTest::hasCautions)
        .anyMatch(other -> texts.contains("read the cautions on page " + other.name() + "."));
  }

  @Test
  void aWheelThatTwoPagesHoldTakesTwo() {
    // 290 mm wide and 261 high: two upright A4 pages with margins of 10 mm hold 360 by 277.
    PageSet set =
        Template.of(PaperPlates.heron(), List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    assertEquals(2, set.grid().count());
    assertFalse(set.grid().seamsAcross().isEmpty());
  }

  @Test
  void everyPageAtScaleHasBothCheckBarsOfTheStatedLengthAndNoOther() {
    for (PageSet set : SETS) {
      for (Page page : set.pages()) {
        if (!set.tiles().contains(page)) {
          assertFalse(SeamTest.texts(page).contains("check bar 100"), page.name());
          continue;
        }
        Drawing furniture = page.parts().get(page.parts().size() - 1).drawing();
        List<Box> bars =
            SeamTest.layer(furniture, "check-bars").stream()
                .filter(m -> m instanceof Mark.Stroke)
                .map(m -> ((Mark.Stroke) m).segments().get(0).box())
                .toList();
        assertTrue(bars.stream().anyMatch(b -> Math.abs(b.width() - set.bar()) < 1e-9));
        assertTrue(bars.stream().anyMatch(b -> Math.abs(b.height() - set.bar()) < 1e-9));
      }
    }
  }

  @Test
  void barsAreLongAndRoundAndTheSameForOnePaper() {
    for (Paper paper : Paper.values()) {
      double bar = Template.bar(paper, 10);
      assertEquals(100, bar, 0, paper.title());
      for (Plate plate : plates()) {
        assertEquals(
            bar, Template.of(plate, List.of(), UsualPrint.on(paper), Stamp.NONE).pages().bar(), 0);
      }
    }
    for (double margin = 0; margin <= 25; margin += 2.5) {
      for (Paper paper : Paper.values()) {
        assertTrue(Template.bar(paper, margin) >= 30, paper + " " + margin);
      }
    }
  }

  @Test
  void labelsOfHolesAndWindowsDoNotOverlap() {
    for (PageSet set : SETS) {
      List<Box> boxes =
          SeamTest.layer(set.drawing(), "notes").stream()
              .filter(m -> m instanceof Mark.Label)
              .map(m -> m.box().grown(-0.3))
              .toList();
      for (int i = 0; i < boxes.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertFalse(boxes.get(i).touches(boxes.get(j)), set.title() + " " + boxes.get(i));
        }
      }
    }
  }

  @Test
  void everyHoleHasACrossOnItsCentreACircleALabelAndARowOfTheTable() {
    Plate plate = PaperPlates.bittern();
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    List<Mark> holes = SeamTest.layer(set.drawing(), "holes");
    String texts = String.join("", set.pages().stream().map(SeamTest::texts).toList());
    for (Hole hole : plate.holes()) {
      long through =
          holes.stream()
              .map(m -> ((Mark.Stroke) m).segments().get(0))
              .filter(s -> s.box().centre().near(hole.centre(), 1e-9))
              .count();
      assertEquals(3, through, hole.label());
      assertTrue(texts.contains(hole.label() + "  \u00d8"), hole.label());
      assertTrue(texts.contains("\n" + hole.label() + "\n"), hole.label() + " in the table");
    }
    assertTrue(texts.contains("151.12"), "angle of G1: atan2(75, -136)");
    assertTrue(texts.contains("155.31"), "radius of G1");
  }

  @Test
  void theBackFaceIsMirroredAndSaysSoWhileItsTextCanBeRead() {
    Plate plate = PaperPlates.heron();
    PageSet set =
        Template.of(plate, List.of(), UsualPrint.on(Paper.A4).withFace(Face.BACK), Stamp.NONE)
            .pages();
    assertTrue(set.motion().mirrored());
    Point first = plate.holes().get(0).centre();
    Point mirrored = new Point(-first.x(), first.y());
    assertTrue(
        SeamTest.layer(set.drawing(), "holes").stream()
            .anyMatch(
                m -> ((Mark.Stroke) m).segments().get(0).box().centre().near(mirrored, 1e-9)));
    String texts = SeamTest.texts(set.pages().get(0));
    assertTrue(texts.contains("MIRRORED"), texts);
    assertTrue(
        set.drawing().marks().stream()
            .filter(m -> m instanceof Mark.Label)
            .allMatch(m -> Math.abs(((Mark.Label) m).turn()) < 1e-9));
  }

  @Test
  void upAndFibreFollowThePlateWhenItIsTurned() {
    Plate tall = PaperPlates.bittern(300, 210, MaterialKind.LAMINATE);
    Drawing drawing = TemplateDrawing.of(tall, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE);
    String texts =
        String.join(
            " ",
            drawing.marks().stream()
                .filter(m -> m instanceof Mark.Label)
                .map(m -> ((Mark.Label) m).text())
                .toList());
    assertTrue(texts.contains("UP"), texts);
    assertTrue(texts.contains("0\u00b0 fibre"), texts);
    String wood =
        SeamTest.texts(
            Template.of(PaperPlates.heron(), List.of(), UsualPrint.on(Paper.A4), Stamp.NONE)
                .fullSize()
                .pages()
                .get(0));
    assertTrue(wood.contains("face grain"), wood);
    String metal =
        SeamTest.texts(
            Template.of(PaperPlates.rail(200), List.of(), UsualPrint.on(Paper.A4), Stamp.NONE)
                .fullSize()
                .pages()
                .get(0));
    assertFalse(metal.contains("fibre"), metal);
    assertFalse(metal.contains("grain"), metal);
  }

  @Test
  void theRoughLineLiesAtItsAllowanceOutsideThePlateAndInsideItsWindows() {
    Plate plate = PaperPlates.bittern();
    Drawing drawing = TemplateDrawing.of(plate, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE);
    List<Mark> rough = SeamTest.layer(drawing, "rough");
    assertEquals(1 + plate.windows().size(), rough.size());
    for (int i = 0; i < rough.size(); i++) {
      Mark.Stroke line = (Mark.Stroke) rough.get(i);
      Contour finish = i == 0 ? plate.outline() : plate.windows().get(i - 1).contour();
      assertEquals(LineType.ROUGH, line.type());
      for (var segment : line.segments()) {
        Point p = segment.at(0.37);
        assertEquals(2, finish.distance(p), 1e-5);
        assertEquals(i != 0, finish.contains(p));
      }
    }
  }

  /** Steiner's formula for offsets of convex figures: area + perimeter d + pi d². */
  @Test
  void theLineForAPenGrowsTheOutlineBySteinersFormulaAndShrinksWindows() {
    Plate plate = PaperPlates.bittern();
    double d = 0.25;
    LaidShape laid =
        LaidShape.of(plate, MarkOut.traced(0.5, MarkOut.InkEdge.PLATE_SIDE), Face.FRONT);
    double steiner = plate.outline().area() + plate.outline().length() * d + Math.PI * d * d;
    assertEquals(steiner, laid.outline().area(), 1e-6 * steiner);
    for (int i = 0; i < plate.windows().size(); i++) {
      Contour window = plate.windows().get(i).contour();
      assertEquals(Offset.of(window, -d).get(0).outer().area(), laid.windows().get(i).area(), 1e-6);
    }
    LaidShape kept =
        LaidShape.of(plate, MarkOut.traced(0.5, MarkOut.InkEdge.WASTE_SIDE), Face.FRONT);
    assertTrue(kept.outline().area() < plate.outline().area());
    assertTrue(kept.windows().get(0).area() > plate.windows().get(0).contour().area());
    assertEquals(plate.holes(), kept.holes());
  }

  @Test
  void thePageSaysWhichEdgeOfTheInkIsTheFinishLine() {
    TemplateOptions a4 = UsualPrint.on(Paper.A4);
    String inside = notes(a4.withMarkOut(MarkOut.traced(0.5, MarkOut.InkEdge.PLATE_SIDE)));
    assertTrue(inside.contains("moved 0.25 mm off the plate: the INSIDE of the ink"), inside);
    String outside = notes(a4.withMarkOut(MarkOut.traced(0.3, MarkOut.InkEdge.WASTE_SIDE)));
    assertTrue(outside.contains("moved 0.15 mm into the plate: the OUTSIDE of the ink"), outside);
    assertTrue(notes(a4.withMarkOut(MarkOut.PRICKED)).contains("prick through"));
    assertTrue(notes(a4).contains("Stick on and cut through"));
  }

  private static String notes(TemplateOptions options) {
    return SeamTest.texts(
            Template.of(PaperPlates.heron(), List.of(), options, Stamp.NONE).pages().pages().get(0))
        .replace('\n', ' ');
  }

  @Test
  void aWindowTooNarrowForThePenIsRefusedWithItsName() {
    Plate plate = PaperPlates.slotted(0.9);
    MarkOut brush = MarkOut.traced(2.5, MarkOut.InkEdge.PLATE_SIDE);
    BadInput refused =
        assertThrows(
            BadInput.class, () -> TemplateDrawing.of(plate, brush, Face.FRONT, Stamp.NONE));
    assertTrue(refused.lines().get(0).contains("window W1"), refused.lines().get(0));
    assertTrue(refused.lines().get(0).contains("take a finer pen"), refused.lines().get(0));
    // A rough line has no room in it either; the window is then drilled and filed.
    Drawing drawing = TemplateDrawing.of(plate, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE);
    assertEquals(1, SeamTest.layer(drawing, "rough").size());
  }

  @Test
  void aReadingMoreThanFivePerCentOffIsRefusedAsASlip() {
    Plate plate = PaperPlates.heron();
    TemplateOptions options = UsualPrint.on(Paper.A4).withBars(new BarReading(94.9, 105.1));
    BadInput refused =
        assertThrows(
            BadInput.class, () -> Template.of(plate, List.of(), options, Stamp.NONE).pages());
    assertEquals(
        List.of(
            "--bars the horizontal bar: '94.9' must be within 5 % of 100 mm (95 to 105 mm);"
                + " a printer is not that far off; print at 100 % (actual size), measure between"
                + " the end ticks again and give ACROSSxUP in mm",
            "--bars the vertical bar: '105.1' must be within 5 % of 100 mm (95 to 105 mm); a"
                + " printer is not that far off; print at 100 % (actual size), measure between the"
                + " end ticks again and give ACROSSxUP in mm"),
        refused.lines());
    for (double wrong : new double[] {0, -150, 1e-300, 1e300, 15, 5.91}) {
      BarReading reading = new BarReading(wrong, 150);
      assertThrows(BadInput.class, () -> reading.against(150, BARS));
    }
    assertThrows(IllegalArgumentException.class, () -> new BarReading(Double.NaN, 150));
    Correction edge = new BarReading(142.5, 157.5).against(150, BARS);
    assertEquals(150 / 142.5, edge.x(), 1e-12);
  }

  @Test
  void aCorrectedPageSaysForWhichReading() {
    BarReading reading = new BarReading(99.6, 100.2);
    PageSet set =
        Template.of(
                PaperPlates.heron(),
                List.of(),
                UsualPrint.on(Paper.A4).withBars(reading),
                Stamp.NONE)
            .pages();
    for (Page page : set.pages()) {
      assertTrue(SeamTest.texts(page).contains("corrected for bars 99.6x100.2"));
      assertEquals(100 / 99.6, page.correction().x(), 1e-12);
      assertEquals(100 / 100.2, page.correction().y(), 1e-12);
    }
  }

  @Test
  void moreThanTwoHundredPagesAreRefused() {
    Plate huge = PaperPlates.rail(5000);
    BadInput refused =
        assertThrows(
            BadInput.class,
            () -> Template.of(huge, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages());
    assertTrue(refused.lines().get(0).contains("larger paper"), refused.lines().get(0));
  }

  @Test
  void optionsOutOfBoundsAreRefusedByName() {
    TemplateOptions options = UsualPrint.on(Paper.A4);
    assertThrows(IllegalArgumentException.class, () -> options.withMargin(-1));
    assertThrows(IllegalArgumentException.class, () -> options.withMargin(40));
    assertThrows(IllegalArgumentException.class, () -> options.withOverlap(5));
    assertThrows(IllegalArgumentException.class, () -> options.withOverlap(Double.NaN));
    assertThrows(
        IllegalArgumentException.class, () -> MarkOut.traced(0, MarkOut.InkEdge.PLATE_SIDE));
    assertThrows(
        IllegalArgumentException.class, () -> MarkOut.traced(4, MarkOut.InkEdge.PLATE_SIDE));
  }

  @Test
  void aLongHoleListGoesOverSeveralColumnsAndPagesWithoutLosingAHole() {
    Plate plate = PaperPlates.sieve(140);
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
    String texts = String.join("", set.pages().stream().map(SeamTest::texts).toList());
    for (Hole hole : plate.holes()) {
      assertTrue(texts.contains("\n" + hole.label() + "\n"), hole.label());
    }
    assertInside(set, 10);
  }

  @Test
  void theFullSizePageIsOneAndNotMuchLargerThanThePart() {
    for (Plate plate : plates()) {
      PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).fullSize();
      assertEquals(1, set.pages().size(), plate.name());
      Page page = set.pages().get(0);
      assertTrue(page.width() <= Math.max(220, plate.box().width() + 70), plate.name());
      assertTrue(page.height() <= Math.max(330, plate.box().height() + 220), plate.name());
    }
  }

  @Test
  void theCheckSheetFitsItsPaperAndHasBarsOfTheTemplatesLength() {
    for (Paper paper : Paper.values()) {
      Page page = CheckSheet.of(paper, 10, java.util.Optional.empty(), BARS);
      Drawing drawing = page.parts().get(1).drawing();
      Box box = drawing.box().orElseThrow();
      assertTrue(box.minX() > 10 && box.maxX() < paper.width() - 10, paper + " " + box);
      assertTrue(box.minY() > 10 && box.maxY() < paper.height() - 10, paper + " " + box);
      String texts = SeamTest.texts(page);
      assertTrue(texts.contains("100 % (actual size)"), texts);
      double bar = Template.bar(paper, 10);
      assertTrue(
          SeamTest.layer(drawing, "check-bars").stream()
              .filter(m -> m instanceof Mark.Stroke)
              .anyMatch(m -> Math.abs(((Mark.Stroke) m).segments().get(0).length() - bar) < 1e-9));
    }
  }
}
