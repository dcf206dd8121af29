package felloe.plate;

import felloe.geometry.Numbers;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What the maker says of a joint: which holes, which screw, what it clamps and what holds it. What
 * is left out is empty; the usual then takes its place.
 *
 * @param path its way in the shape file, such as {@code joints[0]}; empty for a joint that nobody
 *     wrote
 * @param role all holes of this role; empty when holes are named one by one
 * @param labels the holes that are named one by one
 * @param screw the screw
 * @param washer what lies under its head
 * @param front thickness of each part that is clamped on the driver's face, mm
 * @param back thickness of each part that is clamped on the back, mm
 * @param into what holds the screw
 * @param loads what the hands do
 * @param places where each key was written, by its way in the joint, such as {@code screw.length};
 *     the empty key is the joint itself
 */
public record Joint(
    String path,
    Optional<HoleRole> role,
    List<String> labels,
    Screw screw,
    Optional<Washer> washer,
    Optional<List<Double>> front,
    Optional<List<Double>> back,
    Optional<Into> into,
    HandLoads loads,
    Map<String, Place> places) {

  public Joint {
    labels = List.copyOf(labels);
    front = front.map(List::copyOf);
    back = back.map(List::copyOf);
    SortedMap<String, Place> sorted = new TreeMap<>(places);
    places = Collections.unmodifiableSortedMap(sorted);
  }

  /** Form of a screw's head. */
  public enum Head {
    /** Cylinder with a socket (ISO 4762, ASME B18.3). */
    SOCKET,
    /** Button with a socket (ISO 7380-1, ASME B18.3). */
    BUTTON,
    /** Countersunk with a socket (ISO 10642; 82 degrees for inch, ASME B18.3). */
    COUNTERSUNK
  }

  /** A washer, or none. */
  public enum Washer {
    /** None. */
    NONE,
    /** Of the normal series (ISO 7089). */
    PLAIN,
    /** Of the large series (ISO 7093-1). */
    LARGE
  }

  /** Form of a nut. */
  public enum Nut {
    /** Hexagon (ISO 4032). */
    PLAIN,
    /** Hexagon with an insert that grips the thread (ISO 7040). */
    LOCK
  }

  /** What a thread is tapped into. */
  public enum Tapped {
    /** Steel. */
    STEEL,
    /** Aluminium. */
    ALUMINIUM,
    /** Cast aluminium or zinc. */
    CAST,
    /** Plastic. */
    PLASTIC,
    /** Fibre and resin. */
    LAMINATE,
    /** A threaded insert of metal. */
    INSERT
  }

  /** State of the thread and of the face under the head when the screw is turned. */
  public enum Surface {
    /** As it comes, without oil. */
    DRY,
    /** With oil, grease or liquid threadlocker. */
    OILED
  }

  /**
   * A screw.
   *
   * @param thread name of its thread, such as {@code M5}
   * @param head form of its head
   * @param strength its class, such as {@code 8.8}
   * @param length mm, under the head, or overall for a countersunk one
   * @param surface how it is turned in
   * @param sunk how deep its head is let into the face, mm
   */
  public record Screw(
      Optional<String> thread,
      Optional<Head> head,
      Optional<String> strength,
      Optional<Double> length,
      Optional<Surface> surface,
      double sunk) {

    public static final Screw USUAL =
        new Screw(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0);

    /**
     * Refuses lengths that cannot be.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Screw {
      length.ifPresent(l -> Numbers.finite("length", l));
      if (Numbers.finite("sunk", sunk) < 0) {
        throw new IllegalArgumentException("sunk must not be below zero");
      }
    }
  }

  /** What holds the screw's thread. */
  public sealed interface Into permits InTapped, InNut {}

  /**
   * A tapped hole.
   *
   * @param material what it is tapped into
   * @param depth full thread from its mouth, mm, when it was measured
   * @param through whether the hole goes through, so that the screw cannot bottom
   * @param hole diameter of the hole that an insert is set into, mm, as its maker has it
   */
  public record InTapped(
      Tapped material, Optional<Double> depth, boolean through, Optional<Double> hole)
      implements Into {
    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public InTapped {
      depth.ifPresent(d -> Numbers.finite("depth", d));
      hole.ifPresent(d -> Numbers.positive("hole", d));
    }
  }

  /**
   * A nut.
   *
   * @param nut its form
   * @param washer what lies under it; empty: as many plain ones as bring the screw's end right
   * @param sunk how deep it is let into the face, mm
   */
  public record InNut(Nut nut, Optional<Washer> washer, double sunk) implements Into {
    /**
     * Refuses a depth that cannot be.
     *
     * @throws IllegalArgumentException naming the field
     */
    public InNut {
      if (Numbers.finite("sunk", sunk) < 0) {
        throw new IllegalArgumentException("sunk must not be below zero");
      }
    }
  }

  /**
   * What the hands do to a wheel on its hub; what is empty has the usual figure.
   *
   * @param torque about the hub axis, N m
   * @param pull in the plane of the plate, any way, N
   * @param push square to the plate at the farthest point of its outline, N
   */
  public record HandLoads(Optional<Double> torque, Optional<Double> pull, Optional<Double> push) {

    public static final HandLoads USUAL =
        new HandLoads(Optional.empty(), Optional.empty(), Optional.empty());

    /**
     * Refuses figures that are not finite.
     *
     * @throws IllegalArgumentException naming the field
     */
    public HandLoads {
      torque.ifPresent(v -> Numbers.finite("torque", v));
      pull.ifPresent(v -> Numbers.finite("pull", v));
      push.ifPresent(v -> Numbers.finite("push", v));
    }

    /** Whether nothing was written, so that the usual loads count. */
    public boolean usual() {
      return torque.isEmpty() && pull.isEmpty() && push.isEmpty();
    }
  }

  /** The usual joint of all holes of a role, which nobody wrote. */
  public static Joint usual(HoleRole role) {
    return new Joint(
        "",
        Optional.of(role),
        List.of(),
        Screw.USUAL,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        HandLoads.USUAL,
        Map.of());
  }

  /** The same with another screw, and something else under its head. */
  public Joint with(Screw other, Optional<Washer> under) {
    return new Joint(path, role, labels, other, under, front, back, into, loads, places);
  }

  /** Whether the shape file has this joint. */
  public boolean written() {
    return !path.isEmpty();
  }

  /** Where a key was written; the joint's place when it was left out; empty if nobody wrote it. */
  public Optional<Place> place(String key) {
    return Optional.ofNullable(places.getOrDefault(key, places.get("")));
  }
}
