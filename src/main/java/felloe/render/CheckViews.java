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
        View.of(Study.class)
            .with(Study::plate)
            .with(study -> FindingsJson.of(study.findings()))
            .with("hub_fit", Study::fit)
            .with("screws", study -> study.joints().judgement())
            .with("screw_cures", Study::screwCures)
            .with("notes", study -> ShapeJson.of(study.plate()).members().get("notes"))
            .with("cautions", Study::cautions),
        View.of(HubFitResult.class)
            .with("hub", fit -> fit.hub().name())
            .with("title", fit -> fit.hub().title())
            .with("drilling", fit -> fit.drilling().title())
            .with("verdict", HubFitResult::verdict)
            .with("enters", HubFitResult::enters)
            .with("clearance", HubFitResult::clearance)
            .with("worst_clearance", HubFitResult::worst)
            .with("turn", fit -> fit.plateTurn().map(Math::toDegrees))
            .with("turn_step", fit -> Math.toDegrees(fit.step()))
            .with("off_centre", HubFitResult::offCentre)
            .with("all_pairings_tried", HubFitResult::complete)
            .with("screws", HubFitResult::screws)
            .with("spare_holes", fit -> fit.spare().stream().map(Hole::label).toList())
            .with("pilot", HubFitResult::pilot)
            .with("calliper", HubReport::laid)
            .with("mismatches", HubFitResult::mismatches)
            .with("cures", HubFitResult::cures),
        View.of(Cure.class).with("words", Cure::words).with("works", Cure::works),
        View.record(ScrewFit.class, "worst")
            .with("thread", s -> s.thread().name())
            .with("hole", s -> s.hole().label())
            .with("diameter", s -> s.hole().diameter())
            .with("worst_clearance", ScrewFit::worst)
            .with("series", s -> s.series().words()),
        View.of(PilotFit.class)
            .with("diameter", PilotFit::pilot)
            .with("opening", PilotFit::opening)
            .with("clearance", PilotFit::clearance)
            .with("enters", PilotFit::enters),
        View.record(Mismatch.class, "kind").with("figure", off -> off.kind().words()),
        View.of(HubReport.Laid.class).with("on", HubReport.Laid::on).with(HubReport.Laid::reads),
        View.record(CalliperFigures.class, "acrossIsPitchDiameter")
            .with("warning", CalliperFigures::warning),
        View.record(CalliperReading.class, "step", "name").with("pair", CalliperReading::name));
  }
}
