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
        View.of(DrillOutcome.class)
            .with(DrillOutcome::plate)
            .with("holes", DrillOutcome::holes)
            .with("order", DrillOutcome::plan)
            .with("joints", one -> one.study().joints().joints())
            .with("hub_load", one -> one.study().joints().load())
            .with("screws", one -> one.study().joints().judgement())
            .with("screw_cures", one -> one.study().screwCures())
            .with("joint_notes", one -> JointReport.notes(one.study().joints()))
            .with("joint_cautions", one -> one.study().joints().cautions())
            .with("stop", DrillReport::stop)
            .with("cautions", DrillOutcome::cautions),
        View.of(Hole.class)
            .with("label", Hole::label)
            .with("role", Hole::role)
            .with("at", Hole::centre)
            .with("radius", hole -> hole.centre().norm())
            .with("angle", hole -> hole.centre().bearing())
            .with("diameter", Hole::diameter)
            .with("length", Hole::length),
        View.as(DrillMaterial.class, DrillMaterial::title),
        View.of(PlannedJoint.class)
            .with("joint", PlannedJoint::name)
            .with("holes", j -> j.holes().stream().map(Hole::label).toList())
            .with("thread", j -> j.thread().name())
            .with("head", j -> Entry.nameOf(j.head()) + ", " + j.headSize().standard())
            .with("class", j -> j.strength().name())
            .with("length", PlannedJoint::length)
            .with("parts", PlannedJoint::parts)
            .with("clamped", PlannedJoint::clamped)
            .with("head_sunk", j -> j.joint().screw().sunk())
            .with("nut_sunk", j -> j.inNut().map(InNut::sunk).orElse(0.0))
            .with("into", JointReport::into)
            .with("engagement", PlannedJoint::engagement)
            .with("engagement_ratio", j -> j.engagement() / j.thread().diameter())
            .with("depth_wanted", PlannedJoint::depthWanted)
            .with("bottom_room", PlannedJoint::bottomRoom)
            .with("beyond_nut", PlannedJoint::beyondNut)
            .with("cone_depth", j -> j.coned().map(part -> j.headSize().coneDepth(j.hole())))
            .with("torque", PlannedJoint::torque),
        View.record(JointJudgement.class).with("verdict", JointJudgement::verdict),
        View.record(JudgedScrew.class, "tensionCause", "shearCause")
            .with("hole", s -> s.hole().label())
            .with("joint", s -> s.joint().name())
            .with("verdict", JudgedScrew::verdict)
            .with("tension_case", JudgedScrew::tensionCause)
            .with("shear_case", JudgedScrew::shearCause),
        View.record(JointCheck.class, "what", "cause", "known", "grave")
            .with("rule", c -> c.what().id())
            .with("ratio", JointCheck::ratio)
            .with("verdict", JointCheck::verdict)
            .with("case", JointCheck::cause));
  }
}
