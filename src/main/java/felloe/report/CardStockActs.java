package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.job.Act;
import felloe.job.Parts;
import felloe.layup.LayupPlan;
import felloe.layup.ResinSystem;
import felloe.layup.TestStrips;
import felloe.plate.Plate;
import felloe.service.CardOutcome;
import java.util.Optional;

/** What is done to get the stock of a plate, laid up or bought, told with its figures. */
final class CardStockActs {

  private final CardOutcome outcome;
  private final CardCalls calls;
  private final Parts parts;
  private final Plate plate;

  CardStockActs(CardOutcome outcome, CardCalls calls) {
    this.outcome = outcome;
    this.calls = calls;
    this.parts = outcome.job().parts();
    this.plate = outcome.plate();
  }

  /**
   * An act in a few sentences.
   *
   * @throws IllegalArgumentException when it is no act of the stock
   */
  String of(Act act) {
    return switch (act) {
      case WAX_MOULD -> steps().wax() + " " + steps().tape();
      case CUT_CLOTH -> steps().cut();
      case LAY_UP -> parts.laidUp().map(this::layUp).orElseGet(this::unplanned);
      case CURE -> cure();
      case POST_CURE -> postCure();
      case MEASURE_STOCK -> thickness();
      case CUT_STRIPS -> strips();
      case BREAK_STRIPS -> broken();
      default -> throw new IllegalArgumentException("no act of the stock: " + act);
    };
  }

  private LayupSteps steps() {
    return new LayupSteps(parts.laidUp().orElseThrow());
  }

  private String layUp(LayupPlan plan) {
    return Phrase.of(
        "Weigh and mix each pot when its time has come (table of pots, below): {}. Lay and wet out"
            + " {} from the mould (the back face) up (table of plies, below); the last is down at"
            + " {}. {}",
        steps().byWeight(),
        Words.plies(plan.stack().plies().size()),
        LayupReport.clock(plan.pots().lastPly()),
        steps().close());
  }

  private String unplanned() {
    return Phrase.of(
        "Lay the panel up, {}. Its lay-up could not be planned ({}).",
        Quantity.mm(plate.stock().thickness()),
        outcome.refused().orElse(""));
  }

  private String cure() {
    Optional<LayupPlan> plan = parts.laidUp();
    if (plan.isEmpty()) {
      return "Let it set as the resin's maker says.";
    }
    double warm = plan.get().choice().temperature();
    return Phrase.of(
        "Leave it closed for {} at {} C, then lift it off.",
        brief(plan.get().choice().resin().cure().at(warm), 1, "hours"),
        brief(warm, 1, "degrees"));
  }

  private String postCure() {
    ResinSystem.PostCure post =
        parts.laidUp().flatMap(plan -> plan.choice().resin().postCure()).orElseThrow();
    return Phrase.of(
        "Keep it flat at {} C for {}, warmed up slowly.",
        brief(post.temperature(), 0, "degrees"),
        brief(post.hours(), 1, "hours"));
  }

  private String thickness() {
    Optional<LayupPlan> plan = parts.laidUp();
    int places = outcome.job().readings().thickness().places();
    return plan.map(
            p ->
                Phrase.of(
                    "Trim the panel and measure it at {} places near its edges: {} is planned, {}"
                        + " to be expected. Write them into the readings; drill and cut by what it"
                        + " measures.",
                    places,
                    fixed(p.stack().thickness(), 2, "mm"),
                    LayupReport.range(p.stack())))
        .orElseGet(
            () ->
                Phrase.of(
                    "Get the stock: {}, {}, as large as the bill says. Measure it at {} places near"
                        + " its edges, and write them into the readings.",
                    plate.stock().material().title(),
                    Quantity.mm(plate.stock().thickness()),
                    places));
  }

  private String strips() {
    TestStrips strips = parts.laidUp().orElseThrow().blank().strips();
    return Phrase.of(
        "Saw {} test strips, {}, {}, and label them.",
        strips.asked(),
        LayupReport.size(strips.length(), strips.width()),
        strips.placed().isEmpty()
            ? "from a panel that is made beside it of the same plies and pots"
            : "out of the panel where the drawing of the blank has them");
  }

  private String broken() {
    TestStrips strips = parts.laidUp().orElseThrow().blank().strips();
    return Phrase.of(
        "Break them: three-point bending after ISO 14125, class {}, over a span of {}. Write the"
            + " readings down, type them in, and ask: {}. Go on when the loads, reckoned again with"
            + " these strips, are as wanted.",
        strips.className(),
        brief(strips.span(), 1, "mm"),
        calls.tested());
  }
}
