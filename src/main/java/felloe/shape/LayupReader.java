package felloe.shape;

import felloe.plate.LayupWish;
import felloe.plate.LayupWish.Panel;
import felloe.plate.Prices;
import felloe.plate.Requested;
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
    Optional<Requested<String>> cloth = text(f, "cloth");
    Optional<Requested<String>> process = text(f, "process");
    Optional<Requested<String>> resin = text(f, "resin");
    boolean list = f.entry("plies").kind() == Entry.Kind.LIST;
    Optional<Requested<List<Double>>> angles = list ? angles(f) : Optional.empty();
    Optional<Requested<Integer>> plies =
        list ? Optional.empty() : whole(f, "plies", 1, LayupWish.MOST_PLIES);
    f.atMostOneOf("fraction", "panel");
    Optional<Requested<Double>> fraction =
        number(
            f,
            "fraction",
            f.number("fraction").between(LayupWish.LEAST_FRACTION, LayupWish.MOST_FRACTION));
    Optional<Requested<Panel>> panel = panel(f);
    Optional<Requested<Double>> temperature =
        number(f, "temperature", f.number("temperature").between(5, 45));
    Optional<Requested<Double>> roll =
        number(f, "roll_width", f.length("roll_width").between(50, 5000));
    Optional<Requested<Double>> margin = number(f, "margin", f.length("margin").between(0, 300));
    Optional<Requested<LayupWish.Pieces>> pieces =
        f.oneOf("pieces", LayupWish.Pieces.class)
            .optional()
            .map(value -> new Requested<>(value, f.place("pieces")));
    Optional<Requested<Integer>> strips = whole(f, "strips", 0, MOST_STRIPS);
    Optional<Requested<Double>> scale = number(f, "scale", f.number("scale").between(0.01, 10));
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

  private static Optional<Requested<String>> text(Fields f, String key) {
    return f.text(key).optional().map(value -> new Requested<>(value, f.place(key)));
  }

  private static Optional<Requested<Double>> number(Fields f, String key, NumberField field) {
    OptionalDouble value = f.has(key) ? field.optional() : OptionalDouble.empty();
    return value.isPresent()
        ? Optional.of(new Requested<>(value.getAsDouble(), f.place(key)))
        : Optional.empty();
  }

  private static Optional<Requested<Integer>> whole(Fields f, String key, int least, int most) {
    OptionalInt value = f.integer(key).between(least, most).optional();
    return value.isPresent()
        ? Optional.of(new Requested<>(value.getAsInt(), f.place(key)))
        : Optional.empty();
  }

  private static Optional<Requested<List<Double>>> angles(Fields f) {
    List<Double> angles = new ArrayList<>();
    for (Entry item : f.list("plies").atLeast(1).atMost(LayupWish.MOST_PLIES).entries()) {
      item.angle().between(-90, 90).optional().ifPresent(angles::add);
    }
    return angles.isEmpty()
        ? Optional.empty()
        : Optional.of(new Requested<>(List.copyOf(angles), f.place("plies")));
  }

  private static Optional<Requested<Panel>> panel(Fields f) {
    if (!f.has("panel")) {
      return Optional.empty();
    }
    Fields g = f.group("panel");
    double thickness = g.length("thickness").positive().atMost(100).required();
    int plies = g.integer("plies").between(1, LayupWish.MOST_PLIES).required();
    return g.build(() -> new Requested<>(new Panel(thickness, plies), g.place()));
  }
}
