package felloe.out;

import felloe.geometry.Box;
import felloe.paper.Drawing;
import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.w3c.dom.Document;

/**
 * A drawing as a PNG picture on white, drawn by Batik from a tree that is made here and read from
 * nowhere. Text is drawn as outlines of the program's own font, so the fonts of the machine are
 * never looked for. The same drawing gives the same bytes on the same Java release.
 */
public final class PngWriter {

  private PngWriter() {}

  /**
   * The file's bytes.
   *
   * @param page what is seen of the drawing, mm
   * @param pen factor on the widths and dashes of lines
   * @param pixels width of the picture in pixels, 1 to 20000; its height follows from the page
   * @throws IllegalArgumentException when the width is out of bounds
   */
  public static byte[] write(Drawing drawing, Box page, double pen, int pixels, About about) {
    if (pixels < 1 || pixels > 20_000) {
      throw new IllegalArgumentException("pixels must be 1 to 20000, not " + pixels);
    }
    Document document;
    try (GlyphShapes glyphs = new GlyphShapes()) {
      document =
          SvgDocument.of(
              SVGDOMImplementation.getDOMImplementation(), drawing, page, pen, about, glyphs);
    }
    PNGTranscoder transcoder = new PNGTranscoder();
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) pixels);
    transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, false);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOWED_SCRIPT_TYPES, "");
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_CONSTRAIN_SCRIPT_ORIGIN, true);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      transcoder.transcode(new TranscoderInput(document), new TranscoderOutput(bytes));
    } catch (TranscoderException e) {
      throw new UncheckedIOException(new IOException("the picture could not be drawn", e));
    }
    return bytes.toByteArray();
  }
}
