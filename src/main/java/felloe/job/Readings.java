package felloe.job;

import felloe.drilling.DistanceCheck;
import felloe.drilling.SizeCheck;
import felloe.joints.PlannedJoint;
import felloe.layup.LayupPlan;
import felloe.layup.StackPlan;
import felloe.layup.TestStrips;
import felloe.load.ProofLoad;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is measured on the way, with what it should be.
 *
 * @param bars the check bars of the print; empty where none is needed
 * @param thickness of panel or sheet
 * @param mass of the bare plate, g
 * @param sizes diameters of the hub holes, in the order of the form
 * @param distances between hub holes, in the order of the form
 * @param strips test strips, in the order of their file; empty where none are broken
 * @param torques of the hub screws, when they are put in and a day later
 * @param proof weights and how far the rim sinks; empty where it was not reckoned, or nobody proves
 *     it
 */
public record Readings(
    Optional<Bars> bars,
    Thickness thickness,
    double mass,
    List<SizeCheck> sizes,
    List<DistanceCheck> distances,
    Optional<Strips> strips,
    List<Torque> torques,
    Optional<ProofLoad> proof) {

  /** Places where panel or sheet is measured: common practice. */
  static final int PLACES = 6;

  public Readings {
    sizes = List.copyOf(sizes);
    distances = List.copyOf(distances);
    torques = List.copyOf(torques);
  }

  /**
   * The check bars.
   *
   * @param length true length, mm
   * @param good how far a bar may be off, mm
   */
  public record Bars(double length, double good) {}

  /**
   * The thickness of the stock.
   *
   * @param planned mm
   * @param least that is to be expected of a lay-up, mm
   * @param most that is to be expected of a lay-up, mm
   * @param places at so many places
   */
  public record Thickness(double planned, OptionalDouble least, OptionalDouble most, int places) {}

  /**
   * Test strips.
   *
   * @param labels of each
   * @param width mm
   * @param thickness mm
   * @param length mm
   * @param span between the supports, mm
   */
  public record Strips(
      List<String> labels, double width, double thickness, double length, double span) {

    public Strips {
      labels = List.copyOf(labels);
    }

    private static Strips of(TestStrips strips) {
      List<String> labels = new ArrayList<>();
      for (int i = 1; i <= strips.asked(); i++) {
        labels.add("T" + i);
      }
      return new Strips(labels, strips.width(), strips.thickness(), strips.length(), strips.span());
    }
  }

  /**
   * The torque of a hub screw.
   *
   * @param hole its hole's label
   * @param thread such as {@code M5}
   * @param torque to start from, N m
   */
  public record Torque(String hole, String thread, double torque) {}

  /** What a job measures. */
  public static Readings of(Parts parts, WorkOrder order) {
    List<Torque> torques = new ArrayList<>();
    for (PlannedJoint joint : parts.joints().joints()) {
      if (joint.role() == HoleRole.BOLT && order.has(Act.SETTLE)) {
        for (Hole hole : joint.holes()) {
          torques.add(new Torque(hole.label(), joint.thread().name(), joint.torque().torque()));
        }
      }
    }
    return new Readings(
        order.has(Act.CHECK_PRINT)
            ? Optional.of(new Bars(parts.print().bar(), parts.print().good()))
            : Optional.empty(),
        thickness(parts),
        parts.mass(),
        parts.drilling().sizes(),
        parts.drilling().readings(),
        parts
            .laidUp()
            .map(plan -> plan.blank().strips())
            .filter(strips -> order.has(Act.BREAK_STRIPS))
            .map(Strips::of),
        torques,
        parts.proof().filter(proof -> order.has(Act.PROVE)));
  }

  private static Thickness thickness(Parts parts) {
    Optional<StackPlan> stack = parts.laidUp().map(LayupPlan::stack);
    return stack
        .map(
            s ->
                new Thickness(
                    s.thickness(),
                    OptionalDouble.of(s.least()),
                    OptionalDouble.of(s.most()),
                    PLACES))
        .orElseGet(
            () ->
                new Thickness(
                    parts.plate().stock().asMade(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    PLACES));
  }
}
