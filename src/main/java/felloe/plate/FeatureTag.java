package felloe.plate;

import java.util.Arrays;
import java.util.Optional;

/**
 * What a line of a drawing is the edge of. Drawings carry it beside the line, where no machine
 * looks, so that a drawing that is read again gives the same features the same names.
 *
 * @param label short name, such as {@code W1}
 * @param kind what it is, in the words of {@link HoleRole} and {@link WindowUse}, such as {@code
 *     grip window}
 */
public record FeatureTag(String label, String kind) {

  /** Whose data it is, where a file has room for those of an application. */
  public static final String APPLICATION = "FELLOE";

  /** The tag of a window. */
  public static FeatureTag of(Window window) {
    return new FeatureTag(window.label(), window.use().words());
  }

  /** The tag of a hole. */
  public static FeatureTag of(Hole hole) {
    return new FeatureTag(hole.label(), hole.role().words());
  }

  /**
   * The tag that was read beside a line; empty where it is none of ours.
   *
   * @param label as it stands there
   * @param kind as it stands there
   */
  public static Optional<FeatureTag> read(String label, String kind) {
    FeatureTag tag = new FeatureTag(label.strip(), kind.strip());
    boolean named = FeatureNumbers.isNumberedLabel(tag.label);
    boolean known = tag.role().isPresent() || tag.use().isPresent();
    return named && known ? Optional.of(tag) : Optional.empty();
  }

  /** The kind as one word: its spaces are hyphens. */
  public String kindToken() {
    return kind.replace(' ', '-');
  }

  /** What the hole is for, if it is one. */
  public Optional<HoleRole> role() {
    return Arrays.stream(HoleRole.values())
        .filter(role -> role != HoleRole.WINDOW && role.words().equals(kind))
        .findFirst();
  }

  /** What the window is for, if it is one. */
  public Optional<WindowUse> use() {
    return Arrays.stream(WindowUse.values()).filter(use -> use.words().equals(kind)).findFirst();
  }
}
