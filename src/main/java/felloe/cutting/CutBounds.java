package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Which figures of a cut are believed, from the resource {@code cut-bounds.yaml}, each with its
 * basis: beyond the outer bounds nothing is written, between outer and inner ones there is a
 * caution.
 */
public final class CutBounds {

  private static final String RESOURCE = "/felloe/cut-bounds.yaml";

  /** A slip of the keyboard: the figure times the factor would be as usual. */
  private record Slip(double times, String words) {}

  /**
   * The bounds of one figure.
   *
   * @param by what it is counted in
   */
  private record Bound(
      String of,
      String by,
      double least,
      double low,
      double high,
      double most,
      String hint,
      List<Slip> slips,
      String basis) {}

  private final Map<String, Bound> bounds;

  private CutBounds(YamlTree tree) {
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    top.integer("felloe-cut-bounds").between(1, 1).required();
    List<Bound> all = top.list("bounds").atLeast(1).each(CutBounds::bound);
    top.done();
    problems.throwIfAny();
    this.bounds = all.stream().collect(Collectors.toUnmodifiableMap(Bound::of, bound -> bound));
  }

  private static Optional<Bound> bound(Fields f) {
    String of = f.text("of").required();
    String by = f.text("by").required();
    double least = f.number("least").notNegative().required();
    double low = f.number("low").atLeast(least).required();
    double high = f.number("high").atLeast(low).required();
    double most = f.number("most").atLeast(high).required();
    String hint = f.longText("hint").required();
    List<Slip> slips = f.list("slips").each(CutBounds::slip);
    String basis = f.longText("basis").required();
    return f.build(() -> new Bound(of, by, least, low, high, most, hint, slips, basis));
  }

  private static Optional<Slip> slip(Fields f) {
    double times = f.number("times").positive().required();
    String words = f.text("words").required();
    return f.build(() -> new Slip(times, words));
  }

  /** Read once, when first asked for. */
  private static final class Standard {
    static final CutBounds BOUNDS = new CutBounds(BuiltIn.tree(RESOURCE));
  }

  /** The program's own bounds. */
  public static CutBounds standard() {
    return Standard.BOUNDS;
  }

  /**
   * What is to be said of a figure.
   *
   * @param refused whether nothing may be written
   * @param wanted what is allowed, as the rest of a sentence about the figure
   * @param cure what to do; the likely slip where there is one
   */
  record Judged(boolean refused, String wanted, String cure) {}

  /**
   * Judges a figure.
   *
   * @param of the name of its bounds
   * @param value as asked for
   * @param one what the bounds count by, in the figure's unit: 1 where they are in that unit
   * @param unit the figure's unit
   * @return empty where nothing is to be said
   */
  Optional<Judged> judge(String of, double value, double one, String unit) {
    Bound bound = bounds.get(of);
    double share = value / one;
    double slack = 1e-9 * bound.most();
    boolean below = !(share >= bound.least() - slack);
    boolean above = !(share <= bound.most() + slack);
    if (below || above) {
      double limit = (below ? bound.least() : bound.most()) * one;
      String wanted =
          (below ? "must be at least " : "must be at most ") + Numbers.brief(limit, 4) + " " + unit;
      if (one != 1) {
        wanted += " here (" + Numbers.brief(limit / one, 3) + " " + bound.by() + ")";
      }
      return Optional.of(new Judged(true, wanted, slip(bound, value, share, unit)));
    }
    if (share < bound.low() - slack || share > bound.high() + slack) {
      String wanted = share < bound.low() ? "is less than usual" : "is more than usual";
      return Optional.of(new Judged(false, wanted, bound.hint()));
    }
    return Optional.empty();
  }

  private static String slip(Bound bound, double value, double share, String unit) {
    for (Slip slip : bound.slips()) {
      double meant = share * slip.times();
      if (meant >= bound.low() && meant <= bound.high()) {
        return "if it was written "
            + slip.words()
            + ", write "
            + Numbers.brief(value * slip.times(), 3)
            + " ("
            + unit
            + "); "
            + bound.hint();
      }
    }
    return bound.hint();
  }

  /** The largest share that draws no caution. */
  double high(String of) {
    return bounds.get(of).high();
  }

  /** The least share that draws no caution. */
  double low(String of) {
    return bounds.get(of).low();
  }
}
