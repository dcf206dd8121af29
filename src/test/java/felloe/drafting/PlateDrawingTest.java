package felloe.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.PaperPlates;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlateDrawingTest {

  /** ISO 5455, reductions and enlargements of small parts, from memory. */
  private static final Set<String> SCALES =
      Set.of(
          "10:1", "5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200",
          "1:500", "1:1000");

  @Test
  void theScaleIsOneOfTheStandardAndTheDrawingHasRoom() {
    for (Plate plate : DemoPlates.all()) {
      for (double[] room : new double[][] {{180, 200}, {118, 140}, {390, 220}}) {
        PlateDrawing drawing = PlateDrawing.of(plate, room[0], room[1]);
        assertTrue(SCALES.contains(drawing.scale().text()), drawing.scale().text());
        Box page = drawing.picture().page();
        assertTrue(page.width() <= room[0] && page.height() <= room[1], plate.name());
      }
    }
  }

  @Test
  void theSamePlateGivesTheSameDrawing() {
    Plate plate = DemoPlates.heron();
    assertEquals(PlateDrawing.of(plate, 180, 200), PlateDrawing.of(plate, 180, 200));
  }

  /** What no dimension tells is told by a table: a slot's direction needs its ends. */
  @Test
  void slotsHaveTheirSizeOnTheDrawingAndTheirPlaceInTheTable() {
    Optional<Hole.Slot> slanted = Optional.of(new Hole.Slot(6, Math.toRadians(30)));
    Hole slot = new Hole("D1", HoleRole.OTHER, new Point(60, 20), 5, slanted, Place.BUILT_IN);
    Hole round = new Hole("D2", HoleRole.OTHER, new Point(-60, 20), 5, Place.BUILT_IN);
    Plate plate = PaperPlates.of(PaperPlates.rounded(0, 0, 220, 120, 20), List.of(slot, round));
    PlateDrawing drawing = PlateDrawing.of(plate, 180, 200);
    List<String> texts = texts(drawing);
    assertTrue(
        texts.containsAll(List.of("slot 5 \u00d7 11", "\u00d85", "4 \u00d7 R20")),
        texts.toString());
    assertTrue(texts.containsAll(List.of("220", "120", "60", "20")), texts.toString());
    assertEquals(List.of(slot), drawing.holes());
    assertEquals(List.of(), drawing.edges());
  }

  @Test
  void aWheelOfRadiiAndSpokesNeedsNoTableButForItsGripScrews() {
    PlateDrawing drawing = PlateDrawing.of(shape("shapes/heron.yaml"), 180, 200);
    assertEquals("1:2", drawing.scale().text());
    assertEquals(Projection.FIRST_ANGLE, drawing.projection());
    List<String> texts = texts(drawing);
    List<String> wanted =
        List.of(
            "\u00d8290",
            "261",
            "5.6",
            "2 \u00d7 R32",
            "3 \u00d7 R111",
            "2 \u00d7 R53",
            "10 \u00d7 R12",
            "2 \u00d7 44",
            "2 \u00d7 40",
            "82",
            "\u00d838",
            "\u00d870",
            "6 \u00d7 \u00d85",
            "6 \u00d7 60\u00b0",
            "10 \u00d7 \u00d84.3");
    assertTrue(texts.containsAll(wanted), texts.toString());
    assertEquals(List.of(), drawing.edges());
    assertTrue(drawing.holes().stream().allMatch(h -> h.role() == HoleRole.GRIP));
    assertEquals(10, drawing.holes().size());
  }

  @Test
  void aFreeLineStandsInATableWithEveryPointOfIt() {
    Plate avocet = shape("shapes/avocet.yaml");
    PlateDrawing drawing = PlateDrawing.of(avocet, 180, 200);
    assertEquals(
        List.of("outline", "L1", "L2"), drawing.edges().stream().map(Edge::label).toList());
    Edge outline = drawing.edges().get(0);
    assertEquals(avocet.outline().segments().size(), outline.nodes().size());
    assertEquals(avocet.outline().segments().get(0).from(), outline.nodes().get(0).at());
  }

  /** ISO 3098-1, heights of letters on A4 and A5: 3.5 or 2.5 mm; from memory. */
  @Test
  void lettersAreOfTheStandardsHeights() {
    for (Plate plate : DemoPlates.all()) {
      for (Mark mark : PlateDrawing.of(plate, 180, 200).picture().drawing().marks()) {
        if (mark instanceof Mark.Label label) {
          assertTrue(label.height() == 3.5 || label.height() == 2.5, label.text());
        }
      }
    }
  }

  private static Plate shape(String file) {
    return Studies.plate(new ShapeSource.OfFile(Path.of(file), Sets.of()), Path.of(""));
  }

  private static List<String> texts(PlateDrawing drawing) {
    return drawing.picture().drawing().marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(mark -> ((Mark.Label) mark).text())
        .toList();
  }

  @Test
  void slimOffsetTinyAndHugePlatesAreDrawnToo() {
    List<Contour> outlines =
        List.of(
            RandomShapes.roundedRectangle(30, 2400, 10).moved(RigidTransform.shift(500, 300)),
            RandomShapes.roundedRectangle(300, 12, 4),
            RandomShapes.roundedRectangle(12, 300, 4),
            RandomShapes.roundedRectangle(6, 5, 1),
            RandomShapes.roundedRectangle(9_900, 9_900, 800),
            RandomShapes.roundedRectangle(9_900, 20, 5),
            Contour.circle(new Point(40, -25), 30));
    for (Contour outline : outlines) {
      for (double[] room : new double[][] {{180, 200}, {118, 150}, {387, 237}, {60, 60}}) {
        PlateDrawing drawing =
            PlateDrawing.of(PaperPlates.of(outline, List.of()), room[0], room[1]);
        assertTrue(SCALES.contains(drawing.scale().text()), outline.box().toString());
        assertTrue(texts(drawing).contains("5"), outline.box() + " thickness");
      }
    }
  }

  @Test
  void aRoomTooSmallForAnyDrawingIsRefused() {
    Plate plate = PaperPlates.bittern();
    assertThrows(IllegalArgumentException.class, () -> PlateDrawing.of(plate, 59, 200));
    assertThrows(IllegalArgumentException.class, () -> PlateDrawing.of(plate, 200, Double.NaN));
  }
}
