package felloe.shape;

import felloe.geometry.Numbers;
import java.util.ArrayList;
import java.util.List;

/** The characters of path data: command letters, numbers and flags. W3C SVG 2, section 9.3.9. */
final class PathScanner {

  static final String COMMANDS = "MmZzLlHhVvCcSsQqTtAa";

  /** Faults beyond this are not looked for. */
  static final int MOST_FAULTS = 20;

  private static final int LONGEST_QUOTE = 20;

  private final String data;
  private final double largest;
  private final List<PathFault> faults = new ArrayList<>();
  private int at;

  PathScanner(String data, double largest) {
    this.data = data;
    this.largest = largest;
    space();
  }

  /** Stops the reading of one command; the fault is already noted. */
  static final class Spoilt extends Exception {
    private static final long serialVersionUID = 1L;

    Spoilt() {
      super(null, null, false, false);
    }
  }

  List<PathFault> faults() {
    return faults;
  }

  boolean full() {
    return faults.size() >= MOST_FAULTS;
  }

  int offset() {
    return at;
  }

  boolean atEnd() {
    return at >= data.length();
  }

  boolean atCommand() {
    return !atEnd() && COMMANDS.indexOf(data.charAt(at)) >= 0;
  }

  private boolean atSpace() {
    return !atEnd() && " \t\n\f\r".indexOf(data.charAt(at)) >= 0;
  }

  private void space() {
    while (atSpace()) {
      at++;
    }
  }

  /** White space with at most one comma in it. */
  private void separator() throws Spoilt {
    space();
    if (!atEnd() && data.charAt(at) == ',') {
      int comma = at;
      at++;
      space();
      if (atEnd() || atCommand() || data.charAt(at) == ',') {
        at = comma;
        throw fault("must be followed by a number", "take the comma out");
      }
    }
  }

  /** Notes a fault at this character, quoting up to the next gap. */
  Spoilt fault(String wanted, String cure) {
    int end = at;
    while (end < data.length()
        && end - at < LONGEST_QUOTE
        && " \t\n\f\r,".indexOf(data.charAt(end)) < 0) {
      end++;
    }
    end = Math.max(end, Math.min(at + 1, data.length()));
    return fault(at, data.substring(at, end), wanted, cure);
  }

  Spoilt fault(int offset, String read, String wanted, String cure) {
    if (!full()) {
      faults.add(new PathFault(offset, read, wanted, cure));
    }
    return new Spoilt();
  }

  /** Goes on to the next command letter, which may be the very one that was not a number. */
  void skip() {
    while (!atEnd() && !atCommand()) {
      at++;
    }
  }

  char command() throws Spoilt {
    if (!atCommand()) {
      throw fault("is no path command", "use one of M L H V C S Q T A Z or their small letters");
    }
    char command = data.charAt(at++);
    space();
    return command;
  }

  /** Whether another number follows, so that the command repeats. */
  boolean more() throws Spoilt {
    separator();
    return !atEnd() && !atCommand() && (isNumberStart(data.charAt(at)) || unknown());
  }

  private boolean unknown() throws Spoilt {
    throw fault("is neither a number nor a path command", "");
  }

  private static boolean isNumberStart(char c) {
    return isDigit(c) || c == '+' || c == '-' || c == '.';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private int digits(int from) {
    int i = from;
    while (i < data.length() && isDigit(data.charAt(i))) {
      i++;
    }
    return i;
  }

  private boolean is(int i, String any) {
    return i < data.length() && any.indexOf(data.charAt(i)) >= 0;
  }

  /** A number, and the separator after it unless it is the last of its command. */
  double number(String what, boolean last) throws Spoilt {
    int start = at;
    int i = is(at, "+-") ? at + 1 : at;
    int whole = digits(i);
    int end = whole;
    boolean any = whole > i;
    if (is(whole, ".")) {
      end = digits(whole + 1);
      any |= end > whole + 1;
    }
    if (!any) {
      if (atEnd()) {
        throw fault("ends where " + what + " must follow", "complete or remove the last command");
      }
      throw fault("is not a number: " + what + " must follow", "");
    }
    if (is(end, "eE")) {
      int exponent = is(end + 1, "+-") ? end + 2 : end + 1;
      int stop = digits(exponent);
      end = stop > exponent ? stop : end;
    }
    double value = Double.parseDouble(data.substring(start, end));
    if (!(Math.abs(value) <= largest)) {
      throw fault("is beyond " + Numbers.brief(largest, 0) + " mm", "give it in mm");
    }
    at = end;
    if (!last) {
      separator();
    }
    return value;
  }

  /** A flag of an arc: 0 or 1, which need no separator after it. */
  boolean flag(String what) throws Spoilt {
    if (!is(at, "01")) {
      throw fault("must be 0 or 1: " + what, "");
    }
    boolean set = data.charAt(at) == '1';
    at++;
    separator();
    return set;
  }
}
