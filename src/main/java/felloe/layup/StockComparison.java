package felloe.layup;

import felloe.geometry.Box;
import felloe.plate.BadInput;
import felloe.plate.Material;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Prices;
import felloe.plate.Problem;
import felloe.plate.Sheet;
import felloe.plate.Weights;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/** Ways of getting the stock, side by side. */
final class StockComparison {

  /** Edge of a bought sheet that is left alone, mm: common practice, as when cutting. */
  static final double EDGE = 5;

  private static final String WORK = "work";

  private final Plate plate;
  private final Prices prices;
  private final double area;

  StockComparison(Plate plate, Prices prices) {
    this.plate = plate;
    this.prices = prices;
    this.area = plate.region().properties().area();
  }

  /**
   * Refuses prices of what is not in the book, and measures that do not suit the item.
   *
   * @throws BadInput with each of them
   */
  static void check(Prices prices, MaterialBook book) {
    Problems problems = new Problems();
    Set<String> known = new TreeSet<>(book.cloths().keySet());
    known.addAll(book.resins().keySet());
    known.addAll(book.sheets().keySet());
    known.add(StockOption.SUNDRIES);
    known.add(WORK);
    for (Prices.Price price : prices.list()) {
      String item = price.item();
      if (!known.contains(item)) {
        String near =
            Nearest.to(item, List.copyOf(known)).map(n -> "did you mean '" + n + "'? ").orElse("");
        problems.add(
            new Problem(
                price.place(),
                "prices",
                item,
                "is nothing that has a price here",
                near + "known: " + String.join(", ", known)));
        continue;
      }
      List<Prices.Per> allowed = measures(item, book);
      if (price.per().isPresent() && !allowed.contains(price.per().get())) {
        problems.add(
            new Problem(
                price.place(),
                "prices",
                item + " per " + word(price.per().get()),
                "must be per "
                    + String.join(" or ", allowed.stream().map(StockComparison::word).toList()),
                ""));
      }
    }
    problems.throwIfAny();
  }

  private static String word(Prices.Per per) {
    return felloe.yaml.Entry.nameOf(per);
  }

  /** The measures that an item may be priced by, the usual one first. */
  private static List<Prices.Per> measures(String item, MaterialBook book) {
    if (book.cloths().containsKey(item)) {
      return List.of(Prices.Per.M2, Prices.Per.METRE);
    }
    if (book.resins().containsKey(item)) {
      return List.of(Prices.Per.KG);
    }
    if (book.sheets().containsKey(item)) {
      return List.of(Prices.Per.M2, Prices.Per.SHEET);
    }
    return List.of(item.equals(WORK) ? Prices.Per.HOUR : Prices.Per.LAY_UP);
  }

  /**
   * The lay-up as a way.
   *
   * @param laidUp whether it is the way that is meant
   */
  StockOption layup(
      LayupChoice choice,
      StackPlan stack,
      ClothPlan cloth,
      ResinPlan resin,
      double density,
      double modulus,
      double hours,
      boolean laidUp) {
    List<String> missing = new ArrayList<>();
    List<StockOption.Cost> costs = new ArrayList<>();
    OptionalDouble clothCost = clothCost(choice.cloth(), cloth, missing, costs);
    OptionalDouble resinCost = cost(choice.resin().name(), resin.mix() / 1000, missing, costs);
    cost(StockOption.SUNDRIES, 1, missing, costs);
    OptionalDouble material =
        clothCost.isPresent() && resinCost.isPresent()
            ? OptionalDouble.of(costs.stream().mapToDouble(StockOption.Cost::cost).sum())
            : OptionalDouble.empty();
    double waiting =
        choice.resin().cure().at(choice.temperature())
            + choice.resin().postCure().map(ResinSystem.PostCure::hours).orElse(0.0);
    return new StockOption(
        StockOption.LAY_UP,
        "laid up: " + choice.cloth().title(),
        stack.thickness(),
        Weights.sheet(area, stack.thickness(), density),
        modulus,
        1,
        Optional.empty(),
        true,
        costs,
        material,
        work(hours),
        hours,
        waiting,
        missing,
        laidUp);
  }

  private OptionalDouble clothCost(
      Cloth cloth, ClothPlan plan, List<String> missing, List<StockOption.Cost> costs) {
    boolean byMetre =
        prices.find(cloth.name()).flatMap(Prices.Price::per).equals(Optional.of(Prices.Per.METRE));
    double amount = byMetre ? plan.toBuy() / 1000 : plan.bought() / 1e6;
    return cost(cloth.name(), amount, missing, costs);
  }

  private OptionalDouble cost(
      String item, double amount, List<String> missing, List<StockOption.Cost> costs) {
    Optional<Prices.Price> price = prices.find(item);
    if (price.isEmpty()) {
      missing.add(item);
      return OptionalDouble.empty();
    }
    double cost = price.get().price() * amount;
    costs.add(new StockOption.Cost(item, cost));
    return OptionalDouble.of(cost);
  }

  private OptionalDouble work(double hours) {
    return prices
        .find(WORK)
        .map(price -> OptionalDouble.of(price.price() * hours))
        .orElse(OptionalDouble.empty());
  }

  /** A bought sheet as a way; empty when its material is not known. */
  Optional<StockOption> sheet(
      SheetStock stock, Function<String, Optional<Material>> materials, StockOption layup) {
    return materials.apply(stock.material()).map(material -> sheet(stock, material, layup));
  }

  /** The sheet that the stock is bought as; it is compared with nothing but itself. */
  Optional<StockOption> own(SheetStock stock, Function<String, Optional<Material>> materials) {
    return materials.apply(stock.material()).map(material -> sheet(stock, material));
  }

  private StockOption sheet(SheetStock stock, Material material, StockOption layup) {
    StockOption alone = sheet(stock, material);
    boolean own = !layup.own() && alone.own();
    double against = layup.modulus() * cube(layup.thickness());
    return alone.against(alone.modulus() * cube(alone.thickness()) / against, own);
  }

  private StockOption sheet(SheetStock stock, Material material) {
    int nearest = 0;
    for (int i = 1; i < stock.thicknesses().size(); i++) {
      double away = Math.abs(stock.thicknesses().get(i) - plate.stock().thickness());
      double before = Math.abs(stock.thicknesses().get(nearest) - plate.stock().thickness());
      // Of two that are as near the thicker one.
      nearest = away <= before ? i : nearest;
    }
    double thickness = stock.thicknesses().get(nearest);
    double modulus = stock.moduli().get(nearest);
    boolean grain = material.kind() == MaterialKind.WOOD;
    Optional<Sheet> size =
        stock.sizes().stream().filter(sheet -> fits(plate.box(), sheet, grain)).findFirst();
    List<String> missing = new ArrayList<>();
    List<StockOption.Cost> costs = new ArrayList<>();
    OptionalDouble cost = OptionalDouble.empty();
    if (size.isPresent()) {
      boolean whole =
          prices
              .find(stock.name())
              .flatMap(Prices.Price::per)
              .equals(Optional.of(Prices.Per.SHEET));
      double squareMetres = size.get().width() * size.get().height() / 1e6;
      cost = cost(stock.name(), whole ? 1 : squareMetres, missing, costs);
    }
    return new StockOption(
        stock.name(),
        stock.title(),
        thickness,
        Weights.sheet(area, thickness, material.density()),
        modulus,
        1,
        size,
        size.isPresent(),
        costs,
        cost,
        work(0),
        0,
        0,
        missing,
        stock.material().equals(plate.stock().material().name()));
  }

  private static double cube(double x) {
    return x * x * x;
  }

  /** Whether a box fits on a sheet within its edge, turned a quarter if there is no grain. */
  static boolean fits(Box box, Sheet sheet, boolean grain) {
    double wide = box.width() + 2 * EDGE;
    double high = box.height() + 2 * EDGE;
    boolean asDrawn = wide <= sheet.width() && high <= sheet.height();
    return asDrawn || (!grain && high <= sheet.width() && wide <= sheet.height());
  }
}
