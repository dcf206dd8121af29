package felloe.report;

import felloe.document.Block;
import felloe.document.Block.Callout;
import felloe.document.Block.Depth;
import felloe.document.Block.Folded;
import felloe.document.Block.Heading;
import felloe.document.Block.Paragraph;
import felloe.document.Block.Table;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.hub.CalliperFigures;
import felloe.hub.CalliperReading;
import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.hub.HubRing;
import felloe.hub.Mismatch;
import felloe.plate.Finding;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;

/** Whether a plate meets its hub, told. */
final class HubFitReport {

  /** A turn smaller than this is upright, degrees. */
  private static final double UPRIGHT = 0.005;

  private HubFitReport() {}

  /**
   * The fit in blocks.
   *
   * @param told findings that stand beside it: cures that they tell are not told again
   */
  static List<Block> blocks(HubFitResult fit, List<Finding> told) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Heading.of("Hub {}: {}", fit.hub().name(), fit.hub().title()));
    fit.plateTurn().ifPresent(turn -> blocks.add(placement(fit, Math.toDegrees(turn))));
    for (Mismatch off : fit.mismatches()) {
      blocks.add(
          Paragraph.of(
              "Off: {} of {} is {}; the hub's is {}.",
              off.kind().words(),
              off.subject(),
              Units.brief(off.plate(), off.unit()),
              Units.brief(off.hub(), off.unit())));
    }
    for (Cure cure : fit.cures()) {
      if (told.stream().noneMatch(f -> f.advice().contains(cure.words()))) {
        blocks.add(new Paragraph((cure.works() ? "Cure: " : "No cure: ") + cure.words()));
      }
    }
    if (!fit.spare().isEmpty()) {
      List<String> spare = fit.spare().stream().map(Hole::label).toList();
      blocks.add(new Paragraph("Holes without a screw: " + Phrase.list(spare) + "."));
    }
    if (!fit.complete()) {
      blocks.add(
          Callout.verdict(
              Tone.CAUTION,
              "There were too many holes to try every pairing; a better one may exist."));
    }
    blocks.add(new Folded(Depth.ALL, () -> more(fit)));
    return blocks;
  }

  /** Screw by screw, and what the calliper should read. */
  private static List<Block> more(HubFitResult fit) {
    List<Block> more = new ArrayList<>();
    more.add(screws(fit));
    more.add(
        Paragraph.of(
            "Room is all round, as drawn and at the worst of the tolerances (holes made: {}).",
            fit.drilling().title()));
    for (HubRing ring : fit.rings()) {
      more.addAll(calliper(ring.thread().name() + " screws in the hub", ring.calliper()));
    }
    fit.plateCalliper().ifPresent(c -> more.addAll(calliper("holes in the plate", c)));
    return more;
  }

  private static Paragraph placement(HubFitResult fit, double turn) {
    String plate =
        Math.abs(turn) < UPRIGHT
            ? "with the plate upright"
            : Phrase.of(
                "with the plate turned {} counter-clockwise", Quantity.brief(turn, 2, "degrees"));
    double step = Math.toDegrees(fit.step());
    return Paragraph.of(
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
  static Table screws(HubFitResult fit) {
    return Rows.of(fit.screws())
        .words("screw", s -> s.screw() + " " + s.thread().name())
        .words("hole", s -> s.hole().label())
        .figures("diameter", "mm", s -> Quantity.fixed(s.hole().diameter(), 2, "mm"))
        .figures("room", "mm", s -> Quantity.fixed(s.clearance(), 2, "mm"))
        .figures("at worst", "mm", s -> Quantity.fixed(s.worst(), 2, "mm"))
        .figures("off by", "mm", s -> Quantity.fixed(s.distance(), 2, "mm"))
        .wrapped("series", s -> s.series().words())
        .table();
  }

  /**
   * What a calliper reads.
   *
   * @param on what it is laid on
   */
  static List<Block> calliper(String on, CalliperFigures figures) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Rows.of(figures.readings())
            .words("pair", CalliperReading::name)
            .figures("centres", "mm", reading -> Quantity.fixed(reading.centres(), 2, "mm"))
            .figures("outside", "mm", reading -> Quantity.fixed(reading.outside(), 2, "mm"))
            .figures("inside", "mm", reading -> Quantity.fixed(reading.inside(), 2, "mm"))
            .table()
            .under(
                Phrase.of(
                    "Calliper on {} {}, circle of {}",
                    figures.count(),
                    on,
                    Quantity.mm(figures.pitchDiameter()))));
    if (!figures.warning().isEmpty()) {
      blocks.add(new Paragraph(figures.warning()));
    }
    return blocks;
  }
}
