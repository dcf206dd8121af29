package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.hub.HubFitResult;
import felloe.measure.AsDrilledResult;
import felloe.measure.DrilledHole;
import felloe.measure.HoleEnlargement;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import felloe.service.DrilledOutcome;
import java.util.List;

/** Whether a plate, as it was drilled, goes on its hub, told: the verdict, the cure, the holes. */
public final class DrilledReport {

  private DrilledReport() {}

  /** The proof, told; the review of the drawing stands behind it. */
  public static Report of(DrilledOutcome outcome) {
    AsDrilledResult drilled = outcome.drilled();
    Telling told = new Telling();
    verdict(outcome, told);
    told.add(
        Rows.of(outcome.findings())
            .words("", f -> Words.verdict(f.verdict()))
            .words("check", Finding::rule)
            .wrapped("of", Finding::subject)
            .figures("is", f -> Words.brief(f.figure())));
    CheckReport.advice(outcome.findings(), f -> Phrase.sentence(f.advice()), told);
    cures(outcome, told);
    drilled.notes().forEach(note -> told.say("Note: " + note));
    told.add(MeasureReport.suspects(drilled.survey()));
    told.add(holes(drilled));
    told.say(tolerance(drilled));
    told.fold(
        Depth.ALL,
        new Telling()
            .head("Screws in the holes as drilled")
            .add(HubFitReport.screws(drilled.fit())));
    String by = "as drilled, by " + drilled.survey().measured().file();
    return told.head("As drawn")
        .add(CheckReport.told(outcome.study()))
        .under(Words.title(outcome.study().plate(), by));
  }

  private static void verdict(DrilledOutcome outcome, Telling told) {
    AsDrilledResult drilled = outcome.drilled();
    HubFitResult fit = drilled.fit();
    String hub = fit.hub().name();
    String room =
        fit.clearance()
            .map(
                clearance ->
                    Phrase.of(
                        " The tightest screw has {} all round as measured, {} at the worst of hub"
                            + " and readings.",
                        Quantity.fixed(clearance, 2, "mm"),
                        Quantity.fixed(fit.worst().orElse(clearance), 2, "mm")))
            .orElse("");
    List<String> odd = drilled.odd().stream().map(one -> one.label()).toList();
    String first =
        odd.isEmpty()
            ? ""
            : Phrase.of(
                " {} {} the odd one{} out; all other holes lie in their places.",
                Phrase.list(odd),
                odd.size() == 1 ? "is" : "are",
                odd.size() == 1 ? "" : "s");
    switch (outcome.verdict()) {
      case PASS -> told.verdict(Tone.WELL, "GOES ON the hub {}.{}", hub, room);
      case CAUTION ->
          told.verdict(Tone.CAUTION, "Goes on the hub {}, with cautions.{}{}", hub, first, room);
      case FAIL ->
          told.verdict(
              Tone.FAIL,
              fit.enters()
                  ? "FAILS as drilled: its screws enter the hub {}, but see below.{}{}"
                  : "DOES NOT GO ON the hub {}.{}{}",
              hub,
              first,
              room);
    }
  }

  private static void cures(DrilledOutcome outcome, Telling told) {
    HubFitReport.cures(outcome.drilled().cures(), outcome.findings(), told);
    for (HoleEnlargement way : outcome.drilled().openings()) {
      List<String> holes =
          way.all().stream()
              .map(
                  o ->
                      Phrase.of(
                          "{} from {} to {} ({})",
                          o.hole(),
                          Quantity.fixed(o.from(), 2, "mm"),
                          Quantity.fixed(o.to(), 2, "mm"),
                          o.series()))
              .toList();
      told.say(
          "Cure: open {}; the tightest screw then has {} all round as measured, {} at the"
              + " worst.",
          Phrase.list(holes),
          Quantity.fixed(way.clearance(), 2, "mm"),
          Quantity.fixed(way.worst(), 2, "mm"));
    }
    if (outcome.verdict() == Verdict.FAIL) {
      told.verdict(
          Tone.CAUTION,
          "Do not force screws in, and do not file threads: mend the plate, or scrap it.");
    }
  }

  private static Rows<DrilledHole> holes(AsDrilledResult drilled) {
    return Rows.of(drilled.holes())
        .words("hole", hole -> hole.meant().label())
        .fixed("x", "mm", 2, hole -> hole.at().x())
        .fixed("y", "mm", 2, hole -> hole.at().y())
        .fixed("diameter", "mm", 2, hole -> hole.diameter())
        .fixed("position", "mm", 2, hole -> hole.position())
        .fixed("±", "mm", 2, hole -> 2 * hole.unsure())
        .figures(
            "may be",
            "mm",
            hole -> hole.tolerance().map(t -> t < 0 ? "none" : Quantity.fixed(t, 2, "mm")))
        .words(
            "",
            hole ->
                drilled.odd().stream().anyMatch(o -> o.label().equals(hole.meant().label()))
                    ? "the odd one out"
                    : hole.misses() ? "misses its zone" : "");
  }

  private static String tolerance(AsDrilledResult drilled) {
    return Phrase.of(
        "Position is the diameter of the zone that the centre just keeps. By the formula for fixed"
            + " fasteners {}{}; with clear holes in the hub it would be {}. A hole that misses its"
            + " zone may still do: the screws decide.",
        drilled.fixed() < 0
            ? Phrase.of(
                "nothing is left for drilling ({})", Quantity.fixed(drilled.fixed(), 2, "mm"))
            : Phrase.of("drilling may have a zone of {}", Quantity.fixed(drilled.fixed(), 2, "mm")),
        drilled.withBonus() ? ", more by what a hole is larger than drawn" : "",
        Quantity.fixed(drilled.floating(), 2, "mm"));
  }
}
