package felloe.out;

import felloe.solid.Shaded;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * A picture as a PNG file (W3C PNG, ISO/IEC 15948), with the pixel's size stated: a byte a pixel
 * for black, grey and white, three for colours. Batik's own encoder writes four channels at the
 * slowest setting, which takes seven eighths of the time of a picture and four times the space.
 */
final class PngFile {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final int FILTER_UP = 2;
  private static final int METRE = 1;
  private static final int PALETTE = 3;
  private static final int COLOURS = 2;

  private PngFile() {}

  /**
   * The bytes of a file without colours.
   *
   * @param image of type {@link BufferedImage#TYPE_INT_ARGB}, whose red, green and blue are alike
   *     and which hides what is behind it
   * @param pixelsPerMetre the density to state
   */
  static byte[] grey(BufferedImage image, int pixelsPerMetre) {
    return write(image, PALETTE, pixelsPerMetre);
  }

  /**
   * The bytes of a file in colours.
   *
   * @param image of type {@link BufferedImage#TYPE_INT_ARGB}, which hides what is behind it
   * @param pixelsPerMetre the density to state
   */
  static byte[] coloured(BufferedImage image, int pixelsPerMetre) {
    return write(image, COLOURS, pixelsPerMetre);
  }

  /**
   * The bytes of a file of shaded bodies.
   *
   * @param width of the picture, mm: states the density
   */
  static byte[] shaded(Shaded dots, double width) {
    BufferedImage image =
        new BufferedImage(dots.width(), dots.height(), BufferedImage.TYPE_INT_ARGB);
    for (int y = 0; y < dots.height(); y++) {
      for (int x = 0; x < dots.width(); x++) {
        image.setRGB(x, y, 0xff000000 | 0x010101 * dots.grey(x, y));
      }
    }
    return grey(image, (int) Math.round(1000 * dots.width() / width));
  }

  private static byte[] write(BufferedImage image, int type, int pixelsPerMetre) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream file = new DataOutputStream(bytes)) {
      file.write(SIGNATURE);
      chunk(file, "IHDR", header(image.getWidth(), image.getHeight(), type));
      if (type == PALETTE) {
        chunk(file, "PLTE", greys());
      }
      chunk(file, "pHYs", density(pixelsPerMetre));
      chunk(file, "IDAT", deflate(rows(image, type == PALETTE ? 1 : 3)));
      chunk(file, "IEND", new byte[0]);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static byte[] header(int width, int height, int type) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(bytes);
    data.writeInt(width);
    data.writeInt(height);
    // Bit depth 8, colour type, deflate, adaptive filters, no interlacing.
    data.write(new byte[] {8, (byte) type, 0, 0, 0});
    return bytes.toByteArray();
  }

  /** A palette of all greys: some readers, Java's among them, take bare grey for linear light. */
  private static byte[] greys() {
    byte[] palette = new byte[3 * 256];
    for (int i = 0; i < palette.length; i++) {
      palette[i] = (byte) (i / 3);
    }
    return palette;
  }

  private static byte[] density(int pixelsPerMetre) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream data = new DataOutputStream(bytes);
    data.writeInt(pixelsPerMetre);
    data.writeInt(pixelsPerMetre);
    data.write(METRE);
    return bytes.toByteArray();
  }

  /** Each row as the difference from the row above, which suits drawings. */
  private static byte[] rows(BufferedImage image, int channels) {
    int width = image.getWidth();
    int height = image.getHeight();
    byte[] data = new byte[height * (channels * width + 1)];
    // Through the picture's colour model a pixel takes ten times as long.
    int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    byte[] above = new byte[channels * width];
    int at = 0;
    for (int y = 0; y < height; y++) {
      data[at++] = FILTER_UP;
      for (int i = 0; i < above.length; i++) {
        // Red, green, blue; of a grey the last.
        int shift = 8 * (channels - 1 - i % channels);
        byte level = (byte) (pixels[y * width + i / channels] >> shift);
        data[at++] = (byte) (level - above[i]);
        above[i] = level;
      }
    }
    return data;
  }

  static byte[] deflate(byte[] data) {
    Deflater deflater = new Deflater();
    deflater.setInput(data);
    deflater.finish();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    byte[] buffer = new byte[1 << 16];
    while (!deflater.finished()) {
      bytes.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return bytes.toByteArray();
  }

  private static void chunk(DataOutputStream file, String name, byte[] data) throws IOException {
    byte[] type = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(type);
    check.update(data);
    file.writeInt(data.length);
    file.write(type);
    file.write(data);
    file.writeInt((int) check.getValue());
  }
}
