package felloe.grips;

import felloe.geometry.Combine;
import felloe.geometry.Region;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.List;

/** Grips must not lie on each other, nor on both faces apart from each other. */
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
    List<Region> both = Combine.intersection(first.footprint(), second.footprint());
    if (!both.isEmpty()) {
      boolean share = first.grip().on().stream().anyMatch(second.grip().faces()::has);
      problems.add(
          new Problem(
              second.grip().place("along"),
              second.grip().path(),
              "",
              (share ? "lies on grip " : "lies over the same stretch as grip ")
                  + first.grip().label()
                  + " near "
                  + both.get(0).outer().properties().centroid()
                  + " mm",
              share
                  ? "let one of them end earlier"
                  : "write one grip with 'faces: both': its screws, girth and lips belong"
                      + " together"));
    }
  }
}
