package felloe.grips;

import felloe.geometry.Combine;
import felloe.geometry.Region;
import felloe.plate.Face;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.List;

/** Grips must not lie on each other. */
final class GripMeeting {

  private GripMeeting() {}

  static void check(List<PlacedGrip> grips, Problems problems) {
    for (int i = 0; i < grips.size(); i++) {
      for (int j = i + 1; j < grips.size(); j++) {
        check(grips.get(i), grips.get(j), problems);
      }
    }
  }

  private static void check(PlacedGrip first, PlacedGrip second, Problems problems) {
    boolean share = false;
    for (Face face : first.grip().on()) {
      share |= second.grip().faces().has(face);
    }
    if (!share) {
      return;
    }
    List<Region> both = Combine.intersection(first.footprint(), second.footprint());
    if (!both.isEmpty()) {
      problems.add(
          new Problem(
              second.grip().place("along"),
              second.grip().path(),
              "",
              "lies on grip "
                  + first.grip().label()
                  + " near "
                  + both.get(0).outer().properties().centroid()
                  + " mm",
              "let one of them end earlier"));
    }
  }
}
