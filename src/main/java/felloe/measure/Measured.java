package felloe.measure;

import felloe.plate.Place;
import java.util.List;
import java.util.Optional;

/**
 * All that was measured on one hub or plate.
 *
 * @param file the file's name as messages show it
 * @param labels of the holes, in the order in which they stand round the pattern, counter-clockwise
 *     as the one who measured looked at it
 * @param on what the jaws touched
 * @param size one size for all holes that have no reading of their own, as a reading over the
 *     diameter; empty when none was given
 * @param readings those that were taken, diameters of single holes among them
 * @param waiting readings that the file asks for and that have not been taken yet
 * @param plate the name of the plate, when the file tells it
 * @param revision the revision of the plate that was drilled, when the file tells it
 * @param place where the count of holes was written
 */
public record Measured(
    String file,
    List<String> labels,
    ContactFeature on,
    Optional<Reading> size,
    List<Reading> readings,
    List<Pair> waiting,
    Optional<String> plate,
    Optional<String> revision,
    Place place) {

  /** The most holes that are read. */
  public static final int MOST_HOLES = 48;

  /** The most readings that are read. */
  public static final int MOST_READINGS = 2000;

  public Measured {
    labels = List.copyOf(labels);
    readings = List.copyOf(readings);
    waiting = List.copyOf(waiting);
  }

  /**
   * A reading to be taken.
   *
   * @param from the first hole, counted from 0
   * @param to the second hole; the same for a diameter and for a distance from an edge
   * @param edge the edge that it is taken from, if it is
   * @param over what it is taken over
   */
  public record Pair(int from, int to, Optional<ReferenceEdge> edge, ReadingKind over) {}

  /** Number of holes. */
  public int count() {
    return labels.size();
  }

  /** The holes of a reading in words, such as {@code 1 to 4} or {@code 2 to left edge}. */
  public String holes(Pair pair) {
    String from = labels.get(pair.from());
    if (pair.edge().isPresent()) {
      return from + " to " + pair.edge().get().words();
    }
    return pair.from() == pair.to() ? from : from + " to " + labels.get(pair.to());
  }

  /** The holes of a reading in words; {@code all} for the size of all. */
  public String holes(Reading reading) {
    if (size.isPresent() && size.get().place().equals(reading.place())) {
      return "all";
    }
    return holes(new Pair(reading.from(), reading.to(), reading.edge(), reading.over()));
  }

  /** A reading to be taken in words, such as {@code 1 to 4 over outside}. */
  public String words(Pair pair) {
    return pair.over() == ReadingKind.DIAMETER
        ? "the diameter of " + holes(pair)
        : holes(pair) + " over " + pair.over().words();
  }
}
