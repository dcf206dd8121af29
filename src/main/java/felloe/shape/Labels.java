package felloe.shape;

import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Window;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives every window and hole a short label of its own. A label of the maker's stands as it is; a
 * row or mirrored feature numbers it; features without one are numbered by their kind. Numbers skip
 * what the maker has given away.
 *
 * <p>While the file is read, a feature carries what is wished for: nothing, a label, or a label
 * that ends in {@code #} where the number goes. When all wishes are known, {@link #named} grants
 * them.
 */
final class Labels {

  /** The longest label that a maker may give, in characters. */
  static final int LONGEST = 12;

  private static final String NUMBER = "#";

  private final Map<String, Place> taken = new HashMap<>();
  private final Map<String, Integer> last = new HashMap<>();

  /** Reads the label that an entry wishes for; empty when there is none. */
  static String read(Fields f) {
    String label = f.text("label").or("");
    if (label.codePointCount(0, label.length()) > LONGEST) {
      f.problem(
          "label",
          "must be at most " + LONGEST + " characters long",
          "shorten it; it is printed beside the feature");
      return "";
    }
    if (label.endsWith(NUMBER)) {
      f.problem("label", "must not end in #", "leave the # out; rows are numbered by themselves");
      return "";
    }
    return label;
  }

  /**
   * What the features of one entry carry until they are named. The label of a single feature is
   * taken from here on; a second one like it is a problem.
   *
   * @param label as {@link #read} gave it
   * @param features how many features the entry makes
   */
  String wish(Fields f, String label, int features) {
    if (label.isEmpty()) {
      return "";
    }
    if (features > 1) {
      return label + NUMBER;
    }
    Place before = taken.putIfAbsent(label, f.place("label"));
    if (before != null) {
      f.problem(
          "label",
          "is the label of another feature already ("
              + GeometryProblems.where(before, f.place())
              + ")",
          "give each feature a label of its own");
    }
    return label;
  }

  /** The windows with their labels. */
  List<Window> windows(List<Window> wishing) {
    List<Window> named = new ArrayList<>(wishing.size());
    for (Window w : wishing) {
      named.add(new Window(granted(w.label(), "W"), w.use(), w.contour(), w.place()));
    }
    return List.copyOf(named);
  }

  /** The holes with their labels. */
  List<Hole> holes(List<Hole> wishing) {
    List<Hole> named = new ArrayList<>(wishing.size());
    for (Hole h : wishing) {
      String label =
          switch (h.role()) {
            case BOLT -> granted(h.label(), "H");
            case BORE -> bore(h.label());
            case GRIP -> granted(h.label(), "G");
            case OTHER, WINDOW -> granted(h.label(), "D");
          };
      named.add(h.named(label));
    }
    return List.copyOf(named);
  }

  /** There is one bore, so it needs no number. */
  private String bore(String wish) {
    boolean plain = wish.isEmpty() && taken.putIfAbsent("B", Place.BUILT_IN) == null;
    return plain ? "B" : granted(wish, "B");
  }

  /** A label that was wished for, or the next of its kind. */
  String granted(String wish, String kind) {
    if (!wish.isEmpty() && !wish.endsWith(NUMBER)) {
      return wish;
    }
    String stem = wish.isEmpty() ? kind : wish.substring(0, wish.length() - NUMBER.length());
    String label;
    do {
      label = stem + last.merge(stem, 1, Integer::sum);
    } while (taken.putIfAbsent(label, Place.BUILT_IN) != null);
    return label;
  }
}
