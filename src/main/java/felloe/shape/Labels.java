package felloe.shape;

import felloe.plate.Hole;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives every window and hole a short label of its own. A label of the maker's stands as it is; a
 * row or mirrored feature numbers it; features without one are numbered by their kind.
 */
final class Labels {

  /** The longest label that a maker may give. */
  static final int LONGEST = 12;

  private final Reports reports;
  private List<Window> windows = List.of();
  private List<Hole> holes = List.of();

  Labels(Reports reports) {
    this.reports = reports;
  }

  /** Labels the features; empty labels ask for a number, labels ending in {@code #} for theirs. */
  void name(List<Window> rawWindows, List<Hole> rawHoles) {
    Map<String, String> taken = new HashMap<>();
    Map<String, Integer> next = new LinkedHashMap<>();
    List<Window> namedWindows = new ArrayList<>();
    for (Window w : rawWindows) {
      String label = label(w.label(), "W", next);
      namedWindows.add(new Window(label, w.use(), w.contour(), w.place()));
      claim(label, w.place(), taken);
    }
    List<Hole> namedHoles = new ArrayList<>();
    for (Hole h : rawHoles) {
      String prefix =
          switch (h.role()) {
            case BOLT -> "H";
            case BORE -> "B";
            case GRIP -> "G";
            case OTHER -> "D";
          };
      String label = label(h.label(), prefix, next);
      namedHoles.add(new Hole(label, h.role(), h.centre(), h.diameter(), h.place()));
      claim(label, h.place(), taken);
    }
    windows = List.copyOf(namedWindows);
    holes = List.copyOf(namedHoles);
  }

  private static String label(String wanted, String prefix, Map<String, Integer> next) {
    boolean own = !wanted.isEmpty() && !wanted.endsWith("#");
    if (own) {
      return wanted;
    }
    String stem = wanted.isEmpty() ? prefix : wanted.substring(0, wanted.length() - 1);
    return stem + next.merge(stem, 1, Integer::sum);
  }

  private void claim(String label, felloe.plate.Place place, Map<String, String> taken) {
    String before = taken.putIfAbsent(label, place.toString());
    if (before != null) {
      reports.add(
          place,
          "label",
          label,
          "is the label of another feature already (" + before + ")",
          "give each feature a label of its own");
    }
  }

  /** The labelled windows. */
  List<Window> windows() {
    return windows;
  }

  /** The labelled holes. */
  List<Hole> holes() {
    return holes;
  }
}
