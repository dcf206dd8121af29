package felloe.out;

import static java.awt.RenderingHints.KEY_ANTIALIASING;
import static java.awt.RenderingHints.KEY_STROKE_CONTROL;
import static java.awt.RenderingHints.VALUE_ANTIALIAS_ON;
import static java.awt.RenderingHints.VALUE_STROKE_PURE;

import felloe.geometry.Point;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.BufferedInputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A page as dots of ink, read with a ruler: coordinates are millimetres on the paper, y up. */
final class PrintedPage {

  private final int width;
  private final int height;
  private final byte[] grey;
  private final double dots;
  private final double paperHeight;

  private PrintedPage(int width, int height, byte[] grey, double dots, double paperHeight) {
    this.width = width;
    this.height = height;
    this.grey = grey;
    this.dots = dots;
    this.paperHeight = paperHeight;
  }

  /** Pages drawn by PDFBox on a printer that stretches them about the paper's middle. */
  static PrintedPage byPdfBox(byte[] pdf, int page, double dpi, double stretchX, double stretchY)
      throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      double paperWidth = document.getPage(page).getMediaBox().getWidth() * 25.4 / 72;
      double paperHeight = document.getPage(page).getMediaBox().getHeight() * 25.4 / 72;
      double dots = dpi / 25.4;
      int w = (int) Math.ceil(paperWidth * dots);
      int h = (int) Math.ceil(paperHeight * dots);
      BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_BYTE_GRAY);
      Graphics2D graphics = image.createGraphics();
      graphics.setBackground(Color.WHITE);
      graphics.setColor(Color.WHITE);
      graphics.fillRect(0, 0, w, h);
      graphics.translate(
          paperWidth * dots / 2 * (1 - stretchX), paperHeight * dots / 2 * (1 - stretchY));
      PDFRenderer renderer = new PDFRenderer(document);
      // Left to itself, Java moves thin lines to whole dots, and every line is then up to half a
      // dot off before it is measured.
      RenderingHints hints = new RenderingHints(KEY_ANTIALIASING, VALUE_ANTIALIAS_ON);
      hints.put(KEY_STROKE_CONTROL, VALUE_STROKE_PURE);
      renderer.setRenderingHints(hints);
      renderer.renderPageToGraphics(
          page, graphics, (float) (dpi / 72 * stretchX), (float) (dpi / 72 * stretchY));
      graphics.dispose();
      byte[] grey = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
      return new PrintedPage(w, h, grey, dots, paperHeight);
    }
  }

  /** Whether poppler's renderer is on the PATH. */
  static boolean hasPoppler() {
    String path = System.getenv().getOrDefault("PATH", "");
    return Stream.of(path.split(java.io.File.pathSeparator))
        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "pdftoppm")));
  }

  /** A page drawn by poppler. */
  static PrintedPage byPoppler(byte[] pdf, int page, double dpi, double paperHeight)
      throws IOException, InterruptedException {
    Path folder = Files.createTempDirectory("pages");
    try {
      Path file = Files.write(folder.resolve("in.pdf"), pdf);
      String number = Integer.toString(page + 1);
      Process process =
          new ProcessBuilder(
                  List.of(
                      "pdftoppm",
                      "-gray",
                      "-r",
                      Integer.toString((int) dpi),
                      "-f",
                      number,
                      "-l",
                      number,
                      "-singlefile",
                      file.toString(),
                      folder.resolve("out").toString()))
              .redirectErrorStream(true)
              .start();
      String said = new String(process.getInputStream().readAllBytes());
      if (!process.waitFor(60, TimeUnit.SECONDS) || process.exitValue() != 0 || !said.isBlank()) {
        throw new IOException("pdftoppm: " + said);
      }
      return readPgm(folder.resolve("out.pgm"), dpi / 25.4, paperHeight);
    } finally {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.toList()) {
          Files.delete(file);
        }
      }
      Files.delete(folder);
    }
  }

  private static PrintedPage readPgm(Path file, double dots, double paperHeight)
      throws IOException {
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(file)))) {
      int[] head = new int[4];
      for (int i = 0; i < 4; i++) {
        StringBuilder word = new StringBuilder();
        for (int c = in.read(); !Character.isWhitespace(c); c = in.read()) {
          word.append((char) c);
        }
        head[i] = i == 0 ? 0 : Integer.parseInt(word.toString());
      }
      byte[] grey = new byte[head[1] * head[2]];
      in.readFully(grey);
      return new PrintedPage(head[1], head[2], grey, dots, paperHeight);
    }
  }

  /** Size of a dot, mm. */
  double dot() {
    return 1 / dots;
  }

  /** Share of ink at a point, between 0 and 1, between the middles of four dots. */
  double ink(Point p) {
    double x = p.x() * dots - 0.5;
    double y = (paperHeight - p.y()) * dots - 0.5;
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    double fx = x - column;
    double fy = y - row;
    return (1 - fy) * ((1 - fx) * at(column, row) + fx * at(column + 1, row))
        + fy * ((1 - fx) * at(column, row + 1) + fx * at(column + 1, row + 1));
  }

  private double at(int column, int row) {
    if (column < 0 || row < 0 || column >= width || row >= height) {
      return 0;
    }
    return 1 - (grey[row * width + column] & 0xff) / 255.0;
  }

  /**
   * How far the middle of the ink lies from a point along a direction of length one, mm; not a
   * number when there is no line of ink within reach.
   */
  double offset(Point p, Point direction, double reach) {
    double sum = 0;
    double moment = 0;
    double step = 0.2 / dots;
    int n = (int) Math.round(reach / step);
    for (int i = -n; i <= n; i++) {
      double ink = ink(p.plus(direction, i * step));
      sum += ink;
      moment += ink * i * step;
    }
    boolean flooded = ink(p.plus(direction, -reach)) + ink(p.plus(direction, reach)) > 0.5;
    return flooded || sum * step < 0.05 ? Double.NaN : moment / sum;
  }

  /** Greatest ink on the page outside of a box, to prove that an edge is blank. */
  double inkOutside(felloe.geometry.Box box) {
    double most = 0;
    for (int row = 0; row < height; row++) {
      double y = paperHeight - (row + 0.5) / dots;
      boolean inside = y > box.minY() && y < box.maxY();
      for (int column = 0; column < width; column++) {
        double x = (column + 0.5) / dots;
        if (!inside || x < box.minX() || x > box.maxX()) {
          most = Math.max(most, at(column, row));
        }
      }
    }
    return most;
  }

  @Override
  public String toString() {
    return width + " x " + height + " dots " + Arrays.hashCode(grey);
  }
}
