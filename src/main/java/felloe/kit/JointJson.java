package felloe.kit;

import felloe.joints.GroupLoad;
import felloe.joints.JointJudgement;
import felloe.joints.JudgedScrew;
import felloe.out.Json;
import java.util.Locale;

/** The fasteners of a plate as JSON. */
final class JointJson {

  private static final int DECIMALS = 6;

  private JointJson() {}

  static Json of(JointAnswer answer) {
    return Json.array(answer.joints(), JointJson::joint);
  }

  static Json load(JointAnswer answer) {
    return Json.maybe(answer.load(), JointJson::load);
  }

  private static Json joint(JointAnswer.Row row) {
    JointAnswer.Torque torque = row.torque();
    return Json.object()
        .with("joint", row.name())
        .with("holes", Json.array(row.holes(), Json::text))
        .with("thread", row.thread())
        .with("head", row.head())
        .with("class", row.strength())
        .with("length", row.length(), DECIMALS)
        .with(
            "parts",
            Json.array(
                row.parts(),
                part ->
                    Json.object()
                        .with("name", part.name())
                        .with("thickness", part.thickness(), DECIMALS)))
        .with("clamped", row.clamped(), DECIMALS)
        .with("headSunk", row.headSunk(), DECIMALS)
        .with("nutSunk", row.nutSunk(), DECIMALS)
        .with("into", row.into())
        .with("engagement", row.engagement(), DECIMALS)
        .with("engagementRatio", row.engagementRatio(), DECIMALS)
        .with("depthWanted", Json.maybe(row.depthWanted(), JointJson::number))
        .with("bottomRoom", Json.maybe(row.bottomRoom(), JointJson::number))
        .with("beyondNut", Json.maybe(row.beyondNut(), JointJson::number))
        .with("coneDepth", Json.maybe(row.coneDepth(), JointJson::number))
        .with(
            "torque",
            Json.object()
                .with("value", torque.value(), DECIMALS)
                .with("clamp", torque.clamp(), DECIMALS)
                .with("leastClamp", torque.leastClamp(), DECIMALS)
                .with("limitedBy", torque.limitedBy())
                .with("assumes", torque.assumes()));
  }

  private static Json load(GroupLoad load) {
    return Json.object()
        .with("torque", load.torque(), DECIMALS)
        .with("pull", load.pull(), DECIMALS)
        .with("push", load.push(), DECIMALS)
        .with("reach", load.reach(), DECIMALS)
        .with("bases", Json.array(load.basis(), Json::text));
  }

  /** Every screw with all that was asked of it. */
  static Json judged(JointJudgement judgement) {
    return Json.object()
        .with("verdict", judgement.verdict().name().toLowerCase(Locale.ROOT))
        .with("screws", Json.array(judgement.screws(), JointJson::screw))
        .with(
            "figures",
            Json.array(
                judgement.figures(),
                f ->
                    Json.object()
                        .with("name", f.name())
                        .with("value", f.value(), DECIMALS)
                        .with("unit", f.unit())
                        .with("basis", f.basis())));
  }

  private static Json screw(JudgedScrew screw) {
    return Json.object()
        .with("hole", screw.hole().label())
        .with("joint", screw.joint().name())
        .with("verdict", screw.verdict().name().toLowerCase(Locale.ROOT))
        .with("tension", screw.tension(), DECIMALS)
        .with("tensionCase", screw.tensionCause())
        .with("shear", screw.shear(), DECIMALS)
        .with("shearCase", screw.shearCause())
        .with(
            "checks",
            Json.array(
                screw.checks(),
                c ->
                    Json.object()
                        .with("rule", c.what().id())
                        .with("demand", c.demand(), DECIMALS)
                        .with("capacity", c.capacity(), DECIMALS)
                        .with("unit", c.unit())
                        .with("factor", c.factor(), DECIMALS)
                        .with("ratio", c.ratio(), DECIMALS)
                        .with("verdict", c.verdict().name().toLowerCase(Locale.ROOT))
                        .with("case", c.cause())
                        .with("basis", c.basis())));
  }

  private static Json number(double value) {
    return Json.number(value, DECIMALS);
  }
}
