package felloe.service;

import java.util.Optional;

/** What gave way so that a wheel passes. */
public sealed interface WheelGave {

  /**
   * It is wider than was wished.
   *
   * @param wished mm
   * @param made mm
   * @param circle largest circle of the hub's screws, mm
   * @param openTop whether it is the open top that is never narrower
   */
  record Wider(double wished, double made, double circle, boolean openTop) implements WheelGave {}

  /** The hub's screws must be stronger than the usual ones, or differently laid under. */
  record Stronger(Screws screws) implements WheelGave {}

  /** Openings that hub and hands leave no room for. */
  enum LeftOut implements WheelGave {
    SWITCHES,
    DISPLAY
  }

  /**
   * Screws of a hub.
   *
   * @param strength their class or grade, as a shape file has it; empty for the usual
   * @param large whether large washers lie under their heads
   */
  record Screws(Optional<String> strength, boolean large) {

    /** Whether they are the usual ones. */
    boolean usual() {
      return strength.isEmpty() && !large;
    }
  }
}
