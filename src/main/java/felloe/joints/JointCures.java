package felloe.joints;

import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.hub.HubSpec;
import felloe.joints.JointCure.Figure;
import felloe.plate.BadInput;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Joint.Screw;
import felloe.plate.Joint.Washer;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * What would mend the joint that fails the most, figure by figure of the shape file: each is the
 * least change of that figure that was tried and by which every screw of the joint holds, by the
 * calculation that refused it. What a closer study puts on the screws is taken to shrink as their
 * circle and their number grow; it is not studied anew.
 */
public final class JointCures {

  /** Step of thickness, mm. */
  private static final double THICKER = 0.5;

  /** Steps of the circle's diameter: wide ones first, then those of a millimetre between two. */
  private static final int WIDE = 5;

  /** Nobody changes a figure by more than this. */
  private static final double MOST = 1.5;

  private final Plate plate;
  private final Optional<HubSpec> hub;
  private final List<ScrewDemand> more;
  private final PlannedJoint joint;
  private final List<JointCure> cures = new ArrayList<>();

  private JointCures(
      Plate plate, Optional<HubSpec> hub, List<ScrewDemand> more, PlannedJoint joint) {
    this.plate = plate;
    this.hub = hub;
    this.more = more;
    this.joint = joint;
  }

  /**
   * The cures; none when every screw holds, or when no figure mends it alone.
   *
   * @param judgement of the plate's screws
   * @param more what a closer study puts on them beside the plan's own loads
   */
  public static List<JointCure> of(
      Plate plate, Optional<HubSpec> hub, JointJudgement judgement, List<ScrewDemand> more) {
    if (judgement.met()) {
      return List.of();
    }
    JointCures cures = new JointCures(plate, hub, more, judgement.worst().orElseThrow().joint());
    cures.washer();
    cures.strength();
    cures.length();
    cures.thickness();
    if (cures.joint.role() == HoleRole.BOLT && plate.boltCircles().size() == 1) {
      cures.count(plate.boltCircles().get(0));
      cures.circle(plate.boltCircles().get(0));
    }
    return List.copyOf(cures.cures);
  }

  private void washer() {
    double now = joint.washer().map(WasherSize::diameter).orElse(0.0);
    Fasteners.standard()
        .washer(Washer.LARGE, joint.thread().name())
        .filter(large -> large.diameter() > now)
        .filter(large -> mends(List.of(), screw(joint.strength(), Optional.empty(), Washer.LARGE)))
        .ifPresent(large -> add("washer", Figure.WASHER, name(now), Entry.nameOf(Washer.LARGE)));
  }

  private String name(double washer) {
    return Entry.nameOf(washer == 0 ? Washer.NONE : Washer.PLAIN);
  }

  private void strength() {
    Fasteners.standard().classes().stream()
        .filter(c -> c.inch() == joint.strength().inch() && c.proof() > joint.strength().proof())
        .filter(c -> mends(List.of(), screw(c, Optional.empty(), null)))
        .findFirst()
        .ifPresent(c -> add("screw.class", Figure.STRENGTH, joint.strength().name(), c.name()));
  }

  private void length() {
    Fasteners.standard().lengths(joint.strength().inch()).stream()
        .filter(l -> l > joint.length() && l <= MOST * joint.length())
        .filter(l -> mends(List.of(), screw(joint.strength(), Optional.of(l), null)))
        .findFirst()
        .ifPresent(l -> add("screw.length", Figure.LENGTH, mm(joint.length()), mm(l)));
  }

  private void thickness() {
    double now = plate.stock().thickness();
    for (double t = THICKER * Math.floor(now / THICKER) + THICKER; t <= MOST * now; t += THICKER) {
      if (mends(plate.with(plate.stock().thick(t)), more, pinned())) {
        cures.add(new JointCure(joint.name(), "stock.thickness", Figure.THICKNESS, mm(now), mm(t)));
        return;
      }
    }
  }

  private void count(BoltCircle ring) {
    for (int n = ring.count() + 1; n <= 2 * ring.count(); n++) {
      if (mends(holes(ring, n, ring.pitchDiameter()), pinned())) {
        add(Figure.COUNT, "count", Integer.toString(ring.count()), Integer.toString(n));
        return;
      }
    }
  }

  private void circle(BoltCircle ring) {
    double now = ring.pitchDiameter();
    IntPredicate wide = d -> mends(holes(ring, ring.count(), d), pinned());
    int from = (int) Math.floor(now) + 1;
    IntStream.iterate(from, d -> d <= MOST * now, d -> d + WIDE)
        .filter(wide)
        .findFirst()
        .ifPresent(
            most -> {
              int first = Math.max(from, most - WIDE + 1);
              int least = IntStream.range(first, most).filter(wide).findFirst().orElse(most);
              add(Figure.CIRCLE, "pcd", mm(now), Integer.toString(least));
            });
  }

  private void add(Figure figure, String key, String from, String to) {
    cures.add(new JointCure(joint.name(), "bolt_circles[0]." + key, figure, from, to));
  }

  private void add(String key, Figure figure, String from, String to) {
    String path = joint.joint().path();
    cures.add(
        new JointCure(joint.name(), path.isEmpty() ? key : path + "." + key, figure, from, to));
  }

  /** All holes of the plate, with those of its ring so many and so far out. */
  private List<Hole> holes(BoltCircle ring, int count, double pitchDiameter) {
    List<Hole> holes = new ArrayList<>(plate.holes());
    List<Hole> old = plate.holes(HoleRole.BOLT);
    holes.removeAll(old);
    IntStream.range(0, count)
        .forEach(
            i -> {
              double angle = ring.firstAngle() + 2 * Math.PI * i / count;
              String label = i < old.size() ? old.get(i).label() : "hub " + (i + 1);
              holes.add(
                  new Hole(
                      label,
                      HoleRole.BOLT,
                      Point.polar(pitchDiameter / 2, angle),
                      ring.holeDiameter(),
                      ring.place()));
            });
    return holes;
  }

  /** The joint with the screw that was planned, so that no other thread is chosen. */
  private Joint pinned() {
    return screw(joint.strength(), Optional.empty(), null);
  }

  private Joint screw(StrengthClass strength, Optional<Double> length, Washer washer) {
    Screw now = joint.joint().screw();
    return joint
        .joint()
        .with(
            new Screw(
                Optional.of(joint.thread().name()),
                now.head(),
                Optional.of(strength.name()),
                length.or(now::length),
                now.surface(),
                now.sunk()),
            washer == null ? joint.joint().washer() : Optional.of(washer));
  }

  private boolean mends(List<Hole> holes, Joint other) {
    if (holes.isEmpty()) {
      return mends(plate, more, other);
    }
    try {
      Plate changed = plate.with(holes, plate.joints());
      double share =
          (double) plate.holes(HoleRole.BOLT).size() / changed.holes(HoleRole.BOLT).size();
      double arm =
          joint.holes().get(0).centre().norm()
              / changed.holes(HoleRole.BOLT).get(0).centre().norm();
      List<ScrewDemand> less =
          more.stream()
              .map(
                  d ->
                      new ScrewDemand(
                          d.hole(), d.cause(), d.tension() * share * arm, d.shear() * share * arm))
              .toList();
      return mends(changed, less, other);
    } catch (GeometryException noRoom) {
      return false;
    }
  }

  private boolean mends(Plate changed, List<ScrewDemand> demands, Joint other) {
    List<Joint> joints = new ArrayList<>(plate.joints());
    joints.remove(joint.joint());
    joints.add(other);
    try {
      Plate joined = changed.with(changed.holes(), joints);
      JointPlan plan = JointPlan.of(joined, hub);
      List<JudgedScrew> screws =
          plan.judged(joined, demands).screws().stream()
              .filter(s -> s.joint().name().equals(joint.name()))
              .toList();
      return !screws.isEmpty() && screws.stream().allMatch(s -> s.verdict() != Verdict.FAIL);
    } catch (BadInput impossible) {
      return false;
    }
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2);
  }
}
