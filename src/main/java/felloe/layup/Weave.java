package felloe.layup;

/** How the yarns of a cloth run. */
public enum Weave {
  /** One over, one under. */
  PLAIN,
  /** Two over, two under, with a diagonal rib. */
  TWILL,
  /** Long floats. */
  SATIN,
  /** All one way. */
  UNIDIRECTIONAL;

  /** Whether warp and weft are alike, so that a quarter turn changes nothing. */
  public boolean woven() {
    return this != UNIDIRECTIONAL;
  }
}
