package felloe.measure;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is worth telling of the holes themselves: which lies elsewhere, which has another size. */
final class DrilledFindings {

  private final MeasurePractice practice;

  DrilledFindings(MeasurePractice practice) {
    this.practice = practice;
  }

  List<Finding> of(List<DrilledHole> holes, List<OddHole> odd) {
    List<Finding> findings = new ArrayList<>();
    for (DrilledHole hole : holes) {
      odd.stream()
          .filter(one -> one.label().equals(hole.meant().label()))
          .findFirst()
          .ifPresent(one -> findings.add(place(hole, one)));
    }
    Map<String, List<DrilledHole>> alike = new LinkedHashMap<>();
    for (DrilledHole hole : holes) {
      if (smaller(hole) || larger(hole)) {
        String key =
            Numbers.fixed(hole.diameter(), 2) + " " + Numbers.fixed(hole.meant().diameter(), 2);
        alike.computeIfAbsent(key, k -> new ArrayList<>()).add(hole);
      }
    }
    alike.values().forEach(group -> findings.add(size(group)));
    return List.copyOf(findings);
  }

  private static boolean smaller(DrilledHole hole) {
    return hole.sizeUnsure()
        .filter(unsure -> hole.over() < -unsure - Tolerances.SAME_LENGTH)
        .isPresent();
  }

  private boolean larger(DrilledHole hole) {
    return hole.sizeUnsure()
        .filter(unsure -> hole.over() > practice.oversize() + unsure + Tolerances.SAME_LENGTH)
        .isPresent();
  }

  private Finding place(DrilledHole hole, OddHole odd) {
    double zone = Math.max(0, hole.tolerance().orElse(0.0));
    return new Finding(
        "drilled-place",
        "one hole off its place keeps a screw out that all others let in",
        Verdict.CAUTION,
        odd.label() + ", the odd one out",
        new Figure("position of the hole as drilled", hole.position(), "mm"),
        Optional.of(
            new Limit(Sense.AT_MOST, zone, "fixed fasteners, ASME Y14.5 and ISO 1101", false)),
        Optional.of(hole.at()),
        hole.meant().place(),
        odd.label()
            + " lies "
            + Numbers.fixed(odd.off(), 2)
            + " mm from where the other holes have it: "
            + way(odd.by().x(), "to the right", "to the left")
            + " and "
            + way(odd.by().y(), "up", "down")
            + ", as the driver sees it. Its position, the diameter of the zone that it just keeps,"
            + " is "
            + Numbers.fixed(hole.position(), 2)
            + " mm.");
  }

  private static String way(double by, String more, String less) {
    return Numbers.fixed(Math.abs(by), 2) + " mm " + (by < 0 ? less : more);
  }

  /** Holes of one size that were drawn alike. */
  private Finding size(List<DrilledHole> alike) {
    DrilledHole hole = alike.get(0);
    boolean smaller = smaller(hole);
    double drawn = hole.meant().diameter();
    String labels = String.join(", ", alike.stream().map(h -> h.meant().label()).toList());
    Limit limit =
        smaller
            ? new Limit(Sense.AT_LEAST, drawn, "the drawing", false)
            : new Limit(
                Sense.AT_MOST,
                drawn + practice.oversize(),
                "the drawing, and what a drill cuts over its size: " + practice.basis().words(),
                false);
    return new Finding(
        "drilled-size",
        "screw, head and edge were reckoned with the hole as drawn",
        Verdict.CAUTION,
        labels,
        new Figure("diameter as drilled", hole.diameter(), "mm"),
        Optional.of(limit),
        Optional.of(hole.at()),
        hole.meant().place(),
        labels
            + (alike.size() == 1 ? " is " : " are ")
            + Numbers.fixed(Math.abs(hole.over()), 2)
            + (smaller ? " mm smaller" : " mm larger")
            + " than drawn ("
            + Numbers.brief(drawn, 2)
            + " mm). "
            + (smaller
                ? "Open it with the drill of the drawing, if a screw is to have its room."
                : "Was another drill used? It counts as it is; measure again if that is not so."));
  }
}
