package felloe.review;

import felloe.geometry.Point;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Place;
import felloe.plate.Verdict;
import java.util.Optional;

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
