package felloe.kit;

import felloe.kit.StripsAnswer.Row;
import felloe.kit.StripsAnswer.Scatter;
import felloe.out.Json;

/** Tested strips as JSON. N, mm and MPa. */
final class StripsJson {

  private StripsJson() {}

  static Json of(StripsAnswer answer) {
    return Json.object()
        .with("method", answer.method())
        .with("strips", Json.array(answer.strips(), StripsJson::row))
        .with("strength", Json.maybe(answer.strength(), StripsJson::scatter))
        .with("modulus", scatter(answer.modulus()))
        .with("designStrength", Json.maybe(answer.designStrength(), Significant::number))
        .with("designStrain", Json.maybe(answer.designStrain(), Significant::number))
        .with("bound", answer.bound())
        .with("notes", Json.array(answer.notes(), Json::text))
        .with("cautions", Json.array(answer.cautions(), Json::text));
  }

  private static Json row(Row row) {
    return Json.object()
        .with("label", row.label())
        .with("width", Significant.number(row.width()))
        .with("thickness", Significant.number(row.thickness()))
        .with("span", Significant.number(row.span()))
        .with("spanRatio", Significant.number(row.spanRatio()))
        .with("load", Significant.number(row.load()))
        .with("deflection", Json.maybe(row.deflection(), Significant::number))
        .with("broke", row.broke())
        .with("strength", Json.maybe(row.strength(), Significant::number))
        .with("modulus", Significant.number(row.modulus()))
        .with("strain", Json.maybe(row.strain(), Significant::number));
  }

  private static Json scatter(Scatter s) {
    return Json.object()
        .with("count", s.count())
        .with("mean", Significant.number(s.mean()))
        .with("deviation", Significant.number(s.deviation()))
        .with("variation", Significant.number(s.variation()))
        .with("least", Significant.number(s.least()))
        .with(
            "interval", Json.maybe(s.from(), from -> Significant.array(from, s.to().orElseThrow())))
        .with("k", Json.maybe(s.factor(), Significant::number))
        .with("lower", Json.maybe(s.lower(), Significant::number));
  }
}
