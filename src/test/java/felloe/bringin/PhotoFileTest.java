package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Photos that are not trusted. */
class PhotoFileTest {

  private static byte[] saved(String kind, int width, int height) throws IOException {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    image.getRaster().setSample(3, 2, 0, 200);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, kind, out);
    return out.toByteArray();
  }

  private static String refused(byte[] bytes) {
    return assertThrows(BadInput.class, () -> PhotoFile.of(bytes, "wheel.jpg")).getMessage();
  }

  @Test
  void greyValuesAreReadAsTheyWereSaved() throws IOException {
    PhotoFile photo = PhotoFile.of(saved("png", 700, 650), "wheel.png");
    assertEquals(200, photo.grey()[2 * 700 + 3] & 0xff);
    assertEquals(Light.decoded(200 / 255.0), photo.light().at(3, 2), 1e-6);
  }

  @Test
  void aHeaderThatPromisesTooMuchIsRefusedBeforeAnythingIsDecoded() throws IOException {
    byte[] png = saved("png", 700, 650);
    // Width and height follow the signature and the first chunk's name.
    ByteBuffer.wrap(png).putInt(16, 60_000).putInt(20, 60_000);
    assertTrue(refused(png).contains("too many"), refused(png));
  }

  @Test
  void whatIsTooSmallIsRefused() throws IOException {
    assertTrue(refused(saved("png", 700, 300)).contains("too few"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void aPhotoThatEndsTooEarlyIsRefusedOrReadAsFarAsItGoes(String kind) throws IOException {
    byte[] whole = saved(kind, 700, 650);
    for (int part = 0; part < 20; part++) {
      byte[] cut = Arrays.copyOf(whole, whole.length * part / 20);
      try {
        PhotoFile.of(cut, "wheel.jpg");
      } catch (BadInput told) {
        assertTrue(told.getMessage().contains("wheel.jpg"), told.getMessage());
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GIF89a", "<svg/>", "\u0089PNG\r\n", "BM"})
  void whatIsNoPhotoIsRefused(String text) {
    String said = refused(text.getBytes(StandardCharsets.ISO_8859_1));
    assertTrue(said.contains("is neither") || said.contains("broken"), said);
  }

  @ParameterizedTest
  @ValueSource(
      ints = {
        BufferedImage.TYPE_INT_RGB,
        BufferedImage.TYPE_4BYTE_ABGR,
        BufferedImage.TYPE_USHORT_GRAY,
        BufferedImage.TYPE_BYTE_INDEXED,
        BufferedImage.TYPE_BYTE_BINARY
      })
  void coloursOfEveryKindAreRead(int type) throws IOException {
    BufferedImage image = new BufferedImage(640, 620, type);
    image.setRGB(5, 4, 0xffffffff);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    PhotoFile photo = PhotoFile.of(out.toByteArray(), "wheel.png");
    assertEquals(255, photo.grey()[4 * 640 + 5] & 0xff);
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpeg"})
  void bytesThatWereChangedAreReadOrRefusedInWords(String kind) throws IOException {
    byte[] whole = saved(kind, 700, 650);
    Random random = new Random(7);
    for (int i = 0; i < 30; i++) {
      byte[] broken = whole.clone();
      for (int k = 0; k < 6; k++) {
        broken[random.nextInt(Math.min(broken.length, 800))] = (byte) random.nextInt(256);
      }
      try {
        PhotoFile.of(broken, "wheel.jpg");
      } catch (BadInput told) {
        assertTrue(told.getMessage().contains("wheel.jpg"), told.getMessage());
      }
    }
  }

  @Test
  void coloursForPrintAreRefusedAsSuch() throws IOException {
    WritableRaster inks = Raster.createBandedRaster(DataBuffer.TYPE_BYTE, 640, 620, 4, null);
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.write(new IIOImage(inks, null, null));
    }
    writer.dispose();
    String said = refused(out.toByteArray());
    assertTrue(said.contains("colours for print (CMYK)"), said);
  }

  @Test
  void aGifOfSeveralPicturesIsRefusedAsSuch() throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("gif").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (var stream = ImageIO.createImageOutputStream(out)) {
      writer.setOutput(stream);
      writer.prepareWriteSequence(null);
      for (int i = 0; i < 3; i++) {
        BufferedImage image = new BufferedImage(640, 620, BufferedImage.TYPE_BYTE_INDEXED);
        image.setRGB(i, i, 0xffffffff);
        writer.writeToSequence(new IIOImage(image, null, null), null);
      }
      writer.endWriteSequence();
    }
    writer.dispose();
    assertTrue(refused(out.toByteArray()).contains("3 pictures"), refused(out.toByteArray()));
    assertTrue(refused(saved("gif", 640, 620)).contains("is neither a JPEG nor a PNG"));
  }

  @Test
  void aPngOfSeveralPicturesIsRefusedAsSuch() throws IOException {
    byte[] plain = saved("png", 700, 650);
    // An acTL chunk, 5 pictures, after the header chunk, which ends 33 bytes from the start.
    ByteBuffer moving = ByteBuffer.allocate(plain.length + 20);
    moving.put(plain, 0, 33).putInt(8).put("acTL".getBytes(StandardCharsets.ISO_8859_1));
    moving.putInt(5).putInt(0).putInt(0).put(plain, 33, plain.length - 33);
    assertTrue(refused(moving.array()).contains("5 pictures"), refused(moving.array()));
  }

  @Test
  void aFileThatIsTooLargeIsRefused() {
    assertTrue(refused(new byte[PhotoFile.BYTES + 1]).contains("too large"));
  }
}
