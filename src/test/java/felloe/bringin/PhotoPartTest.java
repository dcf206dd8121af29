package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.awt.image.RescaleOp;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A photo is measured, or refused with what to do about it. The wheel is invented. */
class PhotoPartTest {

  private static PhotoScene scene;
  private static byte[] jpeg;

  /**
   * The same scene with a quarter of the pixels: too few to measure, and enough to see the rest.
   */
  private static PhotoScene coarse;

  private static BufferedImage photo;

  @BeforeAll
  static void taken() throws IOException {
    scene = new PhotoScene(12, 4000, 3000, 0.78, 0);
    jpeg = scene.jpeg();
    coarse = new PhotoScene(12, 2000, 1500, 0.78, 0);
    photo = ImageIO.read(new ByteArrayInputStream(coarse.jpeg()));
  }

  private static BringIn.Wish wish(double thickness) {
    return new BringIn.Wish(
        Sizing.OWN,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(thickness),
        OptionalDouble.empty(),
        Brought.ASKED);
  }

  private static byte[] saved(BufferedImage image) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "jpeg", out);
    return out.toByteArray();
  }

  private static String refused(BufferedImage image) throws IOException {
    byte[] bytes = saved(image);
    return assertThrows(
            BadInput.class, () -> BringIn.photo(bytes, "wheel.jpg", wish(scene.thickness)))
        .getMessage();
  }

  private static BufferedImage copy() {
    BufferedImage image =
        new BufferedImage(photo.getWidth(), photo.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    image.setData(photo.getData());
    return image;
  }

  @Test
  void aWheelIsMeasuredWithAllItsOpeningsAndADarkMarkOnItIsTold() throws IOException {
    // Long and a little darker than the face, below the hub: no hole, and yet it may be one.
    BufferedImage marked = ImageIO.read(new ByteArrayInputStream(jpeg));
    double[] from = new double[2];
    double[] to = new double[2];
    scene.camera.project(-6, -65, scene.thickness, from);
    scene.camera.project(6, -65, scene.thickness, to);
    Graphics2D g = marked.createGraphics();
    int grey = marked.getRaster().getSample((int) from[0], (int) from[1], 0) * 5 / 6;
    g.setColor(new Color(marked.getColorModel().getRGB(new byte[] {(byte) grey})));
    g.setStroke(new BasicStroke(7));
    g.drawLine((int) from[0], (int) from[1], (int) to[0], (int) to[1]);
    g.dispose();
    PhotoMeasured found = BringIn.photo(saved(marked), "wheel.jpg", wish(scene.thickness));
    String notes = found.plate().notes().toString();
    assertTrue(notes.contains("A spot on the part may be a hole"), notes);
    assertEquals(1, found.picture().doubts().size());
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
            OptionalDouble.empty(),
            Brought.ASKED);
    BadInput told = assertThrows(BadInput.class, () -> BringIn.photo(jpeg, "wheel.jpg", none));
    assertEquals(3, told.problems().size());
    assertTrue(told.lines().toString().contains("--thickness 9"));
  }

  @Test
  void aCameraHeightThatTheMarksDenyIsRefused() throws IOException {
    byte[] bytes = saved(photo);
    BringIn.Wish wish =
        new BringIn.Wish(
            Sizing.OWN,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(scene.thickness),
            OptionalDouble.of(300),
            Brought.ASKED);
    BadInput told = assertThrows(BadInput.class, () -> BringIn.photo(bytes, "wheel.jpg", wish));
    assertTrue(told.getMessage().contains("is not how high the camera stood"), told.getMessage());
    assertTrue(told.getMessage().contains("leave out --camera-height"), told.getMessage());
  }

  @Test
  void aDrawingHasNeitherThicknessNorCamera() {
    BringIn.Wish wish =
        new BringIn.Wish(
            Sizing.OWN,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(9),
            OptionalDouble.of(950),
            Brought.ASKED);
    BadInput told =
        assertThrows(
            BadInput.class,
            () ->
                BringIn.of(
                    Brought.svg("<circle r='9'/>").getBytes(StandardCharsets.UTF_8),
                    "a.svg",
                    wish));
    assertEquals(2, told.problems().size());
    assertTrue(told.lines().toString().contains("leave out --camera-height"));
  }

  @Test
  void aPhotoWithoutMarksIsRefused() throws IOException {
    BufferedImage blank = even(0x808080);
    assertTrue(refused(blank).contains("no mark of the photo frame"), refused(blank));
  }

  @Test
  void aPhotoThatIsAllDarkOrAllWhiteIsRefusedForThat() throws IOException {
    assertTrue(refused(even(0x050505)).contains("under-exposed"), refused(even(0x050505)));
    assertTrue(refused(even(0xffffff)).contains("over-exposed"), refused(even(0xffffff)));
  }

  private static BufferedImage even(int colour) {
    BufferedImage image = new BufferedImage(1200, 900, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(colour));
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.dispose();
    return image;
  }

  @Test
  void aPhotoOfHalfTheSizeHasTooFewPixels() throws IOException {
    String said = refused(copy());
    assertTrue(said.contains("pixels a millimetre"), said);
  }

  @ParameterizedTest
  @ValueSource(floats = {0.2f, 0.03f})
  void aPhotoThatIsTooDarkIsRefusedForThat(float share) throws IOException {
    BufferedImage dark = copy();
    new RescaleOp(share, 0, null).filter(dark, dark);
    assertTrue(refused(dark).contains("under-exposed"), refused(dark));
  }

  @ParameterizedTest
  @ValueSource(ints = {5, 9})
  void aPhotoThatIsBlurredIsRefusedForThat(int wide) throws IOException {
    // Three boxes, one after the other, are nearly what a lens out of focus does.
    float[] box = new float[wide];
    Arrays.fill(box, 1f / wide);
    BufferedImage image = copy();
    for (int round = 0; round < 3; round++) {
      BufferedImage rows = new ConvolveOp(new Kernel(wide, 1, box)).filter(image, null);
      image = new ConvolveOp(new Kernel(1, wide, box)).filter(rows, null);
    }
    assertTrue(refused(image).contains("is blurred"), refused(image));
  }

  private static String refused(PhotoScene.Amiss amiss) throws IOException {
    byte[] bytes = new PhotoScene(12, 2000, 1500, 0.78, 0, PhotoScene.Laid.FOUR, amiss).jpeg();
    return assertThrows(
            BadInput.class, () -> BringIn.photo(bytes, "wheel.jpg", wish(scene.thickness)))
        .getMessage();
  }

  @Test
  void aPhotoFromTheSideIsRefusedForThat() throws IOException {
    String said = refused(new PhotoScene.Amiss(38, 0, 0));
    assertTrue(said.contains("is too oblique"), said);
  }

  @ParameterizedTest
  @CsvSource({"8, 0", "0, 0.15", "4, 0.1"})
  void aSheetThatIsLiftedOrLeansIsRefusedForThat(double lift, double lean) throws IOException {
    String said = refused(new PhotoScene.Amiss(0, lift, lean));
    assertTrue(said.contains("flat on one plane"), said);
  }

  @Test
  void aPhotoThatIsTooBrightIsRefused() throws IOException {
    BufferedImage bright = copy();
    new RescaleOp(1.6f, 0, null).filter(bright, bright);
    String said = refused(bright);
    assertTrue(said.contains("over-exposed"), said);
  }

  /** Paints a strip as light or dark as the part's face, on the plane of the paper. */
  private static void paint(BufferedImage image, double fromY, double toY, double x, float wide) {
    double[] from = new double[2];
    double[] to = new double[2];
    double[] face = new double[2];
    coarse.camera.project(x, fromY, 0, from);
    coarse.camera.project(x, toY, 0, to);
    double rim = coarse.part.contours.get(0).box().maxY();
    coarse.camera.project(0, rim - 8, coarse.thickness, face);
    int grey = image.getRaster().getSample((int) face[0], (int) face[1], 0);
    Graphics2D g = image.createGraphics();
    g.setColor(new Color(image.getColorModel().getRGB(new byte[] {(byte) grey})));
    g.setStroke(new BasicStroke(wide, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    g.drawLine((int) from[0], (int) from[1], (int) to[0], (int) to[1]);
    g.dispose();
  }

  @Test
  void aSheetWhoseMarksAreCoveredIsRefusedForThat() throws IOException {
    // The sheet above the part, all but a mark or two at its far end.
    BufferedImage image = copy();
    paint(image, 200, 375, 60, 300);
    paint(image, 200, 305, 0, 400);
    String said = refused(image);
    assertTrue(said.contains("of sheet 1 alone can be read"), said);
  }

  @Test
  void whatReachesFromThePartOverTheMarksIsRefusedForThat() throws IOException {
    BufferedImage image = copy();
    double rim = coarse.part.contours.get(0).box().maxY();
    paint(image, rim - 20, 300, 0, 50);
    String said = refused(image);
    assertTrue(said.contains("reaches the marks"), said);
  }
}
