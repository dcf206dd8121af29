package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Column;
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
      blocks.add(new Paragraph(Phrase.of("Next: {}.", problem.cure())));
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
          new Paragraph(
              Phrase.of(
                  "Usual figures within that: {}{}",
                  String.join(", ", usual),
                  usual.size() > 1 ? "; the calliper cannot tell them apart here." : ".")));
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
                    new Paragraph(
                        Phrase.of(
                            "If they stand evenly, the circle is {} ± {}.",
                            Quantity.fixed(even.value(), 2, "mm"),
                            half(even.low(), even.high())))));
    boundsOfEdges(survey, pattern).ifPresent(blocks::add);
    if (survey.scattered()) {
      boolean wild = survey.scatter() > WILD && pattern.spacing() == Spacing.ASSUMED;
      blocks.add(
          new Paragraph(
              Phrase.of(
                  "{}The readings differ {} times as much as their plus and minus allows; the"
                      + " bounds are made as wide. Measure again with care, or the holes are not"
                      + " round.",
                  wild ? "They do not stand evenly, or a reading is wrong, or the count. " : "",
                  Quantity.fixed(survey.scatter(), 1, ""))));
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
            new Paragraph(
                Phrase.of(
                    "From the edges its centre lies {} ± {} across and {} ± {} up; its first hole"
                        + " stands at {} ± {}.",
                    Quantity.fixed(pattern.centre().x(), 2, "mm"),
                    Quantity.fixed(pattern.centreHalfX(), 2, "mm"),
                    Quantity.fixed(pattern.centre().y(), 2, "mm"),
                    Quantity.fixed(pattern.centreHalfY(), 2, "mm"),
                    Quantity.fixed(Math.toDegrees(pattern.startAngle()), 1, "degrees"),
                    Quantity.fixed(Math.toDegrees(pattern.startHalf()), 1, "degrees"))))
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
    List<List<Cell>> rows = new ArrayList<>();
    for (Suspect s : suspects) {
      rows.add(
          List.of(
              Cell.of(measured.holes(s.reading())),
              Cell.of(s.reading().over().words()),
              Quantity.fixed(s.reading().reads(), 2, "mm"),
              Quantity.fixed(s.off(), 2, "mm"),
              Cell.of(
                  Phrase.of(
                      "{}{}{}",
                      s.reading().place().toString(),
                      s.hint().isEmpty() ? "" : "; " + s.hint(),
                      s.ifEven() ? "; if the holes stand evenly" : ""))));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Table.of(
                List.of(
                    Column.words("reading"),
                    Column.words("over"),
                    Column.figures("reads", "mm"),
                    Column.figures("off by", "mm"),
                    Column.wrapped("written in")),
                rows)
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
    List<List<Cell>> rows = new ArrayList<>();
    for (FoundHole hole : survey.holes()) {
      rows.add(
          List.of(
              Cell.of(hole.label()),
              Quantity.fixed(hole.at().x(), 2, "mm"),
              Quantity.fixed(hole.at().y(), 2, "mm"),
              Quantity.fixed(hole.errorX(), 3, "mm"),
              Quantity.fixed(hole.errorY(), 3, "mm"),
              Cell.orUnknown(hole.size().map(s -> Quantity.fixed(s, 2, "mm"))),
              Cell.orNone(hole.size().map(s -> Quantity.fixed(hole.sizeError(), 3, "mm")))));
    }
    return Table.of(
        List.of(
            Column.words("hole"),
            Column.figures("x", "mm"),
            Column.figures("y", "mm"),
            Column.figures("error of x", "mm"),
            Column.figures("error of y", "mm"),
            Column.figures("diameter", "mm"),
            Column.figures("its error", "mm")),
        rows);
  }

  private static Table readings(SurveyResult survey) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CheckedReading r : survey.readings()) {
      rows.add(
          List.of(
              Cell.of(survey.measured().holes(r.reading())),
              Cell.of(r.reading().over().words()),
              Quantity.fixed(r.reading().reads(), 2, "mm"),
              Quantity.fixed(r.residual(), 3, "mm"),
              Quantity.percent(r.redundancy(), 0),
              Quantity.fixed(r.w(), 1, "")));
    }
    return Table.of(
        List.of(
            Column.words("reading"),
            Column.words("over"),
            Column.figures("reads", "mm"),
            Column.figures("off by", "mm"),
            Column.figures("checked", ""),
            Column.figures("off by / its error", "")),
        rows);
  }

  private static List<Block> candidates(MeasuredHub hub) {
    if (hub.candidates().isEmpty()) {
      int count = hub.survey().measured().count();
      return List.of(new Paragraph(Phrase.of("No known hub has {} screws.", count)));
    }
    List<List<Cell>> rows = new ArrayList<>();
    for (Candidate c : hub.candidates()) {
      String enters = c.clearance().isEmpty() ? "" : c.enters() ? "enters" : "does not enter";
      String odd = c.sizeSuits().orElse(true) ? "" : "size does not suit";
      rows.add(
          List.of(
              Cell.of(c.hub().name()),
              Quantity.fixed(c.pcdOff(), 2, "mm"),
              Quantity.fixed(c.off(), 2, "mm"),
              Cell.orUnknown(c.clearance().map(r -> Quantity.fixed(r, 2, "mm"))),
              Cell.orUnknown(c.worst().map(r -> Quantity.fixed(r, 2, "mm"))),
              Cell.of(enters.isEmpty() || odd.isEmpty() ? enters + odd : enters + "; " + odd)));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Table.of(
            List.of(
                Column.words("hub"),
                Column.figures("circle off", "mm"),
                Column.figures("hole off", "mm"),
                Column.figures("room", "mm"),
                Column.figures("at worst", "mm"),
                Column.wrapped("screws")),
            rows));
    Candidate first = hub.candidates().get(0);
    if (!first.like().isEmpty()) {
      blocks.add(
          new Paragraph(
              Phrase.of(
                  "These readings cannot tell {} from {}: they lie closer than the readings and a"
                      + " hub's own tolerance allow.",
                  first.hub().name(),
                  Phrase.list(first.like()))));
    }
    return blocks;
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
