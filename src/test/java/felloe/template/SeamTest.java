package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Where seams fall, and what is printed along them. */
class SeamTest {

  private static final Paper[] PAPERS = {Paper.A4, Paper.A3, Paper.A5, Paper.LETTER, Paper.LEGAL};

  private static List<Plate> plates() {
    return List.of(
        PaperPlates.bittern(),
        PaperPlates.heron(),
        PaperPlates.dunlin(),
        PaperPlates.rail(390),
        PaperPlates.bittern(640, 430, MaterialKind.METAL));
  }

  /** Every layout of as many pages, tried in steps of a quarter millimetre, is no better. */
  @Test
  void noLayoutOfAsManyPagesCutsFewerHolesOrKeepsFartherFromThem() {
    Random random = new Random(20250731);
    for (int round = 0; round < 60; round++) {
      double width = 250 + random.nextInt(400);
      Plate plate = PaperPlates.withHoles(width, 0.7 * width, random);
      Paper paper = PAPERS[random.nextInt(PAPERS.length)];
      String which = "round " + round + ", " + paper + ", width " + width;
      PageSet set = Template.of(plate, List.of(), UsualPrint.on(paper), Stamp.NONE).pages();
      Grid grid = set.grid();
      Box span = plate.outline().box().grown(2 + plate.making().roughAllowance());
      int cut = count(plate, set.motion(), grid.seamsAcross(), grid.seamsUp());
      double distance = distance(plate, set.motion(), grid.seamsAcross(), grid.seamsUp());
      assertEquals(cut, set.cutHoles(), which);
      assertEquals(distance, set.seamDistance(), 1e-9, which);
      if (!grid.leftOut().isEmpty()) {
        continue;
      }
      double slackX = grid.tile(0, grid.columns() - 1).maxX() - grid.corner().x() - span.width();
      double slackY = grid.corner().y() - grid.tile(grid.rows() - 1, 0).minY() - span.height();
      int leastCut = 0;
      double most = Double.POSITIVE_INFINITY;
      for (boolean across : new boolean[] {true, false}) {
        double slack = across ? slackX : slackY;
        int bestCut = Integer.MAX_VALUE;
        double bestDistance = 0;
        for (double s = 0; s <= slack; s += 0.25) {
          double at = s;
          List<Double> seams =
              across
                  ? grid.seamsAcross().stream()
                      .map(x -> x - grid.corner().x() + span.minX() - at)
                      .toList()
                  : grid.seamsUp().stream()
                      .map(y -> y - grid.corner().y() + span.maxY() + at)
                      .toList();
          List<Double> none = List.of();
          int c = count(plate, set.motion(), across ? seams : none, across ? none : seams);
          double d = distance(plate, set.motion(), across ? seams : none, across ? none : seams);
          if (c < bestCut || (c == bestCut && d > bestDistance)) {
            bestCut = c;
            bestDistance = d;
          }
        }
        leastCut += bestCut;
        most = Math.min(most, bestDistance);
      }
      assertTrue(cut <= leastCut, which + ": cuts " + cut + ", could cut " + leastCut);
      // Open pages also need room for bars and words.
      Box tile = grid.tile(0, 0);
      boolean open = Math.abs(Math.max(tile.width(), tile.height()) - paper.height() + 20) < 1e-6;
      if (cut == leastCut && !open) {
        assertTrue(distance >= most - 1e-3, which + ": " + distance + " could be " + most);
      }
    }
  }

  private static int count(Plate plate, RigidTransform motion, List<Double> xs, List<Double> ys) {
    int count = 0;
    for (Hole hole : plate.holes()) {
      Point c = motion.of(hole.centre());
      double r = hole.diameter() / 2 + SeamAxis.CLEAR;
      count += (int) xs.stream().filter(x -> Math.abs(x - c.x()) < r).count();
      count += (int) ys.stream().filter(y -> Math.abs(y - c.y()) < r).count();
    }
    return count;
  }

  private static double distance(
      Plate plate, RigidTransform motion, List<Double> xs, List<Double> ys) {
    double least = Double.POSITIVE_INFINITY;
    for (Hole hole : plate.holes()) {
      Point c = motion.of(hole.centre());
      for (double x : xs) {
        least = Math.min(least, Math.abs(x - c.x()));
      }
      for (double y : ys) {
        least = Math.min(least, Math.abs(y - c.y()));
      }
    }
    return least;
  }

  @Test
  void tilesCoverThePlateAndNeighboursShareTheOverlap() {
    for (Plate plate : plates()) {
      for (Paper paper : PAPERS) {
        Grid grid = Template.of(plate, List.of(), UsualPrint.on(paper), Stamp.NONE).pages().grid();
        Box all = grid.tile(0, 0).union(grid.tile(grid.rows() - 1, grid.columns() - 1));
        Box box = plate.outline().box().grown(plate.making().roughAllowance());
        assertTrue(all.contains(new Point(box.minX(), box.minY())));
        assertTrue(all.contains(new Point(box.maxX(), box.maxY())));
        if (grid.columns() > 1) {
          assertEquals(10, grid.tile(0, 0).maxX() - grid.tile(0, 1).minX(), 1e-9);
          assertEquals(grid.seamAfterColumn(0), grid.tile(0, 1).minX() + 5, 1e-9);
        }
        if (grid.rows() > 1) {
          assertEquals(10, grid.tile(1, 0).maxY() - grid.tile(0, 0).minY(), 1e-9);
          assertEquals(grid.seamAfterRow(0), grid.tile(0, 0).minY() + 5, 1e-9);
        }
      }
    }
  }

  @Test
  void aPageIsLeftOutOnlyWhereNothingIsDrawnAndTheRestHoldsTogether() {
    Plate round = PaperPlates.rail(1000);
    PageSet set = Template.of(round, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
    Grid grid = set.grid();
    assertFalse(grid.leftOut().isEmpty(), "a circle leaves its corners blank");
    double reach = 500 + round.making().roughAllowance();
    for (int tile : grid.leftOut()) {
      Box box = grid.tile(tile / grid.columns(), tile % grid.columns());
      double dx = Math.max(0, Math.max(box.minX(), -box.maxX()));
      double dy = Math.max(0, Math.max(box.minY(), -box.maxY()));
      assertTrue(Math.hypot(dx, dy) > reach, "tile " + tile);
    }
    assertEquals(grid.count(), set.tiles().size());
    String map = texts(set.tiles().get(0)).replace('\n', ' ');
    assertTrue(map.contains("crossed pages are not printed"), map);
  }

  @Test
  void bothPagesOfASeamPrintTheSameMarkAtTheSamePlace() {
    for (Plate plate : plates()) {
      PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
      Set<String> labels = new HashSet<>();
      for (Registration mark : set.marks()) {
        assertTrue(labels.add(mark.label()), "label twice");
        for (String name : List.of(mark.first(), mark.second())) {
          Page page =
              set.tiles().stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow();
          Page.Placed part = page.parts().get(0);
          Point onPage = mark.at().plus(part.shift());
          Box clip = part.clip().orElseThrow();
          assertTrue(clip.grown(-4).contains(onPage), "the whole mark is on " + name);
          long circles =
              layer(part.drawing(), "registration").stream()
                  .filter(m -> m instanceof Mark.Stroke)
                  .map(m -> ((Mark.Stroke) m).segments().get(0))
                  .filter(s -> s.box().centre().near(mark.at(), 1e-9) && s.curvature() != 0)
                  .count();
          assertEquals(1, circles);
          long numbers =
              layer(part.drawing(), "registration").stream()
                  .filter(m -> m instanceof Mark.Label)
                  .map(m -> (Mark.Label) m)
                  .filter(l -> l.text().equals(mark.label()) && l.at().distance(mark.at()) < 6)
                  .count();
          assertEquals(4, numbers);
        }
      }
      assertEnoughMarks(set);
    }
  }

  /** Two marks a seam of two pages, so that a page can be laid straight. */
  private static void assertEnoughMarks(PageSet set) {
    Grid grid = set.grid();
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        String name = Grid.name(row, column);
        for (int[] next : new int[][] {{row, column + 1}, {row + 1, column}}) {
          if (grid.has(row, column) && grid.has(next[0], next[1])) {
            String other = Grid.name(next[0], next[1]);
            long count =
                set.marks().stream()
                    .filter(m -> m.first().equals(name) && m.second().equals(other))
                    .count();
            assertTrue(count >= 2, name + " to " + other + ": " + count);
          }
        }
      }
    }
  }

  /** Pages are joined by their marks: no bar, title or text is printed over one. */
  @Test
  void nothingBesideTheDrawingStandsOnAMark() {
    int open = 0;
    for (int width = 260; width <= 340; width += 10) {
      for (int height = 200; height <= 280; height += 10) {
        Plate plate = PaperPlates.bittern(width, height, MaterialKind.LAMINATE);
        PageSet set = Template.of(plate, List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
        for (Page page : set.pages()) {
          Page.Placed lines = page.parts().get(0);
          for (Registration mark : set.marks()) {
            if (mark.first().equals(page.name()) || mark.second().equals(page.name())) {
              open++;
              Point middle = mark.at().plus(lines.shift());
              Box at = Box.of(middle, middle).grown(3.5);
              for (Mark word : page.parts().get(1).drawing().marks()) {
                assertFalse(
                    word instanceof Mark.Label && word.box().touches(at),
                    width + "x" + height + " " + page.name() + " mark " + mark.label());
              }
            }
          }
        }
      }
    }
    assertTrue(open > 100);
  }

  @Test
  void everyTrimLineHasItsGlueLineAtTheSamePlace() {
    PageSet set =
        Template.of(PaperPlates.bittern(), List.of(), UsualPrint.on(Paper.A5), Stamp.NONE).pages();
    List<String> trims = new ArrayList<>();
    List<String> glues = new ArrayList<>();
    for (Page page : set.tiles()) {
      String texts = texts(page);
      for (Mark mark : layer(page.parts().get(0).drawing(), "seams")) {
        if (mark instanceof Mark.Stroke stroke) {
          (stroke.type() == LineType.THIN ? trims : glues).add(stroke.segments().toString());
        }
      }
      boolean firstColumn = page.name().endsWith("1");
      boolean firstRow = page.name().startsWith("A");
      assertEquals(!firstColumn || !firstRow, texts.contains("trim here"), page.name());
    }
    assertEquals(trims.size(), glues.size());
  }

  /** What a tile's edge cuts off is read on a neighbour, and is not there in part. */
  @Test
  void noWordIsCutOffThatStandsWholeOnAnotherPage() {
    int left = 0;
    for (Plate plate : plates()) {
      for (Paper paper : PAPERS) {
        PageSet set = Template.of(plate, List.of(), UsualPrint.on(paper), Stamp.NONE).pages();
        Grid grid = set.grid();
        List<Box> tiles = new ArrayList<>();
        for (int i = 0; i < grid.rows() * grid.columns(); i++) {
          if (grid.has(i / grid.columns(), i % grid.columns())) {
            tiles.add(grid.tile(i / grid.columns(), i % grid.columns()));
          }
        }
        for (int i = 0; i < tiles.size(); i++) {
          Box tile = tiles.get(i);
          List<Mark> there = set.tiles().get(i).parts().get(0).drawing().marks();
          for (Mark mark : set.drawing().marks()) {
            boolean whole = tiles.stream().anyMatch(other -> other.contains(mark.box()));
            boolean cut = mark.box().touches(tile) && !tile.contains(mark.box());
            if (mark instanceof Mark.Label && whole && cut) {
              assertFalse(there.contains(mark), mark.toString());
              left++;
            }
          }
        }
      }
    }
    assertTrue(left > 0, "no word of these plates lies on a tile's edge");
  }

  @Test
  void pagesAreNamedByRowAndColumn() {
    assertEquals("A1", Grid.name(0, 0));
    assertEquals("B3", Grid.name(1, 2));
    assertEquals("Z10", Grid.name(25, 9));
    assertEquals("AA1", Grid.name(26, 0));
    PageSet set =
        Template.of(PaperPlates.rail(270), List.of(), UsualPrint.on(Paper.A4), Stamp.NONE).pages();
    assertEquals(List.of("A1", "A2", "B1", "B2"), set.tiles().stream().map(Page::name).toList());
  }

  @Test
  void turningIsTriedOnlyWhereAskedForAndSavesPages() {
    Plate tall = PaperPlates.bittern(170, 480, MaterialKind.METAL);
    TemplateOptions plain = UsualPrint.on(Paper.A3);
    PageSet asItStands = Template.of(tall, List.of(), plain, Stamp.NONE).pages();
    PageSet turned = Template.of(tall, List.of(), plain.withTurning(true), Stamp.NONE).pages();
    assertEquals(0, asItStands.motion().turn());
    assertTrue(turned.tiles().size() <= asItStands.tiles().size());
    // A slender bar on the slant: no page holds it as it stands, one does when it is turned.
    Contour bar =
        PaperPlates.rounded(0, 0, 260, 40, 10).moved(RigidTransform.turn(Math.toRadians(40)));
    Plate slant = PaperPlates.of(bar, List.of());
    TemplateOptions a4 = UsualPrint.on(Paper.A4);
    assertTrue(Template.of(slant, List.of(), a4, Stamp.NONE).pages().tiles().size() > 1);
    assertEquals(
        1, Template.of(slant, List.of(), a4.withTurning(true), Stamp.NONE).pages().tiles().size());
  }

  @Test
  void aSeamThroughAHoleIsAvoidedWhereALayoutAllowsIt() {
    // Holes all along the middle: the seam must still miss them.
    List<Hole> holes = new ArrayList<>();
    for (int i = -5; i <= 5; i++) {
      holes.add(new Hole("H" + (i + 6), HoleRole.OTHER, new Point(7.3 * i, 0), 6, Place.BUILT_IN));
    }
    Plate plate = PaperPlates.of(PaperPlates.rounded(0, 0, 340, 120, 20), holes);
    PageSet set =
        Template.of(plate, List.of(), UsualPrint.on(Paper.A4).withFace(Face.BACK), Stamp.NONE)
            .pages();
    assertEquals(0, set.cutHoles());
    assertTrue(set.seamDistance() >= 3, "seam " + set.seamDistance());
  }

  static List<Mark> layer(Drawing drawing, String name) {
    return drawing.layers().stream()
        .filter(layer -> layer.name().equals(name))
        .flatMap(layer -> layer.marks().stream())
        .toList();
  }

  static String texts(Page page) {
    StringBuilder all = new StringBuilder();
    for (Page.Placed part : page.parts()) {
      for (Mark mark : part.drawing().marks()) {
        if (mark instanceof Mark.Label label) {
          all.append(label.text()).append('\n');
        }
      }
    }
    return all.toString();
  }
}
