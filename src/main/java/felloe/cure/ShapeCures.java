package felloe.cure;

import felloe.joints.JointPlan;
import felloe.plate.Finding;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.review.ReviewReport;
import felloe.yaml.YamlTree;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
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
  public static final int TRIALS = 12;

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
  private final Function<List<String>, Optional<Trial>> reading;
  private final ShapeFigures figures;
  private final Map<List<String>, Optional<Trial>> tried = new HashMap<>();
  private final Open before;
  private final Map<ShapeChange, Open> held = new LinkedHashMap<>();
  private final Map<Place, Map<Finding, Finding>> unmended = new HashMap<>();

  /** What is open of a review, looked up quickly: a shape of many holes has thousands. */
  private static final class Open {
    private final Set<List<String>> named = new HashSet<>();
    private final Map<String, Integer> fails = new HashMap<>();
    private final Map<String, Integer> all = new HashMap<>();

    Open(List<Finding> findings) {
      for (Finding one : findings) {
        if (one.isOpen()) {
          named.add(List.of(one.rule(), one.subject()));
          all.merge(one.rule(), 1, Integer::sum);
          fails.merge(one.rule(), one.verdict() == Verdict.FAIL ? 1 : 0, Integer::sum);
        }
      }
    }

    /** Whether a finding that was open before is gone, and its rule has fewer. */
    boolean mends(Finding finding, Open before) {
      String rule = finding.rule();
      return !named.contains(List.of(rule, finding.subject()))
          && all.getOrDefault(rule, 0) < before.all.getOrDefault(rule, 0);
    }

    /** Whether no rule has more fails, or more cautions and fails, than before. */
    boolean isHarmless(Open before) {
      return all.keySet().stream()
          .allMatch(
              rule ->
                  all.get(rule) <= before.all.getOrDefault(rule, 0)
                      && fails.get(rule) <= before.fails.getOrDefault(rule, 0));
    }
  }

  private ShapeCures(
      Plate plate,
      JointPlan joints,
      ReviewReport review,
      ShapeFigures figures,
      Function<List<String>, Optional<Trial>> reading) {
    this.plate = plate;
    this.joints = joints;
    this.before = new Open(review.findings());
    this.figures = figures;
    this.reading = reading;
  }

  /**
   * The review with advice that was tried.
   *
   * @param shape reads the shape file with its overrides; asked only where there is something to
   *     mend
   * @param reading reads the shape with overrides; empty when that makes no plate
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
    for (Map.Entry<ShapeChange, Open> one : held.entrySet()) {
      if (one.getValue().mends(finding, before)) {
        return finding.advised(finding.advice() + "; " + one.getKey().words());
      }
    }
    // Of one feature of the file and its mirror image.
    Map<Finding, Finding> sameFeature =
        unmended.computeIfAbsent(finding.place(), place -> new LinkedHashMap<>());
    for (Map.Entry<Finding, Finding> one : sameFeature.entrySet()) {
      if (finding.mirrors(one.getKey())) {
        return finding.advised(one.getValue().advice());
      }
    }
    Set<String> keys = new LinkedHashSet<>();
    boolean all = true;
    for (Knob knob : Knobs.of(finding, plate, joints, figures)) {
      int triedBefore = tried.size();
      Optional<ShapeChange> cure = cure(finding, knob);
      if (cure.isPresent()) {
        return finding.advised(finding.advice() + "; " + cure.get().words());
      }
      if (triedBefore < TRIALS) {
        keys.add(knob.keys());
      } else {
        all = false;
      }
    }
    Finding told =
        finding.advised(finding.advice() + "; " + ShapeChange.none(List.copyOf(keys), all));
    sameFeature.put(finding, told);
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
      if (new Open(now).mends(finding, before)) {
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

  private boolean isHarmless(ShapeChange change, List<Finding> now) {
    Open after = new Open(now);
    boolean harmless = after.isHarmless(before);
    if (harmless) {
      held.put(change, after);
    }
    return harmless;
  }

  private static boolean same(Finding a, Finding b) {
    return a.rule().equals(b.rule()) && a.subject().equals(b.subject());
  }
}
