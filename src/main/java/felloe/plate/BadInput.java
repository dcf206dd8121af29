package felloe.plate;

import java.util.ArrayList;
import java.util.List;

/**
 * The user's input is wrong: a file or an option says something that cannot be. It holds every
 * problem found in one run, in reading order. It is neither a plate that fails a check nor a fault
 * of the program, so it has no stack trace.
 */
public final class BadInput extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;
  private final int more;

  public BadInput(Problem problem) {
    this(List.of(problem), 0);
  }

  /**
   * Several problems, in the order in which they are to be shown.
   *
   * @throws IllegalArgumentException if the list is empty
   */
  public BadInput(List<Problem> problems) {
    this(problems, 0);
  }

  /**
   * Several problems of which only the first are kept.
   *
   * @param problems those to show, in order
   * @param more how many more there were
   * @throws IllegalArgumentException if the list is empty or {@code more} is negative
   */
  public BadInput(List<Problem> problems, int more) {
    super(String.join("\n", lines(problems, more)), null, false, false);
    if (problems.isEmpty() || more < 0) {
      throw new IllegalArgumentException(
          "problems: " + problems.size() + " kept, " + more + " more");
    }
    this.problems = List.copyOf(problems);
    this.more = more;
  }

  /** The problems in reading order; never empty. */
  public List<Problem> problems() {
    return problems;
  }

  /** How many problems were found beyond those in {@link #problems()}. */
  public int more() {
    return more;
  }

  /** One line a problem, and a last line that counts those left out, if any were. */
  public List<String> lines() {
    return lines(problems, more);
  }

  private static List<String> lines(List<Problem> problems, int more) {
    List<String> lines = new ArrayList<>();
    for (Problem problem : problems) {
      lines.add(problem.line());
    }
    if (more > 0) {
      lines.add("and " + more + (more == 1 ? " more problem" : " more problems"));
    }
    return lines;
  }
}
