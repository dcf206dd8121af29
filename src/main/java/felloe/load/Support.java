package felloe.load;

import felloe.geometry.Point;
import java.util.List;

/** How the hub holds the plate. */
public sealed interface Support {

  /** Whether the plate is held fast at a place: within the clamped circle, or under a head. */
  boolean holds(Point place);

  /**
   * All of the plate within a circle about the hub axis is held fast, as if the hub's face and the
   * screws made one piece with it. The stiffest that a hub can be.
   *
   * @param diameter of the circle, mm
   */
  record Clamped(double diameter) implements Support {
    /** Refuses a diameter that is not above 0. */
    public Clamped {
      Support.positive(diameter);
    }

    @Override
    public boolean holds(Point place) {
      return place.norm() <= diameter / 2;
    }
  }

  /**
   * The plate is held fast under the heads of the bolts, and behind it lies what can push but not
   * pull. Softer than a clamped plate, and the strains about the bolts show.
   *
   * @param bolts the bolts
   * @param bearing what lies behind the plate: the hub's face about its axis, or a spacer at each
   *     bolt
   */
  record Bolted(List<Bolt> bolts, List<Disc> bearing) implements Support {

    public Bolted {
      bolts = List.copyOf(bolts);
      bearing = List.copyOf(bearing);
    }

    /** With the hub's face behind, of a diameter in mm about the hub axis. */
    public Bolted(List<Bolt> bolts, double face) {
      this(bolts, List.of(new Disc(Point.ORIGIN, face)));
    }

    /** Each bolt on a spacer of its own, of a diameter in mm, and nothing else behind the plate. */
    static Bolted onSpacers(List<Bolt> bolts, double spacer) {
      return new Bolted(bolts, bolts.stream().map(b -> new Disc(b.at(), spacer)).toList());
    }

    @Override
    public boolean holds(Point place) {
      return bolts.stream().anyMatch(b -> b.at().distance(place) <= b.head() / 2);
    }

    /** How far what bears reaches from the hub axis, mm. */
    public double reach() {
      return bearing.stream().mapToDouble(d -> d.at().norm() + d.diameter() / 2).max().orElse(0);
    }
  }

  /**
   * Something round that bears.
   *
   * @param at its middle, mm
   * @param diameter mm
   */
  record Disc(Point at, double diameter) {
    /** Refuses a diameter that is not above 0. */
    public Disc {
      Support.positive(diameter);
    }
  }

  /**
   * A bolt through the plate.
   *
   * @param label of its hole
   * @param at its centre, mm
   * @param head diameter of what presses on the plate, head or washer, mm
   */
  record Bolt(String label, Point at, double head) {
    /** Refuses a head that is not above 0. */
    public Bolt {
      Support.positive(head);
    }
  }

  private static void positive(double diameter) {
    if (!(diameter > 0) || Double.isInfinite(diameter)) {
      throw new IllegalArgumentException("diameter must be above 0");
    }
  }
}
