package felloe.layup;

import felloe.plate.BadInput;
import felloe.plate.LaidSheet;
import felloe.plate.LayupWish;
import felloe.plate.Note;
import felloe.plate.Plate;
import felloe.plate.Stock;

/** Tells a plate what its own laminate comes to, so that every answer weighs it alike. */
public final class LaidUp {

  private LaidUp() {}

  /** Whether a stock is laid up by the maker, and not bought. */
  public static boolean is(Stock stock) {
    return stock.material().laidUp();
  }

  /**
   * Whether a stock is laid up by the maker: a laminate that is not bought, or one for which cloth
   * or plies are asked for.
   */
  static boolean is(Stock stock, LayupWish wish) {
    boolean asked =
        wish.cloth().isPresent() || wish.plies().isPresent() || wish.angles().isPresent();
    return asked || is(stock);
  }

  /**
   * The plate with the thickness and density of its stack as the shape file asks for it. A plate of
   * bought sheet stays as it is; so does one whose stack cannot be planned with the built-in
   * materials, with a note that its mass is that of the stock's figures.
   */
  public static Plate of(Plate plate) {
    Stock stock = plate.stock();
    if (!is(stock)) {
      return plate;
    }
    try {
      PlannedStack planned =
          PlannedStack.of(stock, LayupWish.NONE, MaterialBook.builtIn(), stock.thickness());
      return plate.with(stock.laid(new LaidSheet(planned.plan().thickness(), planned.density())));
    } catch (BadInput notPlanned) {
      return plate.with(
          new Note(
              stock.place(),
              "its lay-up could not be planned with the built-in materials, so its mass is that of"
                  + " stock.thickness and the material's usual density"));
    }
  }

  /**
   * Density of a laminate, g/cm³: the maker's own figure where the shape file has one, else the
   * mixture of fibre and resin.
   */
  static double density(Stock stock, LayupChoice choice, double fraction) {
    return stock.material().own()
        ? stock.material().density()
        : fraction * choice.cloth().fibre().density() + (1 - fraction) * choice.resin().density();
  }
}
