package felloe.out;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One line of RS274/NGC code, read by the rules of NISTIR 6556, chapter 3.3 and 3.4: an optional
 * block delete, an optional line number, words and comments. Blanks and case do not matter outside
 * comments. Only explicit numbers are read: no parameters, no expressions.
 */
final class Rs274Block {

  /** Section 3.3: no more characters on a line than this (from memory). */
  private static final int LONGEST = 256;

  /** Table 4: G codes by modal group, those of this reader's machine. */
  private static final Map<String, Integer> GROUPS = groups();

  final List<String> codes = new ArrayList<>();
  final Map<Character, Double> words = new TreeMap<>();
  final List<String> comments = new ArrayList<>();

  private static Map<String, Integer> groups() {
    Map<String, Integer> groups = new HashMap<>();
    put(groups, 100, "G4");
    put(groups, 1, "G0", "G1", "G2", "G3", "G80", "G81", "G82", "G83");
    put(groups, 2, "G17", "G18", "G19");
    put(groups, 3, "G90", "G91");
    put(groups, 5, "G93", "G94");
    put(groups, 6, "G20", "G21");
    put(groups, 7, "G40");
    put(groups, 8, "G49");
    put(groups, 10, "G98", "G99");
    put(groups, 12, "G54");
    put(groups, 13, "G61", "G64");
    put(groups, 204, "M0", "M1", "M2", "M30", "M60");
    put(groups, 207, "M3", "M4", "M5");
    put(groups, 208, "M7", "M8", "M9");
    put(groups, 103, "G91.1");
    return groups;
  }

  private static void put(Map<String, Integer> groups, int group, String... codes) {
    for (String code : codes) {
      groups.put(code, group);
    }
  }

  /**
   * Reads a line.
   *
   * @param beyond what the line may hold that the report does not know
   * @throws Rs274Exception when the report calls it an error
   */
  Rs274Block(String line, Rs274Beyond beyond) {
    if (line.length() > LONGEST) {
      throw new Rs274Exception("line too long");
    }
    String code = withoutComments(line, beyond).replaceAll("[ \t]", "").toUpperCase();
    int at = code.startsWith("/") ? 1 : 0;
    boolean first = true;
    while (at < code.length()) {
      char letter = code.charAt(at++);
      int start = at;
      while (at < code.length() && "+-.0123456789".indexOf(code.charAt(at)) >= 0) {
        at++;
      }
      word(letter, code.substring(start, at), first, beyond);
      first = false;
    }
    checkGroups();
  }

  private String withoutComments(String line, Rs274Beyond beyond) {
    StringBuilder code = new StringBuilder();
    StringBuilder comment = null;
    for (char c : line.toCharArray()) {
      if (c < ' ' && c != '\t' || c > '~') {
        throw new Rs274Exception("not a character of the language");
      }
      if (comment == null && c == ';' && beyond.semicolons()) {
        comments.add(line.substring(line.indexOf(';') + 1).strip());
        return code.toString();
      } else if (comment == null && c == '(') {
        comment = new StringBuilder();
      } else if (comment != null && c == '(') {
        throw new Rs274Exception("comment in a comment");
      } else if (comment != null && c == ')') {
        comments.add(comment.toString());
        comment = null;
      } else if (comment != null) {
        comment.append(c);
      } else {
        code.append(c);
      }
    }
    if (comment != null) {
      throw new Rs274Exception("unclosed comment");
    }
    return code.toString();
  }

  private void word(char letter, String number, boolean first, Rs274Beyond beyond) {
    if (!number.matches("[+-]?([0-9]+[.]?[0-9]*|[.][0-9]+)")) {
      throw new Rs274Exception("bad number after " + letter + ": '" + number + "'");
    }
    double value = Double.parseDouble(number);
    switch (letter) {
      case 'N' -> {
        if (!first || !number.matches("[0-9]{1,5}")) {
          throw new Rs274Exception("bad line number");
        }
      }
      case 'G', 'M' -> {
        String code = letter + (value == Math.rint(value) ? "" + (int) value : "" + value);
        if (!GROUPS.containsKey(code) || code.equals("G91.1") && !beyond.statedCentres()) {
          throw new Rs274Exception("unknown code " + code);
        }
        codes.add(code);
      }
      case 'F', 'I', 'J', 'K', 'L', 'P', 'Q', 'R', 'S', 'X', 'Y', 'Z' -> {
        if (words.put(letter, value) != null) {
          throw new Rs274Exception("two " + letter + " words on a line");
        }
      }
      default -> throw new Rs274Exception("unknown word " + letter);
    }
  }

  private void checkGroups() {
    Map<Integer, String> seen = new HashMap<>();
    for (String code : codes) {
      String other = seen.put(GROUPS.get(code), code);
      if (other != null) {
        throw new Rs274Exception("two codes of one modal group: " + other + " and " + code);
      }
    }
    if (codes.stream().filter(code -> code.startsWith("M")).count() > 4) {
      throw new Rs274Exception("more than four M words");
    }
  }

  /** The code of a modal group on this line. */
  Optional<String> code(int group) {
    return codes.stream().filter(code -> GROUPS.get(code) == group).findFirst();
  }

  boolean has(String code) {
    return codes.contains(code);
  }

  boolean hasAny(String letters) {
    return letters.chars().anyMatch(c -> words.containsKey((char) c));
  }

  double get(char letter, double otherwise) {
    return words.getOrDefault(letter, otherwise);
  }

  double need(char letter) {
    if (!words.containsKey(letter)) {
      throw new Rs274Exception(letter + " word missing");
    }
    return words.get(letter);
  }
}
