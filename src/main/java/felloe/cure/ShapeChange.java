package felloe.cure;

import java.util.ArrayList;
import java.util.List;

/**
 * A change of a shape file that mends a finding.
 *
 * @param settings figures that are changed together
 */
public record ShapeChange(List<Setting> settings) {

  /** Untried ones, and those that harm, are told by their keys; more than this many are not. */
  private static final int TOLD = 4;

  /**
   * One figure of the shape file.
   *
   * @param key where it stands, such as {@code windows[0].rectangle.width}
   * @param from what stands there now; empty when nothing does
   * @param to what to write
   */
  public record Setting(String key, String from, String to) {}

  public ShapeChange {
    settings = List.copyOf(settings);
  }

  /** The change of one figure. */
  public static ShapeChange of(String key, String from, String to) {
    return new ShapeChange(List.of(new Setting(key, from, to)));
  }

  /** As overrides of a shape file, such as {@code bore=30}. */
  public List<String> sets() {
    return settings.stream().map(s -> s.key() + "=" + s.to()).toList();
  }

  /** What to write. */
  public String words() {
    List<String> each = new ArrayList<>();
    for (Setting one : settings) {
      String now = one.from().isEmpty() ? " (new)" : " (now " + one.from() + ")";
      each.add(one.key() + ": " + one.to() + now);
    }
    String mends = settings.size() == 1 ? " mends it" : " together mend it";
    return "in the shape file, " + String.join(" and ", each) + mends;
  }

  /**
   * That nothing which was tried will do.
   *
   * @param keys of the figures that were changed, one at a time
   * @param all whether all that may help were tried
   */
  public static String none(List<String> keys, boolean all) {
    String end = "change several figures together, or draw it otherwise";
    if (keys.isEmpty()) {
      return all
          ? "no figure of the shape file was found to try: decide what gives way, and draw it anew"
          : "what would mend it was not tried beside so much else: mend other findings first";
    }
    String told = String.join(", ", keys.subList(0, Math.min(TOLD, keys.size())));
    String more = keys.size() > TOLD ? " and " + (keys.size() - TOLD) + " more" : "";
    return "no one figure mends it without harm elsewhere (tried: " + told + more + "): " + end;
  }
}
