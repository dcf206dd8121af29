package felloe.cockpit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.PaperPlates;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Room;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.plate.DemoPlates;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What a wheel sweeps and what it comes near to, against closed forms and a count of places. */
class CockpitPlanTest {

  private static final long SEED = 20_261_129;
  private static final double HUB = 500;

  /** A plate 5 mm thick. */
  private static final Plate PLATE = PaperPlates.bittern();

  private static final Contour BAR = Contour.rectangle(new Box(-100, -50, 100, 50));

  private static CockpitPlan plan(Contour outline, double column, double lock, Room room) {
    Cockpit cockpit =
        new Cockpit(
            Math.toRadians(column),
            Math.toRadians(lock),
            HUB,
            30,
            40,
            List.of(new Thing("it", room, Place.BUILT_IN)),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Place.BUILT_IN);
    return CockpitPlan.of(PLATE, cockpit, outline, 0, 0);
  }

  private static Clearance one(Contour outline, double column, double lock, Room room) {
    return plan(outline, column, lock, room).clearances().get(0);
  }

  private static Block block(double x0, double x1, double y0, double y1, double z0, double z1) {
    return new Block(new Spot(x0, y0, z0), new Spot(x1, y1, z1));
  }

  @Test
  void aRoundWheelIsAsNearAtEveryTurn() {
    Contour round = Contour.circle(Point.ORIGIN, 150);
    Clearance beside = one(round, 0, 90, block(200, 220, 400, 600, 0, 100));
    assertEquals(50, beside.distance(), Least.TOLERANCE);
    assertEquals(0, beside.turn());
    assertEquals(150, beside.radius(), 1e-9);
    // A ball above, on the wheel's own plane.
    Clearance above = one(round, 0, 90, new Limb(at(0, 720, 32), at(0, 720, 32), 20));
    assertEquals(720 - 500 - 150 - 20, above.distance(), Least.TOLERANCE);
    // Before its face: the plate's front is 35 mm from the end of the column.
    Clearance before = one(round, 0, 90, block(-20, 20, 480, 520, 75, 90));
    assertEquals(40, before.distance(), Least.TOLERANCE);
  }

  /** The corner of a bar is highest when it points up, if the lock lets it. */
  @Test
  void theCornerOfABarComesNearestWhereTheLockLetsIt() {
    double corner = Math.hypot(100, 50);
    double aside = Math.toDegrees(Math.atan2(50, 100));
    Room shelf = block(-300, 300, 650, 700, 0, 100);
    Clearance free = one(BAR, 0, 90, shelf);
    assertEquals(150 - corner, free.distance(), Least.TOLERANCE);
    assertEquals(90 - aside, Math.abs(Math.toDegrees(free.turn())), 1.5);
    Clearance held = one(BAR, 0, 30, shelf);
    double high = corner * Math.sin(Math.toRadians(30 + aside));
    assertEquals(150 - high, held.distance(), Least.TOLERANCE);
    assertEquals(30, Math.abs(Math.toDegrees(held.turn())), 0.5);
    assertEquals(corner, held.radius(), 0.02);
  }

  @Test
  void aSteepColumnLeansTheWheelTowardTheDash() {
    Contour round = Contour.circle(Point.ORIGIN, 150);
    double lean = Math.toRadians(30);
    // The top of the back edge: 150 along the plate, 30 along the column.
    double z = 30 * Math.cos(lean) - 150 * Math.sin(lean);
    Clearance dash = one(round, 30, 90, block(-200, 200, 0, 2000, -200, -100));
    assertEquals(z + 100, dash.distance(), Least.TOLERANCE);
    assertEquals(z, dash.wheel().z(), 0.05);
    assertEquals(HUB + 150 * Math.cos(lean) + 30 * Math.sin(lean), dash.wheel().y(), 0.5);
  }

  @Test
  void aThighIsARoundThingWithRoundEnds() {
    Contour round = Contour.circle(Point.ORIGIN, 150);
    // Level along z, below the rim.
    Clearance thigh = one(round, 0, 90, new Limb(at(0, 250, -100), at(0, 250, 400), 70));
    assertEquals(250 - 150 - 70, thigh.distance(), Least.TOLERANCE);
    assertEquals(320, thigh.near().y(), 0.05);
  }

  @Test
  void whatIsInTheWayMeets() {
    Clearance lever = one(BAR, 0, 90, block(-5, 5, 590, 700, 0, 100));
    assertTrue(lever.meets(), lever.toString());
    assertEquals(0, lever.distance(), Least.TOLERANCE);
    assertTrue(!one(BAR, 0, 10, block(-5, 5, 590, 700, 0, 100)).meets());
  }

  @Test
  void aThingThatHoldsTheWheelIsRefused() {
    BadInput box =
        assertThrows(BadInput.class, () -> plan(BAR, 0, 90, block(-300, 300, 0, 900, -100, 300)));
    assertTrue(box.getMessage().contains("holds the middle of the wheel itself"), box.toString());
    assertThrows(
        BadInput.class, () -> plan(BAR, 0, 90, new Limb(at(0, 300, 30), at(0, 700, 30), 60)));
  }

  @Test
  void aWholeTurnSweepsTheDiscOfTheFarthestCorner() {
    Region swept = SweptOutline.of(BAR, Math.PI);
    double corner = Math.hypot(100, 50);
    assertEquals(Math.PI * corner * corner, swept.properties().area(), 1e-6);
  }

  /** The more it is turned the more is swept, from the outline itself to a disc. */
  @Test
  void everyLockSweepsMoreThanTheOneBefore() {
    for (Plate plate : DemoPlates.all()) {
      for (double past : new double[] {0, 5.3}) {
        Contour outline =
            past == 0 ? plate.outline() : Offset.of(plate.outline(), past).get(0).outer();
        double reach = outline.farthest(Point.ORIGIN);
        double before = outline.properties().area();
        for (double degrees = 3; degrees < 180; degrees += 19.7) {
          double area = SweptOutline.of(outline, Math.toRadians(degrees)).properties().area();
          String where = plate.name() + ", " + past + " mm past, " + degrees + " degrees";
          assertTrue(area >= before - 1e-6, where);
          assertTrue(area <= Math.PI * reach * reach + 1e-6, where);
          before = area;
        }
      }
    }
  }

  /** A place is swept when one of many turned outlines holds it. */
  @Test
  void thePlacesThatAreSweptAreThoseOfTheTurnedOutlines() {
    Random random = new Random(SEED);
    for (Plate plate : DemoPlates.all()) {
      for (double degrees : new double[] {7, 35, 90, 135}) {
        double lock = Math.toRadians(degrees);
        Contour outline = plate.outline();
        Region swept = SweptOutline.of(outline, lock);
        double reach = outline.farthest(Point.ORIGIN);
        for (int i = 0; i < 150; i++) {
          Point p =
              Point.polar(
                  reach * (0.5 + 0.55 * random.nextDouble()), 2 * Math.PI * random.nextDouble());
          double edge = swept.outer().distance(p);
          if (edge > 0.3) {
            boolean held = false;
            for (double turn = -lock; turn <= lock + 1e-9 && !held; turn += 0.001) {
              held = outline.contains(RigidTransform.turn(-turn).of(p));
            }
            String where = "seed " + SEED + ", " + plate.name() + ", " + degrees + ": " + p;
            assertEquals(held, swept.contains(p), where);
          }
        }
      }
    }
  }

  private static Spot at(double x, double y, double z) {
    return new Spot(x, y, z);
  }
}
