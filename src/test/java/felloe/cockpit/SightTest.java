package felloe.cockpit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.PaperPlates;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Polygons.Polygon;
import felloe.geometry.Region;
import felloe.plate.BadInput;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Instrument;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What is hidden of an instrument, against similar triangles. */
class SightTest {

  private static final long SEED = 20_261_203;
  private static final double HUB = 500;

  /** Stack 30, plate 5: the wheel lies from 30 to 35 along a level column. */
  private static final Plate PLATE = PaperPlates.bittern();

  private static final double BACK = 30;
  private static final double FRONT = 35;

  private static Instrument square(double y, double side, double... degrees) {
    return new Instrument(
        "clock",
        new Spot(0, y, -100),
        side,
        side,
        false,
        0,
        java.util.Arrays.stream(degrees).map(Math::toRadians).boxed().toList(),
        Place.BUILT_IN);
  }

  private static Sight sight(Spot eye, Instrument instrument, Shade... between) {
    Cockpit cockpit =
        new Cockpit(
            0,
            Math.PI,
            HUB,
            BACK,
            40,
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(eye),
            Optional.of(instrument),
            Place.BUILT_IN);
    return Sight.of(PLATE, cockpit, Optional.empty(), List.of(between), BACK, FRONT).orElseThrow();
  }

  private static Shade shade(Region region) {
    return new Shade(List.of(Polygon.of(region, Sight.CHORD)), BACK, FRONT);
  }

  private static Shade shade(Contour contour) {
    return shade(Region.of(contour));
  }

  private static double share(Sight sight, int turn) {
    return sight.hidden().get(turn).share();
  }

  /** From the axis the front edge of a disc throws the larger shadow. */
  @Test
  void aDiscSeenFromTheAxisHidesADisc() {
    Sight sight =
        sight(new Spot(0, HUB, 635), square(HUB, 300, 0), shade(Contour.circle(Point.ORIGIN, 60)));
    double shadow = 60 * (635 + 100) / (635 - FRONT);
    assertEquals(Math.PI * shadow * shadow / (300 * 300), share(sight, 0), 5e-4);
  }

  /** Over a straight top edge one sees what lies above the line over its back or its front. */
  @Test
  void overAStraightEdgeTheHigherOfTwoLinesCounts() {
    Contour bar = Contour.rectangle(new Box(-400, -80, 400, 80));
    // From above the back edge is the higher line, from below the front edge.
    for (double up : new double[] {300, 40}) {
      Sight sight = sight(new Spot(0, HUB + up, 535), square(HUB + 30, 200, 0), shade(bar));
      double back = up - (up - 80) * (535 + 100) / (535 - BACK);
      double front = up - (up - 80) * (535 + 100) / (535 - FRONT);
      double top = Math.max(back, front);
      double low = 30 - 100;
      double under = up - (up + 80) * (535 + 100) / (535 - (up > -80 ? FRONT : BACK));
      double from = Math.max(low, Math.min(under, top));
      double expected = (Math.min(130, top) - from) / 200;
      assertEquals(expected, share(sight, 0), 1e-6, up + " mm up");
    }
  }

  /** Through a window one sees what neither its front nor its back edge hides. */
  @Test
  void aWindowShowsWhatLiesInBothOfItsEdges() {
    Contour outer = Contour.circle(Point.ORIGIN, 400);
    Contour window = Contour.rectangle(new Box(-50, -40, 50, 40));
    Spot eye = new Spot(30, HUB + 20, 635);
    Sight sight = sight(eye, square(HUB, 200, 0), shade(new Region(outer, List.of(window))));
    double wide =
        Math.min(at(50, 30, BACK), at(50, 30, FRONT))
            - Math.max(at(-50, 30, BACK), at(-50, 30, FRONT));
    double high =
        Math.min(at(40, 20, BACK), at(40, 20, FRONT))
            - Math.max(at(-40, 20, BACK), at(-40, 20, FRONT));
    assertEquals(1 - wide * high / (200 * 200), share(sight, 0), 1e-6);
  }

  private static double at(double edge, double eye, double z) {
    return eye + (edge - eye) * (635 + 100) / (635 - z);
  }

  /** A bar turned by a right angle hides the width that its height hid. */
  @Test
  void aTurnedBarHidesWithItsOtherSide() {
    Contour bar = Contour.rectangle(new Box(-400, -20, 400, 20));
    Sight sight = sight(new Spot(0, HUB, 635), square(HUB, 200, 0, 90, -90, 45), shade(bar));
    double expected = 2 * 20 * 735 / 600.0 / 200;
    for (int i = 0; i < 3; i++) {
      assertEquals(expected, share(sight, i), 1e-6);
    }
    // On the slant the same strip crosses the square from corner to corner.
    double strip = 2 * 20 * 735 / 600.0;
    double diagonal = strip * 200 * Math.sqrt(2) - strip * strip / 2;
    assertEquals(diagonal / (200 * 200), share(sight, 3), 1e-6);
  }

  /** Half a round instrument is half hidden; a leaning one is measured along its face. */
  @Test
  void aRoundInstrumentIsCutByAChordAndALeaningOneByItsOwnFace() {
    Contour half = Contour.rectangle(new Box(-900, -900, 0, 900));
    Instrument round =
        new Instrument(
            "clock", new Spot(0, HUB, -100), 80, 80, true, 0, List.of(0.0), Place.BUILT_IN);
    assertEquals(0.5, share(sight(new Spot(0, HUB, 635), round, shade(half)), 0), 1e-6);
    double lean = Math.toRadians(30);
    Instrument leaning =
        new Instrument(
            "clock", new Spot(0, HUB, -100), 80, 80, false, lean, List.of(0.0), Place.BUILT_IN);
    Contour low = Contour.rectangle(new Box(-900, -900, 900, 10));
    double share = share(sight(new Spot(0, HUB, 635), leaning, shade(low)), 0);
    // The sight line over the front edge meets the leaning face.
    double rise = 10 / (635 - FRONT);
    double up = rise * (635 + 100) / (Math.cos(lean) - rise * Math.sin(lean));
    assertEquals((up + 40) / 80, share, 1e-6);
  }

  /** More in the way never hides less; all of it is between nothing and everything. */
  @Test
  void moreInTheWayNeverHidesLess() {
    Random random = new Random(SEED);
    for (int i = 0; i < 40; i++) {
      Shade one = shade(Contour.circle(somewhere(random), 10 + 60 * random.nextDouble()));
      Shade two = shade(Contour.circle(somewhere(random), 10 + 60 * random.nextDouble()));
      Spot eye = new Spot(100 * random.nextDouble(), HUB + 300 * random.nextDouble(), 500);
      Instrument instrument = square(HUB + 50, 150, 0, 20, -130);
      Sight less = sight(eye, instrument, one);
      Sight more = sight(eye, instrument, one, two);
      for (int turn = 0; turn < 3; turn++) {
        String where = "seed " + SEED + ", round " + i;
        assertTrue(share(more, turn) >= share(less, turn) - 1e-9, where);
        assertTrue(share(less, turn) >= 0 && share(more, turn) <= 1, where);
      }
    }
  }

  private static Point somewhere(Random random) {
    return new Point(-100 + 200 * random.nextDouble(), -100 + 200 * random.nextDouble());
  }

  @Test
  void anEyeBehindTheWheelAndAnInstrumentBeforeItAreRefused() {
    Shade disc = shade(Contour.circle(Point.ORIGIN, 60));
    assertRefused(
        "puts the eye behind the wheel", new Spot(0, HUB, -300), square(HUB, 80, 0), disc);
    assertRefused("nearer than the 100 mm", new Spot(0, HUB, 90), square(HUB, 80, 0), disc);
    Instrument before =
        new Instrument(
            "clock", new Spot(0, HUB, 60), 80, 80, false, 0, List.of(0.0), Place.BUILT_IN);
    assertRefused("must lie beyond it", new Spot(0, HUB, 635), before, disc);
    Instrument away =
        new Instrument(
            "clock",
            new Spot(0, HUB + 400, -100),
            80,
            80,
            false,
            Math.toRadians(75),
            List.of(0.0),
            Place.BUILT_IN);
    assertRefused("turns its back to the eye", new Spot(0, HUB, 235), away, disc);
  }

  private static void assertRefused(
      String said, Spot eye, Instrument instrument, Shade... between) {
    BadInput refused = assertThrows(BadInput.class, () -> sight(eye, instrument, between));
    assertTrue(refused.getMessage().contains(said), refused.getMessage());
  }
}
