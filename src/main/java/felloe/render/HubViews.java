package felloe.render;

import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.hub.HubFitResult;
import felloe.hub.HubRing;
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
import felloe.measure.SurveyResult;
import felloe.measure.Suspect;
import felloe.out.FindingsJson;
import felloe.out.Json;
import felloe.plate.Basis;
import felloe.plate.Verdict;
import felloe.service.DrilledOutcome;
import felloe.service.KnownHub;
import felloe.service.KnownHubs;
import felloe.service.MeasuredHub;
import java.util.ArrayList;
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
            .with("calliper", hub -> hub.rings().stream().map(HubViews::calliper).toList()),
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
            .with("readings", m -> readings(m.survey()))
            .with("candidates", MeasuredHub::candidates)
            .with("next", m -> next(m.survey()))
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
        View.of(Candidate.class)
            .with("hub", c -> c.hub().name())
            .with("title", c -> c.hub().title())
            .with("off", Candidate::off)
            .with("pcd_off", Candidate::pcdOff)
            .with("size_suits", Candidate::sizeSuits)
            .with("clearance", Candidate::clearance)
            .with("worst_clearance", Candidate::worst)
            .with("enters", Candidate::enters)
            .with("cannot_tell_from", Candidate::like),
        View.of(DrilledOutcome.class)
            .with(DrilledOutcome::study)
            .with("as_drilled", HubViews::drilled),
        View.of(OddHole.class)
            .with("label", OddHole::label)
            .with("off", OddHole::off)
            .with("by", OddHole::by),
        View.of(DrilledHole.class)
            .with("label", h -> h.meant().label())
            .with("x", h -> h.at().x())
            .with("y", h -> h.at().y())
            .with("diameter", DrilledHole::diameter)
            .with("position", DrilledHole::position)
            .with("unsure", DrilledHole::unsure)
            .with("tolerance", DrilledHole::tolerance)
            .with("keeps", DrilledHole::keeps),
        View.of(HoleEnlargement.class)
            .with("open", HoleEnlargement::all)
            .with("clearance", HoleEnlargement::clearance)
            .with("worst_clearance", HoleEnlargement::worst));
  }

  private static <T> Optional<T> of(MeasuredHub hub, Function<Pattern, T> part) {
    return hub.survey().pattern().map(part);
  }

  /** A figure of a hub with its key in the hub's file. */
  private record Based(
      String key, String name, double value, String unit, String kind, String basis) {}

  private static List<Based> figures(HubSpec hub) {
    List<Based> figures = new ArrayList<>();
    hub.figures()
        .forEach(
            (key, figure) -> {
              Basis basis = hub.bases().get(key);
              figures.add(
                  new Based(
                      key,
                      figure.name(),
                      figure.value(),
                      figure.unit(),
                      basis.kind().words(),
                      basis.words()));
            });
    return figures;
  }

  private record Read(String pair, double centres, double outside, double inside) {
    static Read of(CalliperReading reading) {
      return new Read(reading.name(), reading.centres(), reading.outside(), reading.inside());
    }
  }

  private record Calliper(
      String on,
      int count,
      double pitchDiameter,
      double diameter,
      List<Read> readings,
      String warning) {}

  private static Calliper calliper(HubRing ring) {
    CalliperFigures figures = ring.calliper();
    return new Calliper(
        ring.thread().name() + " screws in the hub",
        figures.count(),
        figures.pitchDiameter(),
        figures.diameter(),
        figures.readings().stream().map(Read::of).toList(),
        figures.warning());
  }

  private record SuspectRow(
      String holes,
      String over,
      double reads,
      double off,
      double w,
      boolean alone,
      boolean ifEven,
      String hint,
      int line) {}

  private static List<SuspectRow> suspects(SurveyResult survey) {
    Measured measured = survey.measured();
    List<SuspectRow> rows = new ArrayList<>();
    for (Suspect s : survey.suspects()) {
      rows.add(
          new SuspectRow(
              measured.holes(s.reading()),
              s.reading().over().words(),
              s.reading().reads(),
              s.off(),
              s.w(),
              s.alone(),
              s.ifEven(),
              s.hint(),
              s.reading().place().line()));
    }
    return rows;
  }

  private record ReadingRow(
      String holes,
      String over,
      double reads,
      double plusMinus,
      double residual,
      double redundancy,
      double w,
      int line) {}

  private static List<ReadingRow> readings(SurveyResult survey) {
    List<ReadingRow> rows = new ArrayList<>();
    for (CheckedReading r : survey.readings()) {
      rows.add(
          new ReadingRow(
              survey.measured().holes(r.reading()),
              r.reading().over().words(),
              r.reading().reads(),
              r.reading().plusMinus(),
              r.residual(),
              r.redundancy(),
              r.w(),
              r.reading().place().line()));
    }
    return rows;
  }

  private record Next(String from, String to, String over) {}

  private static List<Next> next(SurveyResult survey) {
    List<String> labels = survey.measured().labels();
    return survey.next().stream()
        .map(pair -> new Next(labels.get(pair.from()), labels.get(pair.to()), pair.over().words()))
        .toList();
  }

  private record Cured(String words, boolean works) {}

  private record Drilled(
      String file,
      Verdict verdict,
      List<OddHole> odd,
      HubFitResult fit,
      Json findings,
      double fixedTolerance,
      double floatingTolerance,
      boolean withBonus,
      List<DrilledHole> holes,
      List<HoleEnlargement> openings,
      List<Cured> cures,
      List<SuspectRow> suspectReadings,
      List<String> notes) {}

  private static Drilled drilled(DrilledOutcome outcome) {
    AsDrilledResult drilled = outcome.drilled();
    return new Drilled(
        drilled.survey().measured().file(),
        outcome.verdict(),
        drilled.odd(),
        drilled.fit(),
        FindingsJson.of(outcome.findings()).members().get("findings"),
        drilled.fixed(),
        drilled.floating(),
        drilled.withBonus(),
        drilled.holes(),
        drilled.openings(),
        drilled.cures().stream().map(c -> new Cured(c.words(), c.works())).toList(),
        suspects(drilled.survey()),
        drilled.notes());
  }
}
