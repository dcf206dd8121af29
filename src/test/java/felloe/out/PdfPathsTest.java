package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.Face;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.template.MarkOut;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.UsualPrint;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.junit.jupiter.api.Test;

/** Lines as they stand in the file, without dots: 0.005 mm for contours, 0.001 mm for holes. */
class PdfPathsTest {

  private static final double CONTOUR = 0.005;
  private static final double HOLE = 0.001;

  @Test
  void everyLineOfThePlateIsInTheFile() throws IOException {
    for (Plate plate :
        List.of(
            PaperPlates.bittern(),
            PaperPlates.heron(),
            PaperPlates.dunlin(),
            PaperPlates.rail(400),
            PaperPlates.bittern(1200, 700, MaterialKind.METAL))) {
      Printed set =
          Printed.of(Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).fullSize());
      assertLines(plate.outline(), set, CONTOUR);
      plate.windows().forEach(window -> assertLines(window.contour(), set, CONTOUR));
      plate.holes().forEach(hole -> assertLines(hole.contour(), set, HOLE));
    }
  }

  @Test
  void theBackFaceIsMirrored() throws IOException {
    Plate plate = PaperPlates.heron();
    Printed set =
        Printed.of(
            Template.of(plate, List.of(), UsualPrint.on(Paper.A4).withFace(Face.BACK), Stamp.NONE)
                .fullSize());
    assertEquals(RigidTransform.MIRROR, set.set.motion());
    assertLines(plate.outline(), set, CONTOUR);
    plate.holes().forEach(hole -> assertLines(hole.contour(), set, HOLE));
  }

  @Test
  void aLineForThePenLiesHalfItsWidthOffTheFinishLine() throws IOException {
    Plate plate = PaperPlates.bittern();
    for (MarkOut.InkEdge edge : MarkOut.InkEdge.values()) {
      MarkOut pen = MarkOut.traced(0.7, edge);
      Printed set =
          Printed.of(
              Template.of(plate, List.of(), UsualPrint.on(Paper.A4).withMarkOut(pen), Stamp.NONE)
                  .fullSize());
      double out = edge == MarkOut.InkEdge.PLATE_SIDE ? 0.35 : -0.35;
      assertLines(Offset.of(plate.outline(), out).get(0).outer(), set, CONTOUR);
      for (var window : plate.windows()) {
        assertLines(Offset.of(window.contour(), -out).get(0).outer(), set, CONTOUR);
      }
      plate.holes().forEach(hole -> assertLines(hole.contour(), set, HOLE));
    }
  }

  /** Each point of the contour has a point of some line in the file within the bound. */
  private static void assertLines(Contour contour, Printed printed, double bound) {
    PageSet set = printed.set;
    Point shift = set.pages().get(0).parts().get(0).shift();
    for (Segment exact : contour.segments()) {
      Segment segment = exact.moved(set.motion());
      // Against the curve, so that the spacing of the file's points does not count.
      List<Point> on = new ArrayList<>();
      for (int i = 0; i <= 40; i++) {
        Point p = segment.at(i / 40.0).plus(shift);
        Point best = closest(p, printed.near);
        assertTrue(best.distance(p) < 0.3, "no line near " + p + ": " + best);
        on.add(best.minus(shift));
      }
      for (Point p : on) {
        double off = segment.distance(p);
        boolean pastEnd =
            segment.nearest(p).near(segment.from(), 1e-9)
                || segment.nearest(p).near(segment.to(), 1e-9);
        assertTrue(
            off <= bound || (pastEnd && contourDistance(contour, set.motion(), p) <= bound),
            "off by " + off + " mm");
      }
    }
  }

  /** A page set and the points of its first page's lines, by place. */
  private record Printed(PageSet set, Map<Long, List<Point>> near) {
    static Printed of(PageSet set) {
      Map<Long, List<Point>> near = new HashMap<>();
      for (Point p : pointsOf(PdfWriter.write(set))) {
        near.computeIfAbsent(cell(p), c -> new ArrayList<>()).add(p);
      }
      return new Printed(set, near);
    }
  }

  private static double contourDistance(Contour contour, RigidTransform motion, Point p) {
    return contour.moved(motion).distance(p);
  }

  private static long cell(Point p) {
    return (long) Math.floor(p.x() / 0.5) * 1_000_000L + (long) Math.floor(p.y() / 0.5);
  }

  private static Point closest(Point p, Map<Long, List<Point>> near) {
    Point best = new Point(-1e6, -1e6);
    for (int dx = -1; dx <= 1; dx++) {
      for (int dy = -1; dy <= 1; dy++) {
        long c = cell(p.plus(new Point(0.5 * dx, 0.5 * dy)));
        for (Point q : near.getOrDefault(c, List.of())) {
          best = q.distance(p) < best.distance(p) ? q : best;
        }
      }
    }
    return best;
  }

  /** Points along all thick lines of the first page, mm on the paper, closely spaced. */
  private static List<Point> pointsOf(byte[] pdf) {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      Lines lines = new Lines(document.getPage(0));
      lines.processPage(document.getPage(0));
      return lines.points;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static final class Lines extends PDFGraphicsStreamEngine {
    private final List<Point> points = new ArrayList<>();
    private final List<Point> path = new ArrayList<>();
    private Point2D at = new Point2D.Double();
    private Point2D start = new Point2D.Double();

    Lines(PDPage page) {
      super(page);
    }

    @Override
    public void moveTo(float x, float y) {
      at = new Point2D.Double(x, y);
      start = at;
    }

    @Override
    public void lineTo(float x, float y) {
      curveTo(
          (float) (at.getX() + (x - at.getX()) / 3),
          (float) (at.getY() + (y - at.getY()) / 3),
          (float) (at.getX() + (x - at.getX()) * 2 / 3),
          (float) (at.getY() + (y - at.getY()) * 2 / 3),
          x,
          y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
      double reach =
          at.distance(x1, y1) + Math.hypot(x2 - x1, y2 - y1) + Math.hypot(x3 - x2, y3 - y2);
      int n = (int) Math.ceil(reach / 0.5) + 1;
      for (int i = 0; i <= n; i++) {
        double t = (double) i / n;
        double s = 1 - t;
        double x = s * s * s * at.getX() + 3 * s * s * t * x1 + 3 * s * t * t * x2 + t * t * t * x3;
        double y = s * s * s * at.getY() + 3 * s * s * t * y1 + 3 * s * t * t * y2 + t * t * t * y3;
        path.add(new Point(x * 25.4 / 72, y * 25.4 / 72));
      }
      at = new Point2D.Double(x3, y3);
    }

    @Override
    public void closePath() {
      if (at.distance(start) > 1e-3) {
        lineTo((float) start.getX(), (float) start.getY());
      }
    }

    @Override
    public void strokePath() {
      if (getGraphicsState().getLineWidth() > 0.3) {
        points.addAll(path);
      }
      path.clear();
    }

    @Override
    public void fillPath(int rule) {
      path.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
      path.clear();
    }

    @Override
    public void endPath() {
      path.clear();
    }

    @Override
    public void clip(int rule) {}

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}

    @Override
    public Point2D getCurrentPoint() {
      return at;
    }
  }
}
