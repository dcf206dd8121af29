package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Place;
import felloe.plate.Verdict;
import java.util.Optional;

/** Keeps the worst of one kind of figure, where it was, and how often the limit was broken. */
final class SweepTally {

  private final String rule;
  private final String why;
  private final String figure;
  private final String unit;
  private final double limit;
  private final String source;
  private double worst;
  private String subject = "all moves";
  private Optional<Point> at = Optional.empty();
  private int broken;

  /**
   * An empty tally.
   *
   * @param limit figures must be at most this
   */
  SweepTally(String rule, String why, String figure, String unit, double limit, String source) {
    this.rule = rule;
    this.why = why;
    this.figure = figure;
    this.unit = unit;
    this.limit = limit;
    this.source = source;
  }

  /** Counts a figure in. */
  void add(double value, String who, Point where) {
    // What is no number keeps no limit.
    boolean breaks = !(value <= limit);
    if (breaks) {
      broken++;
    }
    if (breaks && broken == 1 || value > worst) {
      worst = Double.isFinite(value) ? Math.max(worst, value) : Double.MAX_VALUE;
      subject = who;
      at = Optional.of(where);
    }
  }

  /** Counts one case that must not be. */
  void broken(String who, Point where) {
    add(broken + 1, who, where);
  }

  double worst() {
    return worst;
  }

  Finding finding(Place place) {
    boolean fails = broken > 0;
    return new Finding(
        rule,
        why,
        fails ? Verdict.FAIL : Verdict.PASS,
        subject,
        new Figure(figure, worst, unit),
        Optional.of(new Limit(Limit.Sense.AT_MOST, limit, source, false)),
        at,
        place,
        fails
            ? "nothing is written; "
                + Numbers.brief(broken, 0)
                + (broken == 1 ? " place is" : " places are")
                + " wrong: change cutter, lead, tabs or depths and try again"
            : "");
  }
}
