package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.template.BarReading;
import felloe.template.PageSet;
import felloe.template.Registration;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Pages drawn as dots at 600 dpi and measured against the plate's exact geometry. The bound is one
 * dot, 0.042 mm.
 */
class TrueScaleTest {

  private static final double DPI = 600;
  private static final double DOT = 25.4 / DPI;

  /** Samples with other ink nearer than this are left out. */
  private static final double CLEAR = 0.9;

  @Test
  void outlineWindowsAndHolesLieWithinADotWhenPdfBoxDrawsThem() throws IOException {
    Plate plate = PaperPlates.heron();
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    int measured = 0;
    for (int i = 0; i < set.tiles().size(); i++) {
      measured += measure(samples, set, i, PrintedPage.byPdfBox(pdf, i, DPI, 1, 1));
    }
    assertTrue(measured > 300, "measured " + measured);
  }

  @Test
  void outlineWindowsAndHolesLieWithinADotWhenPopplerDrawsThem()
      throws IOException, InterruptedException {
    needPoppler();
    Plate plate = PaperPlates.bittern();
    PageSet set =
        Template.of(plate, List.of(), UsualPrint.on(Paper.LETTER).withFace(Face.BACK), Stamp.NONE)
            .pages();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    int measured = 0;
    for (int i = 0; i < set.tiles().size(); i++) {
      double height = set.pages().get(i).height();
      measured += measure(samples, set, i, PrintedPage.byPoppler(pdf, i, DPI, height));
    }
    assertTrue(measured > 300, "measured " + measured);
  }

  @Test
  void aSmallPlateOnOnePageOfItsOwnSizeIsTrue() throws IOException {
    Plate plate = PaperPlates.dunlin();
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).fullSize();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    assertEquals(1, set.pages().size());
    assertTrue(measure(samples, set, 0, PrintedPage.byPdfBox(pdf, 0, DPI, 1, 1)) > 50);
  }

  /** More than twenty pages: at 100 dpi, where a dot is 0.25 mm. */
  @Test
  void aPlateOfMoreThanAMetreIsTrueOnAllItsPages() throws IOException {
    Plate plate = PaperPlates.bittern(1400, 800, felloe.plate.MaterialKind.WOOD);
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    assertTrue(set.tiles().size() > 20);
    int measured = 0;
    for (int i = 0; i < set.tiles().size(); i += 3) {
      measured += measure(samples, set, i, PrintedPage.byPdfBox(pdf, i, 100, 1, 1));
    }
    assertTrue(measured > 300, "measured " + measured);
  }

  @Test
  void aCorrectedPageIsTrueOnThePrinterThatItWasCorrectedFor() throws IOException {
    Plate plate = PaperPlates.heron();
    TemplateOptions plain = UsualPrint.on(Paper.A4);
    double bar = Template.bar(Paper.A4, plain.margin());
    BarReading reading = new BarReading(bar * 0.962, bar * 1.03);
    PageSet set = Template.of(plate, List.of(), plain.withBars(reading), Stamp.NONE).pages();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    assertTrue(measure(samples, set, 0, PrintedPage.byPdfBox(pdf, 0, DPI, 0.962, 1.03)) > 100);
  }

  @Test
  void tilesPutTogetherByTheirPrintedMarksGiveTheOutlineBack() throws IOException {
    Plate plate = PaperPlates.bittern();
    PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
    byte[] pdf = PdfWriter.write(set);
    List<Sample> samples = samples(plate, set);
    int tiles = set.tiles().size();
    assertTrue(tiles >= 6, tiles + " pages");
    List<PrintedPage> prints = new ArrayList<>();
    List<Map<String, Point>> marks = new ArrayList<>();
    for (int i = 0; i < tiles; i++) {
      prints.add(PrintedPage.byPdfBox(pdf, i, DPI, 1, 1));
      marks.add(marks(set, i, prints.get(i)));
    }
    // Where each page lies on the first one, found from the marks alone.
    Map<Integer, RigidTransform> laid = new HashMap<>(Map.of(0, RigidTransform.NONE));
    while (laid.size() < tiles) {
      for (int i = 0; i < tiles; i++) {
        for (int j = 0; j < tiles && laid.containsKey(i); j++) {
          RigidTransform onto = laid.get(i);
          if (!laid.containsKey(j)) {
            RigidTransform joined = joined(marks.get(j), marks.get(i));
            if (joined != null) {
              laid.put(j, joined.then(onto));
            }
          }
        }
      }
    }
    Point shift = shift(set.tiles().get(0));
    double worst = 0;
    int measured = 0;
    for (int i = 0; i < tiles; i++) {
      RigidTransform back = inverse(laid.get(i));
      Box clip = clip(set.tiles().get(i));
      for (Sample sample : samples) {
        Point onFirst = sample.at.plus(shift);
        Point onPage = back.of(onFirst);
        if (clip.grown(-1).contains(onPage) && sample.clear) {
          Point direction = back.of(onFirst.plus(sample.normal)).minus(onPage);
          double offset = prints.get(i).offset(onPage, direction, 0.5);
          assertTrue(Double.isFinite(offset), "no ink at " + sample.at);
          worst = Math.max(worst, Math.abs(offset));
          measured++;
        }
      }
    }
    assertTrue(measured > 600, "measured " + measured);
    assertTrue(worst <= DOT, "off by " + worst + " mm");
  }

  /** The motion that lays the marks of one page on those of another; null without two in common. */
  private static RigidTransform joined(Map<String, Point> from, Map<String, Point> onto) {
    List<String> common = from.keySet().stream().filter(onto::containsKey).sorted().toList();
    if (common.size() < 2) {
      return null;
    }
    Point a = from.get(common.get(0));
    Point b = from.get(common.get(common.size() - 1));
    Point c = onto.get(common.get(0));
    Point d = onto.get(common.get(common.size() - 1));
    double turn = d.minus(c).angle() - b.minus(a).angle();
    assertEquals(0, Math.sin(turn), 1e-3);
    RigidTransform turned = RigidTransform.turn(turn);
    Point to = c.middle(d).minus(turned.of(a.middle(b)));
    return turned.then(RigidTransform.shift(to.x(), to.y()));
  }

  private static RigidTransform inverse(RigidTransform motion) {
    RigidTransform turn = RigidTransform.turn(-motion.turn());
    Point back = turn.of(motion.shift());
    return turn.then(RigidTransform.shift(-back.x(), -back.y()));
  }

  /** The middles of a page's marks as printed, each found from the ink of its arms. */
  private static Map<String, Point> marks(PageSet set, int page, PrintedPage print) {
    Map<String, Point> found = new HashMap<>();
    Page sheet = set.tiles().get(page);
    for (Registration mark : set.marks()) {
      if (mark.first().equals(sheet.name()) || mark.second().equals(sheet.name())) {
        Point at = mark.at().plus(shift(sheet));
        double x = 0;
        double y = 0;
        for (double arm : new double[] {-3.2, 3.2}) {
          x += print.offset(at.plus(new Point(0, arm)), new Point(1, 0), 0.6) / 2;
          y += print.offset(at.plus(new Point(arm, 0)), new Point(0, 1), 0.6) / 2;
        }
        found.put(mark.label(), at.plus(new Point(x, y)));
      }
    }
    return found;
  }

  private static void needPoppler() {
    if (!PrintedPage.hasPoppler()) {
      assertTrue(!"true".equals(System.getenv("CI")), "pdftoppm must be on the PATH where CI=true");
      System.err.println("pdftoppm is not on the PATH: pages were not measured with poppler");
      Assumptions.abort("pdftoppm is not on the PATH");
    }
  }

  private static int measure(List<Sample> samples, PageSet set, int page, PrintedPage print) {
    Page sheet = set.tiles().get(page);
    Point shift = shift(sheet);
    Box clip = clip(sheet).grown(-1);
    double reach = Math.max(0.5, 2.2 * print.dot());
    double worst = 0;
    int measured = 0;
    for (Sample sample : samples) {
      Point at = sample.at.plus(shift);
      if (sample.clear && clip.contains(at)) {
        double offset = print.offset(at, sample.normal, reach);
        assertTrue(Double.isFinite(offset), "no ink at " + sample.at);
        worst = Math.max(worst, Math.abs(offset));
        measured++;
      }
    }
    assertTrue(worst <= print.dot(), "page " + sheet.name() + " off by " + worst + " mm");
    bars(set, page, print);
    return measured;
  }

  /** The check bars between the middles of their end ticks. */
  private static void bars(PageSet set, int page, PrintedPage print) {
    List<Mark> bars =
        set.pages().get(page).parts().get(1).drawing().layers().stream()
            .filter(layer -> layer.name().equals("check-bars"))
            .findFirst()
            .orElseThrow()
            .marks();
    List<Segment> lines =
        bars.stream()
            .filter(m -> m instanceof Mark.Stroke)
            .map(m -> ((Mark.Stroke) m).segments().get(0))
            .filter(s -> Math.abs(s.length() - set.bar()) < 1e-9)
            .toList();
    assertEquals(2, lines.size());
    for (Segment line : lines) {
      Point along = line.tangent(0);
      // The end ticks stand to the left of both bars' direction.
      Point tick = along.left().times(3.2);
      double start = print.offset(line.from().plus(tick), along, 0.6);
      double end = print.offset(line.to().plus(tick), along, 0.6);
      assertEquals(set.bar(), line.length() + end - start, print.dot(), "bar");
    }
  }

  private record Sample(Point at, Point normal, boolean clear) {}

  /** Points of the plate's own lines, in the drawing's coordinates. */
  private static List<Sample> samples(Plate plate, PageSet set) {
    List<Contour> contours = new ArrayList<>();
    contours.add(plate.outline());
    plate.windows().forEach(window -> contours.add(window.contour()));
    plate.holes().forEach(hole -> contours.add(hole.contour()));
    List<Mark> marks = new ArrayList<>(set.drawing().marks());
    List<Sample> samples = new ArrayList<>();
    for (Contour contour : contours) {
      for (Segment exact : contour.segments()) {
        Segment segment = exact.moved(set.motion());
        int n = (int) Math.max(5, Math.ceil(segment.length() / 2.5));
        for (int i = 0; i < n; i++) {
          Point p = segment.at((i + 0.5) / n);
          samples.add(new Sample(p, segment.tangent((i + 0.5) / n).left(), clear(p, marks, set)));
        }
      }
    }
    return samples;
  }

  /** Whether only one line runs near a point. */
  private static boolean clear(Point p, List<Mark> marks, PageSet set) {
    int near = 0;
    for (Mark mark : marks) {
      if (!mark.box().grown(CLEAR).contains(p)) {
        continue;
      }
      if (!(mark instanceof Mark.Stroke stroke)) {
        return false;
      }
      if (stroke.segments().stream().mapToDouble(s -> s.distance(p)).min().orElse(9) < CLEAR) {
        near++;
      }
    }
    boolean offSeams =
        set.grid().seamsAcross().stream().allMatch(x -> Math.abs(p.x() - x) > 5)
            && set.grid().seamsUp().stream().allMatch(y -> Math.abs(p.y() - y) > 5);
    return near == 1 && offSeams;
  }

  private static Point shift(Page page) {
    return page.parts().get(0).shift();
  }

  private static Box clip(Page page) {
    return page.parts().get(0).clip().orElseThrow();
  }
}
