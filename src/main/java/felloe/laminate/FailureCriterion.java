package felloe.laminate;

/** By what a ply is said to have failed. */
public enum FailureCriterion {
  /** A strain along or across the fibres, or a shear, reaches its limit. */
  MAXIMUM_STRAIN("maximum strain"),
  /** Tsai and Wu's polynomial of the stresses reaches 1. */
  TSAI_WU("Tsai-Wu");

  private final String words;

  FailureCriterion(String words) {
    this.words = words;
  }

  /** The criterion in words. */
  public String words() {
    return words;
  }
}
