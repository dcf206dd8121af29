package felloe.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Cautions;
import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Picture;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.template.PageSet;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Text for the bench, set on pages. */
class BenchPagesTest {

  private static final long SEED = 990_127L;

  /** Fields of A5 upright, A4 upright and A4 across. */
  private static final List<Box> FIELDS =
      List.of(new Box(19, 60, 138, 200), new Box(19, 38, 200, 287), new Box(19, 32, 287, 200));

  private static List<Drawing> set(Box field, Block... blocks) {
    return BenchPages.of(List.of(blocks), field);
  }

  private static List<Mark.Label> labels(Drawing page) {
    return page.marks().stream()
        .filter(Mark.Label.class::isInstance)
        .map(Mark.Label.class::cast)
        .toList();
  }

  private static Block.Table table(int rows, String words) {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      texts.add(List.of("row" + i, "pilot", "5.5", "2800", words));
    }
    return Block.Table.ofWords(
        List.of(
            new Block.Column("no", "", Block.Fill.FIGURES),
            new Block.Column("step", "", Block.Fill.WORDS),
            new Block.Column("size", "", Block.Fill.FIGURES),
            new Block.Column("1/min", "", Block.Fill.FIGURES),
            new Block.Column("what to do", "", Block.Fill.WRAPPED)),
        texts);
  }

  private static Block.Table blanks(int rows) {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      texts.add(List.of("row" + i, "H1", "H2", "outside", "40.00", "39.70", "40.42", ""));
    }
    return Block.Table.ofWords(
            List.of(
                new Block.Column("", "", Block.Fill.FIGURES),
                new Block.Column("from", "", Block.Fill.WORDS),
                new Block.Column("to", "", Block.Fill.WORDS),
                new Block.Column("over", "", Block.Fill.WORDS),
                new Block.Column("true", "", Block.Fill.FIGURES),
                new Block.Column("least", "", Block.Fill.FIGURES),
                new Block.Column("most", "", Block.Fill.FIGURES),
                new Block.Column("reads", "", Block.Fill.BLANK)),
            texts)
        .sideBySide();
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
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < 8; i++) {
          String words = "pilot drill ".repeat(1 + random.nextInt(20)).strip();
          switch (random.nextInt(6)) {
            case 0 -> blocks.add(new Block.Heading(words));
            case 1 -> blocks.add(new Block.Paragraph(words));
            case 2 ->
                blocks.add(new Block.Steps(List.of(words, "one", words), random.nextBoolean()));
            case 3 -> blocks.add(new Block.Callout(Block.Tone.CAUTION, List.of(words, words)));
            case 4 -> blocks.add(table(1 + random.nextInt(30), words));
            default -> blocks.add(blanks(1 + random.nextInt(60)));
          }
        }
        List<Drawing> pages = set(field, blocks.toArray(Block[]::new));
        holds(pages, field, "seed " + SEED + ", trial " + trial);
      }
    }
  }

  @Test
  void everyRowOfALongTableStandsOnceAndInOrderUnderARepeatedHead() {
    for (Box field : FIELDS) {
      for (Block.Table rows : List.of(table(300, "go on"), blanks(300))) {
        List<Drawing> pages = set(field, new Block.Heading("Rows"), rows);
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
        set(field, new Block.Heading("First"), blanks(24), new Block.Heading("Second"), blanks(10));
    assertEquals(2, pages.size());
    List<Mark.Label> second = labels(pages.get(1));
    assertEquals("Second", second.get(0).text());
    assertEquals(10, second.stream().filter(label -> label.text().startsWith("row")).count());
  }

  @Test
  void narrowTablesStandSideBySideWhereThePaperIsWide() {
    List<Mark.Label> labels = labels(set(FIELDS.get(2), blanks(20)).get(0));
    assertEquals(2, labels.stream().filter(label -> label.text().equals("reads")).count());
    assertEquals(1, set(FIELDS.get(2), blanks(20)).size());
  }

  @Test
  void longWordsAreBrokenAndNothingOfThemIsLost() {
    String word = "W".repeat(300);
    for (Box field : FIELDS) {
      List<List<String>> rows = List.of(List.of(word, word, word, "2800", word));
      Block.Table table = Block.Table.ofWords(table(1, "").columns(), rows);
      List<Drawing> pages =
          set(
              field,
              new Block.Heading(word),
              new Block.Paragraph(word),
              Block.Steps.of(List.of(word)),
              new Block.Callout(Block.Tone.CAUTION, List.of(word)),
              table);
      holds(pages, field, "long words");
      long letters =
          pages.stream()
              .flatMap(page -> labels(page).stream())
              .mapToLong(label -> label.text().chars().filter(c -> c == 'W').count())
              .sum();
      assertEquals(8 * 300, letters);
    }
  }

  @Test
  void whatIsHigherThanAPageGoesOnOnTheNextAndNothingIsLost() {
    String words = "pilot drill ".repeat(2_000).strip();
    for (Box field : FIELDS) {
      List<Block> all =
          List.of(
              new Block.Heading(words.substring(0, 4_000)),
              new Block.Paragraph(words),
              Block.Steps.of(List.of(words, words)),
              new Block.Callout(Block.Tone.CAUTION, List.of(words, "end", words)),
              table(1, words),
              Block.Table.ofWords(
                  List.of(new Block.Column(words, "", Block.Fill.WORDS)),
                  List.of(List.of("cell"))));
      for (Block block : all) {
        List<Drawing> pages = set(field, block, new Block.Paragraph("after"));
        assertTrue(pages.size() > 1 || block == all.get(0) || block == all.get(5));
        holds(pages, field, block.getClass().getSimpleName());
        List<String> texts =
            pages.stream().flatMap(page -> labels(page).stream()).map(Mark.Label::text).toList();
        assertTrue(texts.contains("after"));
        long pilots = String.join(" ", texts).split("pilot", -1).length - 1;
        if (block == all.get(1) || block == all.get(2) || block == all.get(3)) {
          assertEquals(block == all.get(1) ? 2_000 : 4_000, pilots);
        } else if (block == all.get(4)) {
          assertEquals(1 + 2_000, pilots, "one in the second column");
        }
      }
    }
  }

  @Test
  void wordsOfATableAreWholeWhereTheyHaveRoom() {
    List<Block.Column> columns =
        List.of(
            new Block.Column("way", "", Block.Fill.WORDS),
            new Block.Column("thick mm", "", Block.Fill.FIGURES),
            new Block.Column("stiffness", "", Block.Fill.FIGURES),
            new Block.Column("material", "", Block.Fill.FIGURES),
            new Block.Column("hardener g", "", Block.Fill.FIGURES),
            new Block.Column("sheet mm", "", Block.Fill.WORDS),
            new Block.Column("hours", "", Block.Fill.FIGURES),
            new Block.Column("where it comes from", "", Block.Fill.WORDS));
    List<String> row =
        List.of("aluminium sheet", "5.00", "1.0", "?", "61", "300 x 300", "0", "practice of shops");
    List<String> texts =
        set(FIELDS.get(0), Block.Table.ofWords(columns, List.of(row))).stream()
            .flatMap(page -> labels(page).stream())
            .map(Mark.Label::text)
            .toList();
    String all = " " + String.join(" ", texts) + " ";
    for (String word : List.of("aluminium", "stiffness", "material", "hardener", "practice")) {
      assertTrue(all.contains(" " + word + " "), word + " in" + all);
    }
  }

  @Test
  void aTableOfAThousandRowsHasThemAllUnderItsCaptionAndHeads() {
    List<List<String>> texts = new ArrayList<>();
    for (int i = 0; i < 1_000; i++) {
      texts.add(List.of("row" + i, i % 3 == 0 ? "" : "[ ]"));
    }
    List<Block.Column> columns =
        List.of(
            new Block.Column("number", "", Block.Fill.WORDS),
            new Block.Column("done", "", Block.Fill.TICK));
    for (Box field : FIELDS) {
      for (boolean abreast : new boolean[] {false, true}) {
        Block.Table rows = table("What is to be ticked", columns, texts, abreast);
        List<Drawing> pages = set(field, new Block.Heading("Rows"), rows);
        holds(pages, field, "a thousand rows");
        List<String> found = new ArrayList<>();
        long boxes = 0;
        for (Drawing page : pages) {
          List<String> words = labels(page).stream().map(Mark.Label::text).toList();
          long heads = words.stream().filter("number"::equals).count();
          assertEquals(heads, words.stream().filter("What is to be ticked"::equals).count());
          assertTrue(abreast ? heads > 1 : heads == 1, heads + " heads");
          words.stream().filter(text -> text.startsWith("row")).forEach(found::add);
          boxes +=
              page.marks().stream()
                  .filter(mark -> mark instanceof Mark.Stroke stroke && stroke.closed())
                  .count();
        }
        assertEquals(texts.stream().map(row -> row.get(0)).toList(), found);
        assertEquals(666, boxes, "1,000 less the 334 multiples of 3");
      }
    }
  }

  @Test
  void moreColumnsThanThePaperIsWideForStandInsideAllTheSame() {
    List<Block.Column> columns = new ArrayList<>();
    List<String> row = new ArrayList<>();
    for (Block.Fill fill : Block.Fill.values()) {
      for (int i = 0; i < 3; i++) {
        columns.add(new Block.Column("heading of it", "", fill));
        row.add(fill == Block.Fill.BLANK ? "" : "a few long words 123456.78");
      }
    }
    for (Box field : FIELDS) {
      holds(
          set(field, Block.Table.ofWords(columns, List.of(row, row))),
          field,
          columns.size() + " columns");
    }
  }

  @Test
  void aHeadingNeverStandsAloneAtTheFoot() {
    Random random = new Random(SEED + 1);
    for (int trial = 0; trial < 60; trial++) {
      List<Block> blocks = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        blocks.add(new Block.Heading("Block.Heading " + i));
        if (random.nextInt(4) == 0) {
          blocks.add(new Block.Heading("Block.Heading below"));
        }
        blocks.add(table(1 + random.nextInt(25), "pilot drill"));
      }
      for (Box field : FIELDS) {
        for (Drawing page : set(field, blocks.toArray(Block[]::new))) {
          Mark.Label lowest =
              labels(page).stream()
                  .min(Comparator.comparingDouble(label -> label.at().y()))
                  .orElseThrow();
          assertFalse(
              lowest.text().startsWith("Heading"), "seed " + (SEED + 1) + ", trial " + trial);
        }
      }
    }
  }

  @Test
  void aPictureStandsBelowWordsWhereItHasRoomAndElseOnTheNextPage() {
    Box field = FIELDS.get(1);
    Mark edge = Mark.Stroke.of(Contour.rectangle(new Box(1, 1, 299, 99)), LineType.EDGE);
    Picture picture = new Picture(Drawing.of("edge", List.of(edge)), new Box(0, 0, 300, 100), 1);
    Block.Figure drawn = new Block.Figure(picture);
    List<Drawing> one =
        set(field, new Block.Paragraph("above"), drawn, new Block.Paragraph("below"));
    assertEquals(1, one.size());
    holds(one, field, "picture");
    double below = labels(one.get(0)).get(1).at().y();
    Box box = one.get(0).box().orElseThrow();
    assertTrue(below < field.maxY() - field.width() / 3, "the picture is a third as high as wide");
    assertTrue(box.width() > 0.98 * field.width());
    List<Drawing> two = set(field, new Block.Heading("above"), blanks(28), drawn, drawn);
    assertTrue(two.size() >= 2);
    holds(two, field, "pictures");
    long pictures =
        two.stream()
            .flatMap(page -> page.layers().stream())
            .filter(layer -> layer.name().equals("edge"))
            .count();
    assertEquals(2, pictures);
  }

  @Test
  void smallPicturesStandSideBySideAtFullSizeOnAsManyPagesAsTheyTake() {
    Mark edge = Mark.Stroke.of(Contour.rectangle(new Box(0, 0, 42, 16)), LineType.EDGE);
    Picture label = new Picture(Drawing.of("edge", List.of(edge)), new Box(0, 0, 42, 16), 1);
    for (Box field : FIELDS) {
      List<Drawing> pages =
          set(
              field,
              new Block.Heading("Labels"),
              new Block.Figure(Collections.nCopies(101, label)),
              new Block.Paragraph("below"));
      holds(pages, field, "labels");
      List<Box> boxes =
          pages.stream()
              .flatMap(page -> page.layers().stream())
              .filter(layer -> layer.name().equals("edge"))
              .map(layer -> layer.marks().get(0).box())
              .toList();
      assertEquals(101, boxes.size());
      double wide = edge.box().width();
      boolean full = boxes.stream().allMatch(box -> Math.abs(box.width() - wide) < 1e-9);
      assertTrue(full, "full size");
      int across = (int) ((field.width() - 1) / 42);
      long first = boxes.stream().filter(box -> box.maxY() == boxes.get(0).maxY()).count();
      assertTrue(first >= across, first + " of " + across);
      assertEquals("below", labels(pages.get(pages.size() - 1)).get(0).text());
    }
  }

  @Test
  void stepsToTickHaveABoxEachAndTheOthersNone() {
    List<String> texts = List.of("wax", "cut the cloth ".repeat(40).strip(), "mix");
    List<Drawing> ticked = set(FIELDS.get(0), new Block.Steps(texts, true));
    holds(ticked, FIELDS.get(0), "steps");
    assertEquals(3, ticked.get(0).marks().stream().filter(Mark.Stroke.class::isInstance).count());
    Drawing plain = set(FIELDS.get(0), Block.Steps.of(texts)).get(0);
    assertTrue(plain.marks().stream().noneMatch(Mark.Stroke.class::isInstance));
  }

  @Test
  void aPageEndsWhereItIsTold() {
    Block.PageBreak turn = new Block.PageBreak();
    List<Drawing> pages =
        set(
            FIELDS.get(0),
            turn,
            new Block.Paragraph("one"),
            turn,
            turn,
            new Block.Paragraph("two"));
    assertEquals(2, pages.size());
    assertEquals("two", labels(pages.get(1)).get(0).text());
  }

  @Test
  void aColumnOfWordsTakesTheHeightThatItSays() {
    List<Block> blocks =
        List.of(new Block.Heading("Steps"), Block.Steps.of(List.of("one", "two")), blanks(300));
    BenchPiece piece = BenchPages.column(blocks, 120);
    Box box = Drawing.of("piece", piece.at(new Point(10, 5))).box().orElseThrow();
    assertEquals(5 - piece.height(), box.minY(), 1e-6);
    assertTrue(box.maxY() <= 5.5 && box.minX() >= 9.5 && box.maxX() <= 130.5, box.toString());
    assertEquals(0, BenchPages.column(List.of(), 120).height(), 0);
  }

  @Test
  void aTableWithARowOfAnotherLengthIsRefused() {
    List<Block.Column> columns = List.of(new Block.Column("one", "", Block.Fill.WORDS));
    List<List<String>> rows = List.of(List.of("a", "b"));
    assertThrows(IllegalArgumentException.class, () -> Block.Table.ofWords(columns, rows));
    assertThrows(IllegalArgumentException.class, () -> Block.Table.ofWords(List.of(), List.of()));
  }

  @Test
  void noTextIsNoPage() {
    assertTrue(set(FIELDS.get(0)).isEmpty());
    assertTrue(set(FIELDS.get(0), table(0, "")).isEmpty());
    assertTrue(set(FIELDS.get(0), new Block.Callout(Block.Tone.CAUTION, List.of())).isEmpty());
    assertTrue(set(FIELDS.get(0), Block.Steps.of(List.of())).isEmpty());
  }

  @Test
  void centreMarksLieOnTheTemplatesTilesInThinLinesOnly() {
    for (Paper paper : List.of(Paper.A4, Paper.A5, Paper.LETTER)) {
      TemplateOptions options = UsualPrint.on(paper);
      PageSet template = Template.of(PaperPlates.bittern(), List.of(), options, Stamp.NONE).pages();
      Report work = new Report("drilling sheet", List.of(new Block.Paragraph("Drill.")));
      PageSet sheet =
          Template.drilling(
              PaperPlates.bittern(), options, work, List.of(Cautions.USE), Stamp.NONE);
      assertEquals(template.grid().columns(), sheet.grid().columns());
      assertEquals(template.grid().rows(), sheet.grid().rows());
      assertEquals(template.grid().leftOut(), sheet.grid().leftOut());
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

  private static Block.Table table(
      String caption, List<Block.Column> columns, List<List<String>> texts, boolean abreast) {
    Block.Table table = Block.Table.ofWords(columns, texts).under(caption);
    return abreast ? table.sideBySide() : table;
  }
}
