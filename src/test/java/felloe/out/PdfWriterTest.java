package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Anchor;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Point;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.UsualPrint;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The PDF file as a file: boxes, wishes to the viewer, fonts, text, bytes. */
class PdfWriterTest {

  /** ISO 32000-1 8.3.2.3: a unit is 1/72 in. A4 595.276 x 841.890, Letter 612 x 792. */
  @Test
  void pageBoxesAreThePapersOwn() throws IOException {
    assertBoxes(Paper.A4, 595.276, 841.890);
    assertBoxes(Paper.A3, 841.890, 1190.551);
    assertBoxes(Paper.LETTER, 612, 792);
  }

  private static void assertBoxes(Paper paper, double width, double height) throws IOException {
    PageSet set =
        Template.of(PaperPlates.bittern(), List.of(), UsualPrint.on(paper), Stamp.NONE).pages();
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(set))) {
      assertEquals(set.pages().size(), pdf.getNumberOfPages());
      for (PDPage page : pdf.getPages()) {
        PDRectangle box = page.getMediaBox();
        assertEquals(width, Math.min(box.getWidth(), box.getHeight()), 0.001);
        assertEquals(height, Math.max(box.getWidth(), box.getHeight()), 0.001);
        assertEquals(0, box.getLowerLeftX(), 0);
        assertEquals(0, box.getLowerLeftY(), 0);
        assertEquals(box.toString(), page.getCropBox().toString());
        assertEquals(box.toString(), page.getTrimBox().toString());
        assertEquals(0, page.getRotation());
        assertEquals(1, page.getUserUnit());
      }
    }
  }

  /** ISO 32000-2 table 147: PrintScaling None and its Enforce entry. */
  @Test
  void theViewerIsAskedNotToScale() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bittern())) {
      COSDictionary wishes =
          pdf.getDocumentCatalog()
              .getCOSObject()
              .getCOSDictionary(COSName.getPDFName("ViewerPreferences"));
      assertEquals("None", wishes.getNameAsString("PrintScaling"));
      COSArray enforced = wishes.getCOSArray(COSName.getPDFName("Enforce"));
      assertEquals("PrintScaling", enforced.getName(0));
      assertTrue(wishes.getBoolean("PickTrayByPDFSize", false));
    }
  }

  @Test
  void everyFontIsEmbeddedAndCutDown() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bittern())) {
      for (PDPage page : pdf.getPages()) {
        int fonts = 0;
        for (COSName name : page.getResources().getFontNames()) {
          PDFont font = page.getResources().getFont(name);
          assertTrue(font.isEmbedded());
          assertTrue(font.getName().matches("[A-Z]{6}\\+DejaVuSansCondensed"), font.getName());
          fonts++;
        }
        assertEquals(1, fonts);
      }
    }
  }

  @Test
  void textCanBeReadBack() throws IOException {
    try (PDDocument pdf = Loader.loadPDF(bittern())) {
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("Bittern, hill-climb cart"), text);
      assertTrue(text.contains("rev 1f2e3d4c"), text);
      assertTrue(text.contains("Not for public roads"), text);
      assertTrue(text.contains("H3 \u00d85") || text.contains("H3  \u00d85"), text);
      assertTrue(text.contains("page 1 of 4"), text);
      assertEquals(
          "Bittern, hill-climb cart - template A4", pdf.getDocumentInformation().getTitle());
    }
  }

  @Test
  void theSameInputGivesTheSameBytesInAnyLocaleAndZone() {
    byte[] here = bittern();
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Asia/Kathmandu"));
      assertArrayEquals(here, bittern());
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    String raw = new String(here, StandardCharsets.ISO_8859_1);
    assertFalse(raw.contains("CreationDate"));
    assertFalse(raw.contains("ModDate"));
  }

  @Test
  void charactersThatTheFontLacksBecomeAVisibleSign() throws IOException {
    String text = "a\u4e2d\ud83d\udea9\u0000\u202eb\ufffe \u2713";
    Drawing drawing =
        Drawing.of("notes", List.of(Mark.Label.of(text, new Point(20, 20), 5, Anchor.START)));
    Page page = new Page("A1", 100, 60, List.of(Page.Placed.of(drawing)), Correction.NONE);
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(List.of(page), "x"))) {
      String read = new PDFTextStripper().getText(pdf).strip();
      assertEquals("a\ufffd\ufffdb \u2713", read);
    }
  }

  @Test
  void aTitleOfAnyScriptIsKept() throws IOException {
    Page page = new Page("A1", 100, 60, List.of(), Correction.NONE);
    String title = "\u0420\u0443\u043b\u044c \u8f2a (x) \\";
    try (PDDocument pdf = Loader.loadPDF(PdfWriter.write(List.of(page), title))) {
      assertEquals(title, pdf.getDocumentInformation().getTitle());
    }
  }

  private static byte[] bittern() {
    return PdfWriter.write(
        Template.of(PaperPlates.bittern(), List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages());
  }
}
