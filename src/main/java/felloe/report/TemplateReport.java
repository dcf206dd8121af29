package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Steps;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.service.TemplateOutcome;
import felloe.template.PageSaving;
import felloe.template.PageSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** True-scale paper, told: how many pages, what would save some, what to do with them. */
public final class TemplateReport {

  private TemplateReport() {}

  /**
   * Templates, told.
   *
   * @param outcomes one for each plate; none where only the printer is tried
   */
  public static Report of(List<TemplateOutcome> outcomes) {
    Telling told = new Telling();
    for (TemplateOutcome one : outcomes) {
      if (outcomes.size() > 1) {
        told.head(Words.title(one.study().plate()));
      }
      if (one.study().fails()) {
        told.add(CheckReport.fails(one.study(), "do not cut by its template"));
      }
      told.verdict(Tone.WELL, pages(one.tiled()));
      saved(one).ifPresent(told::say);
    }
    told.add(steps(outcomes));
    told.cautions(List.of(Cautions.USE));
    return told.under(
        switch (outcomes.size()) {
          case 0 -> "Print check";
          case 1 -> Words.title(outcomes.get(0).study().plate(), "templates");
          default -> Phrase.of("Templates of {} plates", outcomes.size());
        });
  }

  /** The sheets for a photo, told. */
  public static Report photoFrame() {
    Telling told = new Telling();
    told.verdict(
        Tone.WELL, "Five sheets: four to lie round a part, and one for a small part to lie on.");
    List<String> steps = printed(List.of());
    steps.add("Lay them out and take the photo as they say.");
    steps.add("Measure how thick the part is: it must be told beside the photo.");
    told.add(Steps.of(steps));
    told.cautions(List.of(Cautions.USE));
    return told.under("Photo frame");
  }

  /** The pages in a sentence or two. */
  static String pages(PageSet set) {
    int tiles = set.grid().count();
    String holes =
        set.cutHoles() > 0
            ? Phrase.of(" Seams run through {}.", Phrase.count(set.cutHoles(), "hole"))
            : Double.isFinite(set.seamDistance())
                ? Phrase.of(
                    " No seam comes nearer to a hole's middle than {}.",
                    Quantity.brief(set.seamDistance(), 1, "mm"))
                : "";
    return Phrase.of(
        "Template: {} {}{}, and one page at full size.{}",
        Phrase.count(set.pages().size(), "page"),
        set.paper(),
        tiles == 1
            ? ""
            : Phrase.of(
                ", {} of them to join in {} of {}",
                tiles,
                Phrase.count(set.grid().rows(), "row"),
                set.grid().columns()),
        holes);
  }

  /** What would take fewer pages, in one line; empty when nothing does. */
  static Optional<String> saved(TemplateOutcome outcome) {
    List<String> ways = outcome.savings().stream().map(TemplateReport::way).toList();
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of(Phrase.of("Fewer pages to join: {}.", Phrase.list(ways)));
  }

  private static String way(PageSaving saving) {
    return switch (saving.change()) {
      case TURN -> Phrase.of("{} with the plate turned", saving.pages());
      case MARGIN ->
          Phrase.of(
              "{} with a margin of {}", saving.pages(), Quantity.mm(saving.options().margin()));
      case PAPER -> Phrase.of("{} on {}", saving.pages(), saving.options().paper().title());
    };
  }

  /** What to do with the pages before they are trusted. */
  static Block steps(List<TemplateOutcome> outcomes) {
    return Steps.of(printed(outcomes));
  }

  private static List<String> printed(List<TemplateOutcome> outcomes) {
    List<String> steps = new ArrayList<>();
    steps.add("Print at 100 %, not fitted to the page.");
    steps.add(
        Phrase.of(
            "Measure both check bars{}. Where they are not as long as they say, give back what"
                + " they measure, and print again.",
            outcomes.isEmpty()
                ? ""
                : Phrase.of(", {} each", Quantity.brief(outcomes.get(0).tiled().bar(), 1, "mm"))));
    if (outcomes.stream().anyMatch(one -> one.tiled().grid().count() > 1)) {
      steps.add("Join the pages by their numbered marks.");
    }
    return steps;
  }
}
