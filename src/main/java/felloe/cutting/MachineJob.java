package felloe.cutting;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * The work of a machine on one plate or one sheet: planned, checked at the decimals that the files
 * will have, and ready to be written.
 *
 * @param plans one for each plate, in the order of cutting, in the frame of the machine
 * @param steps all operations in the order in which they are done, with their figures
 * @param proof what the check found
 * @param decimals places of the coordinates as checked
 */
public record MachineJob(List<CutPlan> plans, List<Step> steps, SweepResult proof, int decimals)
    implements CutWork {

  /** Copies the lists. */
  public MachineJob {
    plans = List.copyOf(plans);
    steps = List.copyOf(steps);
  }

  /** An operation with its lengths and its time. */
  public record Step(Operation operation, OperationFigures figures) {}

  /**
   * Plans and checks.
   *
   * @param plates in the frame of the machine, in the order of cutting
   * @param room the sheet that they lie on; empty for a plate alone, wherever its stock ends
   * @param setups how each is cut; all by one process with one cutter
   * @param decimals places of coordinates in the files
   * @throws CutRefused with everything that is wrong for any of the plates, each thing once
   * @throws Unproved when a plan does not pass its check: a fault of the program
   */
  public static MachineJob of(
      List<Plate> plates,
      Optional<SheetRoom> room,
      Function<Plate, CutSetup> setups,
      int decimals) {
    List<CutPlan> plans = plans(plates, room, setups);
    refuseIdle(plans);
    SweepResult proof = SweepCheck.of(plans, decimals);
    if (!proof.passed()) {
      List<Finding> loose =
          proof.failures().stream().filter(f -> f.rule().equals(SweepCheck.HOLD)).toList();
      if (plans.size() > 1 && loose.size() == proof.failures().size()) {
        throw new CutRefused(List.of(loose(loose.get(0))));
      }
      throw new Unproved(proof.failures());
    }
    return new MachineJob(plans, steps(plans), proof, decimals);
  }

  /** A V tool that nothing is there for is not passed over in silence. */
  private static void refuseIdle(List<CutPlan> plans) {
    Optional<VTool> tool = plans.get(0).setup().vTool();
    boolean used =
        plans.stream()
            .flatMap(plan -> plan.operations().stream())
            .anyMatch(operation -> operation.tool().kind() == CutterTool.Kind.V_TOOL);
    if (tool.isPresent() && !used) {
      throw new CutRefused(
          List.of(
              CutFault.of(
                  CutFigure.V_ANGLE,
                  Numbers.brief(Math.toDegrees(tool.get().angle()), 2) + " deg",
                  "has nothing to cut: no engraving on the front face, and no edge that this angle"
                      + " breaks",
                  "take it out; a chamfer wants 90 degrees")));
    }
  }

  private static CutFault loose(Finding finding) {
    return CutFault.of(
        CutFigure.SPACING,
        "",
        "is too small here: after all cuts "
            + finding.subject()
            + finding.at().map(MachineJob::at).orElse("")
            + " holds on to waste that is loose itself",
        "raise it, or leave the tabs out and hold the part down");
  }

  private static String at(Point p) {
    return " at (" + Numbers.fixed(p.x(), 1) + ", " + Numbers.fixed(p.y(), 1) + ")";
  }

  /** A plan that its own check does not pass. Nothing is written from it. */
  public static final class Unproved extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    Unproved(List<Finding> failures) {
      super(words(failures));
    }

    private static String words(List<Finding> failures) {
      StringBuilder text = new StringBuilder("the check of the paths refuses the plan");
      for (Finding finding : failures) {
        text.append("; ").append(finding.rule()).append(' ').append(finding.subject());
        text.append(' ').append(Numbers.brief(finding.figure().value(), 5));
        text.append(' ').append(finding.figure().unit());
        finding.at().ifPresent(at -> text.append(at(at)));
      }
      return text.toString();
    }
  }

  private static List<CutPlan> plans(
      List<Plate> plates, Optional<SheetRoom> room, Function<Plate, CutSetup> setups) {
    List<Contour> clamps =
        room.stream().flatMap(r -> r.keepOut().stream()).map(Contour::rectangle).toList();
    List<CutPlan> plans = new ArrayList<>();
    Set<CutFault> found = new LinkedHashSet<>();
    for (Plate plate : plates) {
      List<Contour> neighbours = new ArrayList<>();
      plates.stream()
          .filter(other -> other != plate)
          .forEach(other -> neighbours.addAll(other.region().contours()));
      try {
        plans.add(
            CutPlan.of(plate, setups.apply(plate), new Surroundings(clamps, neighbours, room)));
      } catch (CutRefused refused) {
        found.addAll(refused.faults());
      }
    }
    if (!found.isEmpty()) {
      throw new CutRefused(List.copyOf(found));
    }
    return plans;
  }

  /**
   * The upper face first, then drilling, each drill once for all plates; then plate after plate.
   */
  private static List<Step> steps(List<CutPlan> plans) {
    List<Step> all = new ArrayList<>();
    Map<CutterTool, List<Step>> drilling = new LinkedHashMap<>();
    List<Step> rest = new ArrayList<>();
    for (CutPlan plan : plans) {
      for (int i = 0; i < plan.operations().size(); i++) {
        Operation operation = plan.operations().get(i);
        Step step = new Step(named(operation, plan, plans.size()), plan.figures().get(i));
        if (operation.tool().kind() == CutterTool.Kind.V_TOOL) {
          all.add(step);
        } else if (operation.tool().kind() == CutterTool.Kind.DRILL) {
          drilling.computeIfAbsent(operation.tool(), tool -> new ArrayList<>()).add(step);
        } else {
          rest.add(step);
        }
      }
    }
    drilling.values().forEach(all::addAll);
    all.addAll(rest);
    return all;
  }

  private static Operation named(Operation operation, CutPlan plan, int plans) {
    // Labels of windows and engravings on a sheet begin with the plate's name already.
    boolean labelled =
        operation.title().contains(CutPlanner.WINDOW)
            || operation.title().startsWith(FaceWork.ENGRAVE);
    boolean named = plans == 1 || labelled;
    String before = named ? "" : plan.plate().name() + ": ";
    return new Operation(
        before + operation.title(), operation.tool(), operation.speed(), operation.moves());
  }

  /** All paths. */
  public List<CutLine> lines() {
    return plans.stream().flatMap(plan -> plan.compensation().lines().stream()).toList();
  }

  /** All tabs. */
  public List<CutTab> tabs() {
    return plans.stream().flatMap(plan -> plan.tabs().stream()).toList();
  }

  /** All that the cutter cannot reach. */
  public List<LeftOver> leftOvers() {
    return plans.stream().flatMap(plan -> plan.compensation().leftOvers().stream()).toList();
  }

  /** Holes of a plan that are drilled: no path goes round them. */
  public static List<Hole> drilled(CutPlan plan) {
    Set<String> cut = new LinkedHashSet<>();
    plan.compensation().lines().forEach(line -> cut.add(line.feature().label()));
    return plan.plate().holes().stream().filter(hole -> !cut.contains(hole.label())).toList();
  }

  /** What the maker should know, of all plates, and of a router's cutter in this material. */
  @Override
  public List<Note> notes() {
    List<Note> notes = new ArrayList<>();
    plans.forEach(plan -> notes.addAll(plan.notes()));
    first()
        .setup()
        .start()
        .ifPresent(
            start -> {
              Place stock = first().plate().stock().place();
              notes.add(new Note(stock, start.note()));
              start.wear().ifPresent(wear -> notes.add(new Note(stock, wear.note())));
            });
    return notes;
  }

  /** How not to get hurt: what is unusual in this job first. */
  @Override
  public List<String> cautions() {
    CutPlan one = first();
    List<String> usual = CutCautions.of(one.setup().process(), one.plate().stock().material());
    Set<String> cautions = new LinkedHashSet<>();
    plans.forEach(plan -> cautions.addAll(plan.cautions()));
    usual.forEach(cautions::remove);
    cautions.addAll(usual);
    return List.copyOf(cautions);
  }

  /** The whole estimate, without tool changes. */
  public OperationFigures total() {
    return plans.stream().map(CutPlan::total).reduce(OperationFigures.NONE, OperationFigures::plus);
  }

  /** The plan of the first plate: all share its process and its cutter. */
  public CutPlan first() {
    return plans.get(0);
  }
}
