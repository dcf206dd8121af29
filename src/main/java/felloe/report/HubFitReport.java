package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.hub.Mismatch;
import felloe.hub.ScrewFit;
import felloe.plate.Finding;
import felloe.plate.Hole;
import java.util.List;

/** Whether a plate meets its hub, told. */
final class HubFitReport {

  /** A turn smaller than this is upright, degrees. */
  private static final double UPRIGHT = 0.005;

  private HubFitReport() {}

  /**
   * The fit.
   *
   * @param beside findings that stand beside it: cures that they tell are not told again
   */
  static Telling of(HubFitResult fit, List<Finding> beside) {
    Telling told = new Telling();
    told.head("Hub {}: {}", fit.hub().name(), fit.hub().title());
    fit.plateTurn().ifPresent(turn -> told.say(placement(fit, Math.toDegrees(turn))));
    for (Mismatch off : fit.mismatches()) {
      told.say(
          "Off: {} of {} is {}; the hub's is {}.",
          off.kind().words(),
          off.subject(),
          Words.brief(off.plate(), off.unit()),
          Words.brief(off.hub(), off.unit()));
    }
    cures(fit.cures(), beside, told);
    if (!fit.spare().isEmpty()) {
      List<String> spare = fit.spare().stream().map(Hole::label).toList();
      told.say("Holes without a screw: " + Phrase.list(spare) + ".");
    }
    if (!fit.complete()) {
      told.verdict(
          Tone.CAUTION, "There were too many holes to try every pairing; a better one may exist.");
    }
    return told.fold(Depth.ALL, more -> more(fit, more));
  }

  /** Screw by screw, and what the calliper should read. */
  private static void more(HubFitResult fit, Telling more) {
    more.add(screws(fit));
    more.say(
        "Room is all round, as drawn and at the worst of the tolerances (holes made: {}).",
        fit.drilling().title());
    HubReport.calliper(HubReport.laid(fit), more);
  }

  /** Cures that no finding beside them tells already. */
  static void cures(List<Cure> cures, List<Finding> beside, Telling told) {
    cures.stream()
        .filter(cure -> beside.stream().noneMatch(f -> f.advice().contains(cure.words())))
        .forEach(cure -> told.say((cure.works() ? "Cure: " : "No cure: ") + cure.words()));
  }

  /** Whether all screws enter, in a sentence or two. */
  static String inShort(HubFitResult fit) {
    return fit.plateTurn()
        .map(turn -> placement(fit, Math.toDegrees(turn)))
        .orElse("The plate cannot be laid on this hub at all.");
  }

  private static String placement(HubFitResult fit, double turn) {
    String plate =
        Math.abs(turn) < UPRIGHT
            ? "with the plate upright"
            : Phrase.of(
                "with the plate turned {} counter-clockwise", Quantity.brief(turn, 2, "degrees"));
    double step = Math.toDegrees(fit.step());
    return Phrase.of(
        "{} {}{}.{}",
        fit.enters() ? "All screws enter" : "Not all screws enter; they come nearest",
        plate,
        step < 359.9 ? Phrase.of(", and again every {}", Quantity.brief(step, 2, "degrees")) : "",
        fit.clearance()
            .map(
                room ->
                    Phrase.of(
                        " The tightest has {} all round as drawn{}.",
                        Quantity.fixed(room, 2, "mm"),
                        fit.worst()
                            .map(
                                worst ->
                                    Phrase.of(
                                        ", {} at the worst of the tolerances",
                                        Quantity.fixed(worst, 2, "mm"))))));
  }

  /** Each screw with its hole. */
  static Rows<ScrewFit> screws(HubFitResult fit) {
    return Rows.of(fit.screws())
        .words("screw", s -> s.screw() + " " + s.thread().name())
        .words("hole", s -> s.hole().label())
        .fixed("diameter", "mm", 2, s -> s.hole().diameter())
        .fixed("room", "mm", 2, s -> s.clearance())
        .fixed("at worst", "mm", 2, s -> s.worst())
        .fixed("off by", "mm", 2, s -> s.distance())
        .wrapped("series", s -> s.series().words());
  }
}
