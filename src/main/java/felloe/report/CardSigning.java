package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Steps;
import felloe.document.Phrase;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.job.Act;
import felloe.job.Parts;
import felloe.plate.Finding;
import felloe.plate.MaterialKind;
import felloe.plate.Verdict;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** What is left open, who answers for it, and what is looked at from then on, told. */
final class CardSigning {

  /** Events that a card has lines for. */
  private static final int EVENTS = 5;

  private final CardOutcome outcome;
  private final Parts parts;
  private final Telling told = new Telling();

  private CardSigning(CardOutcome outcome) {
    this.outcome = outcome;
    this.parts = outcome.job().parts();
  }

  static Telling of(CardOutcome outcome) {
    CardSigning signing = new CardSigning(outcome);
    signing.findings();
    signing.signatures();
    if (signing.parts.driven()) {
      signing.inspection();
    }
    return signing.told;
  }

  private void findings() {
    List<Finding> open =
        Stream.of(Verdict.FAIL, Verdict.CAUTION)
            .flatMap(verdict -> outcome.study().review().with(verdict).stream())
            .toList();
    told.head("Open findings");
    if (open.isEmpty()) {
      told.say("The review has none. Write down here what was made otherwise than drawn.");
    } else {
      told.add(
          Rows.of(BothSides.once(open))
              .words("", f -> Words.verdict(f.verdict()))
              .wrapped("what is open", CardSigning::words)
              .wrapped("what to do", f -> Phrase.sentence(f.advice()))
              .blank("initials"));
    }
    told.fold(
        Depth.PAPER,
        Rows.of(Collections.nCopies(2, ""))
            .blank("made otherwise than drawn, accepted because", 8)
            .blank("initials"));
  }

  /** A finding in words, such as {@code screw depth of H1: 9.8 mm, should be at least 10.6 mm}. */
  private static String words(Finding finding) {
    return Phrase.of(
        "{}, {}: {}{}. {}",
        finding.rule(),
        finding.subject(),
        Words.brief(finding.figure()),
        CheckReport.limit(finding).map(limit -> ", should be " + limit),
        Phrase.sentence(finding.why()));
  }

  private void signatures() {
    told.head("Signed");
    told.say(
        parts.driven()
            ? "Made and measured after this card; what is open is mended, or accepted above."
            : "A mock-up: made to be tried, never driven with.");
    told.fold(
        Depth.PAPER,
        Rows.of(List.of("builder", "second person"))
            .words("", who -> who)
            .blank("name", 3)
            .blank("signature", 3)
            .blank("day", 2));
  }

  private void inspection() {
    told.head("Inspection card: before every event");
    told.add(new Steps(looks(), true));
    told.say("Scrap it, cut through so that nobody drives with it, after: {}", scrap());
    told.fold(
        Depth.PAPER,
        Rows.of(Collections.nCopies(EVENTS, ""))
            .blank("day, event", 3)
            .blank("marks whole")
            .blank("no crack")
            .blank("grips tight")
            .blank("what was done", 3)
            .blank("initials"));
  }

  private List<String> looks() {
    MaterialKind kind = parts.plate().stock().material().kind();
    List<String> looks = new ArrayList<>();
    if (outcome.job().order().has(Act.LOCK)) {
      looks.add("Every mark over a hub screw runs on without a step. One that moved: stop.");
    }
    looks.add(
        kind == MaterialKind.LAMINATE
            ? "Edges, holes and inside corners, with a lamp: no crack, no white or lifted place."
                + " Tap with a coin: no dull spot."
            : "Holes and inside corners, with a lens and a lamp: no crack, no dent, no bent"
                + " spoke.");
    if (parts.gripped()) {
      looks.add("Grips sit tight; no screw of theirs stands out.");
    }
    looks.add("Pull and push at the rim, hard: no click, no play at the hub.");
    if (kind == MaterialKind.LAMINATE) {
      looks.add(
          "Every season: begin the tightening of the hub screws anew, since laminate creeps under"
              + " heads.");
    }
    return looks;
  }

  private String scrap() {
    return "a crash; a hard fall; any crack, white place or dull spot; a hub screw that came loose"
        + " twice; a hole that wore oval. No life in hours is shown for it.";
  }
}
