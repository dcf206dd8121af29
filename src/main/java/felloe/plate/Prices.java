package felloe.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What things cost the maker. The program knows no prices of its own.
 *
 * @param currency free text, such as {@code EUR}; empty when none is named
 * @param list the prices
 */
public record Prices(Optional<String> currency, List<Price> list) {

  /** No price is known. */
  public static final Prices NONE = new Prices(Optional.empty(), List.of());

  public Prices {
    list = List.copyOf(list);
  }

  /** What a price is for. */
  public enum Per {
    /** A square metre of cloth or sheet. */
    M2,
    /** A running metre of cloth off the roll. */
    METRE,
    /** A kilogram of mixed resin. */
    KG,
    /** A whole sheet of the size that is bought. */
    SHEET,
    /** Everything else that one lay-up uses up. */
    LAY_UP,
    /** An hour of work. */
    HOUR
  }

  /**
   * One price.
   *
   * @param item name of a cloth, resin system or sheet; {@code sundries} or {@code work}
   * @param price in the currency
   * @param per of how much; empty for the item's usual measure
   * @param place where it was written
   */
  public record Price(String item, double price, Optional<Per> per, Place place) {}

  /** These prices, and others' for items that have none here. */
  public Prices over(Prices other) {
    List<Price> all = new ArrayList<>(list);
    other.list.stream().filter(price -> find(price.item()).isEmpty()).forEach(all::add);
    return new Prices(currency.or(other::currency), all);
  }

  /** The price of an item, if it is known. */
  public Optional<Price> find(String item) {
    return list.stream().filter(price -> price.item().equals(item)).findFirst();
  }
}
