package felloe.report;

import static felloe.document.Quantity.fixed;
import static felloe.document.Quantity.grams;

import felloe.document.Block.Depth;
import felloe.document.Block.Table;
import felloe.document.Cell;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.job.Bill;
import felloe.job.Bill.Group;
import felloe.job.Bill.Item;
import felloe.service.CardOutcome;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** What a job takes, told: to buy, to have at hand, with mass and cost rolled up. */
final class CardBill {

  private CardBill() {}

  static Telling of(CardOutcome outcome) {
    Bill bill = outcome.job().bill();
    Telling told = new Telling();
    told.head("Bill of materials");
    told.say(
        "{} {} What is used up, and the tools, are common practice; the table {}-bill.csv tells"
            + " where each figure comes from.",
        mass(bill),
        cost(bill),
        outcome.plate().name());
    List<Item> items = new ArrayList<>();
    for (Group group : List.of(Group.STOCK, Group.FITTINGS)) {
      items.addAll(bill.of(group));
    }
    items.addAll(bill.of(Group.WORK));
    told.add(table(outcome, bill, items, "to buy: stays on the wheel"));
    told.add(rest(outcome, bill, bill.of(Group.USED_UP), "to buy: is used up"));
    List<Item> tools = new ArrayList<>(bill.of(Group.CUTTERS));
    tools.addAll(bill.of(Group.AT_HAND));
    told.add(rest(outcome, bill, tools, "to have at hand"));
    told.fold(Depth.SCREEN, new Telling().fold(Depth.SOURCES, sources(bill)));
    return told;
  }

  private static String mass(Bill bill) {
    boolean grips = bill.of(Group.FITTINGS).stream().anyMatch(item -> item.mass().isEmpty());
    return Phrase.of(
        "The finished plate weighs {}; with its screws, washers and nuts at most {}{}.",
        grams(bill.plateMass()),
        grams(bill.mass()),
        grips ? ", without its grips" : "");
  }

  private static String cost(Bill bill) {
    OptionalDouble cost = bill.cost();
    String currency = bill.currency().orElse("");
    if (cost.isEmpty()) {
      return "What it costs is not known, for want of prices.";
    }
    return Phrase.of(
        "What has a price costs {}.{}",
        fixed(cost.getAsDouble(), 2, currency),
        bill.missingPrices().isEmpty()
            ? ""
            : Phrase.of(" No price is known for {}.", Phrase.list(bill.missingPrices())));
  }

  private static Rows<Item> table(CardOutcome outcome, Bill bill, List<Item> items, String head) {
    return Rows.of(items)
        .tick("")
        .wrapped(head, item -> item.supply().what())
        .figures("how much", item -> amount(outcome, item))
        .figures("on the wheel", "g", item -> Cell.of(item.mass(), m -> fixed(m, 1, "g")))
        .figures("cost", bill.currency().orElse(""), item -> Cell.fixed(item.cost(), 2, ""));
  }

  /** What does not stay on the wheel; masses have no column. */
  private static Table rest(CardOutcome outcome, Bill bill, List<Item> items, String head) {
    return Rows.of(items)
        .tick("")
        .wrapped(head, item -> item.supply().what() + much(amount(outcome, item)))
        .figures("cost", bill.currency().orElse(""), item -> Cell.fixed(item.cost(), 2, ""))
        .table()
        .sideBySide();
  }

  /** How much, unless it is one. */
  private static String much(String amount) {
    return amount.equals("1") ? "" : ": " + amount;
  }

  private static String amount(CardOutcome outcome, Item item) {
    return outcome
        .job()
        .parts()
        .laidUp()
        .map(plan -> LayupShopping.amount(item.supply(), plan))
        .orElseGet(() -> LayupShopping.amount(item.supply()));
  }

  private static Rows<Words.Source> sources(Bill bill) {
    Set<Words.Source> sources = new LinkedHashSet<>();
    for (Item item : bill.items()) {
      Quantity much = Quantity.rounded(item.supply().amount(), item.supply().unit());
      sources.add(new Words.Source(item.supply().what(), much.text(), item.basis()));
    }
    return Words.sources(List.copyOf(sources));
  }
}
