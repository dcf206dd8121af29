package felloe.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Paper;
import felloe.kit.CardFiles;
import felloe.render.PageRenderer;
import felloe.report.CardSheet;
import felloe.service.Jobs;
import felloe.template.UsualPrint;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pages of job cards look as they did: small grey pictures of them lie beside the golden answers.
 * When a change is wanted, write them anew with {@code -Dfelloe.golden=write}, and look at them.
 * Edges of letters may come out a little otherwise on another machine; so squares of {@value
 * #SQUARE} dots are compared by their mean, and none may differ by more than {@value #BOUND} of 255
 * steps of grey. A word more or less, or a line that has moved by a millimetre, is beyond that.
 */
class GoldenPagesTest {

  private static final Path GOLDEN = Path.of("src/test/resources/felloe/golden/pages");
  private static final int DOTS_PER_INCH = 40;
  private static final int SQUARE = 4;
  private static final int BOUND = 12;

  @ParameterizedTest
  @CsvSource({"heron, 1", "heron, 3", "dunlin, 1", "dunlin, 2"})
  void looksAsItDid(String shape, int page) throws IOException {
    CardSheet sheet = CardFiles.sheet(Jobs.of(shape), Jobs.CALLS, UsualPrint.on(Paper.A4));
    BufferedImage now = drawn(PageRenderer.pdf(sheet.report(), Paper.A4), page - 1);
    Path file = GOLDEN.resolve(shape + "-card-A4-" + page + ".png");
    if ("write".equals(System.getProperty("felloe.golden"))) {
      Files.createDirectories(GOLDEN);
      ImageIO.write(now, "png", file.toFile());
    }
    BufferedImage then = ImageIO.read(file.toFile());
    assertEquals(then.getWidth(), now.getWidth(), "width");
    assertEquals(then.getHeight(), now.getHeight(), "height");
    for (int y = 0; y + SQUARE <= now.getHeight(); y += SQUARE) {
      for (int x = 0; x + SQUARE <= now.getWidth(); x += SQUARE) {
        double off = Math.abs(mean(now, x, y) - mean(then, x, y));
        String where =
            file.getFileName() + " differs " + mm(x) + " mm from the left, " + mm(y) + " below top";
        assertTrue(off <= BOUND, where + ": if it is wanted, run with -Dfelloe.golden=write");
      }
    }
  }

  private static BufferedImage drawn(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(page, DOTS_PER_INCH, ImageType.GRAY);
    }
  }

  private static double mean(BufferedImage image, int x, int y) {
    double sum = 0;
    for (int i = 0; i < SQUARE * SQUARE; i++) {
      sum += image.getRaster().getSample(x + i % SQUARE, y + i / SQUARE, 0);
    }
    return sum / (SQUARE * SQUARE);
  }

  private static long mm(int dots) {
    return Math.round(dots * 25.4 / DOTS_PER_INCH);
  }
}
