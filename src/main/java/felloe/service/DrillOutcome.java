package felloe.service;

import felloe.drawing.Cautions;
import felloe.drawing.Stamp;
import felloe.drilling.DrillingPlan;
import felloe.joints.ClampedPart;
import felloe.joints.PlannedJoint;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * How the holes of a plate are drilled, and the screws that go in.
 *
 * @param study the plate
 * @param plan order of work, drills, speeds, what is measured
 */
public record DrillOutcome(Study study, DrillingPlan plan) {

  /** Plans it. */
  public static DrillOutcome of(Study study) {
    DrillingPlan plan = DrillingPlan.of(study.plate(), study.fit());
    for (PlannedJoint joint : study.joints().joints()) {
      if (joint.coned().filter(part -> part.name().equals(ClampedPart.PLATE)).isPresent()) {
        plan =
            plan.countersunk(
                joint.holes().stream().map(Hole::label).toList(),
                Math.toDegrees(joint.headSize().angle()),
                joint.headSize().diameter(),
                joint.headSize().coneDepth(joint.hole()));
      }
    }
    return new DrillOutcome(study, plan);
  }

  public Plate plate() {
    return study.plate();
  }

  /** All holes that are made at the bench, in the plate's order. */
  public List<Hole> holes() {
    return plate().benchHoles(Double.POSITIVE_INFINITY);
  }

  /** Whether not all screws of the hub enter the plate as it is drawn. */
  public boolean misses() {
    return study.fit().filter(fit -> !fit.enters()).isPresent();
  }

  /** Whether it must not be drilled yet. */
  public boolean stops() {
    return misses() || study.fails();
  }

  /** What is printed across pages with centre marks. */
  public Stamp stamp() {
    Stamp stamp = Stamp.of(Stamp.Act.DRILL, study.findings());
    boolean missesOnly = misses() && stamp.isNone();
    return missesOnly ? new Stamp(Stamp.Act.DRILL, 0, List.of("misses the hub")) : stamp;
  }

  /** Sentences that go with drilling. */
  public List<String> cautions() {
    List<String> cautions = new ArrayList<>(List.of(Cautions.USE));
    cautions.addAll(Cautions.cutting(plate().stock().material()));
    plan.cautions().stream().filter(c -> !cautions.contains(c)).forEach(cautions::add);
    return cautions;
  }
}
