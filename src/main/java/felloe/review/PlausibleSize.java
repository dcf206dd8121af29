package felloe.review;

import felloe.geometry.Numbers;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.yaml.UnitSlip;
import java.util.List;
import java.util.Optional;

/**
 * Whether a plate is of a size that hands hold. What is far too small is told the slip that would
 * explain it: metres or inches written as millimetres, the radius for the diameter. A plate of
 * plausible size is told nothing.
 */
enum PlausibleSize implements Rule {
  /** Width of the outline over all. */
  WIDTH("outline-width", "width of the outline", 250, 400),
  /** Thickness of the stock. */
  THICKNESS("stock-thickness", "thickness of the stock", 2, 20);

  private final String id;
  private final String figure;
  private final double usualLeast;
  private final double usualMost;

  PlausibleSize(String id, String figure, double usualLeast, double usualMost) {
    this.id = id;
    this.figure = figure;
    this.usualLeast = usualLeast;
    this.usualMost = usualMost;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String why() {
    return "A size that no wheel has is a slip of the unit, and all other figures rest on it.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    double size =
        this == WIDTH
            ? Math.max(plate.box().width(), plate.box().height())
            : plate.stock().thickness();
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    if (bounds.judge(size) == Verdict.PASS) {
      return List.of();
    }
    Place place = this == WIDTH ? NamedContour.wholeFile(plate) : plate.stock().place();
    return List.of(
        bounds.finding(
            this,
            this == WIDTH ? "outline" : "stock",
            figure,
            size,
            Optional.empty(),
            place,
            advice(size)));
  }

  private String advice(double size) {
    boolean half = this == WIDTH && usual(size * 2);
    return UnitSlip.of(size, this::usual)
        .orElse(
            half
                ? "it may be the radius: a diameter is wanted, "
                    + Numbers.brief(size * 2, 2)
                    + " mm"
                : "check the figure and its unit");
  }

  private boolean usual(double size) {
    return size >= usualLeast && size <= usualMost;
  }
}
