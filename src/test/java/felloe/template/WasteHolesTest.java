package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Report;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Plate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Holes that are drilled in the waste, on the pages of a plate that is sawn. */
class WasteHolesTest {

  private static final Plate PLATE = PaperPlates.bittern();

  /** In the middle of its first window. */
  private static final WasteHole HOLE = hole();

  private static WasteHole hole() {
    return new WasteHole(
        felloe.geometry.LargestCircle.inside(PLATE.windows().get(0).contour()).centre(), 16);
  }

  private static Drawing drawing(MarkOut markOut, Face face) {
    return TemplateDrawing.of(PLATE, List.of(HOLE), markOut, face, Stamp.NONE);
  }

  private static List<Mark> waste(Drawing drawing) {
    return drawing.layers().stream()
        .filter(layer -> layer.name().equals("waste-holes"))
        .findFirst()
        .orElseThrow()
        .marks();
  }

  @Test
  void theyAreDashedCirclesWithASlantedCrossOnALayerOfTheirOwn() {
    List<Mark> marks = waste(drawing(MarkOut.STUCK_ON, Face.FRONT));
    Mark.Stroke circle = (Mark.Stroke) marks.get(0);
    assertEquals(LineType.DASHED, circle.type());
    Contour edge = new Contour(circle.segments());
    assertEquals(8, edge.asCircle().orElseThrow().radius(), 1e-12);
    assertEquals(HOLE.at(), edge.asCircle().orElseThrow().centre());
    for (Mark mark : marks.subList(1, 3)) {
      Mark.Stroke arm = (Mark.Stroke) mark;
      Point along = arm.segments().get(0).to().minus(arm.segments().get(0).from());
      assertEquals(Math.abs(along.x()), Math.abs(along.y()), 1e-12);
    }
    assertEquals(3, marks.size());
    // No line of the plate is dashed so.
    assertTrue(
        TemplateDrawing.of(PLATE, MarkOut.STUCK_ON, Face.FRONT, Stamp.NONE).marks().stream()
            .noneMatch(m -> m instanceof Mark.Stroke s && s.type() == LineType.DASHED));
  }

  @Test
  void theirDiameterStandsBesideThemInTheWaste() {
    Mark.Label label =
        drawing(MarkOut.STUCK_ON, Face.FRONT).marks().stream()
            .filter(m -> m instanceof Mark.Label l && l.text().startsWith("waste"))
            .map(m -> (Mark.Label) m)
            .findFirst()
            .orElseThrow();
    assertEquals("waste  \u00d816", label.text());
    assertTrue(PLATE.windows().get(0).contour().contains(label.box().centre()));
    assertTrue(label.box().centre().distance(HOLE.at()) < 30);
  }

  @Test
  void onTheBackTheyAreMirroredAndAPenDoesNotMoveThem() {
    for (MarkOut markOut :
        List.of(MarkOut.STUCK_ON, MarkOut.traced(0.7, MarkOut.InkEdge.PLATE_SIDE))) {
      Mark.Stroke circle = (Mark.Stroke) waste(drawing(markOut, Face.BACK)).get(0);
      Point centre = new Contour(circle.segments()).asCircle().orElseThrow().centre();
      assertTrue(centre.near(new Point(-HOLE.at().x(), HOLE.at().y()), 1e-12));
    }
  }

  @Test
  void everyPageSaysWhatTheyAreAndTheStepsWhenTheyAreDrilled() {
    PageSet set = Template.of(PLATE, List.of(HOLE), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    for (Page page : set.tiles()) {
      assertTrue(words(page).contains("a hole to drill in the waste"), words(page));
    }
    String all = String.join(" ", set.pages().stream().map(WasteHolesTest::words).toList());
    assertTrue(all.contains("Then drill the dashed circles marked"), all);
    PageSet plot =
        Template.of(PLATE, List.of(HOLE), UsualPrint.on(Paper.A4), Stamp.NONE).fullSize();
    assertTrue(words(plot.pages().get(0)).contains("no hole of the plate"));
    PageSet bare = Template.of(PLATE, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    assertFalse(words(bare.pages().get(0)).contains("waste before you saw"));
  }

  private static String words(Page page) {
    return SeamTest.texts(page).replaceAll("\\s+", " ");
  }

  @Test
  void theDrillingSheetHasNone() {
    PageSet set =
        Template.drilling(
            PLATE, UsualPrint.on(Paper.A4), new Report("Work", List.of()), List.of(), Stamp.NONE);
    assertTrue(set.drawing().layers().stream().noneMatch(l -> l.name().equals("waste-holes")));
  }
}
