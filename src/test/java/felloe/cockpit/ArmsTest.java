package felloe.cockpit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.PaperPlates;
import felloe.geometry.Point;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Cockpit.Spot;
import felloe.plate.DemoPlates;
import felloe.plate.Driver;
import felloe.plate.Driver.People;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.awt.geom.Line2D;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Arms whose hands stay where they hold, against closed forms and other ways to ask. */
class ArmsTest {

  private static final long SEED = 20_261_201;
  private static final double RING = 170;
  private static final Hands HANDS = new Hands(new Point(-RING, 0), new Point(RING, 0), false);
  private static final Plate PLATE = PaperPlates.bittern();

  /** Elbows of the 50th of men are 245 + 48.5 above the seat, 232.5 aside; the hub as high. */
  private static final double ELBOW = 245 + 97 / 2.0;

  private static Cockpit cockpit(double hub, double degrees, Seat seat) {
    Driver driver = new Driver(People.MEN, 50, Map.of(), Optional.empty(), Place.BUILT_IN);
    return new Cockpit(
        0,
        Math.toRadians(degrees),
        hub,
        30,
        40,
        List.of(),
        Optional.of(seat),
        Optional.of(driver),
        Optional.empty(),
        Optional.empty(),
        Place.BUILT_IN);
  }

  private static List<Arms> arms(Cockpit cockpit) {
    return Arms.of(PLATE, cockpit, Seated.of(cockpit), HANDS);
  }

  private static double depth() {
    return 30 + PLATE.stock().asMade() / 2;
  }

  /**
   * Elbows level with the hub: half the distance of the forearms' middles is the distance of the
   * hub axis from either, as seen along it.
   */
  @Test
  void forearmsMeetWhereTheHubAxisIsHalfAWidthFromEither() {
    Cockpit cockpit = cockpit(200 + ELBOW, 179, new Seat(200, 500, 0, 0));
    double e = 465 / 2.0;
    for (Arms arms : arms(cockpit)) {
      double turn = Math.abs(arms.meet().orElseThrow());
      double foot =
          e * RING * Math.sin(turn) / Math.hypot(e - RING * Math.cos(turn), RING * Math.sin(turn));
      assertEquals(97 / 2.0, foot, 0.05);
      assertTrue(turn > Math.PI / 2);
      // As seen along the column they cross on the axis alone, at half a turn.
      assertTrue(arms.cross().isEmpty());
    }
  }

  /** The hand goes round a circle; the shoulder sees it at the law of cosines. */
  @Test
  void anArmIsAtFullStretchWhereTheLawOfCosinesSaysSo() {
    Seat seat = new Seat(200, 640, 0, 0);
    Cockpit cockpit = cockpit(480, 179, seat);
    Arms left = arms(cockpit).get(0);
    double behind = 640 - 125 - depth();
    double up = 200 + 595 - 480;
    // The left hand goes down and away from the left shoulder.
    double far = Math.hypot(200, up);
    double sum = 665 * 665 - behind * behind - RING * RING - far * far;
    double between = Math.acos(-sum / (2 * RING * far));
    double shoulder = Math.PI - Math.atan2(up, 200);
    double turn = shoulder + between - Math.PI;
    assertEquals(turn, left.stretched().orElseThrow(), Math.toRadians(0.02));
    Arms right = arms(cockpit).get(1);
    assertEquals(-turn, right.stretched().orElseThrow(), Math.toRadians(0.02));
  }

  @Test
  void aSeatTooFarBackIsToldStraightAhead() {
    Cockpit cockpit = cockpit(480, 90, new Seat(200, 1200, 0, 0));
    assertEquals(0, arms(cockpit).get(0).stretched().orElseThrow());
  }

  /** Another library's answer to whether two lines cross, at turns close together. */
  @Test
  void forearmsCrossWhereAnotherLibrarySaysSo() {
    Random random = new Random(SEED);
    int crossed = 0;
    for (int i = 0; i < 60; i++) {
      double hub = 350 + 250 * random.nextDouble();
      Cockpit cockpit =
          cockpit(
              hub, 179, new Seat(200, 350 + 200 * random.nextDouble(), 0, random.nextDouble() / 2));
      Seated driver = Seated.of(cockpit).orElseThrow();
      Arms arms = arms(cockpit).get(0);
      double first = Double.NaN;
      for (double turn = 0; turn < Math.toRadians(179) && Double.isNaN(first); turn += 0.001) {
        double x = RING * Math.cos(turn);
        double y = RING * Math.sin(turn);
        Spot l = driver.elbow(-1);
        Spot r = driver.elbow(1);
        if (Line2D.linesIntersect(-x, -y, l.x(), l.y() - hub, x, y, r.x(), r.y() - hub)) {
          first = turn;
        }
      }
      String where = "seed " + SEED + ", round " + i;
      assertEquals(!Double.isNaN(first), arms.cross().isPresent(), where);
      if (arms.cross().isPresent()) {
        crossed++;
        assertEquals(first, arms.cross().getAsDouble(), 0.002, where);
      }
    }
    assertTrue(crossed > 5, "only " + crossed);
  }

  @Test
  void waysInSpaceAreAsFarApartAsTheNearestOfManyPlaces() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      Spot[] p = new Spot[4];
      for (int k = 0; k < 4; k++) {
        p[k] =
            new Spot(
                100 * random.nextDouble(), 100 * random.nextDouble(), 100 * random.nextDouble());
      }
      double least = Double.POSITIVE_INFINITY;
      for (int s = 0; s <= 400; s++) {
        Spot on = p[0].plus(p[1].plus(p[0], -1), s / 400.0);
        least = Math.min(least, Ways.distance(on, p[2], p[3]));
      }
      double told = Ways.distance(p[0], p[1], p[2], p[3]);
      assertTrue(told <= least + 1e-9, "seed " + SEED + ", round " + i);
      assertEquals(least, told, 0.3, "seed " + SEED + ", round " + i);
    }
    Spot o = new Spot(0, 0, 0);
    assertEquals(5, Ways.distance(o, o, new Spot(3, 4, 0), new Spot(3, 4, 9)), 1e-12);
  }

  /** Without grips: at 9 and 3, in the rim. */
  @Test
  void handsAreInTheRimAtNineAndThree() {
    for (Plate plate : DemoPlates.all()) {
      Hands hands = Hands.of(plate, List.of());
      assertEquals(0, hands.right().y(), 1, plate.name());
      assertTrue(plate.outline().contains(hands.left()), plate.name());
      assertTrue(plate.outline().distance(hands.left()) <= 15 + 1e-6, plate.name());
    }
  }
}
