package felloe.measure;

/** What a reading was taken over. */
public enum ReadingKind {
  /** From the outer edge of one hole to the outer edge of another. */
  OUTSIDE("outside"),
  /** Between the inner edges of two holes. */
  INSIDE("inside"),
  /** From centre to centre, or from an edge of the plate to a centre. */
  CENTRES("centres"),
  /** Across one hole. */
  DIAMETER("diameter"),
  /** From an edge of the plate to the near side of a hole. */
  NEAR_SIDE("near side"),
  /** From an edge of the plate to the far side of a hole. */
  FAR_SIDE("far side");

  private final String words;

  ReadingKind(String words) {
    this.words = words;
  }

  /** As a measured file writes it, such as {@code outside} or {@code near side}. */
  public String words() {
    return words;
  }

  /** How many times half the diameter of each hole adds to the distance of the centres. */
  int halves() {
    return switch (this) {
      case OUTSIDE, FAR_SIDE -> 1;
      case INSIDE, NEAR_SIDE -> -1;
      case CENTRES -> 0;
      case DIAMETER -> 2;
    };
  }
}
