package felloe.document;

import felloe.geometry.Point;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Helps to put figures and names into sentences. */
public final class Phrase {

  private Phrase() {}

  /**
   * Words with something put in for each {@code {}}, in order.
   *
   * @param pattern the words
   * @param parts texts, whole numbers, quantities, or optional ones of these, which leave nothing
   *     when they are empty
   * @throws IllegalArgumentException when their number is not that of the places, or when one is a
   *     bare number with a fraction, whose places nobody has chosen
   */
  public static String of(String pattern, Object... parts) {
    StringBuilder text = new StringBuilder(pattern.length() + 16 * parts.length);
    int from = 0;
    for (Object part : parts) {
      int place = pattern.indexOf("{}", from);
      if (place < 0) {
        throw new IllegalArgumentException("no place for " + part + " in '" + pattern + "'");
      }
      text.append(pattern, from, place).append(words(part));
      from = place + 2;
    }
    if (pattern.indexOf("{}", from) >= 0) {
      throw new IllegalArgumentException("nothing for a place in '" + pattern + "'");
    }
    return text.append(pattern, from, pattern.length()).toString();
  }

  private static String words(Object part) {
    if (part instanceof String || part instanceof Integer || part instanceof Quantity) {
      return part.toString();
    }
    if (part instanceof Optional<?> optional) {
      return optional.map(Phrase::words).orElse("");
    }
    throw new IllegalArgumentException("not words: " + part.getClass());
  }

  /** A number of things, such as {@code 1 ply} or {@code 20 plies}. */
  public static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  /** A number of things whose plural has an s. */
  public static String count(int number, String one) {
    return count(number, one, one + "s");
  }

  /** Things one after another, {@code a, b and c}. */
  public static String list(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  /** The words with a capital at their beginning, in no language's own way. */
  public static String begin(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** A sentence: with a capital at its beginning and a stop at its end; empty stays empty. */
  public static String sentence(String words) {
    boolean ends = words.isEmpty() || ".?!:".indexOf(words.charAt(words.length() - 1)) >= 0;
    return begin(ends ? words : words + ".");
  }

  /** A place on the plate, mm. */
  public static String at(Point point) {
    return of("({}, {})", Quantity.fixed(point.x(), 1, ""), Quantity.fixed(point.y(), 1, ""));
  }
}
