package felloe.kit;

import felloe.cutting.CutLine;
import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutSetup;
import felloe.cutting.CutterTool;
import felloe.cutting.FeedTable;
import felloe.cutting.Operation;
import felloe.cutting.OperationFigures;
import felloe.cutting.SweepCheck;
import felloe.cutting.SweepResult;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The work of a machine on one plate or one sheet: planned, checked at the decimals that the files
 * will have, and ready to be written.
 *
 * @param plates what is cut, in the frame of the machine
 * @param plans one for each plate
 * @param steps all operations in the order in which they are done, with their figures
 * @param proof what the check measured at worst
 */
record CutWork(List<Plate> plates, List<CutPlan> plans, List<Step> steps, CutJob.Proof proof) {

  /** Decimals of the drawings that a beam follows: those of the SVG file, the coarser. */
  private static final int BEAM_DECIMALS = 5;

  /** An operation with its lengths and its time. */
  record Step(Operation operation, OperationFigures figures) {}

  /**
   * Plans and checks.
   *
   * @param plates in the frame of the machine, in the order of cutting
   * @param clamps what else must not be touched
   * @param cutter the width that is cut, mm
   * @throws BadInput with everything that is wrong for any of the plates, each thing once
   * @throws SweepRefusal when a plan does not pass its check: a fault of the program
   */
  static CutWork of(
      List<Plate> plates, List<Contour> clamps, CutOrder order, double cutter, FeedTable feeds) {
    List<CutPlan> plans = plans(plates, clamps, order, cutter, feeds);
    boolean router = order.process() == CutProcess.ROUTER;
    int decimals = router ? order.dialect().decimals() : BEAM_DECIMALS;
    Optional<CutJob.Proof> worst = Optional.empty();
    for (CutPlan plan : plans) {
      SweepResult result = SweepCheck.of(plan, decimals);
      if (!result.passed()) {
        throw new SweepRefusal(plan.plate().name(), result.failures());
      }
      CutJob.Proof proof =
          new CutJob.Proof(
              result.worstGouge(),
              result.worstRemaining(),
              result.worstArc(),
              result.deepest(),
              decimals);
      worst = Optional.of(worst.map(proof::worse).orElse(proof));
    }
    return new CutWork(plates, plans, steps(plans), worst.orElseThrow());
  }

  /** A plan that its own check does not pass. Nothing is written from it. */
  static final class SweepRefusal extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    SweepRefusal(String plate, List<Finding> failures) {
      super(words(plate, failures));
    }

    private static String words(String plate, List<Finding> failures) {
      StringBuilder text = new StringBuilder("the check of the paths refuses ").append(plate);
      for (Finding finding : failures) {
        text.append("; ").append(finding.rule()).append(' ').append(finding.subject());
        text.append(' ').append(Numbers.brief(finding.figure().value(), 5));
        text.append(' ').append(finding.figure().unit());
        finding.at().ifPresent(at -> text.append(" at ").append(at));
      }
      return text.toString();
    }
  }

  private static List<CutPlan> plans(
      List<Plate> plates, List<Contour> clamps, CutOrder order, double cutter, FeedTable feeds) {
    List<CutPlan> plans = new ArrayList<>();
    Set<Problem> found = new LinkedHashSet<>();
    for (Plate plate : plates) {
      List<Contour> keepOut = new ArrayList<>(clamps);
      plates.stream()
          .filter(other -> other != plate)
          .forEach(other -> keepOut.addAll(other.region().contours()));
      CutSetup setup = order.setup(plate, cutter, feeds);
      try {
        plans.add(CutPlan.of(plate, setup, keepOut));
      } catch (BadInput bad) {
        found.addAll(bad.problems());
      }
    }
    Problems problems = new Problems();
    found.forEach(problems::add);
    problems.throwIfAny();
    return plans;
  }

  /** Drilling first, each drill once for all plates; then plate after plate. */
  private static List<Step> steps(List<CutPlan> plans) {
    Map<CutterTool, List<Step>> drilling = new LinkedHashMap<>();
    List<Step> rest = new ArrayList<>();
    for (CutPlan plan : plans) {
      for (int i = 0; i < plan.operations().size(); i++) {
        Operation operation = plan.operations().get(i);
        Step step = new Step(named(operation, plan, plans.size()), plan.figures().get(i));
        if (operation.tool().kind() == CutterTool.Kind.DRILL) {
          drilling.computeIfAbsent(operation.tool(), tool -> new ArrayList<>()).add(step);
        } else {
          rest.add(step);
        }
      }
    }
    List<Step> all = new ArrayList<>();
    drilling.values().forEach(all::addAll);
    all.addAll(rest);
    return all;
  }

  private static Operation named(Operation operation, CutPlan plan, int plans) {
    String name = plan.plate().name();
    // Labels on a sheet begin with the plate's name already.
    boolean named = plans == 1 || operation.title().contains(" " + name + " ");
    String before = named ? "" : name + ": ";
    return new Operation(
        before + operation.title(), operation.tool(), operation.speed(), operation.moves());
  }

  /** All paths. */
  List<CutLine> lines() {
    return plans.stream().flatMap(plan -> plan.compensation().lines().stream()).toList();
  }

  /** Holes of a plan that are drilled: no path goes round them. */
  static List<Hole> drilled(CutPlan plan) {
    Set<String> cut = new LinkedHashSet<>();
    plan.compensation().lines().forEach(line -> cut.add(line.feature().label()));
    return plan.plate().holes().stream().filter(hole -> !cut.contains(hole.label())).toList();
  }

  /** What the maker should know, of all plates. */
  List<Note> notes() {
    return plans.stream().flatMap(plan -> plan.notes().stream()).toList();
  }

  OperationFigures total() {
    return plans.stream().map(CutPlan::total).reduce(OperationFigures.NONE, OperationFigures::plus);
  }

  CutPlan first() {
    return plans.get(0);
  }
}
