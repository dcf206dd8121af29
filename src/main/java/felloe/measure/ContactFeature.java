package felloe.measure;

/** What the jaws touch. */
public enum ContactFeature {
  /** Clear holes: of an old wheel, an adapter, a drilled plate. */
  HOLES("holes"),
  /** Screws or studs that stand in the hub. */
  SCREWS("screws"),
  /** The threaded holes of the hub itself; their size is that inside the thread. */
  THREADS("threaded holes");

  private final String words;

  ContactFeature(String words) {
    this.words = words;
  }

  /** In words, such as {@code threaded holes}. */
  public String words() {
    return words;
  }
}
