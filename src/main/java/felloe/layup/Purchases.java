package felloe.layup;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The shopping list of a plan. */
final class Purchases {

  private Purchases() {}

  static List<Purchase> of(
      LayupChoice choice,
      StackPlan stack,
      ClothPlan cloth,
      ResinPlan resin,
      PotPlan pots,
      MouldPlan mould) {
    List<Purchase> list = new ArrayList<>();
    list.add(
        new Purchase(
            choice.cloth().title() + ", roll " + Numbers.brief(cloth.rollWidth(), 0) + " mm wide",
            Numbers.fixed(cloth.toBuy() / 1000, 1) + " m"));
    list.add(new Purchase(choice.resin().title() + ": resin", grams(resin.resin(), choice)));
    list.add(new Purchase(choice.resin().title() + ": hardener", grams(resin.hardener(), choice)));
    boolean two = mould.plates() == 2;
    boolean pressed = two && !mould.byWeight();
    list.add(
        new Purchase(
            pressed
                ? "plates: flat steel or aluminium, never glass, for the press"
                : two
                    ? "plates: float glass 10 mm or coated board 18 mm"
                    : "plate: float glass 8 mm or coated board 18 mm",
            mould.plates()
                + " of "
                + Numbers.brief(mould.width(), 0)
                + " x "
                + Numbers.brief(mould.height(), 0)
                + " mm"));
    if (stack.stops()) {
      list.add(
          new Purchase(
              "stops between the plates, outside of the blank, "
                  + Numbers.fixed(stack.thickness(), 2)
                  + " mm thick",
              "4"));
    }
    list.add(
        new Purchase(
            "release wax, " + mould.coats() + " coats on a new plate",
            "for " + Numbers.fixed(mould.coats() * mould.area() / 1e6, 2) + " m2"));
    if (mould.byWeight()) {
      list.add(
          new Purchase(
              "weights, spread evenly", Numbers.brief(Math.ceil(mould.weight()), 0) + " kg"));
    }
    if (choice.process().losses().absorbed() > 0) {
      String area = Numbers.fixed(mould.width() * mould.height() / 1e6, 2) + " m2 of each";
      String what =
          choice.process().together()
              ? "peel ply, flow mesh and bag film"
              : "peel ply, perforated film, breather and bag film";
      list.add(new Purchase(what, area));
      list.add(
          new Purchase(
              "sealant tape",
              Numbers.fixed(Math.ceil(2 * (mould.width() + mould.height()) / 100) / 10, 1) + " m"));
      list.add(
          new Purchase("vacuum pump with gauge, hose, bag fitting and resin trap", "1 of each"));
    }
    list.add(new Purchase("flat trays or cups", Integer.toString(pots.pots().size() + 1)));
    if (choice.process().losses().brush() > 0) {
      list.add(new Purchase("brush 50 mm, roller 100 mm, spares of both", "2 of each"));
    }
    list.add(
        new Purchase(
            "scale that reads to " + Numbers.brief(choice.scale(), 2) + " g, mixing sticks, timer",
            "1"));
    list.add(new Purchase("nitrile gloves, goggles, long sleeves", "several pairs of gloves"));
    list.add(new Purchase("mask P100 or FFP3 for cutting and sanding", "1"));
    return list;
  }

  private static String grams(double grams, LayupChoice choice) {
    return Numbers.brief(grams, choice.scale() < 1 ? 2 : 0) + " g";
  }
}
