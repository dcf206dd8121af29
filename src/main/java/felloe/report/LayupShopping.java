package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.layup.LayupPlan;
import felloe.layup.MouldPlan;
import felloe.layup.Process;
import java.util.ArrayList;
import java.util.List;

/** What a lay-up takes that is bought, or at hand already. */
public final class LayupShopping {

  private final LayupPlan plan;
  private final List<Item> items = new ArrayList<>();

  private LayupShopping(LayupPlan plan) {
    this.plan = plan;
  }

  /**
   * A line of the list.
   *
   * @param what in words
   * @param amount how much, with its unit
   */
  public record Item(String what, String amount) {}

  /** The list, what is used up first. */
  public static List<Item> of(LayupPlan plan) {
    LayupShopping list = new LayupShopping(plan);
    list.material();
    list.mould();
    list.bag();
    list.tools();
    return List.copyOf(list.items);
  }

  private void add(String what, String amount) {
    items.add(new Item(what, amount));
  }

  private void material() {
    String resin = plan.choice().resin().title();
    add(
        Phrase.of(
            "{}, roll {} wide",
            plan.choice().cloth().title(),
            brief(plan.cloth().rollWidth(), 0, "mm")),
        fixed(plan.cloth().toBuy() / 1000, 1, "m").text());
    add(resin + ": resin", LayupReport.weighed(plan, plan.resin().resin()).text());
    add(resin + ": hardener", LayupReport.weighed(plan, plan.resin().hardener()).text());
  }

  private void mould() {
    MouldPlan mould = plan.mould();
    boolean two = mould.plates() == 2;
    String what = "plate: float glass 8 mm or coated board 18 mm";
    if (two) {
      what =
          mould.weight().isPresent()
              ? "plates: float glass 10 mm or coated board 18 mm"
              : "plates: flat steel or aluminium, never glass, for the press";
    }
    add(
        what,
        Phrase.of("{} of {}", mould.plates(), LayupReport.size(mould.width(), mould.height())));
    if (plan.stack().stops()) {
      Quantity high = fixed(plan.stack().thickness(), 2, "mm");
      add(Phrase.of("stops between the plates, outside of the blank, {} thick", high), "4");
    }
    add(
        Phrase.of("release wax, {} coats on a new plate", mould.coats()),
        Phrase.of("for {}", fixed(mould.coats() * mould.area() / 1e6, 2, "m2")));
    mould.kilograms().ifPresent(kg -> add("weights, spread evenly", kg + " kg"));
  }

  private void bag() {
    Process process = plan.choice().process();
    MouldPlan mould = plan.mould();
    if (process.losses().absorbed() == 0) {
      return;
    }
    add(
        process.together()
            ? "peel ply, flow mesh and bag film"
            : "peel ply, perforated film, breather and bag film",
        Phrase.of("{} of each", fixed(mould.cover() / 1e6, 2, "m2")));
    add("sealant tape", fixed(mould.sealantTape() / 1000, 1, "m").text());
    add("vacuum pump with gauge, hose, bag fitting and resin trap", "1 of each");
  }

  private void tools() {
    add("flat trays or cups", Integer.toString(plan.pots().pots().size() + 1));
    if (plan.choice().process().losses().brush() > 0) {
      add("brush 50 mm, roller 100 mm, spares of both", "2 of each");
    }
    Quantity step = brief(plan.choice().scale(), 2, "g");
    add(Phrase.of("scale that reads to {}, mixing sticks, timer", step), "1");
    add("nitrile gloves, goggles, long sleeves", "several pairs of gloves");
    add("mask P100 or FFP3 for cutting and sanding", "1");
  }
}
