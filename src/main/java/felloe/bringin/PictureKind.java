package felloe.bringin;

import java.nio.charset.StandardCharsets;

/**
 * What the first bytes of a picture's file tell that a decoder does not tell apart: how many
 * pictures it holds, and whether its colours are those of print. Bounded: what does not read as it
 * should counts as one picture in usual colours, and is left to the decoder.
 */
final class PictureKind {

  private static final int PNG_HEADER = 8;
  private static final int GIF_HEADER = 13;

  /** More pictures than this are not counted. */
  private static final int MOST = 10_000;

  private PictureKind() {}

  /** How many pictures follow each other in a GIF (version 89a) or a PNG (its third edition). */
  static int pictures(byte[] bytes) {
    if (begins(bytes, 0, "GIF8") && bytes.length > GIF_HEADER) {
      return inGif(bytes);
    }
    return begins(bytes, 1, "PNG") ? inPng(bytes) : 1;
  }

  /** Chunks: length, name, what it holds, check. One called acTL says how many frames there are. */
  private static int inPng(byte[] bytes) {
    long at = PNG_HEADER;
    while (at + 12 <= bytes.length) {
      int here = (int) at;
      if (begins(bytes, here + 4, "acTL")) {
        return (int) Math.max(1, Math.min(MOST, four(bytes, here + 8)));
      }
      if (begins(bytes, here + 4, "IDAT")) {
        return 1;
      }
      at += 12 + four(bytes, here);
    }
    return 1;
  }

  private static int inGif(byte[] bytes) {
    int count = 0;
    int at = GIF_HEADER + table(bytes[10]);
    while (at < bytes.length && count < MOST) {
      int kind = bytes[at] & 0xff;
      if (kind == 0x2c && at + 10 < bytes.length) {
        count++;
        // The descriptor, its table of colours and the size of its codes come before the blocks.
        at = blocksEnd(bytes, at + 10 + table(bytes[at + 9]) + 1);
      } else if (kind == 0x21) {
        at = blocksEnd(bytes, at + 2);
      } else {
        break;
      }
    }
    return Math.max(1, count);
  }

  private static int table(byte flags) {
    return (flags & 0x80) == 0 ? 0 : 3 << (flags & 7) + 1;
  }

  private static int blocksEnd(byte[] bytes, int from) {
    int at = from;
    while (at < bytes.length && bytes[at] != 0) {
      at += 1 + (bytes[at] & 0xff);
    }
    return at + 1;
  }

  /** Whether a JPEG (ITU-T T.81) has four colours to a pixel, as for print. */
  static boolean forPrint(byte[] bytes) {
    int at = 2;
    while (at + 9 < bytes.length && (bytes[at] & 0xff) == 0xff) {
      int marker = bytes[at + 1] & 0xff;
      boolean frame =
          marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
      if (frame) {
        return bytes[at + 9] == 4;
      }
      at += 2 + ((bytes[at + 2] & 0xff) << 8 | bytes[at + 3] & 0xff);
    }
    return false;
  }

  private static boolean begins(byte[] bytes, int at, String text) {
    byte[] wanted = text.getBytes(StandardCharsets.ISO_8859_1);
    if (at + wanted.length > bytes.length) {
      return false;
    }
    for (int i = 0; i < wanted.length; i++) {
      if (bytes[at + i] != wanted[i]) {
        return false;
      }
    }
    return true;
  }

  private static long four(byte[] b, int at) {
    return (b[at] & 0xffL) << 24
        | (b[at + 1] & 0xff) << 16
        | (b[at + 2] & 0xff) << 8
        | b[at + 3] & 0xff;
  }
}
