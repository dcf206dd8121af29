package felloe.cutting;

/**
 * Which way a right-hand cutter that turns clockwise, seen from above, travels along the edge.
 * Source: how the teeth meet the work, geometry; the words are the trade's.
 */
public enum CutDirection {
  /**
   * The finished edge lies to the right of travel, so each tooth bites thick and leaves thin:
   * counter-clockwise inside a window or hole, clockwise round the outline.
   */
  CLIMB,
  /** The finished edge lies to the left of travel: the other way round. */
  CONVENTIONAL
}
