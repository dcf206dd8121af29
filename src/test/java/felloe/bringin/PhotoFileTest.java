package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageIO;
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
}
