package felloe.bringin;

import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * A photo out of a file that is not trusted: kind and size are read from its header, and refused
 * when they are too large, before a pixel is decoded.
 *
 * @param grey 8 bits a pixel, row by row, as encoded
 * @param light the same as light
 * @param up the direction that is up, in pixels, whose y runs down
 * @param focal length that the camera tells, pixels
 */
record PhotoFile(byte[] grey, Light light, Point up, OptionalDouble focal) {

  /** Bytes of a photo. */
  static final int BYTES = 48 << 20;

  /** Pixels of a photo. */
  static final long PIXELS = 60_000_000;

  /** Pixels along the shorter side that could measure anything. */
  static final int FEWEST = 600;

  private static final Set<String> KINDS = Set.of("jpeg", "png");

  /**
   * Reads.
   *
   * @param file its name, for messages
   * @throws BadInput when it is no photo, too large, or broken
   */
  static PhotoFile of(byte[] bytes, String file) {
    if (bytes.length > BYTES) {
      throw bad(
          file,
          (bytes.length >> 20) + " MB",
          "is too large: at most " + (BYTES >> 20) + " MB are read",
          "save it as a JPEG of good quality");
    }
    int pictures = PictureKind.pictures(bytes);
    if (pictures > 1) {
      throw bad(
          file,
          pictures + " pictures",
          "follow each other in it: one photo is measured",
          "save the one that is meant as a JPEG");
    }
    if (PictureKind.forPrint(bytes)) {
      throw bad(
          file,
          "",
          "has colours for print (CMYK), which do not tell how light a place is",
          "copy it anew from the camera, or save it as an RGB JPEG");
    }
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      ImageReader reader = readers.hasNext() ? readers.next() : null;
      if (reader == null || !KINDS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
        throw bad(file, "", "is neither a JPEG nor a PNG", "save the photo as one of them");
      }
      try {
        reader.setInput(in, true, true);
        return decoded(reader, file, Exif.of(bytes));
      } finally {
        reader.dispose();
      }
    } catch (BadInput told) {
      throw told;
    } catch (IOException | RuntimeException broken) {
      // Decoders of broken files fail in many ways.
      throw bad(
          file,
          "",
          "is broken, or of colours that are not read: it cannot be decoded",
          "copy it anew from the camera, as the camera saved it");
    }
  }

  private static PhotoFile decoded(ImageReader reader, String file, Exif exif) throws IOException {
    int width = reader.getWidth(0);
    int height = reader.getHeight(0);
    String size = width + " x " + height + " pixels";
    if ((long) width * height > PIXELS) {
      throw bad(
          file,
          size,
          "has too many: at most " + PIXELS / 1_000_000 + " million are read",
          "take it with fewer; 12 million are plenty");
    }
    if (Math.min(width, height) < FEWEST) {
      throw bad(
          file,
          size,
          "has too few to measure by: at least " + FEWEST + " each way",
          "take the photo as large as the camera makes it, not a preview");
    }
    BufferedImage image = reader.read(0);
    byte[] grey = new byte[width * height];
    float[] values = new float[grey.length];
    float[] decoded = new float[256];
    for (int i = 0; i < decoded.length; i++) {
      decoded[i] = (float) Light.decoded(i / 255.0);
    }
    boolean plain = image.getType() == BufferedImage.TYPE_BYTE_GRAY;
    int[] row = new int[width];
    for (int j = 0; j < height; j++) {
      if (plain) {
        // Asked for as colours, grey values would be taken for light and encoded once more.
        image.getRaster().getSamples(0, j, width, 1, 0, row);
      } else {
        image.getRGB(0, j, width, 1, row, 0, width);
      }
      for (int i = 0; i < width; i++) {
        // The greens of a camera are its sharpest: half of its pixels are green.
        int value = plain ? row[i] : row[i] >> 8 & 0xff;
        grey[j * width + i] = (byte) value;
        values[j * width + i] = decoded[value];
      }
    }
    return new PhotoFile(
        grey, new Light(width, height, values), exif.up(), exif.focal(width, height));
  }

  private static BadInput bad(String file, String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(file), "", value, wanted, cure));
  }
}
