package felloe.kit;

import felloe.yaml.Nearest;
import java.util.List;
import java.util.Optional;

/** Finds the word that was probably meant; for faces, which have words of their own. */
public final class Suggestion {

  private Suggestion() {}

  /** The nearest of the words, when one is near. */
  public static Optional<String> nearest(String word, List<String> words) {
    return Nearest.to(word, words);
  }
}
