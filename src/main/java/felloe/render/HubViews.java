package felloe.render;

import felloe.hub.HubSpec;
import felloe.measure.AsDrilledResult;
import felloe.measure.Candidate;
import felloe.measure.CheckedReading;
import felloe.measure.DrilledHole;
import felloe.measure.FoundHole;
import felloe.measure.HoleEnlargement;
import felloe.measure.Measured;
import felloe.measure.OddHole;
import felloe.measure.Pattern;
import felloe.measure.Reading;
import felloe.measure.SurveyResult;
import felloe.measure.Suspect;
import felloe.out.FindingsJson;
import felloe.plate.Basis;
import felloe.plate.SourcedFigure;
import felloe.report.HubReport;
import felloe.service.DrilledOutcome;
import felloe.service.KnownHub;
import felloe.service.KnownHubs;
import felloe.service.MeasuredHub;
import felloe.service.MeasuredHub.NextReading;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** Hubs, what a calliper tells of them, and plates as drilled, as JSON. */
final class HubViews {

  private HubViews() {}

  static List<View<?>> all() {
    return List.of(
        View.of(HubSpec.class)
            .with("name", HubSpec::name)
            .with("title", HubSpec::title)
            .with("figures", HubViews::figures)
            .with("calliper", hub -> HubReport.laid(hub.rings())),
        View.of(Based.class)
            .with("key", Based::key)
            .with("name", one -> one.figure().name())
            .with("value", one -> one.figure().value())
            .with("unit", one -> one.figure().unit())
            .with("kind", one -> one.basis().kind().words())
            .with("basis", one -> one.basis().words()),
        View.record(KnownHubs.class),
        View.as(KnownHub.class, KnownHub::hub),
        View.of(MeasuredHub.class)
            .with("file", m -> m.survey().measured().file())
            .with("on", m -> m.survey().measured().on().words())
            .with("count", m -> m.survey().measured().count())
            .with("pcd", m -> of(m, Pattern::pcd))
            .with("pcd_95", m -> of(m, p -> List.of(p.pcdLow(), p.pcdHigh())))
            .with("pcd_error", m -> of(m, Pattern::pcdError))
            .with("centre", m -> of(m, Pattern::centre))
            .with("centre_plus_minus", m -> of(m, p -> List.of(p.centreHalfX(), p.centreHalfY())))
            .with("start_angle", m -> of(m, p -> Math.toDegrees(p.startAngle())))
            .with("start_angle_plus_minus", m -> of(m, p -> Math.toDegrees(p.startHalf())))
            .with("size", m -> m.survey().pattern().flatMap(Pattern::size))
            .with(
                "size_error",
                m -> m.survey().pattern().filter(p -> p.size().isPresent()).map(Pattern::sizeError))
            .with("spacing", m -> of(m, p -> p.spacing().words()))
            .with("unevenness", m -> of(m, Pattern::unevenness))
            .with(
                "even_pcd",
                m -> m.survey().pattern().flatMap(Pattern::evenPcd).map(Pattern.Bounded::value))
            .with(
                "even_pcd_95",
                m ->
                    m.survey()
                        .pattern()
                        .flatMap(Pattern::evenPcd)
                        .map(e -> List.of(e.low(), e.high())))
            .with("reads_as", m -> m.survey().pattern().map(Pattern::readsAs).orElse(List.of()))
            .with("clockwise", m -> m.survey().clockwise())
            .with("spare_readings", m -> m.survey().freedom())
            .with("scatter", m -> m.survey().scatter())
            .with("holes", m -> m.survey().holes())
            .with("suspect_readings", m -> suspects(m.survey()))
            .with("readings", m -> taken(m.survey(), m.survey().readings(), c -> c.reading()))
            .with("candidates", MeasuredHub::candidates)
            .with("next", MeasuredHub::next)
            .with("waiting", m -> m.survey().measured().waiting().size())
            .with("cautions", MeasuredHub::cautions),
        View.of(FoundHole.class)
            .with("label", FoundHole::label)
            .with("x", h -> h.at().x())
            .with("y", h -> h.at().y())
            .with("x_error", FoundHole::errorX)
            .with("y_error", FoundHole::errorY)
            .with("diameter", FoundHole::size)
            .with("diameter_error", h -> h.size().map(s -> h.sizeError())),
        View.record(NextReading.class, "words"),
        View.of(Taken.class)
            .with("holes", t -> t.measured().holes(t.reading()))
            .with("over", t -> t.reading().over().words())
            .with("reads", t -> t.reading().reads())
            .with("plus_minus", t -> t.reading().plusMinus())
            .with("line", t -> t.reading().place().line())
            .with(Taken::judged),
        View.record(Suspect.class, "reading"),
        View.record(CheckedReading.class, "reading"),
        View.record(Candidate.class, "misfit", "worst", "like")
            .with("hub", c -> c.hub().name())
            .with("title", c -> c.hub().title())
            .with("worst_clearance", Candidate::worst)
            .with("enters", Candidate::enters)
            .with("cannot_tell_from", Candidate::like),
        View.of(DrilledOutcome.class)
            .with(DrilledOutcome::study)
            .with("as_drilled", AsDrilled::new),
        View.of(AsDrilled.class)
            .with(as -> as.of().drilled())
            .with("verdict", as -> as.of().verdict())
            .with("findings", as -> FindingsJson.of(as.of().findings()).members().get("findings")),
        View.record(
                AsDrilledResult.class,
                "verdict",
                "findings",
                "fixed",
                "floating",
                "survey",
                "plate")
            .with("file", as -> as.survey().measured().file())
            .with("fixed_tolerance", AsDrilledResult::fixed)
            .with("floating_tolerance", AsDrilledResult::floating)
            .with("suspect_readings", as -> suspects(as.survey())),
        View.record(OddHole.class).with("off", OddHole::off),
        View.record(DrilledHole.class, "meant", "at", "sizeUnsure", "bonus")
            .with("label", h -> h.meant().label())
            .with("x", h -> h.at().x())
            .with("y", h -> h.at().y())
            .with("keeps", DrilledHole::keeps),
        View.record(HoleEnlargement.class, "all", "worst")
            .with("open", HoleEnlargement::all)
            .with("worst_clearance", HoleEnlargement::worst));
  }

  private static <T> Optional<T> of(MeasuredHub hub, Function<Pattern, T> part) {
    return hub.survey().pattern().map(part);
  }

  /** A figure of a hub with its key in the hub's file. */
  private record Based(String key, SourcedFigure figure, Basis basis) {}

  private static List<Based> figures(HubSpec hub) {
    return hub.figures().entrySet().stream()
        .map(f -> new Based(f.getKey(), f.getValue(), hub.bases().get(f.getKey())))
        .toList();
  }

  /** A reading among the others, and what the adjustment says of it. */
  private record Taken(Measured measured, Reading reading, Record judged) {}

  private static <T extends Record> List<Taken> taken(
      SurveyResult survey, List<T> judged, Function<T, Reading> reading) {
    return judged.stream()
        .map(one -> new Taken(survey.measured(), reading.apply(one), one))
        .toList();
  }

  private static List<Taken> suspects(SurveyResult survey) {
    return taken(survey, survey.suspects(), Suspect::reading);
  }

  /** The part of the answer that the drawing's review does not tell. */
  private record AsDrilled(DrilledOutcome of) {}
}
