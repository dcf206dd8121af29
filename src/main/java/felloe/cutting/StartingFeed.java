package felloe.cutting;

import java.util.Optional;

/**
 * Figures to start from with one cutter in one material; listen, look and adjust.
 *
 * @param title the material in words
 * @param speed spindle speed, 1/min
 * @param feed speed x flutes x chip load, mm/min
 * @param chipLoad mm a tooth
 * @param mostChip the most that is usual, mm a tooth
 * @param surfaceSpeed pi x diameter x speed, m/min
 * @param stepDown depth of a pass, mm
 * @param ramp steepest way down, radians
 * @param drillSurfaceSpeed for drills, m/min
 * @param drillFeed for drills, mm a turn
 * @param basis where the figures come from
 * @param note what else to know
 * @param wear how the cutter wears, where that matters
 */
public record StartingFeed(
    String title,
    double speed,
    double feed,
    double chipLoad,
    double mostChip,
    double surfaceSpeed,
    double stepDown,
    double ramp,
    double drillSurfaceSpeed,
    double drillFeed,
    String basis,
    String note,
    Optional<Wear> wear) {

  /**
   * How a cutter wears.
   *
   * @param metres length of cut after which it should be looked at, m
   * @param note in words
   */
  public record Wear(double metres, String note) {}
}
