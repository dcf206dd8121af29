package felloe.job;

import felloe.drilling.HoleGroup;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An act in its place in the order.
 *
 * @param act what is done
 * @param holes the holes that are drilled; empty for all other acts
 * @param work hours of work, where they are known
 * @param waiting hours before the next act, where there are any
 */
public record Task(
    Act act, Optional<HoleGroup> holes, OptionalDouble work, OptionalDouble waiting) {

  /** An act whose times nobody knows, and after which nothing is waited for. */
  static Task of(Act act) {
    return new Task(act, Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  /** The same with the hours that it takes. */
  Task working(double hours) {
    return new Task(act, holes, OptionalDouble.of(hours), waiting);
  }

  /** The same with the hours to wait after it. */
  Task waiting(double hours) {
    return new Task(act, holes, work, OptionalDouble.of(hours));
  }

  /** All hours of it that are known. */
  public double hours() {
    return work.orElse(0) + waiting.orElse(0);
  }
}
