package felloe.review;

import felloe.plate.Limit;
import felloe.yaml.BuiltIn;
import felloe.yaml.Fields;
import felloe.yaml.Problems;
import felloe.yaml.YamlTree;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** The program's limits as read from {@code felloe/limits.yaml}. */
final class LimitTable {

  private static final String RESOURCE = "/felloe/limits.yaml";

  /** Read once, when the first review asks. */
  static final LimitTable BUILT_IN = read();

  /**
   * A limit before it is scaled.
   *
   * @param factor the limit, or what the scale is multiplied by
   * @param least the smallest limit that may come of it
   * @param source its source with the basis in brackets
   */
  record Step(double factor, double least, String source) {
    Limit limit(Limit.Sense sense, double scale) {
      return new Limit(sense, LimitPair.rounded(Math.max(factor * scale, least)), source, false);
    }
  }

  /** The two steps of one row. */
  record Row(Optional<Step> caution, Optional<Step> fail) {
    LimitPair bounds(Limit.Sense sense, double scale) {
      return new LimitPair(
          caution.map(s -> s.limit(sense, scale)), fail.map(s -> s.limit(sense, scale)));
    }
  }

  private final Map<String, Map<String, Row>> rules = new LinkedHashMap<>();
  private final Map<String, Double> figures = new LinkedHashMap<>();

  private static LimitTable read() {
    return new LimitTable(BuiltIn.tree(RESOURCE));
  }

  LimitTable(YamlTree tree) {
    Problems problems = new Problems();
    Fields top = tree.fields(problems);
    top.integer("felloe-limits").between(1, 1).required();
    Fields byRule = top.mapping("rules").required();
    for (String rule : byRule.keys()) {
      Fields rows = byRule.mapping(rule).required();
      Map<String, Row> read = new LinkedHashMap<>();
      for (String row : rows.keys()) {
        read.put(row, row(rows.mapping(row).required()));
      }
      rules.put(rule, read);
    }
    Fields named = top.mapping("figures").required();
    for (String name : named.keys()) {
      Fields figure = named.mapping(name).required();
      figures.put(name, figure.number("value").notNegative().required());
      source(figure, "source", "basis");
    }
    top.done();
    problems.throwIfAny();
  }

  private static Row row(Fields fields) {
    String source = source(fields, "source", "basis");
    String failSource =
        fields.has("fail-source") ? source(fields, "fail-source", "fail-basis") : source;
    return new Row(step(fields, "caution", source), step(fields, "fail", failSource));
  }

  private static Optional<Step> step(Fields fields, String key, String source) {
    double least = fields.number(key + "-least").notNegative().or(0);
    OptionalDouble factor = fields.number(key).notNegative().optional();
    return factor.isPresent()
        ? Optional.of(new Step(factor.getAsDouble(), least, source))
        : Optional.empty();
  }

  private static String source(Fields fields, String source, String basis) {
    String text = fields.text(source).required();
    String words =
        fields.oneOf(basis, "verified", "computed", "memory", "common practice").required();
    return text + " (" + (words.equals("memory") ? "from memory" : words) + ")";
  }

  Optional<Row> row(String rule, String row) {
    return Optional.ofNullable(rules.getOrDefault(rule, Map.of()).get(row));
  }

  /** All rules that have rows, in the order of the file. */
  Map<String, Map<String, Row>> rules() {
    return rules;
  }

  double figure(String name) {
    Double figure = figures.get(name);
    if (figure == null) {
      throw new IllegalStateException("limits.yaml has no figure '" + name + "'");
    }
    return figure;
  }
}
