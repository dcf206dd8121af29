package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.joints.GroupLoad;
import felloe.joints.JointPlan;
import felloe.joints.PlannedJoint;
import felloe.joints.ScrewLoad;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint.InTapped;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Rules about screws: their room, their hold, and the plate round them under the hands' loads. */
enum JointRule implements Rule {
  /** From head or washer to the nearest edge. */
  HEAD_CLEARANCE("head-clearance", "A head or washer must lie on the plate.", "mm"),
  /** From head to head. */
  HEAD_SPACING("head-spacing", "Heads and washers must not meet.", "mm"),
  /** Left below a countersunk head. */
  COUNTERSINK_LAND(
      "countersink-land", "A countersink that goes too deep leaves a knife edge.", "t"),
  /** Thread that holds. */
  THREAD_ENGAGEMENT("thread-engagement", "Too few threads in hold strip.", "d"),
  /** Room below the screw's end. */
  SCREW_BOTTOMS("screw-bottoms", "A screw that meets the bottom of its hole clamps nothing.", "mm"),
  /** Out of the nut, at least. */
  SCREW_END_LEAST("screw-end-least", "A nut holds with all its threads only.", "P"),
  /** Out of the nut, at most. */
  SCREW_END_MOST("screw-end-most", "A screw's end that stands out hurts the hand.", "P"),
  /** Screw against the side of its hole. */
  BEARING("bearing", "Screws crush the sides of their holes under the hands' loads.", ""),
  /** Plug torn out. */
  SHEAR_OUT("shear-out", "Screws tear a plug out toward the nearest edge.", ""),
  /** Section beside the hole. */
  NET_SECTION("net-section", "The plate tears across where holes have narrowed it.", ""),
  /** Clamp against the pull of the push. */
  CLAMP_FORCE("clamp-force", "A joint that is pulled open works loose.", "");

  private final String id;
  private final String why;
  private final String unit;

  JointRule(String id, String why, String unit) {
    this.id = id;
    this.why = why;
    this.unit = unit;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String why() {
    return why;
  }

  @Override
  public String unit() {
    return unit;
  }

  @Override
  public List<Finding> check(Plate plate, Limits limits) {
    return check(plate, JointPlan.of(plate), limits);
  }

  /** What was found in a plan of the plate's joints. */
  List<Finding> check(Plate plate, JointPlan plan, Limits limits) {
    return switch (this) {
      case HEAD_CLEARANCE -> headClearance(plate, plan, limits);
      case HEAD_SPACING -> headSpacing(plan, limits);
      case BEARING, SHEAR_OUT, NET_SECTION, CLAMP_FORCE -> loads(plate, plan, limits);
      default -> plan.joints().stream().flatMap(joint -> hold(joint, limits).stream()).toList();
    };
  }

  private List<Finding> headClearance(Plate plate, JointPlan plan, Limits limits) {
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    List<NamedContour> edges = new ArrayList<>();
    edges.add(NamedContour.outline(plate));
    plate.windows().forEach(window -> edges.add(NamedContour.of(window)));
    plate.holes().stream()
        .filter(hole -> !NamedContour.takesFastener(hole, limits))
        .forEach(hole -> edges.add(NamedContour.of(hole)));
    List<Finding> findings = new ArrayList<>();
    for (PlannedJoint joint : plan.joints()) {
      for (Hole hole : joint.holes()) {
        NamedContour nearest =
            edges.stream()
                .min(Comparator.comparingDouble(e -> e.contour().distance(hole.centre())))
                .orElseThrow();
        Contour contour = nearest.contour();
        findings.add(
            bounds.finding(
                this,
                hole.label() + " " + joint.widestWords() + " to " + nearest.label(),
                "room beside the " + joint.widestWords(),
                contour.distance(hole.centre()) - joint.widest() / 2,
                Optional.of(hole.centre()),
                joint.place("washer"),
                "it is "
                    + Numbers.brief(joint.widest(), 2)
                    + " mm wide; take a smaller one or move the hole inward"));
      }
    }
    return tightest(findings);
  }

  private List<Finding> headSpacing(JointPlan plan, Limits limits) {
    record Seat(PlannedJoint joint, Hole hole) {}
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    List<Seat> seats = new ArrayList<>();
    plan.joints().forEach(j -> j.holes().forEach(h -> seats.add(new Seat(j, h))));
    List<Finding> findings = new ArrayList<>();
    for (int i = 0; i < seats.size(); i++) {
      for (int k = i + 1; k < seats.size(); k++) {
        Seat a = seats.get(i);
        Seat b = seats.get(k);
        double apart = a.hole().centre().distance(b.hole().centre());
        double front = (a.joint().frontDiameter() + b.joint().frontDiameter()) / 2;
        double back = (a.joint().backDiameter() + b.joint().backDiameter()) / 2;
        findings.add(
            bounds.finding(
                this,
                a.hole().label() + " to " + b.hole().label(),
                "room between heads, nuts or washers",
                apart - Math.max(front, back),
                Optional.of(a.hole().centre().middle(b.hole().centre())),
                b.joint().place("washer"),
                "take smaller ones or move the holes apart"));
      }
    }
    return tightest(findings);
  }

  /** The tightest finding, and every other one that is beyond a limit. */
  private static List<Finding> tightest(List<Finding> findings) {
    Optional<Finding> least =
        findings.stream().min(Comparator.comparingDouble(f -> f.figure().value()));
    return findings.stream()
        .filter(f -> f.verdict() != Verdict.PASS || f == least.orElseThrow())
        .toList();
  }

  private Optional<Finding> hold(PlannedJoint joint, Limits limits) {
    double pitch = joint.thread().pitch();
    return switch (this) {
      case COUNTERSINK_LAND ->
          joint
              .coned()
              .map(
                  part ->
                      finding(
                          joint,
                          limits.of(this, "any", Sense.AT_LEAST, 1),
                          "left below the countersink of " + part.name(),
                          joint.land().orElseThrow() / part.thickness(),
                          "screw.head",
                          "the cone goes "
                              + mm(joint.headSize().coneDepth(joint.hole()))
                              + " deep into "
                              + mm(part.thickness())
                              + "; take another head or a smaller screw"));
      case THREAD_ENGAGEMENT ->
          joint
              .tapped()
              .map(
                  tapped ->
                      finding(
                          joint,
                          limits.of(this, Entry.nameOf(tapped.material()), Sense.AT_LEAST, 1),
                          "thread engagement",
                          joint.engagement() / joint.thread().diameter(),
                          joint.screw("length") ? "screw.length" : "into.depth",
                          engagementAdvice(joint, tapped)));
      case SCREW_BOTTOMS ->
          joint
              .bottomRoom()
              .map(
                  room ->
                      finding(
                          joint,
                          limits.of(this, "any", Sense.AT_LEAST, pitch),
                          "room below the screw's end",
                          room,
                          joint.screw("length") ? "screw.length" : "into.depth",
                          "take a shorter screw or thicker washers, or tap deeper"));
      case SCREW_END_LEAST ->
          joint
              .beyondNut()
              .map(
                  beyond ->
                      finding(
                          joint,
                          limits.of(this, "any", Sense.AT_LEAST, 1),
                          "threads beyond the nut",
                          beyond / pitch,
                          "screw.length",
                          "take a longer screw"));
      case SCREW_END_MOST ->
          joint
              .beyondNut()
              .map(
                  beyond ->
                      finding(
                          joint,
                          limits.of(this, "any", Sense.AT_MOST, 1),
                          "threads beyond the nut",
                          beyond / pitch,
                          "screw.length",
                          "let head or nut into the part (sunk), change a washer, or cut the screw"
                              + " and round its end"));
      default -> throw new IllegalStateException(id);
    };
  }

  private static String engagementAdvice(PlannedJoint joint, InTapped tapped) {
    return mm(joint.engagement())
        + " of thread hold in "
        + Entry.nameOf(tapped.material())
        + "; take a longer screw, tap deeper or fit an insert";
  }

  private Finding finding(
      PlannedJoint joint,
      LimitPair bounds,
      String figure,
      double value,
      String key,
      String advice) {
    Hole first = joint.holes().get(0);
    return bounds.finding(
        this,
        joint.name() + " " + joint.thread().name() + " x " + Numbers.brief(joint.length(), 2),
        figure,
        value,
        Optional.of(first.centre()),
        joint.place(key),
        advice);
  }

  private List<Finding> loads(Plate plate, JointPlan plan, Limits limits) {
    LimitPair bounds =
        limits.of(this, this == CLAMP_FORCE ? "any" : NamedContour.kind(plate), Sense.AT_LEAST, 1);
    if (this == CLAMP_FORCE) {
      Optional<Finding> loose = loose(plan, bounds);
      if (loose.isPresent()) {
        return List.of(loose.get());
      }
    }
    if (plan.load().isEmpty()) {
      return List.of();
    }
    GroupLoad load = plan.load().get();
    List<Finding> findings = new ArrayList<>();
    for (ScrewLoad screw : load.screws()) {
      ratio(load, screw)
          .ifPresent(
              ratio ->
                  findings.add(
                      bounds.finding(
                          this,
                          screw.hole().label() + " " + screw.joint().thread().name(),
                          figureName(),
                          ratio,
                          Optional.of(screw.hole().centre()),
                          screw.joint().place("loads"),
                          loadAdvice(load, screw))));
    }
    return tightest(findings);
  }

  /** Hub screws that by themselves hold the plate against no turning, or against no tilting. */
  private Optional<Finding> loose(JointPlan plan, LimitPair bounds) {
    Optional<PlannedJoint> hub =
        plan.joints().stream().filter(j -> j.role() == HoleRole.BOLT).findFirst();
    if (hub.isEmpty()) {
      return Optional.empty();
    }
    boolean turns = plan.load().isEmpty();
    boolean tilts =
        plan.load().filter(l -> l.screws().stream().allMatch(s -> s.pull().isEmpty())).isPresent();
    if (!turns && !tilts) {
      return Optional.empty();
    }
    return Optional.of(
        finding(
            hub.get(),
            bounds,
            figureName(),
            0,
            "loads",
            (turns
                    ? "one hub screw holds the plate against no turning"
                    : "hub screws on one line hold the plate against no tilting")
                + ", and what the hands do to it was not reckoned; take three screws or more, not"
                + " on one line, or prove by test what else holds it"));
  }

  private String figureName() {
    return this == CLAMP_FORCE ? "clamp force / pull" : "strength / stress";
  }

  /** Empty where there is no load to hold it against. */
  private Optional<Double> ratio(GroupLoad load, ScrewLoad screw) {
    if (this == CLAMP_FORCE) {
      return screw.clampRatio();
    }
    double stress = stress(screw);
    return stress > 0 ? Optional.of(strength(load) / stress) : Optional.empty();
  }

  private double stress(ScrewLoad screw) {
    return switch (this) {
      case BEARING -> screw.bearing();
      case SHEAR_OUT -> screw.shearOut();
      default -> screw.netSection();
    };
  }

  private double strength(GroupLoad load) {
    return switch (this) {
      case BEARING -> load.strength().bearing().value();
      case SHEAR_OUT -> load.strength().shear().value();
      default -> load.strength().tension().value();
    };
  }

  private String loadAdvice(GroupLoad load, ScrewLoad screw) {
    if (this == CLAMP_FORCE) {
      return "the least clamp force is "
          + newtons(screw.joint().torque().leastClamp())
          + ", the hands pull with "
          + newtons(screw.pull().orElse(0.0))
          + "; take larger washers, more screws or a wider circle";
    }
    return "it carries "
        + newtons(screw.share())
        + ", "
        + Numbers.brief(stress(screw), 1)
        + " MPa of an estimated "
        + Numbers.brief(strength(load), 1)
        + " MPa; take thicker stock, larger or more screws, or a wider circle";
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }

  private static String newtons(double force) {
    return Numbers.brief(force, 0) + " N";
  }
}
