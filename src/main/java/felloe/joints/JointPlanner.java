package felloe.joints;

import felloe.grips.GripPlan;
import felloe.grips.PlacedGrip;
import felloe.grips.Pocket;
import felloe.grips.PocketCheck;
import felloe.hub.HubSpec;
import felloe.hub.ScrewThread;
import felloe.hub.ScrewThreads;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Printer;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gives each hole that takes a screw its joint, and each joint its thread. */
final class JointPlanner {

  /** What a pocket leaves of a scale of wood or phenolic at least, mm: common practice. */
  private static final double SCALE_WALL = 2;

  private final Plate plate;
  private final Fasteners fasteners;
  private final ThreadChoice threads;
  private final Problems problems = new Problems();
  private final List<PlannedJoint> planned = new ArrayList<>();
  private final List<Unscrewed> unscrewed = new ArrayList<>();
  private final GripPlan grips;

  /** Whether the grips fit; else nothing is known of their screws. */
  private boolean gripsLie = true;

  /** Holes of one joint that take the same screw. */
  private record Alike(ScrewThread thread, Covering covering, List<Hole> holes) {}

  /**
   * What grips lay over a hole.
   *
   * @param front height on the driver's face to a tenth of a millimetre, mm; empty for none
   * @param back the same on the back
   * @param scale whether it is a flat scale
   */
  record Covering(Optional<Double> front, Optional<Double> back, boolean scale) {

    private static Covering of(GripPlan grips, Hole hole) {
      return new Covering(
          grips.thickAt(hole, Face.FRONT).map(Covering::tenths),
          grips.thickAt(hole, Face.BACK).map(Covering::tenths),
          GripPockets.grip(grips, hole)
              .filter(grip -> grip.grip().form() == Grip.Form.SCALE)
              .isPresent());
    }

    /** Screws come in whole millimetres and more; heights nearer to each other are one. */
    private static double tenths(double height) {
      return Math.rint(height * 10) / 10;
    }

    boolean none() {
      return front.isEmpty() && back.isEmpty();
    }
  }

  JointPlanner(Plate plate, Optional<HubSpec> hub, Fasteners fasteners) {
    this.plate = plate;
    this.fasteners = fasteners;
    this.threads = new ThreadChoice(hub);
    this.grips = grips();
  }

  /** Grips that do not fit are told together with what is wrong with the hub's joints. */
  private GripPlan grips() {
    try {
      return GripPlan.of(plate);
    } catch (BadInput bad) {
      gripsLie = false;
      problems.add(bad);
      return new GripPlan(plate, List.of());
    }
  }

  JointPlan plan() {
    Set<String> named = new HashSet<>();
    Set<HoleRole> written = new HashSet<>();
    for (Joint joint : plate.joints()) {
      named.addAll(joint.labels());
      joint.role().ifPresent(written::add);
    }
    List<Joint> joints = new ArrayList<>(plate.joints());
    for (HoleRole role : List.of(HoleRole.BOLT, HoleRole.GRIP)) {
      if (!written.contains(role)) {
        joints.add(Joint.usual(role));
      }
    }
    for (Joint joint : joints) {
      List<Hole> holes =
          plate.holes().stream()
              .filter(
                  hole ->
                      joint.labels().contains(hole.label())
                          || joint.role().filter(r -> r == hole.role()).isPresent()
                              && !named.contains(hole.label()))
              .filter(hole -> hole.role() != HoleRole.GRIP || gripsLie)
              .toList();
      if (!holes.isEmpty()) {
        add(joint, holes);
      }
    }
    planned.forEach(this::pockets);
    problems.throwIfAny();
    Optional<GroupLoad> load = GroupLoads.of(plate, planned, fasteners, Judging.standard());
    return new JointPlan(
        planned,
        grips,
        load,
        JointJudging.of(plate, planned, load, List.of()),
        unscrewed,
        planned.isEmpty() ? List.of() : JointCautions.of(plate.stock().material()));
  }

  private void add(Joint joint, List<Hole> holes) {
    Map<List<Object>, Alike> groups = new LinkedHashMap<>();
    for (Hole hole : holes) {
      Covering covering = Covering.of(grips, hole);
      thread(joint, hole)
          .ifPresent(
              thread ->
                  groups
                      .computeIfAbsent(
                          List.of(thread.name(), hole.diameter(), covering),
                          key -> new Alike(thread, covering, new ArrayList<>()))
                      .holes()
                      .add(hole));
    }
    int number = 1;
    for (Alike alike : groups.values()) {
      String name = name(joint) + (number > 1 ? " " + number : "");
      number++;
      new JointMaker(plate, fasteners, joint, name, alike.thread(), alike.holes(), alike.covering())
          .make(problems, unscrewed)
          .ifPresent(planned::add);
    }
  }

  /** Pockets must leave enough of the grips round them. */
  private void pockets(PlannedJoint joint) {
    for (Pocket pocket : GripPockets.of(grips, joint)) {
      PlacedGrip grip =
          grips.grips().stream()
              .filter(g -> g.holes().stream().anyMatch(h -> h.label().equals(pocket.hole())))
              .findFirst()
              .orElseThrow();
      boolean front = pocket.face() == Face.FRONT;
      PocketCheck.thin(grip, pocket, wall(grip.grip()))
          .ifPresent(
              thin ->
                  report(
                      joint.joint(),
                      front ? "screw.sunk" : pocket.fromPlate() ? "into.depth" : "into.sunk",
                      JointWords.mm(pocket.depth()),
                      thin,
                      "let it in less deep, move the hole, or make the grip larger"));
    }
  }

  private double wall(Grip grip) {
    return grip.form() == Grip.Form.SCALE
        ? SCALE_WALL
        : Requested.or(plate.making().printer(), Printer.USUAL).thinnestWall();
  }

  private static String name(Joint joint) {
    return joint
        .role()
        .map(role -> role == HoleRole.BOLT ? "hub" : "grip")
        .orElseGet(() -> String.join(", ", joint.labels()));
  }

  private Optional<ScrewThread> thread(Joint joint, Hole hole) {
    Optional<String> name = joint.screw().thread();
    if (name.isPresent()) {
      Optional<ScrewThread> known = ScrewThreads.find(name.get());
      if (known.isEmpty()) {
        String all = "known: " + String.join(", ", ScrewThreads.names());
        report(
            joint,
            "screw.thread",
            name.get(),
            "is not a known thread",
            Nearest.to(name.get(), ScrewThreads.names())
                .map(near -> "did you mean '" + near + "'? " + all)
                .orElse(all));
      }
      return known.filter(thread -> enters(joint, hole, thread));
    }
    Optional<ScrewThread> usual = threads.of(hole);
    if (usual.isEmpty()) {
      noThread(joint, hole);
      return usual;
    }
    return usual.filter(thread -> enters(joint, hole, thread));
  }

  private boolean enters(Joint joint, Hole hole, ScrewThread thread) {
    boolean enters = JointWords.enters(thread, hole.diameter());
    if (!enters && joint.screw().thread().isPresent()) {
      report(
          joint,
          "screw.thread",
          thread.name(),
          "must enter its holes: it is "
              + JointWords.mm(thread.diameter())
              + ", and "
              + hole.label()
              + " is "
              + JointWords.mm(hole.diameter()),
          "drill larger holes, or write a smaller thread");
    } else if (!enters) {
      without(hole, thread.name() + " does not enter a hole of " + JointWords.mm(hole.diameter()));
    }
    return enters;
  }

  private void noThread(Joint joint, Hole hole) {
    String why = "no metric screw suits a hole of " + JointWords.mm(hole.diameter());
    if (joint.written()) {
      report(joint, "holes", hole.label(), "needs a thread: " + why, "write screw.thread");
    } else {
      without(hole, why + "; write a joint with screw.thread");
    }
  }

  private void without(Hole hole, String why) {
    unscrewed.add(new Unscrewed(List.of(hole), hole.label(), why));
  }

  private void report(Joint joint, String key, String value, String wanted, String cure) {
    Place place = joint.place(key).orElse(Place.BUILT_IN);
    Problem problem = new Problem(place, joint.path() + "." + key, value, wanted, cure);
    problems.addOnce(problem);
  }
}
