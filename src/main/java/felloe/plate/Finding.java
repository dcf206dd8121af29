package felloe.plate;

import felloe.geometry.Point;
import java.util.Optional;

/**
 * One answer of a check: everything that a face may show of it.
 *
 * @param rule id of the rule, such as {@code edge-distance}
 * @param why one line of why the rule exists
 * @param verdict the outcome
 * @param subject what was looked at, such as {@code H3 to outline}
 * @param figure what was measured
 * @param limit what it was held against, when there is a limit
 * @param at where on the plate, when it has a place
 * @param place the line of the shape file that the subject comes from
 * @param advice what to do about it; empty for a pass
 */
public record Finding(
    String rule,
    String why,
    Verdict verdict,
    String subject,
    Figure figure,
    Optional<Limit> limit,
    Optional<Point> at,
    Place place,
    String advice) {

  /** The same without the folders before the shape file's name. */
  public Finding withoutFolders() {
    Place bare = place.withoutFolders();
    return new Finding(rule, why, verdict, subject, figure, limit, at, bare, advice);
  }

  /** The same with another advice. */
  public Finding advised(String other) {
    return new Finding(rule, why, verdict, subject, figure, limit, at, place, other);
  }

  /** Places and figures that differ by less are the same, mm; less than a report shows. */
  private static final double SAME = 0.005;

  /** Whether it says of the mirror image of a place what another says of that place. */
  public boolean mirrors(Finding other) {
    if (at.isEmpty() || other.at.isEmpty()) {
      return false;
    }
    Point here = at.get();
    return rule.equals(other.rule)
        && verdict == other.verdict
        && limit.equals(other.limit)
        && advice.equals(other.advice)
        && Math.abs(figure.value() - other.figure.value()) < SAME
        && Math.abs(here.x()) > SAME
        && new Point(-here.x(), here.y()).distance(other.at.get()) < SAME;
  }

  /** Whether something is to be done or decided. */
  public boolean isOpen() {
    return verdict != Verdict.PASS;
  }
}
