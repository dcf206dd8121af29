package felloe.shape;

import felloe.plate.LayupWish;
import felloe.plate.LayupWish.Panel;
import felloe.plate.Prices;
import felloe.plate.Wished;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.NumberField;
import felloe.yaml.PriceList;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Reads how the maker wants to lay the stock up. Names of cloths and resins are looked up later: a
 * maker may have a file of their own.
 */
final class LayupReader {

  private static final int MOST_STRIPS = 30;

  private LayupReader() {}

  /** The wish of a stock; empty when something in it is wrong. */
  static Optional<LayupWish> read(Fields stock) {
    if (!stock.has("layup")) {
      return Optional.of(LayupWish.NONE);
    }
    Fields f = stock.group("layup");
    Optional<Wished<String>> cloth = text(f, "cloth");
    Optional<Wished<String>> process = text(f, "process");
    Optional<Wished<String>> resin = text(f, "resin");
    boolean list = f.entry("plies").kind() == Entry.Kind.LIST;
    Optional<Wished<List<Double>>> angles = list ? angles(f) : Optional.empty();
    Optional<Wished<Integer>> plies =
        list ? Optional.empty() : whole(f, "plies", 1, LayupWish.MOST_PLIES);
    f.atMostOneOf("fraction", "panel");
    Optional<Wished<Double>> fraction =
        number(
            f,
            "fraction",
            f.number("fraction").between(LayupWish.LEAST_FRACTION, LayupWish.MOST_FRACTION));
    Optional<Wished<Panel>> panel = panel(f);
    Optional<Wished<Double>> temperature =
        number(f, "temperature", f.number("temperature").between(5, 45));
    Optional<Wished<Double>> roll =
        number(f, "roll-width", f.length("roll-width").between(50, 5000));
    Optional<Wished<Double>> margin = number(f, "margin", f.length("margin").between(0, 300));
    Optional<Wished<LayupWish.Pieces>> pieces =
        f.oneOf("pieces", LayupWish.Pieces.class)
            .optional()
            .map(value -> new Wished<>(value, f.place("pieces")));
    Optional<Wished<Integer>> strips = whole(f, "strips", 0, MOST_STRIPS);
    Optional<Wished<Double>> scale = number(f, "scale", f.number("scale").between(0.01, 10));
    Prices prices = PriceList.read(f);
    return f.build(
        () ->
            new LayupWish(
                cloth,
                process,
                resin,
                plies,
                angles,
                fraction,
                panel,
                temperature,
                roll,
                margin,
                pieces,
                strips,
                scale,
                prices));
  }

  private static Optional<Wished<String>> text(Fields f, String key) {
    return f.text(key).optional().map(value -> new Wished<>(value, f.place(key)));
  }

  private static Optional<Wished<Double>> number(Fields f, String key, NumberField field) {
    OptionalDouble value = f.has(key) ? field.optional() : OptionalDouble.empty();
    return value.isPresent()
        ? Optional.of(new Wished<>(value.getAsDouble(), f.place(key)))
        : Optional.empty();
  }

  private static Optional<Wished<Integer>> whole(Fields f, String key, int least, int most) {
    OptionalInt value = f.integer(key).between(least, most).optional();
    return value.isPresent()
        ? Optional.of(new Wished<>(value.getAsInt(), f.place(key)))
        : Optional.empty();
  }

  private static Optional<Wished<List<Double>>> angles(Fields f) {
    List<Double> angles = new ArrayList<>();
    for (Entry item : f.list("plies").atLeast(1).atMost(LayupWish.MOST_PLIES).entries()) {
      item.angle().between(-90, 90).optional().ifPresent(angles::add);
    }
    return angles.isEmpty()
        ? Optional.empty()
        : Optional.of(new Wished<>(List.copyOf(angles), f.place("plies")));
  }

  private static Optional<Wished<Panel>> panel(Fields f) {
    if (!f.has("panel")) {
      return Optional.empty();
    }
    Fields g = f.group("panel");
    double thickness = g.length("thickness").positive().atMost(100).required();
    int plies = g.integer("plies").between(1, LayupWish.MOST_PLIES).required();
    return g.build(() -> new Wished<>(new Panel(thickness, plies), g.place()));
  }
}
