package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Depth;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.measure.Candidate;
import felloe.measure.FoundHole;
import felloe.measure.Measured;
import felloe.measure.Pattern;
import felloe.measure.Pattern.Spacing;
import felloe.measure.SurveyResult;
import felloe.measure.Suspect;
import felloe.plate.Problem;
import felloe.service.MeasuredHub;
import java.util.ArrayList;
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
    List<Block> blocks = new ArrayList<>();
    survey.pattern().ifPresent(pattern -> blocks.addAll(pattern(survey, pattern)));
    blocks.addAll(suspects(survey));
    blocks.addAll(candidates(hub));
    blocks.addAll(next(survey));
    blocks.add(Folded.of(Depth.ALL, new Heading("Holes"), holes(survey)));
    blocks.add(Folded.of(Depth.ALL, new Heading("Readings"), readings(survey)));
    blocks.add(Callout.cautions(hub.cautions()));
    return new Report(
        Phrase.of("{}: {} measured", survey.measured().file(), survey.measured().on().words()),
        blocks);
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
                    Quantity.fixed((pattern.pcdHigh() - pattern.pcdLow()) / 2, 2, "mm"),
                    pattern.spacing().words(),
                    hub.candidates().stream().findFirst().map(c -> "; nearest " + c.hub().name()),
                    survey.suspects().isEmpty() ? "" : "; a reading looks like a slip"));
  }

  /** Why readings tell no circle, and what to measure next. */
  public static Report refused(MeasuredHub hub) {
    List<Block> blocks = new ArrayList<>();
    for (Problem problem : hub.survey().noCircle()) {
      blocks.add(
          Callout.verdict(
              Tone.FAIL,
              Phrase.of(
                  "{} {}.",
                  problem.value().isEmpty() ? "These readings" : "The reading " + problem.value(),
                  problem.wanted())));
      blocks.add(Paragraph.of("Next: {}.", problem.cure()));
    }
    return new Report("No circle yet", blocks);
  }

  private static List<Block> pattern(SurveyResult survey, Pattern pattern) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Callout.verdict(
            survey.suspects().isEmpty() && !survey.scattered() ? Tone.NOTE : Tone.CAUTION,
            Phrase.of(
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
                                Quantity.fixed(2 * pattern.sizeError(), 2, "mm"))))));
    List<String> usual = pattern.readsAs();
    if (!usual.isEmpty()) {
      blocks.add(
          Paragraph.of(
              "Usual figures within that: {}{}",
              String.join(", ", usual),
              usual.size() > 1 ? "; the calliper cannot tell them apart here." : "."));
    }
    blocks.add(
        new Paragraph(
            pattern.spacing() == Spacing.ASSUMED
                ? "There are too few readings to find each hole by itself. The figures hold if the"
                    + " holes stand evenly in the order of their numbers."
                : Phrase.of(
                    "No hole is more than {} off the nearest even ring.",
                    Quantity.fixed(pattern.unevenness(), 2, "mm"))));
    pattern
        .evenPcd()
        .ifPresent(
            even ->
                blocks.add(
                    Paragraph.of(
                        "If they stand evenly, the circle is {} ± {}.",
                        Quantity.fixed(even.value(), 2, "mm"),
                        half(even.low(), even.high()))));
    boundsOfEdges(survey, pattern).ifPresent(blocks::add);
    if (survey.scattered()) {
      boolean wild = survey.scatter() > WILD && pattern.spacing() == Spacing.ASSUMED;
      blocks.add(
          Paragraph.of(
              "{}The readings differ {} times as much as their plus and minus allows; the"
                  + " bounds are made as wide. Measure again with care, or the holes are not"
                  + " round.",
              wild ? "They do not stand evenly, or a reading is wrong, or the count. " : "",
              Quantity.fixed(survey.scatter(), 1, "")));
    }
    if (survey.clockwise()) {
      blocks.add(new Paragraph("By the edges the holes are numbered clockwise."));
    }
    return blocks;
  }

  /** Where the circle lies and how it is turned, when edges tell it. */
  private static Optional<Block> boundsOfEdges(SurveyResult survey, Pattern pattern) {
    boolean edges = survey.measured().readings().stream().anyMatch(r -> r.edge().isPresent());
    return edges
        ? Optional.of(
            Paragraph.of(
                "From the edges its centre lies {} ± {} across and {} ± {} up; its first hole"
                    + " stands at {} ± {}.",
                Quantity.fixed(pattern.centre().x(), 2, "mm"),
                Quantity.fixed(pattern.centreHalfX(), 2, "mm"),
                Quantity.fixed(pattern.centre().y(), 2, "mm"),
                Quantity.fixed(pattern.centreHalfY(), 2, "mm"),
                Quantity.fixed(Math.toDegrees(pattern.startAngle()), 1, "degrees"),
                Quantity.fixed(Math.toDegrees(pattern.startHalf()), 1, "degrees")))
        : Optional.empty();
  }

  private static Quantity half(double low, double high) {
    return Quantity.fixed((high - low) / 2, 2, "mm");
  }

  /** Readings that look like slips. */
  static List<Block> suspects(SurveyResult survey) {
    List<Suspect> suspects = survey.suspects();
    if (suspects.isEmpty()) {
      return List.of();
    }
    Measured measured = survey.measured();
    boolean together = suspects.stream().anyMatch(s -> !s.alone());
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Rows.of(suspects)
            .words("reading", s -> measured.holes(s.reading()))
            .words("over", s -> s.reading().over().words())
            .figures("reads", "mm", s -> Quantity.fixed(s.reading().reads(), 2, "mm"))
            .figures("off by", "mm", s -> Quantity.fixed(s.off(), 2, "mm"))
            .wrapped(
                "written in",
                s ->
                    Phrase.of(
                        "{}{}{}",
                        s.reading().place().toString(),
                        s.hint().isEmpty() ? "" : "; " + s.hint(),
                        s.ifEven() ? "; if the holes stand evenly" : ""))
            .table()
            .under(
                together
                    ? "One of these looks like a slip; measure them again:"
                    : "Looks like a slip:"));
    if (!together && suspects.stream().noneMatch(Suspect::ifEven)) {
      blocks.add(new Paragraph("The figures are without it. Measure it again."));
    }
    return blocks;
  }

  private static Table holes(SurveyResult survey) {
    return Rows.of(survey.holes())
        .words("hole", FoundHole::label)
        .figures("x", "mm", hole -> Quantity.fixed(hole.at().x(), 2, "mm"))
        .figures("y", "mm", hole -> Quantity.fixed(hole.at().y(), 2, "mm"))
        .figures("error of x", "mm", hole -> Quantity.fixed(hole.errorX(), 3, "mm"))
        .figures("error of y", "mm", hole -> Quantity.fixed(hole.errorY(), 3, "mm"))
        .figures("diameter", "mm", hole -> known(hole.size()))
        .figures(
            "its error",
            "mm",
            hole -> hole.size().map(s -> Quantity.fixed(hole.sizeError(), 3, "mm")))
        .table();
  }

  private static Table readings(SurveyResult survey) {
    return Rows.of(survey.readings())
        .words("reading", r -> survey.measured().holes(r.reading()))
        .words("over", r -> r.reading().over().words())
        .figures("reads", "mm", r -> Quantity.fixed(r.reading().reads(), 2, "mm"))
        .figures("off by", "mm", r -> Quantity.fixed(r.residual(), 3, "mm"))
        .figures("checked", r -> Quantity.percent(r.redundancy(), 0))
        .figures("off by / its error", r -> Quantity.fixed(r.w(), 1, ""))
        .table();
  }

  private static List<Block> candidates(MeasuredHub hub) {
    if (hub.candidates().isEmpty()) {
      int count = hub.survey().measured().count();
      return List.of(Paragraph.of("No known hub has {} screws.", count));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Rows.of(hub.candidates())
            .words("hub", c -> c.hub().name())
            .figures("circle off", "mm", c -> Quantity.fixed(c.pcdOff(), 2, "mm"))
            .figures("hole off", "mm", c -> Quantity.fixed(c.off(), 2, "mm"))
            .figures("room", "mm", c -> known(c.clearance()))
            .figures("at worst", "mm", c -> known(c.worst()))
            .wrapped("screws", MeasureReport::enters)
            .table());
    Candidate first = hub.candidates().get(0);
    if (!first.like().isEmpty()) {
      blocks.add(
          Paragraph.of(
              "These readings cannot tell {} from {}: they lie closer than the readings and a"
                  + " hub's own tolerance allow.",
              first.hub().name(),
              Phrase.list(first.like())));
    }
    return blocks;
  }

  private static Cell known(Optional<Double> length) {
    return Cell.orUnknown(length.map(mm -> Quantity.fixed(mm, 2, "mm")));
  }

  private static String enters(Candidate c) {
    String enters = c.clearance().isEmpty() ? "" : c.enters() ? "enters" : "does not enter";
    String odd = c.sizeSuits().orElse(true) ? "" : "size does not suit";
    return enters.isEmpty() || odd.isEmpty() ? enters + odd : enters + "; " + odd;
  }

  private static List<Block> next(SurveyResult survey) {
    List<Block> blocks = new ArrayList<>();
    Measured measured = survey.measured();
    int waiting = measured.waiting().size();
    if (waiting > 0) {
      blocks.add(new Paragraph(Phrase.count(waiting, "reading") + " not taken yet."));
    }
    if (!survey.next().isEmpty()) {
      List<String> words = survey.next().stream().map(measured::words).toList();
      blocks.add(new Paragraph("To be surer, measure " + String.join(", then ", words) + "."));
    }
    return blocks;
  }
}
