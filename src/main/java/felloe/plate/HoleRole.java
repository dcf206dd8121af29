package felloe.plate;

/** What a round hole is for. */
public enum HoleRole {
  /** Takes a screw into the hub. */
  BOLT("hub bolt"),
  /** The centre opening round the hub axis. */
  BORE("bore"),
  /** Takes a screw through a grip. */
  GRIP("grip screw"),
  /** Any other hole that is drilled. */
  OTHER("hole"),
  /**
   * A round window that is drilled or sawn like a hole. No hole of a plate has this role; {@link
   * Plate#benchHoles} gives it to round windows.
   */
  WINDOW("round opening");

  private final String words;

  HoleRole(String words) {
    this.words = words;
  }

  /** The role in the trade's words, such as {@code hub bolt}. */
  public String words() {
    return words;
  }
}
