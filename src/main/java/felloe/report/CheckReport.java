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
import felloe.document.Report;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Place;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a review says of a plate, told. */
public final class CheckReport {

  private static final List<Column> COLUMNS =
      List.of(
          Column.words(""),
          Column.words("check"),
          Column.wrapped("of"),
          Column.figures("is", ""),
          Column.words("should be"),
          Column.words("written in"));

  private CheckReport() {}

  /** The review, told. */
  public static Report of(Study study) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(verdict(study));
    blocks.add(LOADS);
    blocks.addAll(JointReport.cure(study));
    List<Finding> open = new ArrayList<>(study.review().with(Verdict.FAIL));
    open.addAll(study.review().with(Verdict.CAUTION));
    blocks.addAll(open(open));
    study.fit().ifPresent(fit -> blocks.addAll(HubFitReport.blocks(fit, study.findings())));
    if (study.fit().isEmpty()) {
      blocks.add(new Paragraph("It names no hub: whether it meets one was not looked at."));
    }
    study
        .plate()
        .notes()
        .forEach(
            note ->
                blocks.add(
                    new Paragraph(
                        Phrase.of("Note, {}: {}", note.place().toString(), note.text()))));
    blocks.add(new Folded(Depth.ALL, () -> passed(study)));
    blocks.add(new Folded(Depth.ALL, () -> JointReport.judged(study.joints().judgement())));
    blocks.add(new Folded(Depth.SOURCES, () -> sources(study.findings())));
    blocks.add(new Folded(Depth.SOURCES, () -> JointReport.sources(study.joints())));
    blocks.add(Callout.cautions(study.cautions()));
    return new Report(title(study), blocks);
  }

  private static String title(Study study) {
    return Phrase.of("{}, revision {}: review", study.plate().title(), study.plate().revision());
  }

  /**
   * That a plate fails, in what, and what to change.
   *
   * @param then what is not to be done with what was made all the same
   */
  static List<Block> fails(Study study, String then) {
    List<Finding> fails = study.review().with(Verdict.FAIL);
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Callout.verdict(
            Tone.FAIL,
            Phrase.of("FAILS {} of its review: {}.", Phrase.count(fails.size(), "check"), then)));
    blocks.addAll(JointReport.cure(study));
    blocks.addAll(open(fails));
    return blocks;
  }

  /** A review is no verdict on strength. */
  static final Paragraph LOADS =
      new Paragraph("Whether it stands what hands do is not yet reckoned: felloe load tells.");

  /** What a review comes to, in a word and the counts. */
  static Callout verdict(Study study) {
    return switch (study.verdict()) {
      case PASS -> Callout.verdict(Tone.WELL, "PASSES: " + counts(study));
      case CAUTION -> Callout.verdict(Tone.CAUTION, "Passes with cautions: " + counts(study));
      case FAIL -> Callout.verdict(Tone.FAIL, "FAILS: " + counts(study));
    };
  }

  /** How many findings there are of each kind, in a sentence. */
  public static String counts(Study study) {
    return Phrase.of(
        "{}, {}, {} passed.",
        Phrase.count(study.count(Verdict.FAIL), "fail"),
        Phrase.count(study.count(Verdict.CAUTION), "caution"),
        study.count(Verdict.PASS));
  }

  /** What fails or asks for a decision, each with what to do; the same advice is told once. */
  static List<Block> open(List<Finding> open) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(table(BothSides.once(open)));
    Map<String, List<String>> advice = new LinkedHashMap<>();
    for (Finding f : open) {
      String words = (Phrase.sentence(f.why()) + " " + Phrase.sentence(f.advice())).strip();
      List<String> of = advice.computeIfAbsent(words, w -> new ArrayList<>());
      if (!of.contains(f.rule())) {
        of.add(f.rule());
      }
    }
    advice.forEach(
        (words, rules) ->
            blocks.add(new Paragraph(Phrase.of("{}: {}", Phrase.list(rules), words))));
    return blocks;
  }

  private static Table table(List<Finding> findings) {
    return Table.of(COLUMNS, findings.stream().map(f -> row(f, f.subject())).toList());
  }

  private static List<Cell> row(Finding f, String subject) {
    return List.of(
        word(f.verdict()),
        Cell.of(f.rule()),
        Cell.of(subject),
        Units.brief(f.figure()),
        f.limit().map(limit -> Cell.of(limit(limit))).orElse(Cell.NONE),
        Cell.of(name(f.place())));
  }

  /** Where it is written; all of a shape is in one file, whose folder the maker knows. */
  static String name(Place place) {
    String text = place.toString();
    return text.substring(Math.max(text.lastIndexOf('/'), text.lastIndexOf('\\')) + 1);
  }

  static Cell word(Verdict verdict) {
    return switch (verdict) {
      case PASS -> new Cell.Verdict(Tone.WELL, "pass");
      case CAUTION -> new Cell.Verdict(Tone.CAUTION, "caution");
      case FAIL -> new Cell.Verdict(Tone.FAIL, "FAIL");
    };
  }

  private static String limit(Limit limit) {
    return Phrase.of(
        "{} {}{}",
        limit.sense() == Sense.AT_LEAST ? "at least" : "at most",
        Units.brief(limit.value(), ""),
        limit.overridden() ? " (yours)" : "");
  }

  /** The nearest to its limit of each rule; behind it all that passed. */
  private static List<Block> passed(Study study) {
    Map<String, List<Finding>> byRule = new LinkedHashMap<>();
    for (Finding f : study.review().with(Verdict.PASS)) {
      byRule.computeIfAbsent(f.rule(), rule -> new ArrayList<>()).add(f);
    }
    List<List<Cell>> nearest = new ArrayList<>();
    List<Finding> all = new ArrayList<>();
    byRule.forEach(
        (rule, findings) -> {
          Finding f = findings.stream().min(Comparator.comparing(CheckReport::room)).orElseThrow();
          nearest.add(
              List.of(
                  Cell.of(rule),
                  Cell.of(
                      f.subject() + (findings.size() > 1 ? ", nearest of " + findings.size() : "")),
                  Units.brief(f.figure()),
                  f.limit().map(limit -> Cell.of(limit(limit))).orElse(Cell.NONE)));
          all.addAll(findings);
        });
    List<Column> columns =
        List.of(
            Column.words("passed"),
            Column.wrapped("nearest to its limit"),
            Column.figures("is", ""),
            Column.words("should be"));
    return List.of(
        new Heading("What passed"),
        Table.of(columns, nearest),
        new Heading("All that passed"),
        table(all));
  }

  private static double room(Finding finding) {
    if (finding.limit().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Limit limit = finding.limit().get();
    double over = finding.figure().value() - limit.value();
    return limit.sense() == Sense.AT_LEAST ? over : -over;
  }

  /** Where the limits come from, once for each rule. */
  static List<Block> sources(List<Finding> findings) {
    Map<String, String> byRule = new LinkedHashMap<>();
    findings.forEach(f -> f.limit().ifPresent(l -> byRule.putIfAbsent(f.rule(), l.source())));
    List<List<String>> rows = new ArrayList<>();
    byRule.forEach((rule, source) -> rows.add(List.of(rule, source)));
    return List.of(
        new Heading("Where limits come from"),
        Table.ofWords(List.of(Column.words("check"), Column.wrapped("source")), rows));
  }
}
