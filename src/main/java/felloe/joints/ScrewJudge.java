package felloe.joints;

import static felloe.joints.JointCheck.What;

import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Joint.InTapped;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Judges one screw by the handbook under all its demands. Forces are limit loads; what must not
 * part or slip is held at limit load, what must not break at ultimate load with the fitting factor.
 *
 * @param plate the plate
 * @param surroundings edges and neighbours of its holes
 * @param judging the factors
 * @param fasteners the strengths
 */
record ScrewJudge(
    Plate plate, ScrewSurroundings surroundings, Judging judging, Fasteners fasteners) {

  /** A force that matters, N: less is a rounding. */
  private static final double NOTHING = 0.01;

  /**
   * The screw of a hole.
   *
   * @param demands what it carries in each case
   * @param held whether it holds the plate on its hub, by clamping; a grip's screws bear
   */
  JudgedScrew judge(Hole hole, PlannedJoint joint, List<ScrewDemand> demands, boolean held) {
    ScrewDemand pulled = most(hole, demands, ScrewDemand::tension);
    ScrewDemand sheared = most(hole, demands, ScrewDemand::shear);
    List<JointCheck> checks = new ArrayList<>();
    if (held) {
      clamp(joint, pulled, checks);
      slip(joint, demands, hole, checks);
    }
    plate(hole, joint, sheared, checks);
    pullThrough(joint, pulled, checks);
    thread(joint, pulled, checks);
    screw(joint, demands, hole, checks);
    return new JudgedScrew(
        hole, joint, pulled.tension(), pulled.cause(), sheared.shear(), sheared.cause(), checks);
  }

  private static ScrewDemand most(
      Hole hole, List<ScrewDemand> demands, ToDoubleFunction<ScrewDemand> of) {
    ScrewDemand most = new ScrewDemand(hole.label(), "", 0, 0);
    for (ScrewDemand one : demands) {
      if (of.applyAsDouble(one) > of.applyAsDouble(most) + NOTHING) {
        most = one;
      }
    }
    return most;
  }

  /** Load times this is held against what breaks. */
  private double breaking() {
    return judging.ultimate().value() * judging.fitting().value();
  }

  /** The softest thing that is clamped decides how the clamp force fades. */
  private SourcedFigure kept(PlannedJoint joint) {
    SourcedFigure kept = judging.kept(plate.stock().material().kind());
    boolean parts = joint.parts().stream().anyMatch(ClampedPart::isGrip);
    SourcedFigure soft = judging.kept(MaterialKind.WOOD);
    return parts && soft.value() < kept.value() ? soft : kept;
  }

  private double clampLeft(PlannedJoint joint) {
    return kept(joint).value() * joint.torque().leastClamp();
  }

  /** Friction is that of all screws together: not every one of them has the driest thread. */
  private double usualClampLeft(PlannedJoint joint) {
    return kept(joint).value() * joint.torque().usualClamp();
  }

  /** Wood and plain plastic are for mock-ups; what only works loose there only warns. */
  private boolean driven() {
    return plate.stock().material().kind().driven();
  }

  private void clamp(PlannedJoint joint, ScrewDemand pulled, List<JointCheck> checks) {
    double factor = judging.fitting().value();
    if (pulled.tension() > NOTHING) {
      checks.add(
          new JointCheck(
              What.CLAMP_FORCE,
              pulled.tension() * factor,
              clampLeft(joint),
              "N",
              factor,
              pulled.cause(),
              true,
              driven(),
              "least clamp force at the starting torque, times "
                  + JointWords.ratio(kept(joint).value())
                  + ": "
                  + kept(joint).basis()));
    }
  }

  private void slip(
      PlannedJoint joint, List<ScrewDemand> demands, Hole hole, List<JointCheck> checks) {
    SourcedFigure friction = judging.friction(plate.stock().material().kind());
    double factor = judging.slip().value();
    JointCheck worst = null;
    for (ScrewDemand one : demands) {
      double holds = friction.value() * Math.max(0, usualClampLeft(joint) - one.lift());
      if (one.slide() > NOTHING) {
        JointCheck check =
            new JointCheck(
                What.SLIP,
                one.slide() * factor,
                holds,
                "N",
                factor,
                one.cause(),
                true,
                driven(),
                "friction " + JointWords.ratio(friction.value()) + ": " + friction.basis());
        worst = worst == null || check.ratio() < worst.ratio() ? check : worst;
      }
    }
    if (worst != null) {
      checks.add(worst);
    }
  }

  private void plate(Hole hole, PlannedJoint joint, ScrewDemand sheared, List<JointCheck> checks) {
    if (sheared.shear() <= NOTHING) {
      return;
    }
    double force = sheared.shear() * breaking();
    Allowables strength = fasteners.allowables(plate.stock().material());
    double t = plate.stock().asMade();
    ScrewSurroundings.Room room = surroundings.of(hole);
    double bears = Math.max(Tolerances.SAME_LENGTH, t - coneInPlate(joint));
    stress(What.BEARING, force / (joint.thread().diameter() * bears), strength.bearing(), sheared)
        .ifPresent(checks::add);
    stress(What.SHEAR_OUT, force / (2 * room.edge() * t), strength.shear(), sheared)
        .ifPresent(checks::add);
    stress(
            What.NET_SECTION,
            force / (Math.max(Tolerances.SAME_LENGTH, room.left()) * t),
            strength.tension(),
            sheared)
        .ifPresent(checks::add);
  }

  private Optional<JointCheck> stress(
      What what, double stress, SourcedFigure strength, ScrewDemand from) {
    return Optional.of(
        new JointCheck(
            what,
            stress,
            strength.value(),
            "MPa",
            breaking(),
            from.cause(),
            true,
            true,
            strength.basis()));
  }

  /** How much of the plate's own hole is a cone and does not bear, mm. */
  private static double coneInPlate(PlannedJoint joint) {
    return joint
        .coned()
        .filter(part -> part.name().equals(ClampedPart.PLATE))
        .map(part -> joint.headSize().coneDepth(joint.hole()) + joint.joint().screw().sunk())
        .orElse(0.0);
  }

  /** A plug of plate as wide as what lies on it; under a cone as wide as its middle. */
  private void pullThrough(PlannedJoint joint, ScrewDemand pulled, List<JointCheck> checks) {
    if (pulled.tension() <= NOTHING) {
      return;
    }
    double cone = coneInPlate(joint);
    double wide = joint.washer().map(WasherSize::diameter).orElse(joint.headSize().bearing());
    double round = cone > 0 ? (joint.headSize().diameter() + joint.hole()) / 2 : wide;
    double deep = plate.stock().asMade() - cone / 2 - joint.joint().screw().sunk();
    SourcedFigure shear = fasteners.allowables(plate.stock().material()).shear();
    checks.add(
        new JointCheck(
            What.PULL_THROUGH,
            pulled.tension()
                * breaking()
                / (Math.PI * round * Math.max(Tolerances.SAME_LENGTH, deep)),
            shear.value(),
            "MPa",
            breaking(),
            pulled.cause(),
            true,
            true,
            shear.basis()));
  }

  /**
   * The thread bears the clamp force or the hands' pull, whichever is more: one relieves the other.
   */
  private void thread(PlannedJoint joint, ScrewDemand pulled, List<JointCheck> checks) {
    if (joint.tapped().isEmpty()) {
      return;
    }
    InTapped into = joint.tapped().get();
    // The most that the torque clamps with is no limit load: how far it may grow is counted in K.
    double tight = joint.torque().clamp() * judging.fitting().value();
    boolean clamps = tight > pulled.tension() * breaking();
    double factor = clamps ? judging.fitting().value() : breaking();
    double force = clamps ? tight : pulled.tension() * breaking();
    ThreadShear areas = ThreadShear.of(joint.thread());
    // The first turn and the last hold little.
    double length = Math.max(0, joint.engagement() - joint.thread().pitch());
    double steel =
        judging.shearOfTensile().value() * joint.strength().tensile() * areas.external() * length;
    Optional<SourcedFigure> strength = judging.tapped(into.material());
    double hole = strength.map(s -> s.value() * areas.internal() * length).orElse(steel);
    boolean known = strength.isPresent() && into.depth().isPresent();
    checks.add(
        new JointCheck(
            What.THREAD_STRIP,
            force,
            Math.min(steel, hole),
            "N",
            factor,
            clamps ? "tightening" : pulled.cause(),
            known,
            true,
            (strength.isEmpty()
                    ? "an insert's hold is its maker's figure, and is not known"
                    : "shear areas of FED-STD-H28/2B; " + strength.get().basis())
                + (into.depth().isEmpty() ? "; the depth of thread was not measured" : "")));
  }

  /** Tension and shear at once, by the square of each. */
  private void screw(
      PlannedJoint joint, List<ScrewDemand> demands, Hole hole, List<JointCheck> checks) {
    double area = StrengthClass.stressArea(joint.thread());
    double tensile = joint.strength().tensile();
    double shear = judging.shearOfTensile().value();
    double most = 0;
    String cause = "";
    for (ScrewDemand one : demands) {
      double stress = Math.hypot(one.tension(), one.shear() / shear) / area;
      if (stress > most) {
        most = stress;
        cause = one.cause();
      }
    }
    if (most * area > NOTHING) {
      checks.add(
          new JointCheck(
              What.SCREW_STRENGTH,
              most * breaking(),
              tensile,
              "MPa",
              breaking(),
              cause,
              true,
              true,
              joint.strength().basis()));
    }
  }
}
