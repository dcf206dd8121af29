package felloe.laminate;

/** Which of a ply's strain limits is nearest. */
public enum FailureMode {
  /** Pulled along axis 1. */
  TENSION_1("tension along 1"),
  /** Pressed along axis 1. */
  COMPRESSION_1("compression along 1"),
  /** Pulled along axis 2. */
  TENSION_2("tension along 2"),
  /** Pressed along axis 2. */
  COMPRESSION_2("compression along 2"),
  /** Sheared in the plane. */
  SHEAR("shear");

  private final String words;

  FailureMode(String words) {
    this.words = words;
  }

  /** The mode in words. */
  public String words() {
    return words;
  }
}
