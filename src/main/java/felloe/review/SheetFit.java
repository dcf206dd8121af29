package felloe.review;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * Whether the plate fits its sheet, and at which turn. The figure is the margin that is left all
 * round when the plate lies in the middle. As drawn comes first, then a quarter turn; where neither
 * leaves the wanted margin, all turns are searched in steps of one degree and the best one is made
 * better, so that the margin is known to 0.001 mm at its turn, and a better turn may be missed only
 * where the margin has a second top narrower than a degree.
 */
record SheetFit() implements Rule {

  /** The search for the best turn stops here, degrees: a hair's breadth over many metres. */
  private static final double FOUND = 1e-6;

  /**
   * A way to lie.
   *
   * @param turn counter-clockwise, degrees
   * @param margin what is left on every side, mm; below zero when it does not fit
   */
  record Lie(double turn, double margin) {}

  @Override
  public String id() {
    return "sheet-fit";
  }

  @Override
  public String why() {
    return "The plate must lie on its sheet with room for the saw.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    if (plate.stock().sheet().isEmpty()) {
      return List.of();
    }
    LimitPair bounds = limits.of(this, "any", Sense.AT_LEAST, 1);
    double rough = plate.making().roughAllowance();
    if (limits.overrides().stream().noneMatch(o -> o.rule().equals(id()))) {
      bounds = bounds.cautionAtLeast(rough, "the shape file's rough allowance");
    }
    Sheet sheet = plate.stock().sheet().get();
    Lie lie = best(new Extent(plate.outline()), sheet, bounds);
    Place place = plate.stock().place();
    return List.of(
        bounds.finding(
            this,
            lie.turn() == 0
                ? "plate as drawn"
                : "plate turned " + Numbers.brief(lie.turn(), 2) + " degrees",
            "margin left all round",
            lie.margin(),
            Optional.<Point>empty(),
            place,
            bounds.lacks(lie.margin(), 2)));
  }

  private static Lie best(Extent extent, Sheet sheet, LimitPair bounds) {
    Lie best = lie(extent, sheet, 0);
    if (bounds.judge(best.margin()) == Verdict.PASS) {
      return best;
    }
    Lie quarter = lie(extent, sheet, 90);
    best = quarter.margin() > best.margin() ? quarter : best;
    if (bounds.judge(best.margin()) == Verdict.PASS) {
      return best;
    }
    for (int turn = 1; turn < 180; turn++) {
      Lie lie = lie(extent, sheet, turn);
      best = lie.margin() > best.margin() ? lie : best;
    }
    for (double step = 0.5; step > FOUND; step /= 2) {
      Lie less = lie(extent, sheet, best.turn() - step);
      Lie more = lie(extent, sheet, best.turn() + step);
      Lie better = less.margin() > more.margin() ? less : more;
      best = better.margin() > best.margin() ? better : best;
    }
    // A turn told to a tenth of a degree is one that a maker can set.
    Lie told = lie(extent, sheet, Math.rint(best.turn() * 10) / 10);
    Verdict verdict = bounds.judge(best.margin());
    return verdict != Verdict.FAIL && verdict == bounds.judge(told.margin()) ? told : best;
  }

  private static Lie lie(Extent extent, Sheet sheet, double turn) {
    double angle = -Math.toRadians(turn);
    Point along = turn == 90 ? new Point(0, -1) : Point.polar(1, angle);
    double width = extent.along(along);
    double height = extent.along(along.left());
    return new Lie(turn, Math.min(sheet.width() - width, sheet.height() - height) / 2);
  }
}
