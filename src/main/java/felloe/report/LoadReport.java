package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.PageBreak;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.drawing.Cautions;
import felloe.drawing.LoadPicture;
import felloe.drawing.ThicknessPlot;
import felloe.load.CaseField;
import felloe.load.LoadPlan;
import felloe.load.LoadPlan.Judged;
import felloe.load.LoadPlan.Trial;
import felloe.service.LoadOutcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a plate does under load, told. */
public final class LoadReport {

  /** Goes with every page and picture. */
  public static final String FOOT =
      "An estimate to choose by, not an approval: break test strips and try the wheel off the car"
          + " first. "
          + Cautions.USE;

  /** Goes with every answer about loads. */
  public static final List<String> CAUTIONS =
      List.of(
          "An estimate to choose by, not an approval: a thin, flat, flawless plate up to its first"
              + " failure. It knows nothing of voids, damage, fatigue, heat, crashes, or how well"
              + " the plate is made.",
          "Before use break test strips of the same stock, and load the finished wheel, off the"
              + " car and bolted to its hub, harder than hands will; stand clear of it while it is"
              + " loaded, wear eye protection, and look for cracks and noise.",
          Cautions.USE);

  /** A margin beyond which more is of no use to tell. */
  private static final double MOST = 99;

  private final LoadOutcome outcome;
  private final LoadPlan plan;
  private final List<Block> blocks = new ArrayList<>();

  private LoadReport(LoadOutcome outcome) {
    this.outcome = outcome;
    this.plan = outcome.plan();
  }

  /** The answer, told. */
  public static Report of(LoadOutcome outcome) {
    LoadReport report = new LoadReport(outcome);
    report.verdict();
    report.cases();
    report.screws();
    report.thicknesses();
    report.maps();
    report.sources();
    report.blocks.add(Callout.cautions(CAUTIONS));
    return new Report(
        Phrase.of("{}, revision {}: loads", outcome.plate().title(), outcome.plate().revision()),
        FOOT,
        report.blocks);
  }

  /** A margin in words. */
  static String margin(double margin) {
    return margin > MOST ? "over 99" : Quantity.fixed(margin, 2, "").text();
  }

  /** Material, plies and thickness. */
  static String stock(LoadPlan plan) {
    List<String> words = new ArrayList<>(List.of(plan.plate().stock().material().title()));
    plan.gauge().plies().ifPresent(n -> words.add(Phrase.count(n, "ply", "plies")));
    words.add(Quantity.mm(plan.gauge().thickness()).text());
    return String.join(", ", words);
  }

  private void verdict() {
    Judged worst = outcome.worst();
    String least =
        Phrase.of("least margin {} in {}", margin(worst.margin()), worst.field().load().name());
    String most = Phrase.of("hands move it by up to {}", moved(plan.deflection()));
    blocks.add(
        outcome.met()
            ? Callout.verdict(Tone.WELL, Phrase.of("As wanted: {}; {}.", least, most))
            : plan.gauge().section().coupled()
                ? Callout.verdict(
                    Tone.FAIL, Phrase.of("NO VERDICT: at first sight {}; {}.", least, most))
                : Callout.verdict(Tone.FAIL, Phrase.of("NOT AS WANTED: {}; {}.", least, most)));
    blocks.addAll(JointReport.cure(outcome.screws(), outcome.screwCures()));
    cure(outcome).ifPresent(cure -> blocks.add(Callout.verdict(Tone.FAIL, Phrase.sentence(cure))));
    blocks.add(
        new Paragraph(Phrase.of("{}. It is {}.", Phrase.begin(stock(plan)), plan.hold().why())));
    plan.hold().assumptions().forEach(a -> blocks.add(new Paragraph("Taken: " + a + ".")));
  }

  private static Quantity moved(double deflection) {
    return Quantity.fixed(deflection, 2, "mm");
  }

  /** What the plate must be changed to; empty when all is as wanted. */
  public static Optional<String> cure(LoadOutcome outcome) {
    LoadPlan plan = outcome.plan();
    if (plan.met()) {
      return Optional.empty();
    }
    if (plan.gauge().section().coupled()) {
      return Optional.of(
          "make the stack symmetric about its middle: as it is, it stretches as it bends and warps"
              + " as it cools, and what that does is only guessed here");
    }
    if (!outcome.whole()) {
      return Optional.of(
          "make it thicker, or widen rim and spokes; what thickness would do is told when all cases"
              + " are reckoned, not some");
    }
    return Optional.of(
        plan.least()
            .map(
                t ->
                    Phrase.of(
                        "make it {}, the least of those tried that does; or widen rim and spokes",
                        thickness(t)))
            .orElse(
                plan.trials().size() > 1
                    ? "none of the thicknesses tried does: widen rim and spokes, give the windows"
                        + " larger corners, or try thicker ones"
                    : "make it thicker, or widen rim and spokes"));
  }

  private static String thickness(Trial trial) {
    String plies =
        trial.gauge().plies().isPresent()
            ? Phrase.count(trial.gauge().plies().getAsInt(), "ply", "plies") + ", "
            : "";
    return plies + Quantity.mm(trial.gauge().thickness());
  }

  private void cases() {
    List<String> forces = new ArrayList<>();
    Map<String, List<String>> warned = new LinkedHashMap<>();
    for (Judged one : plan.cases()) {
      forces.add(forces(one));
      warnings(plan, one)
          .forEach(w -> warned.computeIfAbsent(w, k -> new ArrayList<>()).add(name(one)));
    }
    blocks.add(new Heading("Load cases"));
    blocks.add(
        Rows.of(plan.cases())
            .words("case", LoadReport::name)
            .wrapped("", one -> one.field().load().title())
            .figures("hands", "mm", one -> moved(one.field().atLoad()))
            .figures("MPa", one -> Quantity.fixed(one.field().worst().stress(), 0, ""))
            .figures("margin", one -> margin(one.margin()))
            .words("", LoadReport::judged)
            .table());
    Table places =
        Rows.of(plan.cases())
            .words("case", LoadReport::name)
            .figures("moves most", "mm", one -> moved(one.field().peakDeflection()))
            .figures("stiffness", "N/mm", one -> orNone(one.stiffness(), 0, "N/mm"))
            .words("worst at", one -> Phrase.at(one.field().worstAt()) + " " + side(one.field()))
            .table();
    warned.forEach(
        (words, names) ->
            blocks.add(new Paragraph(Phrase.of("Note on {}: {}.", Phrase.list(names), words))));
    plan.leftOut().forEach(left -> blocks.add(new Paragraph("Left out: " + left + ".")));
    blocks.add(
        new Paragraph(
            Phrase.of(
                "Margin: how much more the load times its factor may grow, so that 0 is the edge"
                    + " and 1 is twice; wanted: {}{}. Forces: x to the right, y up, z toward the"
                    + " driver.",
                Quantity.brief(plan.wanted().margin(), 2, ""),
                plan.wanted()
                    .deflection()
                    .map(d -> Phrase.of(", and no more than {} at the hands", Quantity.mm(d))))));
    List<Block> folded = new ArrayList<>(List.of(places));
    forces.forEach(line -> folded.add(new Paragraph(line)));
    blocks.add(new Folded(Depth.ALL, folded));
  }

  private static String name(Judged one) {
    return one.field().load().name();
  }

  private static Cell judged(Judged one) {
    return one.fall().isPresent()
        ? new Cell.Verdict(Tone.NOTE, "told only")
        : new Cell.Verdict(one.met() ? Tone.WELL : Tone.FAIL, one.met() ? "" : "NOT AS WANTED");
  }

  private static Cell orNone(OptionalDouble value, int decimals, String unit) {
    return value.isPresent() ? Quantity.fixed(value.getAsDouble(), decimals, unit) : Cell.NONE;
  }

  private String side(CaseField field) {
    boolean plies = plan.gauge().plies().isPresent();
    return plies ? "ply " + field.worst().ply() : field.worst().z() >= 0 ? "front" : "back";
  }

  private static String forces(Judged one) {
    List<String> forces =
        one.field().load().forces().stream()
            .map(
                f ->
                    Phrase.of(
                        "[{}, {}, {}] N at {}",
                        Quantity.brief(f.x(), 0, ""),
                        Quantity.brief(f.y(), 0, ""),
                        Quantity.brief(f.z(), 0, ""),
                        Phrase.at(f.at())))
            .toList();
    return Phrase.of(
        "{}: {}, times {} for the margin.",
        one.field().load().name(),
        String.join("; ", forces),
        Quantity.brief(one.factor(), 2, ""));
  }

  /** Where the model ends in a case. */
  public static List<String> warnings(LoadPlan plan, Judged one) {
    List<String> warnings = new ArrayList<>();
    CaseField field = one.field();
    if (field.peakDeflection() > plan.gauge().thickness() / 2) {
      warnings.add(
          "it moves by more than half its thickness: it stretches then, and moves less than told");
    }
    if (one.fall().isPresent() && one.margin() < 0) {
      warnings.add(
          "such a fall may damage it; thickness hardly helps, so this is told and not judged. After"
              + " any fall look for cracks and whitening, tap it and listen, and load it anew");
    }
    return warnings;
  }

  private void screws() {
    blocks.addAll(JointReport.judged(outcome.screws()));
  }

  private void thicknesses() {
    if (plan.trials().size() < 2) {
      return;
    }
    boolean priced = plan.trials().stream().anyMatch(t -> t.gauge().cost().isPresent());
    String currency = outcome.plate().stock().layup().prices().currency().orElse("");
    List<List<Cell>> rows = new ArrayList<>();
    for (Trial t : plan.trials()) {
      OptionalDouble cost = t.gauge().cost();
      rows.add(
          List.of(
              t.gauge().plies().isPresent() ? Cell.of(t.gauge().plies().getAsInt()) : Cell.NONE,
              Quantity.fixed(t.gauge().thickness(), 2, "mm"),
              Quantity.grams(t.gauge().mass()),
              cost.isPresent()
                  ? Quantity.fixed(cost.getAsDouble(), 2, "")
                  : priced ? Cell.UNKNOWN : Cell.NONE,
              Cell.of(margin(t.margin())),
              Cell.of(t.marginCase()),
              moved(t.deflection()),
              Cell.of(t.deflectionCase()),
              new Cell.Verdict(
                  t.met() ? Tone.WELL : Tone.FAIL,
                  (t.met() ? "does" : "does not") + (t.own() ? ", as in the shape file" : ""))));
    }
    blocks.add(new Heading("What other thicknesses do"));
    blocks.add(
        Table.of(
            List.of(
                Column.figures("plies", ""),
                Column.figures("", "mm"),
                Column.figures("mass", "g"),
                Column.figures("cost", currency),
                Column.figures("margin", ""),
                Column.words("in"),
                Column.figures("hands", "mm"),
                Column.words("in"),
                Column.wrapped("")),
            rows));
    blocks.add(
        new Paragraph(
            outcome
                .least()
                .map(t -> Phrase.of("The least of these that does: {}.", thickness(t)))
                .orElse(
                    outcome.whole()
                        ? "None of these does."
                        : "Only some cases were reckoned: which of these does is told for all of"
                            + " them alone.")));
    blocks.add(
        new Paragraph(
            "Screws are judged for the thickness of the shape file alone: reckon the one you choose"
                + " once more."));
    blocks.add(new Figure(ThicknessPlot.of(new LoadMaps(outcome).thicknesses())));
  }

  private void maps() {
    LoadMaps maps = new LoadMaps(outcome);
    List<Block> pages = new ArrayList<>();
    for (Judged one : plan.cases()) {
      pages.add(new PageBreak());
      pages.add(new Figure(LoadPicture.stacked(maps.view(one))));
    }
    pages.add(new PageBreak());
    blocks.add(new Folded(Depth.PAPER, pages));
  }

  private void sources() {
    List<List<String>> rows =
        plan.figures().stream()
            .map(f -> List.of(f.name(), Quantity.rounded(f.value(), f.unit()).text(), f.basis()))
            .toList();
    List<Block> told = new ArrayList<>();
    told.add(new Heading("What this rests on"));
    told.add(
        Table.ofWords(
            List.of(
                Column.wrapped("figure"),
                Column.figures("value", ""),
                Column.wrapped("where it comes from")),
            rows));
    plan.cases()
        .forEach(
            one -> {
              var load = one.field().load();
              told.add(new Paragraph(Phrase.of("{}: {}.", load.name(), load.basis())));
            });
    blocks.add(new Folded(Depth.SOURCES, told));
    plan.notes().forEach(note -> blocks.add(new Paragraph("Note: " + note + ".")));
    var result = plan.result();
    blocks.add(
        new Paragraph(
            Phrase.of(
                "{} triangles, {} unknowns, smallest angle {} degrees. From the coarser mesh"
                    + " before, deflections changed by at most {} and highest stresses by {}{}",
                result.mesh().triangles(),
                result.unknowns(),
                Quantity.fixed(result.mesh().quality().leastAngle(), 0, ""),
                Quantity.percent(result.deflectionChange(), 1),
                Quantity.percent(result.useChange(), 1),
                result.settled()
                    ? ": the figures have settled."
                    : ": the figures have NOT settled; give inside corners a radius, and trust"
                        + " deflections more than stresses.")));
  }
}
