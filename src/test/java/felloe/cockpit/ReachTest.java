package felloe.cockpit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cockpit.Reach.Grade;
import felloe.cockpit.Reach.Told;
import felloe.cockpit.Reach.With;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Body;
import felloe.plate.BodyMeasure;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Seat;
import felloe.plate.DemoPlates;
import felloe.plate.Driver;
import felloe.plate.Driver.People;
import felloe.plate.Face;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Switches from the grip, on a plate of 200 by 160 whose sides are straight beside the hands. */
class ReachTest {

  private static final long SEED = 20_261_202;
  private static final Hands HANDS = new Hands(new Point(-90, 0), new Point(90, 0), false);
  private static final double BEFORE = 10;
  private static final double BEHIND = 12;

  private static Plate plate(Point... switches) {
    List<Window> windows =
        java.util.Arrays.stream(switches)
            .map(
                p ->
                    new Window(
                        "S", WindowUse.SWITCH, Contour.circle(p, 6), Place.of("knot.yaml", 5, 1)))
            .toList();
    return DemoPlates.named("Knot", windows, List.of());
  }

  private static List<Reach> reach(Point at, Optional<Seated> seated) {
    return Reach.of(plate(at), seated, HANDS, BEHIND, BEFORE);
  }

  private static List<Grade> grades(Reach reach) {
    return reach.told().stream().map(Told::grade).toList();
  }

  /** Women's hands 70, 75, 85 broad, thumbs 40, 47, 53 and fingers 57, 63, 70 long. */
  @Test
  void aSwitchIsReachedWhereTheStraightLineIsShortEnough() {
    List<Reach> all = reach(new Point(60, 28), Optional.empty());
    Reach thumb = all.get(0);
    assertEquals(With.THUMB, thumb.with());
    // From (90, 37.5), the farther end, 10 above the face.
    assertEquals(Math.hypot(Math.hypot(30, 9.5), 10), thumb.away(), 1e-9);
    assertEquals(
        List.of(
            Grade.STRETCH, Grade.NO, Grade.REACHED, Grade.STRETCH, Grade.REACHED, Grade.STRETCH),
        grades(thumb));
    Reach finger = all.get(1);
    assertEquals(Math.hypot(Math.hypot(40, 9.5), 12), finger.away(), 1e-9);
    assertEquals(Grade.REACHED, grades(finger).get(2));
    assertEquals(Grade.STRETCH, grades(finger).get(3));
    assertTrue(!thumb.left());
  }

  @Test
  void theLeftHandReachesItsMirrorImageAsWell() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      Point p = new Point(20 + 60 * random.nextDouble(), -60 + 120 * random.nextDouble());
      List<Reach> right = reach(p, Optional.empty());
      List<Reach> left = reach(new Point(-p.x(), p.y()), Optional.empty());
      for (int k = 0; k < 2; k++) {
        String where = "seed " + SEED + ": " + p;
        assertEquals(right.get(k).away(), left.get(k).away(), 1e-9, where);
        assertEquals(grades(right.get(k)), grades(left.get(k)), where);
        assertTrue(left.get(k).left(), where);
      }
    }
  }

  /** Nothing is told better for a glove, a smaller thumb, or a thicker grip. */
  @Test
  void noGloveReachesFartherAndNoThickerGripDoes() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      Plate plate =
          plate(new Point(20 + 60 * random.nextDouble(), -60 + 120 * random.nextDouble()));
      List<Reach> thin = Reach.of(plate, Optional.empty(), HANDS, BEHIND, BEFORE);
      List<Reach> thick = Reach.of(plate, Optional.empty(), HANDS, BEHIND + 5, BEFORE + 5);
      for (int k = 0; k < 2; k++) {
        List<Grade> bare = grades(thin.get(k));
        for (int n = 0; n < bare.size(); n += 2) {
          assertTrue(bare.get(n).compareTo(bare.get(n + 1)) <= 0, "seed " + SEED);
          assertTrue(bare.get(n).compareTo(grades(thick.get(k)).get(n)) <= 0, "seed " + SEED);
        }
      }
    }
  }

  /** A driver with measures of his own is told beside the percentiles. */
  @Test
  void aDriverWithALongThumbReachesWhatThePercentilesDoNot() {
    Driver driver =
        new Driver(
            People.MEN,
            50,
            Map.of(BodyMeasure.THUMB, 90.0, BodyMeasure.GLOVE, 0.0),
            Optional.empty(),
            Place.BUILT_IN);
    Cockpit cockpit =
        new Cockpit(
            0,
            1,
            500,
            30,
            40,
            List.of(),
            Optional.of(new Seat(200, 450, 0, 0)),
            Optional.of(driver),
            Optional.empty(),
            Optional.empty(),
            Place.BUILT_IN);
    Reach thumb = reach(new Point(30, 25), Seated.of(cockpit)).get(0);
    assertEquals(8, thumb.told().size());
    assertEquals(Grade.NO, grades(thumb).get(4));
    assertEquals(Grade.REACHED, grades(thumb).get(6));
    assertEquals(Grade.REACHED, grades(thumb).get(7));
    assertTrue(thumb.told().get(6).percentile().isEmpty());
  }

  /** What sits in an opening is reached where it stands, a paddle on the back by the finger. */
  @Test
  void aButtonIsReachedAsHighAsItStandsAndAPaddleAtItsEdge() {
    Point at = new Point(60, 28);
    Body button = body(Face.FRONT, 10, Optional.empty());
    Reach thumb = reach(button, at);
    assertEquals(With.THUMB, thumb.with());
    assertEquals(Math.hypot(30, 9.5), thumb.away(), 1e-9);
    Contour blade = Contour.rectangle(new Box(40, 0, 70, 60));
    Body paddle = body(Face.BACK, 2, Optional.of(new Body.Arm(blade, 12, 3)));
    Reach finger = reach(paddle, at);
    assertEquals(With.FINGER, finger.with());
    assertEquals(30 + 12, finger.away(), 1e-9);
  }

  private static Body body(Face face, double height, Optional<Body.Arm> arm) {
    return new Body(
        "it",
        "S",
        face,
        Contour.circle(new Point(60, 28), 8),
        height,
        Optional.empty(),
        20,
        arm,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Place.of("knot.yaml", 6, 1));
  }

  private static Reach reach(Body body, Point at) {
    Plate bare = plate(at);
    Plate with =
        new Plate(
            bare.name(),
            bare.title(),
            bare.revision(),
            bare.outline(),
            bare.windows(),
            bare.holes(),
            bare.boltCircles(),
            bare.hub(),
            bare.stock(),
            bare.making(),
            bare.limits(),
            bare.notes(),
            bare.joints(),
            bare.load(),
            List.of(),
            List.of(),
            List.of(body),
            Optional.empty());
    List<Reach> all = Reach.of(with, Optional.empty(), HANDS, BEHIND, BEFORE);
    assertEquals(1, all.size());
    return all.get(0);
  }

  @Test
  void aPlateWithoutSwitchesHasNothingToReach() {
    assertTrue(Reach.of(plate(), Optional.empty(), HANDS, BEHIND, BEFORE).isEmpty());
  }
}
