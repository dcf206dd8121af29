package felloe.yaml;

import felloe.plate.Prices;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what things cost: the keys {@code currency} and {@code prices} of a group. */
public final class PriceList {

  private static final int MOST = 200;
  private static final double DEAREST = 1e7;

  private PriceList() {}

  /** The prices of a group; none when neither key is there. What is wrong is reported. */
  public static Prices read(Fields f) {
    Optional<String> currency = f.text("currency").optional();
    List<Prices.Price> prices = new ArrayList<>();
    if (f.has("prices")) {
      Map<String, Prices.Price> byItem = new LinkedHashMap<>();
      for (Prices.Price price : f.list("prices").atMost(MOST).each(PriceList::price)) {
        if (byItem.put(price.item(), price) != null) {
          f.problem("prices", "has two prices for " + price.item(), "keep one of them");
        }
      }
      prices.addAll(byItem.values());
    }
    return new Prices(currency, prices);
  }

  private static Optional<Prices.Price> price(Fields f) {
    String item = f.text("item").required();
    double price = f.number("price").notNegative().atMost(DEAREST).required();
    Optional<Prices.Per> per = f.oneOf("per", Prices.Per.class).optional();
    return f.build(() -> new Prices.Price(item, price, per, f.place()));
  }
}
