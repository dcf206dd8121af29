package felloe.template;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.LargestCircle;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.plate.DemoPlates;
import felloe.plate.Face;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** No lettering of a template stands on other lettering, and no leader runs through any. */
class LabelsApartTest {

  private static final long SEED = 20_261_129;

  /** White between the boxes of two labels on the part, tails of letters and all, mm. */
  private static final double GAP = 0.8;

  /** A hole in the waste beside the edge of each window, and one more in its middle. */
  private static List<WasteHole> waste(Plate plate, Random random) {
    List<WasteHole> holes = new ArrayList<>();
    for (Window window : plate.windows()) {
      LargestCircle circle = LargestCircle.inside(window.contour());
      double diameter = 4 + random.nextInt(4);
      Point out = Point.polar(circle.radius() - diameter, random.nextDouble() * 2 * Math.PI);
      holes.add(new WasteHole(circle.centre().plus(out), diameter));
      if (random.nextBoolean()) {
        holes.add(new WasteHole(circle.centre().minus(out), diameter));
      }
    }
    return holes;
  }

  private static Box moved(Box box, Point by) {
    return new Box(
        box.minX() + by.x(), box.minY() + by.y(), box.maxX() + by.x(), box.maxY() + by.y());
  }

  private static boolean meet(Box a, Box b, double gap) {
    return a.minX() < b.maxX() + gap
        && b.minX() < a.maxX() + gap
        && a.minY() < b.maxY() + gap
        && b.minY() < a.maxY() + gap;
  }

  private static List<Mark.Label> labels(Drawing drawing) {
    return drawing.marks().stream()
        .filter(m -> m instanceof Mark.Label label && TextWidth.of(label.text(), 1) > 0)
        .map(Mark.Label.class::cast)
        .toList();
  }

  /** The words on the part and round it, and the leaders from them. */
  private static void assertApart(Drawing drawing, String what) {
    Drawing notes =
        new Drawing(
            drawing.layers().stream().filter(layer -> layer.name().equals("notes")).toList());
    List<Mark.Label> labels = labels(notes);
    for (int i = 0; i < labels.size(); i++) {
      for (int j = 0; j < i; j++) {
        Mark.Label a = labels.get(j);
        Mark.Label b = labels.get(i);
        // The lines of one block stand closer: 1.4 times their height at the least (ISO 3098).
        double pitch = Math.abs(a.at().y() - b.at().y());
        boolean block = a.at().x() == b.at().x() && pitch >= 1.4 * a.height() - 1e-9;
        assertTrue(
            block || !meet(a.box(), b.box(), GAP), what + ": " + a.text() + " meets " + b.text());
      }
    }
    for (Mark mark : notes.marks()) {
      if (mark instanceof Mark.Stroke stroke && stroke.segments().get(0) instanceof Line line) {
        for (int i = 0; i <= 100; i++) {
          Point p = line.at(i / 100.0);
          labels.forEach(
              l -> assertTrue(!l.box().contains(p), what + ": a line runs through " + l.text()));
        }
      }
    }
  }

  /** All words of a page: those on the part against all, and the page's own foot against them. */
  private static void assertApart(Page page, String what) {
    List<Mark.Label> labels = new ArrayList<>();
    List<Box> boxes = new ArrayList<>();
    List<Integer> parts = new ArrayList<>();
    for (int i = 0; i < page.parts().size(); i++) {
      Page.Placed part = page.parts().get(i);
      for (Mark.Label label : labels(part.drawing())) {
        Box box = moved(label.box(), part.shift());
        if (part.clip().map(clip -> meet(clip, box, 0)).orElse(true)) {
          labels.add(label);
          boxes.add(box);
          parts.add(i);
        }
      }
    }
    int last = page.parts().size() - 1;
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = 0; j < i; j++) {
        boolean foot = parts.get(i) == last && parts.get(j) == last;
        assertTrue(
            foot || !meet(boxes.get(i), boxes.get(j), 0),
            what + ": " + labels.get(i).text() + " meets " + labels.get(j).text());
      }
    }
  }

  private static void assertApart(
      Plate plate, List<WasteHole> waste, Paper paper, Face face, String what) {
    String where = what + " " + plate.name() + " " + paper.title() + " " + face;
    assertApart(
        TemplateDrawing.of(plate, waste, MarkOut.STUCK_ON, face, Stamp.NONE), where + " drawing");
    Template template = Template.of(plate, waste, UsualPrint.on(paper).withFace(face), Stamp.NONE);
    for (PageSet set : List.of(template.pages(), template.fullSize())) {
      assertApart(set.drawing(), where + " " + set.paper());
      set.pages().forEach(page -> assertApart(page, where + " " + page.name()));
    }
  }

  @Test
  void onTheDemoShapesOfBothFaces() {
    Random random = new Random(SEED);
    for (Plate plate : DemoPlates.all()) {
      for (Paper paper : List.of(Paper.A4, Paper.A3)) {
        for (Face face : Face.values()) {
          assertApart(plate, waste(plate, random), paper, face, "demo");
        }
      }
    }
  }

  @Test
  void onPlatesOfAnySizeWithHolesAndWasteHolesAnywhere() {
    Random random = new Random(SEED);
    for (int i = 0; i < 12; i++) {
      double width = 160 + random.nextInt(240);
      double height = 130 + random.nextInt(140);
      Plate plate =
          i % 2 == 0
              ? PaperPlates.bittern(width, height, MaterialKind.LAMINATE)
              : PaperPlates.withHoles(width, height, random);
      Face face = i % 4 < 2 ? Face.BACK : Face.FRONT;
      Paper paper = i % 3 == 0 ? Paper.A4 : Paper.A3;
      assertApart(plate, waste(plate, random), paper, face, "seed " + SEED + ", plate " + i);
    }
  }

  /** A window whose middle is taken by the label of a hole in its waste. */
  @Test
  void theLabelOfAWindowKeepsOffThatOfAHoleInItsWaste() {
    Plate plate = PaperPlates.bittern(420, 300, MaterialKind.LAMINATE);
    int checked = 0;
    for (double x = -30; x <= 0; x += 2) {
      for (double y = -12; y <= 12; y += 1.5) {
        Window window = plate.windows().get(0);
        Point at = window.contour().box().centre().plus(new Point(x, y));
        if (window.contour().contains(at) && window.contour().distance(at) > 5) {
          List<WasteHole> waste = List.of(new WasteHole(at, 7));
          assertApart(
              TemplateDrawing.of(plate, waste, MarkOut.STUCK_ON, Face.BACK, Stamp.NONE),
              at.toString());
          checked++;
        }
      }
    }
    assertTrue(checked > 20, checked + " places");
  }
}
