package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a camera writes: blocks laid out by hand as Exif has them (CIPA DC-008, tables as in TIFF
 * 6.0), in both orders of bytes.
 */
class ExifTest {

  private static final int SHORT = 3;
  private static final int LONG = 4;

  /** A JPEG's beginning with the fields of interest in two tables. */
  private static byte[] jpeg(
      ByteOrder order, int orientation, int film, int wide, int high, int kind) {
    ByteBuffer tiff = ByteBuffer.allocate(200).order(order);
    tiff.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.US_ASCII));
    tiff.putShort((short) 42).putInt(8);
    tiff.putShort((short) 2);
    field(tiff, 0x0112, SHORT, orientation);
    field(tiff, 0x8769, LONG, 38);
    tiff.putInt(0);
    assertEquals(38, tiff.position());
    tiff.putShort((short) 3);
    field(tiff, 0xa002, kind, wide);
    field(tiff, 0xa003, kind, high);
    field(tiff, 0xa405, SHORT, film);
    tiff.putInt(0);
    ByteBuffer all = ByteBuffer.allocate(12 + tiff.position());
    all.putInt(0xffd8ffe1).putShort((short) (8 + tiff.position()));
    all.put("Exif".getBytes(StandardCharsets.US_ASCII)).putShort((short) 0);
    all.put(tiff.array(), 0, tiff.position());
    return all.array();
  }

  private static void field(ByteBuffer tiff, int tag, int kind, int value) {
    tiff.putShort((short) tag).putShort((short) kind).putInt(1);
    if (kind == SHORT) {
      tiff.putShort((short) value).putShort((short) 0);
    } else {
      tiff.putInt(value);
    }
  }

  private static byte[] jpeg(int film, int wide, int high) {
    return jpeg(ByteOrder.BIG_ENDIAN, 1, film, wide, high, LONG);
  }

  @ParameterizedTest
  @CsvSource({"1, 0, -1", "3, 0, 1", "6, -1, 0", "8, 1, 0", "2, 0, -1", "77, 0, -1"})
  void whichSideIsUpIsRead(int orientation, int x, int y) {
    for (ByteOrder order : new ByteOrder[] {ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN}) {
      byte[] jpeg = jpeg(order, orientation, 26, 4000, 3000, SHORT);
      assertEquals(new Point(x, y), Exif.of(jpeg).up());
    }
  }

  @Test
  void theLensIsReadInPixelsOfTheDiagonal() {
    for (ByteOrder order : new ByteOrder[] {ByteOrder.BIG_ENDIAN, ByteOrder.LITTLE_ENDIAN}) {
      Exif exif = Exif.of(jpeg(order, 6, 26, 4000, 3000, LONG));
      // Film's diagonal is 43.27 mm; that of the photo is 5000 pixels.
      assertEquals(26 / 43.2666 * 5000, exif.focal(4000, 3000).orElseThrow(), 0.1);
      // Turned, or made smaller as a whole.
      assertEquals(26 / 43.2666 * 5000, exif.focal(3000, 4000).orElseThrow(), 0.1);
      assertEquals(26 / 43.2666 * 2500, exif.focal(2000, 1500).orElseThrow(), 0.1);
    }
  }

  @Test
  void aPhotoThatIsNoLongerOfTheShapeThatWasTakenHasLostItsLens() {
    assertEquals(OptionalDouble.empty(), Exif.of(jpeg(26, 4000, 3000)).focal(2000, 2000));
  }

  @ParameterizedTest
  @CsvSource({"0", "3", "5000"})
  void aLensThatNoCameraHasIsNotBelieved(int film) {
    assertEquals(OptionalDouble.empty(), Exif.of(jpeg(film, 4000, 3000)).focal(4000, 3000));
  }

  @Test
  void whereNothingIsWrittenOfThePixelsTheLensCounts() {
    assertTrue(Exif.of(jpeg(28, 0, 0)).focal(4000, 3000).isPresent());
  }

  @Test
  void aBlockThatEndsEarlyCountsAsNotWritten() {
    byte[] jpeg = jpeg(26, 4000, 3000);
    for (int length = 0; length < jpeg.length; length++) {
      Exif exif = Exif.of(Arrays.copyOf(jpeg, length));
      assertEquals(1, exif.up().norm(), 0);
      assertTrue(exif.film().isEmpty() || exif.film().getAsDouble() == 26);
    }
  }

  @Test
  void tablesThatPointAnywhereAreReadWithoutHarm() {
    byte[] jpeg = jpeg(ByteOrder.LITTLE_ENDIAN, 1, 26, 4000, 3000, LONG);
    for (int at = 12; at < jpeg.length; at++) {
      for (int value : new int[] {0, 0x7f, 0xff}) {
        byte[] other = jpeg.clone();
        other[at] = (byte) value;
        assertEquals(1, Exif.of(other).up().norm(), 0);
      }
    }
  }
}
