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
        View.of(
            StripsOutcome.class,
            (one, to) ->
                to.add("method", one.tested().strips().get(0).method())
                    .add("strips", one.tested().strips())
                    .add("strength", one.tested().strength())
                    .add("modulus", one.tested().modulus())
                    .add("design_strength", one.tested().designStrength())
                    .add("design_strain", one.tested().designStrain())
                    .add("bound", StripsReport.BOUND)
                    .add("notes", StripsReport.notes(one))
                    .add("cautions", StripsReport.CAUTIONS)),
        View.record(
            Strip.class,
            (strip, to) ->
                to.add("span_ratio", strip.spanRatio())
                    .add("strength", strip.strength())
                    .add("modulus", strip.modulus())
                    .add("strain", strip.strain()),
            "method",
            "readings"),
        View.record(
            NormalSample.class,
            (s, to) ->
                to.add("variation", s.variation())
                    .add("interval", s.interval().map(i -> List.of(i.from(), i.to())))
                    .add("k", s.factor()),
            "factor"));
  }
}
