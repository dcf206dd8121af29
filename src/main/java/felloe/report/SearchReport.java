package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Column;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.load.FigureRange;
import felloe.load.TriedDesign;
import felloe.service.SearchOutcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a search for the lightest plate found, told. */
public final class SearchReport {

  /** So many of the lighter ones that will not do are told. */
  private static final int LIGHTER = 6;

  private SearchReport() {}

  /** The answer, told. */
  public static Report of(SearchOutcome outcome) {
    List<Block> blocks = new ArrayList<>();
    long doing = outcome.designs().stream().filter(TriedDesign::does).count();
    blocks.add(
        Callout.verdict(
            doing > 0 ? Tone.WELL : Tone.FAIL,
            Phrase.of(
                "{} tried, {} pass the review and do what is wanted{}.",
                Phrase.count(outcome.designs().size(), "design"),
                (int) doing,
                outcome.again() > 0 ? "; " + outcome.again() + " known from before" : "")));
    outcome
        .lightest()
        .ifPresent(
            one -> blocks.add(new Paragraph("The lightest: " + figures(outcome, one) + ".")));
    if (doing > 0) {
      blocks.add(
          new Heading(
              "From the lightest to the stiffest; none of the others is lighter and stiffer"));
      blocks.add(table(outcome, outcome.front()));
    }
    List<TriedDesign> lighter = lighter(outcome);
    if (!lighter.isEmpty()) {
      blocks.add(
          new Heading(
              doing > 0
                  ? "Lighter, but will not do"
                  : "None will do. The heaviest that were tried"));
      blocks.add(table(outcome, lighter));
    }
    blocks.add(Callout.cautions(cautions()));
    return new Report(
        Phrase.of(
            "{}, revision {}: search for the lightest",
            outcome.plate().title(),
            outcome.plate().revision()),
        blocks);
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

  private static Table table(SearchOutcome outcome, List<TriedDesign> designs) {
    List<Column> columns = new ArrayList<>();
    for (FigureRange span : outcome.spans()) {
      columns.add(Column.figures(span.path(), ""));
    }
    columns.add(Column.figures("mass", "g"));
    columns.add(Column.figures("hands", "mm"));
    columns.add(Column.figures("margin", ""));
    columns.add(Column.wrapped(""));
    List<List<Cell>> rows = new ArrayList<>();
    for (TriedDesign one : designs) {
      List<Cell> row = new ArrayList<>();
      one.values().forEach(value -> row.add(Quantity.brief(value, 2, "")));
      boolean loaded = one.deflection() > 0;
      row.add(Quantity.grams(one.mass()));
      row.add(loaded ? Quantity.fixed(one.deflection(), 2, "mm") : Cell.NONE);
      row.add(loaded ? Cell.of(LoadReport.margin(one.margin())) : Cell.NONE);
      row.add(Cell.of(one.fault()));
      rows.add(row);
    }
    return Table.of(columns, rows);
  }
}
