package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Anchor;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.drawing.TextWidth;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** Pictures decoded again and measured in pixels. */
class PngWriterTest {

  @Test
  void edgesOfHolesAndOutlineLieWhereTheyBelongWithinAPixel() throws IOException {
    Plate plate = DemoPlates.heron();
    Box page = new Box(-150, -130, 150, 150);
    double scale = 10;
    BufferedImage image = draw(PlateDrawings.of(plate), page, 3000);
    assertEquals(2800, image.getHeight());
    // Ink along the negative y axis, from the edge of the bore down to the flat bottom.
    double[] edges = {-25, -32.5, -37.5, -105};
    for (double y : edges) {
      double row = middleOfInk(image, 1500, (150 - y) * scale, false);
      assertEquals((150 - y) * scale, row, 1, "edge at y = " + y);
    }
    for (Hole hole : plate.holes()) {
      if (hole.label().equals("G1")) {
        double column = (hole.centre().x() - 2.1 + 150) * scale;
        int row = (int) Math.round((150 - hole.centre().y()) * scale);
        assertEquals(column, middleOfInk(image, row, column, true), 1);
      }
    }
  }

  @Test
  void smoothChainsOfShortArcsAreDrawnWithoutDents() throws IOException {
    // An egg of 72 arcs between points of a smooth curve; joints fall anywhere between pixels.
    List<Point> joints = new ArrayList<>();
    for (int i = 0; i < 72; i++) {
      double angle = Math.toRadians(5 * i);
      joints.add(Point.polar(30 + 5 * Math.cos(angle) + 4 * Math.sin(2 * angle), angle));
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < 72; i++) {
      Point a = joints.get(i);
      Point b = joints.get((i + 1) % 72);
      edges.add(Arc.withRise(a, b, 0.02 * a.distance(b)));
    }
    Contour egg = new Contour(edges);
    Drawing drawing =
        new Drawing(
            List.of(new Drawing.Layer("outline", List.of(Mark.Stroke.of(egg, LineType.EDGE)))));
    double scale = 5;
    BufferedImage image = draw(drawing, new Box(-40, -40, 40, 40), 400);
    double worst = 0;
    for (Segment edge : egg.segments()) {
      for (double t : new double[] {0.1, 0.5, 0.9}) {
        Point at = edge.at(t);
        Point out = edge.tangent(t).right();
        double ink = 0;
        double moment = 0;
        for (int k = -40; k <= 40; k++) {
          Point p = at.plus(out, k / 10.0 / scale);
          double dark = dark(image, (int) ((p.x() + 40) * scale), (int) ((40 - p.y()) * scale));
          ink += dark;
          moment += dark * k / 10.0;
        }
        worst = Math.max(worst, Math.abs(moment / ink));
      }
    }
    assertTrue(worst < 0.3, worst + " pixels off");
  }

  @Test
  void paperIsWhiteAndInkIsBlack() throws IOException {
    BufferedImage image =
        draw(PlateDrawings.of(DemoPlates.heron()), new Box(-150, -130, 150, 150), 2700);
    assertEquals(0xffffffff, image.getRGB(2, 2));
    int black = 0;
    for (int x = 0; x < image.getWidth(); x++) {
      black += (image.getRGB(x, 1350) & 0xff) < 40 ? 1 : 0;
    }
    assertTrue(black > 2);
  }

  @Test
  void textIsInkInExactlyItsMeasuredRoom() throws IOException {
    String text = "HEH 70 \u2300 \u00b1 HEH";
    double height = 8;
    double width = TextWidth.of(text, height);
    Mark label = new Mark.Label(text, new Point(10, 10), height, 0, Anchor.START);
    BufferedImage image = draw(PlateDrawings.labels(List.of(label)), new Box(0, 0, 200, 40), 2000);
    int[] ink = inkBox(image);
    // The glyph H begins 180 of 2048 units right of its origin, and ends as far from its right.
    double em = TextWidth.fontSize(height);
    assertEquals(100 + 0.0879 * em * 10, ink[0], 2, "left");
    assertEquals(100 + (width - 0.0879 * em) * 10, ink[2], 2, "right");
    assertEquals(400 - 180, ink[1], 8, "top: a capital's height, round letters stand over it");
    assertTrue(ink[3] >= 299 && ink[3] < 320, "bottom: the base line, " + ink[3]);
  }

  @Test
  void turnedAndAnchoredTextStandsOnItsPoint() throws IOException {
    Mark up = new Mark.Label("HHHH", new Point(50, 20), 8, Math.PI / 2, Anchor.MIDDLE);
    int[] ink = inkBox(draw(PlateDrawings.labels(List.of(up)), new Box(0, 0, 100, 40), 1000));
    assertEquals(500, ink[2], 2, "the base line is the right side");
    assertEquals(420, ink[0], 2);
    assertEquals(200, (ink[1] + ink[3]) / 2.0, 2, "centred");
  }

  @Test
  void everyCharacterOfALabelLeavesInk() throws IOException {
    String text = "ABCxyz019\u00d7\u2300\u00b0\u00b1\u2264\u03b1\u0416\u05d0\u0639\u4e00";
    double height = 6;
    double at = 5;
    BufferedImage image =
        draw(
            PlateDrawings.labels(
                List.of(
                    new Mark.Label(
                        text.substring(0, 16), new Point(5, 10), height, 0, Anchor.START))),
            new Box(0, 0, 120, 20),
            1200);
    for (int c : text.substring(0, 16).codePoints().toArray()) {
      double width = TextWidth.of(Character.toString(c), height);
      assertTrue(ink(image, at, at + width) > 20, Character.toString(c) + " is missing");
      at += width;
    }
    for (int c : text.substring(16).codePoints().toArray()) {
      Mark one = new Mark.Label(Character.toString(c), new Point(5, 8), 6, 0, Anchor.START);
      BufferedImage alone = draw(PlateDrawings.labels(List.of(one)), new Box(0, 0, 20, 20), 200);
      assertTrue(ink(alone, 0, 20) > 20, Character.toString(c) + " is missing");
    }
  }

  @Test
  void hostileLabelsAreDrawnToo() throws IOException {
    for (String text : HostileText.all()) {
      Mark label = new Mark.Label(text, new Point(1, 4), 3, 0, Anchor.START);
      About about = new About(text, text, text);
      Box page = new Box(0, 0, 90, 9);
      BufferedImage image =
          read(
              PngWriter.write(
                  new Picture(PlateDrawings.labels(List.of(label)), page, 1), 450, about));
      assertTrue(ink(image, 0, 90) > 20, text);
    }
  }

  @Test
  void areasAreFilledWithTheirShareOfInkAndOpeningsStayOpen() throws IOException {
    Contour outer = Contour.circle(new Point(10, 10), 8);
    Contour inner = Contour.circle(new Point(10, 10), 4);
    Drawing drawing =
        new Drawing(
            List.of(
                new Drawing.Layer("plate", List.of(new Mark.Fill(List.of(outer, inner), 0.2)))));
    BufferedImage image = draw(drawing, new Box(0, 0, 20, 20), 400);
    assertEquals(204, image.getRGB(80, 200) & 0xff, 1);
    assertEquals(255, image.getRGB(200, 200) & 0xff);
    assertEquals(255, image.getRGB(5, 5) & 0xff);
  }

  @Test
  void aWiderPenDrawsWiderLines() throws IOException {
    Line line = new Line(new Point(0, 10), new Point(20, 10));
    Drawing drawing =
        new Drawing(List.of(new Drawing.Layer("a", List.of(Mark.Stroke.of(line, LineType.EDGE)))));
    Box page = new Box(0, 0, 20, 20);
    int thin = rows(read(PngWriter.write(new Picture(drawing, page, 1), 400, PlateDrawings.ABOUT)));
    int thick =
        rows(read(PngWriter.write(new Picture(drawing, page, 4), 400, PlateDrawings.ABOUT)));
    assertEquals(LineType.EDGE.width() * 20, thin, 1);
    assertEquals(4 * LineType.EDGE.width() * 20, thick, 1);
  }

  @Test
  void theSameDrawingGivesTheSameBytesAnywhere() {
    Plate plate = DemoPlates.heron();
    Places.everywhere(
        () ->
            PngWriter.write(
                new Picture(PlateDrawings.of(plate), PlateDrawings.page(plate), 1),
                500,
                PlateDrawings.ABOUT));
  }

  @Test
  void widthsOutOfBoundsAreRefused() {
    Drawing drawing = PlateDrawings.of(DemoPlates.sanderling());
    Box page = new Box(0, 0, 9, 9);
    for (int pixels : new int[] {0, -5, 20_001}) {
      assertThrows(
          IllegalArgumentException.class,
          () -> PngWriter.write(new Picture(drawing, page, 1), pixels, PlateDrawings.ABOUT));
    }
  }

  private static BufferedImage draw(Drawing drawing, Box page, int pixels) throws IOException {
    return read(PngWriter.write(new Picture(drawing, page, 1), pixels, PlateDrawings.ABOUT));
  }

  private static BufferedImage read(byte[] bytes) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(bytes));
  }

  private static double dark(BufferedImage image, int x, int y) {
    return 255 - (image.getRGB(x, y) & 0xff);
  }

  /** Centre of the ink within 8 pixels of a place on a row or column. */
  private static double middleOfInk(BufferedImage image, int line, double near, boolean row) {
    double sum = 0;
    double moment = 0;
    for (int i = (int) near - 8; i <= near + 8; i++) {
      double ink = row ? dark(image, i, line) : dark(image, line, i);
      sum += ink;
      moment += ink * (i + 0.5);
    }
    assertTrue(sum > 0, "no ink near " + near);
    return moment / sum;
  }

  private static int[] inkBox(BufferedImage image) {
    int[] box = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        if (dark(image, x, y) > 127) {
          box[0] = Math.min(box[0], x);
          box[1] = Math.min(box[1], y);
          box[2] = Math.max(box[2], x);
          box[3] = Math.max(box[3], y);
        }
      }
    }
    return box;
  }

  private static double ink(BufferedImage image, double fromMm, double toMm) {
    double count = 0;
    double scale = image.getHeight() == 90 || image.getWidth() == 450 ? 5 : 10;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = (int) (fromMm * scale); x < Math.min(image.getWidth(), toMm * scale); x++) {
        count += dark(image, x, y) > 127 ? 1 : 0;
      }
    }
    return count;
  }

  private static int rows(BufferedImage image) {
    int rows = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      rows += dark(image, image.getWidth() / 2, y) > 127 ? 1 : 0;
    }
    return rows;
  }
}
