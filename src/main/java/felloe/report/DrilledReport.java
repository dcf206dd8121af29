package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Depth;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.measure.AsDrilledResult;
import felloe.measure.HoleEnlargement;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import felloe.service.DrilledOutcome;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Whether a plate, as it was drilled, goes on its hub, told: the verdict, the cure, the holes. */
public final class DrilledReport {

  private DrilledReport() {}

  /** The proof, told; the review of the drawing stands behind it. */
  public static Report of(DrilledOutcome outcome) {
    AsDrilledResult drilled = outcome.drilled();
    List<Block> blocks = new ArrayList<>();
    blocks.add(verdict(outcome));
    blocks.addAll(findings(outcome.findings()));
    blocks.addAll(cures(outcome));
    drilled.notes().forEach(note -> blocks.add(new Paragraph("Note: " + note)));
    blocks.addAll(MeasureReport.suspects(drilled.survey()));
    blocks.add(holes(drilled));
    blocks.add(new Paragraph(tolerance(drilled)));
    blocks.add(
        Folded.of(
            Depth.ALL,
            new Heading("Screws in the holes as drilled"),
            HubFitReport.screws(drilled.fit())));
    blocks.add(new Heading("As drawn"));
    blocks.addAll(CheckReport.of(outcome.study()).blocks());
    return new Report(
        Phrase.of(
            "{}, revision {}: as drilled, by {}",
            outcome.study().plate().title(),
            outcome.study().plate().revision(),
            drilled.survey().measured().file()),
        blocks);
  }

  private static Callout verdict(DrilledOutcome outcome) {
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
    return switch (outcome.verdict()) {
      case PASS -> Callout.verdict(Tone.WELL, Phrase.of("GOES ON the hub {}.{}", hub, room));
      case CAUTION ->
          Callout.verdict(
              Tone.CAUTION, Phrase.of("Goes on the hub {}, with cautions.{}{}", hub, first, room));
      case FAIL ->
          Callout.verdict(
              Tone.FAIL,
              fit.enters()
                  ? Phrase.of(
                      "FAILS as drilled: its screws enter the hub {}, but see below.{}{}",
                      hub,
                      first,
                      room)
                  : Phrase.of("DOES NOT GO ON the hub {}.{}{}", hub, first, room));
    };
  }

  /** What is worse than it was drawn; the same advice for one rule once. */
  private static List<Block> findings(List<Finding> findings) {
    Map<String, List<String>> advice = new LinkedHashMap<>();
    for (Finding f : findings) {
      if (!f.advice().isEmpty()) {
        advice.computeIfAbsent(Phrase.sentence(f.advice()), w -> new ArrayList<>()).add(f.rule());
      }
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Rows.of(findings)
            .words("", f -> CheckReport.word(f.verdict()))
            .words("check", Finding::rule)
            .wrapped("of", Finding::subject)
            .figures("is", f -> Units.brief(f.figure()))
            .table());
    advice.forEach(
        (words, rules) ->
            blocks.add(
                Paragraph.of("{}: {}", Phrase.list(rules.stream().distinct().toList()), words)));
    return blocks;
  }

  private static List<Block> cures(DrilledOutcome outcome) {
    List<Block> blocks = new ArrayList<>();
    for (Cure cure : outcome.drilled().cures()) {
      if (outcome.findings().stream().noneMatch(f -> f.advice().contains(cure.words()))) {
        blocks.add(new Paragraph((cure.works() ? "Cure: " : "No cure: ") + cure.words()));
      }
    }
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
      blocks.add(
          Paragraph.of(
              "Cure: open {}; the tightest screw then has {} all round as measured, {} at the"
                  + " worst.",
              Phrase.list(holes),
              Quantity.fixed(way.clearance(), 2, "mm"),
              Quantity.fixed(way.worst(), 2, "mm")));
    }
    if (outcome.verdict() == Verdict.FAIL) {
      blocks.add(
          Callout.cautions(
              List.of(
                  "Do not force screws in, and do not file threads: mend the plate, or scrap"
                      + " it.")));
    }
    return blocks;
  }

  private static Table holes(AsDrilledResult drilled) {
    return Rows.of(drilled.holes())
        .words("hole", hole -> hole.meant().label())
        .figures("x", "mm", hole -> Quantity.fixed(hole.at().x(), 2, "mm"))
        .figures("y", "mm", hole -> Quantity.fixed(hole.at().y(), 2, "mm"))
        .figures("diameter", "mm", hole -> Quantity.fixed(hole.diameter(), 2, "mm"))
        .figures("position", "mm", hole -> Quantity.fixed(hole.position(), 2, "mm"))
        .figures("±", "mm", hole -> Quantity.fixed(2 * hole.unsure(), 2, "mm"))
        .figures(
            "may be",
            "mm",
            hole ->
                hole.tolerance()
                    .<Cell>map(t -> t < 0 ? Cell.of("none") : Quantity.fixed(t, 2, "mm"))
                    .orElse(Cell.NONE))
        .words(
            "",
            hole ->
                drilled.odd().stream().anyMatch(o -> o.label().equals(hole.meant().label()))
                    ? "the odd one out"
                    : hole.misses() ? "misses its zone" : "")
        .table();
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
