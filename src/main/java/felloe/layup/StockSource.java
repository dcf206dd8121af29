package felloe.layup;

import felloe.plate.Material;
import felloe.plate.Plate;
import felloe.plate.Prices;
import java.util.Optional;
import java.util.function.Function;

/**
 * How the stock of a plate is got: laid up, or bought as a sheet.
 *
 * @param plan the lay-up; empty where the stock is bought
 * @param option what it weighs and costs; empty for a sheet that is not known
 * @param prices what things cost
 */
public record StockSource(Optional<LayupPlan> plan, Optional<StockOption> option, Prices prices) {

  /**
   * As the shape file has it. Of bought stock no lay-up is planned to compare it with.
   *
   * @param book the materials
   * @param materials of sheet, by the names that shape files use
   * @throws felloe.plate.BadInput with what cannot be
   */
  public static StockSource of(
      Plate plate, MaterialBook book, Function<String, Optional<Material>> materials) {
    LayupChoice choice = LayupChoice.of(plate.stock(), plate.stock().layup(), book);
    StockComparison.check(choice.prices(), book);
    if (LaidUp.is(plate.stock(), choice.wish())) {
      LayupPlan plan = LayupPlan.of(plate, choice, book, materials);
      return new StockSource(Optional.of(plan), Optional.of(plan.ways().get(0)), choice.prices());
    }
    StockComparison ways = new StockComparison(plate, choice.prices());
    Optional<StockOption> sheet =
        book.sheets().values().stream()
            .filter(s -> s.material().equals(plate.stock().material().name()))
            .findFirst()
            .flatMap(s -> ways.own(s, materials));
    return new StockSource(Optional.empty(), sheet, choice.prices());
  }
}
