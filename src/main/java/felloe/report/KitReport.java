package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Phrase;
import felloe.document.Report;
import felloe.drawing.Cautions;
import felloe.service.KitOutcome;
import felloe.service.TemplateOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whole kits, told. */
public final class KitReport {

  private KitReport() {}

  /** The kits, told. */
  public static Report of(List<KitOutcome> outcomes) {
    List<Block> blocks = new ArrayList<>();
    for (KitOutcome one : outcomes) {
      if (outcomes.size() > 1) {
        blocks.add(new Heading(TemplateReport.title(one.study())));
      }
      blocks.addAll(
          one.held()
              ? CheckReport.fails(
                  one.study(), "its kit is there to be seen on paper; do not cut from it")
              : List.of(CheckReport.verdict(one.study())));
      blocks.add(CheckReport.LOADS);
      blocks.add(new Paragraph(TemplateReport.pages(one.templates().tiled())));
      TemplateReport.saved(one.templates()).ifPresent(line -> blocks.add(new Paragraph(line)));
      blocks.add(
          new Paragraph(
              lacks(one)
                  .map(Phrase::sentence)
                  .orElse("For machines: the finish lines, and a router's program as usual.")));
    }
    List<TemplateOutcome> templates = outcomes.stream().map(KitOutcome::templates).toList();
    blocks.add(TemplateReport.steps(templates));
    blocks.add(Callout.cautions(List.of(Cautions.USE)));
    return new Report(
        outcomes.size() == 1
            ? TemplateReport.title(outcomes.get(0).study()) + ": kit"
            : Phrase.of("Kits of {} plates", outcomes.size()),
        blocks);
  }

  /** Why there is no file for machines, or not every one; empty when all are there. */
  public static Optional<String> lacks(KitOutcome outcome) {
    return outcome.held()
        ? Optional.of("no files for machines: they are held back while the plate fails a check")
        : outcome.refused().map(why -> "no router program: " + CutReport.lacks(why));
  }
}
