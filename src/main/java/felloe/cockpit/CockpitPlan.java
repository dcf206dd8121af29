package felloe.cockpit;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.plate.Plate;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The wheel in the car. The front door of this room.
 *
 * @param cockpit what the maker says of it
 * @param outline outer edge of what turns, grips that stick out included, in the wheel's axes
 * @param swept all that it sweeps, in the wheel's axes
 * @param back least height of what turns above the end of the column, along the column, mm
 * @param front greatest
 * @param clearances how near it comes to each thing, in the maker's order, legs that were reckoned
 *     last
 * @param seated the driver, where one is written
 */
public record CockpitPlan(
    Cockpit cockpit,
    Contour outline,
    Region swept,
    double back,
    double front,
    List<Clearance> clearances,
    Optional<Seated> seated) {

  /** Turns are looked at so many degrees apart. */
  private static final double STEP = 0.25;

  /** A turn that comes so near is as near, mm. */
  private static final double AS_NEAR = 0.02;

  public CockpitPlan {
    clearances = List.copyOf(clearances);
  }

  /**
   * Plans.
   *
   * @param outline outer edge of what turns
   * @param behind how far it reaches behind the plate's back face, mm
   * @param before how far it reaches before the plate's front face, mm
   * @throws BadInput for a thing that holds the middle of the wheel
   */
  public static CockpitPlan of(
      Plate plate, Cockpit cockpit, Contour outline, double behind, double before) {
    double back = cockpit.stack() - behind;
    double front = cockpit.stack() + plate.stock().asMade() + before;
    Region swept = SweptOutline.of(outline, cockpit.lock());
    WheelAxes axes = WheelAxes.of(cockpit);
    Optional<Seated> seated = Seated.of(cockpit);
    List<Thing> things = new ArrayList<>(cockpit.things());
    seated.ifPresent(driver -> things.addAll(driver.legs(cockpit.things())));
    refuseMiddle(things, axes.toCar(new Spot(0, 0, (back + front) / 2)));
    List<SweptWheel> wheels = new ArrayList<>(List.of(new SweptWheel(swept, back, front)));
    plate.bodies().forEach(body -> wheels.add(SweptWheel.of(body, plate, cockpit)));
    List<Clearance> clearances = new ArrayList<>();
    for (Thing thing : things) {
      SweptWheel.Nearest nearest =
          wheels.stream()
              .map(wheel -> wheel.to(thing.room(), axes))
              .reduce(SweptWheel.Nearest::nearer)
              .orElseThrow();
      Point there = new Point(nearest.wheel().x(), nearest.wheel().y());
      double turn = turn(outline, there, cockpit.lock());
      clearances.add(
          new Clearance(
              thing,
              nearest.distance(),
              RigidTransform.turn(-turn).of(there),
              turn,
              axes.toCar(nearest.wheel()),
              axes.toCar(nearest.thing())));
    }
    return new CockpitPlan(cockpit, outline, swept, back, front, clearances, seated);
  }

  private static void refuseMiddle(List<Thing> things, Spot middle) {
    List<Problem> problems = new ArrayList<>();
    for (Thing thing : things) {
      if (holds(thing, middle)) {
        problems.add(
            new Problem(
                thing.place(),
                thing.name(),
                "",
                "holds the middle of the wheel itself",
                "measure x from the middle of the column, y from the floor, z from the end of the"
                    + " column toward the driver"));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
  }

  private static boolean holds(Thing thing, Spot p) {
    if (thing.room() instanceof Limb limb) {
      return Ways.distance(p, limb.from(), limb.to()) <= limb.radius();
    }
    Block block = (Block) thing.room();
    return block.low().x() <= p.x()
        && p.x() <= block.high().x()
        && block.low().y() <= p.y()
        && p.y() <= block.high().y()
        && block.low().z() <= p.z()
        && p.z() <= block.high().z();
  }

  /** The turn nearest to straight ahead at which the wheel reaches a place that it sweeps. */
  private static double turn(Contour outline, Point there, double lock) {
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    int steps = (int) Math.ceil(Math.toDegrees(lock) / STEP);
    for (int i = 0; i <= steps; i++) {
      for (double side : new double[] {1, -1}) {
        double turn = side * Math.min(lock, Math.toRadians(i * STEP));
        Point before = RigidTransform.turn(-turn).of(there);
        double off = outline.contains(before) ? 0 : outline.distance(before);
        if (off < least - AS_NEAR) {
          least = off;
          best = turn;
        }
      }
    }
    return best;
  }

  /** The thing that the wheel comes nearest to; empty where none is written. */
  public Optional<Clearance> tightest() {
    return clearances.stream().min(Comparator.comparingDouble(Clearance::distance));
  }

  /** Whether a hand has its room beside everything. */
  public boolean well() {
    return clearances.stream().allMatch(one -> one.distance() >= cockpit.clearance());
  }
}
