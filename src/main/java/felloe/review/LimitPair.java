package felloe.review;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Place;
import felloe.plate.Verdict;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a figure is held against: the limit beyond which the maker must decide, and the one beyond
 * which the plate fails. Either may be missing.
 */
record LimitPair(Optional<Limit> caution, Optional<Limit> fail) {

  /** Figures are rounded to this, so that one at its limit keeps it despite rounding. */
  private static final double GRAIN = 1e6;

  /** No limit at all. */
  static final LimitPair NONE = new LimitPair(Optional.empty(), Optional.empty());

  /** The nearest multiple of 1e-6. */
  static double rounded(double value) {
    return Math.rint(value * GRAIN) / GRAIN;
  }

  /** The stricter caution of two "at least", and what either fails. */
  LimitPair stricter(LimitPair other) {
    return new LimitPair(greater(caution, other.caution), greater(fail, other.fail));
  }

  private static Optional<Limit> greater(Optional<Limit> a, Optional<Limit> b) {
    return Stream.of(a, b).flatMap(Optional::stream).max(Comparator.comparingDouble(Limit::value));
  }

  /** The outcome for a figure. */
  Verdict judge(double figure) {
    double value = rounded(figure);
    if (fail.isPresent() && !fail.get().keeps(value)) {
      return Verdict.FAIL;
    }
    return caution.isPresent() && !caution.get().keeps(value) ? Verdict.CAUTION : Verdict.PASS;
  }

  /** The limit that decides the outcome; for a pass, the first one in the way. */
  Optional<Limit> deciding(double figure) {
    return judge(figure) == Verdict.FAIL ? fail : caution.or(() -> fail);
  }

  /**
   * What a figure lacks of the limit that it breaks: where it fails, of that by which it fails no
   * longer, and then of the one that keeps it clear of cautions. Never told too little.
   *
   * @param figure mm
   * @param by how many mm of the plate a mm of the figure is
   */
  String lacks(double figure, double by) {
    double value = rounded(figure);
    return told(figure, limit -> mm(by * (limit.value() - value)), " are missing", " to be clear");
  }

  /**
   * What keeps the limit that a figure breaks, told as {@link #lacks} is.
   *
   * @param by how many mm a whole of the figure is
   */
  String keeps(double figure, double by) {
    return told(figure, limit -> mm(by * limit.value()), " keeps the limit", " is clear");
  }

  private String told(double figure, Function<Limit, String> mm, String first, String then) {
    String text = deciding(figure).map(mm).orElse("0 mm") + first;
    return judge(figure) == Verdict.FAIL && good().filter(g -> g != fail.get()).isPresent()
        ? text + ", " + mm.apply(good().get()) + then + " of cautions too"
        : text;
  }

  private static String mm(double millimetres) {
    return Numbers.brief(Math.ceil(rounded(millimetres * 100)) / 100, 2) + " mm";
  }

  /** The limit that a good plate keeps. */
  Optional<Limit> good() {
    return caution.or(() -> fail);
  }

  /** The same with a caution limit that is no less than a figure of the plate's own. */
  LimitPair cautionAtLeast(double value, String source) {
    return new LimitPair(
        caution.map(
            c -> c.value() < value ? new Limit(c.sense(), value, source, c.overridden()) : c),
        fail);
  }

  /**
   * The finding for a figure.
   *
   * @param advice what to do; dropped when the figure passes
   */
  Finding finding(
      Rule rule,
      String subject,
      String name,
      double figure,
      Optional<Point> at,
      Place place,
      String advice) {
    Verdict verdict = judge(figure);
    return new Finding(
        rule.id(),
        rule.why(),
        verdict,
        subject,
        new Figure(name, rounded(figure), rule.unit()),
        deciding(figure),
        at,
        place,
        verdict == Verdict.PASS ? "" : advice);
  }
}
