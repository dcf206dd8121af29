package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Paper sizes against ISO 216 and ASME Y14.1 (sizes read in reprints of both). */
class PaperTest {

  @Test
  void sizesAreThoseOfIso216() {
    double[][] sides = {{841, 1189}, {594, 841}, {420, 594}, {297, 420}, {210, 297}, {148, 210}};
    Paper[] papers = {Paper.A0, Paper.A1, Paper.A2, Paper.A3, Paper.A4, Paper.A5};
    for (int i = 0; i < papers.length; i++) {
      assertEquals(sides[i][0], papers[i].width(), 0, papers[i].title());
      assertEquals(sides[i][1], papers[i].height(), 0, papers[i].title());
      assertEquals("ISO 216", papers[i].basis());
    }
  }

  /**
   * ISO 216: A0 has one square metre and sides as one to the root of two, then whole millimetres.
   */
  @Test
  void sizesFollowFromHalvingASquareMetre() {
    double width = 1000 * Math.pow(2, -0.25);
    double height = 1000 * Math.pow(2, 0.25);
    for (Paper paper : new Paper[] {Paper.A0, Paper.A1, Paper.A2, Paper.A3, Paper.A4, Paper.A5}) {
      assertEquals(width, paper.width(), 1, paper.title());
      assertEquals(height, paper.height(), 1, paper.title());
      height = width;
      width = width / Math.sqrt(2);
    }
  }

  @Test
  void inchSizesAreThoseOfAsmeY14() {
    assertEquals(215.9, Paper.LETTER.width(), 1e-9);
    assertEquals(279.4, Paper.LETTER.height(), 1e-9);
    assertEquals(355.6, Paper.LEGAL.height(), 1e-9);
    assertEquals(279.4, Paper.TABLOID.width(), 1e-9);
    assertEquals(431.8, Paper.TABLOID.height(), 1e-9);
  }

  @Test
  void aPaperIsFoundByNameInWhateverCase() {
    assertEquals(Optional.of(Paper.LETTER), Paper.find(" letter "));
    assertEquals(Optional.of(Paper.A4), Paper.find("a4"));
    assertTrue(Paper.find("B5").isEmpty());
    assertTrue(Paper.names().contains("Tabloid"));
  }
}
