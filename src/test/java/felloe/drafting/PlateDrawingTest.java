package felloe.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.PaperPlates;
import felloe.geometry.Box;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlateDrawingTest {

  /** ISO 5455, reductions and enlargements of small parts, from memory. */
  private static final Set<String> SCALES =
      Set.of("10:1", "5:1", "2:1", "1:1", "1:2", "1:5", "1:10", "1:20", "1:50", "1:100", "1:200");

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

  @Test
  void aRoomTooSmallForAnyDrawingIsRefused() {
    Plate plate = PaperPlates.bittern();
    assertThrows(IllegalArgumentException.class, () -> PlateDrawing.of(plate, 59, 200));
    assertThrows(IllegalArgumentException.class, () -> PlateDrawing.of(plate, 200, Double.NaN));
  }
}
