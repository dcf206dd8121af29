package felloe.cockpit;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.BodyMeasure;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * What becomes of two arms whose hands stay where they hold the rim while the wheel turns.
 *
 * <p>Elbows stay beside the trunk, see {@link Seated}. A forearm is a round thing with round ends
 * from the middle of the hand to the middle of the elbow, as thick all along as below the elbow, so
 * that forearms are told to meet a little early. An arm is at full stretch where the hand is as far
 * from the shoulder as a stretched arm grips.
 *
 * @param turn of the wheel, radians, to the left above zero: as far as is looked at
 * @param meet the first turn at which the forearms meet
 * @param cross the first at which their middles cross as seen along the column
 * @param stretched the first at which an arm is at full stretch; 0 where it is straight ahead
 */
public record Arms(
    double turn, OptionalDouble meet, OptionalDouble cross, OptionalDouble stretched) {

  /** Turns are looked at no farther apart, radians, and found no more exactly. */
  private static final double STEP = Math.toRadians(0.25);

  private static final double FOUND = Math.toRadians(0.01);

  /** To the left and to the right; nothing where nobody sits there. */
  public static List<Arms> of(Plate plate, Cockpit cockpit, Optional<Seated> seated, Hands hands) {
    return seated
        .map(driver -> new Turning(plate, cockpit, driver, hands))
        .map(turning -> List.of(turning.to(cockpit.lock()), turning.to(-cockpit.lock())))
        .orElse(List.of());
  }

  private record Turning(Plate plate, Cockpit cockpit, Seated driver, Hands hands) {

    private Spot hand(int side, double turn) {
      Point p = RigidTransform.turn(turn).of(hands.of(side));
      return WheelAxes.of(cockpit)
          .toCar(new Spot(p.x(), p.y(), cockpit.stack() + plate.stock().asMade() / 2));
    }

    private Arms to(double lock) {
      double width = driver.mm(BodyMeasure.FOREARM);
      double arm = driver.mm(BodyMeasure.ARM);
      return new Arms(
          lock,
          first(lock, turn -> forearms(turn) - width),
          first(lock, turn -> crossed(turn) ? -1 : 1),
          first(
              lock,
              turn ->
                  Math.min(
                      arm - hand(1, turn).distance(driver.shoulder(1)),
                      arm - hand(-1, turn).distance(driver.shoulder(-1)))));
    }

    private double forearms(double turn) {
      return Ways.distance(hand(-1, turn), driver.elbow(-1), hand(1, turn), driver.elbow(1));
    }

    private boolean crossed(double turn) {
      WheelAxes axes = WheelAxes.of(cockpit);
      Point[] p = new Point[4];
      for (int i = 0; i < 4; i++) {
        int side = i < 2 ? -1 : 1;
        Spot spot = axes.toWheel(i % 2 == 0 ? hand(side, turn) : driver.elbow(side));
        p[i] = new Point(spot.x(), spot.y());
      }
      return beside(p[0], p[1], p[2], p[3]) && beside(p[2], p[3], p[0], p[1]);
    }

    /** Whether two places lie to either side of a line. */
    private static boolean beside(Point from, Point to, Point a, Point b) {
      Point way = to.minus(from);
      return way.cross(a.minus(from)) * way.cross(b.minus(from)) < 0;
    }
  }

  /** The first turn at which a room is used up. */
  private static OptionalDouble first(double lock, DoubleUnaryOperator room) {
    if (room.applyAsDouble(0) <= 0) {
      return OptionalDouble.of(0);
    }
    int steps = (int) Math.ceil(Math.abs(lock) / STEP);
    for (int i = 1; i <= steps; i++) {
      double good = lock * (i - 1) / steps;
      double bad = lock * i / steps;
      if (room.applyAsDouble(bad) <= 0) {
        while (Math.abs(bad - good) > FOUND) {
          double middle = (good + bad) / 2;
          if (room.applyAsDouble(middle) <= 0) {
            bad = middle;
          } else {
            good = middle;
          }
        }
        // The side on which there is still room.
        return OptionalDouble.of(good);
      }
    }
    return OptionalDouble.empty();
  }
}
