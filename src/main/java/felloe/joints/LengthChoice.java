package felloe.joints;

import felloe.geometry.Tolerances;
import java.util.List;
import java.util.Optional;

/**
 * Chooses a screw's length from the standard ones.
 *
 * @param lengths the standard lengths, from short to long, mm
 */
record LengthChoice(List<Double> lengths) {

  /** The shortest one that is at least so long. */
  Optional<Double> atLeast(double length) {
    return lengths.stream().filter(l -> l >= length - Tolerances.SAME_LENGTH).findFirst();
  }

  /** The longest one that is at most so long. */
  Optional<Double> atMost(double length) {
    return lengths.stream().filter(l -> l <= length + Tolerances.SAME_LENGTH).reduce((a, b) -> b);
  }

  /**
   * The length for a blind hole: the shortest that reaches the wanted engagement; where that would
   * come too near the bottom, the longest that does not.
   *
   * @param clamped thickness of all that is clamped, mm
   * @param engagement wanted, mm
   * @param room depth of full thread that the screw may fill, mm; empty when not known or no matter
   */
  Optional<Double> tapped(double clamped, double engagement, Optional<Double> room) {
    Optional<Double> wanted = atLeast(clamped + engagement);
    if (room.isEmpty()
        || wanted.filter(l -> l <= clamped + room.get() + Tolerances.SAME_LENGTH).isPresent()) {
      return wanted;
    }
    return atMost(clamped + room.get()).filter(l -> l > clamped).or(() -> wanted);
  }

  boolean has(double length) {
    return lengths.stream().anyMatch(l -> Math.abs(l - length) <= Tolerances.SAME_LENGTH);
  }
}
