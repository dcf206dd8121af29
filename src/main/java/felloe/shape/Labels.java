package felloe.shape;

import felloe.plate.FeatureNumbers;
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
 * that ends in {@code #} where the number goes. When all wishes are known, {@link #windows} and
 * {@link #holes} grant them.
 */
final class Labels {

  private final Map<String, Place> given = new HashMap<>();
  private final FeatureNumbers numbers = new FeatureNumbers();

  /** Reads the label that an entry wishes for; empty when there is none. */
  static String read(Fields f) {
    String label = f.text("label").or("");
    if (label.codePointCount(0, label.length()) > FeatureNumbers.LONGEST) {
      f.problem(
          "label",
          "must be at most " + FeatureNumbers.LONGEST + " characters long",
          "shorten it; it is printed beside the feature");
      return "";
    }
    if (label.endsWith(FeatureNumbers.NUMBER)) {
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
      return label + FeatureNumbers.NUMBER;
    }
    Place before = given.putIfAbsent(label, f.place("label"));
    numbers.take(label);
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
      named.add(new Window(numbers.window(w.label()), w.use(), w.contour(), w.place()));
    }
    return List.copyOf(named);
  }

  /** The holes with their labels. */
  List<Hole> holes(List<Hole> wishing) {
    List<Hole> named = new ArrayList<>(wishing.size());
    for (Hole h : wishing) {
      named.add(h.named(numbers.hole(h.role(), h.label())));
    }
    return List.copyOf(named);
  }

  /** A label that was wished for, or the next of its kind. */
  String granted(String wish, String kind) {
    return numbers.granted(wish, kind);
  }
}
