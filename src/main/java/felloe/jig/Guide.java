package felloe.jig;

import felloe.plate.Hole;
import java.util.List;
import java.util.Optional;

/**
 * A hole of the jig that guides the drill.
 *
 * @param hole of the plate that it is for; the drill has its diameter
 * @param bore diameter of the printed hole, mm
 * @param bush the steel bush in it; empty where the drill runs in plastic
 * @param shares what may put the drilled hole off its place, each at its worst
 */
public record Guide(Hole hole, double bore, Optional<DrillBush> bush, List<Share> shares) {

  public Guide {
    shares = List.copyOf(shares);
  }

  /** What may put a drilled hole off its place. */
  public enum Cause {
    /** The printer's own places, scale apart. */
    PLACE,
    /** The printer's scale, over the distance from what locates the jig. */
    SCALE,
    /** Play of the jig on what locates it. */
    LOCATING,
    /** Joints between pieces on the way there. */
    JOINTS,
    /** Play of the bush in its printed hole. */
    BUSH,
    /** Play of the drill in its guide. */
    PLAY,
    /** The drill leans in its guide by that play: over the plate's thickness. */
    LEAN
  }

  /**
   * What one cause may do.
   *
   * @param cause which
   * @param mm the most, one way
   */
  public record Share(Cause cause, double mm) {}

  /** All causes at their worst, one on top of the other, mm. */
  public double worst() {
    return shares.stream().mapToDouble(Share::mm).sum();
  }

  /** What one cause may do at the most, mm; 0 when it does nothing. */
  public double of(Cause cause) {
    return shares.stream().filter(s -> s.cause() == cause).mapToDouble(Share::mm).sum();
  }

  /** All causes at their worst, but each its own way: the root of the sum of squares, mm. */
  public double likely() {
    return Math.sqrt(shares.stream().mapToDouble(s -> s.mm() * s.mm()).sum());
  }
}
