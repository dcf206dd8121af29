package felloe.measure;

import felloe.geometry.Numbers;
import felloe.plate.Place;
import java.util.Optional;

/**
 * One reading of a calliper, a depth gauge or a scale.
 *
 * @param from the first hole, counted from 0
 * @param to the second hole; the same as {@code from} for a diameter and for a distance from an
 *     edge
 * @param edge the edge that it was taken from, if it was
 * @param over what it was taken over
 * @param reads what was read, mm
 * @param plusMinus half the width that 95 of 100 such readings keep within, mm: the expanded
 *     uncertainty with coverage factor 2 of the GUM (JCGM 100:2008, 6.2)
 * @param place where it was written
 */
public record Reading(
    int from,
    int to,
    Optional<ReferenceEdge> edge,
    ReadingKind over,
    double reads,
    double plusMinus,
    Place place) {

  /** Coverage factor between a standard deviation and {@code plusMinus} (JCGM 100:2008, 6.3). */
  public static final double COVERAGE = 2;

  /**
   * Refuses figures that are no reading.
   *
   * @throws IllegalArgumentException naming the field
   */
  public Reading {
    Numbers.finite("reads", reads);
    Numbers.positive("plusMinus", plusMinus);
  }

  /** One standard deviation, mm. */
  public double sigma() {
    return plusMinus / COVERAGE;
  }

  /** The same, taken over something else. */
  Reading over(ReadingKind other) {
    return new Reading(from, to, edge, other, reads, plusMinus, place);
  }

  /** Whether it was taken between two holes. */
  public boolean isPair() {
    return edge.isEmpty() && from != to;
  }

  /** Whether it was taken on the same holes, or on the same hole and edge, whatever over. */
  boolean sameHoles(Reading other) {
    return edge.equals(other.edge)
        && ((from == other.from && to == other.to) || (from == other.to && to == other.from));
  }
}
