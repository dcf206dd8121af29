package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
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
import java.util.Optional;
import java.util.function.Function;

/** What a review says of a plate, told. */
public final class CheckReport {

  /** A review is no verdict on strength. */
  static final String LOADS =
      "Whether it stands what hands do is not yet reckoned: felloe load tells.";

  /** Units that are sizes of the part itself. */
  private static final List<Map.Entry<String, String>> LETTERS =
      List.of(
          Map.entry("D", "hole diameters"),
          Map.entry("d", "screw diameters"),
          Map.entry("P", "thread pitches"),
          Map.entry("t", "thicknesses of the stock"));

  private CheckReport() {}

  /** The review, told. */
  public static Report of(Study study) {
    return told(study).under(Words.title(study.plate(), "review"));
  }

  /** The same, to stand within another report. */
  static Telling told(Study study) {
    List<Finding> open = new ArrayList<>(study.review().with(Verdict.FAIL));
    open.addAll(study.review().with(Verdict.CAUTION));
    Telling told = new Telling();
    verdict(study, told);
    told.add(JointReport.cure(study)).add(open(open));
    study.fit().ifPresent(fit -> told.add(HubFitReport.of(fit, study.findings())));
    if (study.fit().isEmpty()) {
      told.say("It names no hub: whether it meets one was not looked at.");
    }
    study.plate().notes().forEach(n -> told.say("Note, {}: {}", n.place().toString(), n.text()));
    told.fold(Depth.ALL, more -> passed(study.review().with(Verdict.PASS), more));
    told.fold(Depth.ALL, more -> more.add(JointReport.judged(study.joints().judgement())));
    told.fold(Depth.SOURCES, more -> sources(study.findings(), more));
    told.fold(Depth.SOURCES, more -> more.add(JointReport.sources(study.joints())));
    return told.cautions(study.cautions());
  }

  /**
   * That a plate fails, in what, and what to change.
   *
   * @param then what is not to be done with what was made all the same
   */
  static Telling fails(Study study, String then) {
    List<Finding> fails = study.review().with(Verdict.FAIL);
    return new Telling()
        .verdict(
            Tone.FAIL, "FAILS {} of its review: {}.", Phrase.count(fails.size(), "check"), then)
        .add(JointReport.cure(study))
        .add(open(fails));
  }

  /** What a review comes to, in a word and the counts. */
  static void verdict(Study study, Telling told) {
    switch (study.verdict()) {
      case PASS -> told.verdict(Tone.WELL, "PASSES: " + counts(study));
      case CAUTION -> told.verdict(Tone.CAUTION, "Passes with cautions: " + counts(study));
      case FAIL -> told.verdict(Tone.FAIL, "FAILS: " + counts(study));
    }
    told.say(LOADS);
  }

  /** How many findings there are of each kind, in a sentence. */
  public static String counts(Study study) {
    return Phrase.of(
        "{}, {}, {} passed.",
        Phrase.count(study.count(Verdict.FAIL), "fail"),
        Phrase.count(study.count(Verdict.CAUTION), "caution"),
        study.count(Verdict.PASS));
  }

  /** What fails or asks for a decision, each with what to do. */
  static Telling open(List<Finding> open) {
    Telling told = findings(BothSides.once(open));
    advice(open, f -> Phrase.sentence(f.why()) + " " + Phrase.sentence(f.advice()), told);
    return told;
  }

  /** What to do about findings: the same advice is told once, for all rules that give it. */
  static void advice(List<Finding> findings, Function<Finding, String> words, Telling told) {
    Map<String, List<String>> rules = new LinkedHashMap<>();
    for (Finding f : findings) {
      List<String> of = rules.computeIfAbsent(words.apply(f).strip(), w -> new ArrayList<>());
      if (!of.contains(f.rule())) {
        of.add(f.rule());
      }
    }
    rules.remove("");
    rules.forEach((advice, of) -> told.say("{}: {}", Phrase.list(of), advice));
  }

  private static Telling findings(List<Finding> findings) {
    Rows<Finding> rows =
        Rows.of(findings)
            .words("", f -> Words.verdict(f.verdict()))
            .words("check", Finding::rule)
            .wrapped("of", Finding::subject)
            .figures("is", f -> Words.brief(f.figure()))
            .words("should be", CheckReport::limit)
            .words("written in", f -> name(f.place()));
    return new Telling().add(rows).add(letters(findings));
  }

  /** What the letters stand for that are units here; nothing where there are none. */
  private static Telling letters(List<Finding> findings) {
    List<String> units = findings.stream().map(f -> f.figure().unit()).toList();
    List<String> words =
        LETTERS.stream()
            .filter(letter -> units.contains(letter.getKey()))
            .map(letter -> letter.getKey() + " " + letter.getValue())
            .toList();
    return words.isEmpty() ? new Telling() : new Telling().say("{}.", String.join(", ", words));
  }

  /** Where it is written; all of a shape is in one file, whose folder the maker knows. */
  static String name(Place place) {
    String text = place.toString();
    return text.substring(Math.max(text.lastIndexOf('/'), text.lastIndexOf('\\')) + 1);
  }

  /** What a finding should be; empty where it has no limit. */
  static Optional<String> limit(Finding finding) {
    return finding
        .limit()
        .map(
            limit ->
                Phrase.of(
                    "{} {}{}",
                    limit.sense() == Sense.AT_LEAST ? "at least" : "at most",
                    Words.brief(limit.value(), ""),
                    limit.overridden() ? " (yours)" : ""));
  }

  /** The nearest to its limit of each rule; behind it all that passed. */
  private static void passed(List<Finding> passed, Telling told) {
    Map<String, List<Finding>> byRule = new LinkedHashMap<>();
    passed.forEach(f -> byRule.computeIfAbsent(f.rule(), rule -> new ArrayList<>()).add(f));
    Rows<Finding> nearest =
        Rows.of(
                byRule.values().stream()
                    .map(of -> of.stream().min(Comparator.comparing(CheckReport::room)).get())
                    .toList())
            .words("passed", Finding::rule)
            .wrapped("nearest to its limit", f -> nearest(f, byRule.get(f.rule()).size()))
            .figures("is", f -> Words.brief(f.figure()))
            .words("should be", CheckReport::limit);
    List<Finding> all = byRule.values().stream().flatMap(List::stream).toList();
    told.head("What passed").add(nearest).add(letters(passed));
    told.head("All that passed").add(findings(all));
  }

  private static String nearest(Finding finding, int of) {
    return finding.subject() + (of > 1 ? ", nearest of " + of : "");
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
  private static void sources(List<Finding> findings, Telling told) {
    Map<String, String> byRule = new LinkedHashMap<>();
    findings.forEach(f -> f.limit().ifPresent(l -> byRule.putIfAbsent(f.rule(), l.source())));
    told.head("Where limits come from")
        .add(
            Rows.of(List.copyOf(byRule.entrySet()))
                .words("check", Map.Entry::getKey)
                .wrapped("source", Map.Entry::getValue));
  }
}
