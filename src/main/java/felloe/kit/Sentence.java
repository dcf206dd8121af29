package felloe.kit;

import java.util.Locale;

/** Words made into the beginning of a sentence. */
public final class Sentence {

  private Sentence() {}

  /** The words with a capital at their beginning, in no language's own way; empty stays empty. */
  public static String begin(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
