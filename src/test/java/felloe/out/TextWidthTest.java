package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.TextWidth;
import java.io.IOException;
import java.util.List;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.junit.jupiter.api.Test;

/** The table of widths against the font file itself, read with another library. */
class TextWidthTest {

  @Test
  void everyTabledWidthIsTheFontsOwn() throws IOException {
    try (TrueTypeFont font = font()) {
      int checked = 0;
      for (int c = 0x20; c < 0x27c0; c++) {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(c);
        boolean tabled = c < 0x700 || (c >= 0x1e00 && c < 0x2300) || c >= 0x2500;
        String text = Character.toString(c);
        if (glyph != 0 && tabled && TextWidth.shown(text).equals(text)) {
          double width = font.getAdvanceWidth(glyph) / 2048.0;
          assertEquals(
              width, TextWidth.of(text, TextWidth.CAPITALS), 1e-12, "U+" + Integer.toHexString(c));
          checked++;
        }
      }
      assertTrue(checked > 2500, "only " + checked);
    }
  }

  @Test
  void anUnknownCharacterIsNeverTakenForNarrowerThanItsBox() throws IOException {
    try (TrueTypeFont font = font()) {
      double box = font.getAdvanceWidth(0) / 2048.0;
      for (int c : new int[] {0x4e00, 0x1f6a9, 0xac00}) {
        assertTrue(TextWidth.of(Character.toString(c), TextWidth.CAPITALS) >= box);
      }
    }
  }

  @Test
  void theStatedHeightsAreThoseOfTheGlyphs() throws IOException {
    try (TrueTypeFont font = font()) {
      assertEquals(
          TextWidth.CAPITALS, font.getPath("H").getBounds2D().getMaxY() / 2048, 1e-12, "capitals");
      assertEquals(TextWidth.TAILS, -font.getPath("g").getBounds2D().getMinY() / 2048, 1e-12, "g");
    }
  }

  @Test
  void whatNobodyCanSeeHasNoWidthAndIsDropped() {
    assertEquals("ab c", TextWidth.shown("a\u0000b\u202e\u2029\ud800\ufffe\tc"));
    assertEquals(TextWidth.of("ab", 3.5), TextWidth.of("a\u0007\u200fb", 3.5), 0);
    assertEquals(0, TextWidth.of("", 3.5), 0);
    assertEquals(0, TextWidth.widest(List.of(), 3.5), 0);
  }

  private static TrueTypeFont font() throws IOException {
    return new TTFParser()
        .parse(new RandomAccessReadBuffer(TextWidth.class.getResourceAsStream(TextWidth.FONT)));
  }
}
