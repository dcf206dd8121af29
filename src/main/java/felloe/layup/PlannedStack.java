package felloe.layup;

import felloe.laminate.Stack;
import felloe.plate.LayupWish;
import felloe.plate.Place;
import felloe.plate.Prices;
import felloe.plate.Requested;
import felloe.plate.Stock;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The stack of a lay-up alone, without cloth, resin and pots: what bending asks for.
 *
 * @param choice what it is made with
 * @param plan the plies
 * @param stack the same as laminate theory takes it, with strengths where the cloth's are known
 * @param density of the laminate, g/cm³
 */
public record PlannedStack(LayupChoice choice, StackPlan plan, Stack stack, double density) {

  /**
   * The stack for a stock.
   *
   * @param wish what the call asks for, over what the shape file does
   * @param thickness mm, from which the number of plies follows where none is asked for
   * @throws felloe.plate.BadInput with what cannot be
   */
  public static PlannedStack of(Stock stock, LayupWish wish, MaterialBook book, double thickness) {
    LayupChoice choice = LayupChoice.of(stock, wish.over(stock.layup()), book);
    StackPlan plan = StackPlan.of(choice, thickness, stock.place());
    double density = LaidUp.density(stock, choice, plan.fraction());
    return new PlannedStack(choice, plan, LayupLaminate.of(plan, choice.cloth()), density);
  }

  /**
   * The usual stack of so many plies, pressed as usual.
   *
   * @throws felloe.plate.BadInput as for {@link #of}
   */
  public static PlannedStack ofPlies(Stock stock, LayupWish wish, MaterialBook book, int plies) {
    LayupWish all = wish.over(stock.layup());
    LayupChoice choice = LayupChoice.of(stock, all, book);
    double thickness = plies * choice.cloth().plyThickness(choice.fraction().usual());
    LayupWish counted =
        new LayupWish(
            all.cloth(),
            all.process(),
            all.resin(),
            Optional.of(new Requested<>(plies, Place.BUILT_IN)),
            Optional.empty(),
            all.fraction(),
            all.panel(),
            all.temperature(),
            all.rollWidth(),
            all.margin(),
            all.pieces(),
            all.strips(),
            all.scale(),
            all.prices());
    LayupChoice counts = LayupChoice.of(stock, counted, book);
    StackPlan plan = StackPlan.of(counts, thickness, stock.place());
    double density = LaidUp.density(stock, counts, plan.fraction());
    return new PlannedStack(counts, plan, LayupLaminate.of(plan, choice.cloth()), density);
  }

  /** The number of plies that usual stacks grow by. */
  public int step() {
    return choice.cloth().weave().woven() ? 4 : 8;
  }

  /**
   * What cloth and resin of the plate's own area cost, without waste, mould and work: to compare
   * thicknesses by. Empty while a price is missing.
   *
   * @param area of the plate, mm²
   */
  public OptionalDouble cost(double area) {
    Optional<Prices.Price> cloth = choice.prices().find(choice.cloth().name());
    Optional<Prices.Price> resin = choice.prices().find(choice.resin().name());
    if (cloth.isEmpty() || resin.isEmpty()) {
      return OptionalDouble.empty();
    }
    boolean metre = cloth.get().per().equals(Optional.of(Prices.Per.METRE));
    double clothPrice =
        metre ? cloth.get().price() * 1000 / choice.rollWidth() : cloth.get().price();
    double resinKilograms =
        area * plan.thickness() * (1 - plan.fraction()) * choice.resin().density() / 1e6;
    return OptionalDouble.of(
        plan.plies().size() * area / 1e6 * clothPrice + resinKilograms * resin.get().price());
  }
}
