package felloe.drafting;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * No figure of a drawing meets a line, an arrowhead, another figure or the frame, and no dimension
 * line or leader crosses another: looked at in the finished picture with the geometry of JTS, on
 * plates of every family by chance.
 */
class PlacementProofTest {

  private static final int PLATES = Integer.getInteger("felloe.rounds", 500);
  private static final GeometryFactory JTS = new GeometryFactory();

  /** Points of an arc lie at most so far apart, mm: the arc strays by 0.002 mm from a chord. */
  private static final double STEP = 0.15;

  /** What two figures, or a figure and the ink of a line, are at least apart, mm. */
  private static final double WHITE = 0.05;

  /** Rooms of a page: A4 upright and lying, A5 and A3 with their margins. */
  private static final double[][] ROOMS = {{180, 200}, {267, 140}, {118, 150}, {387, 237}};

  /** What a mark's layer is called, its shape, and half the width of its line. */
  private record Ink(String layer, Geometry shape, double half) {}

  private static Coordinate at(Point p) {
    return new Coordinate(p.x(), p.y());
  }

  private static LineString line(List<Segment> chain) {
    List<Coordinate> points = new ArrayList<>();
    points.add(at(chain.get(0).from()));
    for (Segment segment : chain) {
      int n = segment.curvature() == 0 ? 1 : (int) Math.ceil(segment.length() / STEP);
      for (int i = 1; i <= n; i++) {
        points.add(at(segment.at((double) i / n)));
      }
    }
    return JTS.createLineString(points.toArray(Coordinate[]::new));
  }

  private static Polygon area(Contour contour) {
    LineString edge = line(contour.segments());
    Coordinate[] ring = edge.getCoordinates();
    ring[ring.length - 1] = ring[0];
    return JTS.createPolygon(ring);
  }

  /** The rectangle of a text: its advance width, from below the tails to the capitals' top. */
  private static Polygon text(Mark.Label label) {
    double width = TextWidth.of(label.text(), label.height());
    double before =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> width / 2;
          case END -> width;
        };
    double tails = 426.0 / 1493 * label.height();
    Coordinate[] ring = new Coordinate[5];
    double[][] corners = {
      {0, -tails}, {width, -tails}, {width, label.height()}, {0, label.height()}
    };
    double cos = Math.cos(label.turn());
    double sin = Math.sin(label.turn());
    for (int i = 0; i < 4; i++) {
      double u = corners[i][0] - before;
      double v = corners[i][1];
      ring[i] =
          new Coordinate(label.at().x() + u * cos - v * sin, label.at().y() + u * sin + v * cos);
    }
    ring[4] = ring[0];
    return JTS.createPolygon(ring);
  }

  private static List<Ink> inks(Drawing drawing) {
    List<Ink> inks = new ArrayList<>();
    for (Drawing.Layer layer : drawing.layers()) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Stroke stroke) {
          inks.add(new Ink(layer.name(), line(stroke.segments()), stroke.type().width() / 2));
        } else if (mark instanceof Mark.Fill fill) {
          inks.add(new Ink(layer.name(), area(fill.contours().get(0)), 0));
        } else if (mark instanceof Mark.Label label) {
          inks.add(new Ink(layer.name(), text(label), 0));
        }
      }
    }
    return inks;
  }

  private static void assertClear(PlateDrawing drawing, double width, double height, String what) {
    Box page = drawing.picture().page();
    assertTrue(
        page.minX() >= 0 && page.minY() >= 0 && page.maxX() <= width && page.maxY() <= height,
        what + ": the picture is larger than its room");
    List<Ink> inks = inks(drawing.picture().drawing());
    STRtree tree = new STRtree();
    inks.forEach(ink -> tree.insert(ink.shape.getEnvelopeInternal(), ink));
    Geometry frame = area(Contour.rectangle(page)).getBoundary();
    List<Mark.Label> labels = new ArrayList<>();
    for (Mark mark : drawing.picture().drawing().marks()) {
      if (mark instanceof Mark.Label label) {
        labels.add(label);
      }
    }
    for (Mark.Label label : labels) {
      Polygon text = text(label);
      String who = what + ": '" + label.text() + "' ";
      assertTrue(frame.distance(text) > WHITE, who + "meets the frame");
      assertTrue(page.contains(label.at()), who + "lies outside the frame");
      for (Ink ink : near(tree, text, 1)) {
        boolean self = ink.shape.equalsExact(text);
        assertTrue(self || ink.shape.distance(text) > ink.half + WHITE, who + "meets " + ink.layer);
      }
    }
    for (Ink ink : inks) {
      if (ink.layer.equals("dimension-lines") || ink.layer.equals("leaders")) {
        for (Ink other : near(tree, ink.shape, 0)) {
          boolean same = other.layer.equals("dimension-lines") || other.layer.equals("leaders");
          assertTrue(
              !same || other == ink || !crosses(ink.shape, other.shape),
              what + ": " + ink.layer + " meets " + other.layer + " at " + ink.shape);
        }
      }
    }
  }

  /** Whether two lines meet elsewhere than with one end of each: a shelf at a leader's knee. */
  private static boolean crosses(Geometry a, Geometry b) {
    return a.distance(b) < WHITE && ends(a).distance(ends(b)) > WHITE / 100;
  }

  private static Geometry ends(Geometry line) {
    Coordinate[] points = line.getCoordinates();
    return JTS.createMultiPointFromCoords(new Coordinate[] {points[0], points[points.length - 1]});
  }

  @SuppressWarnings("unchecked")
  private static List<Ink> near(STRtree tree, Geometry shape, double by) {
    org.locationtech.jts.geom.Envelope box = shape.getEnvelopeInternal();
    box.expandBy(by);
    return tree.query(box);
  }

  @Test
  void noFigureMeetsAnythingOnFiveHundredPlatesByChance() {
    long figures =
        LongStream.rangeClosed(1, PLATES).parallel().map(PlacementProofTest::figures).sum();
    assertTrue(figures > 10L * PLATES, figures + " figures");
  }

  /** Draws a plate, looks whether it is clear, and counts its figures. */
  private static long figures(long seed) {
    double[] room = ROOMS[(int) (seed % ROOMS.length)];
    PlateDrawing drawing = PlateDrawing.of(RandomPlates.of(seed), room[0], room[1]);
    assertClear(drawing, room[0], room[1], "seed " + seed + " " + drawing.scale().text());
    return drawing.picture().drawing().marks().stream()
        .filter(Mark.Label.class::isInstance)
        .count();
  }

  @Test
  void noFigureMeetsAnythingOnPlatesMadeByHand() {
    for (Plate plate : DemoPlates.all()) {
      for (double[] room : ROOMS) {
        assertClear(PlateDrawing.of(plate, room[0], room[1]), room[0], room[1], plate.name());
      }
    }
  }
}
