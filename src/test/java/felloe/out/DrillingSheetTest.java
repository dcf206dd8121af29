package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Report;
import felloe.drawing.Cautions;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.template.BarReading;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;

/**
 * Centre marks of drilling sheets drawn as dots at 600 dpi and measured, on plates with holes at
 * random places. The bound is one dot.
 */
class DrillingSheetTest {

  private static final long SEED = 31_007L;
  private static final double DPI = 600;
  private static final double DOT = 25.4 / DPI;
  private static final Report WORK =
      new Report("drilling sheet", List.of(new Block.Paragraph("Drill.")));

  @Test
  void everyCentreCrossIsTrueWhenPopplerDrawsIt() throws IOException, InterruptedException {
    if (!PrintedPage.hasPoppler()) {
      assertTrue(!"true".equals(System.getenv("CI")), "pdftoppm must be on the PATH where CI=true");
      System.err.println("pdftoppm is not on the PATH: pages were not measured with poppler");
      Assumptions.abort("pdftoppm is not on the PATH");
    }
    Plate plate = PaperPlates.withHoles(300, 210, new Random(SEED));
    PageSet set =
        Template.drilling(
            plate,
            UsualPrint.on(Paper.A4).withFace(Face.BACK),
            WORK,
            List.of(Cautions.USE),
            Stamp.NONE);
    byte[] pdf = PdfWriter.write(set);
    Set<String> found = new HashSet<>();
    for (int i = 0; i < set.tiles().size(); i++) {
      double height = set.pages().get(i).height();
      crosses(plate, set, i, PrintedPage.byPoppler(pdf, i, DPI, height), found);
    }
    assertEquals(plate.holes().size(), found.size(), "seed " + SEED + ": " + found);
  }

  @Test
  void everyCentreCrossIsTrueOnAPrinterThatItWasCorrectedFor() throws IOException {
    Plate plate = PaperPlates.withHoles(260, 190, new Random(SEED + 1));
    double bar = Template.bar(Paper.LETTER, TemplateOptions.MARGIN);
    TemplateOptions options =
        UsualPrint.on(Paper.LETTER).withBars(new BarReading(bar * 0.97, bar * 1.02));
    PageSet set = Template.drilling(plate, options, WORK, List.of(Cautions.USE), Stamp.NONE);
    byte[] pdf = PdfWriter.write(set);
    Set<String> found = new HashSet<>();
    for (int i = 0; i < set.tiles().size(); i++) {
      crosses(plate, set, i, PrintedPage.byPdfBox(pdf, i, DPI, 0.97, 1.02), found);
    }
    assertEquals(plate.holes().size(), found.size(), "seed " + SEED + ": " + found);
  }

  /** Both lines of each cross, at points along their arms; the median leaves other ink out. */
  private static void crosses(
      Plate plate, PageSet set, int page, PrintedPage print, Set<String> found) {
    Page.Placed part = set.tiles().get(page).parts().get(0);
    for (Hole hole : plate.holes()) {
      Point at = set.motion().of(hole.centre()).plus(part.shift());
      if (!part.clip().orElseThrow().grown(-hole.diameter()).contains(at)) {
        continue;
      }
      // A wide opening has a small cross of 5 mm.
      double edge = hole.diameter() > 30 ? 2 : hole.diameter() / 2;
      List<Double> across = new ArrayList<>();
      List<Double> up = new ArrayList<>();
      for (double away = edge + 0.5; away < edge + 1.7; away += 0.15) {
        for (double side : new double[] {away, -away}) {
          across.add(print.offset(at.plus(new Point(0, side)), new Point(1, 0), 0.4));
          up.add(print.offset(at.plus(new Point(side, 0)), new Point(0, 1), 0.4));
        }
      }
      assertEquals(0, median(across), DOT, hole.label());
      assertEquals(0, median(up), DOT, hole.label());
      found.add(hole.label());
    }
  }

  private static double median(List<Double> offsets) {
    List<Double> read = offsets.stream().filter(Double::isFinite).sorted().toList();
    assertTrue(read.size() >= offsets.size() / 2, "read " + read.size());
    return read.get(read.size() / 2);
  }
}
