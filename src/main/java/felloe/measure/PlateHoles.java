package felloe.measure;

import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which hole of the plate each hole of a measured file is: by its label, or by a plain number,
 * which counts the hub holes in the order of the hole schedule.
 */
record PlateHoles(Plate plate, HubSpec hub) {

  List<Hole> of(Measured measured) {
    List<Hole> found = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    List<Hole> bolts = plate.holes(HoleRole.BOLT);
    for (String label : measured.labels()) {
      Optional<Hole> hole = find(label, bolts);
      if (hole.isPresent() && !found.contains(hole.get())) {
        found.add(hole.get());
      } else {
        String all = String.join(", ", plate.holes().stream().map(Hole::label).toList());
        problems.add(
            new Problem(
                measured.place(),
                "holes",
                label,
                hole.isPresent() ? "means a hole that is named already" : "is no hole of the plate",
                "its holes are " + all));
      }
    }
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    int screws = hub.choices().stream().mapToInt(PlateHoles::count).min().orElseThrow();
    List<String> missing = bolts.stream().filter(b -> !found.contains(b)).map(Hole::label).toList();
    int measuredBolts = bolts.size() - missing.size();
    if (measuredBolts < screws && !missing.isEmpty()) {
      throw new BadInput(
          new Problem(
              measured.place(),
              "holes",
              "",
              "must be all hub holes, but "
                  + String.join(", ", missing)
                  + (missing.size() == 1 ? " was" : " were")
                  + " not measured",
              "measure them too; the hub has " + screws + " screws"));
    }
    return found;
  }

  private Optional<Hole> find(String label, List<Hole> bolts) {
    Optional<Hole> exact = plate.holes().stream().filter(h -> h.label().equals(label)).findFirst();
    if (exact.isPresent() || !label.matches("[1-9][0-9]?")) {
      return exact;
    }
    int number = Integer.parseInt(label);
    return number <= bolts.size() ? Optional.of(bolts.get(number - 1)) : Optional.empty();
  }

  private static int count(List<HubRing> rings) {
    return rings.stream().mapToInt(HubRing::count).sum();
  }
}
