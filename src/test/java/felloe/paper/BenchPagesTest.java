package felloe.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.paper.BenchText.Column;
import felloe.paper.BenchText.Fill;
import felloe.paper.BenchText.Heading;
import felloe.paper.BenchText.Rows;
import felloe.paper.BenchText.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Text for the bench, set on pages. */
class BenchPagesTest {

  private static final long SEED = 990_127L;

  /** Fields of A5 upright, A4 upright and A4 across. */
  private static final List<Box> FIELDS =
      List.of(new Box(19, 60, 138, 200), new Box(19, 38, 200, 287), new Box(19, 32, 287, 200));

  private static List<Drawing> set(Box field, BenchText.Block... blocks) {
    return new BenchPages(field).of(new BenchText("work", List.of(blocks)));
  }

  private static List<Mark.Label> labels(Drawing page) {
    return page.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  private static Rows table(int rows, String words) {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      texts.add(List.of("row" + i, "pilot", "5.5", "2800", words));
    }
    return new Rows(
        List.of(
            new Column("no", Fill.FIGURES),
            new Column("step", Fill.WORDS),
            new Column("size", Fill.FIGURES),
            new Column("1/min", Fill.FIGURES),
            new Column("what to do", Fill.WRAPPED)),
        texts);
  }

  private static Rows blanks(int rows) {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      texts.add(List.of("row" + i, "H1", "H2", "outside", "40.00", "39.70", "40.42", ""));
    }
    return new Rows(
        List.of(
            new Column("", Fill.FIGURES),
            new Column("from", Fill.WORDS),
            new Column("to", Fill.WORDS),
            new Column("over", Fill.WORDS),
            new Column("true", Fill.FIGURES),
            new Column("least", Fill.FIGURES),
            new Column("most", Fill.FIGURES),
            new Column("reads", Fill.BLANK)),
        texts);
  }

  private static void holds(List<Drawing> pages, Box field, String told) {
    for (Drawing page : pages) {
      assertFalse(page.marks().isEmpty(), told);
      for (Mark mark : page.marks()) {
        Box box = mark.box();
        assertTrue(
            box.minX() >= field.minX() - 0.01
                && box.maxX() <= field.maxX() + 0.01
                && box.minY() >= field.minY() - 0.01
                && box.maxY() <= field.maxY() + 0.01,
            told + ": " + mark + " leaves " + field);
      }
      List<Mark.Label> labels = labels(page);
      for (int i = 0; i < labels.size(); i++) {
        for (int k = 0; k < i; k++) {
          assertFalse(
              labels.get(i).box().grown(-0.15).touches(labels.get(k).box().grown(-0.15)),
              told + ": '" + labels.get(i).text() + "' on '" + labels.get(k).text() + "'");
        }
      }
    }
  }

  @Test
  void nothingLeavesTheFieldOrStandsOnOtherWordsOnAnyPaper() {
    Random random = new Random(SEED);
    for (Box field : FIELDS) {
      for (int trial = 0; trial < 40; trial++) {
        List<BenchText.Block> blocks = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
          String words = "pilot drill ".repeat(1 + random.nextInt(20)).strip();
          switch (random.nextInt(6)) {
            case 0 -> blocks.add(new Heading(words));
            case 1 -> blocks.add(new Words(words));
            case 2 -> blocks.add(new BenchText.Steps(List.of(words, "one", words)));
            case 3 -> blocks.add(new BenchText.Framed(List.of(words, words)));
            case 4 -> blocks.add(table(1 + random.nextInt(30), words));
            default -> blocks.add(blanks(1 + random.nextInt(60)));
          }
        }
        List<Drawing> pages = set(field, blocks.toArray(BenchText.Block[]::new));
        holds(pages, field, "seed " + SEED + ", trial " + trial);
      }
    }
  }

  @Test
  void everyRowOfALongTableStandsOnceAndInOrderUnderARepeatedHead() {
    for (Box field : FIELDS) {
      for (Rows rows : List.of(table(300, "go on"), blanks(300))) {
        List<Drawing> pages = set(field, new Heading("Rows"), rows);
        List<String> found = new ArrayList<>();
        for (Drawing page : pages) {
          List<String> texts = labels(page).stream().map(Mark.Label::text).toList();
          assertTrue(texts.contains(rows.columns().get(1).head()));
          texts.stream().filter(text -> text.startsWith("row")).forEach(found::add);
        }
        assertEquals(300, found.size());
        for (int i = 0; i < 300; i++) {
          assertEquals("row" + i, found.get(i));
        }
      }
    }
  }

  @Test
  void whatFollowsAHeadingStaysWithItWhereItFitsOnAPage() {
    Box field = FIELDS.get(1);
    List<Drawing> pages =
        set(field, new Heading("First"), blanks(20), new Heading("Second"), blanks(14));
    assertEquals(2, pages.size());
    List<Mark.Label> second = labels(pages.get(1));
    assertEquals("Second", second.get(0).text());
    assertEquals(14, second.stream().filter(label -> label.text().startsWith("row")).count());
  }

  @Test
  void narrowTablesStandSideBySideWhereThePaperIsWide() {
    List<Mark.Label> labels = labels(set(FIELDS.get(2), blanks(20)).get(0));
    assertEquals(2, labels.stream().filter(label -> label.text().equals("reads")).count());
    assertEquals(1, set(FIELDS.get(2), blanks(20)).size());
  }

  @Test
  void longWordsAreCutAndLongLabelsTakeNoMoreThanThePaper() {
    String word = "W".repeat(300);
    for (Box field : FIELDS) {
      List<List<String>> rows = List.of(List.of(word, word, word, "2800", word));
      Rows table = new Rows(table(1, "").columns(), rows);
      List<Drawing> pages =
          set(
              field,
              new Heading(word),
              new Words(word),
              new BenchText.Steps(List.of(word)),
              new BenchText.Framed(List.of(word)),
              table);
      holds(pages, field, "long words");
      assertTrue(pages.size() <= 2);
    }
  }

  @Test
  void aTableWithARowOfAnotherLengthIsRefused() {
    List<Column> columns = List.of(new Column("one", Fill.WORDS));
    List<List<String>> rows = List.of(List.of("a", "b"));
    assertThrows(IllegalArgumentException.class, () -> new Rows(columns, rows));
  }

  @Test
  void noTextIsNoPage() {
    assertTrue(set(FIELDS.get(0)).isEmpty());
    assertTrue(set(FIELDS.get(0), table(0, "")).isEmpty());
  }

  @Test
  void centreMarksLieOnTheTemplatesTilesInThinLinesOnly() {
    for (Paper paper : List.of(Paper.A4, Paper.A5, Paper.LETTER)) {
      TemplateOptions options = TemplateOptions.on(paper);
      PageSet template = Template.pages(PaperPlates.bittern(), options);
      BenchText work = new BenchText("drilling sheet", List.of(new Words("Drill.")));
      PageSet sheet = Template.drilling(PaperPlates.bittern(), options, work);
      assertEquals(template.grid(), sheet.grid());
      assertEquals(template.marks().size(), sheet.marks().size());
      assertEquals(template.bar(), sheet.bar(), 0);
      assertEquals("Work 1", sheet.pages().get(sheet.pages().size() - 1).name());
      for (Drawing.Layer layer : sheet.drawing().layers()) {
        boolean lines = List.of("outline", "windows", "holes").contains(layer.name());
        for (Mark mark : layer.marks()) {
          if (lines && mark instanceof Mark.Stroke stroke) {
            assertEquals(LineType.THIN, stroke.type(), layer.name());
          }
        }
        assertFalse(layer.name().equals("rough"));
      }
    }
  }
}
