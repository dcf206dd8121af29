package felloe.review;

import felloe.geometry.Numbers;
import felloe.joints.JointCheck;
import felloe.joints.JointPlan;
import felloe.joints.JudgedScrew;
import felloe.joints.PlannedJoint;
import felloe.joints.Unscrewed;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Rules about screws: their room, their hold, and the plate round them under the hands' loads. */
enum JointRule implements Rule {
  /** Holes for screws that no screw is planned for. */
  SCREW_SUITS("screw-suits", "Where no screw is planned, nothing is judged.", ""),
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
  CLAMP_FORCE("clamp-force", "A joint that is pulled open works loose.", ""),
  /** Friction against the share of each screw. */
  SLIP("slip", "A plate that slips on its hub frets, and its screws work loose.", ""),
  /** Head through the plate. */
  PULL_THROUGH("pull-through", "Heads pull through a thin plate.", ""),
  /** Thread out of its hole. */
  THREAD_STRIP("thread-strip", "A thread that strips lets go without warning.", ""),
  /** The screw itself. */
  SCREW_STRENGTH("screw-strength", "A screw that breaks takes the steering away.", "");

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
  public List<Finding> check(Reviewed of, Limits limits) {
    JointPlan plan = of.joints();
    return switch (this) {
      case SCREW_SUITS -> unscrewed(plan, limits);
      case HEAD_CLEARANCE -> headClearance(of.plate(), plan, limits);
      case HEAD_SPACING -> headSpacing(plan, limits);
      case BEARING,
          SHEAR_OUT,
          NET_SECTION,
          CLAMP_FORCE,
          SLIP,
          PULL_THROUGH,
          THREAD_STRIP,
          SCREW_STRENGTH ->
          judged(plan, limits);
      default -> plan.joints().stream().flatMap(joint -> hold(joint, limits).stream()).toList();
    };
  }

  private List<Finding> unscrewed(JointPlan plan, Limits limits) {
    LimitPair bounds = limits.of(this, "any", Sense.AT_MOST, 1);
    Map<String, List<Unscrewed>> alike =
        plan.unscrewed().stream()
            .collect(
                Collectors.groupingBy(Unscrewed::why, LinkedHashMap::new, Collectors.toList()));
    List<Finding> findings = new ArrayList<>();
    alike.forEach(
        (why, all) -> {
          Hole first = all.get(0).holes().get(0);
          findings.add(
              bounds.finding(
                  this,
                  all.stream().map(Unscrewed::name).collect(Collectors.joining(", ")),
                  "holes without a screw",
                  all.stream().mapToInt(one -> one.holes().size()).sum(),
                  Optional.of(first.centre()),
                  first.place(),
                  why));
        });
    return findings;
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
        double room = nearest.contour().distance(hole.centre()) - joint.widest() / 2;
        findings.add(
            bounds.finding(
                this,
                hole.label() + " " + joint.widestWords() + " to " + nearest.label(),
                "room beside the " + joint.widestWords(),
                room,
                Optional.of(hole.centre()),
                joint.place("washer"),
                "it is " + mm(joint.widest()) + " wide; " + bounds.lacks(room, 1)));
      }
    }
    return tightest(findings);
  }

  private List<Finding> headSpacing(JointPlan plan, Limits limits) {
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    List<Seat> seats = new ArrayList<>();
    for (PlannedJoint joint : plan.joints()) {
      double front = joint.frontDiameter() / 2;
      double back = joint.backDiameter() / 2;
      joint.holes().forEach(hole -> seats.add(new Seat(joint, hole, front, back)));
    }
    List<Finding> findings = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < seats.size(); i++) {
      for (int k = i + 1; k < seats.size(); k++) {
        Seat a = seats.get(i);
        Seat b = seats.get(k);
        double room = room(a, b);
        boolean tells = bounds.judge(room) != Verdict.PASS;
        if (room < least || tells) {
          least = Math.min(least, room);
          findings.removeIf(f -> !tells && f.verdict() == Verdict.PASS);
          findings.add(
              bounds.finding(
                  this,
                  a.hole().label() + " to " + b.hole().label(),
                  "room between heads, nuts or washers",
                  room,
                  Optional.of(a.hole().centre().middle(b.hole().centre())),
                  b.joint().place("washer"),
                  bounds.lacks(room, 1)));
        }
      }
    }
    return tightest(findings);
  }

  /** A screw in its hole, with the radii of what lies on either face. */
  private record Seat(PlannedJoint joint, Hole hole, double front, double back) {}

  private static double room(Seat a, Seat b) {
    double reach = Math.max(a.front + b.front, a.back + b.back);
    return a.hole().centre().distance(b.hole().centre()) - reach;
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
                              + mm(part.thickness())));
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
                          "a shorter screw, thicker washers or a deeper thread leave more"));
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
                          "a longer screw fills the nut"));
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
                          "it may be cut and its end rounded, or head or nut let in (sunk)"));
      default -> throw new IllegalStateException(id);
    };
  }

  private static String engagementAdvice(PlannedJoint joint, InTapped tapped) {
    return mm(joint.engagement())
        + " of thread hold in "
        + Entry.nameOf(tapped.material())
        + "; a longer screw, a deeper thread or an insert holds more";
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

  /** One way to give way, told once for each joint: of its tightest screw. */
  private List<Finding> judged(JointPlan plan, Limits limits) {
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    List<Finding> findings = new ArrayList<>();
    if (this == CLAMP_FORCE) {
      loose(plan, bounds).ifPresent(findings::add);
    }
    for (PlannedJoint joint : plan.joints()) {
      plan.judgement().screws().stream()
          .filter(screw -> screw.joint() == joint)
          .flatMap(screw -> screw.check(id).map(c -> finding(bounds, screw, c)).stream())
          .min(Comparator.comparingDouble(finding -> finding.figure().value()))
          .ifPresent(findings::add);
    }
    return findings;
  }

  private Finding finding(LimitPair bounds, JudgedScrew screw, JointCheck check) {
    Finding finding =
        bounds.finding(
            this,
            screw.hole().label() + " " + screw.joint().thread().name(),
            check.what().title(),
            check.ratio(),
            Optional.of(screw.hole().centre()),
            screw.joint().place(this == THREAD_STRIP ? "into" : "loads"),
            judgedAdvice(check));
    if (!check.known() && finding.verdict() == Verdict.PASS) {
      boolean deep = screw.joint().tapped().flatMap(InTapped::depth).isPresent();
      String cure = deep ? "; ask for it" : "; measure it and write into: depth";
      return warning(finding, check.basis() + cure);
    }
    return !check.grave() && finding.verdict() == Verdict.FAIL
        ? warning(finding, finding.advice())
        : finding;
  }

  private static Finding warning(Finding finding, String advice) {
    return new Finding(
        finding.rule(),
        finding.why(),
        Verdict.CAUTION,
        finding.subject(),
        finding.figure(),
        finding.limit(),
        finding.at(),
        finding.place(),
        advice);
  }

  private String judgedAdvice(JointCheck check) {
    String figures =
        "it takes "
            + Numbers.brief(check.demand(), check.unit().equals("N") ? 0 : 1)
            + " of "
            + Numbers.brief(check.capacity(), check.unit().equals("N") ? 0 : 1)
            + " "
            + check.unit()
            + " ("
            + check.cause()
            + ", times "
            + Numbers.brief(check.factor(), 3)
            + "); ";
    return figures
        + switch (this) {
          case CLAMP_FORCE -> "larger washers, more screws or a wider circle stand more";
          case SLIP -> "larger washers, more screws, a wider circle or dowels stand more";
          case PULL_THROUGH -> "larger washers or thicker stock stand more";
          case THREAD_STRIP -> "a longer screw, a deeper thread or an insert stands more";
          case SCREW_STRENGTH -> "larger or more screws, or a wider circle, stand more";
          default -> "thicker stock, larger or more screws, or a wider circle stand more";
        };
  }

  /** Hub screws that by themselves hold the plate against no turning, or against no tilting. */
  private Optional<Finding> loose(JointPlan plan, LimitPair bounds) {
    Optional<PlannedJoint> hub =
        plan.joints().stream().filter(j -> j.role() == HoleRole.BOLT).findFirst();
    if (hub.isEmpty()) {
      return Optional.empty();
    }
    boolean turns = plan.load().isEmpty();
    boolean tilts = plan.load().filter(l -> !l.tilts()).isPresent();
    if (!turns && !tilts) {
      return Optional.empty();
    }
    LimitPair decides = new LimitPair(bounds.good(), Optional.empty());
    return Optional.of(
        finding(
            hub.get(),
            decides,
            JointCheck.What.CLAMP_FORCE.title(),
            0,
            "loads",
            (turns
                    ? "one hub screw holds the plate against no turning"
                    : "hub screws on one line hold the plate against no tilting")
                + ", and what the hands do to it was not reckoned; take three screws or more, not"
                + " on one line, or prove by test what else holds it"));
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }
}
