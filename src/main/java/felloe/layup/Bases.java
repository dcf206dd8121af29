package felloe.layup;

import felloe.plate.Basis;
import felloe.yaml.Fields;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the figures of a material come from.
 *
 * @param words for each key of the material's group, in the words of its file
 */
public record Bases(Map<String, String> words) {

  private static final String ALL = "all";

  /** Copies the map, its order kept. */
  public Bases {
    words = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(words));
  }

  /** Where the figure of a key comes from. */
  public String of(String key) {
    return words.getOrDefault(key, words.getOrDefault(ALL, "not stated"));
  }

  /** Whether the figure of a key rests on memory or on the trade's habit, and not on a source. */
  public boolean assumed(String key) {
    return Basis.isAssumed(of(key));
  }

  /**
   * Reads the group {@code basis}: one text for each key, or one for {@code all}. A key without one
   * is reported.
   */
  static Bases read(Fields f, List<String> keys) {
    Fields g = f.group("basis");
    Map<String, String> words = new LinkedHashMap<>();
    g.text(ALL).optional().ifPresent(text -> words.put(ALL, text));
    for (String key : keys) {
      if (g.has(key)) {
        words.put(key, g.text(key).required());
      } else if (f.has(key) && !words.containsKey(ALL)) {
        g.problem(
            "must say where '" + key + "' comes from",
            "add '" + key + ":' or 'all:' to basis, such as measured, or the data sheet's name");
      }
    }
    g.done();
    return new Bases(words);
  }
}
