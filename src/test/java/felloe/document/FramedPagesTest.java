package felloe.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Cautions;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Title, number and foot round pages that are not at true scale. */
class FramedPagesTest {

  private static List<Mark.Label> frame(Page page) {
    return page.parts().get(1).drawing().marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  @Test
  void titleAndFootKeepClearOfTheFieldAndLoseNothingOnAnyPaper() {
    String[] titles = {
      "Lay-up: Heron, revision 887049c4", "Heron ".repeat(12) + "revision 887049c4"
    };
    for (Paper paper : Paper.values()) {
      for (String title : titles) {
        for (String foot : List.of("Gloves.", (Cautions.USE + " ").repeat(4).strip())) {
          Box field = FramedPages.field(paper, foot);
          Drawing full =
              Drawing.of("x", List.of(Mark.Stroke.of(Contour.rectangle(field), LineType.THIN)));
          List<Page> pages =
              FramedPages.of(new Report(title, foot, List.of()), List.of(full, full), paper);
          assertEquals(title + " 2", pages.get(1).name());
          List<Mark.Label> labels = frame(pages.get(1));
          List<String> texts = labels.stream().map(Mark.Label::text).toList();
          assertTrue(texts.contains("page 2 of 2"));
          String all = String.join(" ", texts);
          assertTrue(all.contains(foot), all);
          assertTrue(all.contains("revision 887049c4"), all);
          for (Mark.Label label : labels) {
            Box box = label.box();
            assertTrue(!box.touches(field), label + " on " + field);
            assertTrue(
                box.minX() >= 12.9
                    && box.maxX() <= paper.width() - 12.9
                    && box.minY() >= 12
                    && box.maxY() <= paper.height() - 12,
                label + " on " + paper);
          }
        }
      }
    }
  }
}
