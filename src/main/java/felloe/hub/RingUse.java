package felloe.hub;

/** How a hub with two rings of threaded holes is used. */
public enum RingUse {
  /** The plate is bolted to one ring or the other. */
  EITHER,
  /** Screws go into both. */
  BOTH
}
