package felloe.plate;

/** How the hub holes get their position; what each is worth stands in the hub practice. */
public enum HolePosition {
  /** Marked through the paper template and drilled. */
  TEMPLATE("template"),
  /** Drilled through the hub itself or a bush plate. */
  THROUGH_HUB("through-hub"),
  /** Made by a router, laser or waterjet. */
  MACHINE("machine");

  private final String word;

  HolePosition(String word) {
    this.word = word;
  }

  /** The word for it in shape files and in the hub practice, such as {@code through-hub}. */
  public String word() {
    return word;
  }
}
