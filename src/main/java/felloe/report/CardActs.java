package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.cutting.CutTab;
import felloe.cutting.CutterTool;
import felloe.cutting.JigsawPlan;
import felloe.cutting.LeftOver;
import felloe.cutting.MachineJob;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.drilling.DrillStep;
import felloe.drilling.HoleGroup;
import felloe.drilling.Stage;
import felloe.grips.PlacedGrip;
import felloe.job.Cutting;
import felloe.job.Parts;
import felloe.job.Readings;
import felloe.job.Task;
import felloe.joints.PlannedJoint;
import felloe.plate.EdgeFinish;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is done in each act of a job, told with its figures. */
final class CardActs {

  private final CardOutcome outcome;
  private final CardCalls calls;
  private final Parts parts;
  private final Plate plate;

  CardActs(CardOutcome outcome, CardCalls calls) {
    this.outcome = outcome;
    this.calls = calls;
    this.parts = outcome.job().parts();
    this.plate = outcome.plate();
  }

  /** An act in a few sentences. */
  String of(Task task) {
    return switch (task.act()) {
      case CHECK_PRINT -> check();
      case PRINT_TEMPLATE -> template();
      case WAX_MOULD, CUT_CLOTH, LAY_UP, CURE, POST_CURE, MEASURE_STOCK, CUT_STRIPS, BREAK_STRIPS ->
          new CardStockActs(outcome, calls).of(task.act());
      case STICK_TEMPLATE -> stick();
      case MARK_HOLES -> mark();
      case DRILL_HOLES -> drill(task.holes().orElseThrow());
      case MACHINE -> machine();
      case MEASURE_HOLES -> measure();
      case START_HOLES -> startHoles();
      case SAW_WINDOWS ->
          Phrase.of(
              "Saw out {}: on the rough line or inside it, {} from the finish line.",
              Phrase.list(parts.sawnWindows()),
              allowance());
      case SAW_OUTLINE ->
          Phrase.of(
              "Saw the outline last, on the rough line or outside it, {} from the finish line: as"
                  + " long as it stands there is something to clamp.",
              allowance());
      case FINISH -> finish();
      case ENGRAVE -> engrave();
      case BREAK_EDGES -> edges();
      case SEAL_EDGES -> seal();
      case WEIGH ->
          Phrase.of(
              "Weigh the bare plate: it should weigh {}. Write down what it does.",
              Quantity.grams(parts.mass()));
      case BOLT -> bolt();
      case SETTLE ->
          "Let the joint settle for a day, then tighten each hub screw again to its torque. Write"
              + " down how far each one turned.";
      case PROVE -> prove();
      case FIT_GRIPS -> grips();
      case FIT_BODIES -> CardBodies.fitting(plate);
      case LOCK ->
          "Take out one hub screw at a time, put locker on its thread, tighten it as the locker's"
              + " maker says, and put a mark over screw and plate. A locked screw is not turned"
              + " again.";
      case SIGN -> sign();
    };
  }

  private Quantity allowance() {
    return Quantity.mm(plate.making().roughAllowance());
  }

  private String check() {
    Readings.Bars bars = outcome.job().readings().bars().orElseThrow();
    return Phrase.of(
        "Print the check sheet at 100 %, not fitted to the page. Both bars must read {}, within {};"
            + " else give both readings back, and print again.",
        brief(bars.length(), 1, "mm"), brief(bars.good(), 1, "mm"));
  }

  private String template() {
    int tiles = outcome.template().grid().count();
    return Phrase.of(
        "Print the template at 100 %, {} {}. Measure both bars on every page that has them.{}",
        Phrase.count(parts.print().pages(), "page"),
        parts.print().paper(),
        tiles > 1
            ? Phrase.of(
                " Join {} by the numbered marks, and measure the joined sheet.",
                Phrase.count(tiles, "page"))
            : "");
  }

  private String stick() {
    Face face = plate.stock().templateFace();
    return Phrase.of(
        "Masking tape on the {} face of the stock, spray glue on the tape, paper on the glue, from"
            + " the middle outward.{}{}",
        face == Face.BACK ? "back" : "front",
        parts.ownLaminate() ? " The arrow 0\u00b0 fibre lies along the warp of ply 1." : "",
        parts.holesByMachine() ? " Lay its crosses on the holes that are made." : "");
  }

  private String mark() {
    int count = parts.drilling().groups().stream().mapToInt(g -> g.labels().size()).sum();
    return Phrase.of(
        "Mark the centres of {} before anything is cut. {}{}",
        Phrase.count(count, "hole"),
        parts.drilling().material().mark(),
        JigReport.offer(plate).map(offer -> " " + offer).orElse(""));
  }

  private String drill(HoleGroup group) {
    List<String> told = new ArrayList<>();
    told.add(
        Phrase.of("Drill {}: {}.", DrillReport.group(group), DrillReport.named(group.labels())));
    group.notes().forEach(told::add);
    List<String> steps =
        group.steps().stream()
            .filter(step -> !edge(step.stage()) && step.diameter().isPresent())
            .map(CardActs::drilled)
            .toList();
    told.add(Phrase.begin(String.join(", ", steps)) + ".");
    told.add(
        Phrase.of(
            "Good from {} to {}.",
            fixed(group.limits().least(), 2, ""),
            fixed(group.limits().most(), 2, "mm")));
    return String.join(" ", told);
  }

  private static boolean edge(Stage stage) {
    return stage == Stage.COUNTERSINK || stage == Stage.DEBURR;
  }

  private static String drilled(DrillStep step) {
    return Phrase.of(
        "{} \u00d8{}{}",
        step.stage().words(),
        brief(step.diameter().orElseThrow(), 2, ""),
        step.turning().map(t -> Phrase.of(" at {}", fixed(t.setting(), 0, "1/min"))));
  }

  private String machine() {
    String what = parts.sawn() ? "the holes" : "holes, windows and outline";
    if (!(parts.cutting() instanceof Cutting.Machine way)) {
      return Phrase.of("Have {} made by the machine.", what);
    }
    return way.router()
        .map(
            job ->
                Phrase.of(
                    "Have {} made by the machine. A router with a {} takes {} with the usual"
                        + " figures; dry-run it well above the stock first.",
                    what,
                    cutter(job),
                    fixed(job.total().minutes(), 1, "min")))
        .orElse(
            Phrase.of(
                "Have {} made by the machine, from the exact lines; the usual figures of a router"
                    + " do not suit this plate.",
                what));
  }

  private static String cutter(MachineJob job) {
    return job.steps().stream()
        .map(step -> step.operation().tool())
        .filter(tool -> tool.kind() == CutterTool.Kind.END_MILL)
        .map(CutterTool::name)
        .findFirst()
        .orElse("drill");
  }

  private String measure() {
    Readings readings = outcome.job().readings();
    return Phrase.of(
        "Measure {} and {} of the hub pattern before any edge is broken. Write them down, type them"
            + " in, and ask: {}",
        Phrase.count(readings.sizes().size(), "diameter"),
        Phrase.count(readings.distances().size(), "distance"),
        calls.measured());
  }

  private List<JigsawPlan.WasteHole> waste() {
    return parts.cutting() instanceof Cutting.Saw saw ? saw.holes() : List.of();
  }

  private String startHoles() {
    List<JigsawPlan.WasteHole> holes = waste();
    List<String> sizes =
        holes.stream()
            .map(hole -> "\u00d8" + brief(hole.diameter(), 2, "").text())
            .distinct()
            .toList();
    boolean shown = plate.making().blade().isPresent();
    return Phrase.of(
        "Drill {} in the waste for the saw to start and turn in, {} mm: they touch the rough line"
            + " and do not cross it.{}",
        Phrase.count(holes.size(), "hole"),
        Phrase.list(sizes),
        shown ? " The template shows them." : "");
  }

  private String finish() {
    if (parts.sawn()) {
      return Phrase.of(
          "File and sand {} off, to the finish line; the last of it with a block.", allowance());
    }
    Optional<MachineJob> job =
        parts.cutting() instanceof Cutting.Machine way ? way.router() : Optional.empty();
    List<CutTab> tabs = job.map(MachineJob::tabs).orElse(List.of());
    List<LeftOver> left = job.map(MachineJob::leftOvers).orElse(List.of());
    return Phrase.of(
        "Cut the tabs by hand{} and file them flush.{}",
        tabs.isEmpty() ? "" : Phrase.of(" ({} with the usual figures)", tabs.size()),
        left.isEmpty()
            ? ""
            : Phrase.of(" File off what the cutter cannot reach, {}.", CutMap.places(left.size())));
  }

  private String engrave() {
    int front = plate.engravings(Face.FRONT).size();
    int back = plate.engravings(Face.BACK).size();
    List<String> faces = new ArrayList<>();
    if (front > 0) {
      faces.add(front + " on the front face");
    }
    if (back > 0) {
      faces.add(back + " on the back face");
    }
    return Phrase.of("Cut the engravings, shallow: {}.", Phrase.list(faces));
  }

  private String edges() {
    EdgeFinish edges = plate.making().edges();
    String rims =
        edges.chamfer() > 0
            ? Phrase.of("a chamfer of {} at 45\u00b0", Quantity.mm(edges.chamfer()))
            : edges.edgeBreak() > 0
                ? Quantity.mm(edges.edgeBreak()).text()
                : "only the sharpness taken off";
    List<String> holes =
        parts.holesByMachine()
            ? List.of()
            : parts.drilling().groups().stream().flatMap(group -> sunk(group).stream()).toList();
    return Phrase.of(
        "Break every edge on both faces; of outline and windows {}.{}",
        rims,
        holes.isEmpty() ? "" : Phrase.of(" Countersink {}.", String.join("; ", holes)));
  }

  private List<String> sunk(HoleGroup group) {
    List<String> order = outcome.drill().holes().stream().map(Hole::label).toList();
    List<String> labels = order.stream().filter(group.labels()::contains).toList();
    List<String> told = new ArrayList<>();
    for (DrillStep step : group.steps()) {
      if (step.stage() == Stage.COUNTERSINK) {
        String size = Phrase.of("\u00d8{}", brief(step.diameter().orElseThrow(), 2, ""));
        told.add(told.isEmpty() ? PlannedJoint.inShort(labels) + " to " + size : step.words());
      }
    }
    return told;
  }

  private String seal() {
    return parts.ownLaminate() || plate.stock().material().fibre().isPresent()
        ? "Seal the cut edges with two thin coats of mixed resin: open fibres draw water and shed"
            + " splinters. Let it set."
        : "Seal the cut edges with two coats of varnish, and let it dry.";
  }

  private List<PlannedJoint> joints(HoleRole role) {
    return parts.joints().joints().stream().filter(j -> j.role() == role).toList();
  }

  private String bolt() {
    List<String> told = new ArrayList<>();
    if (parts.driven()) {
      told.add("Screw the bare plate to its hub, dry, crosswise, in two goes.");
    } else {
      told.add("Try it on its hub, screws turned in lightly.");
    }
    for (PlannedJoint joint : joints(HoleRole.BOLT)) {
      told.add(screws(joint));
    }
    JointReport.notes(parts.joints()).stream()
        .filter(note -> joints(HoleRole.BOLT).stream().anyMatch(j -> note.startsWith(j.name())))
        .forEach(note -> told.add(Phrase.begin(note)));
    outcome.study().joints().unscrewed().stream()
        .filter(one -> one.holes().get(0).role() == HoleRole.BOLT)
        .forEach(one -> told.add(Phrase.begin(one.words())));
    return String.join(" ", told);
  }

  private String screws(PlannedJoint joint) {
    return Phrase.of(
        "{}: {}, class {}, to {}.",
        joint.labels(),
        JointReport.screws(joint),
        joint.strength().name(),
        JointReport.torque(joint.torque().torque()));
  }

  private String prove() {
    return outcome
        .job()
        .parts()
        .proof()
        .filter(proof -> !proof.hangs().isEmpty())
        .map(ProofReport::inShort)
        .orElseGet(
            () ->
                outcome.load().isPresent()
                    ? "NOT YET: what loads do to it is not as wanted, or cannot be proved by a"
                        + " weight. Change the plate first."
                    : "Hang weights from the rim, off the car, and read how far it sinks. Which,"
                        + " and how far: "
                        + calls.proof());
  }

  private String grips() {
    double scale = plate.making().gripScale();
    List<String> told = new ArrayList<>();
    List<PlacedGrip> grips = parts.joints().grips().grips();
    told.add(
        !grips.isEmpty()
            ? described(grips)
            : scale > 0
                ? Phrase.of("Put the grips on: a scale of {} on each face.", Quantity.mm(scale))
                : "Put the grips on.");
    List<PlannedJoint> screws = joints(HoleRole.GRIP);
    screws.forEach(joint -> told.add(screws(joint)));
    if (screws.isEmpty()) {
      told.add("No screws are planned for them: how they hold is yours.");
    }
    return String.join(" ", told);
  }

  private static String described(List<PlacedGrip> grips) {
    boolean bonded = grips.stream().anyMatch(g -> g.grip().bonded());
    return Phrase.of(
        "Put the grips on: {}.{}",
        String.join(
            "; ",
            grips.stream()
                .map(
                    g ->
                        Phrase.of(
                            "{} of {}, {} of the rim",
                            g.grip().label(),
                            g.grip().material().title(),
                            Quantity.fixed(g.run().length(), 0, "mm")))
                .toList()),
        bonded
            ? " Bonded ones: roughen and wipe both faces, glue the whole face, clamp by the screws,"
                + " let it cure."
            : "");
  }

  private String sign() {
    return parts.driven()
        ? "Read the open findings, mend or accept each, and sign, both of you. Hang the inspection"
            + " card beside the car."
        : "Write MOCK-UP, NOT TO BE DRIVEN WITH on both faces, and sign.";
  }
}
