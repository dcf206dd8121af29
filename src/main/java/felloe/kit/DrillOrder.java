package felloe.kit;

import felloe.drilling.DistanceCheck;
import felloe.drilling.DrillStep;
import felloe.drilling.DrillStep.Turning;
import felloe.drilling.DrillingPlan;
import felloe.drilling.HoleGroup;
import felloe.drilling.SizeCheck;
import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The order of work at the drill, for showing. Lengths in mm.
 *
 * @param material that it is for, in words
 * @param hub name of the hub that the plate was fitted to
 * @param throughHub whether the hub holes are drilled through the hub or a bush plate
 * @param before what to see to before the first hole
 * @param groups holes that are made alike, in order
 * @param leftOut how many holes no group tells of
 * @param pilotDiameter of the pilot holes of the hub pattern
 * @param afterPilot distances to look at after the pilot drill
 * @param sizes diameters to measure in the end
 * @param notMeasured how many hub holes are not among them
 * @param readings distances to measure in the end
 * @param others further distances to look at
 * @param plusMinus what a reading is good for
 * @param sources where the figures come from
 */
public record DrillOrder(
    String material,
    Optional<String> hub,
    boolean throughHub,
    List<String> before,
    List<Group> groups,
    int leftOut,
    Optional<Double> pilotDiameter,
    List<Check> afterPilot,
    List<Size> sizes,
    int notMeasured,
    List<Check> readings,
    List<Check> others,
    double plusMinus,
    List<String> sources) {

  /** So many labels stand in a heading; more are cut short. */
  private static final int NAMED = 24;

  /** Copies the lists. */
  public DrillOrder {
    before = List.copyOf(before);
    groups = List.copyOf(groups);
    afterPilot = List.copyOf(afterPilot);
    sizes = List.copyOf(sizes);
    readings = List.copyOf(readings);
    others = List.copyOf(others);
    sources = List.copyOf(sources);
  }

  /**
   * Holes that are made alike.
   *
   * @param number from 1, in order of work
   * @param role what they are for
   * @param holes their labels, in the order in which they are drilled
   * @param diameter as drawn
   * @param least smallest good diameter
   * @param most largest good diameter
   * @param tolerance class of the limits, such as {@code H13}
   * @param zone diameter of the zone in which each centre should lie
   * @param zoneFrom where that comes from
   * @param steps in order
   * @param notes what else to know
   */
  public record Group(
      int number,
      String role,
      List<String> holes,
      double diameter,
      double least,
      double most,
      String tolerance,
      double zone,
      String zoneFrom,
      List<Step> steps,
      List<String> notes) {

    /** Copies the lists. */
    public Group {
      holes = List.copyOf(holes);
      steps = List.copyOf(steps);
      notes = List.copyOf(notes);
    }

    static Group of(int number, HoleGroup group) {
      return new Group(
          number,
          group.role().words(),
          group.labels(),
          group.diameter(),
          group.limits().least(),
          group.limits().most(),
          group.basis(),
          group.zone(),
          group.zoneWords(),
          group.steps().stream().map(Step::of).toList(),
          group.notes());
    }

    /** Which holes and how large, in one line. */
    public String heading() {
      boolean said = role.equals("bore") || role.equals("hole") || role.equals("round opening");
      String plural = holes.size() == 1 ? "" : "s";
      return number
          + ". "
          + Sentence.begin(role)
          + (said ? "" : " hole")
          + plural
          + " "
          + named()
          + ", \u00d8"
          + Numbers.brief(diameter, 2);
    }

    private String named() {
      if (holes.size() <= NAMED) {
        return String.join(", ", holes);
      }
      return String.join(", ", holes.subList(0, 3))
          + " to "
          + holes.get(holes.size() - 1)
          + " ("
          + holes.size()
          + " holes)";
    }

    /** What they should measure and where they should lie, in one sentence. */
    public String wanted() {
      return "Good from "
          + Numbers.fixed(least, 2)
          + " to "
          + Numbers.fixed(most, 2)
          + " mm ("
          + tolerance
          + "), centres within "
          + Numbers.brief(zone / 2, 3)
          + " mm of where they should be ("
          + zoneFrom
          + ").";
    }
  }

  /**
   * A step.
   *
   * @param stage such as {@code pilot}
   * @param tool in words; may be empty
   * @param diameter of the tool
   * @param turns as reckoned, 1/min
   * @param setting step of a drill press, 1/min
   * @param tooFast whether even the slowest step is faster than reckoned
   * @param feed mm a turn
   * @param seconds to go through at that feed
   * @param words what to do; may be empty
   */
  public record Step(
      String stage,
      String tool,
      Optional<Double> diameter,
      Optional<Double> turns,
      Optional<Double> setting,
      boolean tooFast,
      Optional<Double> feed,
      Optional<Double> seconds,
      String words) {
    static Step of(DrillStep step) {
      Optional<Turning> turning = step.turning();
      return new Step(
          step.stage().words(),
          step.tool(),
          step.diameter(),
          turning.map(Turning::reckoned),
          turning.map(Turning::setting),
          turning.map(Turning::tooFast).orElse(false),
          turning.flatMap(Turning::feed),
          turning.flatMap(Turning::seconds),
          step.words());
    }

    /** Tool and what to do, in sentences. */
    public String how() {
      List<String> parts = new ArrayList<>();
      if (!tool.isEmpty()) {
        parts.add(Sentence.begin(tool) + ".");
      }
      if (tooFast) {
        parts.add(
            "No faster than "
                + Numbers.fixed(turns.orElse(0.0), 0)
                + " 1/min: if the press does not turn that slowly, touch and lift, or take another"
                + " way.");
      }
      parts.add(words);
      return String.join(" ", parts).strip();
    }
  }

  /**
   * A distance to measure.
   *
   * @param number of its row
   * @param from label of one hole
   * @param to label of the other
   * @param over {@code outside} or {@code inside}
   * @param nominal what it reads when all is true
   * @param least smallest good reading
   * @param most largest good reading
   */
  public record Check(
      int number, String from, String to, String over, double nominal, double least, double most) {
    static Check of(DistanceCheck check) {
      return new Check(
          check.number(),
          check.from(),
          check.to(),
          check.over(),
          check.limits().nominal(),
          check.limits().least(),
          check.limits().most());
    }
  }

  /**
   * A diameter to measure.
   *
   * @param number of its row
   * @param hole its label
   * @param least smallest good diameter
   * @param most largest good diameter
   */
  public record Size(int number, String hole, double least, double most) {
    static Size of(SizeCheck size) {
      return new Size(size.number(), size.hole(), size.limits().least(), size.limits().most());
    }
  }

  static DrillOrder of(DrillingPlan plan) {
    List<Group> groups = new ArrayList<>();
    for (HoleGroup group : plan.groups()) {
      groups.add(Group.of(groups.size() + 1, group));
    }
    List<String> sources = new ArrayList<>();
    sources.add("drills and speeds in this material: " + plan.material().basis());
    sources.addAll(plan.bases());
    return new DrillOrder(
        plan.material().title(),
        plan.hub(),
        plan.throughHub(),
        plan.before(),
        groups,
        plan.leftOut(),
        plan.pilotDiameter(),
        plan.afterPilot().stream().map(Check::of).toList(),
        plan.sizes().stream().map(Size::of).toList(),
        plan.notMeasured(),
        plan.readings().stream().map(Check::of).toList(),
        plan.others().stream().map(Check::of).toList(),
        plan.plusMinus(),
        sources);
  }

  /** What is said of holes that no group tells of; empty when there are none. */
  public Optional<String> leftOutWords() {
    return leftOut == 0
        ? Optional.empty()
        : Optional.of(
            leftOut
                + " more holes are of further sizes and not told here: the order of work tells the"
                + " first "
                + groups.size()
                + " sizes. Their places are in the hole schedule.");
  }

  /** What is said of hub holes that are not measured; empty when all are. */
  public Optional<String> notMeasuredWords() {
    return notMeasured == 0
        ? Optional.empty()
        : Optional.of(
            "Only "
                + sizes.size()
                + " of the "
                + (sizes.size() + notMeasured)
                + " hub holes have rows here.");
  }
}
