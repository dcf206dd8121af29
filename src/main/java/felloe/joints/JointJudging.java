package felloe.joints;

import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Judges every hub and grip screw of a plan. */
final class JointJudging {

  private JointJudging() {}

  /**
   * The judgement.
   *
   * @param more demands beside those of the group and of the grips
   */
  static JointJudgement of(
      Plate plate, List<PlannedJoint> joints, Optional<GroupLoad> load, List<ScrewDemand> more) {
    Judging judging = Judging.standard();
    Fasteners fasteners = Fasteners.standard();
    List<ScrewDemand> all = new ArrayList<>(more);
    load.ifPresent(l -> all.addAll(l.demands()));
    all.addAll(GripLoads.of(joints, fasteners, judging));
    Map<String, List<ScrewDemand>> byHole = new HashMap<>();
    for (ScrewDemand one : all) {
      byHole.computeIfAbsent(one.hole(), h -> new ArrayList<>()).add(one);
    }
    ScrewJudge judge = new ScrewJudge(plate, new ScrewSurroundings(plate), judging, fasteners);
    List<JudgedScrew> screws = new ArrayList<>();
    for (PlannedJoint joint : joints) {
      boolean hub = joint.role() == HoleRole.BOLT;
      if (hub || joint.role() == HoleRole.GRIP) {
        for (Hole hole : joint.holes()) {
          List<ScrewDemand> demands = byHole.getOrDefault(hole.label(), List.of());
          screws.add(judge.judge(hole, joint, demands, hub));
        }
      }
    }
    return new JointJudgement(
        screws, screws.isEmpty() ? List.of() : judging.factors(plate.stock().material().kind()));
  }
}
