package felloe.cockpit;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.grips.GripRun;
import felloe.grips.GripStations;
import felloe.grips.PlacedGrip;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.plate.Problem;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where two hands hold the wheel, in its axes, straight ahead: in the middle of the grip that is
 * nearest to 9 and to 3 o'clock, else on the bare rim at 9 and 3.
 *
 * @param left middle of what the left hand closes about
 * @param right middle of what the right hand closes about
 * @param onGrips whether each lies on a grip
 */
public record Hands(Point left, Point right, boolean onGrips) {

  /** A hand's middle lies no deeper in the rim than half of this, mm: half a grip's girth or so. */
  private static final double RIM = 30;

  /** A grip farther from 9 or 3 than this is no hand's place, radians. */
  private static final double BESIDE = Math.toRadians(60);

  /**
   * Finds them.
   *
   * @throws BadInput when the plate has no edge at 9 or 3
   */
  public static Hands of(Plate plate, List<PlacedGrip> grips) {
    Optional<Point> left = onGrip(grips, Math.PI);
    Optional<Point> right = onGrip(grips, 0);
    return new Hands(
        left.orElseGet(() -> onRim(plate, Math.PI)),
        right.orElseGet(() -> onRim(plate, 0)),
        left.isPresent() && right.isPresent());
  }

  private static Optional<Point> onGrip(List<PlacedGrip> grips, double direction) {
    return grips.stream()
        .filter(grip -> !grip.run().closed())
        .map(grip -> grip.run().at(grip.run().length() / 2, grip.over() / 2))
        .filter(p -> off(p, direction) <= BESIDE)
        .min(Comparator.comparingDouble(p -> off(p, direction)));
  }

  private static double off(Point p, double direction) {
    return Math.abs(Math.IEEEremainder(p.angle() - direction, 2 * Math.PI));
  }

  private static Point onRim(Plate plate, double direction) {
    ArcLengthIndex outline = new ArcLengthIndex(plate.outline());
    Point edge =
        outline
            .outermost(direction)
            .orElseThrow(
                () ->
                    new BadInput(
                        new Problem(
                            plate.stock().place(),
                            "outline",
                            "",
                            "has no edge at 9 or 3 o'clock for hands to hold",
                            "turn it so that hands are left and right of the hub axis")));
    GripRun run = GripRun.round(plate.outline());
    double s = run.foot(edge).s();
    double web = GripStations.web(plate, run, s).width();
    double deep = Math.max(Tolerances.SAME_POINT, Math.min(RIM, web) / 2);
    return run.at(s, deep);
  }

  /** The left or the right one. */
  public Point of(int side) {
    return side < 0 ? left : right;
  }
}
