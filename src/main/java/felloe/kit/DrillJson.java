package felloe.kit;

import felloe.out.Json;
import java.util.Optional;

/** The order of work at the drill as JSON. Millimetres, turns a minute, seconds. */
final class DrillJson {

  private static final int DECIMALS = 4;

  private DrillJson() {}

  static Json order(DrillOrder order) {
    return Json.object()
        .with("material", order.material())
        .with("hub", Json.maybe(order.hub(), Json::text))
        .with("throughHub", order.throughHub())
        .with("before", Json.array(order.before(), Json::text))
        .with("groups", Json.array(order.groups(), DrillJson::group))
        .with("leftOut", order.leftOut())
        .with("pilotDiameter", maybe(order.pilotDiameter()))
        .with("afterPilot", Json.array(order.afterPilot(), DrillJson::check))
        .with(
            "sizes",
            Json.array(
                order.sizes(),
                size ->
                    Json.object()
                        .with("number", size.number())
                        .with("hole", size.hole())
                        .with("least", size.least(), DECIMALS)
                        .with("most", size.most(), DECIMALS)))
        .with("notMeasured", order.notMeasured())
        .with("readings", Json.array(order.readings(), DrillJson::check))
        .with("others", Json.array(order.others(), DrillJson::check))
        .with("plusMinus", order.plusMinus(), DECIMALS)
        .with("sources", Json.array(order.sources(), Json::text));
  }

  private static Json group(DrillOrder.Group group) {
    return Json.object()
        .with("number", group.number())
        .with("role", group.role())
        .with("labels", Json.array(group.holes(), Json::text))
        .with("diameter", group.diameter(), DECIMALS)
        .with("least", group.least(), DECIMALS)
        .with("most", group.most(), DECIMALS)
        .with("tolerance", group.tolerance())
        .with("zone", group.zone(), DECIMALS)
        .with("zoneFrom", group.zoneFrom())
        .with("steps", Json.array(group.steps(), DrillJson::step))
        .with("notes", Json.array(group.notes(), Json::text));
  }

  private static Json step(DrillOrder.Step step) {
    return Json.object()
        .with("stage", step.stage())
        .with("tool", step.tool())
        .with("diameter", maybe(step.diameter()))
        .with("turns", maybe(step.turns()))
        .with("setting", maybe(step.setting()))
        .with("tooFast", step.tooFast())
        .with("feed", maybe(step.feed()))
        .with("seconds", maybe(step.seconds()))
        .with("words", step.words());
  }

  private static Json check(DrillOrder.Check check) {
    return Json.object()
        .with("number", check.number())
        .with("from", check.from())
        .with("to", check.to())
        .with("over", check.over())
        .with("nominal", check.nominal(), DECIMALS)
        .with("least", check.least(), DECIMALS)
        .with("most", check.most(), DECIMALS);
  }

  private static Json maybe(Optional<Double> value) {
    return Json.maybe(value, v -> Json.number(v, DECIMALS));
  }
}
