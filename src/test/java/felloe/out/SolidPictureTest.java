package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Correction;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Picture;
import felloe.drawing.SolidPicture;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.solid.Relief;
import felloe.solid.Solid;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** Shaded bodies in each kind of file, decoded again. */
class SolidPictureTest {

  private static final Solid PLATE =
      Relief.slab(
          new Region(
              Contour.rectangle(new Box(0, 0, 80, 40)),
              List.of(Contour.circle(new Point(20, 10), 6))),
          0,
          10,
          0.05);

  private static final Picture PICTURE = SolidPicture.of("A plate with a hole", List.of(PLATE));
  private static final About ABOUT = new About("Plate", "A", "");

  /** Where the front view shows a point of the plate, mm in the picture. */
  private static Point front(double x, double y) {
    Mark.Shade shade =
        PICTURE.drawing().marks().stream()
            .filter(mark -> mark instanceof Mark.Shade)
            .map(mark -> (Mark.Shade) mark)
            .findFirst()
            .orElseThrow();
    Box of = shade.shaded().box();
    double scale = shade.box().width() / of.width();
    return new Point(
        shade.box().minX() + scale * (x - of.minX()), shade.box().minY() + scale * (y - of.minY()));
  }

  private static int grey(BufferedImage image, Point at, Box page) {
    int x = (int) ((at.x() - page.minX()) / page.width() * image.getWidth());
    int y = (int) ((page.maxY() - at.y()) / page.height() * image.getHeight());
    return image.getRGB(x, y) & 0xff;
  }

  private static void shows(BufferedImage image, Point shift, Box page) {
    assertEquals(255, grey(image, front(20, 10).plus(shift), page));
    int face = grey(image, front(60, 30).plus(shift), page);
    assertTrue(face > 150 && face < 240, "grey " + face);
    assertTrue(grey(image, front(60, 38).plus(shift), page) < 250);
    assertEquals(255, grey(image, front(60, 42).plus(shift), page));
  }

  @Test
  void theViewsLieSideBySideOnThePage() {
    List<Mark> views =
        PICTURE.drawing().marks().stream().filter(mark -> mark instanceof Mark.Shade).toList();
    assertEquals(2, views.size());
    assertTrue(views.get(0).box().maxX() < views.get(1).box().minX());
    PICTURE.drawing().marks().forEach(mark -> assertTrue(PICTURE.page().contains(mark.box())));
  }

  @Test
  void pngShowsThem() throws IOException {
    byte[] png = PngWriter.write(PICTURE, 900, ABOUT);
    shows(ImageIO.read(new ByteArrayInputStream(png)), Point.ORIGIN, PICTURE.page());
    assertArrayEquals(png, PngWriter.write(PICTURE, 900, ABOUT));
  }

  @Test
  void svgHoldsThemWithinItself() {
    String svg = new String(SvgWriter.write(PICTURE, ABOUT), StandardCharsets.UTF_8);
    assertTrue(svg.contains("xlink:href=\"data:image/png;base64,iVBOR"), svg.substring(0, 2000));
    assertTrue(svg.contains("xmlns:xlink=\"http://www.w3.org/1999/xlink\""));
  }

  @Test
  void pdfShowsThem() throws IOException {
    Point shift = new Point(20, 30);
    Page page =
        new Page(
            "1",
            297,
            210,
            List.of(new Page.Placed(PICTURE.drawing(), shift, Optional.empty())),
            Correction.NONE);
    byte[] pdf = PdfWriter.write(List.of(page), "Plate");
    assertArrayEquals(pdf, PdfWriter.write(List.of(page), "Plate"));
    try (PDDocument document = Loader.loadPDF(pdf)) {
      BufferedImage image = new PDFRenderer(document).renderImageWithDPI(0, 150);
      shows(image, shift, new Box(0, 0, 297, 210));
    }
  }
}
