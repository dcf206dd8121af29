package felloe.cockpit;

import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.BodyMeasure;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.plate.Driver;
import felloe.plate.Driver.Heels;
import felloe.plate.Problem;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The driver on the seat, in the car's axes. A plain model: the trunk lies on the back of the seat,
 * upper arms hang along it, the head is held level; shoulders and elbows lie half the chest's depth
 * before the back. A leg is two straight lines, from the middle of the hip, half a thigh from
 * cushion and back, to the middle of the knee and on to the heel; the knee is up, in the upright
 * plane of hip and heel. A thigh is as thick as at the hip all along, its knee too.
 */
public final class Seated {

  /** Eyes lie so far behind the brow, mm: City University of Hong Kong, table 26. */
  private static final double BEHIND_BROW = 20;

  private final Seat seat;
  private final Driver driver;
  private final DriverTable table;
  private final Map<BodyMeasure, SourcedFigure> figures;

  private Seated(Seat seat, Driver driver, DriverTable table) {
    this.seat = seat;
    this.driver = driver;
    this.table = table;
    this.figures = new EnumMap<>(BodyMeasure.class);
    for (BodyMeasure measure : BodyMeasure.values()) {
      figures.put(measure, table.of(driver, measure));
    }
  }

  /** The driver, if the cockpit tells of one. */
  public static Optional<Seated> of(Cockpit cockpit) {
    return cockpit
        .driver()
        .flatMap(d -> cockpit.seat().map(s -> new Seated(s, d, DriverTable.standard())));
  }

  /** Who it is. */
  Driver driver() {
    return driver;
  }

  /** What his measures come from, where they are not his own. */
  DriverTable table() {
    return table;
  }

  /** A measure, mm. */
  public double mm(BodyMeasure measure) {
    return figures.get(measure).value();
  }

  /** All measures with their sources, in a fixed order. */
  public List<SourcedFigure> figures() {
    return List.copyOf(figures.values());
  }

  /** A place so far up along the back of the seat, and so far before it. */
  private Spot trunk(double aside, double up, double before) {
    double sine = Math.sin(seat.back());
    double cosine = Math.cos(seat.back());
    return new Spot(
        seat.aside() + aside,
        seat.height() + up * cosine + before * sine,
        seat.behind() + up * sine - before * cosine);
  }

  /** The point between the eyes. */
  public Spot eye() {
    Spot neck = trunk(0, mm(BodyMeasure.EYE_HEIGHT), 0);
    return new Spot(neck.x(), neck.y(), neck.z() - (mm(BodyMeasure.HEAD_LENGTH) - BEHIND_BROW));
  }

  /**
   * A shoulder.
   *
   * @param side 1 for the right, -1 for the left
   */
  public Spot shoulder(int side) {
    return trunk(
        side * mm(BodyMeasure.SHOULDERS) / 2,
        mm(BodyMeasure.SHOULDER_HEIGHT),
        mm(BodyMeasure.CHEST_DEPTH) / 2);
  }

  /**
   * The middle of an elbow, beside the trunk.
   *
   * @param side 1 for the right, -1 for the left
   */
  public Spot elbow(int side) {
    return trunk(
        side * mm(BodyMeasure.BREADTH) / 2,
        mm(BodyMeasure.ELBOW_HEIGHT) + mm(BodyMeasure.FOREARM) / 2,
        mm(BodyMeasure.CHEST_DEPTH) / 2);
  }

  /**
   * Thighs with their knees, where heels are written and the maker has not written them himself.
   *
   * @param written what the maker wrote
   * @throws BadInput when no leg reaches from the seat to the heels, or bends so far
   */
  List<Thing> legs(List<Thing> written) {
    List<Thing> legs = new ArrayList<>();
    if (driver.heels().isEmpty()) {
      return legs;
    }
    Map<String, Integer> sides = new LinkedHashMap<>();
    sides.put("left leg", -1);
    sides.put("right leg", 1);
    Heels heels = driver.heels().get();
    sides.forEach(
        (name, side) -> {
          if (written.stream().noneMatch(thing -> thing.name().equals(name))) {
            legs.add(
                new Thing(
                    name,
                    new Limb(knee(heels, side), hip(side), mm(BodyMeasure.THIGH) / 2),
                    heels.place()));
          }
        });
    return legs;
  }

  private Spot hip(int side) {
    double half = mm(BodyMeasure.THIGH) / 2;
    return new Spot(
        seat.aside() + side * Math.max(0, mm(BodyMeasure.HIPS) / 2 - half),
        seat.height() + half,
        seat.behind() - half);
  }

  private Spot knee(Heels heels, int side) {
    Spot hip = hip(side);
    Spot heel = new Spot(seat.aside() + side * heels.apart() / 2, heels.height(), -heels.ahead());
    double half = mm(BodyMeasure.THIGH) / 2;
    double thigh = mm(BodyMeasure.BUTTOCK_KNEE) - 2 * half;
    double shin = mm(BodyMeasure.KNEE_HEIGHT) + mm(BodyMeasure.SHOE) - half;
    double far = hip.distance(heel);
    if (far > thigh + shin || far < Math.abs(thigh - shin)) {
      throw new BadInput(
          new Problem(
              heels.place(),
              "cockpit.driver.heels",
              "",
              far > thigh + shin
                  ? "lie "
                      + Numbers.fixed(far, 0)
                      + " mm from the hips, farther than the "
                      + Numbers.fixed(thigh + shin, 0)
                      + " mm that these legs reach"
                  : "lie " + Numbers.fixed(far, 0) + " mm from the hips, nearer than legs bend",
              "measure seat and heels again, pedals pressed, or write the driver's own measures"));
    }
    Spot along = hip.toward(heel);
    double down = (thigh * thigh - shin * shin + far * far) / (2 * far);
    double rise = Math.sqrt(Math.max(0, thigh * thigh - down * down));
    // Up, square to the line from hip to heel.
    double level = Math.hypot(along.x(), along.z());
    Spot up =
        level == 0
            ? new Spot(0, 0, -1)
            : new Spot(-along.y() * along.x() / level, level, -along.y() * along.z() / level);
    return hip.plus(along, down).plus(up, rise);
  }
}
