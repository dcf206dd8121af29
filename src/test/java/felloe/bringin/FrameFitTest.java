package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Where the camera stands, on rendered photos of the fifth sheet, printed in dots of 600 to an
 * inch, through a lens that is longer than a telephone's.
 */
class FrameFitTest {

  private static final double LONG_LENS = 1.2;

  private static Taken above;
  private static Taken aside;

  /** A photo, what is seen on it, and where its camera stands. */
  private record Taken(Light light, List<MarksFound.Seen> seen, double height, double focal) {

    static Taken at(double oblique) throws IOException {
      PhotoScene scene =
          new PhotoScene(
              21,
              2000,
              1500,
              LONG_LENS,
              0,
              PhotoScene.Laid.ONE,
              new PhotoScene.Amiss(oblique, 0, 0));
      PhotoFile photo = PhotoFile.of(scene.jpeg(), "part.jpg");
      Light light = photo.light();
      List<MarksFound.Seen> seen = MarksFound.in(photo.grey(), light.width(), light.height());
      return new Taken(
          light, seen, scene.camera.stands()[2], Math.exp(scene.camera.numbers()[Camera.FOCAL]));
    }

    FrameFit fit(OptionalDouble focal, OptionalDouble tape) {
      return FrameFit.of(light, focal, seen, tape);
    }

    double off(FrameFit fit) {
      return Math.abs(fit.camera().stands()[2] - height);
    }
  }

  @BeforeAll
  static void take() throws IOException {
    above = Taken.at(0.5);
    aside = Taken.at(15);
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  @Test
  void fromStraightAboveTheHeightIsToldToBeUnsure() {
    FrameFit fit = above.fit(NONE, NONE);
    assertTrue(fit.heightSpread() > 0.05 * above.height, "spread " + fit.heightSpread());
    assertTrue(above.off(fit) < 2 * fit.heightSpread(), above.off(fit) + " off");
  }

  @Test
  void fromAsideTheMarksTellTheHeight() {
    FrameFit fit = aside.fit(NONE, NONE);
    assertTrue(fit.heightSpread() < 0.02 * aside.height, "spread " + fit.heightSpread());
    assertTrue(aside.off(fit) < 2 * fit.heightSpread(), aside.off(fit) + " off");
  }

  @Test
  void aLensThatTheCameraTellsIsTaken() {
    FrameFit fit = above.fit(OptionalDouble.of(1.03 * above.focal), NONE);
    assertFalse(fit.contradicted());
    assertTrue(fit.reliedOnLens());
    assertTrue(fit.heightSpread() < 0.08 * above.height, "spread " + fit.heightSpread());
    assertEquals(1.03 * above.height, fit.camera().stands()[2], 0.03 * above.height);
  }

  @Test
  void aLensThatTheMarksDenyIsPassedOver() {
    FrameFit fit = aside.fit(OptionalDouble.of(0.6 * aside.focal), NONE);
    assertTrue(fit.contradicted());
    assertEquals(aside.fit(NONE, NONE).camera().stands()[2], fit.camera().stands()[2], 0);
  }

  @Test
  void aTapeTellsWhatTheMarksDoNot() {
    FrameFit fit = above.fit(NONE, OptionalDouble.of(above.height + 4));
    assertTrue(fit.heightSpread() < 10, "spread " + fit.heightSpread());
    assertEquals(above.height + 4, fit.camera().stands()[2], 3);
  }

  @Test
  void aTapeThatTheMarksDenyIsKnown() {
    FrameFit fit = aside.fit(NONE, OptionalDouble.of(2 * aside.height));
    assertFalse(fit.holds(2 * aside.height));
    assertEquals(aside.fit(NONE, NONE).camera().stands()[2], fit.camera().stands()[2], 0);
  }
}
