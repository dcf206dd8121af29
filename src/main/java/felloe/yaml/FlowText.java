package felloe.yaml;

import felloe.plate.Place;
import felloe.yaml.YamlValue.Mapping;
import felloe.yaml.YamlValue.Scalar;
import felloe.yaml.YamlValue.Sequence;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes values on one line, as they may stand anywhere in a file. */
public final class FlowText {

  private static final Place NOWHERE = Place.ofFile("");
  private static final HexFormat HEX = HexFormat.of().withUpperCase();

  /** Texts that mean themselves wherever they stand; others are tried. */
  private static final Pattern SURE =
      Pattern.compile("-?[\\p{L}\\p{N}](?:[ ._/+-]?[\\p{L}\\p{N}])*");

  private static final Pattern WORD = Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_-]*");

  private FlowText() {}

  /** A value on one line. */
  public static String of(YamlValue value) {
    if (value instanceof Scalar scalar) {
      return scalar(scalar);
    }
    if (value instanceof Sequence list) {
      return list.items().stream().map(FlowText::of).collect(Collectors.joining(", ", "[", "]"));
    }
    return ((Mapping) value)
        .entries().entrySet().stream()
            .map(entry -> key(entry.getKey()) + ": " + of(entry.getValue().value()))
            .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String scalar(Scalar scalar) {
    if (scalar.isNull()) {
      return scalar.text().isEmpty() ? "null" : scalar.text();
    }
    return !scalar.quoted() && standsPlain(scalar.text()) ? scalar.text() : quoted(scalar.text());
  }

  /** Whether a text means itself without quotes within brackets. */
  static boolean standsPlain(String text) {
    if (SURE.matcher(text).matches()) {
      return true;
    }
    Problems problems = new Problems();
    Optional<YamlValue> read =
        new TreeBuilder("", NOWHERE, "[" + text + "]", problems).build(ValuePath.TOP);
    return problems.none()
        && read.get() instanceof Sequence list
        && list.items().size() == 1
        && list.items().get(0) instanceof Scalar only
        && !only.quoted()
        && only.text().equals(text);
  }

  /** A key, in quotes unless it is a word. */
  static String key(String key) {
    boolean word =
        WORD.matcher(key).matches()
            && !new Scalar(NOWHERE, ValuePath.TOP, key, false).isNull()
            && !key.equalsIgnoreCase("true")
            && !key.equalsIgnoreCase("false");
    return word ? key : quoted(key);
  }

  /** A text in double quotes, on one line. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
      int c = text.codePointAt(at);
      switch (c) {
        case '"', '\\' -> quoted.append('\\').appendCodePoint(c);
        case '\n' -> quoted.append("\\n");
        case '\r' -> quoted.append("\\r");
        case '\t' -> quoted.append("\\t");
        default -> {
          if (isSeen(c)) {
            quoted.appendCodePoint(c);
          } else if (c > 0xFFFF) {
            quoted.append("\\U").append(HEX.toHexDigits(c, 8));
          } else {
            quoted.append("\\u").append(HEX.toHexDigits(c, 4));
          }
        }
      }
    }
    return quoted.append('"').toString();
  }

  /** Whether a character may stand in a file and shows itself there. */
  private static boolean isSeen(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.SURROGATE,
          Character.UNASSIGNED,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          false;
      default -> c != '\uFEFF';
    };
  }
}
