package felloe.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.template.PhotoSheet;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The sheets of the photo frame. */
class PhotoFrameTest {

  @Test
  void fourSheetsLieRoundAPartAndOneUnderIt() {
    List<PhotoSheet> sheets = PhotoFrame.sheets();
    assertEquals(5, sheets.size());
    for (PhotoSheet sheet : sheets.subList(0, 4)) {
      assertEquals(12, sheet.black().size());
    }
    assertEquals(18, sheets.get(4).black().size());
  }

  @Test
  void noTwoSheetsShowTheSameMarks() {
    List<PhotoSheet> sheets = PhotoFrame.sheets();
    assertEquals(4, sheets.subList(0, 4).stream().map(PhotoSheet::white).distinct().count());
    assertTrue(sheets.stream().allMatch(s -> !s.steps().isEmpty()));
  }
}
