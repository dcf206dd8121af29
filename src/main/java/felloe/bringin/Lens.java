package felloe.bringin;

/**
 * What is believed of a lens before anything is seen.
 *
 * @param focal length, pixels
 * @param spread of its logarithm, standard deviation
 */
record Lens(double focal, double spread) {

  /**
   * Telephones show as much as lenses of 24 to 28 mm do on film, 0.69 to 0.81 of a photo's longer
   * side, their second lenses 48 to 77, cameras 28 to 70; from memory. Two spreads span 0.38 to
   * 1.9.
   */
  private static final double USUAL = 0.85;

  private static final double USUAL_SPREAD = 0.4;

  /**
   * Cameras write whole millimetres, and what was meant for far things: near ones are seen by a
   * lens that stands farther from its sensor; an assumption.
   */
  private static final double SAID_SPREAD = 0.05;

  /** Farther than so many spreads from what the marks say, the camera's words are of another. */
  private static final double CONTRADICTS = 3;

  /** Any lens. */
  static Lens usual(Light light) {
    return new Lens(USUAL * Math.max(light.width(), light.height()), USUAL_SPREAD);
  }

  /** The one that the camera tells. */
  static Lens said(double focal) {
    return new Lens(focal, SAID_SPREAD);
  }

  /**
   * Whether it may be the one that the marks tell.
   *
   * @param log of the focal length in pixels, by the marks
   * @param variance of that
   */
  boolean agrees(double log, double variance) {
    double off = log - Math.log(focal);
    return off * off <= CONTRADICTS * CONTRADICTS * (variance + spread * spread);
  }
}
