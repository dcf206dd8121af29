package felloe.cutting;

import felloe.geometry.Box;

/** The pieces that fall out of windows and large holes. */
final class WasteSlugs {

  /**
   * A slug from this size on in its narrower direction is held by tabs, mm: a smaller one falls
   * into the slot or is swept away, a larger one can tilt against the cutter. Common practice.
   */
  static final double LARGE = 10;

  private WasteSlugs() {}

  /** Whether what falls out inside a path is large enough to be held. */
  static boolean large(CutLine line, double cutter) {
    Box box = line.path().box();
    return Math.min(box.width(), box.height()) - cutter >= LARGE;
  }
}
