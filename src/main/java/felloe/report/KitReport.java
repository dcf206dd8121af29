package felloe.report;

import felloe.document.Phrase;
import felloe.document.Report;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.service.KitOutcome;
import felloe.service.TemplateOutcome;
import java.util.List;
import java.util.Optional;

/** Whole kits, told. */
public final class KitReport {

  private KitReport() {}

  /** The kits, told. */
  public static Report of(List<KitOutcome> outcomes) {
    Telling told = new Telling();
    for (KitOutcome one : outcomes) {
      if (outcomes.size() > 1) {
        told.head(Words.title(one.study().plate()));
      }
      if (one.held()) {
        told.add(
            CheckReport.fails(
                one.study(), "its kit is there to be seen on paper; do not cut from it"));
        told.say(CheckReport.LOADS);
      } else {
        CheckReport.verdict(one.study(), told);
      }
      told.say(TemplateReport.pages(one.templates().tiled()));
      TemplateReport.saved(one.templates()).ifPresent(told::say);
      told.say(
          lacks(one)
              .map(Phrase::sentence)
              .orElse("For machines: the finish lines, and a router's program as usual."));
      JigReport.offer(one.study().plate()).ifPresent(told::say);
    }
    List<TemplateOutcome> templates = outcomes.stream().map(KitOutcome::templates).toList();
    told.add(TemplateReport.steps(templates));
    told.cautions(List.of(Cautions.USE));
    return told.under(
        outcomes.size() == 1
            ? Words.title(outcomes.get(0).study().plate(), "kit")
            : Phrase.of("Kits of {} plates", outcomes.size()));
  }

  /** Why there is no file for machines, or not every one; empty when all are there. */
  public static Optional<String> lacks(KitOutcome outcome) {
    return outcome.held()
        ? Optional.of("no files for machines: they are held back while the plate fails a check")
        : outcome.refused().map(why -> "no router program: " + CutReport.lacks(why));
  }
}
