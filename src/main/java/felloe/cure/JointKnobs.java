package felloe.cure;

import felloe.joints.Fasteners;
import felloe.joints.JointPlan;
import felloe.joints.PlannedJoint;
import felloe.joints.StrengthClass;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint.Head;
import felloe.plate.Joint.Washer;
import felloe.plate.Verdict;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Which figures of a joint may mend a finding, the likeliest first. */
final class JointKnobs {

  private final Finding finding;
  private final ShapeFigures figures;
  private final PlannedJoint joint;
  private final List<Knob> knobs = new ArrayList<>();

  private JointKnobs(Finding finding, ShapeFigures figures, PlannedJoint joint) {
    this.finding = finding;
    this.figures = figures;
    this.joint = joint;
  }

  /**
   * Whether one figure of a joint may mend a finding. A screw that fails is told with its own
   * cures, beside the verdict.
   */
  static boolean suit(Finding finding) {
    return switch (finding.rule()) {
      case "head-clearance",
          "head-spacing",
          "countersink-land",
          "thread-engagement",
          "screw-bottoms",
          "screw-end-least",
          "screw-end-most" ->
          true;
      case "clamp-force", "slip", "pull-through", "screw-strength" ->
          finding.verdict() != Verdict.FAIL;
      default -> false;
    };
  }

  static List<Knob> of(Finding finding, JointPlan joints, ShapeFigures figures) {
    return joints.joints().stream()
        .filter(j -> isAbout(finding, j))
        .findFirst()
        .map(j -> new JointKnobs(finding, figures, j).filled())
        .orElse(List.of());
  }

  /** A finding about a joint begins with its name, or with the label of one of its holes. */
  private static boolean isAbout(Finding finding, PlannedJoint joint) {
    String subject = finding.subject() + " ";
    return subject.startsWith(joint.name() + " " + joint.thread().name() + " x")
        || joint.holes().stream().map(Hole::label).anyMatch(l -> subject.startsWith(l + " "));
  }

  private List<Knob> filled() {
    switch (finding.rule()) {
      case "head-clearance", "head-spacing" -> narrower();
      case "countersink-land" -> add("screw.head", name(joint.head()), name(Head.BUTTON));
      case "thread-engagement", "screw-end-least" -> lengths(true);
      case "screw-bottoms" -> lengths(false);
      case "screw-end-most" -> {
        lengths(false);
        sunk();
      }
      default -> {
        wider();
        stronger();
      }
    }
    return knobs;
  }

  private static String name(Enum<?> constant) {
    return Entry.nameOf(constant);
  }

  private void add(String key, String from, String to) {
    String path = joint.joint().path();
    if (!path.isEmpty()) {
      knobs.add(Knob.choice(ShapeChange.of(path + "." + key, from, to)));
    } else if (joint.role() == HoleRole.BOLT || joint.role() == HoleRole.GRIP) {
      String value = key.startsWith("screw.") ? "screw: {" + key.substring(6) : key;
      String end = key.startsWith("screw.") ? "}}" : "}";
      String holes = joint.role() == HoleRole.BOLT ? "hub" : "grip";
      knobs.add(
          Knob.choice(
              ShapeChange.of(
                  "joints[" + figures.count("joints") + "]",
                  "",
                  "{holes: " + holes + ", " + value + ": " + to + end)));
    }
  }

  private Washer washer() {
    return joint
        .washer()
        .map(
            w ->
                Fasteners.standard()
                        .washer(Washer.PLAIN, joint.thread().name())
                        .filter(p -> p.diameter() >= w.diameter())
                        .isPresent()
                    ? Washer.PLAIN
                    : Washer.LARGE)
        .orElse(Washer.NONE);
  }

  private void narrower() {
    if (washer() == Washer.LARGE) {
      add("washer", name(Washer.LARGE), name(Washer.PLAIN));
    }
    if (washer() != Washer.NONE) {
      add("washer", name(washer()), name(Washer.NONE));
    }
    if (joint.head() == Head.COUNTERSUNK || joint.head() == Head.BUTTON) {
      add("screw.head", name(joint.head()), name(Head.SOCKET));
    }
  }

  private void wider() {
    if (washer() != Washer.LARGE) {
      add("washer", name(washer()), name(Washer.LARGE));
    }
  }

  private void stronger() {
    Fasteners.standard().classes().stream()
        .filter(c -> c.inch() == joint.strength().inch() && c.proof() > joint.strength().proof())
        .max(Comparator.comparingDouble(StrengthClass::proof))
        .ifPresent(c -> add("screw.class", joint.strength().name(), c.name()));
  }

  private void lengths(boolean longer) {
    List<Double> all = Fasteners.standard().lengths(joint.strength().inch());
    all.stream()
        .filter(l -> longer ? l > joint.length() : l < joint.length())
        .sorted(longer ? Comparator.naturalOrder() : Comparator.reverseOrder())
        .limit(2)
        .forEach(
            l -> add("screw.length", ShapeFigures.brief(joint.length()), ShapeFigures.brief(l)));
  }

  private void sunk() {
    String path = joint.joint().path() + ".into.sunk";
    Optional<Double> now = figures.figure(path);
    double deeper = finding.figure().value() - finding.limit().orElseThrow().value();
    now.ifPresent(
        n -> {
          double by = deeper * joint.thread().pitch();
          knobs.add(
              Knob.choice(figures.change(path, Math.ceil((n + by) / SUNK_GRAIN) * SUNK_GRAIN)));
        });
  }

  /** Depths are set with a depth gauge in halves of a millimetre; common practice. */
  private static final double SUNK_GRAIN = 0.5;
}
