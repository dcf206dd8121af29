package felloe.drilling;

import felloe.drilling.DrillStep.Turning;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.hub.HubFitResult;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * In what order, with which drills and at which speeds the holes of a plate are made, and what a
 * calliper should read afterwards. The front door of this room. Lengths in mm.
 *
 * @param material how holes are made in the stock
 * @param hub name of the hub that the plate was fitted to
 * @param throughHub whether the hub holes have to be drilled through the hub or a bush plate: at
 *     the worst of the tolerances the screws do not enter holes drilled from the paper
 * @param before what to see to before the first hole, in order
 * @param groups in the order in which they are drilled: hub pattern, bore, grips, others
 * @param leftOut how many holes no group tells of, since there are more than {@link #MOST_GROUPS}
 * @param pilotDiameter of the pilot holes of the hub pattern, where there are any
 * @param afterPilot distances to look at while the hub pattern can still be drawn over
 * @param sizes holes whose diameters are measured in the end, in the order of their ring
 * @param notMeasured how many hub holes are not among them, since there are more than {@link
 *     #MOST_MEASURED}
 * @param readings distances to measure in the end, in the order of the form; their numbers go on
 *     from those of the sizes
 * @param others further distances to look at: bore and grips
 * @param plusMinus what a reading is good for
 * @param cautions how not to get hurt, beyond what holds for all work on a plate
 * @param bases where the figures come from, the material's drills and speeds first
 */
public record DrillingPlan(
    DrillMaterial material,
    Optional<String> hub,
    boolean throughHub,
    List<String> before,
    List<HoleGroup> groups,
    int leftOut,
    Optional<Double> pilotDiameter,
    List<DistanceCheck> afterPilot,
    List<SizeCheck> sizes,
    int notMeasured,
    List<DistanceCheck> readings,
    List<DistanceCheck> others,
    double plusMinus,
    List<String> cautions,
    List<String> bases) {

  /** A plan tells of so many groups at most: more are no work for a drill press by hand. */
  public static final int MOST_GROUPS = 24;

  /** So many holes at most are measured against each other: as many as a measured file takes. */
  public static final int MOST_MEASURED = 48;

  public DrillingPlan {
    before = List.copyOf(before);
    groups = List.copyOf(groups);
    afterPilot = List.copyOf(afterPilot);
    sizes = List.copyOf(sizes);
    readings = List.copyOf(readings);
    others = List.copyOf(others);
    cautions = List.copyOf(cautions);
    bases = List.copyOf(bases);
  }

  /**
   * The plan for a plate, with the program's own figures.
   *
   * @param fit how the plate meets its hub, where it has one
   */
  public static DrillingPlan of(Plate plate, Optional<HubFitResult> fit) {
    return new Planner(plate, fit, DrillTable.standard()).plan();
  }

  /**
   * The same plan with seats for countersunk heads, sunk when all else of their group is done.
   *
   * @param labels the holes that get one; others of their group do not
   * @param angle of the cone, degrees
   * @param across its diameter at the face, mm
   * @param depth from the face to where it meets the hole, mm
   */
  public DrillingPlan countersunk(List<String> labels, double angle, double across, double depth) {
    DrillTable table = DrillTable.standard();
    double reckoned = DrillTable.turns(across, table.edgeSpeed() * material.surfaceSpeed());
    double setting = table.setting(reckoned);
    Turning turning =
        new Turning(
            reckoned,
            setting,
            setting > reckoned * (1 + Tolerances.ROUNDING),
            Optional.empty(),
            Optional.empty());
    List<HoleGroup> sunk = new ArrayList<>();
    for (HoleGroup group : groups) {
      List<String> own = group.labels().stream().filter(labels::contains).toList();
      sunk.add(own.isEmpty() ? group : group.then(seat(group, own, turning, angle, across, depth)));
    }
    return new DrillingPlan(
        material,
        hub,
        throughHub,
        before,
        sunk,
        leftOut,
        pilotDiameter,
        afterPilot,
        sizes,
        notMeasured,
        readings,
        others,
        plusMinus,
        cautions,
        bases);
  }

  private static DrillStep seat(
      HoleGroup group,
      List<String> own,
      Turning turning,
      double angle,
      double across,
      double depth) {
    String which = own.size() == group.labels().size() ? "" : String.join(", ", own) + " alone: ";
    return new DrillStep(
        Stage.COUNTERSINK,
        Numbers.brief(angle, 0) + "\u00b0 countersink",
        Optional.of(across),
        Optional.of(turning),
        which
            + "For the countersunk heads, on the driver's face alone: "
            + Numbers.brief(across, 1)
            + " mm across, "
            + Numbers.brief(depth, 2)
            + " mm deep down to the hole, no deeper. Creep up on it with a screw.");
  }
}
