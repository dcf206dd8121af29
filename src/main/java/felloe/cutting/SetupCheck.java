package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.plate.FibreKind;
import felloe.plate.Hole;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Finds what is wrong with a setup before anything is planned, all of it in one run, and what is
 * unusual enough for a caution.
 */
final class SetupCheck {

  /** More passes than this are a slip. */
  private static final int MOST_PASSES = 200;

  private final Plate plate;
  private final CutSetup setup;
  private final CutBounds bounds;
  private final List<CutFault> faults;
  private final List<String> cautions = new ArrayList<>();
  private final boolean router;

  /**
   * Prepares.
   *
   * @param faults takes what is wrong
   */
  SetupCheck(Plate plate, CutSetup setup, CutBounds bounds, List<CutFault> faults) {
    this.plate = plate;
    this.setup = setup;
    this.bounds = bounds;
    this.faults = faults;
    this.router = setup.process() == CutProcess.ROUTER;
  }

  /**
   * Looks at everything.
   *
   * @return cautions: what is unusual, in sentences
   */
  List<String> run() {
    if (setup.process() == CutProcess.JIGSAW) {
      fault(
          CutFigure.PROCESS,
          "jigsaw",
          "is a saw by hand and has no machine file",
          "ask for router, laser or waterjet");
      return cautions;
    }
    CutSetup.Depths depths = setup.depths();
    CutSetup.Rates rates = setup.rates();
    if (router) {
      within(CutFigure.CUTTER, "cutter", setup.cutter(), 1, "mm");
    } else {
      String process = setup.process() == CutProcess.LASER ? "laser-kerf" : "waterjet-kerf";
      within(CutFigure.KERF, process, setup.cutter(), 1, "mm");
    }
    within(CutFigure.FEED, "feed", rates.feed(), 1, "mm/min");
    within(CutFigure.THICKNESS, "thickness", depths.stock(), plate.stock().thickness(), "mm");
    within(CutFigure.TRAVEL, "travel", rates.travel(), 1, "mm/min");
    within(CutFigure.LEAD, "lead", setup.entry().lead(), 1, "mm");
    heights();
    if (router) {
      spindle();
      passes();
      depths();
      tabs();
      drills();
      setup.vTool().ifPresent(this::vTool);
    } else {
      beam();
    }
    return cautions;
  }

  private void heights() {
    CutSetup.Depths depths = setup.depths();
    boolean good = within(CutFigure.APPROACH, "approach", depths.approach(), 1, "mm");
    good &= within(CutFigure.CLEARANCE, "clearance", depths.clearance(), 1, "mm");
    if (good && depths.clearance() <= depths.approach()) {
      fault(
          CutFigure.CLEARANCE,
          mm(depths.clearance()),
          "must be more than the approach height (" + mm(depths.approach()) + ")",
          "travel goes at the travel height, over the clamps");
    }
  }

  private void spindle() {
    CutSetup.Rates rates = setup.rates();
    boolean good = true;
    if (setup.flutes() < 1) {
      fault(CutFigure.FLUTES, Integer.toString(setup.flutes()), "must be at least 1", "");
      good = false;
    }
    good &= within(CutFigure.HIGHEST_SPEED, "highest-speed", rates.highestSpeed(), 1, "1/min");
    boolean believed = within(CutFigure.SPEED, "speed", rates.speed(), 1, "1/min");
    if (good && believed && rates.speed() > rates.highestSpeed() + 1e-9) {
      fault(
          CutFigure.SPEED,
          Numbers.brief(rates.speed(), 0) + " 1/min",
          "must be at most "
              + Numbers.brief(rates.highestSpeed(), 0)
              + " 1/min here (the spindle's highest speed)",
          "lower it, or say the highest speed of your spindle");
    }
    if (!good || !believed || !(setup.cutter() > 0) || !(rates.feed() > 0)) {
      return;
    }
    double teeth = rates.speed() * setup.flutes();
    setup
        .start()
        .ifPresent(
            start ->
                within(
                    CutFigure.FEED, "chip-load", rates.feed(), start.mostChip() * teeth, "mm/min"));
    within(CutFigure.RAMP_FEED, "ramp-feed", rates.rampFeed(), rates.feed(), "mm/min");
  }

  private void passes() {
    double ramp = Math.toDegrees(setup.entry().ramp());
    within(CutFigure.RAMP, "ramp", ramp, 1, "deg");
    double cutter = setup.cutter();
    if (!(cutter > 0)) {
      return;
    }
    double step = setup.depths().stepDown();
    double deep = setup.depths().stock() + setup.depths().breakthrough();
    boolean good = within(CutFigure.STEP_DOWN, "step-down", step, cutter, "mm");
    if (good && deep / step > MOST_PASSES) {
      fault(
          CutFigure.STEP_DOWN,
          mm(step),
          "makes more than " + MOST_PASSES + " passes of a cut " + mm(deep) + " deep",
          "take deeper passes, or a thicker cutter");
    }
    Optional<Double> told = setup.fluteLength();
    told.ifPresent(
        length -> {
          if (within(CutFigure.FLUTE_LENGTH, "flute-length", length, cutter, "mm")
              && length < deep) {
            fault(
                CutFigure.FLUTE_LENGTH,
                mm(length),
                "must be at least " + mm(deep) + " here (how deep the cut goes)",
                "the shank would rub above the edges: take a longer cutter");
          }
        });
    double usual = bounds.low("flute-length") * cutter;
    if (told.isEmpty() && deep > usual) {
      cautions.add(
          "The cut goes "
              + mm(deep)
              + " deep, and usual "
              + mm(cutter)
              + " end mills have edges of some "
              + mm(usual)
              + ": measure yours, a shank that rubs burns and breaks.");
    }
  }

  private void depths() {
    CutSetup.Depths depths = setup.depths();
    boolean good =
        within(CutFigure.BREAKTHROUGH, "breakthrough", depths.breakthrough(), 1, "mm")
            & within(CutFigure.BED, "bed", depths.bed(), 1, "mm");
    if (good && depths.breakthrough() > depths.bed()) {
      fault(
          CutFigure.BREAKTHROUGH,
          mm(depths.breakthrough()),
          "must be at most " + mm(depths.bed()) + " here (what may be cut below the stock)",
          "lower it, or put a thicker spoil board under the stock and say so");
    }
  }

  private void tabs() {
    CutSetup.Tabs tabs = setup.tabs();
    if (tabs.count() < 0) {
      fault(CutFigure.TABS, Integer.toString(tabs.count()), "must be at least 0", "");
    }
    if (tabs.count() > 0) {
      within(CutFigure.TAB_WIDTH, "tab-width", tabs.width(), 1, "mm");
      boolean good = within(CutFigure.TAB_HEIGHT, "tab-height", tabs.height(), 1, "mm");
      if (good && tabs.height() >= setup.depths().stock() && setup.depths().stock() > 0) {
        fault(
            CutFigure.TAB_HEIGHT,
            mm(tabs.height()),
            "must be less than the stock (" + mm(setup.depths().stock()) + ")",
            "a third of the stock, and 1 mm at most, is usual");
      }
    }
  }

  private void drills() {
    for (double size : setup.drills().sizes()) {
      if (!(size > 0)) {
        fault(CutFigure.DRILLS, mm(size), "must be more than 0", "");
      }
    }
    HoleWork work = new HoleWork(setup);
    boolean drilled = false;
    double deepest = 0;
    for (Hole hole : plate.holes()) {
      boolean drills = work.drilled(hole);
      drilled |= drills;
      if (drills) {
        deepest = Math.max(deepest, HoleWork.tip(hole.diameter()));
      } else if (setup.cutter() > 0 && !work.bored(hole)) {
        faults.add(hole.isSlotted() ? slotted(hole) : undone(hole, work));
      }
    }
    if (drilled) {
      double surface = setup.rates().drillSurfaceSpeed();
      within(CutFigure.DRILL_SURFACE_SPEED, "drill-surface-speed", surface, 1, "m/min");
      within(CutFigure.DRILL_FEED, "drill-feed", setup.rates().drillFeed(), 1, "mm a turn");
    }
    double below = setup.depths().breakthrough() + deepest;
    if (deepest > 0 && below > setup.depths().bed() + 1e-9) {
      fault(
          CutFigure.BED,
          mm(setup.depths().bed()),
          "must be at least "
              + mm(below)
              + " here: the points of the drills go that far below the stock",
          "put a thicker spoil board under the stock, or bore the holes instead of drilling them");
    }
  }

  private CutFault undone(Hole hole, HoleWork work) {
    return CutFault.at(
        hole.place(),
        hole.label(),
        mm(hole.diameter()),
        "can be neither drilled nor bored: "
            + work.whyNotDrilled()
            + ", and a "
            + mm(setup.cutter())
            + " cutter bores from "
            + mm(setup.cutter() * HoleWork.ROOM)
            + " up",
        "take a thinner cutter or a drill of this size");
  }

  private CutFault slotted(Hole hole) {
    double widest = Math.floor(100 * hole.diameter() / HoleWork.ROOM + 1e-6) / 100;
    return CutFault.at(
        hole.place(),
        hole.label(),
        mm(hole.diameter()),
        "is the width of a slot, which no drill makes, and a "
            + mm(setup.cutter())
            + " cutter cuts slots from "
            + mm(setup.cutter() * HoleWork.ROOM)
            + " up",
        "take a cutter of at most " + mm(widest));
  }

  private void vTool(VTool tool) {
    within(CutFigure.V_ANGLE, "v-angle", Math.toDegrees(tool.angle()), 1, "deg");
    within(CutFigure.V_TIP, "v-tip", tool.tip(), 1, "mm");
  }

  private void beam() {
    if (setup.tabs().count() != 0) {
      fault(CutFigure.TABS, Integer.toString(setup.tabs().count()), "work with a router only", "");
    }
    if (setup.process() != CutProcess.LASER) {
      return;
    }
    Material material = plate.stock().material();
    String name = (material.name() + " " + material.title()).toLowerCase(Locale.ROOT);
    if (List.of("pvc", "vinyl", "polyvinyl").stream().anyMatch(name::contains)) {
      faults.add(
          CutFault.at(
              plate.stock().place(),
              "stock.material",
              material.name(),
              "must never be cut by laser: its fumes are poisonous and eat the machine",
              "cut it with a router or a saw"));
    } else if (material.kind() == MaterialKind.LAMINATE && !setup.ownerConsents()) {
      faults.add(
          new CutFault(
              Optional.of(CutFigure.OWNER_CONSENTS),
              plate.stock().place(),
              "stock.material",
              material.name(),
              "must not be cut by laser without the say of the machine's owner: the resin's fumes"
                  + " are poisonous, and "
                  + harm(material.fibre().orElseThrow()),
              "router or waterjet cut it; if the owner agrees say so"));
    }
  }

  /** What a beam does to a laminate beside burning its resin. Common practice. */
  private static String harm(FibreKind fibre) {
    return switch (fibre) {
      case CARBON -> "carbon dust shorts out the machine";
      case GLASS -> "glass melts where it should part, while the resin round it chars and may burn";
      case OTHER -> "fibre dust may short out the machine";
    };
  }

  /** Whether a figure is not refused; an unusual one draws a caution. */
  private boolean within(CutFigure figure, String of, double value, double one, String unit) {
    if (!(one > 0)) {
      return false;
    }
    Optional<CutBounds.Judged> judged = bounds.judge(of, value, one, unit);
    judged.ifPresent(
        told -> {
          String text = Numbers.brief(value, 6) + " " + unit;
          if (told.refused()) {
            fault(figure, text, told.wanted(), told.cure());
          } else {
            cautions.add(
                figure.words().substring(0, 1).toUpperCase(Locale.ROOT)
                    + figure.words().substring(1)
                    + ", "
                    + text
                    + ", "
                    + told.wanted()
                    + ": "
                    + told.cure()
                    + ".");
          }
        });
    return judged.isEmpty() || !judged.get().refused();
  }

  private void fault(CutFigure figure, String value, String wanted, String cure) {
    faults.add(CutFault.of(figure, value, wanted, cure));
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }
}
