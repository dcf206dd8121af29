package felloe.kit;

import felloe.geometry.Numbers;
import felloe.joints.ClampedPart;
import felloe.joints.GroupLoad;
import felloe.joints.JointCheck;
import felloe.joints.JointJudgement;
import felloe.joints.JointPlan;
import felloe.joints.JudgedScrew;
import felloe.joints.PlannedJoint;
import felloe.joints.StartingTorque;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint.InNut;
import felloe.plate.Joint.InTapped;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The fasteners of a plate, for a face to show.
 *
 * @param joints in the order of the plan
 * @param load the hub screws under load; empty when there are none
 * @param judgement of every hub and grip screw
 * @param notes what the maker should know besides, whole sentences
 * @param cautions sentences that go with the plan wherever it is shown
 */
public record JointAnswer(
    List<Row> joints,
    Optional<GroupLoad> load,
    JointJudgement judgement,
    List<String> notes,
    List<String> cautions) {

  /** Copies the lists. */
  public JointAnswer {
    joints = List.copyOf(joints);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /**
   * A joint.
   *
   * @param name such as {@code hub}
   * @param holes labels of its holes
   * @param thread of its screws
   * @param head form of their heads, with the standard
   * @param strength their class
   * @param length mm
   * @param parts what is clamped, from the head on
   * @param clamped thickness of it all, less what is let in, mm
   * @param headSunk how deep the head is let in, mm
   * @param nutSunk the same of the nut
   * @param into what holds the screw, in words
   * @param engagement length of thread that holds, mm
   * @param engagementRatio the same in thread diameters
   * @param depthWanted full thread that the tapped hole must have, mm, when it was not measured
   * @param bottomRoom below the screw's end, mm, when the depth was measured
   * @param beyondNut how far the screw stands out of its nut, mm
   * @param coneDepth of a countersunk head in its part, mm
   * @param torque to start from
   */
  public record Row(
      String name,
      List<String> holes,
      String thread,
      String head,
      String strength,
      double length,
      List<PartRow> parts,
      double clamped,
      double headSunk,
      double nutSunk,
      String into,
      double engagement,
      double engagementRatio,
      Optional<Double> depthWanted,
      Optional<Double> bottomRoom,
      Optional<Double> beyondNut,
      Optional<Double> coneDepth,
      Torque torque) {

    /** Copies the lists. */
    public Row {
      holes = List.copyOf(holes);
      parts = List.copyOf(parts);
    }

    /** The screw as it is ordered, such as {@code M5 x 16}. */
    public String screw() {
      return thread + " x " + Numbers.brief(length, 2);
    }

    /** What is clamped, what is let in and what holds the screw, as one sentence. */
    public String stack() {
      String all =
          parts.stream()
              .map(part -> part.name() + " " + Numbers.brief(part.thickness(), 2))
              .collect(Collectors.joining(", "));
      String end =
          beyondNut
              .map(beyond -> "; " + Numbers.brief(beyond, 1) + " mm stand out of it")
              .or(() -> bottomRoom.map(room -> "; " + Numbers.brief(room, 1) + " mm to the bottom"))
              .orElse("");
      return all + letIn() + "; into " + into + end + ".";
    }

    private String letIn() {
      List<String> in = new ArrayList<>();
      if (headSunk > 0) {
        in.add("head " + Numbers.brief(headSunk, 2));
      }
      if (nutSunk > 0) {
        in.add("nut " + Numbers.brief(nutSunk, 2));
      }
      return in.isEmpty() ? "" : "; let in: " + String.join(", ", in);
    }
  }

  /**
   * A clamped part.
   *
   * @param name what it is
   * @param thickness mm
   */
  public record PartRow(String name, double thickness) {}

  /**
   * A torque to start from.
   *
   * @param value N m
   * @param clamp the most that it clamps with, N
   * @param leastClamp what it clamps with at least, N
   * @param limitedBy what set the force
   * @param assumes what it assumes of the thread, a sentence
   */
  public record Torque(
      double value, double clamp, double leastClamp, String limitedBy, String assumes) {

    /** In words; a small torque is told finer. */
    public String words() {
      return Numbers.fixed(value, value < 1 ? 2 : 1);
    }

    static Torque of(StartingTorque t) {
      return new Torque(
          t.torque(),
          t.clamp(),
          t.leastClamp(),
          t.limitedBy(),
          "nut factor K from "
              + Numbers.brief(t.factor().low(), 2)
              + " to "
              + Numbers.brief(t.factor().high(), 2)
              + " ("
              + t.factor().basis()
              + "): clamps with "
              + Numbers.brief(t.leastClamp(), 0)
              + " to "
              + Numbers.brief(t.clamp(), 0)
              + " N");
    }
  }

  static JointAnswer of(JointPlan plan) {
    List<String> notes = new ArrayList<>();
    for (PlannedJoint joint : plan.joints()) {
      note(joint, notes);
    }
    notes.addAll(plan.unplanned());
    return new JointAnswer(
        plan.joints().stream().map(JointAnswer::row).toList(),
        plan.load(),
        plan.judgement(),
        notes,
        plan.cautions());
  }

  /** What was found of hub and grip screws, a sentence each. */
  public List<String> judgedWords() {
    List<String> words = new ArrayList<>();
    for (String role : List.of("hub", "grip")) {
      judgement.screws().stream()
          .filter(s -> s.joint().role() == (role.equals("hub") ? HoleRole.BOLT : HoleRole.GRIP))
          .filter(s -> s.worst().isPresent())
          .min(Comparator.comparingDouble(s -> s.worst().orElseThrow().ratio()))
          .ifPresent(s -> words.add(worst(role, s)));
    }
    return words;
  }

  private static String worst(String role, JudgedScrew screw) {
    JointCheck check = screw.worst().orElseThrow();
    return "Of the "
        + role
        + " screws "
        + screw.hole().label()
        + " is the tightest: "
        + check.what().title()
        + " "
        + Numbers.brief(check.ratio(), 2)
        + " with all factors ("
        + check.cause()
        + "), and 1 is enough. At limit load it is pulled with "
        + Numbers.brief(screw.tension(), 0)
        + " N and carries "
        + Numbers.brief(screw.shear(), 0)
        + " N across.";
  }

  private static void note(PlannedJoint joint, List<String> notes) {
    String who = joint.name() + ": ";
    joint
        .depthWanted()
        .ifPresent(
            depth ->
                notes.add(
                    who
                        + "measure the depth of full thread in the hub; this screw needs at least "
                        + Numbers.brief(depth, 1)
                        + " mm. Write it into the shape file under joints: into: depth."));
    joint
        .coned()
        .ifPresent(
            part ->
                notes.add(
                    who
                        + "countersink the "
                        + part.name()
                        + " "
                        + Numbers.brief(Math.toDegrees(joint.headSize().angle()), 0)
                        + " degrees to "
                        + Numbers.brief(joint.headSize().diameter(), 1)
                        + " mm across, "
                        + Numbers.brief(joint.headSize().coneDepth(joint.hole()), 2)
                        + " mm deep down to the hole; creep up on it with a screw."));
    joint.notes().forEach(note -> notes.add(who + note + "."));
    if (!joint.torque().limitedBy().equals("the screw")) {
      notes.add(
          who
              + "the torque is less than the screw could bear, to spare "
              + joint.torque().limitedBy()
              + ".");
    }
  }

  private static Row row(PlannedJoint joint) {
    double cone = joint.headSize().coneDepth(joint.hole());
    return new Row(
        joint.name(),
        joint.holes().stream().map(Hole::label).toList(),
        joint.thread().name(),
        Entry.nameOf(joint.head()) + ", " + joint.headSize().standard(),
        joint.strength().name(),
        joint.length(),
        joint.parts().stream().map(JointAnswer::part).toList(),
        joint.clamped(),
        joint.joint().screw().sunk(),
        joint.inNut().map(InNut::sunk).orElse(0.0),
        into(joint),
        joint.engagement(),
        joint.engagement() / joint.thread().diameter(),
        joint.depthWanted(),
        joint.bottomRoom(),
        joint.beyondNut(),
        joint.coned().map(part -> cone),
        Torque.of(joint.torque()));
  }

  private static PartRow part(ClampedPart part) {
    return new PartRow(part.name(), part.thickness());
  }

  private static String into(PlannedJoint joint) {
    Optional<InNut> nut = joint.inNut();
    if (nut.isPresent()) {
      return Entry.nameOf(nut.get().nut()) + " nut, " + joint.nut().orElseThrow().standard();
    }
    InTapped tapped = joint.tapped().orElseThrow();
    return "tapped " + Entry.nameOf(tapped.material());
  }
}
