package felloe.load;

import felloe.geometry.Point;
import java.util.List;

/** How the hub holds the plate. */
public sealed interface Support {

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
  }

  /**
   * The plate is held fast under the heads of the bolts, and behind it lies the hub's face, which
   * can push but not pull. Softer than a clamped plate, and the strains about the bolts show.
   *
   * @param bolts the bolts
   * @param face diameter of the hub's face, mm, about the hub axis
   */
  record Bolted(List<Bolt> bolts, double face) implements Support {
    /** Refuses a face that is not above 0. */
    public Bolted {
      bolts = List.copyOf(bolts);
      Support.positive(face);
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
