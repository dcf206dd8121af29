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
        View.record(Strip.class, "method", "readings")
            .with("span_ratio", Strip::spanRatio)
            .with("strength", Strip::strength)
            .with("modulus", Strip::modulus)
            .with("strain", Strip::strain),
        View.record(NormalSample.class, "factor")
            .with("variation", NormalSample::variation)
            .with("interval", s -> s.interval().map(i -> List.of(i.from(), i.to())))
            .with("k", NormalSample::factor));
  }
}
