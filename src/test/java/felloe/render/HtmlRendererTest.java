package felloe.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Cell;
import felloe.document.Report;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.io.StringReader;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HtmlRendererTest {

  private static final Picture RING =
      new Picture(
          Drawing.of(
              "ring", List.of(Mark.Stroke.of(Contour.circle(Point.ORIGIN, 10), LineType.EDGE))),
          new Box(-12, -12, 12, 12),
          1);

  private static final Report REPORT =
      new Report(
          "A <b>title</b> & more",
          "Foot",
          List.of(
              new Block.Paragraph("<script>alert(\"1\")</script>"),
              Block.Table.of(
                  List.of(Column.words("hole"), Column.figures("size", "mm")),
                  List.of(List.of(new Cell.Words("H1"), new Cell.Words("5")))),
              new Block.Figure(RING),
              new Block.Folded(Depth.SOURCES, List.of(new Block.Paragraph("a source")))));

  /** The body is well-formed XML, so the JDK's own parser reads it back. */
  private static Document parsed(String article) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(article)));
  }

  @Test
  void theSameReportIsAPageOfTablesAndDrawings() throws Exception {
    Document page = parsed(HtmlRenderer.article(REPORT));
    assertEquals("A <b>title</b> & more", page.getElementsByTagName("h1").item(0).getTextContent());
    assertEquals(2, page.getElementsByTagName("td").getLength());
    assertEquals("size mm", page.getElementsByTagName("th").item(1).getTextContent());
    assertEquals(1, page.getElementsByTagName("svg").getLength());
    assertEquals(1, page.getElementsByTagName("details").getLength());
  }

  @Test
  void rowsThatSayTheSameAreTickedEachOnItsOwn() {
    List<Cell> row = List.of(new Cell.Words("press the ply down"), new Cell.Words("[ ]"));
    Report steps =
        new Report(
            "Card",
            "",
            List.of(
                Block.Table.of(
                    List.of(Column.words("step"), new Column("done", "", Block.Fill.TICK)),
                    List.of(row, row, row))));
    Matcher fields =
        Pattern.compile("data-note=\"([^\"]*)\"").matcher(HtmlRenderer.workSheet(steps));
    Set<String> known = new HashSet<>();
    while (fields.find()) {
      known.add(fields.group(1));
    }
    assertEquals(3, known.size(), known.toString());
  }

  @Test
  void whatTheMakerWroteIsNeverMarkup() throws Exception {
    assertEquals(
        0, parsed(HtmlRenderer.article(REPORT)).getElementsByTagName("script").getLength());
  }

  @Test
  void thePageNeedsNothingFromElsewhere() {
    String page = HtmlRenderer.page(REPORT);
    assertTrue(page.startsWith("<!DOCTYPE html>"));
    assertFalse(page.contains("<link"), "a style or font from elsewhere");
    assertFalse(page.contains("src="), "an image or script from elsewhere");
    assertFalse(page.contains("@import"), "a style from elsewhere");
  }
}
