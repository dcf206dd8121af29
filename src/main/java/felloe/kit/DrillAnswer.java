package felloe.kit;

import felloe.drawing.Cautions;
import felloe.drilling.DrillingPlan;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.out.HoleCsv;
import felloe.out.JsonWriter;
import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.Study;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The hole schedule of a plate, the order of work, and the screws that go in.
 *
 * @param plate the plate
 * @param holes in the plate's order
 * @param order what is drilled when and with what
 * @param joints the screws
 * @param stop what speaks against drilling at all, in one sentence
 * @param cautions sentences that go with drilling
 */
public record DrillAnswer(
    Plate plate,
    List<Row> holes,
    DrillOrder order,
    JointAnswer joints,
    Optional<String> stop,
    List<String> cautions) {

  /** Copies the lists. */
  public DrillAnswer {
    holes = List.copyOf(holes);
    cautions = List.copyOf(cautions);
  }

  /**
   * A hole.
   *
   * @param label its label
   * @param role what it is for
   * @param at its centre, mm
   * @param radius distance from the hub axis, mm
   * @param angle direction from the hub axis, degrees counter-clockwise from +x, 0 to under 360; 0
   *     on the axis
   * @param diameter mm
   */
  public record Row(
      String label, String role, Point at, double radius, double angle, double diameter) {
    static Row of(Hole hole) {
      Point at = hole.centre();
      double degrees = at.norm() <= Tolerances.SAME_POINT ? 0 : Math.toDegrees(at.angle());
      // A hair below the x axis must not read as 360.
      double angle = Math.abs(degrees) < 1e-6 ? 0 : degrees < 0 ? degrees + 360 : degrees;
      return new Row(hole.label(), hole.role().words(), at, at.norm(), angle, hole.diameter());
    }
  }

  static DrillAnswer of(Study check, DrillingPlan plan, JointAnswer joints) {
    Plate plate = check.plate();
    Set<String> cautions = new LinkedHashSet<>(List.of(Cautions.USE));
    cautions.addAll(Cautions.cutting(plate.stock().material().kind()));
    cautions.addAll(plan.cautions());
    return new DrillAnswer(
        plate,
        plate.benchHoles(Double.POSITIVE_INFINITY).stream().map(Row::of).toList(),
        DrillOrder.of(plan),
        joints,
        plan.stop().or(() -> fails(check)),
        List.copyOf(cautions));
  }

  private static Optional<String> fails(Study check) {
    int fails = check.count(Verdict.FAIL);
    return fails == 0
        ? Optional.empty()
        : Optional.of(
            "DO NOT DRILL YET: the plate FAILS "
                + fails
                + (fails == 1 ? " check" : " checks")
                + " of its review. 'felloe check' tells more.");
  }

  /** Name of the form for readings. */
  String measuredName() {
    return new KitNames(plate.name()).measured();
  }

  /** The schedule as CSV text, lines ended by CR LF. */
  public String csv() {
    return new String(HoleCsv.write(plate), StandardCharsets.UTF_8);
  }

  /** The schedule as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(AnswerJson.drill(this));
  }
}
