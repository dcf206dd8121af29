package felloe.bringin;

import felloe.geometry.Point;

/**
 * Which side of a JPEG's pixels is up, by the orientation that the camera wrote (Exif, CIPA DC-008,
 * tag 274). Bounded: what does not read as it should counts as upright.
 */
final class ExifTurn {

  private static final Point UPRIGHT = new Point(0, -1);
  private static final int ORIENTATION = 0x0112;
  private static final int MOST_ENTRIES = 512;
  private static final int HEADER = 6;

  private ExifTurn() {}

  /** The direction that is up, in pixels, whose y runs down. */
  static Point up(byte[] bytes) {
    int at = 2;
    while (at + 4 <= bytes.length && (bytes[at] & 0xff) == 0xff) {
      int marker = bytes[at + 1] & 0xff;
      int length = two(bytes, at + 2, true);
      if (marker == 0xda || length < 2) {
        return UPRIGHT;
      }
      int from = at + 4;
      int end = Math.min(bytes.length, at + 2 + length);
      if (marker == 0xe1
          && end - from > HEADER + 8
          && bytes[from] == 'E'
          && bytes[from + 1] == 'x') {
        return turned(orientation(bytes, from + HEADER, end));
      }
      at += 2 + length;
    }
    return UPRIGHT;
  }

  private static int orientation(byte[] bytes, int tiff, int end) {
    boolean big = bytes[tiff] == 'M';
    long offset = four(bytes, tiff + 4, big);
    if (offset > end - tiff - 2) {
      return 1;
    }
    int ifd = tiff + (int) offset;
    int count = Math.min(two(bytes, ifd, big), MOST_ENTRIES);
    for (int i = 0; i < count; i++) {
      int entry = ifd + 2 + 12 * i;
      if (entry + 12 > end) {
        return 1;
      }
      if (two(bytes, entry, big) == ORIENTATION) {
        return two(bytes, entry + 8, big);
      }
    }
    return 1;
  }

  /** Mirrored ones are written by no camera. */
  private static Point turned(int orientation) {
    return switch (orientation) {
      case 3 -> new Point(0, 1);
      case 6 -> new Point(-1, 0);
      case 8 -> new Point(1, 0);
      default -> UPRIGHT;
    };
  }

  private static int two(byte[] b, int at, boolean big) {
    int first = b[at] & 0xff;
    int second = b[at + 1] & 0xff;
    return big ? first << 8 | second : second << 8 | first;
  }

  private static long four(byte[] b, int at, boolean big) {
    long first = two(b, at, big);
    long second = two(b, at + 2, big);
    return big ? first << 16 | second : second << 16 | first;
  }
}
