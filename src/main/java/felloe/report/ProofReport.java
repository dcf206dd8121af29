package felloe.report;

import felloe.document.Block.Column;
import felloe.document.Block.Depth;
import felloe.document.Block.Steps;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.load.Bonding;
import felloe.load.ProofLoad;
import felloe.load.ProofLoad.Hang;
import felloe.load.ProofLoad.Step;
import felloe.plate.Plate;
import felloe.service.LoadOutcome;
import java.util.ArrayList;
import java.util.List;

/** How a finished wheel is proved with weights, told as a sheet to work by. */
public final class ProofReport {

  /** Goes with every proof load. */
  public static final List<String> CAUTIONS =
      List.of(
          "A wheel that breaks under a weight flies, and the weight falls. Stand clear while it"
              + " hangs, keep it a hand's breadth above the floor, keep feet from under it, tether"
              + " the wheel, wear eye protection, and have a second person there.",
          "A proof load finds a plate that is weaker or softer than it should be. It proves nothing"
              + " of fatigue, heat, a crash, or harder hands. Event rules and a qualified person"
              + " have the last word.");

  private ProofReport() {}

  /** The sheet. */
  public static Report of(LoadOutcome outcome, ProofLoad proof) {
    Telling told = new Telling();
    verdict(outcome, proof, told);
    told.cautions(CAUTIONS);
    told.head("Set it up").add(new Steps(setUp(outcome.plate()), true));
    told.head("Stop, and take the weight off, when").add(Steps.of(stops(proof)));
    proof.hangs().forEach(hang -> hang(proof, hang, told));
    told.head("Afterwards");
    told.add(
        new Steps(
            List.of(
                "Look at every edge, hole and corner with a lens and a lamp: no crack, no white or"
                    + " lifted place. Tap with a coin: no dull spot.",
                "Check the torque of every hub screw. One that has turned, or a mark that has"
                    + " shifted, means that the plate slipped.",
                "A wheel that stopped the test is scrap: cut it through, so that nobody drives with"
                    + " it."),
            true));
    told.fold(
        Depth.PAPER,
        new Table(
            "Proved by",
            List.of(Column.blank("builder"), Column.blank("second person"), Column.blank("day")),
            List.of(List.of(new Cell.Blank(), new Cell.Blank(), new Cell.Blank())),
            false));
    told.fold(Depth.SOURCES, new Telling().head("What this rests on").add(sources(proof)));
    return Unfit.warned(
        outcome.study(), told.under(Words.title(outcome.plate(), "proof load"), LoadReport.FOOT));
  }

  private static void verdict(LoadOutcome outcome, ProofLoad proof, Telling told) {
    if (proof.hangs().isEmpty()) {
      told.verdict(
          Tone.FAIL,
          "No load case can be hung as a weight: it takes one hand, square to the plate.");
    } else if (!outcome.met() || outcome.study().fails()) {
      told.verdict(
          Tone.FAIL,
          "DO NOT PROVE IT YET: the plate is not as wanted, and may break. Change it first.");
    } else {
      told.verdict(Tone.WELL, inShort(proof));
    }
  }

  /** What is hung, and in how many places. */
  static String inShort(ProofLoad proof) {
    double most = proof.hangs().stream().mapToDouble(Hang::weight).max().orElse(0);
    return Phrase.of(
        "Hang {} and less from the rim, in {}, and read how far it sinks.",
        Quantity.fixed(most, 1, "kg"),
        Phrase.count(proof.hangs().size(), "place"));
  }

  /** How it is set up, a step each. */
  static List<String> setUp(Plate plate) {
    List<String> steps = new ArrayList<>();
    if (!Bonding.of(plate).patches().isEmpty()) {
      steps.add(
          "Prove it with those grips on that are bonded and of one piece, their glue cured: the"
              + " bounds count them. Those of several pieces are glued on afterwards, and those"
              + " that are only screwed on stay off.");
    } else if (plate.making().gripScale() > 0 || !plate.grips().isEmpty()) {
      steps.add(
          "Prove it bare, without its grips: the bounds are those of the plate alone. Scales that"
              + " are on make it sink less, and hide a plate that is too soft.");
    }
    steps.addAll(fixed());
    return steps;
  }

  private static List<String> fixed() {
    return List.of(
        "Bolt the finished wheel to its own hub with its own screws at their torque, and mark each"
            + " screw head with a line across on to the plate.",
        "Fix the hub to a stand or bench that gives nothing, the plate level, with room below the"
            + " rim. Never on the car.",
        "Put a dial or a steel rule under the rim at the place of the weight, and a second one at"
            + " the edge of the hub: what the hub sinks, times the way to the rim over its own, is"
            + " not the plate's.",
        "Spread the weight over a strap as wide as a hand, with no edge or knot against the plate.",
        "Hang the first part once, take it off, and set the dial to nothing: the stand settles.");
  }

  /** Where a weight hangs, in words. */
  static String hung(Hang hang) {
    return Phrase.of(
        "{}: {}, {} at {}, driver's side {}",
        hang.name(),
        hang.title(),
        Quantity.fixed(hang.weight(), 1, "kg"),
        Phrase.at(hang.at()),
        hang.driverUp() ? "up" : "down");
  }

  /** The parts of a weight, and what may be left when all of it is off. */
  static List<Step> steps(ProofLoad proof, Hang hang) {
    List<Step> steps = new ArrayList<>(hang.steps());
    double last = steps.get(steps.size() - 1).most();
    steps.add(new Step(0, 0, proof.left().value() * last));
    return steps;
  }

  private static void hang(ProofLoad proof, Hang hang, Telling told) {
    told.head(
        "{}: {} at {}",
        Phrase.begin(hang.title()),
        Quantity.fixed(hang.weight(), 1, "kg"),
        Phrase.at(hang.at()));
    told.say(
        "Driver's side {}. x is to the driver's right, y up, from the hub axis, mm. After"
            + " the last part wait a minute, read, take all off and read again: no more"
            + " than {} of the deflection may be left.",
        hang.driverUp() ? "up" : "down",
        Quantity.percent(proof.left().value(), 0));
    told.add(
        Rows.of(steps(proof, hang))
            .fixed("weight", "kg", 1, step -> step.weight())
            .figures(
                "sinks at least",
                "mm",
                step -> step.weight() > 0 ? Quantity.fixed(step.least(), 1, "mm") : "")
            .fixed("at most", "mm", 1, step -> step.most())
            .blank("rim reads")
            .blank("hub reads"));
  }

  /** What means that the weight is taken off, the rest of a sentence each. */
  static List<String> stops(ProofLoad proof) {
    return List.of(
        "it cracks, creaks or ticks;",
        "it sinks more than the table's most, or goes on sinking while you wait;",
        "it sinks much less than the table's least: then the dial, the stand or the weight is"
            + " wrong, or grips that are on make it stiffer;",
        Phrase.of(
            "more than {} of the deflection is left when the weight is off;",
            Quantity.percent(proof.left().value(), 0)),
        "a screw turns, a grip lifts, or the plate shifts on the hub.");
  }

  private static Rows<Words.Source> sources(ProofLoad proof) {
    List<Words.Source> sources = new ArrayList<>();
    for (Hang hang : proof.hangs()) {
      String weight = Quantity.fixed(hang.weight(), 1, "kg").text();
      sources.add(new Words.Source(hang.title(), weight, hang.basis()));
    }
    sources.add(
        new Words.Source(
            "a sound plate may bend more or less by",
            Quantity.percent(proof.spread().value(), 0).text(),
            proof.spread().basis() + "; from the stiffer of two ways to be held to the softer"));
    sources.add(
        new Words.Source(
            "may be left", Quantity.percent(proof.left().value(), 0).text(), proof.left().basis()));
    return Words.sources(sources);
  }
}
