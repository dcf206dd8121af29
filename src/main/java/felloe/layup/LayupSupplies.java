package felloe.layup;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/** What a lay-up takes that is bought, or at hand already. */
public final class LayupSupplies {

  private static final String EACH = "each";

  /** Pairs of gloves for a lay-up, changed when they are wet through: common practice. */
  private static final int PAIRS = 6;

  private final LayupPlan plan;
  private final List<Supply> all = new ArrayList<>();

  private LayupSupplies(LayupPlan plan) {
    this.plan = plan;
  }

  /** The list, what is used up first: cloth, resin, hardener, then what they are laid up on. */
  public static List<Supply> of(LayupPlan plan) {
    LayupSupplies list = new LayupSupplies(plan);
    list.material();
    list.mould();
    list.bag();
    list.tools();
    return List.copyOf(list.all);
  }

  private void material() {
    String resin = plan.choice().resin().title();
    String roll = Numbers.brief(plan.cloth().rollWidth(), 0);
    all.add(
        Supply.spent(
            plan.choice().cloth().title() + ", roll " + roll + " mm wide",
            plan.cloth().toBuy() / 1000,
            "m"));
    all.add(Supply.spent(resin + ": resin", plan.resin().resin(), "g"));
    all.add(Supply.spent(resin + ": hardener", plan.resin().hardener(), "g"));
  }

  private void mould() {
    MouldPlan mould = plan.mould();
    String what = "plate: float glass 8 mm or coated board 18 mm";
    if (mould.plates() == 2) {
      what =
          mould.weight().isPresent()
              ? "plates: float glass 10 mm or coated board 18 mm"
              : "plates: flat steel or aluminium, never glass, for the press";
    }
    String size =
        Numbers.brief(mould.width(), 1) + " x " + Numbers.brief(mould.height(), 1) + " mm";
    all.add(new Supply(what, mould.plates(), "", size, false));
    if (plan.stack().stops()) {
      String high = Numbers.fixed(plan.stack().thickness(), 2);
      all.add(
          Supply.tool("stops between the plates, outside of the blank, " + high + " mm thick", 4));
    }
    all.add(
        Supply.spent(
            "release wax, " + mould.coats() + " coats on a new plate",
            mould.coats() * mould.area() / 1e6,
            "m2"));
    mould
        .kilograms()
        .ifPresent(kg -> all.add(new Supply("weights, spread evenly", kg, "kg", "", false)));
  }

  private void bag() {
    Process process = plan.choice().process();
    MouldPlan mould = plan.mould();
    if (process.losses().absorbed() == 0) {
      return;
    }
    all.add(
        new Supply(
            process.together()
                ? "peel ply, flow mesh and bag film"
                : "peel ply, perforated film, breather and bag film",
            mould.cover() / 1e6,
            "m2",
            EACH,
            true));
    all.add(Supply.spent("sealant tape", mould.sealantTape() / 1000, "m"));
    all.add(
        new Supply("vacuum pump with gauge, hose, bag fitting and resin trap", 1, "", EACH, false));
  }

  private void tools() {
    all.add(Supply.spent("flat trays or cups", plan.pots().pots().size() + 1, ""));
    if (plan.choice().process().losses().brush() > 0) {
      all.add(new Supply("brush 50 mm, roller 100 mm, spares of both", 2, "", EACH, true));
    }
    String step = Numbers.brief(plan.choice().scale(), 2);
    all.add(Supply.tool("scale that reads to " + step + " g, mixing sticks, timer", 1));
    all.add(Supply.spent("nitrile gloves (and goggles, long sleeves)", PAIRS, "pairs"));
    all.add(Supply.tool("mask P100 or FFP3 for cutting and sanding", 1));
  }
}
