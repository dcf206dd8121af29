package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Objects;
import java.util.Optional;

/**
 * How the maker means to work, as far as the shape depends on it.
 *
 * @param cutterDiameter diameter of the router cutter, burr or file that finishes inside corners,
 *     mm
 * @param roughAllowance distance from the finish line out to the rough line, mm
 * @param gripScale thickness of the grip scale on each face, mm; 0 for a bare plate
 * @param position how the hub holes get their position; empty when nothing is said, which counts as
 *     {@link HolePosition#TEMPLATE}
 * @param edges what is done to the edges
 * @param blade the blade that it is sawn with; empty when nothing is said of sawing
 * @param printer the printer for grips and jigs; empty when nothing is said of it, which counts as
 *     {@link Printer#USUAL}
 */
public record Making(
    double cutterDiameter,
    double roughAllowance,
    double gripScale,
    Optional<HolePosition> position,
    EdgeFinish edges,
    Optional<SawBlade> blade,
    Optional<Requested<Printer>> printer) {

  /**
   * Refuses figures below zero.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Making {
    if (Numbers.finite("cutterDiameter", cutterDiameter) < 0
        || Numbers.finite("roughAllowance", roughAllowance) < 0
        || Numbers.finite("gripScale", gripScale) < 0) {
      throw new IllegalArgumentException("making figures must not be below zero");
    }
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(edges, "edges");
    Objects.requireNonNull(blade, "blade");
    Objects.requireNonNull(printer, "printer");
  }

  /** Whether the shape file says that the hub holes get their position so. */
  public boolean places(HolePosition way) {
    return position.filter(p -> p == way).isPresent();
  }

  /** Work of which nothing is said about hole positions, edges, saw and printer. */
  public Making(double cutterDiameter, double roughAllowance, double gripScale) {
    this(
        cutterDiameter,
        roughAllowance,
        gripScale,
        Optional.empty(),
        EdgeFinish.NONE,
        Optional.empty(),
        Optional.empty());
  }
}
