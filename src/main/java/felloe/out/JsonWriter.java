package felloe.out;

import felloe.geometry.Numbers;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * A JSON value as text (RFC 8259), UTF-8, ended by a line feed. What fits one line of {@value
 * #LINE} characters stands on one; everything else is indented by two spaces. Control characters
 * and the two line separators of Unicode are escaped; a half of a broken surrogate pair, which
 * UTF-8 cannot carry, becomes U+FFFD (RFC 7493 forbids it).
 */
public final class JsonWriter {

  /** Longest line that holds an array or object whole. */
  static final int LINE = 100;

  private final StringBuilder out = new StringBuilder();

  private JsonWriter() {}

  /** The value as bytes of a file. */
  public static byte[] write(Json value) {
    return text(value).getBytes(StandardCharsets.UTF_8);
  }

  /** The value as text, for a terminal or a pipe. */
  public static String text(Json value) {
    JsonWriter writer = new JsonWriter();
    writer.put(value, 0);
    return writer.out.append('\n').toString();
  }

  private void put(Json value, int depth) {
    int start = out.length();
    if (flat(value, start + LINE - 2 * depth)) {
      return;
    }
    out.setLength(start);
    boolean array = value instanceof Json.Array;
    out.append(array ? '[' : '{');
    String separator = "\n";
    if (value instanceof Json.Array list) {
      for (Json element : list.values()) {
        out.append(separator).append("  ".repeat(depth + 1));
        put(element, depth + 1);
        separator = ",\n";
      }
    } else if (value instanceof Json.Members object) {
      for (Map.Entry<String, Json> member : object.members().entrySet()) {
        out.append(separator).append("  ".repeat(depth + 1));
        quote(member.getKey());
        out.append(": ");
        put(member.getValue(), depth + 1);
        separator = ",\n";
      }
    }
    out.append('\n').append("  ".repeat(depth)).append(array ? ']' : '}');
  }

  /** Writes a value on one line; false, with rubbish left behind, when it gets too long. */
  private boolean flat(Json value, int limit) {
    if (value instanceof Json.Text text) {
      quote(text.value());
      return true;
    }
    if (value instanceof Json.Number number) {
      out.append(Numbers.brief(number.value(), number.decimals()));
      return true;
    }
    if (value instanceof Json.Truth truth) {
      out.append(truth.value());
      return true;
    }
    if (value instanceof Json.Array list) {
      return flat(list.values(), limit);
    }
    if (value instanceof Json.Members object) {
      return flat(object, limit);
    }
    out.append("null");
    return true;
  }

  private boolean flat(List<Json> values, int limit) {
    out.append('[');
    String separator = "";
    for (Json value : values) {
      out.append(separator);
      separator = ", ";
      if (!flat(value, limit) || out.length() > limit) {
        return false;
      }
    }
    out.append(']');
    return out.length() <= limit;
  }

  private boolean flat(Json.Members object, int limit) {
    out.append('{');
    Iterator<Map.Entry<String, Json>> members = object.members().entrySet().iterator();
    while (members.hasNext()) {
      Map.Entry<String, Json> member = members.next();
      quote(member.getKey());
      out.append(": ");
      if (!flat(member.getValue(), limit) || out.length() > limit) {
        return false;
      }
      out.append(members.hasNext() ? ", " : "");
    }
    out.append('}');
    return out.length() <= limit;
  }

  private void quote(String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (isHalf(text, i)) {
            out.append('\ufffd');
          } else if (Character.isISOControl(c) || c == '\u2028' || c == '\u2029') {
            String hex = Integer.toHexString(c);
            out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  /** Whether a character is a surrogate without its other half, which no encoding can carry. */
  private static boolean isHalf(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }
}
