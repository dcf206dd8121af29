package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** SVG files read back with another parser and held against the exact geometry. */
class SvgWriterTest {

  private static final double BOUND = 0.005;

  @Test
  void outlineAndWindowsReadBackWithinTheBoundInDoubleAndSinglePrecision() throws Exception {
    for (Plate plate : DemoPlates.all()) {
      byte[] bytes =
          SvgWriter.write(
              new Picture(PlateDrawings.of(plate), PlateDrawings.page(plate), 1),
              PlateDrawings.ABOUT);
      for (boolean single : new boolean[] {false, true}) {
        SvgReader reader = new SvgReader(bytes, single);
        assertSame(plate.outline(), reader.shapes("outline").get(0), plate.name());
        List<List<double[]>> windows = reader.shapes("windows");
        assertEquals(plate.windows().size(), windows.size());
        for (int i = 0; i < windows.size(); i++) {
          assertSame(plate.windows().get(i).contour(), windows.get(i), plate.name());
        }
      }
    }
  }

  @Test
  void holeCentresAndDiametersReadBackWithinAThousandth() throws Exception {
    for (Plate plate : DemoPlates.all()) {
      byte[] bytes =
          SvgWriter.write(
              new Picture(PlateDrawings.of(plate), PlateDrawings.page(plate), 1),
              PlateDrawings.ABOUT);
      SvgReader reader = new SvgReader(bytes, false);
      List<Element> circles = SvgReader.elements(reader.group("holes"), "circle");
      assertEquals(plate.holes().size(), circles.size());
      for (int i = 0; i < circles.size(); i++) {
        Hole hole = plate.holes().get(i);
        Element circle = circles.get(i);
        assertEquals(hole.centre().x(), reader.number(circle, "cx"), 1e-5);
        assertEquals(hole.centre().y(), -reader.number(circle, "cy"), 1e-5);
        assertEquals(hole.diameter(), 2 * reader.number(circle, "r"), 1e-5);
      }
    }
  }

  @Test
  void seededRandomContoursReadBackWithinTheBound() throws Exception {
    for (long seed = 0; seed < 400; seed++) {
      double size = List.of(5.0, 80.0, 300.0, 2000.0).get((int) (seed % 4));
      Contour contour = RandomShapes.contour(seed, size);
      assertSame(contour, readBack(contour), "seed " + seed);
    }
  }

  @Test
  void arcsNearAHalfCircleKeepTheirCentreWhateverTheirRadius() throws Exception {
    Random random = new Random(7);
    for (int i = 0; i < 400; i++) {
      double sweep = Math.PI * (0.6 + 1.38 * random.nextDouble());
      double radius = 1 + 400 * random.nextDouble();
      if (i % 3 == 0) {
        sweep = Math.PI * (1 + 1e-4 * random.nextGaussian());
      }
      Point centre = new Point(100 * random.nextGaussian(), 100 * random.nextGaussian());
      Arc arc = Arc.of(centre, radius, 7 * random.nextDouble(), sweep);
      Contour contour = Contour.of(arc, new Line(arc.to(), arc.from()));
      assertSame(contour, readBack(contour), "seed 7, arc " + i);
    }
  }

  @Test
  void oneUserUnitIsOneMillimetre() throws Exception {
    Plate plate = DemoPlates.heron();
    Box page = new Box(-150.25, -120, 160, 148.5);
    Element root =
        new SvgReader(
                SvgWriter.write(new Picture(PlateDrawings.of(plate), page, 1), PlateDrawings.ABOUT),
                false)
            .root();
    assertEquals("310.25mm", root.getAttribute("width"));
    assertEquals("268.5mm", root.getAttribute("height"));
    assertEquals("-150.25 -148.5 310.25 268.5", root.getAttribute("viewBox"));
    assertEquals("svg", root.getLocalName());
    assertEquals("http://www.w3.org/2000/svg", root.getNamespaceURI());
  }

  @Test
  void arcsStayArcsAndCirclesStayCircles() throws Exception {
    Contour slotted = RandomShapes.roundedRectangle(100, 60, 10);
    Drawing drawing =
        new Drawing(
            List.of(new Drawing.Layer("outline", List.of(Mark.Stroke.of(slotted, LineType.EDGE)))));
    String text =
        new String(
            SvgWriter.write(new Picture(drawing, slotted.box(), 1), PlateDrawings.ABOUT),
            StandardCharsets.UTF_8);
    assertEquals(4, text.chars().filter(c -> c == 'A').count() - countIn(PlateDrawings.ABOUT));
    assertTrue(text.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg "), "no prefix");
    assertFalse(text.contains(":path"), "no prefix");
    assertFalse(text.contains("transform"), "coordinates are flipped, not transformed");
  }

  private static long countIn(About about) {
    return (about.title() + about.description()).chars().filter(c -> c == 'A').count();
  }

  @Test
  void groupsAreNamedByLayerAndLineTypesCarryTheirWidths() throws Exception {
    Plate plate = DemoPlates.heron();
    SvgReader reader =
        new SvgReader(
            SvgWriter.write(
                new Picture(PlateDrawings.of(plate), PlateDrawings.page(plate), 1),
                PlateDrawings.ABOUT),
            false);
    for (String id : List.of("outline", "windows", "holes", "centre-lines", "notes")) {
      assertEquals("none", reader.group(id).getAttribute("fill"), id);
    }
    Element outline = SvgReader.elements(reader.group("outline"), "path").get(0);
    assertEquals("0.35", outline.getAttribute("stroke-width"));
    assertFalse(outline.hasAttribute("stroke-dasharray"));
    Element axis = SvgReader.elements(reader.group("centre-lines"), "path").get(0);
    assertEquals("0.18", axis.getAttribute("stroke-width"));
    assertEquals("8 1 0.5 1", axis.getAttribute("stroke-dasharray"));
    assertEquals("H1", SvgReader.elements(reader.group("notes"), "text").get(0).getTextContent());
    assertEquals(
        "Heron, template", SvgReader.elements(reader.root(), "title").get(0).getTextContent());
    assertEquals(
        "Revision 1f4e90ab. For closed-course use; wear a dust mask.",
        SvgReader.elements(reader.root(), "desc").get(0).getTextContent());
  }

  @Test
  void twoLayersOfOneNameGetDifferentIds() throws Exception {
    Drawing.Layer layer =
        new Drawing.Layer("notes", List.of(PlateDrawings.label("a", Point.ORIGIN, 0)));
    byte[] bytes =
        SvgWriter.write(
            new Picture(new Drawing(List.of(layer, layer)), new Box(0, 0, 10, 10), 1),
            PlateDrawings.ABOUT);
    SvgReader reader = new SvgReader(bytes, false);
    assertEquals("notes-2", reader.group("notes-2").getAttribute("id"));
  }

  @Test
  void hostileLabelsAreTextAndNothingElse() throws Exception {
    for (String text : HostileText.all()) {
      Drawing drawing =
          PlateDrawings.labels(List.of(PlateDrawings.label(text, new Point(1, 2), 0.3)));
      byte[] bytes =
          SvgWriter.write(
              new Picture(drawing, new Box(0, 0, 10, 10), 1), new About(text, text, text));
      SvgReader reader = new SvgReader(bytes, false);
      Element label = SvgReader.elements(reader.group("notes"), "text").get(0);
      assertEquals(HostileText.legal(text), label.getTextContent());
      assertEquals(0, label.getElementsByTagName("*").getLength());
      assertEquals(0, SvgReader.elements(reader.root(), "script").size());
      assertEquals(
          HostileText.legal(text),
          SvgReader.elements(reader.root(), "title").get(0).getTextContent());
    }
  }

  @Test
  void theSameDrawingGivesTheSameBytesInAnyLocaleAndTimeZone() {
    Plate plate = DemoPlates.heron();
    Places.everywhere(
        () ->
            SvgWriter.write(
                new Picture(PlateDrawings.of(plate), PlateDrawings.page(plate), 1),
                PlateDrawings.ABOUT));
  }

  @Test
  void aTurnedLabelIsTurnedAboutItsOwnPoint() throws Exception {
    Mark label = PlateDrawings.label("up", new Point(12.5, -3), Math.PI / 2);
    byte[] bytes =
        SvgWriter.write(
            new Picture(PlateDrawings.labels(List.of(label)), new Box(0, 0, 9, 9), 1),
            PlateDrawings.ABOUT);
    Element text = SvgReader.elements(new SvgReader(bytes, false).group("notes"), "text").get(0);
    assertEquals("rotate(-90 12.5 3)", text.getAttribute("transform"));
    assertEquals("12.5", text.getAttribute("x"));
    assertEquals("3", text.getAttribute("y"));
  }

  private static List<double[]> readBack(Contour contour) throws Exception {
    Drawing drawing =
        new Drawing(
            List.of(new Drawing.Layer("outline", List.of(Mark.Stroke.of(contour, LineType.EDGE)))));
    byte[] bytes = SvgWriter.write(new Picture(drawing, contour.box(), 1), PlateDrawings.ABOUT);
    return new SvgReader(bytes, false).shapes("outline").get(0);
  }

  /** Every point read lies on the contour, and every piece of the contour has been read. */
  static void assertSame(Contour contour, List<double[]> read, String what) {
    double worst = 0;
    double length = 0;
    for (int i = 0; i < read.size(); i++) {
      double[] p = read.get(i);
      worst = Math.max(worst, contour.distance(new Point(p[0], p[1])));
      double[] q = read.get((i + 1) % read.size());
      length += Math.hypot(p[0] - q[0], p[1] - q[1]);
    }
    assertTrue(worst <= BOUND, what + ": " + worst + " mm off");
    // 100 chords of 120 degrees are 1.8e-5 shorter than their arc.
    assertEquals(contour.length(), length, 1e-4 * contour.length() + 1e-3, what);
    for (Segment segment : contour.segments()) {
      Point middle = segment.at(0.5);
      double near =
          read.stream()
              .mapToDouble(p -> Math.hypot(p[0] - middle.x(), p[1] - middle.y()))
              .min()
              .orElseThrow();
      assertTrue(near <= segment.length() / 50 + BOUND, what + ": a segment is missing");
    }
    assertArrayEquals(
        new double[] {read.get(0)[0], read.get(0)[1]},
        new double[] {contour.segments().get(0).from().x(), contour.segments().get(0).from().y()},
        contour.asCircle().isPresent() ? 1e9 : 1e-4);
  }
}
