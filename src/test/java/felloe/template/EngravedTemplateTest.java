package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Texts and marks that hands cut stand on the paper of their own face, and are told as shallow. */
class EngravedTemplateTest {

  private static final Plate PLATE =
      PaperPlates.with(
          PaperPlates.bittern(),
          PaperPlates.bittern().title(),
          List.of(line(Face.FRONT, 40), line(Face.BACK, 44)));

  private static Engraving line(Face face, double y) {
    Line line = new Line(new Point(10, y), new Point(20, y));
    return new Engraving(
        "E" + y, "line", face, List.of(List.of(line)), 0.5, 0.3, Place.of("ruff.yaml", 9, 3));
  }

  private static List<Mark> engraving(MarkOut markOut, Face face) {
    Drawing drawing = TemplateDrawing.of(PLATE, markOut, face, Stamp.NONE);
    return drawing.layers().stream()
        .filter(layer -> layer.name().equals("engraving"))
        .flatMap(layer -> layer.marks().stream())
        .toList();
  }

  @Test
  void eachFaceHasItsOwnOnALayerOfItsOwn() {
    assertEquals(
        List.of(Mark.Stroke.of(new Line(new Point(10, 40), new Point(20, 40)), LineType.THIN)),
        engraving(MarkOut.STUCK_ON, Face.FRONT));
    assertEquals(
        List.of(Mark.Stroke.of(new Line(new Point(-10, 44), new Point(-20, 44)), LineType.THIN)),
        engraving(MarkOut.STUCK_ON, Face.BACK));
  }

  @Test
  void centreMarksOfADrillingSheetHaveNone() {
    assertEquals(List.of(), engraving(MarkOut.CENTRES, Face.FRONT));
  }

  @Test
  void thePageSaysThatTheyAreShallow() {
    String told = "Thin letters and marks: cut shallow, at most 0.3 mm deep, never through.";
    assertTrue(strip(PLATE).contains(told), strip(PLATE));
    assertFalse(strip(PaperPlates.bittern()).contains("shallow"));
  }

  private static String strip(Plate plate) {
    LaidShape shape = LaidShape.of(plate, MarkOut.STUCK_ON, Face.FRONT);
    return TemplateWords.strip(shape, 0, Optional.empty(), Stamp.NONE, List.of()).notes();
  }
}
