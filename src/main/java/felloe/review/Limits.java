package felloe.review;

import felloe.plate.BadInput;
import felloe.plate.Limit;
import felloe.plate.LimitOverride;
import felloe.plate.Problem;
import felloe.yaml.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The limits in force: those of the program with the shape file's own in their place.
 *
 * <p>An override takes the place of the limit beyond which a plate gets a caution. Where the
 * program fails a plate that the override still allows, the failing limit moves to the override:
 * what the maker allows is not failed, and the report says that the limit was overridden.
 */
public final class Limits {

  /** The source that an overridden limit names. */
  static final String OVERRIDDEN = "set in the shape file";

  private final LimitTable table;
  private final Map<String, LimitOverride> overrides;

  Limits(LimitTable table, Map<String, LimitOverride> overrides) {
    this.table = table;
    this.overrides = overrides;
  }

  /** The program's own limits. */
  public static Limits builtIn() {
    return new Limits(LimitTable.BUILT_IN, Map.of());
  }

  /**
   * The program's limits with overrides; of two for one rule the later holds.
   *
   * @throws BadInput when a rule is unknown or a limit is below zero; all of them in one
   */
  public static Limits with(List<LimitOverride> overrides) {
    List<Problem> problems = problems(overrides);
    if (!problems.isEmpty()) {
      throw new BadInput(problems);
    }
    Map<String, LimitOverride> byRule = new LinkedHashMap<>();
    overrides.forEach(override -> byRule.put(override.rule(), override));
    return new Limits(LimitTable.BUILT_IN, byRule);
  }

  /** What is wrong with overrides, each at its place; a reader of shape files may ask early. */
  public static List<Problem> problems(List<LimitOverride> overrides) {
    List<String> ids = Review.rules().stream().map(Rule::id).toList();
    return overrides.stream().flatMap(o -> problem(o, ids).stream()).toList();
  }

  private static Optional<Problem> problem(LimitOverride override, List<String> ids) {
    String who = "limits." + override.rule();
    if (!ids.contains(override.rule())) {
      String all = "rules: " + String.join(", ", ids);
      String cure =
          Nearest.to(override.rule(), ids)
              .map(near -> "did you mean '" + near + "'? " + all)
              .orElse(all);
      return Optional.of(
          new Problem(override.place(), who, "", "is not a rule of the review", cure));
    }
    if (override.value() < 0) {
      return Optional.of(
          new Problem(
              override.place(), who, "", "must not be below zero", "write a limit of 0 or more"));
    }
    return Optional.empty();
  }

  /**
   * The bounds of a rule.
   *
   * @param row which of its rows, such as a material kind
   * @param sense which side is good
   * @param scale what its factors are multiplied by; 1 where they are plain figures
   */
  LimitPair of(Rule rule, String row, Limit.Sense sense, double scale) {
    LimitPair standard = standard(rule, row, sense, scale);
    LimitOverride override = overrides.get(rule.id());
    if (override == null) {
      return standard;
    }
    Limit own = new Limit(sense, override.value(), OVERRIDDEN, true);
    Optional<Limit> fail =
        standard.fail().map(f -> own.keeps(f.value()) && !same(own, f) ? own : f);
    return new LimitPair(Optional.of(own), fail);
  }

  /**
   * Of a rule without any row nothing is said; of one that has rows, but not this one, a plate
   * would pass without a word.
   */
  private LimitPair standard(Rule rule, String row, Limit.Sense sense, double scale) {
    Optional<LimitTable.Row> found = table.row(rule.id(), row);
    if (found.isEmpty() && table.rules().containsKey(rule.id())) {
      throw new IllegalStateException(
          "limits.yaml has no row '" + row + "' for the rule " + rule.id());
    }
    return found.map(r -> r.bounds(sense, scale)).orElse(LimitPair.NONE);
  }

  private static boolean same(Limit a, Limit b) {
    return a.value() == b.value();
  }

  /** A figure that rules measure with. */
  double figure(String name) {
    return table.figure(name);
  }

  /** The overrides in force, in the order of the file. */
  public List<LimitOverride> overrides() {
    return List.copyOf(overrides.values());
  }
}
