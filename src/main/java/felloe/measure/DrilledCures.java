package felloe.measure;

import felloe.geometry.Tolerances;
import felloe.hub.Cure;
import felloe.hub.HubFit;
import felloe.hub.HubFitResult;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What mends a drilled plate whose screws do not enter, or may not at the worst. The odd holes
 * alone are mended if that does it: by a drill, else by a slot. Only then others are opened, else
 * slotted, else new ones are drilled.
 *
 * <p>A cure leaves room: at the worst of hub and readings, or, where nothing does, for the hub's
 * own tolerance ({@link HubFit#leastRoom}). Where the holes that are in their places leave less
 * than that, an odd one is mended until it leaves as much as they do.
 *
 * @param openings the holes to open; one way or none
 * @param cures slots or new holes, where no drill does it
 */
record DrilledCures(List<HoleEnlargement> openings, List<Cure> cures) {

  /** Nothing needs mending, or nothing does it. */
  static final DrilledCures NONE = new DrilledCures(List.of(), List.of());

  /**
   * Finds those for the screws; what the spigot asks for stands in the fit.
   *
   * @param plate as drilled
   * @param by the fit that it was judged with
   * @param step of the drills that are to be had, mm
   */
  static DrilledCures of(
      Plate plate,
      HubFit by,
      HubFitResult fit,
      List<DrilledHole> holes,
      List<OddHole> odd,
      double step) {
    double allowance = by.allowance(fit.hub());
    double least = HubFit.leastRoom(fit.hub());
    double room = fit.clearance().orElse(Double.NEGATIVE_INFINITY);
    List<Double> levels = levels(allowance, least, room);
    if (levels.isEmpty()) {
      return NONE;
    }
    List<String> labels = odd.stream().map(OddHole::label).toList();
    List<Cure> beside = by.besideOpening(plate, fit.hub(), labels);
    if (!odd.isEmpty()) {
      double others = HoleEnlargement.without(fit, holes, odd, step);
      List<Double> alone = levels(allowance, Math.min(least, others), room);
      for (double wanted : alone) {
        Optional<HoleEnlargement> drill =
            HoleEnlargement.alone(fit, holes, odd, wanted, allowance, step);
        if (drill.isPresent()) {
          return new DrilledCures(List.of(drill.get()), List.of());
        }
      }
      double wanted = alone.get(alone.size() - 1);
      List<Cure> slots = beside.stream().filter(cure -> slotted(cure, labels, wanted)).toList();
      if (!slots.isEmpty()) {
        return new DrilledCures(List.of(), slots);
      }
    }
    for (int most : new int[] {2, holes.size()}) {
      for (double wanted : levels) {
        Optional<HoleEnlargement> opened =
            HoleEnlargement.upTo(most, fit, holes, wanted, allowance, step);
        if (opened.isPresent()) {
          return new DrilledCures(List.of(opened.get()), List.of());
        }
      }
    }
    return fit.enters() ? NONE : new DrilledCures(List.of(), beside);
  }

  /** Rooms to ask for, the most first: those that the plate does not leave as it is. */
  private static List<Double> levels(double most, double least, double now) {
    List<Double> levels = new ArrayList<>();
    for (double level : new double[] {most, least}) {
      if (level > now + Tolerances.SAME_LENGTH) {
        levels.add(level);
      }
    }
    return levels;
  }

  /** Whether it makes slots of these holes alone, with so much room. */
  private static boolean slotted(Cure cure, List<String> labels, double wanted) {
    return cure instanceof Cure.Slots slots
        && slots.slots().stream().allMatch(slot -> labels.contains(slot.hole()))
        && slots.clearance() >= wanted - Tolerances.SAME_LENGTH;
  }
}
