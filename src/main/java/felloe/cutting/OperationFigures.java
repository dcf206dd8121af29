package felloe.cutting;

import felloe.geometry.Point;

/**
 * How far and how long an operation goes. The time is an estimate: it knows no acceleration.
 *
 * @param cut length of cut, mm
 * @param travel length of travel in the air, up and down too, mm
 * @param minutes time, minutes
 */
public record OperationFigures(double cut, double travel, double minutes) {

  /** Nothing. */
  public static final OperationFigures NONE = new OperationFigures(0, 0, 0);

  /** The sum. */
  public OperationFigures plus(OperationFigures other) {
    return new OperationFigures(cut + other.cut, travel + other.travel, minutes + other.minutes);
  }

  /**
   * Measures an operation.
   *
   * @param from where the cutter stands before it, at the clearance height
   * @param height heights
   * @param rate how fast the machine travels, mm/min
   */
  static OperationFigures of(Operation operation, Point from, JobHeights height, double rate) {
    double cut = 0;
    double travel = 0;
    double minutes = 0;
    double z = height.clearance();
    Point at = from;
    for (Move move : operation.moves()) {
      if (move instanceof Move.Cut c) {
        double length = Math.hypot(c.along().length(), c.toZ() - c.fromZ());
        cut += length;
        minutes += length / c.feed();
        at = c.along().to();
        z = c.toZ();
      } else if (move instanceof Move.Travel t) {
        double length = height.clearance() - z + at.distance(t.to());
        travel += length;
        minutes += length / rate;
        at = t.to();
        z = height.clearance();
      } else if (move instanceof Move.Sink s) {
        double fast = Math.max(0, z - height.approach());
        double slow = Math.min(z, height.approach()) - s.toZ();
        travel += fast + slow;
        minutes += fast / rate + slow / s.feed();
        z = s.toZ();
      } else if (move instanceof Move.Drill d) {
        double deep = height.approach() - d.bottom();
        double way = at.distance(d.at()) + 2 * (height.clearance() - height.approach()) + deep;
        // Each peck goes back up and down again through what is drilled already.
        double pecks = d.peck() > 0 ? Math.ceil(-d.bottom() / d.peck()) - 1 : 0;
        way += pecks * deep;
        cut += deep;
        travel += way;
        minutes += deep / d.feed() + way / rate;
        at = d.at();
        z = height.clearance();
      }
    }
    return new OperationFigures(cut, travel, minutes);
  }

  /** Where an operation ends, in plan. */
  static Point end(Operation operation, Point from) {
    Point at = from;
    for (Move move : operation.moves()) {
      if (move instanceof Move.Cut c) {
        at = c.along().to();
      } else if (move instanceof Move.Travel t) {
        at = t.to();
      } else if (move instanceof Move.Drill d) {
        at = d.at();
      }
    }
    return at;
  }
}
