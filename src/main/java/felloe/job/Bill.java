package felloe.job;

import felloe.layup.Supply;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a job takes: stock by its cut size, screws by standard and length, tools, and what is used
 * up. Mass and cost roll up.
 *
 * @param items group by group
 * @param currency of the costs, as the maker calls it
 * @param missingPrices items that are bought and have no price, as prices name them
 */
public record Bill(List<Item> items, Optional<String> currency, List<String> missingPrices) {

  public Bill {
    items = List.copyOf(items);
    missingPrices = List.copyOf(missingPrices);
  }

  /** Items that belong together, in the order in which they are told. */
  public enum Group {
    /** What the plate is cut from. */
    STOCK,
    /** What stays on the wheel beside the plate. */
    FITTINGS,
    /** Tools that cut: drills, saws, cutters. */
    CUTTERS,
    /** What is used up. */
    USED_UP,
    /** What must be at hand. */
    AT_HAND,
    /** Work that has a price. */
    WORK
  }

  /**
   * A line of the bill.
   *
   * @param group where it belongs
   * @param supply what, and how much of it
   * @param act that it is for
   * @param mass of it that stays on the wheel, g; empty for what does not stay, and for what is not
   *     known
   * @param cost where its price is known
   * @param basis where the figure comes from
   */
  public record Item(
      Group group,
      Supply supply,
      Act act,
      OptionalDouble mass,
      OptionalDouble cost,
      String basis) {}

  /** The bill of a job. */
  public static Bill of(Parts parts, WorkOrder order) {
    return new BillMaker(parts, order).bill();
  }

  /** The lines of a group. */
  public List<Item> of(Group group) {
    return items.stream().filter(item -> item.group() == group).toList();
  }

  /** Mass of the plate alone, g. */
  public double plateMass() {
    return of(Group.STOCK).stream().mapToDouble(item -> item.mass().orElse(0)).sum();
  }

  /** Mass of all that stays on the wheel and is known, g. */
  public double mass() {
    return items.stream().mapToDouble(item -> item.mass().orElse(0)).sum();
  }

  /** What all that has a price costs; empty where nothing has. */
  public OptionalDouble cost() {
    List<Item> priced = items.stream().filter(item -> item.cost().isPresent()).toList();
    return priced.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(priced.stream().mapToDouble(i -> i.cost().getAsDouble()).sum());
  }
}
