package felloe.hub;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Basis;
import felloe.plate.HubPattern;
import felloe.plate.Place;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What is known of a hub, each figure with its basis.
 *
 * @param name made of the pattern, such as {@code 6x70-m5}
 * @param title in words
 * @param ring the ring of threaded holes
 * @param second a second ring, if there is one
 * @param use how two rings are used; {@link RingUse#EITHER} for one
 * @param pilot diameter of a spigot that stands proud and must enter the plate's bore, mm
 * @param bore usual bore in the plate, mm
 * @param positionTolerance diameter of the zone in which each threaded hole's centre lies (position
 *     tolerance of ISO 1101), mm
 * @param bases for each key of the spec's file, such as {@code pcd}, where the figure comes from
 * @param place where the spec was read
 */
public record HubSpec(
    String name,
    String title,
    HubRing ring,
    Optional<HubRing> second,
    RingUse use,
    Optional<Double> pilot,
    Optional<Double> bore,
    double positionTolerance,
    Map<String, Basis> bases,
    Place place) {

  /**
   * Copies the map, sorted.
   *
   * @throws IllegalArgumentException naming a figure that is not finite or below zero
   */
  public HubSpec {
    if (Numbers.finite("positionTolerance", positionTolerance) < 0) {
      throw new IllegalArgumentException("positionTolerance must not be below zero");
    }
    pilot.ifPresent(d -> Numbers.finite("pilot", d));
    bore.ifPresent(d -> Numbers.finite("bore", d));
    SortedMap<String, Basis> sorted = new TreeMap<>(bases);
    bases = Collections.unmodifiableSortedMap(sorted);
  }

  /** All rings, the first one first. */
  public List<HubRing> rings() {
    List<HubRing> rings = new ArrayList<>(List.of(ring));
    second.ifPresent(rings::add);
    return rings;
  }

  /**
   * The ring whose circle is nearest to a place on the plate: its screws go through a hole there.
   */
  public HubRing ringAt(Point place) {
    HubRing nearest = ring;
    for (HubRing one : rings()) {
      if (off(one, place) < off(nearest, place)) {
        nearest = one;
      }
    }
    return nearest;
  }

  private static double off(HubRing ring, Point place) {
    return Math.abs(ring.pitchDiameter() / 2 - place.norm());
  }

  /** The sets of rings that a plate may be bolted to: one set, or two where either ring will do. */
  public List<List<HubRing>> choices() {
    if (use == RingUse.BOTH || second.isEmpty()) {
      return List.of(rings());
    }
    return List.of(List.of(ring), List.of(second.get()));
  }

  /** What a shape file takes from it: the first ring. */
  public HubPattern pattern() {
    return new HubPattern(
        name, ring.count(), ring.pitchDiameter(), ring.plateHole(), ring.firstAngle(), bore);
  }

  /**
   * Every figure with its basis, by its key in the file, such as {@code second.pcd}, in the order
   * of the file; angles in degrees.
   */
  public Map<String, SourcedFigure> figures() {
    Map<String, SourcedFigure> figures = new LinkedHashMap<>();
    add(figures, "", ring);
    pilot.ifPresent(d -> add(figures, "pilot", "pilot diameter", d, "mm"));
    bore.ifPresent(d -> add(figures, "bore", "usual bore in the plate", d, "mm"));
    add(figures, "position-tolerance", "hole position tolerance", positionTolerance, "mm");
    second.ifPresent(two -> add(figures, "second.", two));
    return Collections.unmodifiableMap(figures);
  }

  private void add(Map<String, SourcedFigure> figures, String prefix, HubRing of) {
    add(figures, prefix + "count", "number of screws", of.count(), "");
    add(figures, prefix + "pcd", "pitch circle diameter", of.pitchDiameter(), "mm");
    String thread = "thread diameter (" + of.thread().name() + ")";
    add(figures, prefix + "thread", thread, of.thread().diameter(), "mm");
    add(figures, prefix + "first", "first angle", Math.toDegrees(of.firstAngle()), "deg");
    add(figures, prefix + "plate-hole", "usual hole in the plate", of.plateHole(), "mm");
  }

  private void add(
      Map<String, SourcedFigure> figures, String key, String what, double value, String unit) {
    figures.put(key, new SourcedFigure(what, value, unit, bases.get(key).words()));
  }
}
