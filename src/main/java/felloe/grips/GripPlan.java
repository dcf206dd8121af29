package felloe.grips;

import felloe.geometry.Region;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The grips of a plate on its rim.
 *
 * @param plate the plate
 * @param grips in the order of the shape file; empty for a bare plate and for one of flat scales
 */
public record GripPlan(Plate plate, List<PlacedGrip> grips) {

  public GripPlan {
    grips = List.copyOf(grips);
  }

  /**
   * Lays the grips of a plate on its rim.
   *
   * @throws BadInput with all that does not fit, each with its place: a stretch that the rim does
   *     not have, a section that a corner is too tight for, a grip that closes a window, buries a
   *     hole or meets another grip
   */
  public static GripPlan of(Plate plate) {
    Problems problems = new Problems();
    List<PlacedGrip> placed = new ArrayList<>();
    Map<List<Double>, List<Region>> bands = new HashMap<>();
    for (Grip grip : plate.grips()) {
      new GripPlacing(plate, grip, bands, problems).placed().ifPresent(placed::add);
    }
    GripMeeting.check(placed, problems);
    problems.throwIfAny();
    return new GripPlan(plate, placed);
  }

  /** Height of what lies on a face where a hole stands, without wrap, mm; empty for nothing. */
  public Optional<Double> thickAt(Hole hole, Face face) {
    return grips.stream().flatMap(grip -> grip.thickAt(hole, face).stream()).findFirst();
  }

  /**
   * How far a wrap reaches into a window beside which a grip is held, mm; 0 for none.
   *
   * @param window its label
   */
  public double wrapInto(String window) {
    return grips.stream()
        .filter(grip -> grip.grip().wrap() > 0)
        .filter(
            grip ->
                GripStations.of(plate, grip).stream()
                    .anyMatch(station -> station.window().filter(window::equals).isPresent()))
        .mapToDouble(grip -> grip.grip().wrap())
        .max()
        .orElse(0);
  }

  /** Whether there are any. */
  public boolean any() {
    return !grips.isEmpty();
  }

  /** Whether one of them is glued to the plate. */
  public boolean bonded() {
    return grips.stream().anyMatch(grip -> grip.grip().bonded());
  }
}
