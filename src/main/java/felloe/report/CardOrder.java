package felloe.report;

import static felloe.document.Quantity.brief;

import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.TimeLine;
import felloe.job.Act;
import felloe.job.Task;
import felloe.job.WorkOrder;
import felloe.layup.LayupPlan;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The order of work of a job, told: a line for each act. */
public final class CardOrder {

  /** On a narrower field a column of its own would be a word wide and a page high, mm. */
  private static final double NARROW = 140;

  private CardOrder() {}

  /**
   * An act, told.
   *
   * @param number from 1
   * @param task the act
   * @param begins hours after the first act, as far as times are known
   * @param words what is done, with its figures
   * @param caution what to mind; empty where there is nothing
   * @param page where more stands
   */
  public record Line(
      int number, Task task, double begins, String words, String caution, Optional<CardLead> page) {

    private String together() {
      return caution.isEmpty() ? words : words + " MIND: " + caution;
    }

    private String beside(String stem) {
      List<String> told = new ArrayList<>();
      if (task.hours() > 0) {
        told.add(time());
      }
      page.ifPresent(lead -> told.add(lead.words(stem)));
      return String.join("; ", told);
    }

    private String time() {
      List<String> told = new ArrayList<>();
      task.work().ifPresent(hours -> told.add(hours(hours)));
      task.waiting().ifPresent(hours -> told.add("wait " + hours(hours)));
      return String.join(", ", told);
    }
  }

  /** The lines, in order. */
  static List<Line> lines(CardSheet sheet) {
    CardOutcome outcome = sheet.outcome();
    CardActs acts = new CardActs(outcome, sheet.calls());
    CardCautions cautions = new CardCautions(outcome);
    WorkOrder order = outcome.job().order();
    List<Line> lines = new ArrayList<>();
    double begins = 0;
    for (Task task : order.tasks()) {
      int i = lines.size();
      lines.add(
          new Line(i + 1, task, begins, acts.of(task), cautions.of(task), sheet.leads().get(i)));
      begins += task.hours();
    }
    return List.copyOf(lines);
  }

  private static String hours(double hours) {
    return brief(hours, 1, "h").text();
  }

  /**
   * All of it.
   *
   * @param width of the page's field, mm
   */
  static Telling of(CardSheet sheet, double width) {
    CardOutcome outcome = sheet.outcome();
    List<Line> lines = sheet.order();
    Telling told = new Telling();
    String stem = outcome.plate().name();
    WorkOrder order = outcome.job().order();
    told.head("Order of work");
    told.say(
        "Tick each act when it is done; do none before the one above it is ticked. Pages are named"
            + " without their beginning: {} is {}. They come from: {}.",
        "drill-A4",
        stem + "-drill-A4.pdf",
        String.join("; ", makers(sheet)));
    Rows<Line> acts = Rows.of(lines).tick("").figures("", Line::number);
    told.add(
        (width < NARROW
                ? acts.wrapped("do; MIND", 5, Line::together)
                : acts.wrapped("do", 9, Line::words).wrapped("mind", 6, Line::caution))
            .wrapped("time; more", width < NARROW ? 1 : 2, line -> line.beside(stem)));
    if (order.work() > 0) {
      told.say(
          "Times are those that are planned: {} of work and {} of waiting. Others hang on your"
              + " hands.",
          brief(order.work(), 1, "hours"),
          brief(order.waiting(), 1, "hours"));
    }
    List<TimeLine.Span> spans = new ArrayList<>();
    for (Line line : lines) {
      if (line.task().hours() > 0) {
        spans.add(
            new TimeLine.Span(
                Integer.toString(line.number()),
                line.begins(),
                line.task().work().orElse(0),
                line.task().waiting().orElse(0),
                line.time()));
      }
    }
    if (spans.size() > 1) {
      told.fold(Depth.PAPER, new Telling().add(new Figure(TimeLine.of(spans, width))));
    }
    outcome.job().parts().laidUp().ifPresent(plan -> layup(plan, told));
    return told;
  }

  /** The calls that make the pages and files that the order leads to, each once. */
  private static List<String> makers(CardSheet sheet) {
    WorkOrder order = sheet.outcome().job().order();
    CardCalls calls = sheet.calls();
    List<String> makers = new ArrayList<>();
    if (order.has(Act.PRINT_TEMPLATE)) {
      makers.add(calls.template());
    }
    if (order.has(Act.WAX_MOULD)) {
      makers.add(calls.layup());
    }
    if (order.has(Act.DRILL_HOLES) || order.has(Act.MEASURE_HOLES)) {
      makers.add(calls.drill());
    }
    if (order.has(Act.SAW_OUTLINE)) {
      makers.add(calls.cut());
    }
    if (order.has(Act.PROVE)) {
      makers.add(calls.proof());
    }
    if (makers.isEmpty()) {
      makers.add(calls.card());
    }
    return makers;
  }

  /** What is weighed out and laid down, at hand where it is done. */
  private static void layup(LayupPlan plan, Telling told) {
    told.head("Pots; hours and minutes after the first one is begun");
    told.add(LayupReport.pots(plan));
    told.fold(
        Depth.PAPER, new Telling().head("Plies, from the mould up").add(LayupReport.plies(plan)));
  }
}
