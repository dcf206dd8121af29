package felloe.layup;

import felloe.plate.Sheet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One way of getting the stock of the plate.
 *
 * @param name the sheet's name, or {@code lay-up}
 * @param title in words
 * @param thickness that it comes in, mm
 * @param mass of the finished plate, g
 * @param modulus in bending along x, GPa
 * @param stiffness in bending, against the lay-up: modulus times thickness cubed
 * @param sheet the smallest size that the plate fits on; empty for a lay-up, and when none does
 * @param fits whether there is a size that the plate fits on
 * @param costs of what has a price, each item by itself
 * @param materialCost what the material costs; empty while a price is missing
 * @param workCost what the hours on the stock cost; empty without a price of work
 * @param hours of work before it can be cut
 * @param waiting hours of waiting before it can be cut, without delivery
 * @param missingPrices items whose price is not known
 * @param own whether it is how the stock is got: laid up, or the sheet that the shape file names
 */
public record StockOption(
    String name,
    String title,
    double thickness,
    double mass,
    double modulus,
    double stiffness,
    Optional<Sheet> sheet,
    boolean fits,
    List<Cost> costs,
    OptionalDouble materialCost,
    OptionalDouble workCost,
    double hours,
    double waiting,
    List<String> missingPrices,
    boolean own) {

  /**
   * What an item costs.
   *
   * @param item as prices name it
   * @param cost in the currency of the prices
   */
  public record Cost(String item, double cost) {}

  /** What a lay-up is called among the ways. */
  public static final String LAY_UP = "lay-up";

  /** What everything else that a lay-up uses up is called among prices. */
  public static final String SUNDRIES = "sundries";

  public StockOption {
    costs = List.copyOf(costs);
    missingPrices = List.copyOf(missingPrices);
  }

  /** What an item costs; empty where it has no price. */
  public OptionalDouble cost(String item) {
    return costs.stream().filter(c -> c.item().equals(item)).mapToDouble(Cost::cost).findFirst();
  }

  /** The same beside another lay-up. */
  StockOption against(double stiffnessAgainst, boolean meant) {
    return new StockOption(
        name,
        title,
        thickness,
        mass,
        modulus,
        stiffnessAgainst,
        sheet,
        fits,
        costs,
        materialCost,
        workCost,
        hours,
        waiting,
        missingPrices,
        meant);
  }
}
