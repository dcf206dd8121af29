package felloe.yaml;

import felloe.plate.Problem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * The way from the top of a file to a value: keys and positions in lists, as in {@code
 * windows[2].radius}. Lists are counted from 0. A key with other characters than letters, digits,
 * hyphen and underscore is written in double quotes.
 */
public final class ValuePath {

  /** The top of the file; its text is empty. */
  static final ValuePath TOP = new ValuePath(null, null, -1);

  private final ValuePath parent;
  private final String key;
  private final int index;

  private ValuePath(ValuePath parent, String key, int index) {
    this.parent = parent;
    this.key = key;
    this.index = index;
  }

  ValuePath key(String name) {
    return new ValuePath(this, name, -1);
  }

  ValuePath item(int position) {
    return new ValuePath(this, null, position);
  }

  /** True for a position in a list, false for a key. */
  boolean isItem() {
    return key == null;
  }

  boolean isTop() {
    return parent == null;
  }

  String key() {
    return key;
  }

  int index() {
    return index;
  }

  /** The steps from below the top down to this value. */
  List<ValuePath> steps() {
    Deque<ValuePath> steps = new ArrayDeque<>();
    for (ValuePath step = this; step.parent != null; step = step.parent) {
      steps.addFirst(step);
    }
    return new ArrayList<>(steps);
  }

  ValuePath parent() {
    return parent;
  }

  /** The path as messages show it and as overrides take it. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    for (ValuePath step : steps()) {
      if (step.isItem()) {
        text.append('[').append(step.index).append(']');
      } else {
        text.append(text.length() == 0 ? "" : ".").append(shownKey(step.key));
      }
    }
    return text.toString();
  }

  private static String shownKey(String key) {
    if (!key.isEmpty() && key.length() <= Problem.LONGEST_VALUE) {
      if (key.codePoints().allMatch(ValuePath::isPlain)) {
        return key;
      }
    }
    return '"' + Problem.shown(key.replace("\\", "\\\\").replace("\"", "\\\"")) + '"';
  }

  /** True for a character that a key in a path may have without quotes. */
  static boolean isPlain(int c) {
    return Character.isLetterOrDigit(c) || c == '-' || c == '_';
  }
}
