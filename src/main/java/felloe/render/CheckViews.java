package felloe.render;

import felloe.hub.CalliperFigures;
import felloe.hub.HubFitResult;
import felloe.hub.ScrewFit;
import felloe.out.FindingsJson;
import felloe.out.ShapeJson;
import felloe.plate.Hole;
import felloe.service.Study;
import java.util.ArrayList;
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
            .with("calliper", CheckViews::calliper)
            .with("mismatches", HubFitResult::mismatches)
            .with(
                "cures",
                fit -> fit.cures().stream().map(c -> new Cured(c.words(), c.works())).toList()),
        View.of(ScrewFit.class)
            .with("screw", ScrewFit::screw)
            .with("thread", s -> s.thread().name())
            .with("at", ScrewFit::at)
            .with("hole", s -> s.hole().label())
            .with("diameter", s -> s.hole().diameter())
            .with("distance", ScrewFit::distance)
            .with("clearance", ScrewFit::clearance)
            .with("worst_clearance", ScrewFit::worst)
            .with("series", s -> s.series().words()),
        View.of(felloe.hub.PilotFit.class)
            .with("diameter", felloe.hub.PilotFit::pilot)
            .with("opening", felloe.hub.PilotFit::opening)
            .with("clearance", felloe.hub.PilotFit::clearance)
            .with("enters", felloe.hub.PilotFit::enters),
        View.of(felloe.hub.Mismatch.class)
            .with("figure", off -> off.kind().words())
            .with("subject", felloe.hub.Mismatch::subject)
            .with("plate", felloe.hub.Mismatch::plate)
            .with("hub", felloe.hub.Mismatch::hub)
            .with("unit", felloe.hub.Mismatch::unit));
  }

  /** What a calliper reads on the hub's screws and the plate's holes. */
  private static List<Calliper> calliper(HubFitResult fit) {
    List<Calliper> all = new ArrayList<>();
    fit.rings()
        .forEach(
            ring ->
                all.add(Calliper.of(ring.thread().name() + " screws in the hub", ring.calliper())));
    fit.plateCalliper().ifPresent(c -> all.add(Calliper.of("holes in the plate", c)));
    return all;
  }

  private record Calliper(
      String on,
      int count,
      double pitchDiameter,
      double diameter,
      List<Reading> readings,
      String warning) {
    static Calliper of(String on, CalliperFigures c) {
      return new Calliper(
          on,
          c.count(),
          c.pitchDiameter(),
          c.diameter(),
          c.readings().stream()
              .map(r -> new Reading(r.name(), r.centres(), r.outside(), r.inside()))
              .toList(),
          c.warning());
    }
  }

  private record Reading(String pair, double centres, double outside, double inside) {}

  /** What would mend it, and whether it works. */
  private record Cured(String words, boolean works) {}
}
