package felloe.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.DimensionStyle;
import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.TextWidth;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.job.Task;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.report.CardLead;
import felloe.report.CardSheet;
import felloe.service.CardOutcome;
import felloe.service.Jobs;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages of job cards: nothing leaves the paper, no two lines of words lie on each other. */
class CardPagesTest {

  private static List<Page> pages(CardOutcome outcome, Paper paper) {
    List<Optional<CardLead>> leads = new ArrayList<>();
    for (Task task : outcome.job().order().tasks()) {
      leads.add(Optional.of(new CardLead("plate-print-check-" + paper.title() + ".pdf", 12)));
    }
    CardSheet sheet =
        new CardSheet(outcome, leads, Jobs.CALLS, paper, Jobs.finished(outcome.study()));
    return PageRenderer.pages(sheet.report(), paper);
  }

  private static void holds(List<Page> pages, Paper paper) {
    for (Page page : pages) {
      Box inside = new Box(8, 8, paper.width() - 8, paper.height() - 8);
      List<Mark.Label> words = new ArrayList<>();
      List<Line> lines = new ArrayList<>();
      for (Page.Placed part : page.parts()) {
        for (Mark mark : part.drawing().marks()) {
          Box box = mark.box();
          String about = page.name() + " on " + paper.title() + ": " + mark;
          assertTrue(
              box.minX() > inside.minX()
                  && box.minY() > inside.minY()
                  && box.maxX() < inside.maxX()
                  && box.maxY() < inside.maxY(),
              about);
          if (mark instanceof Mark.Label label && !label.hollow()) {
            words.add(label);
          } else if (mark instanceof Mark.Stroke stroke) {
            stroke.segments().stream()
                .filter(Line.class::isInstance)
                .forEach(segment -> lines.add((Line) segment));
          }
        }
      }
      for (int i = 0; i < words.size(); i++) {
        Mark.Label label = words.get(i);
        for (int k = 0; k < i; k++) {
          Mark.Label other = words.get(k);
          assertTrue(!meet(label, other), page.name() + ": " + label + " lies on " + other);
        }
        for (Line line : lines) {
          assertTrue(!crosses(line, label), page.name() + ": " + line + " runs through " + label);
        }
      }
    }
  }

  /** Whether the capitals of two level labels meet. */
  private static boolean meet(Mark.Label a, Mark.Label b) {
    return a.turn() == 0 && b.turn() == 0 && capitals(a).touches(capitals(b));
  }

  private static Box capitals(Mark.Label label) {
    Point start = label.start();
    double wide = TextWidth.of(label.text(), label.height());
    return new Box(start.x(), start.y() + 0.1, start.x() + wide, start.y() + label.height() - 0.1);
  }

  /** Whether an upright or level line runs through the capitals of a level label. */
  private static boolean crosses(Line line, Mark.Label label) {
    if (label.turn() != 0) {
      return false;
    }
    Box capitals = capitals(label);
    if (!capitals.touches(line.box())) {
      return false;
    }
    for (int i = 0; i <= 200; i++) {
      if (capitals.contains(line.at(i / 200.0))) {
        return true;
      }
    }
    return false;
  }

  @Execution(ExecutionMode.CONCURRENT)
  @ParameterizedTest
  @CsvSource({
    "heron, A4", "heron, LETTER", "heron, A3", "heron, A5",
    "bittern, A4", "bittern, LETTER", "bittern, A3", "bittern, A5",
    "dunlin, A4", "dunlin, LETTER", "dunlin, A3", "dunlin, A5",
    "avocet, A4", "avocet, LETTER", "avocet, A3", "avocet, A5"
  })
  void everyDemoKeepsToItsPages(String shape, Paper paper) {
    List<Page> pages = pages(Jobs.on(paper, shape), paper);
    holds(pages, paper);
    assertTrue(pages.size() >= 2, "pages " + pages.size());
    if (paper == Paper.A4) {
      assertTrue(pages.size() <= 8, "pages " + pages.size());
    }
    String first = words(pages.get(0));
    String scale = first.replaceAll("(?s).*scale \\(ISO 5455\\)\n([0-9]+:[0-9]+)\n.*", "$1");
    assertTrue(scale.matches("(1|2|5|10):(1|2|5|10|20|50|100|200)"), first);
    assertTrue(first.contains("1 of " + pages.size()), first);
    pages
        .subList(1, pages.size())
        .forEach(page -> assertTrue(!words(page).contains("ISO 5455"), page.name()));
  }

  /** Loads that are reckoned bring the proof load and its table. */
  @Execution(ExecutionMode.CONCURRENT)
  @ParameterizedTest
  @ValueSource(strings = {"heron", "bittern", "dunlin"})
  void aCardWithItsLoadsKeepsToItsPagesOnAnyPaper(String shape) {
    CardOutcome outcome = Jobs.loaded(shape);
    assertTrue(outcome.load().isPresent());
    for (Paper paper : List.of(Paper.A4, Paper.LETTER, Paper.A3, Paper.A5)) {
      List<Page> pages = pages(outcome, paper);
      holds(pages, paper);
      int most = paper == Paper.A4 ? 8 : paper == Paper.LETTER ? 9 : 20;
      assertTrue(pages.size() <= most, paper + " takes " + pages.size());
      String all = String.join("", pages.stream().map(CardPagesTest::words).toList());
      assertEquals(outcome.job().parts().proof().isPresent(), all.contains("rim reads"), all);
    }
  }

  /** What is engraved has no figure on the drawing: place, size, line and depth are in a table. */
  @Test
  void engravingsStandInATableOfTheirOwn() {
    CardOutcome outcome =
        Jobs.on(
            Paper.A4,
            "dunlin",
            "engravings=[{text: DUNLIN, at: [0, 124], height: 5}, {mark: arrow, at: [0, -124],"
                + " height: 7, face: back}]");
    List<Page> pages = pages(outcome, Paper.A4);
    holds(pages, Paper.A4);
    String all = String.join("", pages.stream().map(CardPagesTest::words).toList());
    for (Engraving engraving : outcome.plate().engravings()) {
      Box box = engraving.box();
      String row =
          String.join(
              "\n",
              engraving.label(),
              engraving.what(),
              engraving.face() == Face.FRONT ? "front" : "back",
              Numbers.fixed(box.centre().x(), 2),
              Numbers.fixed(box.centre().y(), 2).replace('-', '\u2212'),
              Numbers.fixed(box.width(), 2),
              Numbers.fixed(box.height(), 2),
              Numbers.brief(engraving.lineWidth(), 2),
              Numbers.brief(engraving.depth(), 2));
      assertTrue(all.contains(row), row + " in " + all);
    }
  }

  private static String words(Page page) {
    StringBuilder text = new StringBuilder();
    page.parts().stream()
        .flatMap(part -> part.drawing().marks().stream())
        .filter(Mark.Label.class::isInstance)
        .forEach(mark -> text.append(((Mark.Label) mark).text()).append('\n'));
    return text.toString();
  }

  @ParameterizedTest
  @CsvSource({"A4", "A5", "LETTER"})
  void aPlateThatFailsIsStampedAcrossItsDrawingAndSaysSoFirst(Paper paper) {
    CardOutcome outcome =
        Jobs.on(paper, "heron", "bolt_circles[0]={hub: 6x70-m5, diameter: 6.6}", "bore=62");
    assertTrue(outcome.stops());
    List<Page> pages = pages(outcome, paper);
    holds(pages, paper);
    String first = words(pages.get(0)) + words(pages.get(1));
    assertTrue(first.startsWith("DO NOT MAKE IT YET. The plate FAILS"), first);
    assertTrue(first.contains("\nDO NOT CUT\n"), first);
    long large =
        pages.stream()
            .flatMap(page -> page.parts().stream())
            .flatMap(part -> part.drawing().marks().stream())
            .filter(m -> m instanceof Mark.Label l && l.hollow() && l.height() == 10)
            .count();
    assertTrue(large >= 2, "large letters " + large);
  }

  /** A drawing that is made smaller on the page would have another scale than it says. */
  @ParameterizedTest
  @CsvSource({"heron, A4", "bittern, A3", "dunlin, A5", "avocet, LETTER"})
  void theDrawingStandsOnThePageAtItsScale(String shape, Paper paper) {
    List<Page> pages = pages(Jobs.on(paper, shape), paper);
    List<Double> heights =
        pages.subList(0, 2).stream()
            .flatMap(page -> page.parts().stream())
            .flatMap(part -> part.drawing().marks().stream())
            .filter(m -> m instanceof Mark.Label l && l.turn() != 0)
            .map(m -> ((Mark.Label) m).height())
            .toList();
    assertTrue(!heights.isEmpty(), "no upright dimension");
    heights.forEach(
        height ->
            assertTrue(
                height == DimensionStyle.TEXT || height == 2.5,
                "no height of ISO 3098: " + height));
  }
}
