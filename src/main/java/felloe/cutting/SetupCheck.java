package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.plate.Hole;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.util.List;
import java.util.Locale;

/** Finds what is wrong with a setup before anything is planned, all of it in one run. */
final class SetupCheck {

  /** The steepest ramp that is still one, degrees. */
  private static final double STEEPEST = 45;

  private final Plate plate;
  private final CutSetup setup;
  private final Problems problems;
  private final boolean router;

  SetupCheck(Plate plate, CutSetup setup, Problems problems) {
    this.plate = plate;
    this.setup = setup;
    this.problems = problems;
    this.router = setup.process() == CutProcess.ROUTER;
  }

  /** Reports to the list. */
  void run() {
    if (setup.process() == CutProcess.JIGSAW) {
      add(
          "--process",
          "jigsaw",
          "is a saw by hand and has no machine file",
          "ask for router, laser or waterjet");
      return;
    }
    aboveZero(router ? "--cutter" : "--kerf", setup.cutter(), "mm");
    aboveZero("--feed", setup.rates().feed(), "mm/min");
    aboveZero("--thickness", setup.depths().stock(), "mm");
    aboveZero("--travel", setup.rates().travel(), "mm/min");
    notBelowZero("--lead", setup.entry().lead(), "mm");
    heights();
    if (router) {
      routing();
      depths();
      tabs();
      drills();
    } else {
      beam();
    }
  }

  private void routing() {
    if (setup.flutes() < 1) {
      add("--flutes", Integer.toString(setup.flutes()), "must be at least 1", "");
    }
    aboveZero("--speed", setup.rates().speed(), "1/min");
    aboveZero("--ramp-feed", setup.rates().rampFeed(), "mm/min");
    aboveZero("--step-down", setup.depths().stepDown(), "mm");
    double ramp = Math.toDegrees(setup.entry().ramp());
    if (!(ramp > 0 && ramp <= STEEPEST + 1e-9)) {
      add(
          "--ramp",
          Numbers.brief(ramp, 2) + " deg",
          "must be more than 0 and at most " + Numbers.brief(STEEPEST, 0) + " degrees",
          "an end mill must not go straight down; 3 to 10 degrees are usual");
    }
  }

  private void heights() {
    CutSetup.Depths depths = setup.depths();
    aboveZero("--approach", depths.approach(), "mm");
    if (depths.clearance() <= depths.approach()) {
      add(
          "--clearance",
          mm(depths.clearance()),
          "must be more than the approach height (" + mm(depths.approach()) + ")",
          "travel goes at the clearance height, over the clamps");
    }
  }

  private void depths() {
    CutSetup.Depths depths = setup.depths();
    notBelowZero("--breakthrough", depths.breakthrough(), "mm");
    notBelowZero("--bed", depths.bed(), "mm");
    if (depths.breakthrough() > depths.bed()) {
      add(
          "--breakthrough",
          mm(depths.breakthrough()),
          "must be at most " + mm(depths.bed()) + " here (--bed, what may be cut below the stock)",
          "lower it, or put a thicker spoil board under the stock and raise --bed");
    }
  }

  private void tabs() {
    CutSetup.Tabs tabs = setup.tabs();
    if (tabs.count() < 0) {
      add("--tabs", Integer.toString(tabs.count()), "must be at least 0", "");
    }
    if (tabs.count() > 0) {
      aboveZero("--tab-width", tabs.width(), "mm");
      aboveZero("--tab-height", tabs.height(), "mm");
      if (tabs.height() >= setup.depths().stock() && setup.depths().stock() > 0) {
        add(
            "--tab-height",
            mm(tabs.height()),
            "must be less than the stock (" + mm(setup.depths().stock()) + ")",
            "a third of the stock, and 1 mm at most, is usual");
      }
    }
  }

  private void drills() {
    for (double size : setup.drills().sizes()) {
      aboveZero("--drills", size, "mm");
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
        problems.add(
            new Problem(
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
                "take a thinner cutter or a drill of this size"));
      }
    }
    if (drilled) {
      aboveZero("--drill-surface-speed", setup.rates().drillSurfaceSpeed(), "m/min");
      aboveZero("--drill-feed", setup.rates().drillFeed(), "mm a turn");
      aboveZero("--highest-speed", setup.rates().highestSpeed(), "1/min");
    }
    double below = setup.depths().breakthrough() + deepest;
    if (deepest > 0 && below > setup.depths().bed() + 1e-9) {
      add(
          "--bed",
          mm(setup.depths().bed()),
          "must be at least "
              + mm(below)
              + " here: the points of the drills go that far below the stock",
          "put a thicker spoil board under the stock, or bore the holes with --largest-drill 0");
    }
  }

  private void beam() {
    if (setup.tabs().count() != 0) {
      add("--tabs", Integer.toString(setup.tabs().count()), "work with a router only", "");
    }
    if (setup.process() != CutProcess.LASER) {
      return;
    }
    Material material = plate.stock().material();
    String name = (material.name() + " " + material.title()).toLowerCase(Locale.ROOT);
    if (List.of("pvc", "vinyl", "polyvinyl").stream().anyMatch(name::contains)) {
      problems.add(
          new Problem(
              plate.stock().place(),
              "stock.material",
              material.name(),
              "must never be cut by laser: its fumes are poisonous and eat the machine",
              "cut it with a router or a saw"));
    } else if (material.kind() == MaterialKind.LAMINATE && !setup.ownerConsents()) {
      problems.add(
          new Problem(
              plate.stock().place(),
              "stock.material",
              material.name(),
              "must not be cut by laser without the say of the machine's owner: the resin's fumes"
                  + " are poisonous, and carbon dust shorts out the machine",
              "router or waterjet cut it; if the owner agrees say --owner-consents"));
    }
  }

  private void aboveZero(String option, double value, String unit) {
    if (!(value > 0)) {
      add(option, Numbers.brief(value, 4) + " " + unit, "must be more than 0", "");
    }
  }

  private void notBelowZero(String option, double value, String unit) {
    if (!(value >= 0)) {
      add(option, Numbers.brief(value, 4) + " " + unit, "must be at least 0", "");
    }
  }

  private void add(String option, String value, String wanted, String cure) {
    problems.add(new Problem(Place.ofOption(option, ""), "", value, wanted, cure));
  }

  private static String mm(double value) {
    return Numbers.brief(value, 3) + " mm";
  }
}
