package felloe.plate;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;

/**
 * Numbers features that have no label of their own: those of a row after the label of the row,
 * others after the letter of their kind. Numbers skip what is given away. One for each plate; it
 * remembers.
 */
public final class FeatureNumbers {

  /** The longest label that a maker may give, in characters. */
  public static final int LONGEST = 12;

  /** Stands in a wish where the number goes; no label of a maker's ends in it. */
  public static final String NUMBER = "#";

  /** A plate has no more features than a number of so many digits counts. */
  private static final int DIGITS = 4;

  private final Set<String> taken = new HashSet<>();
  private final Map<String, Integer> last = new HashMap<>();

  /** Whether a maker may give a feature this label. */
  public static boolean isLabel(String text) {
    return isLabel(text, LONGEST);
  }

  /** Whether a feature may have this label: a maker's, or one that was numbered. */
  public static boolean isNumberedLabel(String text) {
    return isLabel(text, LONGEST + DIGITS);
  }

  private static boolean isLabel(String text, int longest) {
    return !text.isBlank()
        && text.codePointCount(0, text.length()) <= longest
        && !text.endsWith(NUMBER)
        && text.codePoints().noneMatch(Character::isISOControl);
  }

  /** Gives a label away; false where it was given away before. */
  public boolean take(String label) {
    return taken.add(label);
  }

  /**
   * A label that was wished for, or the next of its kind.
   *
   * @param wish nothing, a label that was taken before, or a label that ends in {@link #NUMBER}
   *     where the number goes
   * @param kind the letter that numbers follow when nothing is wished for
   */
  public String granted(String wish, String kind) {
    if (!wish.isEmpty() && !wish.endsWith(NUMBER)) {
      return wish;
    }
    String stem = wish.isEmpty() ? kind : wish.substring(0, wish.length() - NUMBER.length());
    String label;
    do {
      label = stem + last.merge(stem, 1, Integer::sum);
    } while (!taken.add(label));
    return label;
  }

  /** A label for a window, by its wish. */
  public String window(String wish) {
    return granted(wish, "W");
  }

  /** A label for a hole, by its role and its wish. There is one bore, so it needs no number. */
  public String hole(HoleRole role, String wish) {
    return switch (role) {
      case BOLT -> granted(wish, "H");
      case BORE -> wish.isEmpty() && taken.add("B") ? "B" : granted(wish, "B");
      case GRIP -> granted(wish, "G");
      case OTHER, WINDOW -> granted(wish, "D");
    };
  }
}
