package felloe.out;

import felloe.drawing.TextWidth;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Text as the codes of the embedded font. */
final class PdfText {

  private static final int MISSING = '\ufffd';
  private static final char[] HEX = "0123456789ABCDEF".toCharArray();

  private final PDType0Font font;
  private final CmapLookup glyphs;

  PdfText(PDType0Font font, TrueTypeFont outlines) throws IOException {
    this.font = font;
    this.glyphs = outlines.getUnicodeCmapLookup();
  }

  /** What is shown of a text: characters that the font lacks become the replacement character. */
  private String shown(String text) {
    StringBuilder shown = new StringBuilder();
    TextWidth.shown(text)
        .codePoints()
        .map(c -> glyphs.getGlyphId(c) == 0 ? MISSING : c)
        .forEach(shown::appendCodePoint);
    return shown.toString();
  }

  /** The text as a hexadecimal string of the page description, angle brackets included. */
  String hex(String text) throws IOException {
    String shown = shown(text);
    ByteArrayOutputStream codes = new ByteArrayOutputStream();
    for (int c : shown.codePoints().toArray()) {
      font.addToSubset(c);
      codes.write(font.encode(Character.toString(c)));
    }
    StringBuilder hex = new StringBuilder("<");
    for (byte b : codes.toByteArray()) {
      hex.append(HEX[(b >> 4) & 15]).append(HEX[b & 15]);
    }
    return hex.append('>').toString();
  }

  /** Width of what is shown, as a share of the font size. */
  double width(String text) throws IOException {
    return font.getStringWidth(shown(text)) / 1000;
  }
}
