package felloe.shape;

import felloe.plate.BodyMeasure;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Driver;
import felloe.plate.Driver.Heels;
import felloe.plate.Driver.People;
import felloe.yaml.Fields;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads who sits at the wheel, and on what. Figures of percentiles are the cockpit's. */
final class DriverReader {

  /** Percentiles that are tabled. */
  private static final List<Integer> PERCENTILES = List.of(5, 50, 95);

  /** No seat is farther off or leans more, mm and degrees. */
  private static final double FAR = 2_500;

  private static final double FLATTEST = 75;

  /** No measure of a driver is longer, mm. */
  private static final double LONGEST = 1_500;

  /** Nor shorter, but for those that may be nothing. */
  private static final double SHORTEST = 10;

  private static final Set<BodyMeasure> NOTHING = Set.of(BodyMeasure.SHOE, BodyMeasure.GLOVE);

  private DriverReader() {}

  static Optional<Seat> seat(Fields f) {
    double height = f.length("height").between(0, FAR).required();
    double behind = f.length("behind").between(0, FAR).required();
    double aside = f.length("aside").between(-FAR, FAR).or(0);
    double back = f.angle("back").between(0, FLATTEST).required();
    return f.build(() -> new Seat(height, behind, aside, Math.toRadians(back)));
  }

  static Optional<Driver> driver(Fields f) {
    People people = f.oneOf("of", People.class).required();
    int percentile = f.integer("percentile").between(1, 99).required();
    if (f.has("percentile") && percentile > 0 && !PERCENTILES.contains(percentile)) {
      f.problem(
          "percentile",
          "is no percentile of the tables, which have "
              + PERCENTILES.stream().map(Object::toString).collect(Collectors.joining(", ")),
          "take the nearest, and write what you measure as own");
    }
    Map<BodyMeasure, Double> own = new EnumMap<>(BodyMeasure.class);
    if (f.has("own")) {
      Fields measures = f.group("own");
      Stream.of(BodyMeasure.values())
          .forEach(
              measure ->
                  measures
                      .length(measure.name().toLowerCase(Locale.ROOT))
                      .between(NOTHING.contains(measure) ? 0 : SHORTEST, LONGEST)
                      .optional()
                      .ifPresent(value -> own.put(measure, value)));
      measures.done();
    } else {
      f.allow("own");
    }
    Optional<Heels> heels = f.has("heels") ? heels(f.group("heels")) : Optional.empty();
    f.allow("heels");
    return f.build(() -> new Driver(people, percentile, own, heels, f.place()));
  }

  private static Optional<Heels> heels(Fields f) {
    double apart = f.length("apart").between(0, FAR).required();
    double height = f.length("height").between(0, FAR).required();
    double ahead = f.length("ahead").between(-FAR, FAR).required();
    return f.build(() -> new Heels(apart, height, ahead, f.place()));
  }
}
