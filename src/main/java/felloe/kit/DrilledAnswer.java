package felloe.kit;

import felloe.geometry.Point;
import felloe.hub.HubFitResult;
import felloe.hub.HubSpec;
import felloe.measure.AsDrilled;
import felloe.measure.AsDrilledResult;
import felloe.measure.DrilledHole;
import felloe.measure.HoleEnlargement;
import felloe.measure.Measured;
import felloe.measure.OddHole;
import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Whether a plate, as drilled, goes on its hub, for showing. Lengths in mm.
 *
 * @param check the review of the drawing
 * @param file where the readings are from
 * @param verdict of the plate as drilled
 * @param odd holes that are the odd ones out
 * @param fit the hub fit with holes as measured
 * @param findings what is worse than it was drawn
 * @param holes each with its position deviation
 * @param fixed zone that each may have by the formula for fixed fasteners
 * @param floating the same for floating fasteners
 * @param withBonus whether the bonus of ISO 2692 was counted
 * @param openings ways to open holes, the least first
 * @param cures what else would mend it
 * @param suspects readings that look like slips
 * @param notes what the maker should know
 */
public record DrilledAnswer(
    Study check,
    String file,
    Verdict verdict,
    List<String> odd,
    HubAnswer fit,
    List<Finding> findings,
    List<HoleRow> holes,
    double fixed,
    double floating,
    boolean withBonus,
    List<Way> openings,
    List<HubAnswer.Remedy> cures,
    List<MeasureAnswer.SuspectRow> suspects,
    List<String> notes) {

  private static final int DECIMALS = 6;

  public DrilledAnswer {
    odd = List.copyOf(odd);
    findings = List.copyOf(findings);
    cures = List.copyOf(cures);
    holes = List.copyOf(holes);
    openings = List.copyOf(openings);
    suspects = List.copyOf(suspects);
    notes = List.copyOf(notes);
  }

  /**
   * A hole as drilled.
   *
   * @param label its label
   * @param at where it is
   * @param diameter as measured, or as drawn where it was not measured
   * @param position diameter of the zone that its centre just keeps
   * @param unsure half-width of the 95 % bounds of its place
   * @param tolerance the zone that it may have; empty when it takes no hub screw
   * @param keeps whether it keeps it
   * @param misses whether it misses a zone that the drawing leaves it
   */
  public record HoleRow(
      String label,
      Point at,
      double diameter,
      double position,
      double unsure,
      Optional<Double> tolerance,
      boolean keeps,
      boolean misses) {
    static HoleRow of(DrilledHole hole) {
      return new HoleRow(
          hole.meant().label(),
          hole.at(),
          hole.diameter(),
          hole.position(),
          hole.unsure(),
          hole.tolerance(),
          hole.keeps(),
          hole.misses());
    }
  }

  /**
   * A hole to open.
   *
   * @param hole its label
   * @param from diameter now
   * @param to the drill
   * @param series where it then lies among the clearance series
   */
  public record OpeningRow(String hole, double from, double to, String series) {}

  /**
   * A way to open holes.
   *
   * @param holes those that grow
   * @param clearance room of the tightest screw after that, as measured
   * @param worst the same at the worst
   */
  public record Way(List<OpeningRow> holes, double clearance, double worst) {
    static Way of(HoleEnlargement openings) {
      return new Way(
          openings.all().stream()
              .map(o -> new OpeningRow(o.hole(), o.from(), o.to(), o.series()))
              .toList(),
          openings.clearance(),
          openings.worst());
    }
  }

  static DrilledAnswer of(Study check, Plate plate, HubSpec hub, Measured measured, boolean bonus) {
    AsDrilledResult result = AsDrilled.of(plate, hub, measured, bonus);
    List<Finding> findings = DrilledReview.of(check.findings(), plate, hub, result);
    Verdict verdict =
        findings.stream()
            .map(Finding::verdict)
            .filter(v -> v.compareTo(result.verdict()) > 0)
            .max(Comparator.naturalOrder())
            .orElse(result.verdict());
    HubFitResult fit = result.fit();
    return new DrilledAnswer(
        check,
        measured.file(),
        verdict,
        result.odd().stream().map(OddHole::label).toList(),
        HubAnswer.of(fit),
        findings,
        result.holes().stream().map(HoleRow::of).toList(),
        result.fixed(),
        result.floating(),
        result.withBonus(),
        result.openings().stream().map(Way::of).toList(),
        result.cures().stream().map(HubAnswer.Remedy::of).toList(),
        result.survey().suspects().stream().map(s -> MeasureAnswer.suspect(measured, s)).toList(),
        result.notes());
  }

  /** The worse of the review's verdict and that of the plate as drilled. */
  public Verdict worst() {
    return verdict.compareTo(check.verdict()) > 0 ? verdict : check.verdict();
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    Json.Members drilled =
        Json.object()
            .with("file", file)
            .with("verdict", AnswerJson.word(verdict))
            .with("fit", AnswerJson.fit(fit))
            .with("fixedTolerance", fixed, DECIMALS)
            .with("floatingTolerance", floating, DECIMALS)
            .with("withBonus", withBonus)
            .with("holes", Json.array(holes, DrilledAnswer::hole))
            .with("openings", Json.array(openings, DrilledAnswer::way))
            .with("suspectReadings", Json.array(suspects, MeasureJson::suspect))
            .with("notes", Json.array(notes, Json::text));
    return JsonWriter.text(AnswerJson.check(check).with("asDrilled", drilled));
  }

  private static Json hole(HoleRow hole) {
    return Json.object()
        .with("label", hole.label())
        .with("x", hole.at().x(), DECIMALS)
        .with("y", hole.at().y(), DECIMALS)
        .with("diameter", hole.diameter(), DECIMALS)
        .with("position", hole.position(), DECIMALS)
        .with("unsure", hole.unsure(), DECIMALS)
        .with("tolerance", Json.maybe(hole.tolerance(), v -> Json.number(v, DECIMALS)))
        .with("keeps", hole.keeps());
  }

  private static Json way(Way way) {
    return Json.object()
        .with("open", Json.array(way.holes(), DrilledAnswer::opening))
        .with("clearance", way.clearance(), DECIMALS)
        .with("worstClearance", way.worst(), DECIMALS);
  }

  private static Json opening(OpeningRow o) {
    return Json.object()
        .with("hole", o.hole())
        .with("from", o.from(), DECIMALS)
        .with("to", o.to(), DECIMALS)
        .with("series", o.series());
  }
}
