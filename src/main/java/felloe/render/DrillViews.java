package felloe.render;

import felloe.drilling.DrillMaterial;
import felloe.joints.JointCheck;
import felloe.joints.JointJudgement;
import felloe.joints.JudgedScrew;
import felloe.joints.PlannedJoint;
import felloe.plate.Hole;
import felloe.plate.Joint.InNut;
import felloe.report.DrillReport;
import felloe.report.JointReport;
import felloe.service.DrillOutcome;
import felloe.yaml.Entry;
import java.util.List;

/** Drilling, and screws wherever they are told, as JSON: mm, degrees, N, N m, MPa. */
final class DrillViews {

  private DrillViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            DrillOutcome.class,
            (one, to) ->
                to.addAll(one.plate())
                    .add("holes", one.holes())
                    .add("order", one.plan())
                    .add("joints", one.study().joints().joints())
                    .add("hub_load", one.study().joints().load())
                    .add("screws", one.study().joints().judgement())
                    .add("screw_cures", one.study().screwCures())
                    .add("joint_notes", JointReport.notes(one.study().joints()))
                    .add("joint_cautions", one.study().joints().cautions())
                    .add("stop", DrillReport.stop(one))
                    .add("cautions", one.cautions())),
        View.of(
            Hole.class,
            (hole, to) ->
                to.add("label", hole.label())
                    .add("role", hole.role())
                    .add("at", hole.centre())
                    .add("radius", hole.centre().norm())
                    .add("angle", hole.centre().bearing())
                    .add("diameter", hole.diameter())
                    .add("length", hole.length())),
        View.as(DrillMaterial.class, DrillMaterial::title),
        View.of(
            PlannedJoint.class,
            (j, to) ->
                to.add("joint", j.name())
                    .add("holes", j.holes().stream().map(Hole::label).toList())
                    .add("thread", j.thread().name())
                    .add("head", Entry.nameOf(j.head()) + ", " + j.headSize().standard())
                    .add("class", j.strength().name())
                    .add("length", j.length())
                    .add("parts", j.parts())
                    .add("clamped", j.clamped())
                    .add("head_sunk", j.joint().screw().sunk())
                    .add("nut_sunk", j.inNut().map(InNut::sunk).orElse(0.0))
                    .add("into", JointReport.into(j))
                    .add("engagement", j.engagement())
                    .add("engagement_ratio", j.engagement() / j.thread().diameter())
                    .add("depth_wanted", j.depthWanted())
                    .add("bottom_room", j.bottomRoom())
                    .add("beyond_nut", j.beyondNut())
                    .add("cone_depth", j.coned().map(part -> j.headSize().coneDepth(j.hole())))
                    .add("torque", j.torque())),
        View.record(
            JointJudgement.class, (judgement, to) -> to.add("verdict", judgement.verdict())),
        View.record(
            JudgedScrew.class,
            (s, to) ->
                to.add("hole", s.hole().label())
                    .add("joint", s.joint().name())
                    .add("verdict", s.verdict())
                    .add("tension_case", s.tensionCause())
                    .add("shear_case", s.shearCause()),
            "tensionCause",
            "shearCause"),
        View.record(
            JointCheck.class,
            (c, to) ->
                to.add("rule", c.what().id())
                    .add("ratio", c.ratio())
                    .add("verdict", c.verdict())
                    .add("case", c.cause()),
            "what",
            "cause",
            "known",
            "grave"));
  }
}
