package felloe.hub;

/**
 * Where a clearance hole lies among the three series of ISO 273: fine (hole tolerance H12), medium
 * (H13) and coarse (H14). For inch threads the close, normal and loose fits of ASME B18.2.8 stand
 * for the three.
 */
public enum ClearanceSeries {
  /** Smaller than the screw itself: it does not enter. */
  TOO_SMALL("smaller than the screw"),
  /** Smaller than any series allows; done in practice where holes are drilled through the hub. */
  BELOW_FINE("below the fine series"),
  /** At least the fine series. */
  FINE("fine series"),
  /** At least the medium series. */
  MEDIUM("medium series"),
  /** The coarse series. */
  COARSE("coarse series"),
  /** Larger than any series; the screw head has little to sit on. */
  ABOVE_COARSE("above the coarse series");

  /** A hole nearer than this to a series' figure has that figure, mm. */
  static final double SAME_DIAMETER = 0.005;

  private final String words;

  ClearanceSeries(String words) {
    this.words = words;
  }

  /** In words, such as {@code below the fine series}. */
  public String words() {
    return words;
  }

  /**
   * The series of a hole for a thread: the largest one whose figure the hole reaches.
   *
   * @param diameter of the hole, mm
   */
  public static ClearanceSeries of(ScrewThread thread, double diameter) {
    double d = diameter + SAME_DIAMETER;
    if (d < thread.diameter()) {
      return TOO_SMALL;
    }
    if (d < thread.fine()) {
      return BELOW_FINE;
    }
    if (d < thread.medium()) {
      return FINE;
    }
    if (d < thread.coarse()) {
      return MEDIUM;
    }
    return diameter - SAME_DIAMETER <= thread.coarse() ? COARSE : ABOVE_COARSE;
  }
}
