package felloe.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A random YAML text in a random layout: lines and brackets, quotes, text blocks, comments. */
final class RandomText {

  private static final String[] PLAIN = {
    "60",
    "60 mm",
    "2.75 in",
    "-5",
    "12:40",
    "grip",
    "a b c",
    "größe",
    "x#y",
    "http://x",
    "true",
    "~",
    "3 x 4",
    "-",
    "日本",
    "😀 smile",
    "null"
  };
  private static final String[] SINGLE = {"'60'", "'a: b'", "'it''s'", "''", "' # x '", "'[1, 2]'"};
  private static final String[] DOUBLE = {
    "\"60\"", "\"a\\nb\"", "\"\"", "\"q\\\"q\"", "\"\\u00e9 😀\"", "\"- a\"", "\"{x}\""
  };
  private static final String[] KEYS = {
    "width",
    "rim_width",
    "hub-disc",
    "at",
    "\"a.b\"",
    "'odd: key'",
    "größe",
    "k",
    "\"😀\"",
    "use",
    "first_edge",
    "last-edge"
  };
  private static final String[] COMMENTS = {
    "# c", "#", "# a: b", "# 😀 smile", "# größe", "# 'quote", "# [x", "## - y"
  };

  private final SplittableRandom random;
  private final StringBuilder text = new StringBuilder();
  private final String ending;
  private final int step;
  private final int listStep;

  private RandomText(SplittableRandom random) {
    this.random = random;
    this.ending = random.nextInt(3) == 0 ? "\r\n" : "\n";
    this.step = 1 + random.nextInt(4);
    this.listStep = random.nextInt(3);
  }

  static String of(SplittableRandom random) {
    RandomText made = new RandomText(random);
    made.document();
    return made.text.toString();
  }

  private boolean chance(int of) {
    return random.nextInt(of) == 0;
  }

  private <T> T one(T[] of) {
    return of[random.nextInt(of.length)];
  }

  private void document() {
    text.append(chance(8) ? "\uFEFF" : "");
    ownComments(0);
    if (chance(8)) {
      text.append("---").append(chance(2) ? " # start" : "").append(ending);
    }
    int kind = random.nextInt(12);
    if (kind == 0) {
      ownComments(0);
    } else if (kind == 1) {
      flow(0, 0);
      lineEnd();
    } else if (kind == 2) {
      lines(0, 0);
    } else {
      group(0, 0, false);
    }
    ownComments(random.nextInt(4));
    if (chance(8)) {
      text.append("...").append(ending);
    } else if (chance(4)) {
      while (text.length() > 0 && "\r\n".indexOf(text.charAt(text.length() - 1)) >= 0) {
        text.setLength(text.length() - 1);
      }
    }
  }

  private void group(int column, int depth, boolean begun) {
    List<String> keys = keys();
    for (int i = 0; i < keys.size(); i++) {
      if (i > 0 || !begun) {
        ownComments(column);
        text.append(" ".repeat(column));
      }
      if (chance(25)) {
        text.append("? ").append(keys.get(i)).append(ending).append(" ".repeat(column)).append(':');
      } else {
        text.append(keys.get(i)).append(chance(15) ? " :" : ":");
      }
      value(column, depth, false);
    }
  }

  private void lines(int column, int depth) {
    lines(column, depth, false);
  }

  private void lines(int column, int depth, boolean begun) {
    int size = 1 + random.nextInt(4);
    int gap = chance(4) ? 3 : 1;
    for (int i = 0; i < size; i++) {
      if (i > 0 || !begun) {
        ownComments(column);
        text.append(" ".repeat(column));
      }
      text.append('-');
      int kind = depth > 3 ? 9 : random.nextInt(10);
      if (kind < 3) {
        text.append(" ".repeat(gap));
        group(column + 1 + gap, depth + 1, true);
      } else if (kind == 3) {
        text.append(" ".repeat(gap));
        lines(column + 1 + gap, depth + 1, true);
      } else {
        value(column, depth, true);
      }
    }
  }

  /** What follows a colon or a hyphen, up to the end of its last line. */
  private void value(int column, int depth, boolean item) {
    int kind = random.nextInt(depth > 3 ? 7 : 12);
    if (kind == 0) {
      lineEnd();
    } else if (kind == 1) {
      block(column);
    } else if (kind < 6) {
      text.append(chance(6) ? "   " : " ");
      if (chance(12)) {
        text.append(ending).append(" ".repeat(column + step));
      }
      scalar(false);
      lineEnd();
    } else if (kind < 8) {
      text.append(' ');
      flow(depth + 1, column + 1);
      lineEnd();
    } else {
      lineEnd();
      if (kind < 10) {
        group(column + step, depth + 1, false);
      } else {
        lines(column + (item ? 1 : 0) + listStep, depth + 1);
      }
    }
  }

  private void block(int column) {
    text.append(' ').append(chance(2) ? "|" : ">").append(one(new String[] {"", "-", "+"}));
    text.append(chance(4) ? " # head" : "").append(ending);
    int size = 1 + random.nextInt(3);
    for (int i = 0; i < size; i++) {
      text.append(" ".repeat(column + step))
          .append(one(new String[] {"one", "two: 2", "# no comment"}));
      text.append(ending).append(i + 1 < size && chance(4) ? ending : "");
    }
  }

  private void scalar(boolean inFlow) {
    int kind = random.nextInt(6);
    if (kind == 0) {
      text.append(one(SINGLE));
    } else if (kind == 1) {
      text.append(one(DOUBLE));
    } else {
      String plain = one(PLAIN);
      text.append(plain.equals("-") ? "--" : plain);
      text.append(!inFlow && chance(9) ? ", more" : "");
    }
  }

  private void flow(int depth, int column) {
    boolean list = chance(2);
    boolean tall = chance(5);
    text.append(list ? '[' : '{');
    List<String> keys = chance(6) ? List.of() : keys();
    for (int i = 0; i < keys.size(); i++) {
      if (tall) {
        text.append(chance(3) ? one(COMMENTS).indent(0).strip().replaceFirst("^", " ") : "");
        text.append(ending).append(" ".repeat(column + 2));
      } else if (i > 0) {
        text.append(chance(4) ? "" : " ");
      }
      boolean bare = list && chance(12);
      if (!list || bare) {
        text.append(keys.get(i));
        if (!bare && chance(10)) {
          text.append(chance(2) ? "" : ": ");
          text.append(i + 1 < keys.size() ? "," : "");
          continue;
        }
        text.append(": ");
      }
      if (depth < 4 && chance(4)) {
        flow(depth + 1, column + 2);
      } else {
        scalar(true);
      }
      text.append(i + 1 < keys.size() || chance(8) ? "," : "");
    }
    if (tall && !keys.isEmpty()) {
      text.append(chance(3) ? " # last" : "").append(ending).append(" ".repeat(column + 1));
    } else {
      text.append(chance(8) ? " " : "");
    }
    text.append(list ? ']' : '}');
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>();
    int size = 1 + random.nextInt(4);
    while (keys.size() < size) {
      String key = one(KEYS);
      if (!keys.contains(key)) {
        keys.add(key);
      }
    }
    return keys;
  }

  private void lineEnd() {
    if (chance(3)) {
      text.append(" ".repeat(1 + random.nextInt(5))).append(one(COMMENTS));
    } else if (chance(15)) {
      text.append("  ");
    }
    text.append(ending);
  }

  private void ownComments(int column) {
    while (chance(5)) {
      if (chance(2)) {
        text.append(" ".repeat(Math.max(0, column + random.nextInt(4) - 1))).append(one(COMMENTS));
      }
      text.append(ending);
    }
  }
}
