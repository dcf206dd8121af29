package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.BenchPages;
import felloe.document.Block;
import felloe.document.FramedPages;
import felloe.document.Report;
import felloe.drawing.Correction;
import felloe.drawing.Drawing;
import felloe.drawing.LoadPicture;
import felloe.drawing.LoadView;
import felloe.drawing.LoadViews;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.drawing.ThicknessPlot;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

class LoadDrawingTest {

  private static final About ABOUT = new About("Ring", "1", "An estimate.");

  private static Drawing disc(double tone) {
    Contour ring = Contour.circle(new Point(50, 50), 40);
    Contour hole = Contour.circle(new Point(50, 50), 15);
    return Drawing.of("bands", List.of(Mark.Tone.of(List.of(ring, hole), tone)));
  }

  private static int of(double tone) {
    ToneColour c = ToneColour.of(tone);
    return (c.red() << 16) | (c.green() << 8) | c.blue();
  }

  @Test
  void aPictureInPixelsHasTheColoursOfItsTones() throws IOException {
    for (double tone : new double[] {0, 0.3, 1}) {
      byte[] png = PngWriter.write(new Picture(disc(tone), new Box(0, 0, 100, 100), 1), 100, ABOUT);
      BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
      assertEquals(of(tone), image.getRGB(50, 22) & 0xffffff);
      assertEquals(0xffffff, image.getRGB(50, 50) & 0xffffff);
      assertEquals(0xffffff, image.getRGB(3, 3) & 0xffffff);
    }
  }

  @Test
  void aVectorPictureNamesTheColours() throws Exception {
    byte[] svg = SvgWriter.write(new Picture(disc(0.7), new Box(0, 0, 100, 100), 1), ABOUT);
    var path = SvgReader.elements(new SvgReader(svg, false).group("bands"), "path").get(0);
    assertEquals(ToneColour.of(0.7).hex(), path.getAttribute("fill"));
    assertEquals("evenodd", path.getAttribute("fill-rule"));
  }

  @Test
  void aPageHasTheColoursOfItsTonesAndBlackAgainAfterThem() throws IOException {
    Drawing both =
        disc(0.5)
            .and(
                Drawing.of(
                    "word",
                    List.of(
                        Mark.Label.of("mmm", new Point(2, 2), 4, felloe.drawing.Anchor.START))));
    Page page = new Page("1", 100, 100, List.of(Page.Placed.of(both)), Correction.NONE);
    try (PDDocument document = Loader.loadPDF(PdfWriter.write(List.of(page), "Ring"))) {
      BufferedImage image = new PDFRenderer(document).renderImage(0, 2, ImageType.RGB);
      int side = image.getHeight();
      int middle = image.getRGB(side / 2, side / 2 - (int) (0.28 * side)) & 0xffffff;
      for (int shift : new int[] {0, 8, 16}) {
        assertEquals((of(0.5) >> shift) & 0xff, (middle >> shift) & 0xff, 1);
      }
      boolean black = false;
      for (int x = 0; x < side / 5; x++) {
        for (int y = side * 9 / 10; y < side; y++) {
          black |= (image.getRGB(x, y) & 0xffffff) == 0;
        }
      }
      assertTrue(black);
    }
  }

  @Test
  void picturesAndPagesStaySmallAndTheirBytesTheSame() {
    Picture picture = LoadPicture.of(LoadViews.pulled());
    byte[] svg = SvgWriter.write(picture, ABOUT);
    assertTrue(svg.length < 500_000, svg.length + " bytes");
    Picture again = LoadPicture.of(LoadViews.pulled());
    assertArrayEquals(svg, SvgWriter.write(again, ABOUT));
    byte[] png = PngWriter.write(picture, 800, ABOUT);
    assertArrayEquals(png, PngWriter.write(again, 800, ABOUT));
    assertTrue(new String(svg, StandardCharsets.UTF_8).contains("lines-of-equal-value"));
    assertArrayEquals(pdf(List.of(LoadViews.pulled())), pdf(List.of(LoadViews.pulled())));
  }

  private static byte[] pdf(List<LoadView> views) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph("pull: 3.37 mm"));
    blocks.add(new Block.Figure(ThicknessPlot.of(LoadViews.thicknesses())));
    for (LoadView view : views) {
      blocks.add(new Block.PageBreak());
      blocks.add(new Block.Figure(LoadPicture.stacked(view)));
    }
    List<Page> pages =
        FramedPages.of(
            new Report("Loads: Ring", "An estimate.", blocks),
            BenchPages.of(blocks, FramedPages.field(Paper.A4, "An estimate.")),
            Paper.A4);
    return PdfWriter.write(pages, "Ring - loads");
  }

  @Test
  void pagesReadBackWithTheirWords() throws IOException {
    byte[] pdf = pdf(List.of(LoadViews.pulled()));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      assertEquals(2, document.getNumberOfPages(), "words with the plot, and the maps");
      String text = new PDFTextStripper().getText(document);
      for (String word :
          List.of(
              "Use of the material", "249 N", "peak here", "wanted: at most 3", "page 2 of 2")) {
        assertTrue(text.contains(word), word);
      }
    }
  }

  @Test
  void mapsAreThereWhenPopplerDrawsThePage() throws IOException, InterruptedException {
    if (!PrintedPage.hasPoppler()) {
      assertTrue(!"true".equals(System.getenv("CI")), "pdftoppm must be on the PATH where CI=true");
      System.err.println("pdftoppm is not on the PATH: maps were not drawn with poppler");
      Assumptions.abort("pdftoppm is not on the PATH");
    }
    PrintedPage page = PrintedPage.byPoppler(pdf(List.of(LoadViews.pulled())), 1, 72, 297);
    double dark = 0;
    for (double y = 60; y < 250; y += 1) {
      for (double x = 30; x < 180; x += 1) {
        dark += page.ink(new Point(x, y)) > 0.05 ? 1 : 0;
      }
    }
    // Two rings in tones fill a good part of the page, mm2.
    assertTrue(dark > 3000, dark + " mm2");
  }
}
