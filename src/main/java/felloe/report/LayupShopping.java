package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.layup.LayupPlan;
import felloe.layup.LayupSupplies;
import felloe.layup.Supply;
import java.util.List;

/** What a lay-up takes, told. */
public final class LayupShopping {

  private LayupShopping() {}

  /**
   * A line of the list.
   *
   * @param what in words
   * @param amount how much, with its unit
   */
  public record Item(String what, String amount) {}

  /** The list, what is used up first. */
  public static List<Item> of(LayupPlan plan) {
    return LayupSupplies.of(plan).stream()
        .map(supply -> new Item(supply.what(), amount(supply, plan)))
        .toList();
  }

  /** How much of it, masses as finely as the maker's scale reads. */
  static String amount(Supply supply, LayupPlan plan) {
    return supply.unit().equals("g")
        ? LayupReport.weighed(plan, supply.amount()).text()
        : amount(supply);
  }

  /** How much of it. */
  static String amount(Supply supply) {
    double amount = supply.amount();
    Quantity much =
        switch (supply.unit()) {
          case "m" -> fixed(amount, 1, "m");
          case "m2" -> fixed(amount, 2, "m2");
          default -> brief(amount, 1, supply.unit());
        };
    return supply.each().isEmpty() ? much.text() : Phrase.of("{} of {}", much, supply.each());
  }
}
