package felloe.service;

import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.hub.HubSpec;
import felloe.joints.JointPlan;
import felloe.joints.PlannedJoint;
import felloe.joints.Unscrewed;
import felloe.measure.AsDrilledResult;
import felloe.measure.DrilledHole;
import felloe.plate.BadInput;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Limit;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Verdict;
import felloe.review.Review;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reviews a plate as it was drilled like a drawn one: room round its heads, what they bear on, edge
 * distance, pitch, webs, the screws under load. Told is what is worse than it was drawn.
 */
final class DrilledReview {

  /** The rule that tells of them on a drawn plate; here each is a fail with its own size. */
  private static final String UNSCREWED = "screw-suits";

  private DrilledReview() {}

  /**
   * What is worse, the worst first.
   *
   * @param drawn the findings of the plate as drawn
   * @param plate as drawn
   */
  static List<Finding> of(List<Finding> drawn, Plate plate, HubSpec hub, AsDrilledResult drilled) {
    List<Finding> all = new ArrayList<>(drilled.findings());
    all.addAll(drilled.fit().findings());
    drilled.plate().ifPresent(as -> all.addAll(reviewed(plate, as, hub, drilled)));
    Map<String, Verdict> before = new HashMap<>();
    List<PlannedJoint> joints = JointPlan.of(plate, Optional.of(hub)).joints();
    drawn.forEach(
        f ->
            keys(f, joints)
                .forEach(
                    key -> before.merge(key, f.verdict(), (a, b) -> a.compareTo(b) > 0 ? a : b)));
    return all.stream()
        .filter(f -> f.verdict() != Verdict.PASS)
        .filter(f -> f.verdict().compareTo(before.getOrDefault(key(f), Verdict.PASS)) > 0)
        .sorted(Comparator.comparing(Finding::verdict).reversed())
        .toList();
  }

  /**
   * What a finding was told of. One of a joint is told of its weakest screw and holds for all of
   * it; drilled holes of other sizes make joints of their own, that are told of other screws.
   */
  private static List<String> keys(Finding f, List<PlannedJoint> joints) {
    for (PlannedJoint joint : joints) {
      String screw = " " + joint.thread().name();
      if (joint.holes().stream().anyMatch(hole -> f.subject().equals(hole.label() + screw))) {
        return joint.holes().stream().map(hole -> f.rule() + " " + hole.label() + screw).toList();
      }
    }
    return List.of(key(f));
  }

  private static String key(Finding finding) {
    return finding.rule() + " " + finding.subject();
  }

  private static List<String> words(JointPlan joints) {
    return joints.unscrewed().stream().map(Unscrewed::words).toList();
  }

  private static List<Finding> reviewed(
      Plate plate, Plate as, HubSpec hub, AsDrilledResult drilled) {
    Optional<HubSpec> spec = Optional.of(hub);
    List<String> drawn = words(JointPlan.of(plate, spec));
    List<Finding> findings = new ArrayList<>();
    JointPlan joints;
    Plate reviewed = as;
    try {
      joints = JointPlan.of(as, spec);
    } catch (BadInput bad) {
      // A joint that the maker wrote does not go with the holes: told as a finding, and the rest
      // is reviewed without what he wrote.
      for (Problem p : bad.problems()) {
        findings.add(bearing(blamed(p, as, spec, drilled), p.wanted() + "; " + p.cure()));
      }
      reviewed = as.with(as.holes(), List.of());
      joints = JointPlan.of(reviewed, spec);
    }
    if (findings.isEmpty()) {
      joints.unscrewed().stream()
          .filter(one -> !drawn.contains(one.words()))
          .forEach(one -> findings.add(bearing(drilled(one.holes(), drilled), one.words())));
    }
    Review.of(reviewed, joints, List.of()).findings().stream()
        .filter(finding -> !finding.rule().equals(UNSCREWED))
        .map(DrilledReview::measured)
        .forEach(findings::add);
    return findings;
  }

  /** The holes that each by itself, the others being as large as drawn, make a joint wrong. */
  private static List<DrilledHole> blamed(
      Problem problem, Plate as, Optional<HubSpec> hub, AsDrilledResult drilled) {
    List<DrilledHole> blamed =
        drilled.holes().stream()
            .filter(hole -> problems(hole, as, hub, drilled).contains(problem.wanted()))
            .toList();
    return blamed.isEmpty() ? drilled.holes() : blamed;
  }

  /**
   * What is wrong with the joints when one hole is as large as drilled, and the others as drawn.
   */
  private static List<String> problems(
      DrilledHole one, Plate as, Optional<HubSpec> hub, AsDrilledResult drilled) {
    List<Hole> holes = new ArrayList<>(as.holes());
    for (DrilledHole other : drilled.holes()) {
      Hole meant = other.meant();
      if (other != one) {
        holes.replaceAll(
            h -> h.label().equals(meant.label()) ? h.withDiameter(meant.diameter()) : h);
      }
    }
    try {
      JointPlan.of(as.with(holes, as.joints()), hub);
      return List.of();
    } catch (BadInput bad) {
      return bad.problems().stream().map(Problem::wanted).toList();
    } catch (GeometryException noRoom) {
      // Drawn larger than there is room for where it was drilled: this way tells nothing.
      return List.of();
    }
  }

  private static List<DrilledHole> drilled(List<Hole> holes, AsDrilledResult drilled) {
    List<String> labels = holes.stream().map(Hole::label).toList();
    return drilled.holes().stream().filter(hole -> labels.contains(hole.meant().label())).toList();
  }

  /**
   * What a drawn plate is advised is of no use to a drilled one: the figure is told in its place.
   */
  private static Finding measured(Finding f) {
    String unit = f.figure().unit().isEmpty() ? "" : " " + f.figure().unit();
    String limit =
        f.limit()
            .map(
                l ->
                    (l.sense() == Limit.Sense.AT_LEAST ? ", and at least " : ", and at most ")
                        + Numbers.brief(l.value(), 2)
                        + unit
                        + " is wanted")
            .orElse("");
    return new Finding(
        f.rule(),
        f.why(),
        f.verdict(),
        f.subject(),
        f.figure(),
        f.limit(),
        f.at(),
        f.place(),
        f.verdict() == Verdict.PASS
            ? ""
            : "as drilled it is " + Numbers.brief(f.figure().value(), 2) + unit + limit + ".");
  }

  private static Finding bearing(List<DrilledHole> holes, String words) {
    DrilledHole first = holes.get(0);
    return new Finding(
        "head-bearing",
        "a head or washer must bear on the plate round its hole",
        Verdict.FAIL,
        String.join(", ", holes.stream().map(hole -> hole.meant().label()).toList())
            + " as drilled",
        new Figure("diameter as drilled", first.diameter(), "mm"),
        Optional.empty(),
        Optional.of(first.at()),
        first.meant().place(),
        words);
  }
}
