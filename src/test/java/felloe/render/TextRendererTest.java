package felloe.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Quantity;
import felloe.document.Report;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TextRendererTest {

  private static final Set<Depth> SHUT = EnumSet.of(Depth.SCREEN);

  private static List<String> lines(int width, Block... blocks) {
    return TextRenderer.lines(new Report("Title", List.of(blocks)), width, SHUT);
  }

  @Test
  void theVerdictFollowsTheTitle() {
    List<String> lines =
        lines(
            80,
            new Block.Callout(Tone.FAIL, List.of("FAILS: 2 fails.")),
            new Block.Callout(Block.Tone.CAUTION, List.of("Wear a mask.")));
    assertEquals(List.of("Title", "FAILS: 2 fails.", "! Wear a mask."), lines);
  }

  @Test
  void figuresStandOnTheRightAndTellTheirUnitOnce() {
    Block.Table table =
        Block.Table.of(
            List.of(Column.words("hole"), Column.figures("size", "mm")),
            List.of(
                List.of(new Cell.Words("H1"), Quantity.fixed(5, 2, "mm")),
                List.of(new Cell.Words("H10"), Quantity.fixed(-12.5, 2, "mm"))));
    assertEquals(
        List.of("Title", "", "hole  size mm", "H1       5.00", "H10    -12.50"), lines(80, table));
  }

  @Test
  void whatAHandFillsIsLeftToPaper() {
    Block.Table table =
        Block.Table.of(
            List.of(
                Column.words("hole"),
                Column.blank("measured"),
                new Column("done", "", Block.Fill.TICK)),
            List.of(List.of(new Cell.Words("H1"), new Cell.Blank(), new Cell.Tick())));
    assertEquals(List.of("Title", "", "hole", "H1"), lines(80, table));
  }

  @Test
  void foldsOpenWhenTheyAreAskedFor() {
    Report report =
        new Report(
            "Title",
            List.of(
                new Block.Folded(Depth.ALL, List.of(new Block.Paragraph("all"))),
                new Block.Folded(Depth.SOURCES, List.of(new Block.Paragraph("sources"))),
                new Block.Folded(Depth.PAPER, List.of(new Block.Paragraph("paper"))),
                new Block.Folded(Depth.SCREEN, List.of(new Block.Paragraph("screen")))));
    assertEquals(List.of("Title", "screen"), TextRenderer.lines(report, 80, SHUT));
    Set<Depth> all = EnumSet.of(Depth.SCREEN, Depth.ALL);
    assertEquals(List.of("Title", "all", "screen"), TextRenderer.lines(report, 80, all));
    assertTrue(TextRenderer.hides(report, Depth.SOURCES, all));
    assertFalse(TextRenderer.hides(report, Depth.ALL, all));
  }

  /** No line is wider than the terminal, and every word of every cell is there, in order. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void tablesFitTheWidthAndLoseNothing(long seed) {
    Random random = new Random(seed);
    for (int n = 0; n < 50; n++) {
      int width = 40 + random.nextInt(80);
      String a = words(random, 1 + random.nextInt(12));
      String b = words(random, 1 + random.nextInt(30));
      Block.Table table =
          Block.Table.of(
              List.of(Column.words("what"), Column.figures("is", "mm"), Column.wrapped("why")),
              List.of(
                  List.of(
                      new Cell.Words(a),
                      Quantity.mm(random.nextDouble() * 100),
                      new Cell.Words(b))));
      List<String> lines = lines(width, table);
      for (String line : lines) {
        assertTrue(line.length() <= width, "seed " + seed + ": " + line);
      }
      String all = String.join("", lines).replace(" ", "");
      for (String word : (a + " " + b).split(" ")) {
        assertTrue(all.contains(word) || word.length() > 8, "seed " + seed + ": " + word);
      }
    }
  }

  private static String words(Random random, int count) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append(i == 0 ? "" : " ");
      int letters = 1 + random.nextInt(8);
      for (int k = 0; k < letters; k++) {
        text.append((char) ('a' + random.nextInt(26)));
      }
    }
    return text.toString();
  }

  /** What a fold of the screen holds folded is to be had as well, and told. */
  @Test
  void aFoldWithinAnOpenOneIsHidden() {
    Block within =
        new Block.Folded(
            Depth.SCREEN,
            List.of(new Block.Folded(Depth.ALL, List.of(new Block.Paragraph("more")))));
    Report report = new Report("title", List.of(within));
    EnumSet<Depth> screen = EnumSet.of(Depth.SCREEN);
    assertTrue(TextRenderer.hides(report, Depth.ALL, screen));
    assertFalse(TextRenderer.hides(report, Depth.SOURCES, screen));
    assertFalse(TextRenderer.hides(report, Depth.ALL, EnumSet.of(Depth.SCREEN, Depth.ALL)));
    Block paper =
        new Block.Folded(
            Depth.PAPER,
            List.of(new Block.Folded(Depth.ALL, List.of(new Block.Paragraph("more")))));
    assertFalse(TextRenderer.hides(new Report("title", List.of(paper)), Depth.ALL, screen));
  }
}
