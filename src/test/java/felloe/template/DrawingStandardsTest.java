package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.plate.Face;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Lines and letters against the series of the drawing standards; both series from memory. */
class DrawingStandardsTest {

  /** ISO 128-2 (2020), line widths: a series by the root of two, from memory. */
  private static final Set<Double> WIDTHS = Set.of(0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1.0, 1.4, 2.0);

  /** ISO 3098-1, nominal heights of letters, from memory. */
  private static final Set<Double> HEIGHTS = Set.of(1.8, 2.5, 3.5, 5.0, 7.0, 10.0, 14.0, 20.0);

  @Test
  void lineWidthsAreOfTheSeriesOfIso128WithWideLinesTwiceTheNarrow() {
    for (LineType type : LineType.values()) {
      assertTrue(WIDTHS.contains(type.width()), type + " " + type.width());
    }
    assertEquals(2, LineType.EDGE.width() / LineType.THIN.width(), 0.1);
    assertEquals(LineType.THIN.width(), LineType.CENTRE.width());
  }

  /** ISO 128-2 names them 01, 02, 04 and 05: the number of dots tells them apart. */
  @Test
  void lineTypesAreToldApartByTheirDashesAndDots() {
    assertEquals(0, LineType.EDGE.dashes().length);
    assertEquals(0, LineType.THIN.dashes().length);
    assertEquals(2, LineType.DASHED.dashes().length);
    assertEquals(4, LineType.CENTRE.dashes().length);
    assertEquals(6, LineType.ROUGH.dashes().length);
  }

  @Test
  void lettersOfTemplatesAndCheckSheetsHaveHeightsOfIso3098() {
    List<Page> pages = new ArrayList<>();
    for (Plate plate : List.of(PaperPlates.heron(), PaperPlates.bittern())) {
      TemplateOptions options = UsualPrint.on(Paper.A4).withFace(Face.FRONT);
      pages.addAll(Template.of(plate, List.of(), options, Stamp.NONE).pages().pages());
      pages.addAll(Template.of(plate, List.of(), options, Stamp.NONE).fullSize().pages());
    }
    pages.add(CheckSheet.of(Paper.A4, 10, Optional.empty(), UsualPrint.ASKED.bars()));
    int letters = 0;
    for (Page page : pages) {
      for (Mark.Label label : labels(page)) {
        letters++;
        assertTrue(HEIGHTS.contains(label.height()), label.text() + " " + label.height());
      }
    }
    assertTrue(letters > 100, letters + " labels");
  }

  private static List<Mark.Label> labels(Page page) {
    return page.parts().stream()
        .flatMap(part -> part.drawing().layers().stream())
        // The names on the small map of all pages are as large as its cells allow.
        .filter(layer -> !layer.name().equals("map"))
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }
}
