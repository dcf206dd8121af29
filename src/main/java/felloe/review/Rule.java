package felloe.review;

import felloe.plate.Finding;
import java.util.List;

/** One rule of the review: a pure function from a plate and its screws to findings. */
public interface Rule {

  /** Its name in reports and in the shape file's limits: lower case words with hyphens. */
  String id();

  /** Why it exists, in one line. */
  String why();

  /** The unit of its figure and limit; empty for a ratio. */
  String unit();

  /**
   * Looks at a plate.
   *
   * @param of the plate, and the plan of its screws
   * @param limits the limits in force
   * @return what was found, always in the same order; none when the plate has nothing of the kind
   */
  List<Finding> check(Reviewed of, Limits limits);
}
