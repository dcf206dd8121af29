package felloe.bringin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A 300 mm plate at 12 megapixels, from a metre away and some 15 degrees oblique: how near the
 * measured edges come to the truth.
 */
class PhotoScenesTest {

  private static final int WIDTH = 4000;
  private static final int HEIGHT = 3000;
  private static final double FOCAL = 0.78;

  @ParameterizedTest
  @ValueSource(longs = {4})
  void edgesLieWhereTheyAre(long seed) throws IOException {
    holds(seed, 0);
  }

  static LongStream many() {
    return LongStream.range(1000, 1200);
  }

  @ParameterizedTest
  @MethodSource("many")
  @EnabledIfSystemProperty(named = "felloe.scenes", matches = "all")
  void edgesLieWhereTheyAreInAllScenes(long seed) throws IOException {
    holds(seed, PhotoAccuracy.BAR);
  }

  /** What is said to hold in 95 of 100 holds in 93 to 97. */
  @Test
  @EnabledIfSystemProperty(named = "felloe.scenes", matches = "all")
  void theBoundHoldsAsOftenAsItSays() throws IOException {
    int within = 0;
    int all = 0;
    for (long seed : many().toArray()) {
      PhotoScene scene = new PhotoScene(seed, WIDTH, HEIGHT, FOCAL, PhotoAccuracy.BAR);
      PhotoScenes.Outcome outcome = PhotoScenes.measure(scene, false);
      within += outcome.within();
      all += outcome.dimensions();
    }
    double share = (double) within / all;
    assertTrue(share >= 0.93 && share <= 0.97, within + " of " + all);
  }

  private static void holds(long seed, double bar) throws IOException {
    PhotoScene scene = new PhotoScene(seed, WIDTH, HEIGHT, FOCAL, bar);
    PhotoScenes.Outcome outcome = PhotoScenes.measure(scene, false);
    String said = "scene " + seed + ": " + outcome;
    assertEquals(0, outcome.missing(), said);
    assertTrue(outcome.worst() <= 0.5, said);
    assertTrue(outcome.mean() <= 0.2, said);
    assertTrue(outcome.centres() <= 0.2, said);
    assertTrue(outcome.diameters() <= 0.2, said);
  }
}
