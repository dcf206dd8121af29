package felloe.plate;

/** What a window is for; the review asks different things of each. */
public enum WindowUse {
  /** Fingers go through it. */
  GRIP("grip window"),
  /** A display sits in it. */
  DISPLAY("display window"),
  /** A switch or button sits in it. */
  SWITCH("switch opening"),
  /** It only takes weight out, or has another use. */
  OPEN("window");

  private final String words;

  WindowUse(String words) {
    this.words = words;
  }

  /** The use in plain words, such as {@code grip window}. */
  public String words() {
    return words;
  }
}
