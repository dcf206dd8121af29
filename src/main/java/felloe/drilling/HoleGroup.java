package felloe.drilling;

import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.List;

/**
 * Holes of one role and size, made in the same steps.
 *
 * @param role what they are for
 * @param labels in the order in which they are drilled
 * @param diameter as drawn, mm; of slotted holes their width
 * @param length over all of each of slotted holes, mm; the diameter of round ones
 * @param limits between what sizes they are good
 * @param tolerance class of the limits, such as {@code H13}
 * @param zone diameter of the zone in which each centre should lie, mm (ISO 1101)
 * @param zoneFrom where the zone comes from
 * @param steps in order; each is done on all holes of the group before the next
 * @param notes what else to know
 */
public record HoleGroup(
    HoleRole role,
    List<String> labels,
    double diameter,
    double length,
    SizeLimits limits,
    String tolerance,
    double zone,
    String zoneFrom,
    List<DrillStep> steps,
    List<String> notes) {

  public HoleGroup {
    labels = List.copyOf(labels);
    steps = List.copyOf(steps);
    notes = List.copyOf(notes);
  }

  /** The same with one more step, done last. */
  HoleGroup then(DrillStep step) {
    List<DrillStep> more = new ArrayList<>(steps);
    more.add(step);
    return new HoleGroup(
        role, labels, diameter, length, limits, tolerance, zone, zoneFrom, more, notes);
  }
}
