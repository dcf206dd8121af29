package felloe.report;

import felloe.cure.Widening;
import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.PageBreak;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.drawing.LoadPicture;
import felloe.drawing.ThicknessPlot;
import felloe.joints.JointCheck;
import felloe.load.CaseField;
import felloe.load.LoadPlan;
import felloe.load.LoadPlan.Judged;
import felloe.load.LoadPlan.Trial;
import felloe.plate.LimitOverride;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.service.LoadOutcome;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

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

  /** Metal is judged by its first yield, which says nothing of its life. */
  private static final String LIFE =
      "Life is not shown: no figure here says for how many hours aluminium lasts. Look for cracks"
          + " at holes and inside corners before every event, and scrap the wheel after a crash, a"
          + " hard fall, a dent at an edge or any crack.";

  /** What goes with the loads of a plate. */
  public static List<String> cautions(Plate plate) {
    List<String> all = new ArrayList<>(CAUTIONS);
    if (plate.stock().material().kind() == MaterialKind.METAL) {
      all.add(1, LIFE);
    }
    return all;
  }

  /** A margin beyond which more is of no use to tell. */
  private static final double MOST = 99;

  private final LoadOutcome outcome;
  private final LoadPlan plan;
  private final Telling told = new Telling();

  private LoadReport(LoadOutcome outcome) {
    this.outcome = outcome;
    this.plan = outcome.plan();
  }

  /** The answer, told. */
  public static Report of(LoadOutcome outcome) {
    LoadReport report = new LoadReport(outcome);
    report.verdict();
    report.cases();
    report.told.add(JointReport.judged(outcome.screws()));
    report.ownLimits();
    report.thicknesses();
    report.webs();
    report.maps();
    report.sources();
    report.told.cautions(cautions(outcome.plate()));
    return Unfit.warned(
        outcome.study(), report.told.under(Words.title(outcome.plate(), "loads"), FOOT));
  }

  /** A margin in words. */
  static String margin(double margin) {
    return margin > MOST ? "over 99" : Quantity.fixed(margin, 2, "").text();
  }

  /** Material, plies and thickness. */
  static String stock(LoadPlan plan) {
    List<String> words = new ArrayList<>(List.of(plan.plate().stock().material().title()));
    plan.gauge().plies().ifPresent(n -> words.add(Words.plies(n)));
    words.add(Quantity.mm(plan.gauge().thickness()).text());
    return String.join(", ", words);
  }

  /** Whether all is as wanted, in a sentence. */
  static String inShort(LoadOutcome outcome) {
    LoadPlan plan = outcome.plan();
    Judged worst = outcome.worst();
    String fault =
        plan.gauge().section().coupled() ? "NO VERDICT: at first sight" : "NOT AS WANTED:";
    return Phrase.of(
        "{} least margin {} in {}; hands move it by up to {}.",
        !outcome.met()
            ? fault
            : plan.result().settled()
                ? "As wanted:"
                : "As wanted, if figures that have NOT settled are near enough (see the end):",
        margin(worst.margin()),
        worst.field().load().name(),
        moved(plan.deflection()));
  }

  private void verdict() {
    boolean settled = plan.result().settled();
    told.verdict(!outcome.met() ? Tone.FAIL : settled ? Tone.WELL : Tone.CAUTION, inShort(outcome));
    if (!outcome.unscrewed().isEmpty()) {
      told.verdict(
          Tone.FAIL,
          "No screw is known in {} of its hub holes, so none is judged there. {}",
          outcome.unscrewed().stream().mapToInt(one -> one.holes().size()).sum(),
          Phrase.begin(outcome.unscrewed().get(0).words()));
    }
    told.add(JointReport.cure(outcome.screws(), outcome.screwCures()));
    cure(outcome).ifPresent(cure -> told.verdict(Tone.FAIL, Phrase.sentence(cure)));
    outcome.widening().ifPresent(w -> told.verdict(Tone.FAIL, widened(w)));
    told.say("{}. It is {}.", Phrase.begin(stock(plan)), plan.hold().why());
    plan.hold().assumptions().forEach(a -> told.say("Taken: " + a + "."));
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
    boolean open = outcome.widening().isEmpty();
    return Optional.of(
        plan.least()
            .map(
                t ->
                    Phrase.of(
                        "make it {}, the least of those tried that does{}",
                        thickness(t),
                        open ? "; or widen rim and spokes" : ""))
            .orElse(
                plan.trials().size() > 1
                    ? "none of the thicknesses tried does: try thicker ones"
                        + (open ? ", or widen rim and spokes" : "")
                    : "make it thicker, or widen rim and spokes"));
  }

  private static String widened(Widening widening) {
    return widening
        .found()
        .map(
            f ->
                Phrase.of(
                    "Or, tried at this thickness: {}: least margin {}, at most {} at the hands,"
                        + " {} more.",
                    f.change().words(),
                    margin(f.margin()),
                    moved(f.deflection()),
                    Quantity.grams(f.mass())))
        .orElse("Wider webs alone, as far as the review lets them, do not do it.");
  }

  /** What a millimetre of each figure does. */
  private void webs() {
    if (outcome.widening().isEmpty() || outcome.widening().get().effects().isEmpty()) {
      return;
    }
    told.head("What a millimetre does");
    told.add(
        Rows.of(outcome.widening().get().effects())
            .wrapped("figure", e -> Phrase.list(e.keys()))
            .words("", e -> e.sense() > 0 ? "more" : "less")
            .figures("adds", "g", e -> Quantity.fixed(e.mass(), 1, "g"))
            .figures("use falls", "%", e -> Quantity.fixed(100 * e.use(), 1, "%"))
            .figures("hands move less", "mm", e -> Quantity.fixed(e.deflection(), 3, "mm"))
            .table());
    told.say(
        "Use is the share of its strength that the worst place bears. Taken over a few"
            + " millimetres on one mesh, to see which figure helps most for a gram; that one"
            + " stands first.");
  }

  private static String thickness(Trial trial) {
    OptionalInt plies = trial.gauge().plies();
    return (plies.isPresent() ? Words.plies(plies.getAsInt()) + ", " : "")
        + Quantity.mm(trial.gauge().thickness());
  }

  private void cases() {
    Map<String, List<String>> warned = new LinkedHashMap<>();
    for (Judged one : plan.cases()) {
      warnings(plan, one)
          .forEach(w -> warned.computeIfAbsent(w, k -> new ArrayList<>()).add(name(one)));
    }
    told.head("Load cases");
    told.add(
        Rows.of(plan.cases())
            .words("case", LoadReport::name)
            .wrapped("", one -> one.field().load().title())
            .figures("hands", "mm", one -> moved(one.field().atLoad()))
            .fixed("MPa", "", 0, one -> one.field().worst().stress())
            .figures("margin", one -> margin(one.margin()))
            .words("", LoadReport::judged));
    Telling more = new Telling();
    more.add(
        Rows.of(plan.cases())
            .words("case", LoadReport::name)
            .figures("moves most", "mm", one -> moved(one.field().peakDeflection()))
            .figures("stiffness", "N/mm", one -> Cell.fixed(one.stiffness(), 0, "N/mm"))
            .words("worst at", one -> Phrase.at(one.field().worstAt()) + " " + side(one.field())));
    warned.forEach((words, names) -> told.say("Note on {}: {}.", Phrase.list(names), words));
    plan.leftOut().forEach(left -> told.say("Left out: " + left + "."));
    told.say(
        "Margin: how much more the load times its factor may grow, so that 0 is the edge"
            + " and 1 is twice; wanted: {}{}. Forces: x to the right, y up, z toward the"
            + " driver.",
        Quantity.brief(plan.wanted().margin(), 2, ""),
        plan.wanted()
            .deflection()
            .map(d -> Phrase.of(", and no more than {} at the hands", Quantity.mm(d))));
    plan.cases().forEach(one -> more.say(forces(one)));
    told.fold(Depth.ALL, more);
  }

  private static String name(Judged one) {
    return one.field().load().name();
  }

  private static Cell judged(Judged one) {
    return one.fall().isPresent()
        ? new Cell.Verdict(Tone.NOTE, "told only")
        : new Cell.Verdict(one.met() ? Tone.WELL : Tone.FAIL, one.met() ? "" : "NOT AS WANTED");
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

  /** Limits of the maker's own bind the review; a screw that gives way does so all the same. */
  private void ownLimits() {
    List<String> ways = Arrays.stream(JointCheck.What.values()).map(JointCheck.What::id).toList();
    List<String> own =
        outcome.plate().limits().stream()
            .map(LimitOverride::rule)
            .filter(ways::contains)
            .map(rule -> "limits." + rule)
            .toList();
    if (!own.isEmpty()) {
      told.say(
          "{} of the shape file {} for the review alone: here a screw holds from 1 on.",
          Phrase.list(own),
          own.size() == 1 ? "counts" : "count");
    }
  }

  private void thicknesses() {
    if (plan.trials().size() < 2) {
      return;
    }
    boolean priced = plan.trials().stream().anyMatch(t -> t.gauge().cost().isPresent());
    String currency = outcome.plate().stock().layup().prices().currency().orElse("");
    told.head("What other thicknesses do");
    told.add(
        Rows.of(plan.trials())
            .figures("plies", trial -> trial.gauge().plies())
            .fixed("", "mm", 2, trial -> trial.gauge().thickness())
            .figures("mass", "g", trial -> Quantity.grams(trial.gauge().mass()))
            .figures("cost", currency, trial -> cost(trial, priced))
            .figures("margin", trial -> margin(trial.margin()))
            .words("in", Trial::marginCase)
            .figures("hands", "mm", trial -> moved(trial.deflection()))
            .words("in", Trial::deflectionCase)
            .wrapped("", LoadReport::does));
    told.say(
        outcome
            .least()
            .map(t -> Phrase.of("The least of these that does: {}.", thickness(t)))
            .orElse(
                outcome.whole()
                    ? "None of these does."
                    : "Only some cases were reckoned: which of these does is told for all of"
                        + " them alone."));
    if (plan.trials().stream().anyMatch(t -> t.gauge().cost().isPresent())) {
      told.say(
          "Cost is of what stays in the plate, for comparing thicknesses; a lay-up's plan tells"
              + " what must be bought.");
    }
    told.say("Screws are judged for each thickness, with the screws as they would be planned.");
    told.add(new Figure(ThicknessPlot.of(new LoadMaps(outcome).thicknesses())));
  }

  /** What is not known has its sign only beside what is. */
  private static Cell cost(Trial trial, boolean priced) {
    boolean missing = priced && trial.gauge().cost().isEmpty();
    return missing ? Cell.UNKNOWN : Cell.fixed(trial.gauge().cost(), 2, "");
  }

  private static Cell does(Trial trial) {
    return new Cell.Verdict(
        trial.met() ? Tone.WELL : Tone.FAIL,
        (trial.met() ? "does" : trial.screwsHold() ? "does not" : "does not: screws")
            + (trial.own() ? ", as in the shape file" : ""));
  }

  private void maps() {
    told.fold(
        Depth.PAPER,
        pages -> {
          LoadMaps maps = new LoadMaps(outcome);
          for (Judged one : plan.cases()) {
            pages.add(new PageBreak(), new Figure(LoadPicture.stacked(maps.view(one))));
          }
          pages.add(new PageBreak());
        });
  }

  private void sources() {
    Telling sources = new Telling().head("What this rests on");
    sources.add(Words.sources(plan.figures().stream().map(Words.Source::of).toList()));
    for (Judged one : plan.cases()) {
      sources.say("{}: {}.", name(one), one.field().load().basis());
    }
    told.fold(Depth.SOURCES, sources);
    plan.notes().forEach(note -> told.say("Note: " + note + "."));
    var result = plan.result();
    told.say(
        "{} triangles, {} unknowns, smallest angle {} degrees. {}",
        result.mesh().triangles(),
        result.unknowns(),
        Quantity.fixed(result.mesh().quality().leastAngle(), 0, ""),
        result.changes().isEmpty()
            ? "A finer mesh would be too large, so how near the figures are is not known: take"
                + " them with a tenth to spare, and leave small features out of the shape."
            : Phrase.of(
                "From the coarser mesh before, deflections changed by at most {} and highest"
                    + " stresses by {}; by how much finer it became there, some {} may be left{}",
                Quantity.percent(result.deflectionChange(), 1),
                Quantity.percent(result.useChange(), 1),
                Quantity.percent(result.useLeft(), 1),
                result.settled()
                    ? ": the figures have settled."
                    : ": the figures have NOT settled; give inside corners a radius, and trust"
                        + " deflections more than stresses."));
  }
}
