package felloe.render;

import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.hub.Mismatch;
import felloe.hub.PilotFit;
import felloe.hub.ScrewFit;
import felloe.out.FindingsJson;
import felloe.out.ShapeJson;
import felloe.plate.Hole;
import felloe.report.HubReport;
import felloe.service.Study;
import java.util.List;

/** Reviews and hub fits as JSON. */
final class CheckViews {

  private CheckViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(
            Study.class,
            (study, to) ->
                to.addAll(study.plate())
                    .addAll(FindingsJson.of(study.findings()))
                    .add("hub_fit", study.fit())
                    .add("screws", study.joints().judgement())
                    .add("screw_cures", study.screwCures())
                    .add("notes", ShapeJson.of(study.plate()).members().get("notes"))
                    .add("cautions", study.cautions())),
        View.of(
            HubFitResult.class,
            (fit, to) ->
                to.add("hub", fit.hub().name())
                    .add("title", fit.hub().title())
                    .add("drilling", fit.drilling().title())
                    .add("verdict", fit.verdict())
                    .add("enters", fit.enters())
                    .add("clearance", fit.clearance())
                    .add("worst_clearance", fit.worst())
                    .add("turn", fit.plateTurn().map(Math::toDegrees))
                    .add("turn_step", Math.toDegrees(fit.step()))
                    .add("off_centre", fit.offCentre())
                    .add("all_pairings_tried", fit.complete())
                    .add("screws", fit.screws())
                    .add("spare_holes", fit.spare().stream().map(Hole::label).toList())
                    .add("pilot", fit.pilot())
                    .add("calliper", HubReport.laid(fit))
                    .add("mismatches", fit.mismatches())
                    .add("cures", fit.cures())),
        View.of(Cure.class, (cure, to) -> to.add("words", cure.words()).add("works", cure.works())),
        View.record(
            ScrewFit.class,
            (s, to) ->
                to.add("thread", s.thread().name())
                    .add("hole", s.hole().label())
                    .add("diameter", s.hole().diameter())
                    .add("worst_clearance", s.worst())
                    .add("series", s.series().words()),
            "worst"),
        View.of(
            PilotFit.class,
            (fit, to) ->
                to.add("diameter", fit.pilot())
                    .add("opening", fit.opening())
                    .add("clearance", fit.clearance())
                    .add("enters", fit.enters())),
        View.record(Mismatch.class, (off, to) -> to.add("figure", off.kind().words()), "kind"),
        View.of(HubReport.Laid.class, (laid, to) -> to.add("on", laid.on()).addAll(laid.reads())),
        View.record(
            CalliperFigures.class,
            (figures, to) -> to.add("warning", figures.warning()),
            "acrossIsPitchDiameter"),
        View.record(
            CalliperReading.class,
            (reading, to) -> to.add("pair", reading.name()),
            "step",
            "name"));
  }
}
