package felloe.cockpit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.plate.BadInput;
import felloe.plate.BodyMeasure;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.plate.Driver;
import felloe.plate.Driver.Heels;
import felloe.plate.Driver.People;
import felloe.plate.Place;
import felloe.plate.SourcedFigure;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The driver on the seat, against triangles, and his measures against what was read. */
class SeatedTest {

  private static final long SEED = 20_261_130;
  private static final double NEAR = 1e-9;

  private static Cockpit cockpit(Seat seat, Driver driver) {
    return new Cockpit(
        0,
        1,
        500,
        30,
        40,
        List.of(),
        Optional.of(seat),
        Optional.of(driver),
        Optional.empty(),
        Optional.empty(),
        Place.BUILT_IN);
  }

  private static Seated seated(Seat seat, Driver driver) {
    return Seated.of(cockpit(seat, driver)).orElseThrow();
  }

  private static Driver driver(Optional<Heels> heels) {
    return new Driver(People.MEN, 50, Map.of(), heels, Place.BUILT_IN);
  }

  private static void assertSpot(double x, double y, double z, Spot spot) {
    assertEquals(x, spot.x(), NEAR);
    assertEquals(y, spot.y(), NEAR);
    assertEquals(z, spot.z(), NEAR);
  }

  @Test
  void anUprightTrunkHasItsMeasuresStraightUp() {
    Seated seated = seated(new Seat(200, 600, 10, 0), driver(Optional.empty()));
    assertSpot(10, 200 + 790, 600 - (195 - 20), seated.eye());
    assertSpot(10 + 200, 200 + 595, 600 - 125, seated.shoulder(1));
    assertSpot(10 - 465 / 2.0, 200 + 245 + 97 / 2.0, 600 - 125, seated.elbow(-1));
  }

  /** A trunk that lies flat has up as behind, and before as up. */
  @Test
  void aLeaningTrunkIsTheUprightOneTurnedAboutTheSeat() {
    Seated flat = seated(new Seat(200, 600, 0, Math.PI / 2), driver(Optional.empty()));
    assertSpot(200, 200 + 125, 600 + 595, flat.shoulder(1));
    assertSpot(0, 200, 600 + 790 - (195 - 20), flat.eye());
  }

  /** Thigh 435, shin 490 between their middles: a triangle of whole numbers' squares. */
  @Test
  void aKneeIsTheCornerOfATriangle() {
    double thigh = 595 - 160;
    double shin = 545 + 25 - 80;
    // The hip lies 80 above and before the seat; heels as far apart as the hips, straight ahead.
    Heels heels = new Heels(360 - 160, 280, 100, Place.BUILT_IN);
    Seated seated = seated(new Seat(200, 500, 0, 0), driver(Optional.of(heels)));
    Limb leg = (Limb) seated.legs(List.of()).get(1).room();
    double far = 500 - 80 + 100;
    double along = (thigh * thigh - shin * shin + far * far) / (2 * far);
    assertSpot(100, 280 + Math.sqrt(thigh * thigh - along * along), 420 - along, leg.from());
    assertSpot(100, 280, 420, leg.to());
    assertEquals(80, leg.radius(), NEAR);
  }

  @Test
  void anyKneeIsAsFarFromHipAndHeelAsTheLegIsLongAndNeverBelowTheirLine() {
    Random random = new Random(SEED);
    for (int i = 0; i < 200; i++) {
      Seat seat =
          new Seat(
              100 + 200 * random.nextDouble(),
              400 + 200 * random.nextDouble(),
              0,
              random.nextDouble());
      Heels heels =
          new Heels(
              400 * random.nextDouble(),
              150 * random.nextDouble(),
              250 * random.nextDouble(),
              Place.BUILT_IN);
      for (Thing thing : seated(seat, driver(Optional.of(heels))).legs(List.of())) {
        String where = "seed " + SEED + ", round " + i + ": " + thing;
        Limb leg = (Limb) thing.room();
        double side = thing.name().startsWith("left") ? -1 : 1;
        Spot heel = new Spot(side * heels.apart() / 2, heels.height(), -heels.ahead());
        assertEquals(435, leg.from().distance(leg.to()), 1e-6, where);
        assertEquals(490, leg.from().distance(heel), 1e-6, where);
        Spot way = leg.to().toward(heel);
        double at = 435 * 435 - 490 * 490 + Math.pow(leg.to().distance(heel), 2);
        Spot foot = leg.to().plus(way, at / (2 * leg.to().distance(heel)));
        assertTrue(leg.from().y() >= foot.y() - 1e-6, where);
      }
    }
  }

  @Test
  void heelsOutOfReachAreRefusedWithBothLengths() {
    Heels far = new Heels(240, 0, 900, Place.BUILT_IN);
    Seated seated = seated(new Seat(200, 600, 0, 0), driver(Optional.of(far)));
    BadInput refused = assertThrows(BadInput.class, () -> seated.legs(List.of()));
    assertTrue(refused.getMessage().contains("farther than the 925 mm"), refused.getMessage());
    Heels under = new Heels(240, 280, -515, Place.BUILT_IN);
    Seated folded = seated(new Seat(200, 600, 0, 0), driver(Optional.of(under)));
    assertThrows(BadInput.class, () -> folded.legs(List.of()));
  }

  @Test
  void whatTheMakerWroteGoesBeforeTheTableAndBeforeReckonedLegs() {
    Heels heels = new Heels(240, 0, 200, Place.BUILT_IN);
    Driver own =
        new Driver(
            People.WOMEN,
            95,
            Map.of(BodyMeasure.EYE_HEIGHT, 700.0),
            Optional.of(heels),
            Place.BUILT_IN);
    Seated seated = seated(new Seat(200, 500, 0, 0), own);
    assertEquals(700, seated.mm(BodyMeasure.EYE_HEIGHT));
    assertEquals(280, seated.mm(BodyMeasure.ELBOW_HEIGHT));
    Thing written =
        new Thing("left leg", new Limb(new Spot(0, 0, 0), new Spot(0, 0, 0), 5), Place.BUILT_IN);
    List<Thing> legs = seated.legs(List.of(written));
    assertEquals(List.of("right leg"), legs.stream().map(Thing::name).toList());
  }

  /** Rows that were read in the tables of the City University of Hong Kong. */
  @Test
  void theTableHasWhatWasRead() {
    DriverTable table = DriverTable.standard();
    assertRow(table, People.MEN, BodyMeasure.ELBOW_HEIGHT, 195, 245, 295);
    assertRow(table, People.WOMEN, BodyMeasure.ELBOW_HEIGHT, 185, 235, 280);
    assertRow(table, People.MEN, BodyMeasure.THIGH, 135, 160, 185);
    assertRow(table, People.MEN, BodyMeasure.KNEE_HEIGHT, 490, 545, 595);
    assertRow(table, People.MEN, BodyMeasure.SHOULDERS, 365, 400, 430);
    assertRow(table, People.WOMEN, BodyMeasure.SHOULDERS, 325, 355, 380);
    assertRow(table, People.MEN, BodyMeasure.ARM, 610, 665, 715);
    assertRow(table, People.MEN, BodyMeasure.HAND, 80, 85, 95);
    assertRow(table, People.WOMEN, BodyMeasure.HAND, 70, 75, 85);
  }

  /** The larger people are, the larger each measure; each has a source. */
  @Test
  void everyRowGrowsWithThePercentileAndNamesItsSource() {
    DriverTable table = DriverTable.standard();
    for (People people : People.values()) {
      for (BodyMeasure measure : BodyMeasure.values()) {
        double before = 0;
        for (int percentile : table.percentiles()) {
          SourcedFigure figure = table.figure(people, percentile, measure);
          assertTrue(figure.value() >= before, measure.name());
          assertTrue(figure.basis().length() > 20, measure.name());
          before = figure.value();
        }
      }
    }
  }

  private static void assertRow(
      DriverTable table, People people, BodyMeasure measure, double... figures) {
    for (int i = 0; i < figures.length; i++) {
      int percentile = table.percentiles().get(i);
      assertEquals(figures[i], table.figure(people, percentile, measure).value());
    }
  }
}
