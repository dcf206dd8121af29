package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** SVG cut files read back with another parser. */
class CutSvgWriterTest {

  @Test
  void everyContourReadsBackWithinTheBoundInDoubleAndSinglePrecision() throws Exception {
    for (Map.Entry<String, CutDrawing> shape : CutDrawings.all().entrySet()) {
      for (boolean single : new boolean[] {false, true}) {
        SvgReader reader = new SvgReader(write(shape.getValue(), CutDrawings.ABOUT), single);
        for (CutLayer layer : shape.getValue().layers()) {
          List<List<double[]>> shapes = reader.shapes(layer.role().id());
          int marks = layer.marks().size();
          assertEquals(marks + layer.contours().size(), shapes.size());
          for (int i = 0; i < layer.contours().size(); i++) {
            String what = shape.getKey() + " " + layer.role() + " " + i;
            SvgWriterTest.assertSame(layer.contours().get(i), shapes.get(marks + i), what);
          }
        }
      }
    }
  }

  @Test
  void marksReadBackWhereTheyAre() throws Exception {
    CutDrawing drawing = CutDrawings.all().get("marks");
    List<List<double[]>> shapes =
        new SvgReader(write(drawing, CutDrawings.ABOUT), false).shapes("centres");
    for (int i = 0; i < shapes.size(); i++) {
      Segment mark = drawing.layers().get(0).marks().get(i);
      for (double[] p : shapes.get(i)) {
        assertEquals(0, mark.distance(new Point(p[0], p[1])), 1e-3);
      }
      double[] first = shapes.get(i).get(0);
      double[] last = shapes.get(i).get(shapes.get(i).size() - 1);
      assertEquals(mark.from().x(), first[0], 1e-4);
      assertEquals(
          mark instanceof Arc arc && arc.isCircle() ? first[0] : mark.to().x(), last[0], 1e-4);
    }
  }

  @Test
  void itHoldsPathsInGroupsAndNothingElse() throws Exception {
    SvgReader reader =
        new SvgReader(write(CutDrawing.finish(DemoPlates.heron()), CutDrawings.ABOUT), false);
    NodeList all = reader.root().getElementsByTagName("*");
    TreeSet<String> names = new TreeSet<>();
    IntStream.range(0, all.getLength()).forEach(i -> names.add(all.item(i).getNodeName()));
    assertEquals(new TreeSet<>(List.of("title", "desc", "g", "path")), names);
    for (Element group : SvgReader.elements(reader.root(), "g")) {
      assertEquals("none", group.getAttribute("fill"));
      assertEquals("0.025", group.getAttribute("stroke-width"));
    }
    for (Element path : SvgReader.elements(reader.root(), "path")) {
      assertTrue(path.getAttribute("d").startsWith("M"));
      assertTrue(path.getAttribute("d").endsWith("Z"), "every contour is closed");
      assertEquals(1, path.getAttribute("d").chars().filter(c -> c == 'M').count());
    }
  }

  @Test
  void oneUserUnitIsOneMillimetre() throws Exception {
    Element root =
        new SvgReader(write(CutDrawing.finish(DemoPlates.dunlin()), CutDrawings.ABOUT), false)
            .root();
    assertEquals("300mm", root.getAttribute("width"));
    assertEquals("190mm", root.getAttribute("height"));
    assertEquals("-150 -95 300 190", root.getAttribute("viewBox"));
  }

  @Test
  void hostileTextStaysInTitleAndDescription() throws Exception {
    for (String text : HostileText.all()) {
      About about = new About(text, "1f4e90ab", text);
      SvgReader reader = new SvgReader(write(CutDrawing.finish(DemoPlates.heron()), about), false);
      String title = SvgReader.elements(reader.root(), "title").get(0).getTextContent();
      assertEquals(HostileText.legal(text), title);
      assertEquals(5, SvgReader.elements(reader.root(), "g").size());
    }
  }

  @Test
  void theBytesAreTheSameInEveryCountry() {
    CutDrawing drawing = CutDrawing.finish(DemoPlates.heron());
    Places.everywhere(() -> write(drawing, CutDrawings.ABOUT));
  }

  private static byte[] write(CutDrawing drawing, About about) {
    return CutSvgWriter.write(drawing, drawing.box().grown(5), about);
  }
}
