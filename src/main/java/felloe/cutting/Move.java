package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;

/** One movement of the cutter's tip. Lengths in mm, feeds in mm/min. */
public sealed interface Move permits Move.Travel, Move.Cut, Move.Sink, Move.Drill {

  /**
   * Travel clear of the stock, as fast as the machine goes: first straight up to the clearance
   * height, then across, never down.
   *
   * @param to where to, in plan
   */
  record Travel(Point to) implements Move {}

  /**
   * A cut along a line or arc while the height changes evenly: level in a pass, falling on a ramp
   * or helix, rising and falling over a tab.
   *
   * @param along the path in plan; a whole circle is one arc
   * @param fromZ height at its start
   * @param toZ height at its end
   * @param feed mm/min along the path
   */
  record Cut(Segment along, double fromZ, double toZ, double feed) implements Move {
    /**
     * Refuses figures that are not finite and a feed that is not above zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Cut {
      Numbers.finite("fromZ", fromZ);
      Numbers.finite("toZ", toZ);
      Numbers.positive("feed", feed);
    }
  }

  /**
   * A straight move down in the air or in a slot that is cut already, and of a V tool into the
   * stock; up to the clearance height a {@link Travel} does it.
   *
   * @param at where, in plan
   * @param toZ height at the end
   * @param feed mm/min
   */
  record Sink(Point at, double toZ, double feed) implements Move {
    /**
     * Refuses figures that are not finite and a feed that is not above zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Sink {
      Numbers.finite("toZ", toZ);
      Numbers.positive("feed", feed);
    }
  }

  /**
   * A drilled hole, from the approach height and back to it.
   *
   * @param at its centre
   * @param bottom depth of the point
   * @param peck depth of each peck; 0 for one go
   * @param feed mm/min
   */
  record Drill(Point at, double bottom, double peck, double feed) implements Move {
    /**
     * Refuses figures that are not finite and a feed that is not above zero.
     *
     * @throws IllegalArgumentException naming the field
     */
    public Drill {
      Numbers.finite("bottom", bottom);
      Numbers.finite("peck", peck);
      Numbers.positive("feed", feed);
    }
  }
}
