package felloe.drilling;

/** What a step of making a hole does. In the order in which they are done. */
public enum Stage {
  /** The centre is marked. */
  MARK("mark"),
  /** A seat for the next drill. */
  SPOT("spot"),
  /** The first hole through. */
  PILOT("pilot"),
  /** A hole between pilot and finished size. */
  STEP("step"),
  /** The drill that makes the finished size, or comes nearest below it. */
  FINAL("final"),
  /** Opening with a saw or bit that is wider than any drill. */
  OPEN("open"),
  /** A row of holes inside the line of an opening. */
  CHAIN("chain"),
  /** Bringing a hole to its size by reamer. */
  REAM("ream"),
  /** Bringing an opening to its line by file or drum. */
  TRIM("trim"),
  /** Breaking the edges of a drilled hole with a countersink. */
  COUNTERSINK("countersink"),
  /** Breaking the edges of an opening by hand. */
  DEBURR("deburr");

  private final String words;

  Stage(String words) {
    this.words = words;
  }

  /** In the trade's word, such as {@code pilot}. */
  public String words() {
    return words;
  }
}
