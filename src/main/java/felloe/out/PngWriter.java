package felloe.out;

import felloe.drawing.Drawing;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.batik.anim.dom.SVGDOMImplementation;
import org.apache.batik.bridge.EmbededExternalResourceSecurity;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.UserAgent;
import org.apache.batik.transcoder.SVGAbstractTranscoder;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.util.ParsedURL;
import org.w3c.dom.Document;

/**
 * A drawing as a PNG picture on white, drawn by Batik's transcoder from a tree that is made here
 * and read from nowhere. Text is drawn as outlines of the program's own font, so the fonts of the
 * machine are never looked for. The file states the pixel's size, so that the picture can be put on
 * paper at its scale.
 *
 * <p>Accuracy: an edge lies within a pixel of its place. The same drawing gives the same bytes on
 * the same Java release; on another a few pixels at edges are a shade off (of a million some
 * twenty, between 17 and 25).
 */
public final class PngWriter {

  private static final int WIDEST = 20_000;

  /** A long narrow plate must not make a picture that is miles high, pixels. */
  private static final double HIGHEST = 3200;

  private PngWriter() {}

  /**
   * The file's bytes.
   *
   * @param widest width of the picture in pixels, 1 to 20000; its height follows from the page, and
   *     where that would be more than 3200 pixels the picture is narrower
   * @throws IllegalArgumentException when the width is out of bounds
   */
  public static byte[] write(Picture picture, int widest, About about) {
    if (widest < 1 || widest > WIDEST) {
      throw new IllegalArgumentException("a picture " + widest + " pixels wide cannot be drawn");
    }
    Drawing drawing = picture.drawing();
    Box page = picture.page();
    double width = Math.min(widest, HIGHEST * page.width() / page.height());
    int pixels = (int) Math.max(1, Math.round(width));
    Document document;
    try (GlyphShapes glyphs = new GlyphShapes()) {
      document =
          SvgDocument.of(
              SVGDOMImplementation.getDOMImplementation(),
              drawing,
              page,
              picture.pen(),
              about,
              glyphs);
    }
    int density = (int) Math.round(1000 * pixels / page.width());
    boolean coloured = drawing.marks().stream().anyMatch(mark -> mark instanceof Mark.Tone);
    BufferedImage image = draw(document, pixels);
    return coloured ? PngFile.coloured(image, density) : PngFile.grey(image, density);
  }

  private static BufferedImage draw(Document document, int pixels) {
    Drawn transcoder = new Drawn();
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_WIDTH, (float) pixels);
    transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_EXECUTE_ONLOAD, false);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOWED_SCRIPT_TYPES, "");
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_CONSTRAIN_SCRIPT_ORIGIN, true);
    transcoder.addTranscodingHint(SVGAbstractTranscoder.KEY_ALLOW_EXTERNAL_RESOURCES, false);
    try {
      transcoder.transcode(new TranscoderInput(document), new TranscoderOutput());
    } catch (TranscoderException e) {
      throw new UncheckedIOException(new IOException("the picture could not be drawn", e));
    }
    return transcoder.image;
  }

  /**
   * Keeps the picture that was drawn, and reads no picture but one that lies in the file itself.
   */
  private static final class Drawn extends ImageTranscoder {
    private BufferedImage image;

    @Override
    protected UserAgent createUserAgent() {
      return new SVGAbstractTranscoderUserAgent() {
        @Override
        public ExternalResourceSecurity getExternalResourceSecurity(
            ParsedURL resource, ParsedURL document) {
          return new EmbededExternalResourceSecurity(resource);
        }
      };
    }

    @Override
    public BufferedImage createImage(int width, int height) {
      return new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    }

    @Override
    public void writeImage(BufferedImage drawn, TranscoderOutput output) {
      image = drawn;
    }
  }
}
