package felloe.review;

import felloe.geometry.AreaProperties;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Weights;
import java.util.List;
import java.util.Optional;

/** Mass and balance of the bare plate, without screws, grips and display. */
enum Weight implements Rule {
  /** Mass, grams. */
  MASS("mass", "The mass tells what to expect on the scales.", "g", "mass of the plate"),
  /** Distance of the centroid from the hub axis. */
  CENTROID_OFFSET(
      "centroid-offset",
      "A centroid away from the hub axis makes the wheel hang to one side.",
      "mm",
      "centroid from the hub axis"),
  /** Greatest torque of the plate's own weight about a level hub axis. */
  HANG_TORQUE(
      "hang-torque",
      "The plate's own weight turns a wheel that is let go.",
      "N m",
      "greatest torque by its own weight");

  private final String id;
  private final String why;
  private final String unit;
  private final String figure;

  Weight(String id, String why, String unit, String figure) {
    this.id = id;
    this.why = why;
    this.unit = unit;
    this.figure = figure;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String why() {
    return why;
  }

  @Override
  public String unit() {
    return unit;
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    AreaProperties properties = plate.region().properties();
    double grams = plate.mass();
    Point centroid = properties.centroid();
    double offset = centroid.norm();
    double value =
        switch (this) {
          case MASS -> grams;
          case CENTROID_OFFSET -> offset;
          case HANG_TORQUE -> grams / 1000 * Weights.GRAVITY * offset / 1000;
        };
    String advice =
        this == MASS
            ? "take out more, or choose thinner or lighter stock"
            : "take out material on the side of the centroid, at x "
                + Numbers.brief(centroid.x(), 1)
                + ", y "
                + Numbers.brief(centroid.y(), 1);
    LimitPair bounds = limits.of(this, "any", Sense.AT_MOST, 1);
    return List.of(
        bounds.finding(
            this,
            "plate",
            figure,
            value,
            Optional.of(centroid),
            NamedContour.wholeFile(plate),
            advice));
  }
}
