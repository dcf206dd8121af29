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

  /** Whether something is to be done or decided. */
  public boolean isOpen() {
    return verdict != Verdict.PASS;
  }
}
