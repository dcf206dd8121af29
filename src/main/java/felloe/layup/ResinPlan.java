package felloe.layup;

import java.util.ArrayList;
import java.util.List;

/**
 * How much resin to mix. Masses in grams; {@code resin} and {@code hardener} are whole steps of the
 * scale and their sum is {@code mix}.
 *
 * @param fibre mass of the cloth in the blank
 * @param inPart resin that stays in the blank
 * @param losses resin that does not
 * @param needed resin in the blank and losses
 * @param resin to weigh out in all, without hardener
 * @param hardener to weigh out in all
 * @param mix both
 * @param millilitres volume of both before they are mixed
 * @param perSquareMetre millilitres of mix for a square metre of this blank
 */
public record ResinPlan(
    double fibre,
    double inPart,
    List<Loss> losses,
    double needed,
    double resin,
    double hardener,
    double mix,
    double millilitres,
    double perSquareMetre) {

  public ResinPlan {
    losses = List.copyOf(losses);
  }

  /**
   * Resin that does not stay in the blank.
   *
   * @param where it goes
   * @param grams how much
   */
  public record Loss(String where, double grams) {}

  /** What is needed, before it is parted into pots. */
  record Need(double fibre, double inPart, List<Loss> losses, double total) {}

  /**
   * The need of a blank: fibre mass times (1 - Vf) / Vf times the ratio of densities stays in it.
   *
   * @param area of the blank, mm²
   */
  static Need need(LayupChoice choice, StackPlan stack, double area) {
    double squareMetres = area / 1e6;
    double fibre = stack.plies().size() * choice.cloth().arealWeight() * squareMetres;
    double inPart = fibre * perFibre(choice, stack.fraction());
    Process.Losses shares = choice.process().losses();
    List<Loss> losses = new ArrayList<>();
    add(losses, "brush", shares.brush());
    add(losses, "roller", shares.roller());
    add(losses, "film left in the pots", inPart * shares.pot() / 100);
    // Cloth is wet out as usual; what the press then takes out of it must have been mixed.
    double pressedOut = fibre * perFibre(choice, choice.fraction().usual()) - inPart;
    add(
        losses,
        "squeezed out at the edges",
        Math.max(inPart * shares.squeezeOut() / 100, pressedOut));
    add(losses, "peel ply, breather, lines", shares.absorbed() * squareMetres);
    double total = inPart + losses.stream().mapToDouble(Loss::grams).sum();
    return new Need(fibre, inPart, losses, total);
  }

  private static void add(List<Loss> losses, String where, double grams) {
    if (grams > 0) {
      losses.add(new Loss(where, grams));
    }
  }

  /** Grams of resin for a gram of fibre at a fraction. */
  private static double perFibre(LayupChoice choice, double fraction) {
    return (1 - fraction) / fraction * choice.resin().density() / choice.cloth().fibre().density();
  }

  /** The plan once the pots are known. */
  static ResinPlan of(Need need, PotPlan pots, LayupChoice choice, double area) {
    double resin = pots.pots().stream().mapToDouble(PotPlan.Pot::resin).sum();
    double hardener = pots.pots().stream().mapToDouble(PotPlan.Pot::hardener).sum();
    double mix = resin + hardener;
    double volume = choice.resin().millilitres(resin, hardener);
    return new ResinPlan(
        need.fibre(),
        need.inPart(),
        need.losses(),
        need.total(),
        resin,
        hardener,
        mix,
        volume,
        volume / (area / 1e6));
  }
}
