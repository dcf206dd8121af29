package felloe.shape;

import felloe.geometry.Point;
import felloe.plate.LoadWish;
import felloe.plate.Requested;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.NumberField;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads what the maker says of loads. Whether a force lies on the plate is asked when it is loaded.
 */
final class LoadReader {

  private static final double WIDEST = 1000;
  private static final double WIDEST_PATCH = 200;
  private static final String NAME = "[a-z0-9][a-z0-9.-]{0,39}";

  private LoadReader() {}

  /** The wish; empty when something in it is wrong. */
  static Optional<LoadWish> read(Fields top) {
    if (!top.has("load")) {
      return Optional.of(LoadWish.NONE);
    }
    Fields f = top.group("load");
    Optional<Requested<LoadWish.Hold>> hold =
        f.oneOf("support", LoadWish.Hold.class)
            .optional()
            .map(value -> new Requested<>(value, f.place("support")));
    Optional<Requested<Double>> clamp =
        wished(f, "clamp_diameter", f.length("clamp_diameter").positive().atMost(WIDEST));
    Optional<Requested<Double>> face =
        wished(f, "face_diameter", f.length("face_diameter").positive().atMost(WIDEST));
    Optional<Requested<Double>> spacer =
        wished(f, "spacer_diameter", f.length("spacer_diameter").positive().atMost(WIDEST));
    f.atMostOneOf("face_diameter", "spacer_diameter");
    Optional<Requested<Double>> factor = wished(f, "factor", f.number("factor").between(1, 20));
    Optional<Requested<Double>> hotWet = wished(f, "hot_wet", f.number("hot_wet").between(0.1, 1));
    Optional<Requested<Double>> margin = wished(f, "margin", f.number("margin").between(0, 100));
    Optional<Requested<Double>> deflection =
        wished(f, "deflection", f.length("deflection").positive().atMost(100));
    List<LoadWish.Case> cases =
        f.list("cases").atMost(LoadWish.MOST_CASES).each(LoadReader::oneCase);
    refuseTwins(f, cases);
    return f.build(
        () -> new LoadWish(hold, clamp, face, spacer, factor, hotWet, margin, deflection, cases));
  }

  private static Optional<Requested<Double>> wished(Fields f, String key, NumberField field) {
    OptionalDouble value = f.has(key) ? field.optional() : OptionalDouble.empty();
    return value.isPresent()
        ? Optional.of(new Requested<>(value.getAsDouble(), f.place(key)))
        : Optional.empty();
  }

  private static void refuseTwins(Fields f, List<LoadWish.Case> cases) {
    Map<String, LoadWish.Case> byName = new HashMap<>();
    for (LoadWish.Case one : cases) {
      if (byName.putIfAbsent(one.name(), one) != null) {
        f.problem("cases", "has two cases named '" + one.name() + "'", "rename one of them");
      }
    }
  }

  private static Optional<LoadWish.Case> oneCase(Fields f) {
    String name = f.text("name").required();
    if (f.has("name") && !name.isEmpty() && !name.matches(NAME)) {
      f.problem(
          "name", "must be of small letters, digits, dots and hyphens, at most 40", "rename it");
    }
    boolean several = f.has("forces");
    List<LoadWish.Force> forces = new ArrayList<>();
    if (several) {
      f.allow("at", "clock", "force");
      for (String key : List.of("at", "clock", "force")) {
        if (f.has(key)) {
          f.problem(key, "cannot stand beside forces", "put it into one of them");
        }
      }
      forces.addAll(
          f.list("forces").atLeast(1).atMost(LoadWish.MOST_FORCES).each(LoadReader::force));
    } else {
      f.allow("forces");
      forceOf(f).ifPresent(forces::add);
    }
    OptionalDouble patch =
        f.has("patch") ? f.length("patch").between(0, WIDEST_PATCH).optional() : none(f);
    Optional<Double> spread =
        patch.isPresent() ? Optional.of(patch.getAsDouble()) : Optional.empty();
    return f.build(() -> new LoadWish.Case(name, forces, spread, f.place()));
  }

  private static OptionalDouble none(Fields f) {
    f.allow("patch");
    return OptionalDouble.empty();
  }

  private static Optional<LoadWish.Force> force(Fields f) {
    Optional<LoadWish.Force> force = forceOf(f);
    return f.done() ? force : Optional.empty();
  }

  /** The force that a group tells of; the group is not ended. */
  private static Optional<LoadWish.Force> forceOf(Fields f) {
    Optional<String> where = f.exactlyOneOf("at", "clock");
    Optional<Point> at = f.point("at").optional();
    OptionalDouble clock = f.has("clock") ? f.clock("clock").optional() : OptionalDouble.empty();
    double[] n = {Double.NaN, Double.NaN, Double.NaN};
    List<Entry> items = f.list("force").exactly(3).entries();
    for (int i = 0; i < items.size(); i++) {
      n[i] = items.get(i).force().between(-LoadWish.MOST_FORCE, LoadWish.MOST_FORCE).required();
    }
    if (n[0] == 0 && n[1] == 0 && n[2] == 0) {
      f.problem("force", "must not be zero", "write [x, y, z] in N, z toward the driver");
      return Optional.empty();
    }
    boolean whole = !Double.isNaN(n[0] + n[1] + n[2]) && (at.isPresent() || clock.isPresent());
    return where.isPresent() && whole
        ? Optional.of(
            new LoadWish.Force(
                at,
                clock.isPresent() ? Optional.of(clock.getAsDouble()) : Optional.empty(),
                n[0],
                n[1],
                n[2],
                f.entry(where.get()).path(),
                f.place(where.get())))
        : Optional.empty();
  }
}
