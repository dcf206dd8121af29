package felloe.kit;

import felloe.cutting.CutLine;
import felloe.cutting.CutPlan;
import felloe.cutting.CutProcess;
import felloe.cutting.CutSetup;
import felloe.cutting.CutTab;
import felloe.cutting.CutterTool;
import felloe.cutting.FeedTable;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import felloe.cutting.OperationFigures;
import felloe.cutting.SweepCheck;
import felloe.cutting.SweepResult;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.plate.BadInput;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Place;
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

  /** Least material behind a tab, mm; common practice. */
  private static final double WALL = 0.5;

  /** An operation with its lengths and its time. */
  record Step(Operation operation, OperationFigures figures) {}

  /**
   * Plans and checks.
   *
   * @param plates in the frame of the machine, in the order of cutting
   * @param clamps what else must not be touched
   * @param cutter the width that is cut, mm
   * @throws BadInput with everything that is wrong for any of the plates, each thing once; a tab
   *     that another part's cut would loosen is one
   * @throws SweepRefusal when a plan does not pass its check: a fault of the program
   */
  static CutWork of(
      List<Plate> plates, List<Contour> clamps, CutOrder order, double cutter, FeedTable feeds) {
    List<CutPlan> plans = plans(plates, clamps, order, cutter, feeds, false);
    Problems loose = looseTabs(plans);
    if (!loose.none() && !order.asked("--lead")) {
      // Arcs that lead in reach beyond a part's own slot.
      plans = plans(plates, clamps, order, cutter, feeds, true);
      loose = looseTabs(plans);
    }
    loose.throwIfAny();
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

  /** Tabs of one part that the cut of another takes away what they hold on to. */
  private static Problems looseTabs(List<CutPlan> plans) {
    Problems problems = new Problems();
    for (CutPlan plan : plans) {
      for (CutTab tab : plan.tabs()) {
        double clear = plan.setup().cutter() + WALL;
        plans.stream()
            .filter(other -> other != plan && reaches(other, tab, clear))
            .findFirst()
            .ifPresent(other -> problems.add(loose(plan, tab, other)));
      }
    }
    return problems;
  }

  private static boolean reaches(CutPlan plan, CutTab tab, double clear) {
    Box near = Box.of(tab.at(), tab.at()).grown(clear);
    return plan.operations().stream()
        .flatMap(operation -> operation.moves().stream())
        .anyMatch(
            move ->
                move instanceof Move.Cut cut
                    && Math.min(cut.fromZ(), cut.toZ()) < tab.top()
                    && cut.along().box().touches(near)
                    && cut.along().distance(tab.at()) < clear);
  }

  private static Problem loose(CutPlan plan, CutTab tab, CutPlan other) {
    return new Problem(
        Place.ofOption("--spacing", ""),
        "",
        "",
        "is too small here: the cut of "
            + other.plate().name()
            + " takes away what a tab of "
            + plan.plate().name()
            + " at "
            + tab.at()
            + " holds on to",
        "raise it, or lower --lead");
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
      List<Plate> plates,
      List<Contour> clamps,
      CutOrder order,
      double cutter,
      FeedTable feeds,
      boolean onThePath) {
    List<CutPlan> plans = new ArrayList<>();
    Set<Problem> found = new LinkedHashSet<>();
    for (Plate plate : plates) {
      List<Contour> keepOut = new ArrayList<>(clamps);
      plates.stream()
          .filter(other -> other != plate)
          .forEach(other -> keepOut.addAll(other.region().contours()));
      CutSetup usual = order.setup(plate, cutter, feeds);
      CutSetup.Entry bare = new CutSetup.Entry(usual.entry().ramp(), 0);
      CutSetup setup = onThePath ? usual.with(bare) : usual;
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
    List<Note> notes = new ArrayList<>();
    if (plans.size() > 1
        && first().setup().process() == CutProcess.ROUTER
        && first().setup().entry().lead() == 0) {
      notes.add(
          new Note(
              plates.get(0).stock().place(),
              "the cutter enters on the path itself, without leads: they would cut into what holds"
                  + " the neighbours' tabs; file the mark where it enters, or raise --spacing"));
    }
    plans.forEach(plan -> notes.addAll(plan.notes()));
    return notes;
  }

  OperationFigures total() {
    return plans.stream().map(CutPlan::total).reduce(OperationFigures.NONE, OperationFigures::plus);
  }

  CutPlan first() {
    return plans.get(0);
  }
}
