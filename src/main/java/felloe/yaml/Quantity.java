package felloe.yaml;

import felloe.geometry.Numbers;
import felloe.plate.Weights;
import felloe.yaml.YamlValue.Scalar;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a number in a file may look like, by what it measures. */
enum Quantity {
  /** Millimetres; mm, cm, m and in may be written. */
  LENGTH("a length such as 70, 70 mm, 7 cm or 2.75 in", " mm", 10_000) {
    @Override
    String range() {
      return "must be within 10 m (10000 mm) of zero";
    }
  },
  /** Degrees; deg or the degree sign may be written. */
  ANGLE("an angle in degrees such as 30, 30 deg or 30°", " deg", 360) {
    @Override
    String range() {
      return "must be from -360 to 360 degrees";
    }
  },
  /** MPa; Pa, kPa, MPa, GPa, ksi and Msi may be written. */
  STRESS("a modulus or stress such as 60 GPa or 725 MPa", " MPa", 1e7) {
    @Override
    String range() {
      return "must be within 10000 GPa (10000000 MPa) of zero";
    }
  },
  /** Newtons; N, kN, and kg for what a hung mass weighs, may be written. */
  FORCE("a force such as 412 N, 1.2 kN or a hung mass such as 5 kg", " N", 1e7) {
    @Override
    String range() {
      return "must be within 10000 kN (10000000 N) of zero";
    }
  },
  /** A figure without unit. */
  NUMBER("a number such as 1.5", "", 1e9) {
    @Override
    String range() {
      return "must be from -1000000000 to 1000000000";
    }
  },
  /** A count. */
  WHOLE("a whole number such as 6", "", 1e9) {
    @Override
    String range() {
      return NUMBER.range();
    }
  },
  /** A clock position, read as an angle in degrees counter-clockwise from +x. */
  CLOCK("a clock position such as 9, 10.5 or 10:30", " deg", 12) {
    @Override
    String range() {
      return "must be a clock position above 0 and at most 12";
    }
  };

  private static final int LONGEST = 40;

  // A pound-force of 4.4482216152605 N on a square inch (NIST SP 811), in MPa.
  private static final double KSI = 4.4482216152605e3 / (25.4 * 25.4);

  // YAML 1.2.2, 10.3.2 (core schema), decimal forms only.
  private static final String NUMBER_FORM =
      "[-+]?(?:[0-9]+(?:\\.[0-9]*)?|\\.[0-9]+)(?:[eE][-+]?[0-9]+)?";
  private static final Pattern PLAIN = Pattern.compile(NUMBER_FORM);
  private static final Pattern WITH_UNIT =
      Pattern.compile("(" + NUMBER_FORM + ")\\s*([\\p{L}°\"″']+)");
  private static final Pattern FRACTION =
      Pattern.compile("([-+]?)(?:([0-9]{1,6})(?:\\s+|-))?([0-9]{1,6})/([0-9]{1,6})\\s*(\\p{L}*)");
  private static final Pattern TIME = Pattern.compile("([0-9]{1,2}):([0-5][0-9])");
  private static final Pattern LEADING_ZERO = Pattern.compile("([-+]?)0+([0-9].*)");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?\\.?(?:inf|infinity|nan)", Pattern.CASE_INSENSITIVE);

  private final String wanted;
  private final String unit;
  private final double greatest;

  Quantity(String wanted, String unit, double greatest) {
    this.wanted = wanted;
    this.unit = unit;
    this.greatest = greatest;
  }

  /**
   * A number that was read, or what is wrong with it.
   *
   * @param value the number, in mm or degrees; NaN when it is wrong
   * @param wanted what is allowed; empty when the number is right
   * @param cure what to do; may be empty
   */
  record Reading(double value, String wanted, String cure) {
    boolean good() {
      return wanted.isEmpty();
    }
  }

  /** What is wanted, with an example: {@code a length such as 70}. */
  String wanted() {
    return wanted;
  }

  /** What to say about a number beyond what is sensible. */
  abstract String range();

  /** A bound as text with its unit. */
  String withUnit(double value) {
    return Numbers.brief(value, 3) + unit;
  }

  /** Reads the text of a scalar. */
  Reading read(Scalar scalar) {
    String text = scalar.text().strip();
    if (text.length() > LONGEST) {
      return wrong("");
    }
    if (isSimple(text) && !scalar.quoted()) {
      return plain(text);
    }
    if (NOT_FINITE.matcher(text).matches()) {
      return new Reading(Double.NaN, "must be a finite number", "write " + wanted);
    }
    if (LEADING_ZERO.matcher(text).matches() && this != CLOCK) {
      Matcher zero = LEADING_ZERO.matcher(text);
      zero.matches();
      return wrong("write it without the leading zero: " + zero.group(1) + zero.group(2));
    }
    if (PLAIN.matcher(text).matches()) {
      return scalar.quoted() ? wrong("take the quotes away") : plain(text);
    }
    Reading special =
        switch (this) {
          case LENGTH -> length(text);
          case ANGLE -> angle(text);
          case STRESS -> stress(text);
          case FORCE -> force(text);
          case CLOCK -> time(text);
          default -> null;
        };
    return special == null ? wrong(cure(text)) : special;
  }

  /** What is tried only on a text that is no number; apart, so that no good file pays for it. */
  private static final class Slips {
    static final Pattern COMMA = Pattern.compile("([-+]?[0-9]+),([0-9]+)(.*)");
    static final Pattern UNDERSCORE = Pattern.compile("[-+]?[0-9]+(?:_[0-9]+)+(.*)");
    static final Pattern WITH_ANY_UNIT = Pattern.compile(NUMBER_FORM + "\\s*\\p{L}.*");
    static final Pattern TWO_UNITS =
        Pattern.compile("[^\\p{L}]*[0-9]\\s*\\p{L}+[^\\p{L}]*[0-9]\\s*\\p{L}+");
    static final Pattern BASED = Pattern.compile("[-+]?0[xXoObB][0-9a-fA-F_]+");

    private Slips() {}
  }

  /**
   * Whether a text is digits and at most one point between them, without a leading zero. Nearly all
   * numbers are; they are known without a pattern, which each start would have to compile.
   */
  private static boolean isSimple(String text) {
    int point = text.indexOf('.');
    int whole = point < 0 ? text.length() : point;
    boolean simple =
        whole > 0 && point < text.length() - 1 && (text.charAt(0) != '0' || whole == 1);
    for (int at = 0; simple && at < text.length(); at++) {
      char c = text.charAt(at);
      simple = c >= '0' && c <= '9' || at == point;
    }
    return simple;
  }

  /** A number in YAML's own decimal form; empty for any other text. */
  static OptionalDouble plainNumber(String text) {
    boolean word = !text.isEmpty() && Character.isLetter(text.charAt(0));
    return !word && text.length() <= LONGEST && PLAIN.matcher(text).matches()
        ? OptionalDouble.of(Double.parseDouble(text))
        : OptionalDouble.empty();
  }

  /** Whether the first character is one of 0 to 9. */
  static boolean startsWithDigit(String text) {
    return !text.isEmpty() && text.charAt(0) >= '0' && text.charAt(0) <= '9';
  }

  private Reading plain(String text) {
    if (this == WHOLE && (text.indexOf('.') >= 0 || !text.matches("[-+]?[0-9]+"))) {
      double value = Double.parseDouble(text);
      boolean whole = value == Math.rint(value) && Math.abs(value) <= greatest;
      return wrong(whole ? "write " + Numbers.brief(value, 3) : "");
    }
    double value = Double.parseDouble(text);
    return this == CLOCK ? clock(value) : checked(value);
  }

  private Reading checked(double value) {
    if (Double.isInfinite(value)) {
      return new Reading(Double.NaN, "must be a finite number", "write " + wanted);
    }
    if (Math.abs(value) > greatest) {
      return new Reading(Double.NaN, range(), "check the figure and its unit");
    }
    return new Reading(value + 0.0, "", "");
  }

  private Reading clock(double hours) {
    if (!(hours > 0 && hours <= 12)) {
      return new Reading(Double.NaN, range(), "write 12 for straight up, 3 for right");
    }
    double degrees = 90 - 30 * hours;
    return new Reading(degrees < 0 ? degrees + 360 : degrees, "", "");
  }

  private Reading time(String text) {
    Matcher time = TIME.matcher(text);
    if (!time.matches()) {
      return null;
    }
    int hours = Integer.parseInt(time.group(1));
    double fraction = Integer.parseInt(time.group(2)) / 60.0;
    return hours > 12
        ? clock(hours)
        : clock(hours % 12 + fraction == 0 ? 12 : hours % 12 + fraction);
  }

  private Reading angle(String text) {
    Matcher match = WITH_UNIT.matcher(text);
    if (!match.matches()) {
      return null;
    }
    String name = match.group(2);
    if (name.equals("deg") || name.equals("°")) {
      return checked(Double.parseDouble(match.group(1)));
    }
    return wrong("'" + name + "' is no unit of angle here; write degrees");
  }

  private Reading stress(String text) {
    Matcher match = WITH_UNIT.matcher(text);
    if (!match.matches()) {
      return null;
    }
    double value = Double.parseDouble(match.group(1));
    String name = match.group(2);
    return switch (name) {
      case "Pa" -> checked(value / 1e6);
      case "kPa" -> checked(value / 1e3);
      case "MPa" -> checked(value);
      case "GPa" -> checked(value * 1e3);
      case "ksi" -> checked(value * KSI);
      case "Msi" -> checked(value * KSI * 1000);
      default -> wrong("'" + name + "' is no unit of stress here; write MPa, GPa, ksi or Msi");
    };
  }

  private Reading force(String text) {
    Matcher match = WITH_UNIT.matcher(text);
    if (!match.matches()) {
      return null;
    }
    double value = Double.parseDouble(match.group(1));
    String name = match.group(2);
    return switch (name) {
      case "N" -> checked(value);
      case "kN" -> checked(value * 1e3);
      case "kg" -> checked(value * Weights.GRAVITY);
      default -> wrong("'" + name + "' is no unit of force here; write N, kN or kg");
    };
  }

  private Reading length(String text) {
    Matcher match = WITH_UNIT.matcher(text);
    if (match.matches()) {
      return inMillimetres(Double.parseDouble(match.group(1)), match.group(1), match.group(2));
    }
    Matcher fraction = FRACTION.matcher(text);
    if (!fraction.matches() || fraction.group(4).matches("0+")) {
      return null;
    }
    if (fraction.group(5).isEmpty()) {
      return wrong("write the unit, as in '" + text + " in'");
    }
    double whole = fraction.group(2) == null ? 0 : Integer.parseInt(fraction.group(2));
    double value =
        whole + (double) Integer.parseInt(fraction.group(3)) / Integer.parseInt(fraction.group(4));
    String number = text.substring(0, fraction.start(5)).strip();
    return inMillimetres(fraction.group(1).equals("-") ? -value : value, number, fraction.group(5));
  }

  private Reading inMillimetres(double value, String number, String name) {
    return switch (name) {
      case "mm" -> checked(value);
      case "cm" -> checked(value * 10);
      case "m" -> checked(value * 1000);
      case "in" -> checked(value * 25.4);
      case "inch", "inches", "\"", "″", "''", "IN", "In" -> wrong("write " + number + " in");
      case "MM", "Mm" -> wrong("write " + number + " mm");
      default -> wrong("'" + name + "' is no unit of length here; write mm, cm, m or in");
    };
  }

  private String cure(String text) {
    Matcher comma = Slips.COMMA.matcher(text);
    if (comma.matches()) {
      return "write " + comma.group(1) + "." + comma.group(2) + comma.group(3);
    }
    if (Slips.UNDERSCORE.matcher(text).matches()) {
      return "write " + text.replace("_", "");
    }
    if (Slips.BASED.matcher(text).matches()) {
      return "write it as a decimal number";
    }
    if (text.matches("[\u201c\u201d\u201e\u2018\u2019].*")) {
      return "take the quotes away";
    }
    if ((this == NUMBER || this == WHOLE) && Slips.WITH_ANY_UNIT.matcher(text).matches()) {
      return "write the figure alone, without a unit";
    }
    return Slips.TWO_UNITS.matcher(text).matches() ? "write one figure with one unit" : "";
  }

  private Reading wrong(String cure) {
    return new Reading(Double.NaN, "must be " + wanted, cure);
  }
}
