package felloe.board;

import java.util.ArrayList;
import java.util.List;

/** The states of a text, each of which can be gone back to and forth again. */
final class History {

  /** Characters of all states together, beyond which the oldest are forgotten. */
  private static final long MOST = 100_000_000;

  private final List<Step> steps = new ArrayList<>();
  private int at;

  /**
   * A state.
   *
   * @param text the whole text
   * @param did what led to it, in a word or two
   */
  record Step(String text, String did) {}

  History(String text, String did) {
    steps.add(new Step(text, did));
  }

  Step now() {
    return steps.get(at);
  }

  /** All states, the oldest first. */
  List<Step> all() {
    return List.copyOf(steps);
  }

  /** Which of them it is now. */
  int at() {
    return at;
  }

  /** Goes on with another text; states that were undone are gone. */
  void then(String text, String did) {
    steps.subList(at + 1, steps.size()).clear();
    steps.add(new Step(text, did));
    at++;
    long all = steps.stream().mapToLong(step -> step.text().length()).sum();
    // Only texts of megabytes ever come here.
    while (all > MOST && at > 0) {
      all -= steps.remove(0).text().length();
      at--;
    }
  }

  /** The same as part of the last step, such as one movement of a hand. */
  void amend(String text, String did) {
    steps.subList(at + 1, steps.size()).clear();
    steps.set(at, new Step(text, did));
  }

  void undo() {
    at = Math.max(0, at - 1);
  }

  void redo() {
    at = Math.min(steps.size() - 1, at + 1);
  }
}
