package felloe.kit;

import felloe.out.Json;

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
                .with("low", torque.low(), DECIMALS)
                .with("high", torque.high(), DECIMALS)
                .with("clamp", torque.clamp(), DECIMALS)
                .with("leastClamp", torque.leastClamp(), DECIMALS)
                .with("limitedBy", torque.limitedBy())
                .with("basis", torque.basis()));
  }

  private static Json load(JointAnswer.Load load) {
    return Json.object()
        .with("torque", load.torque(), DECIMALS)
        .with("pull", load.pull(), DECIMALS)
        .with("push", load.push(), DECIMALS)
        .with("reach", load.reach(), DECIMALS)
        .with("bases", Json.array(load.basis(), Json::text))
        .with(
            "strengths",
            Json.array(
                load.strengths(),
                s ->
                    Json.object()
                        .with("name", s.name())
                        .with("value", s.value(), DECIMALS)
                        .with("basis", s.basis())))
        .with(
            "screws",
            Json.array(
                load.screws(),
                s ->
                    Json.object()
                        .with("hole", s.hole())
                        .with("share", s.share(), DECIMALS)
                        .with("axialPull", Json.maybe(s.pull(), JointJson::number))
                        .with("bearing", s.bearing(), DECIMALS)
                        .with("shearOut", s.shearOut(), DECIMALS)
                        .with("netSection", s.netSection(), DECIMALS)));
  }

  private static Json number(double value) {
    return Json.number(value, DECIMALS);
  }
}
