package felloe.report;

import felloe.cure.ShapeChange;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.geometry.AreaProperties;
import felloe.geometry.Box;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.LoadOutcome;
import felloe.service.Pull;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What stands beside a drawing that is looked at while it is changed, in few words. */
public final class BesideDrawing {

  /** A review's rule for the material between two openings, or an opening and the edge. */
  private static final String WEB = "narrowest-web";

  private static final double SQUARE_CM = 100;

  /** That a text makes no plate. */
  public static final String NONE = "NO PLATE as it is: mend what is told first.";

  /** What follows is of another one. */
  public static final String LAST = " Figures and findings are those of the last plate: ";

  private BesideDrawing() {}

  /**
   * A figure.
   *
   * @param name what it is
   * @param words how much
   */
  public record Line(String name, String words) {}

  /**
   * A finding that is open.
   *
   * @param finding the finding
   * @param head its verdict and what it is about
   * @param is what was measured, and what it should be
   * @param advice why, and what to do
   */
  public record Open(Finding finding, String head, String is, String advice) {}

  /** What a review comes to, and that it is none of strength. */
  public static String verdict(Study study) {
    return switch (study.verdict()) {
      case PASS -> "Passes: " + CheckReport.counts(study);
      case CAUTION -> "Passes with cautions: " + CheckReport.counts(study);
      case FAIL -> "FAILS: " + CheckReport.counts(study);
    };
  }

  /** The figures that are looked at first. */
  public static List<Line> figures(Study study) {
    Plate plate = study.plate();
    AreaProperties whole = plate.region().properties();
    Box box = plate.box();
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line(
            "size",
            Phrase.of("{} x {}", Words.brief(box.width(), ""), Words.brief(box.height(), "mm"))));
    lines.add(new Line("thickness", plate.stock().thicknessWords()));
    lines.add(new Line("mass", Quantity.rounded(plate.mass(), "g").text()));
    lines.add(new Line("area", Quantity.fixed(whole.area() / SQUARE_CM, 1, "cm2").text()));
    study.findings().stream()
        .filter(f -> f.rule().equals(WEB))
        .min(Comparator.comparingDouble(f -> f.figure().value()))
        .ifPresent(f -> lines.add(new Line("narrowest web", Words.brief(f.figure()).text())));
    study
        .fit()
        .ifPresent(
            fit ->
                lines.add(
                    new Line(
                        "hub " + fit.hub().name(),
                        fit.clearance()
                            .map(c -> Phrase.of("room {} all round", Words.fixed(c, "mm")))
                            .orElse("does not meet it"))));
    return lines;
  }

  /** What fails, then what asks for a decision; what is alike on both sides once. */
  public static List<Open> open(Study study) {
    List<Finding> open = new ArrayList<>(study.review().with(Verdict.FAIL));
    open.addAll(study.review().with(Verdict.CAUTION));
    return BothSides.once(open).stream().map(BesideDrawing::open).toList();
  }

  private static Open open(Finding finding) {
    String is =
        finding
            .limit()
            .map(
                limit ->
                    Phrase.of(
                        "is {}, should be {} {}",
                        Words.brief(finding.figure()),
                        limit.sense() == Limit.Sense.AT_LEAST ? "at least" : "at most",
                        Words.brief(limit.value(), finding.figure().unit())))
            .orElseGet(() -> "is " + Words.brief(finding.figure()).text());
    String word = finding.verdict() == Verdict.FAIL ? "FAIL: " : "Caution: ";
    return new Open(
        finding,
        word + finding.rule() + ", " + finding.subject(),
        is,
        Phrase.sentence(finding.why()) + " " + Phrase.sentence(finding.advice()));
  }

  /**
   * A change that would bring a figure to where it is wanted.
   *
   * @param path the value to change
   * @param to what to write
   * @param words what it would come to
   */
  public record Way(String path, String to, String words) {}

  /** Changes that would do it, those that change the mass least first. */
  public static List<Way> ways(Pull.Outcome outcome) {
    return outcome.ways().stream()
        .map(
            way -> {
              ShapeChange.Setting set = way.change().settings().get(0);
              String reached =
                  outcome.target() == Pull.Target.MASS
                      ? ""
                      : Phrase.of("moves by {}, ", Quantity.fixed(way.reached(), 2, "mm"));
              return new Way(
                  set.key(),
                  set.to(),
                  Phrase.of(
                      "{}: {} (now {}): {}{}, {}",
                      set.key(),
                      set.to(),
                      set.from(),
                      reached,
                      Quantity.rounded(way.mass(), "g"),
                      way.study().verdict() == Verdict.FAIL
                          ? "fails no more checks than before"
                          : "passes its review"));
            })
        .toList();
  }

  /** What was looked for, and how much was tried. */
  public static String pulled(Pull.Outcome outcome) {
    String unit = outcome.target() == Pull.Target.MASS ? "g" : "mm";
    String what = outcome.target() == Pull.Target.MASS ? "Mass" : "Worst movement under the hands";
    String none =
        outcome.ways().isEmpty()
            ? " No one value does it without harm to a check: change several, or pull less."
            : "";
    return Phrase.of(
            "{} from {} to {}: {} of {} that were tried would do it.",
            what,
            Quantity.fixed(outcome.now(), 1, unit),
            Quantity.fixed(outcome.wanted(), 1, unit),
            Phrase.count(outcome.ways().size(), "value"),
            outcome.tried())
        + none;
  }

  /** What loads do, in a sentence. */
  public static String loads(LoadOutcome outcome) {
    return LoadReport.inShort(outcome);
  }
}
