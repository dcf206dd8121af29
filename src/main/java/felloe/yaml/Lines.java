package felloe.yaml;

/**
 * The lines of a text. A line ends in a line feed, a carriage return or both; its end is where that
 * begins.
 */
record Lines(String text) {

  /** What the first line ends in; a line feed where there is but one line. */
  String ending() {
    int end = end(0);
    return end == text.length() ? "\n" : text.substring(end, next(end));
  }

  /** Where the line of a character starts. */
  int start(int at) {
    int start = at;
    while (start > 0 && !isEnd(text.charAt(start - 1))) {
      start--;
    }
    return start;
  }

  /** Where the line of a character ends. */
  int end(int at) {
    int end = at;
    while (end < text.length() && !isEnd(text.charAt(end))) {
      end++;
    }
    return end;
  }

  /** Where the line after that of a character starts; the end of the text after the last. */
  int next(int at) {
    int end = end(at);
    if (end == text.length()) {
      return end;
    }
    return text.startsWith("\r\n", end) ? end + 2 : end + 1;
  }

  /** Where the line before one ends. */
  int endBefore(int start) {
    return text.startsWith("\r\n", start - 2) ? start - 2 : start - 1;
  }

  /** How many characters (Unicode code points) stand before a character in its line. */
  int column(int at) {
    return width(start(at), at);
  }

  int width(int from, int to) {
    return text.codePointCount(from, to);
  }

  /** The first character from here on that is no space or tab; an end of line is none. */
  int word(int at) {
    int word = at;
    while (word < text.length() && isSpace(text.charAt(word))) {
      word++;
    }
    return word;
  }

  /** The end of what stands before the spaces and tabs before a character. */
  int wordEnd(int at) {
    int end = at;
    while (end > 0 && isSpace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  boolean isEndAt(int at) {
    return at == text.length() || isEnd(text.charAt(at));
  }

  boolean has(int at, char c) {
    return at < text.length() && text.charAt(at) == c;
  }

  /** Whether nothing but spaces and tabs stands before it in its line. */
  boolean isFirst(int at) {
    return wordEnd(at) == start(at);
  }

  /** Whether there is no end of line between two characters. */
  boolean isOneLine(int from, int to) {
    return end(from) >= to;
  }

  /** The first character from here on that is no white space and in no comment. */
  int content(int from) {
    int at = from;
    while (at < text.length()) {
      char c = text.charAt(at);
      if (c == '#') {
        at = end(at);
      } else if (isSpace(c) || isEnd(c)) {
        at++;
      } else {
        break;
      }
    }
    return at;
  }

  private static boolean isSpace(char c) {
    return c == ' ' || c == '\t';
  }

  private static boolean isEnd(char c) {
    return c == '\n' || c == '\r';
  }
}
