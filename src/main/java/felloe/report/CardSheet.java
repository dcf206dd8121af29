package felloe.report;

import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.drawing.Picture;
import felloe.service.CardOutcome;
import java.util.List;
import java.util.Optional;

/**
 * A job with all that its card tells beside it.
 *
 * @param outcome the job
 * @param leads where more stands about each act, in the order of the acts
 * @param calls how the program is called for what the card leads to
 * @param paper of its pages
 * @param finished the finished wheel as it looks
 */
public record CardSheet(
    CardOutcome outcome,
    List<Optional<CardLead>> leads,
    CardCalls calls,
    Paper paper,
    Picture finished) {

  public CardSheet {
    leads = List.copyOf(leads);
  }

  /** The card, told. */
  public Report report() {
    return CardReport.of(this);
  }

  /** The order of work, a line for each act. */
  public List<CardOrder.Line> order() {
    return CardOrder.lines(this);
  }
}
