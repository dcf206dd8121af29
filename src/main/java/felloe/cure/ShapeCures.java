package felloe.cure;

import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.review.ReviewReport;
import felloe.yaml.YamlTree;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * What mends the findings of a review: a change of the shape file that was written into it, read
 * and reviewed again, by which the finding passes and no rule has more to say than before. Where
 * the first such change holds, no other is tried.
 */
public final class ShapeCures {

  /** Shapes that are read again for one review at most: about as long as the review itself. */
  static final int TRIALS = 12;

  /** How often one figure is set anew before it is given up. */
  private static final int STEPS = 4;

  /** A shape with a change, read. */
  public interface Trial {
    /** What one rule finds in it. */
    List<Finding> of(String rule);

    /** What all find. */
    List<Finding> all();
  }

  private final Plate plate;
  private final JointPlan joints;
  private final ReviewReport review;
  private final Function<List<String>, Optional<Trial>> reading;
  private final ShapeFigures figures;
  private final Map<List<String>, Optional<Trial>> tried = new HashMap<>();
  private final Map<ShapeChange, List<Finding>> held = new LinkedHashMap<>();
  private final Map<Finding, Finding> unmended = new LinkedHashMap<>();

  private ShapeCures(
      Plate plate,
      JointPlan joints,
      ReviewReport review,
      ShapeFigures figures,
      Function<List<String>, Optional<Trial>> reading) {
    this.plate = plate;
    this.joints = joints;
    this.review = review;
    this.figures = figures;
    this.reading = reading;
  }

  /**
   * The review with advice that was tried.
   *
   * @param shape reads the shape file with its overrides; asked only where there is something to
   *     mend
   * @param reading reads the shape with overrides, as for {@code --set}; empty when that makes no
   *     plate
   */
  public static ReviewReport advised(
      Plate plate,
      JointPlan joints,
      ReviewReport review,
      Supplier<YamlTree> shape,
      Function<List<String>, Optional<Trial>> reading) {
    Predicate<Finding> mendable = f -> f.isOpen() && Knobs.suit(f);
    if (review.findings().stream().noneMatch(mendable)) {
      return review;
    }
    ShapeFigures figures = new ShapeFigures(shape.get());
    ShapeCures cures = new ShapeCures(plate, joints, review, figures, reading);
    Map<Finding, Finding> advised = new HashMap<>();
    // What fails comes first where there are more findings than trials.
    review.findings().stream()
        .filter(mendable)
        .sorted(Comparator.comparing(Finding::verdict).reversed())
        .forEach(f -> advised.put(f, cures.advised(f)));
    return new ReviewReport(
        review.findings().stream().map(f -> advised.getOrDefault(f, f)).toList(),
        review.cautions());
  }

  private Finding advised(Finding finding) {
    for (Map.Entry<ShapeChange, List<Finding>> one : held.entrySet()) {
      if (isGone(finding, one.getValue())) {
        return finding.advised(finding.advice() + "; " + one.getKey().words());
      }
    }
    for (Map.Entry<Finding, Finding> one : unmended.entrySet()) {
      // Of one feature of the file and its mirror image.
      if (finding.mirrors(one.getKey()) && finding.place().equals(one.getKey().place())) {
        return finding.advised(one.getValue().advice());
      }
    }
    Set<String> keys = new LinkedHashSet<>();
    boolean all = true;
    for (Knob knob : Knobs.of(finding, plate, joints, figures)) {
      int before = tried.size();
      Optional<ShapeChange> cure = cure(finding, knob);
      if (cure.isPresent()) {
        return finding.advised(finding.advice() + "; " + cure.get().words());
      }
      if (before < TRIALS) {
        keys.add(knob.keys());
      } else {
        all = false;
      }
    }
    Finding told =
        finding.advised(finding.advice() + "; " + ShapeChange.none(List.copyOf(keys), all));
    unmended.put(finding, told);
    return told;
  }

  /** The first setting of a figure by which a finding is gone, where it does no harm. */
  private Optional<ShapeChange> cure(Finding finding, Knob knob) {
    double limit = goal(finding);
    double was = finding.figure().value();
    double slope = knob.slope().orElse(0);
    double to = knob.reaching(limit - was, slope);
    for (int i = 0; i < STEPS; i++) {
      Optional<ShapeChange> change = knob.changed(to);
      Optional<Trial> trial = change.flatMap(this::read);
      if (trial.isEmpty()) {
        return Optional.empty();
      }
      List<Finding> now = trial.get().of(finding.rule());
      if (isGone(finding, now)) {
        return change.filter(c -> isHarmless(c, trial.get().all()));
      }
      OptionalDouble next = next(finding, knob, now, to);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      to = next.getAsDouble();
    }
    return Optional.empty();
  }

  /** The next setting, by what the last one gave; empty where it gave nothing. */
  private OptionalDouble next(Finding finding, Knob knob, List<Finding> now, double to) {
    Optional<Finding> still = now.stream().filter(f -> same(f, finding)).findFirst();
    if (still.isEmpty() || knob.slope().isEmpty()) {
      return OptionalDouble.empty();
    }
    double was = finding.figure().value();
    double gained = still.get().figure().value() - was;
    double lacks = goal(still.get()) - was;
    if (gained * lacks <= 0) {
      return OptionalDouble.empty();
    }
    double next = knob.reaching(lacks, (to - knob.now()) / gained);
    return next == to
        ? OptionalDouble.of(to + Math.copySign(knob.grain(), to - knob.now()))
        : OptionalDouble.of(next);
  }

  /** The figure that keeps the limit; of a fail the next limit, that of cautions, comes after. */
  private static double goal(Finding finding) {
    return finding.limit().orElseThrow().value();
  }

  private Optional<Trial> read(ShapeChange change) {
    List<String> sets = change.sets();
    if (!tried.containsKey(sets) && tried.size() >= TRIALS) {
      return Optional.empty();
    }
    return tried.computeIfAbsent(sets, reading);
  }

  private boolean isGone(Finding finding, List<Finding> now) {
    return now.stream().noneMatch(f -> f.isOpen() && same(f, finding))
        && count(now, finding.rule(), Verdict.CAUTION)
            < count(review.findings(), finding.rule(), Verdict.CAUTION);
  }

  /** Whether no rule has more fails, or more cautions and fails, than before. */
  private boolean isHarmless(ShapeChange change, List<Finding> now) {
    boolean harmless =
        now.stream()
            .map(Finding::rule)
            .distinct()
            .allMatch(
                rule ->
                    count(now, rule, Verdict.FAIL) <= count(review.findings(), rule, Verdict.FAIL)
                        && count(now, rule, Verdict.CAUTION)
                            <= count(review.findings(), rule, Verdict.CAUTION));
    if (harmless) {
      held.put(change, now);
    }
    return harmless;
  }

  /** How many findings of a rule are at least as bad. */
  private static long count(List<Finding> findings, String rule, Verdict verdict) {
    return findings.stream()
        .filter(f -> f.rule().equals(rule) && f.verdict().compareTo(verdict) >= 0)
        .count();
  }

  private static boolean same(Finding a, Finding b) {
    return a.rule().equals(b.rule()) && a.subject().equals(b.subject());
  }
}
