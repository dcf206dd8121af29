package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.awt.image.RescaleOp;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A photo is measured, or refused with what to do about it. The wheel is invented. */
class PhotoPartTest {

  private static PhotoScene scene;
  private static BufferedImage photo;
  private static byte[] jpeg;

  @BeforeAll
  static void taken() throws IOException {
    scene = new PhotoScene(12, 4000, 3000, 0.78, 0);
    jpeg = scene.jpeg();
    photo = ImageIO.read(new ByteArrayInputStream(jpeg));
  }

  private static BringIn.Wish wish(double thickness) {
    return new BringIn.Wish(
        Sizing.OWN,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(thickness),
        Brought.ASKED);
  }

  private static String refused(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return assertThrows(
            BadInput.class,
            () -> BringIn.photo(out.toByteArray(), "wheel.jpg", wish(scene.thickness)))
        .getMessage();
  }

  private static BufferedImage copy() {
    BufferedImage image =
        new BufferedImage(photo.getWidth(), photo.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    image.setData(photo.getData());
    return image;
  }

  @Test
  void aWheelIsMeasuredWithAllItsOpenings() {
    PhotoMeasured found = BringIn.photo(jpeg, "wheel.jpg", wish(scene.thickness));
    PlateOutline plate = found.plate();
    assertEquals(scene.part.contours.size(), plate.drawn().size());
    assertEquals(
        scene.part.contours.get(0).area(),
        plate.outline().area(),
        0.003 * scene.part.contours.get(0).area());
    assertEquals(48, found.told().marks());
    assertEquals(4, found.told().sheets());
    assertTrue(found.told().widthBound() > 0.1 && found.told().widthBound() < 0.6);
  }

  @Test
  void withoutAThicknessOrWithADrawingsOptionsItIsRefused() {
    BringIn.Wish none =
        new BringIn.Wish(
            new Sizing(OptionalDouble.of(280), OptionalDouble.empty()),
            OptionalDouble.of(1),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            Brought.ASKED);
    BadInput told = assertThrows(BadInput.class, () -> BringIn.photo(jpeg, "wheel.jpg", none));
    assertEquals(3, told.problems().size());
    assertTrue(told.lines().toString().contains("--thickness 9"));
  }

  @Test
  void aPhotoWithoutMarksIsRefused() throws IOException {
    BufferedImage blank = new BufferedImage(1200, 900, BufferedImage.TYPE_BYTE_GRAY);
    assertTrue(refused(blank).contains("no mark of the photo frame"), refused(blank));
  }

  @Test
  void aPhotoOfHalfTheSizeHasTooFewPixels() throws IOException {
    BufferedImage small = new BufferedImage(1600, 1200, BufferedImage.TYPE_BYTE_GRAY);
    new AffineTransformOp(
            AffineTransform.getScaleInstance(0.4, 0.4), AffineTransformOp.TYPE_BILINEAR)
        .filter(photo, small);
    assertTrue(refused(small).contains("too few"), refused(small));
  }

  @Test
  void aPhotoThatIsTooDarkIsRefused() throws IOException {
    BufferedImage dark = copy();
    new RescaleOp(0.15f, 0, null).filter(dark, dark);
    String said = refused(dark);
    assertTrue(said.contains("under-exposed") || said.contains("no mark"), said);
  }

  @Test
  void aPhotoThatIsTooBrightIsRefused() throws IOException {
    BufferedImage bright = copy();
    new RescaleOp(1.6f, 0, null).filter(bright, bright);
    String said = refused(bright);
    assertTrue(said.contains("over-exposed"), said);
  }

  @Test
  void aPartThatIsCoveredByPaperIsRefused() throws IOException {
    // A strip as light or dark as the part, from its middle over the nearest marks.
    BufferedImage image = copy();
    double[] middle = new double[2];
    scene.camera.project(0, 0, scene.thickness, middle);
    double[] beyond = new double[2];
    scene.camera.project(0, 330, scene.thickness, beyond);
    double[] face = new double[2];
    scene.camera.project(0, scene.part.contours.get(0).box().maxY() - 8, scene.thickness, face);
    int grey = image.getRaster().getSample((int) face[0], (int) face[1], 0);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(image.getColorModel().getRGB(new byte[] {(byte) grey})));
    g.setStroke(new java.awt.BasicStroke(240));
    g.drawLine((int) face[0], (int) face[1], (int) beyond[0], (int) beyond[1]);
    g.dispose();
    String said = refused(image);
    assertTrue(said.contains("reaches the marks") || said.contains("too few"), said);
  }
}
