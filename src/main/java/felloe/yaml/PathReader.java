package felloe.yaml;

import java.util.Optional;

/** Reads the text of a {@link ValuePath}. */
final class PathReader {

  private static final int END = -1;

  private final String text;
  private int at;

  PathReader(String text) {
    this.text = text;
  }

  /** The path that a text is; empty when it is none. */
  static Optional<ValuePath> whole(String text) {
    return new PathReader(text).upTo(END);
  }

  /** The path before an equals sign; empty when the text does not begin so. */
  Optional<ValuePath> path() {
    return upTo('=');
  }

  /** What follows the equals sign. */
  String rest() {
    return text.substring(at);
  }

  private Optional<ValuePath> upTo(int end) {
    ValuePath path = ValuePath.TOP;
    boolean start = true;
    while (true) {
      if (!start && peek() == end) {
        at++;
        return Optional.of(path);
      }
      if (peek() == '[') {
        at++;
        int from = at;
        while (peek() >= '0' && peek() <= '9') {
          at++;
        }
        if (at == from || at - from > 6 || peek() != ']') {
          return Optional.empty();
        }
        path = path.item(Integer.parseInt(text.substring(from, at)));
        at++;
      } else {
        if (!start) {
          if (peek() != '.') {
            return Optional.empty();
          }
          at++;
        }
        Optional<String> key = peek() == '"' ? quotedKey() : plainKey();
        if (key.isEmpty()) {
          return Optional.empty();
        }
        path = path.key(key.get());
      }
      start = false;
    }
  }

  private int peek() {
    return at < text.length() ? text.codePointAt(at) : END;
  }

  private Optional<String> plainKey() {
    int from = at;
    while (at < text.length() && ValuePath.isPlain(peek())) {
      at += Character.charCount(peek());
    }
    return at == from ? Optional.empty() : Optional.of(text.substring(from, at));
  }

  private Optional<String> quotedKey() {
    StringBuilder key = new StringBuilder();
    at++;
    while (at < text.length() && peek() != '"') {
      if (peek() == '\\') {
        at++;
      }
      if (peek() == END) {
        return Optional.empty();
      }
      key.appendCodePoint(peek());
      at += Character.charCount(peek());
    }
    boolean closed = peek() == '"';
    at++;
    return closed && !key.isEmpty() ? Optional.of(key.toString()) : Optional.empty();
  }
}
