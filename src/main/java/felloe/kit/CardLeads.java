package felloe.kit;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Point;
import felloe.job.Cutting;
import felloe.job.Task;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.render.PageRenderer;
import felloe.report.CardLead;
import felloe.report.LayupReport;
import felloe.service.CardOutcome;
import felloe.template.PageSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which file, and which of its pages, tells more about each act of a job. */
final class CardLeads {

  /** Headings have letters of this height at least, mm; running text is smaller. */
  private static final double HEADING = 3;

  private final CardOutcome outcome;
  private final String stem;
  private final String paper;
  private final List<Page> drilling;
  private final List<Page> layup;

  private CardLeads(CardOutcome outcome, PageSet drilling, Paper on) {
    this.outcome = outcome;
    this.stem = outcome.plate().name();
    this.paper = on.title();
    this.drilling = drilling.pages();
    this.layup =
        outcome
            .job()
            .parts()
            .laidUp()
            .map(LayupReport::of)
            .map(report -> PageRenderer.pages(report, on))
            .orElse(List.of());
  }

  /**
   * Of each act of a job, in order.
   *
   * @param drilling its drilling sheet
   */
  static List<Optional<CardLead>> of(CardOutcome outcome, PageSet drilling, Paper paper) {
    CardLeads leads = new CardLeads(outcome, drilling, paper);
    List<Optional<CardLead>> all = new ArrayList<>();
    outcome.job().order().tasks().forEach(task -> all.add(leads.lead(task)));
    return all;
  }

  private Optional<CardLead> lead(Task task) {
    return switch (task.act()) {
      case CHECK_PRINT -> Optional.of(new CardLead("print-check-" + paper + ".pdf", 1));
      // Holes are marked through the paper that is stuck on.
      case PRINT_TEMPLATE, STICK_TEMPLATE, MARK_HOLES -> Optional.of(template());
      case WAX_MOULD -> layup("What to do");
      case CUT_CLOTH -> layup("Cloth");
      case LAY_UP -> layup("Pots");
      case CUT_STRIPS ->
          layup.isEmpty()
              ? Optional.empty()
              : Optional.of(new CardLead(pdf("layup"), layup.size()));
      case DRILL_HOLES -> {
        int group = outcome.drill().plan().groups().indexOf(task.holes().orElseThrow());
        yield drill(group + 1 + ". ");
      }
      case MEASURE_HOLES -> drill("Readings of the finished hub pattern");
      case BOLT, FIT_GRIPS -> drill("Screws, with torques");
      case MACHINE -> Optional.of(new CardLead(stem + (routed() ? ".nc" : ".dxf"), 0));
      case START_HOLES, SAW_WINDOWS, SAW_OUTLINE ->
          Optional.of(new CardLead(stem + "-jigsaw.png", 0));
      case PROVE -> Optional.of(new CardLead(pdf("proof"), 1));
      default -> Optional.empty();
    };
  }

  private boolean routed() {
    return outcome.job().parts().cutting() instanceof Cutting.Machine way
        && way.router().isPresent();
  }

  private String pdf(String what) {
    return stem + "-" + what + "-" + paper + ".pdf";
  }

  /** The page that has the hub pattern, or the first. */
  private CardLead template() {
    PageSet set = outcome.template();
    List<Hole> holes = outcome.plate().holes(HoleRole.BOLT);
    Point at = holes.isEmpty() ? Point.ORIGIN : holes.get(0).centre();
    for (int i = 0; i < set.tiles().size(); i++) {
      Page.Placed part = set.tiles().get(i).parts().get(0);
      Point there = set.motion().of(at).plus(part.shift());
      if (part.clip().filter(clip -> clip.contains(there)).isPresent()) {
        return new CardLead(pdf("template"), i + 1);
      }
    }
    return new CardLead(pdf("template"), 1);
  }

  private Optional<CardLead> drill(String heading) {
    return page(drilling, heading).map(page -> new CardLead(pdf("drill"), page));
  }

  private Optional<CardLead> layup(String heading) {
    return page(layup, heading).map(page -> new CardLead(pdf("layup"), page));
  }

  /** The page on which words begin, as a heading does. */
  private static Optional<Integer> page(List<Page> pages, String heading) {
    for (int i = 0; i < pages.size(); i++) {
      for (Page.Placed part : pages.get(i).parts()) {
        for (Mark mark : part.drawing().marks()) {
          if (mark instanceof Mark.Label label
              && label.height() >= HEADING
              && label.text().startsWith(heading)) {
            return Optional.of(i + 1);
          }
        }
      }
    }
    return Optional.empty();
  }
}
