package felloe.bringin;

import felloe.geometry.Point;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the camera wrote into a JPEG (Exif, CIPA DC-008). Bounded: what does not read as it should
 * counts as not written.
 *
 * @param up the direction that is up, in pixels, whose y runs down (tag 274)
 * @param film the focal length that would show as much on film of 36 x 24 mm, mm (tag 41989)
 * @param wide the pixels that the camera saved across, 0 where it does not say (tag 40962)
 * @param high the same, down (tag 40963)
 */
record Exif(Point up, OptionalDouble film, int wide, int high) {

  private static final Point UPRIGHT = new Point(0, -1);
  private static final Exif NOTHING = new Exif(UPRIGHT, OptionalDouble.empty(), 0, 0);

  private static final int ORIENTATION = 0x0112;
  private static final int MORE = 0x8769;
  private static final int WIDE = 0xa002;
  private static final int HIGH = 0xa003;
  private static final int FILM = 0xa405;

  private static final int MOST_ENTRIES = 512;
  private static final int HEADER = 6;
  private static final int ENTRY = 12;

  /** The kind of a number of four bytes. */
  private static final int LONG = 4;

  /** Of a picture of film, 36 x 24 mm, from corner to corner. */
  private static final double FILM_DIAGONAL = Math.hypot(36, 24);

  /** Lenses that a part is photographed with, as on film, mm. */
  private static final double SHORTEST = 8;

  private static final double LONGEST = 1000;

  /** Shapes that differ by less are one: sizes are whole pixels. */
  private static final double SAME_SHAPE = 0.01;

  /** Reads. */
  static Exif of(byte[] bytes) {
    int at = 2;
    while (at + 4 <= bytes.length && (bytes[at] & 0xff) == 0xff) {
      int marker = bytes[at + 1] & 0xff;
      int length = two(bytes, at + 2, true);
      if (marker == 0xda || length < 2) {
        return NOTHING;
      }
      int from = at + 4;
      int end = Math.min(bytes.length, at + 2 + length);
      if (marker == 0xe1
          && end - from > HEADER + 8
          && bytes[from] == 'E'
          && bytes[from + 1] == 'x') {
        return new Fields(bytes, from + HEADER, end).read();
      }
      at += 2 + length;
    }
    return NOTHING;
  }

  /**
   * The focal length of a photo of that size, pixels; empty where it is not written, or the photo
   * is no longer of the shape that was taken.
   */
  OptionalDouble focal(int width, int height) {
    boolean said = film.isPresent() && film.getAsDouble() >= SHORTEST;
    if (!said || film.getAsDouble() > LONGEST || cut(width, height)) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(film.getAsDouble() / FILM_DIAGONAL * Math.hypot(width, height));
  }

  private boolean cut(int width, int height) {
    if (wide <= 0 || high <= 0) {
      return false;
    }
    double taken = Math.max(wide, high) / (double) Math.min(wide, high);
    double now = Math.max(width, height) / (double) Math.min(width, height);
    return Math.abs(now / taken - 1) > SAME_SHAPE;
  }

  private static int two(byte[] b, int at, boolean big) {
    int first = b[at] & 0xff;
    int second = b[at + 1] & 0xff;
    return big ? first << 8 | second : second << 8 | first;
  }

  /** The tables of one block. */
  private record Fields(byte[] bytes, int tiff, int end, boolean big) {

    Fields(byte[] bytes, int tiff, int end) {
      this(bytes, tiff, end, bytes[tiff] == 'M');
    }

    Exif read() {
      long first = four(tiff + 4);
      long more = number(first, MORE).orElse(0L);
      return new Exif(
          number(first, ORIENTATION).map(Fields::turned).orElse(UPRIGHT),
          number(more, FILM).map(mm -> OptionalDouble.of(mm)).orElse(OptionalDouble.empty()),
          pixels(more, WIDE),
          pixels(more, HIGH));
    }

    private int pixels(long table, int tag) {
      return (int) Math.min(number(table, tag).orElse(0L), Integer.MAX_VALUE);
    }

    /** A whole number out of the table that begins so far behind the header. */
    private Optional<Long> number(long table, int tag) {
      if (table <= 0 || table > end - tiff - 2) {
        return Optional.empty();
      }
      int at = tiff + (int) table;
      int count = Math.min(two(bytes, at, big), MOST_ENTRIES);
      for (int i = 0; i < count; i++) {
        int entry = at + 2 + ENTRY * i;
        if (entry + ENTRY > end) {
          return Optional.empty();
        }
        if (two(bytes, entry, big) == tag) {
          boolean wide = two(bytes, entry + 2, big) == LONG;
          return Optional.of(wide ? four(entry + 8) : two(bytes, entry + 8, big));
        }
      }
      return Optional.empty();
    }

    /** Mirrored ones are written by no camera. */
    private static Point turned(long orientation) {
      return switch ((int) orientation) {
        case 3 -> new Point(0, 1);
        case 6 -> new Point(-1, 0);
        case 8 -> new Point(1, 0);
        default -> UPRIGHT;
      };
    }

    private long four(int at) {
      long first = two(bytes, at, big);
      long second = two(bytes, at + 2, big);
      return big ? first << 16 | second : second << 16 | first;
    }
  }
}
