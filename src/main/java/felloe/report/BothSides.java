package felloe.report;

import felloe.document.Phrase;
import felloe.plate.Finding;
import java.util.ArrayList;
import java.util.List;

/** Findings that a symmetric plate has left and right alike, told once. */
public final class BothSides {

  /** Before each space and each comma. */
  private static final String WORDS = "(?=[ ,])";

  private BothSides() {}

  /** The findings in their order; the second of two that mirror each other goes with the first. */
  public static List<Finding> once(List<Finding> findings) {
    List<Finding> left = new ArrayList<>(findings);
    List<Finding> told = new ArrayList<>();
    while (!left.isEmpty()) {
      Finding one = left.remove(0);
      Finding other = left.stream().filter(one::mirrors).findFirst().orElse(null);
      left.remove(other);
      told.add(other == null ? one : both(one, other));
    }
    return told;
  }

  private static Finding both(Finding a, Finding b) {
    return new Finding(
        a.rule(),
        a.why(),
        a.verdict(),
        Phrase.of("{}, on both sides", names(a.subject(), b.subject())),
        a.figure(),
        a.limit(),
        a.at(),
        a.place(),
        a.advice());
  }

  /** {@code rim beside L1 and L2} for {@code rim beside L1} and {@code rim beside L2}. */
  private static String names(String a, String b) {
    if (a.equals(b)) {
      return a;
    }
    List<String> one = List.of(a.split(WORDS));
    List<String> other = List.of(b.split(WORDS));
    int least = Math.min(one.size(), other.size());
    int before = 0;
    while (before < least && one.get(before).equals(other.get(before))) {
      before++;
    }
    int after = 0;
    while (after < least - before && last(one, after).equals(last(other, after))) {
      after++;
    }
    String start = String.join("", one.subList(0, one.size() - after));
    String rest = String.join("", other.subList(before, other.size()));
    return Phrase.of("{} and {}", start, rest.strip());
  }

  private static String last(List<String> words, int before) {
    return words.get(words.size() - 1 - before);
  }
}
