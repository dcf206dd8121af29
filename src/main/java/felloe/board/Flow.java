package felloe.board;

import felloe.yaml.YamlValue;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.stream.Collectors;

/** A value as YAML on one line. */
final class Flow {

  private Flow() {}

  static String of(YamlValue value) {
    if (value instanceof Mapping group) {
      return group.entries().entrySet().stream()
          .map(e -> e.getKey() + ": " + of(e.getValue().value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof Sequence list) {
      return list.items().stream().map(Flow::of).collect(Collectors.joining(", ", "[", "]"));
    }
    Scalar one = (Scalar) value;
    return one.quoted() ? quotedIfNeeded(one.text()) : one.text();
  }

  /** A text as it can stand in a list or group on one line. */
  static String quotedIfNeeded(String text) {
    boolean plain = text.matches("[A-Za-z0-9_][A-Za-z0-9_ ./-]*") && !text.endsWith(" ");
    return plain ? text : '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
