package felloe.render;

import felloe.laminate.NormalSample;
import felloe.laminate.Strip;
import felloe.report.StripsReport;
import felloe.service.StripsOutcome;
import java.util.List;

/** Broken strips as JSON. N, mm and MPa. */
final class StripsViews {

  private StripsViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(StripsOutcome.class)
            .with("method", one -> one.tested().strips().get(0).method())
            .with("strips", one -> one.tested().strips())
            .with("strength", one -> one.tested().strength())
            .with("modulus", one -> one.tested().modulus())
            .with("design_strength", one -> one.tested().designStrength())
            .with("design_strain", one -> one.tested().designStrain())
            .with("bound", one -> StripsReport.BOUND)
            .with("notes", StripsReport::notes)
            .with("cautions", one -> StripsReport.CAUTIONS),
        View.of(Strip.class)
            .with("label", Strip::label)
            .with("width", Strip::width)
            .with("thickness", Strip::thickness)
            .with("span", Strip::span)
            .with("span_ratio", Strip::spanRatio)
            .with("load", Strip::load)
            .with("deflection", Strip::deflection)
            .with("broke", Strip::broke)
            .with("strength", Strip::strength)
            .with("modulus", Strip::modulus)
            .with("strain", Strip::strain),
        View.of(NormalSample.class)
            .with("count", NormalSample::count)
            .with("mean", NormalSample::mean)
            .with("deviation", NormalSample::deviation)
            .with("variation", NormalSample::variation)
            .with("least", NormalSample::least)
            .with("interval", s -> s.interval().map(i -> List.of(i.from(), i.to())))
            .with("k", NormalSample::factor)
            .with("lower", NormalSample::lower));
  }
}
