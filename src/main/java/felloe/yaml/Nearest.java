package felloe.yaml;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class Nearest {

  private static final int LONGEST = 40;

  private Nearest() {}

  /**
   * The word with the smallest distance, the first of equals; empty when none is near: the distance
   * may be a third of the longer word's length, at most 3.
   */
  public static Optional<String> to(String word, List<String> words) {
    if (word.isBlank() || word.length() > LONGEST) {
      return Optional.empty();
    }
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String candidate : words) {
      int distance = distance(word.toLowerCase(Locale.ROOT), candidate.toLowerCase(Locale.ROOT));
      int near = Math.min(3, Math.max(word.length(), candidate.length()) / 3);
      if (distance <= near && distance < least) {
        least = distance;
        best = candidate;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * The Damerau-Levenshtein distance in its restricted form (optimal string alignment): how many
   * letters must be added, taken out, changed or swapped with their neighbour.
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      d[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      d[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
