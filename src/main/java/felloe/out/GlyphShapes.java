package felloe.out;

import felloe.drawing.Mark;
import felloe.drawing.TextWidth;
import felloe.geometry.Numbers;
import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Bidi;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/**
 * Labels as outlines of the glyphs of the program's own font, so that no font of the machine is
 * asked for. Glyphs stand side by side at their advance widths. Text that runs right to left is put
 * in visual order; letters are not joined. A character that the font lacks becomes its empty box.
 */
final class GlyphShapes implements SvgDocument.Lettering, AutoCloseable {

  private final TrueTypeFont font;
  private final CmapLookup characters;
  private final double unitsPerEm;
  private final Map<Integer, GeneralPath> paths = new HashMap<>();

  /** Reads the font from the jar. */
  GlyphShapes() {
    try (InputStream in = TextWidth.class.getResourceAsStream(TextWidth.FONT)) {
      font = new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
      characters = font.getUnicodeCmapLookup();
      unitsPerEm = font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public Element element(Document document, Mark.Label label) {
    Element element = document.createElementNS(SvgDocument.NAMESPACE, "path");
    element.setAttribute("d", outline(label));
    element.setAttribute("fill", "#000000");
    element.setAttribute("stroke", "none");
    return element;
  }

  private String outline(Mark.Label label) {
    double scale = TextWidth.fontSize(label.height()) / unitsPerEm;
    double width = TextWidth.of(label.text(), label.height());
    double start =
        switch (label.anchor()) {
          case START -> 0;
          case MIDDLE -> -width / 2;
          case END -> -width;
        };
    AffineTransform place = new AffineTransform();
    place.translate(label.at().x(), -label.at().y());
    place.rotate(-label.turn());
    place.translate(start, 0);
    place.scale(scale, -scale);
    StringBuilder data = new StringBuilder();
    try {
      for (int c : visual(label.text()).codePoints().toArray()) {
        int glyph = characters.getGlyphId(c);
        append(data, path(glyph).getPathIterator(place));
        // The table's width, not the glyph's: layout and ink agree for missing glyphs too.
        double advance = TextWidth.of(Character.toString(c), label.height()) / scale;
        place.translate(advance, 0);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return data.toString();
  }

  private GeneralPath path(int glyph) throws IOException {
    GeneralPath path = paths.get(glyph);
    if (path == null) {
      var description = font.getGlyph().getGlyph(glyph);
      path = description == null ? new GeneralPath() : description.getPath();
      paths.put(glyph, path);
    }
    return path;
  }

  private static String visual(String text) {
    char[] characters = text.toCharArray();
    if (!Bidi.requiresBidi(characters, 0, characters.length)) {
      return text;
    }
    Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    int runs = bidi.getRunCount();
    byte[] levels = new byte[runs];
    String[] pieces = new String[runs];
    for (int i = 0; i < runs; i++) {
      levels[i] = (byte) bidi.getRunLevel(i);
      String piece = text.substring(bidi.getRunStart(i), bidi.getRunLimit(i));
      // StringBuilder.reverse keeps surrogate pairs together.
      pieces[i] = levels[i] % 2 == 0 ? piece : new StringBuilder(piece).reverse().toString();
    }
    Bidi.reorderVisually(levels, 0, pieces, 0, runs);
    return String.join("", pieces);
  }

  private static void append(StringBuilder data, PathIterator path) {
    double[] at = new double[6];
    for (; !path.isDone(); path.next()) {
      int kind = path.currentSegment(at);
      int figures =
          switch (kind) {
            case PathIterator.SEG_MOVETO, PathIterator.SEG_LINETO -> 2;
            case PathIterator.SEG_QUADTO -> 4;
            case PathIterator.SEG_CUBICTO -> 6;
            default -> 0;
          };
      data.append("MLQCZ".charAt(kind));
      for (int i = 0; i < figures; i++) {
        data.append(i == 0 ? "" : " ").append(Numbers.brief(at[i], 4));
      }
    }
  }

  @Override
  public void close() {
    try {
      font.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
