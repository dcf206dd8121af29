package felloe.out;

import felloe.plate.FeatureNumbers;
import felloe.plate.HoleRole;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * An entry of a shape file that makes features, and the labels that they must get.
 *
 * @param part of the file that it stands in
 * @param role of its holes; empty for windows
 * @param labels that its features must get, in the order in which they are made; an empty one may
 *     be any
 * @param given the label that is written; empty for none
 * @param lines the entry, written with what says its label: nothing, or such as {@code label: S}
 * @param singles entries of one feature each that make the same, for labels that no row has
 */
record LabelledEntry(
    Part part,
    Optional<HoleRole> role,
    List<String> labels,
    String given,
    Function<String, List<String>> lines,
    Supplier<List<LabelledEntry>> singles) {

  /** Parts of a shape file, in the order in which their features are numbered. */
  enum Part {
    WINDOWS,
    RINGS,
    BORE,
    HOLES
  }

  private static final Pattern PLAIN = Pattern.compile("[A-Za-z][A-Za-z0-9]*");

  private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,3}");

  /** Plain words that are no text. */
  private static final Set<String> NO_TEXT =
      Set.of("y", "n", "yes", "no", "on", "off", "true", "false", "null");

  LabelledEntry {
    labels = List.copyOf(labels);
  }

  /** An entry that is written without a label, if that gives the right ones. */
  static LabelledEntry of(
      Part part,
      Optional<HoleRole> role,
      List<String> labels,
      Function<String, List<String>> lines,
      Supplier<List<LabelledEntry>> singles) {
    return new LabelledEntry(part, role, labels, "", lines, singles);
  }

  /** An entry of one feature. */
  static LabelledEntry single(
      Part part, Optional<HoleRole> role, String label, Function<String, List<String>> lines) {
    return of(part, role, List.of(label), lines, List::of);
  }

  /** As it is written. */
  List<String> written() {
    return lines.apply(given.isEmpty() ? "" : "label: " + quoted(given));
  }

  private static String quoted(String label) {
    boolean plain =
        PLAIN.matcher(label).matches() && !NO_TEXT.contains(label.toLowerCase(Locale.ROOT));
    return plain ? label : '"' + label.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }

  private LabelledEntry giving(String label) {
    return new LabelledEntry(part, role, labels, label, lines, singles);
  }

  private LabelledEntry unnamed() {
    List<String> any = labels.stream().map(label -> "").toList();
    return new LabelledEntry(part, role, any, "", lines, singles);
  }

  /**
   * Entries that make the same features, each with its label, in the order of the file. Rows whose
   * labels no row has are written one by one; a label that cannot be given is left out.
   */
  static List<LabelledEntry> settled(List<LabelledEntry> entries) {
    List<LabelledEntry> now = new ArrayList<>(entries);
    while (true) {
      now.sort(Comparator.comparing(LabelledEntry::part));
      int wrong = firstWrong(now);
      if (wrong < 0) {
        return List.copyOf(now);
      }
      LabelledEntry entry = now.remove(wrong);
      now.addAll(wrong, entry.otherwise());
    }
  }

  /** What stands for it when its labels do not come by themselves. */
  private List<LabelledEntry> otherwise() {
    List<LabelledEntry> apart = singles.get();
    if (given.isEmpty() && FeatureNumbers.isLabel(stem())) {
      return List.of(giving(stem()));
    }
    return apart.isEmpty() ? List.of(unnamed()) : apart;
  }

  /** The label that would name its features: its own, or what those of a row begin with. */
  private String stem() {
    String first = labels.get(0);
    for (int digits = 1; labels.size() > 1 && digits < first.length(); digits++) {
      String stem = first.substring(0, first.length() - digits);
      String number = first.substring(stem.length());
      if (!NUMBER.matcher(number).matches()) {
        break;
      }
      int from = Integer.parseInt(number);
      boolean all =
          IntStream.range(0, labels.size()).allMatch(i -> labels.get(i).equals(stem + (from + i)));
      if (all) {
        return stem;
      }
    }
    return labels.size() == 1 ? first : "";
  }

  private static int firstWrong(List<LabelledEntry> entries) {
    FeatureNumbers numbers = new FeatureNumbers();
    for (int i = 0; i < entries.size(); i++) {
      LabelledEntry entry = entries.get(i);
      if (entry.labels.size() == 1 && !entry.given.isEmpty() && !numbers.take(entry.given)) {
        return i;
      }
    }
    for (int i = 0; i < entries.size(); i++) {
      if (!entries.get(i).comesOut(numbers)) {
        return i;
      }
    }
    return -1;
  }

  private boolean comesOut(FeatureNumbers numbers) {
    String wish = given.isEmpty() || labels.size() == 1 ? given : given + FeatureNumbers.NUMBER;
    for (String label : labels) {
      String granted = role.isPresent() ? numbers.hole(role.get(), wish) : numbers.window(wish);
      if (!label.isEmpty() && !label.equals(granted)) {
        return false;
      }
    }
    return true;
  }
}
