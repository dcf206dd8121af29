package felloe.report;

import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.load.TriedDesign;
import felloe.service.SearchOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What a search for the lightest plate found, told. */
public final class SearchReport {

  /** So many of the lighter ones that will not do are told. */
  private static final int LIGHTER = 6;

  private SearchReport() {}

  /** The answer, told. */
  public static Report of(SearchOutcome outcome) {
    Telling told = new Telling();
    long doing = outcome.designs().stream().filter(TriedDesign::does).count();
    told.verdict(
        doing > 0 ? Tone.WELL : Tone.FAIL,
        "{} tried, {} pass the review and do what is wanted{}.",
        Phrase.count(outcome.designs().size(), "design"),
        (int) doing,
        outcome.again() > 0 ? "; " + outcome.again() + " known from before" : "");
    outcome.lightest().ifPresent(one -> told.say("The lightest: " + figures(outcome, one) + "."));
    if (doing > 0) {
      told.head("From the lightest to the stiffest; none of the others is lighter and stiffer");
      told.add(table(outcome, outcome.front()));
    }
    List<TriedDesign> lighter = lighter(outcome);
    if (!lighter.isEmpty()) {
      told.head(
          doing > 0 ? "Lighter, but will not do" : "None will do. The heaviest that were tried");
      told.add(table(outcome, lighter));
    }
    told.cautions(cautions());
    return told.under(Words.title(outcome.plate(), "search for the lightest"));
  }

  /** Sentences that go with it. */
  public static List<String> cautions() {
    List<String> all = new ArrayList<>();
    all.add(
        "Each design was reckoned on one mesh, good enough to compare them. Look at the one you"
            + " choose with felloe check and felloe load before you make it.");
    all.addAll(LoadReport.CAUTIONS);
    return all;
  }

  private static List<TriedDesign> lighter(SearchOutcome outcome) {
    double least = outcome.lightest().map(TriedDesign::mass).orElse(1e9);
    return outcome.designs().stream()
        .filter(one -> !one.does() && one.mass() > 0 && one.mass() < least)
        .sorted(Comparator.comparingDouble(TriedDesign::mass).reversed())
        .limit(LIGHTER)
        .toList();
  }

  private static String figures(SearchOutcome outcome, TriedDesign one) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < outcome.spans().size(); i++) {
      words.add(
          Phrase.of(
              "{}={}",
              outcome.spans().get(i).path(),
              Quantity.brief(one.values().get(i), 6, "").figure()));
    }
    return String.join(", ", words);
  }

  private static Rows<TriedDesign> table(SearchOutcome outcome, List<TriedDesign> designs) {
    Rows<TriedDesign> rows = Rows.of(designs);
    for (int i = 0; i < outcome.spans().size(); i++) {
      int at = i;
      String path = outcome.spans().get(i).path();
      rows = rows.figures(path, one -> Quantity.brief(one.values().get(at), 2, ""));
    }
    return rows.figures("mass", "g", one -> Quantity.grams(one.mass()))
        .figures("hands", "mm", one -> loaded(one).map(d -> Quantity.fixed(d, 2, "mm")))
        .figures("margin", one -> loaded(one).map(d -> LoadReport.margin(one.margin())))
        .wrapped("", TriedDesign::fault);
  }

  /** How far hands move it, mm; empty where that was not reckoned. */
  private static Optional<Double> loaded(TriedDesign one) {
    return Optional.of(one.deflection()).filter(d -> d > 0);
  }
}
