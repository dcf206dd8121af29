package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.plate.Hole;
import java.util.List;

/** Which holes of a router's job are drilled and which are bored on a helix. */
final class HoleWork {

  /** A bored hole is at least this many cutters wide, so that chips get out; common practice. */
  static final double ROOM = 1.2;

  /** A drill does for a hole that differs from it by no more, mm. */
  static final double SAME_SIZE = 0.05;

  /** Deeper than this many diameters a hole is drilled in pecks; common practice. */
  private static final double PECK_BEYOND = 3;

  /** Half the point angle's complement of a usual drill: 118 degrees, so 31 degrees. */
  private static final double POINT = Math.toRadians(31);

  private final CutSetup setup;

  HoleWork(CutSetup setup) {
    this.setup = setup;
  }

  /** Whether a hole is drilled; a slotted one is cut along its edge. */
  boolean drilled(Hole hole) {
    List<Double> sizes = setup.drills().sizes();
    return setup.process() == CutProcess.ROUTER
        && !hole.isSlotted()
        && hole.diameter() <= setup.drills().largest() + 1e-9
        && (sizes.isEmpty()
            || sizes.stream().anyMatch(d -> Math.abs(d - hole.diameter()) <= SAME_SIZE));
  }

  /** The drill for a hole that is drilled: the nearest size at hand, mm. */
  double drill(Hole hole) {
    return setup.drills().sizes().stream()
        .min((a, b) -> Double.compare(Math.abs(a - hole.diameter()), Math.abs(b - hole.diameter())))
        .orElse(hole.diameter());
  }

  /** Whether a hole is wide enough to be bored by the cutter. */
  boolean bored(Hole hole) {
    return hole.diameter() >= ROOM * setup.cutter() - 1e-9;
  }

  /** Why no drill does. */
  String whyNotDrilled() {
    List<Double> sizes = setup.drills().sizes();
    String largest = "drills go up to " + Numbers.brief(setup.drills().largest(), 2) + " mm";
    return sizes.isEmpty()
        ? largest
        : largest
            + ", at hand are "
            + String.join(", ", sizes.stream().map(d -> Numbers.brief(d, 2)).toList());
  }

  /** Length of a drill's point, mm: half the diameter times tan 31 degrees. */
  static double tip(double diameter) {
    return diameter / 2 * Math.tan(POINT);
  }

  /** The move that drills a hole. */
  Move.Drill move(Hole hole) {
    double drill = drill(hole);
    double deep = setup.depths().stock() + setup.depths().breakthrough() + tip(drill);
    double peck = deep > PECK_BEYOND * drill ? drill : 0;
    return new Move.Drill(hole.centre(), -deep, peck, speed(drill) * setup.rates().drillFeed());
  }

  /** Speed for a drill, 1/min, whole tens: its surface speed, at most the spindle's highest. */
  double speed(double drill) {
    double speed = 1000 * setup.rates().drillSurfaceSpeed() / (Math.PI * drill);
    return Math.max(10, 10 * Math.floor(Math.min(speed, setup.rates().highestSpeed()) / 10));
  }

  /** The drill as a tool. */
  CutterTool tool(double drill) {
    return new CutterTool(Numbers.brief(drill, 3) + " mm drill", CutterTool.Kind.DRILL, drill, 2);
  }
}
