package felloe.review;

import felloe.geometry.Numbers;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.LimitOverride;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Names each limit of the shape file that lets pass what the program's own limit fails: such a
 * plate must not look like one that keeps the limits.
 */
final class LoosenedLimits {

  private static final String RULE = "own-limit";

  private LoosenedLimits() {}

  /**
   * A caution for each such limit.
   *
   * @param findings what was found with the limits of the shape file
   */
  static List<Finding> of(Reviewed reviewed, Limits limits, List<Finding> findings) {
    List<Finding> cautions = new ArrayList<>();
    for (LimitOverride override : limits.overrides()) {
      Rule rule =
          Review.rules().stream()
              .filter(r -> r.id().equals(override.rule()))
              .findFirst()
              .orElseThrow();
      List<Finding> own = findings.stream().filter(f -> f.rule().equals(rule.id())).toList();
      Optional<Finding> worst =
          rule.check(reviewed, Limits.builtIn()).stream()
              .filter(f -> f.verdict() == Verdict.FAIL)
              .filter(f -> own.stream().noneMatch(o -> same(o, f) && o.verdict() == Verdict.FAIL))
              .min(Comparator.comparingDouble(f -> f.figure().value()));
      worst.ifPresent(f -> cautions.add(caution(override, f)));
    }
    return cautions;
  }

  private static boolean same(Finding a, Finding b) {
    return a.subject().equals(b.subject());
  }

  private static Finding caution(LimitOverride override, Finding fails) {
    return new Finding(
        RULE,
        "A limit of your own lets pass what the usual one fails.",
        Verdict.CAUTION,
        override.rule() + " of " + fails.subject(),
        new Figure(fails.figure().name(), fails.figure().value(), fails.figure().unit()),
        fails.limit(),
        fails.at(),
        override.place(),
        "passes only by your limit of "
            + Numbers.brief(override.value(), 3)
            + "; take 'limits."
            + override.rule()
            + "' out to have it judged as usual");
  }
}
