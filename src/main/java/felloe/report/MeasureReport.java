package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.measure.Candidate;
import felloe.measure.CheckedReading;
import felloe.measure.FoundHole;
import felloe.measure.Measured;
import felloe.measure.Pattern;
import felloe.measure.Pattern.Spacing;
import felloe.measure.SurveyResult;
import felloe.measure.Suspect;
import felloe.plate.Problem;
import felloe.service.MeasuredHub;
import java.util.List;
import java.util.Optional;

/** What calliper readings tell of a hub, told. */
public final class MeasureReport {

  /** Readings that scatter so much more than they should are no matter of care. */
  private static final double WILD = 3;

  private MeasureReport() {}

  /** The hub, told. */
  public static Report of(MeasuredHub hub) {
    SurveyResult survey = hub.survey();
    Telling told = new Telling();
    survey.pattern().ifPresent(pattern -> pattern(survey, pattern, told));
    told.add(suspects(survey));
    candidates(hub, told);
    next(survey, told);
    told.fold(Depth.ALL, new Telling().head("Holes").add(holes(survey)));
    told.fold(Depth.ALL, new Telling().head("Readings").add(readings(survey)));
    return told.cautions(hub.cautions())
        .under(
            Phrase.of("{}: {} measured", survey.measured().file(), survey.measured().on().words()));
  }

  /** What is told so far of a hub that is being measured, in a sentence. */
  public static Optional<String> soFar(MeasuredHub hub) {
    SurveyResult survey = hub.survey();
    return survey
        .pattern()
        .map(
            pattern ->
                Phrase.of(
                    "So far: circle of {} ± {}, {}{}{}.",
                    Quantity.fixed(pattern.pcd(), 2, "mm"),
                    half(pattern.pcdLow(), pattern.pcdHigh()),
                    pattern.spacing().words(),
                    hub.candidates().stream().findFirst().map(c -> "; nearest " + c.hub().name()),
                    survey.suspects().isEmpty() ? "" : "; a reading looks like a slip"));
  }

  /**
   * A reading that looks like a slip.
   *
   * @param line where it was written
   * @param words what is odd about it
   */
  public record Slip(int line, String words) {}

  /** Readings that look like slips. */
  public static List<Slip> slips(MeasuredHub hub) {
    return hub.survey().suspects().stream()
        .map(
            s ->
                new Slip(
                    s.reading().place().line(),
                    Phrase.of(
                        "looks like a slip{}: off by {}{}. Measure it again.",
                        s.alone() ? "" : ", or one of the others that are marked",
                        Quantity.fixed(s.off(), 2, "mm"),
                        s.hint().isEmpty() ? "" : "; it " + s.hint())))
        .toList();
  }

  /** Why readings tell no circle, and what to measure next. */
  public static Report refused(MeasuredHub hub) {
    Telling told = new Telling();
    for (Problem problem : hub.survey().noCircle()) {
      told.verdict(
          Tone.FAIL,
          "{} {}.",
          problem.value().isEmpty() ? "These readings" : "The reading " + problem.value(),
          problem.wanted());
      told.say("Next: {}.", problem.cure());
    }
    return told.under("No circle yet");
  }

  private static void pattern(SurveyResult survey, Pattern pattern, Telling told) {
    told.verdict(
        survey.suspects().isEmpty() && !survey.scattered() ? Tone.NOTE : Tone.CAUTION,
        "{} {}, {}, on a circle of {} ± {} (95 in 100){}.",
        pattern.count(),
        survey.measured().on().words(),
        pattern.spacing().words(),
        Quantity.fixed(pattern.pcd(), 2, "mm"),
        half(pattern.pcdLow(), pattern.pcdHigh()),
        pattern
            .size()
            .map(
                size ->
                    Phrase.of(
                        "; diameter {} ± {}",
                        Quantity.fixed(size, 2, "mm"),
                        Quantity.fixed(2 * pattern.sizeError(), 2, "mm"))));
    List<String> usual = pattern.readsAs();
    if (!usual.isEmpty()) {
      told.say(
          "Usual figures within that: {}{}",
          String.join(", ", usual),
          usual.size() > 1 ? "; the calliper cannot tell them apart here." : ".");
    }
    told.say(
        pattern.spacing() == Spacing.ASSUMED
            ? "There are too few readings to find each hole by itself. The figures hold if the"
                + " holes stand evenly in the order of their numbers."
            : Phrase.of(
                "No hole is more than {} off the nearest even ring.",
                Quantity.fixed(pattern.unevenness(), 2, "mm")));
    pattern
        .evenPcd()
        .ifPresent(
            even ->
                told.say(
                    "If they stand evenly, the circle is {} ± {}.",
                    Quantity.fixed(even.value(), 2, "mm"),
                    half(even.low(), even.high())));
    if (survey.measured().readings().stream().anyMatch(r -> r.edge().isPresent())) {
      told.say(
          "From the edges its centre lies {} ± {} across and {} ± {} up; its first hole stands at"
              + " {} ± {}.",
          Quantity.fixed(pattern.centre().x(), 2, "mm"),
          Quantity.fixed(pattern.centreHalfX(), 2, "mm"),
          Quantity.fixed(pattern.centre().y(), 2, "mm"),
          Quantity.fixed(pattern.centreHalfY(), 2, "mm"),
          Quantity.fixed(Math.toDegrees(pattern.startAngle()), 1, "degrees"),
          Quantity.fixed(Math.toDegrees(pattern.startHalf()), 1, "degrees"));
    }
    if (survey.scattered()) {
      boolean wild = survey.scatter() > WILD && pattern.spacing() == Spacing.ASSUMED;
      told.say(
          "{}The readings differ {} times as much as their plus and minus allows; the"
              + " bounds are made as wide. Measure again with care, or the holes are not"
              + " round.",
          wild ? "They do not stand evenly, or a reading is wrong, or the count. " : "",
          Quantity.fixed(survey.scatter(), 1, ""));
    }
    if (survey.clockwise()) {
      told.say("By the edges the holes are numbered clockwise.");
    }
  }

  private static Quantity half(double low, double high) {
    return Quantity.fixed((high - low) / 2, 2, "mm");
  }

  /** Readings that look like slips; those of which only one does so, behind the sure ones. */
  static Telling suspects(SurveyResult survey) {
    List<Suspect> alone = survey.suspects().stream().filter(Suspect::alone).toList();
    List<Suspect> several = survey.suspects().stream().filter(s -> !s.alone()).toList();
    Telling told = new Telling();
    if (!alone.isEmpty()) {
      told.add(slips(survey, alone, "Looks like a slip:"));
      if (alone.stream().noneMatch(Suspect::ifEven)) {
        told.say("The figures are without it. Measure it again.");
      }
    }
    if (!several.isEmpty()) {
      told.add(slips(survey, several, "One of these looks like a slip; measure them again:"));
    }
    return told;
  }

  private static Block.Table slips(SurveyResult survey, List<Suspect> suspects, String title) {
    return Rows.of(suspects)
        .words("reading", s -> survey.measured().holes(s.reading()))
        .words("over", s -> s.reading().over().words())
        .fixed("reads", "mm", 2, s -> s.reading().reads())
        .fixed("off by", "mm", 2, s -> s.off())
        .wrapped(
            "written in",
            s ->
                Phrase.of(
                    "{}{}{}",
                    s.reading().place().toString(),
                    s.hint().isEmpty() ? "" : "; " + s.hint(),
                    s.ifEven() ? "; if the holes stand evenly" : ""))
        .table()
        .under(title);
  }

  private static Rows<FoundHole> holes(SurveyResult survey) {
    return Rows.of(survey.holes())
        .words("hole", FoundHole::label)
        .fixed("x", "mm", 2, hole -> hole.at().x())
        .fixed("y", "mm", 2, hole -> hole.at().y())
        .fixed("error of x", "mm", 3, hole -> hole.errorX())
        .fixed("error of y", "mm", 3, hole -> hole.errorY())
        .figures("diameter", "mm", hole -> known(hole.size()))
        .figures(
            "its error",
            "mm",
            hole -> hole.size().map(s -> Quantity.fixed(hole.sizeError(), 3, "mm")));
  }

  private static Rows<CheckedReading> readings(SurveyResult survey) {
    return Rows.of(survey.readings())
        .words("reading", r -> survey.measured().holes(r.reading()))
        .words("over", r -> r.reading().over().words())
        .fixed("reads", "mm", 2, r -> r.reading().reads())
        .fixed("off by", "mm", 3, r -> r.residual())
        .figures("checked", r -> Quantity.percent(r.redundancy(), 0))
        .fixed("off by / its error", "", 1, r -> r.w());
  }

  private static void candidates(MeasuredHub hub, Telling told) {
    if (hub.candidates().isEmpty()) {
      told.say("No known hub has {} screws.", hub.survey().measured().count());
      return;
    }
    told.add(
        Rows.of(hub.candidates())
            .words("hub", c -> c.hub().name())
            .fixed("circle off", "mm", 2, c -> c.pcdOff())
            .fixed("hole off", "mm", 2, c -> c.off())
            .figures("room", "mm", c -> known(c.clearance()))
            .figures("at worst", "mm", c -> known(c.worst()))
            .wrapped("screws", MeasureReport::enters));
    Candidate first = hub.candidates().get(0);
    if (!first.like().isEmpty()) {
      told.say(
          "These readings cannot tell {} from {}: they lie closer than the readings and a"
              + " hub's own tolerance allow.",
          first.hub().name(),
          Phrase.list(first.like()));
    }
  }

  private static Cell known(Optional<Double> length) {
    return Cell.orUnknown(length.map(mm -> Quantity.fixed(mm, 2, "mm")));
  }

  private static String enters(Candidate c) {
    String enters = c.clearance().isEmpty() ? "" : c.enters() ? "enters" : "does not enter";
    String odd = c.sizeSuits().orElse(true) ? "" : "size does not suit";
    return enters.isEmpty() || odd.isEmpty() ? enters + odd : enters + "; " + odd;
  }

  private static void next(SurveyResult survey, Telling told) {
    Measured measured = survey.measured();
    int waiting = measured.waiting().size();
    if (waiting > 0) {
      told.say(Phrase.count(waiting, "reading") + " not taken yet.");
    }
    if (!survey.next().isEmpty()) {
      List<String> words = survey.next().stream().map(measured::words).toList();
      told.say("To be surer, measure " + String.join(", then ", words) + ".");
    }
  }
}
