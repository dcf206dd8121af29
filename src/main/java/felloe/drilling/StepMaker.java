package felloe.drilling;

import felloe.drilling.DrillStep.Turning;
import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps in which a hole of some size is made in a material. */
final class StepMaker {

  /** A pilot or a step must leave at least this share of the next drill's size to cut. */
  private static final double ROOM = 0.8;

  /** Height of a 118 degree drill point, as a share of the diameter: tan(31 degrees)/2. */
  private static final double POINT = Math.tan(Math.toRadians(31)) / 2;

  private final DrillTable table;
  private final DrillMaterial material;
  private final double thickness;
  private final boolean marked;

  /**
   * @param thickness of the stock, mm
   * @param marked whether centres are marked by hand; a machine finds them by itself
   */
  StepMaker(DrillTable table, DrillMaterial material, double thickness, boolean marked) {
    this.table = table;
    this.material = material;
    this.thickness = thickness;
    this.marked = marked;
  }

  /**
   * How a hole is guided by the hub itself.
   *
   * @param thread such as {@code M5}
   * @param drill that goes through the thread, mm
   */
  record Guide(String thread, double drill) {}

  /**
   * The steps for one size.
   *
   * @param diameter as drawn, mm
   * @param limits between what sizes it is good
   * @param guide the hub, where it guides the first drill
   */
  List<DrillStep> steps(double diameter, SizeLimits limits, Optional<Guide> guide) {
    return diameter > material.largestDrill() + Tolerances.ROUNDING
        ? opening(diameter)
        : drilled(diameter, limits, guide);
  }

  /** The pilot for a drill: a little wider than its web; empty when it would not be smaller. */
  Optional<Double> pilot(double drill) {
    double wanted = Math.max(table.pilotLeast(), table.pilotShare() * drill);
    return table.sizes().atOrAbove(wanted).filter(p -> p <= ROOM * drill);
  }

  private List<DrillStep> drilled(double diameter, SizeLimits limits, Optional<Guide> guide) {
    DrillSizes sizes = table.sizes();
    Size size = size(diameter, limits);
    double last = size.drill();
    List<DrillStep> steps = new ArrayList<>();
    double made = 0;
    Optional<Guide> used =
        guide.filter(g -> g.drill() <= ROOM * last + Tolerances.ROUNDING || g.drill() < last);
    if (used.isPresent()) {
      Guide g = used.get();
      made = g.drill();
      steps.add(
          DrillStep.byHand(
              Stage.MARK,
              "",
              "Prick the centres through the paper, to lay the plate on the hub by them."));
      steps.add(
          drill(
              Stage.PILOT,
              made,
              material.openingDrill(),
              "Through the hub's own thread ("
                  + g.thread()
                  + "), or through a bush plate made from it. The drill must slip through the"
                  + " thread; if it bites, take the next smaller one."));
    } else {
      steps.addAll(seat());
      Optional<Double> pilot = material.piloted() ? pilot(last) : Optional.empty();
      if (pilot.isPresent()) {
        made = pilot.get();
        steps.add(drill(Stage.PILOT, made, material.openingDrill(), material.through()));
      }
    }
    if (last > material.stepAbove() && (made > 0 || material.piloted())) {
      Optional<Double> step = sizes.atOrBelow(table.stepShare() * last);
      if (step.isPresent() && step.get() > made / ROOM) {
        made = step.get();
        steps.add(drill(Stage.STEP, made, material.openingDrill(), ""));
      }
    }
    String tool = made > 0 ? material.openingDrill() : material.drill();
    boolean first = steps.stream().noneMatch(s -> s.stage() == Stage.PILOT);
    String care = first ? material.through() : used.isPresent() ? "Off the hub." : "";
    String words = (size.words() + " " + care).strip();
    steps.add(drill(Stage.FINAL, last, tool, words));
    if (size.ream()) {
      steps.add(
          new DrillStep(
              Stage.REAM,
              "hand or adjustable reamer",
              Optional.of(diameter),
              Optional.empty(),
              "Turn it forward only, also on the way out, until the hole measures "
                  + mm(limits.least())
                  + " to "
                  + mm(limits.most())
                  + " mm."));
    }
    double wide = diameter + table.widen();
    steps.add(
        new DrillStep(
            Stage.COUNTERSINK,
            "90\u00b0 countersink",
            Optional.of(wide),
            Optional.of(turning(wide, table.edgeSpeed() * material.surfaceSpeed(), 0)),
            "Take the readings first: a broken edge reads too large. Then both faces, only to break"
                + " the edge."));
    return steps;
  }

  private List<DrillStep> mark() {
    return marked ? List.of(DrillStep.byHand(Stage.MARK, "", material.mark())) : List.of();
  }

  /** Mark and seat, the same for every hole. */
  private List<DrillStep> seat() {
    List<DrillStep> steps = new ArrayList<>(mark());
    material
        .spot()
        .filter(words -> marked)
        .ifPresent(words -> steps.add(DrillStep.byHand(Stage.SPOT, "", words)));
    return steps;
  }

  /**
   * The drill that makes a hole.
   *
   * @param drill its diameter, mm
   * @param ream whether the hole is reamed after it
   * @param words why it is not the drawn size; may be empty
   */
  private record Size(double drill, boolean ream, String words) {}

  private Size size(double diameter, SizeLimits limits) {
    DrillSizes sizes = table.sizes();
    if (sizes.has(diameter)) {
      return new Size(sizes.atOrBelow(diameter).orElseThrow(), false, "");
    }
    String none = "No standard drill makes " + mm(diameter) + " mm. ";
    Optional<Double> above = sizes.atOrAbove(diameter);
    if (above.isPresent() && above.get() <= limits.most() + Tolerances.ROUNDING) {
      return new Size(
          above.get(), false, none + "The next size is within the hole's limits: take that.");
    }
    Optional<Double> below = sizes.atOrBelow(diameter);
    if (below.isEmpty()) {
      return new Size(diameter, false, none + "It is smaller than the series: a special drill.");
    }
    return new Size(below.get(), true, none + "Drill the next size below, then ream.");
  }

  private List<DrillStep> opening(double diameter) {
    List<DrillStep> steps = new ArrayList<>();
    Opener opener = table.opener(material);
    Optional<Double> size = opener.size(diameter);
    if (size.isPresent()) {
      if (opener.pilot() > 0) {
        steps.addAll(seat());
        double pilot = opener.pilot();
        steps.add(drill(Stage.PILOT, pilot, material.drill(), "The saw's own guide runs in it."));
      } else {
        steps.addAll(mark());
      }
      steps.add(
          new DrillStep(
              Stage.OPEN,
              material.openerTitle(),
              size,
              Optional.of(turning(size.get(), material.openerSpeed(), 0)),
              "Slow and cool, from both faces if it can be: turn the plate over when the guide or"
                  + " point shows. A fly cutter at the slowest speed, or a router with a template,"
                  + " does it as well."));
      if (size.get() < diameter - 0.005) {
        steps.add(trim(diameter));
      }
    } else if (diameter < opener.sizes().get(0) + opener.under()) {
      double last = table.sizes().atOrBelow(material.largestDrill()).orElseThrow();
      steps.addAll(seat());
      if (material.piloted()) {
        pilot(last)
            .ifPresent(
                p -> steps.add(drill(Stage.PILOT, p, material.openingDrill(), material.through())));
      }
      String tool = material.piloted() ? material.openingDrill() : material.drill();
      steps.add(drill(Stage.FINAL, last, tool, "The largest drill that a press takes."));
      steps.add(trim(diameter));
    } else {
      chain(diameter, steps);
      steps.add(trim(diameter));
    }
    steps.add(DrillStep.byHand(Stage.DEBURR, "", material.deburr()));
    return steps;
  }

  private void chain(double diameter, List<DrillStep> steps) {
    DrillTable.Chain chain = table.chain();
    double circle = diameter - 2 * chain.clear() - chain.drill();
    int holes = (int) Math.floor(Math.PI * circle / (chain.drill() + chain.web()));
    steps.add(
        DrillStep.byHand(
            Stage.MARK,
            "",
            "Wider than the saws of usual sets. Cut it with a router and a template, or drill a row"
                + " of holes: scribe a circle of "
                + mm(circle)
                + " mm and mark "
                + holes
                + " centres on it, "
                + mm(circle * Math.sin(Math.PI / holes))
                + " mm apart."));
    steps.add(
        drill(
            Stage.CHAIN,
            chain.drill(),
            material.drill(),
            holes + " holes, then saw or file through what is left between them."));
  }

  private DrillStep trim(double diameter) {
    return new DrillStep(Stage.TRIM, "", Optional.of(diameter), Optional.empty(), material.trim());
  }

  private DrillStep drill(Stage stage, double diameter, String tool, String words) {
    Turning turning = turning(diameter, material.surfaceSpeed(), material.feed());
    return new DrillStep(stage, tool, Optional.of(diameter), Optional.of(turning), words);
  }

  private Turning turning(double diameter, double surfaceSpeed, double feed) {
    double reckoned = DrillTable.turns(diameter, surfaceSpeed);
    double setting = table.setting(reckoned);
    Optional<Double> seconds =
        feed > 0
            ? Optional.of(60 * (thickness + POINT * diameter) / (feed * setting))
            : Optional.empty();
    return new Turning(
        reckoned,
        setting,
        setting > reckoned * (1 + Tolerances.ROUNDING),
        feed > 0 ? Optional.of(feed) : Optional.empty(),
        seconds);
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2);
  }
}
