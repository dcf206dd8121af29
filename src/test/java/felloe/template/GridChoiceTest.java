package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Correction;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Which pages a template takes: the hub on one page, no seam in a hole, few pages. */
class GridChoiceTest {

  private static final long SEED = 76_2811L;
  private static final Paper[] PAPERS = {Paper.A4, Paper.LETTER, Paper.A5, Paper.A3};

  /** A seam within a hole was seen in 4 of 76 random kits, and at a hole's very centre. */
  @Test
  void noSeamOfASeededShapeRunsThroughAHoleOrTheHubPattern() {
    Random random = new Random(SEED);
    for (int round = 0; round < 76; round++) {
      double width = 240 + random.nextInt(160);
      double height = 200 + random.nextInt(120);
      Plate plate = PaperPlates.bittern(width, height, MaterialKind.METAL);
      Paper paper = PAPERS[random.nextInt(PAPERS.length)];
      TemplateOptions options =
          UsualPrint.on(paper)
              .withTurning(round % 4 == 0)
              .withFace(round % 2 == 0 ? Face.FRONT : Face.BACK);
      PageSet set = Template.of(plate, List.of(), options, Stamp.NONE).pages();
      String which = "seed " + SEED + " round " + round + " " + paper + " " + width + "x" + height;
      assertEquals(0, set.cutHoles(), which);
      List<Integer> hub = new ArrayList<>();
      for (Hole hole : plate.holes()) {
        Point at = set.motion().of(hole.centre());
        int on = page(set.grid(), Box.of(at, at).grown(hole.diameter() / 2));
        assertTrue(on >= 0, which + ": a seam runs through " + hole.label());
        if (hole.role() == HoleRole.BOLT || hole.role() == HoleRole.BORE) {
          hub.add(on);
        }
      }
      assertEquals(1, hub.stream().distinct().count(), which + ": the hub is parted: " + hub);
    }
  }

  /** The one tile, as it is seen when joined, that holds a box; negative when none does. */
  private static int page(Grid grid, Box box) {
    for (int i = 0; i < grid.rows() * grid.columns(); i++) {
      Box seen = grid.seen(i / grid.columns(), i % grid.columns());
      if (seen.contains(new Point(box.minX(), box.minY()))
          && seen.contains(new Point(box.maxX(), box.maxY()))) {
        return i;
      }
    }
    return -1;
  }

  @Test
  void barsAndWordsStandBesideTheDrawingWhereThatSavesPages() {
    // A ring of 250 mm on paper of 190 by 277 mm: two pages by its size alone.
    List<Window> windows =
        List.of(
            new Window(
                "W1", WindowUse.GRIP, PaperPlates.rounded(0, 75, 150, 50, 20), Place.BUILT_IN),
            new Window(
                "W2", WindowUse.GRIP, PaperPlates.rounded(0, -75, 150, 50, 20), Place.BUILT_IN));
    Plate ring = ring(windows);
    PageSet set = Template.of(ring, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    assertEquals(2, set.tiles().size());
    for (Page page : set.tiles()) {
      Page.Placed tile = page.parts().get(0);
      Page.Placed round = page.parts().get(page.parts().size() - 1);
      for (Mark mark : round.drawing().marks()) {
        Box at = mark.box();
        for (Mark line : tile.drawing().marks()) {
          if (line instanceof Mark.Stroke stroke && onEdge(tile, stroke)) {
            stroke.segments().stream()
                .flatMap(s -> IntStream.rangeClosed(0, 200).mapToObj(i -> s.at(i / 200.0)))
                .map(p -> p.plus(tile.shift()))
                .filter(p -> tile.clip().orElseThrow().contains(p))
                .forEach(p -> assertFalse(at.contains(p), page.name() + ": " + mark));
          }
        }
      }
    }
  }

  private static Plate ring(List<Window> windows) {
    Plate plain = PaperPlates.of(Contour.circle(Point.ORIGIN, 130), List.of());
    return new Plate(
        plain.name(),
        plain.title(),
        plain.revision(),
        plain.outline(),
        windows,
        List.of(),
        List.of(),
        plain.hub(),
        plain.stock(),
        plain.making(),
        List.of(),
        List.of());
  }

  private static boolean onEdge(Page.Placed tile, Mark.Stroke stroke) {
    return tile.drawing().layers().stream()
        .filter(l -> List.of("outline", "windows", "holes", "rough").contains(l.name()))
        .anyMatch(l -> l.marks().contains(stroke));
  }

  @Test
  void whatIsSaidOfTheBarsHoldsForEveryPaper() {
    for (Paper paper : Paper.values()) {
      double bar = Template.bar(paper, TemplateOptions.MARGIN);
      String[] example = BarWords.example(bar).split("x");
      BarReading reading =
          new BarReading(Double.parseDouble(example[0]), Double.parseDouble(example[1]));
      Correction correction = reading.against(bar, UsualPrint.ASKED.bars());
      assertEquals(bar / reading.across(), correction.x(), 1e-12, paper.title());
      TemplateOptions plain = UsualPrint.on(paper);
      Plate plate = PaperPlates.heron();
      String asked = "give both readings back as --bars ACROSSxUP";
      assertTrue(
          texts(Template.of(plate, List.of(), plain, Stamp.NONE).pages().pages()).contains(asked));
      TemplateOptions again = plain.withBars(reading);
      String corrected = texts(Template.of(plate, List.of(), again, Stamp.NONE).pages().pages());
      assertFalse(corrected.contains(asked), corrected);
      assertTrue(corrected.contains("must now read " + BarWords.length(bar)), corrected);
      Page sheet =
          CheckSheet.of(
              paper, TemplateOptions.MARGIN, Optional.of(reading), UsualPrint.ASKED.bars());
      assertFalse(texts(List.of(sheet)).contains(asked));
      Page first =
          CheckSheet.of(paper, TemplateOptions.MARGIN, Optional.empty(), UsualPrint.ASKED.bars());
      assertTrue(texts(List.of(first)).contains("such as " + BarWords.example(bar)));
      String plot = texts(Template.of(plate, List.of(), plain, Stamp.NONE).fullSize().pages());
      assertFalse(plot.contains("will be corrected"), plot);
      assertTrue(plot.contains("cannot be corrected"), plot);
    }
  }

  private static String texts(List<Page> pages) {
    StringBuilder all = new StringBuilder();
    pages.forEach(page -> all.append(SeamTest.texts(page).replace('\n', ' ')));
    return all.toString();
  }
}
