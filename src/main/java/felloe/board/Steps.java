package felloe.board;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The steps of a way through a shape file, such as {@code windows[0].at}. */
final class Steps {

  private static final Pattern STEP = Pattern.compile("\\[\\d+\\]|[^.\\[\\]]+");

  private Steps() {}

  /** Keys as they are, places in a list in brackets. */
  static List<String> of(String path) {
    List<String> steps = new ArrayList<>();
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      steps.add(step.group());
    }
    return steps;
  }

  /** The way to what holds a value; empty at the top. */
  static String above(String path) {
    int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
    return cut < 0 ? "" : path.substring(0, cut);
  }

  /** The last step. */
  static String last(String path) {
    List<String> steps = of(path);
    return steps.isEmpty() ? "" : steps.get(steps.size() - 1);
  }

  /** The way to a key of a group. */
  static String key(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }
}
