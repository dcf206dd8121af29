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
        View.of(
            HubSpec.class,
            (hub, to) ->
                to.add("name", hub.name())
                    .add("title", hub.title())
                    .add("figures", HubViews.figures(hub))
                    .add("calliper", HubReport.laid(hub.rings()))),
        View.of(
            Based.class,
            (one, to) ->
                to.add("key", one.key())
                    .add("name", one.figure().name())
                    .add("value", one.figure().value())
                    .add("unit", one.figure().unit())
                    .add("kind", one.basis().kind().words())
                    .add("basis", one.basis().words())),
        View.record(KnownHubs.class),
        View.as(KnownHub.class, KnownHub::hub),
        View.of(
            MeasuredHub.class,
            (m, to) ->
                to.add("file", m.survey().measured().file())
                    .add("on", m.survey().measured().on().words())
                    .add("count", m.survey().measured().count())
                    .add("pcd", of(m, Pattern::pcd))
                    .add("pcd_95", of(m, p -> List.of(p.pcdLow(), p.pcdHigh())))
                    .add("pcd_error", of(m, Pattern::pcdError))
                    .add("centre", of(m, Pattern::centre))
                    .add("centre_plus_minus", of(m, p -> List.of(p.centreHalfX(), p.centreHalfY())))
                    .add("start_angle", of(m, p -> Math.toDegrees(p.startAngle())))
                    .add("start_angle_plus_minus", of(m, p -> Math.toDegrees(p.startHalf())))
                    .add("size", m.survey().pattern().flatMap(Pattern::size))
                    .add(
                        "size_error",
                        m.survey()
                            .pattern()
                            .filter(p -> p.size().isPresent())
                            .map(Pattern::sizeError))
                    .add("spacing", of(m, p -> p.spacing().words()))
                    .add("unevenness", of(m, Pattern::unevenness))
                    .add(
                        "even_pcd",
                        m.survey().pattern().flatMap(Pattern::evenPcd).map(Pattern.Bounded::value))
                    .add(
                        "even_pcd_95",
                        m.survey()
                            .pattern()
                            .flatMap(Pattern::evenPcd)
                            .map(e -> List.of(e.low(), e.high())))
                    .add("reads_as", m.survey().pattern().map(Pattern::readsAs).orElse(List.of()))
                    .add("clockwise", m.survey().clockwise())
                    .add("spare_readings", m.survey().freedom())
                    .add("scatter", m.survey().scatter())
                    .add("holes", m.survey().holes())
                    .add("suspect_readings", suspects(m.survey()))
                    .add("readings", taken(m.survey(), m.survey().readings(), c -> c.reading()))
                    .add("candidates", m.candidates())
                    .add("next", m.next())
                    .add("waiting", m.survey().measured().waiting().size())
                    .add("cautions", m.cautions())),
        View.of(
            FoundHole.class,
            (h, to) ->
                to.add("label", h.label())
                    .add("x", h.at().x())
                    .add("y", h.at().y())
                    .add("x_error", h.errorX())
                    .add("y_error", h.errorY())
                    .add("diameter", h.size())
                    .add("diameter_error", h.size().map(s -> h.sizeError()))),
        View.record(NextReading.class, "words"),
        View.of(
            Taken.class,
            (t, to) ->
                to.add("holes", t.measured().holes(t.reading()))
                    .add("over", t.reading().over().words())
                    .add("reads", t.reading().reads())
                    .add("plus_minus", t.reading().plusMinus())
                    .add("line", t.reading().place().line())
                    .addAll(t.judged())),
        View.record(Suspect.class, "reading"),
        View.record(CheckedReading.class, "reading"),
        View.record(
            Candidate.class,
            (c, to) ->
                to.add("hub", c.hub().name())
                    .add("title", c.hub().title())
                    .add("worst_clearance", c.worst())
                    .add("enters", c.enters())
                    .add("cannot_tell_from", c.like()),
            "misfit",
            "worst",
            "like"),
        View.of(
            DrilledOutcome.class,
            (outcome, to) -> to.addAll(outcome.study()).add("as_drilled", new AsDrilled(outcome))),
        View.of(
            AsDrilled.class,
            (as, to) ->
                to.addAll(as.of().drilled())
                    .add("verdict", as.of().verdict())
                    .add(
                        "findings", FindingsJson.of(as.of().findings()).members().get("findings"))),
        View.record(
            AsDrilledResult.class,
            (as, to) ->
                to.add("file", as.survey().measured().file())
                    .add("fixed_tolerance", as.fixed())
                    .add("floating_tolerance", as.floating())
                    .add("suspect_readings", suspects(as.survey())),
            "verdict",
            "findings",
            "fixed",
            "floating",
            "survey",
            "plate"),
        View.record(OddHole.class, (hole, to) -> to.add("off", hole.off())),
        View.record(
            DrilledHole.class,
            (h, to) ->
                to.add("label", h.meant().label())
                    .add("x", h.at().x())
                    .add("y", h.at().y())
                    .add("keeps", h.keeps()),
            "meant",
            "at",
            "sizeUnsure",
            "bonus"),
        View.record(
            HoleEnlargement.class,
            (enlargement, to) ->
                to.add("open", enlargement.all()).add("worst_clearance", enlargement.worst()),
            "all",
            "worst"));
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
