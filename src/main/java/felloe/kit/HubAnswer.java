package felloe.kit;

import felloe.geometry.Point;
import felloe.hub.Cure;
import felloe.hub.HubFitResult;
import felloe.hub.Mismatch;
import felloe.hub.PilotFit;
import felloe.hub.ScrewFit;
import felloe.kit.HubCard.CalliperTable;
import felloe.plate.Hole;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the plate meets a hub, for showing. Lengths in mm, angles in degrees.
 *
 * @param hub the hub
 * @param drilling how the holes are taken to be made
 * @param verdict the outcome
 * @param enters whether all screws, and the spigot if there is one, enter as drawn
 * @param clearance room all round of the tightest screw as drawn; empty when there are fewer holes
 *     than screws
 * @param worst the same when every part is at the far end of its tolerance
 * @param turn how far the plate then sits turned on the hub, counter-clockwise as the driver sees
 *     it
 * @param step turned on by this, or a multiple, it fits as well; 360 when there is only one way
 * @param offCentre how far the hub's axis then lies from the plate's origin
 * @param screws each with its hole
 * @param spare bolt holes that no screw uses
 * @param pilot the spigot, when the hub has one
 * @param calliper what a calliper reads on the hub's screws and on the plate's holes
 * @param mismatches the figures that are off
 * @param cures what would mend it, the simplest first
 * @param complete false when there were too many holes to try every pairing
 */
public record HubAnswer(
    HubCard hub,
    String drilling,
    Verdict verdict,
    boolean enters,
    Optional<Double> clearance,
    Optional<Double> worst,
    Optional<Double> turn,
    double step,
    Optional<Double> offCentre,
    List<Screw> screws,
    List<String> spare,
    Optional<Pilot> pilot,
    List<CalliperTable> calliper,
    List<Difference> mismatches,
    List<Remedy> cures,
    boolean complete) {

  /** Copies the lists. */
  public HubAnswer {
    screws = List.copyOf(screws);
    spare = List.copyOf(spare);
    calliper = List.copyOf(calliper);
    mismatches = List.copyOf(mismatches);
    cures = List.copyOf(cures);
  }

  /**
   * A screw and the hole that it goes into.
   *
   * @param screw its label
   * @param thread such as {@code M5}
   * @param at where it stands on the plate
   * @param hole the hole's label
   * @param diameter of the hole
   * @param distance of the two centres
   * @param clearance room all round; negative when it does not enter
   * @param worst the same at the worst of the tolerances
   * @param series where the hole lies among the clearance series
   */
  public record Screw(
      String screw,
      String thread,
      Point at,
      String hole,
      double diameter,
      double distance,
      double clearance,
      double worst,
      String series) {
    static Screw of(ScrewFit fit) {
      return new Screw(
          fit.screw(),
          fit.thread().name(),
          fit.at(),
          fit.hole().label(),
          fit.hole().diameter(),
          fit.distance(),
          fit.clearance(),
          fit.worst(),
          fit.series().words());
    }
  }

  /**
   * The spigot.
   *
   * @param diameter of the spigot
   * @param opening label of the opening that it goes into, if there is one
   * @param clearance room all round, if there is an opening
   * @param enters whether it enters
   */
  public record Pilot(
      double diameter, Optional<String> opening, Optional<Double> clearance, boolean enters) {
    static Pilot of(PilotFit fit) {
      return new Pilot(fit.pilot(), fit.opening(), fit.clearance(), fit.enters());
    }
  }

  /**
   * A figure in which plate and hub differ.
   *
   * @param figure which one, such as {@code pitch circle diameter}
   * @param subject {@code plate}, or the label of a hole
   * @param plate the plate's
   * @param hub the hub's
   * @param unit of both; empty for a count
   */
  public record Difference(String figure, String subject, double plate, double hub, String unit) {
    static Difference of(Mismatch mismatch) {
      return new Difference(
          mismatch.kind().words(),
          mismatch.subject(),
          mismatch.plate(),
          mismatch.hub(),
          mismatch.unit());
    }
  }

  /**
   * What would mend it.
   *
   * @param words what to do
   * @param works whether it can be done
   */
  public record Remedy(String words, boolean works) {
    static Remedy of(Cure cure) {
      return new Remedy(cure.words(), cure.works());
    }
  }

  public static HubAnswer of(HubFitResult fit) {
    List<CalliperTable> calliper = new ArrayList<>(HubCard.tables(fit.rings()));
    fit.plateCalliper()
        .ifPresent(figures -> calliper.add(CalliperTable.of("holes in the plate", figures)));
    return new HubAnswer(
        HubCard.of(fit.hub()),
        fit.drilling().title(),
        fit.verdict(),
        fit.enters(),
        fit.clearance(),
        fit.worst(),
        fit.plateTurn().map(Math::toDegrees),
        Math.toDegrees(fit.step()),
        fit.offCentre(),
        fit.screws().stream().map(Screw::of).toList(),
        fit.spare().stream().map(Hole::label).toList(),
        fit.pilot().map(Pilot::of),
        calliper,
        fit.mismatches().stream().map(Difference::of).toList(),
        fit.cures().stream().map(Remedy::of).toList(),
        fit.complete());
  }
}
