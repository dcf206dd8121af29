package felloe.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

  private static final String LENGTH = "must be a length such as 70, 70 mm, 7 cm or 2.75 in";
  private static final String ANGLE = "must be an angle in degrees such as 30, 30 deg or 30°";
  private static final String NUMBER = "must be a number such as 1.5";
  private static final String WHOLE = "must be a whole number such as 6";
  private static final String CLOCK = "must be a clock position such as 9, 10.5 or 10:30";
  private static final String FINITE =
      "must be a finite number; write a length such as 70, 70 mm," + " 7 cm or 2.75 in";

  private static double good(String text, Function<Entry, NumberField> read) {
    Problems problems = new Problems();
    Fields top = YamlTree.parse("h.yaml", "v: " + text + "\n").fields(problems);
    double value = read.apply(top.entry("v")).required();
    problems.throwIfAny();
    return value;
  }

  private static void bad(String text, Function<Entry, NumberField> read, String said) {
    Problems problems = new Problems();
    Fields top = YamlTree.parse("h.yaml", "v: " + text + "\n").fields(problems);
    assertTrue(Double.isNaN(read.apply(top.entry("v")).required()));
    String plain = text.replaceAll("^['\"]|['\"]$", "");
    Bad.found(problems, "h.yaml:1:4 v: '" + plain + "' " + said);
  }

  // The inch is 25.4 mm exactly (international yard and pound agreement, 1959; ISO 31-1, from
  // memory). 2.75 in = 69.85 mm.
  @ParameterizedTest
  @CsvSource({
    "70, 70",
    "70.0, 70",
    "+70, 70",
    "-12.5, -12.5",
    ".5, 0.5",
    "5., 5",
    "1e2, 100",
    "70 mm, 70",
    "70mm, 70",
    "7 cm, 70",
    "0.07 m, 70",
    "2.75 in, 69.85",
    "2.75in, 69.85",
    "2 3/4 in, 69.85",
    "2-3/4 in, 69.85",
    "3/4 in, 19.05",
    "-2 3/4 in, -69.85",
    "'\"70 mm\"', 70",
    "10000, 10000",
    "-10000 mm, -10000",
    "0, 0",
    "-0.0, 0"
  })
  void lengthsComeOutInMillimetres(String text, double expected) {
    double value = good(text, Entry::length);
    assertEquals(expected, value, 1e-12);
    assertEquals(0, Double.compare(0.0, value * 0.0 * Math.signum(value)), "no negative zero");
  }

  @Test
  void wrongLengthsSayWhatIsAllowedAndHowToCureIt() {
    bad("wide", Entry::length, LENGTH);
    bad("true", Entry::length, LENGTH);
    bad("3,5", Entry::length, LENGTH + "; write 3.5");
    bad("3,5 mm", Entry::length, LENGTH + "; write 3.5 mm");
    bad("'70'", Entry::length, LENGTH + "; take the quotes away");
    bad("0x1F", Entry::length, LENGTH + "; write it as a decimal number");
    bad("0o17", Entry::length, LENGTH + "; write it as a decimal number");
    bad("0b11", Entry::length, LENGTH + "; write it as a decimal number");
    bad("1_000", Entry::length, LENGTH + "; write 1000");
    bad("010", Entry::length, LENGTH + "; write it without the leading zero: 10");
    bad("70 ft", Entry::length, LENGTH + "; 'ft' is no unit of length here; write mm, cm, m or in");
    bad("2.75 inches", Entry::length, LENGTH + "; write 2.75 in");
    bad("70 MM", Entry::length, LENGTH + "; write 70 mm");
    bad("2 3/4", Entry::length, LENGTH + "; write the unit, as in '2 3/4 in'");
    bad("1/0 in", Entry::length, LENGTH);
    bad("70 mm wide", Entry::length, LENGTH);
    bad("1 2", Entry::length, LENGTH);
    bad("--5", Entry::length, LENGTH);
    bad("9".repeat(41), Entry::length, LENGTH);
  }

  @Test
  void numbersThatAreNotFiniteAreRefused() {
    for (String text : new String[] {".inf", "-.inf", ".NaN", "inf", "-Infinity", "nan", "1e999"}) {
      bad(text, Entry::length, FINITE);
    }
    bad("1e999 mm", Entry::length, FINITE);
    bad(".inf", Entry::number, "must be a finite number; write a number such as 1.5");
  }

  @Test
  void absurdNumbersAreRefused() {
    String range = "must be within 10 m (10000 mm) of zero; check the figure and its unit";
    bad("10000.1", Entry::length, range);
    bad("-11 m", Entry::length, range);
    bad("400 in", Entry::length, range);
    bad("361", Entry::angle, "must be from -360 to 360 degrees; check the figure and its unit");
    bad(
        "1e10",
        Entry::number,
        "must be from -1000000000 to 1000000000; check the figure and its unit");
  }

  // The decimal examples of YAML 1.2.2, 10.3.2 (core schema); from memory.
  @ParameterizedTest
  @CsvSource({
    "0, 0",
    "-19, -19",
    "0., 0",
    "-0.0, 0",
    ".5, 0.5",
    "+12e03, 12000",
    "-2E+05, -200000"
  })
  void numbersAreReadAsTheYamlCoreSchemaReadsThem(String text, double expected) {
    assertEquals(expected, good(text, Entry::number));
  }

  @ParameterizedTest
  @CsvSource({"30, 30", "30 deg, 30", "30°, 30", "-22.5deg, -22.5", "360, 360"})
  void anglesComeOutInDegrees(String text, double expected) {
    assertEquals(expected, good(text, Entry::angle));
  }

  @Test
  void wrongAnglesAndNumbersAreRefused() {
    bad("1 rad", Entry::angle, ANGLE + "; 'rad' is no unit of angle here; write degrees");
    bad("30 30", Entry::angle, ANGLE);
    bad("5 mm", Entry::number, NUMBER + "; write the figure alone, without a unit");
    bad("1/2", Entry::number, NUMBER);
  }

  @ParameterizedTest
  @CsvSource({
    "12, 90",
    "3, 0",
    "6, 270",
    "9, 180",
    "10.5, 135",
    "10:30, 135",
    "1.5, 45",
    "12:30, 75",
    "0.5, 75",
    "0:30, 75",
    "09:00, 180",
    "'\"10:30\"', 135",
    "4, 330",
    "12.0, 90"
  })
  void clockPositionsComeOutAsAngles(String text, double expected) {
    assertEquals(expected, good(text, Entry::clock), 1e-12);
  }

  @Test
  void wrongClockPositionsAreRefused() {
    String range =
        "must be a clock position above 0 and at most 12; write 12 for straight up, 3 for right";
    bad("0", Entry::clock, range);
    bad("12.5", Entry::clock, range);
    bad("-3", Entry::clock, range);
    bad("13:00", Entry::clock, range);
    bad("10:60", Entry::clock, CLOCK);
    bad("10,5", Entry::clock, CLOCK + "; write 10.5");
    bad("noon", Entry::clock, CLOCK);
  }

  // 1 ksi is 6.894757 MPa (NIST SP 811, table of conversions).
  @ParameterizedTest
  @CsvSource({
    "725, 725",
    "725 MPa, 725",
    "60 GPa, 60000",
    "7.17GPa, 7170",
    "250 kPa, 0.25",
    "1e6 Pa, 1",
    "40 ksi, 275.79028",
    "10 Msi, 68947.57"
  })
  void stressesComeOutInMegapascal(String text, double expected) {
    assertEquals(expected, good(text, Entry::stress), 1e-6 * expected);
  }

  // Standard gravity is 9.80665 m/s² (ISO 80000-3).
  @ParameterizedTest
  @CsvSource({"412, 412", "412 N, 412", "1.2 kN, 1200", "5 kg, 49.03325", "-3N, -3"})
  void forcesComeOutInNewtons(String text, double expected) {
    assertEquals(expected, good(text, Entry::force), 1e-9);
  }

  @Test
  void wrongStressesAndForcesAreRefused() {
    String stress = "must be a modulus or stress such as 60 GPa or 725 MPa";
    String force = "must be a force such as 412 N, 1.2 kN or a hung mass such as 5 kg";
    bad(
        "60 GPA",
        Entry::stress,
        stress + "; 'GPA' is no unit of stress here; write MPa, GPa, ksi" + " or Msi");
    bad("stiff", Entry::stress, stress);
    bad(
        "20000 GPa",
        Entry::stress,
        "must be within 10000 GPa (10000000 MPa) of zero; check the" + " figure and its unit");
    bad("90 lb", Entry::force, force + "; 'lb' is no unit of force here; write N, kN or kg");
    bad(
        "20000 kN",
        Entry::force,
        "must be within 10000 kN (10000000 N) of zero; check the figure" + " and its unit");
  }

  @Test
  void wholeNumbersHaveNoPoint() {
    Problems problems = new Problems();
    Fields top =
        YamlTree.parse("h.yaml", "a: 6\nb: 6.0\nc: 6.5\nd: 99999999999\ne: six\nf: 3\ng: 6 mm\n")
            .fields(problems);
    assertEquals(6, top.integer("a").between(2, 12).required());
    assertEquals(0, top.integer("b").required());
    assertEquals(4, top.integer("c").or(4));
    assertTrue(top.integer("d").optional().isEmpty());
    assertTrue(top.integer("e").optional().isEmpty());
    assertTrue(top.integer("f").atLeast(4, "a hub has four", "add screws").optional().isEmpty());
    assertTrue(top.integer("none").optional().isEmpty());
    top.integer("g").required();
    Bad.found(
        problems,
        "h.yaml:2:4 b: '6.0' " + WHOLE + "; write 6",
        "h.yaml:3:4 c: '6.5' " + WHOLE,
        "h.yaml:4:4 d: '99999999999' must be from -1000000000 to 1000000000; check the figure and"
            + " its unit",
        "h.yaml:5:4 e: 'six' " + WHOLE,
        "h.yaml:6:4 f: '3' must be at least 4 here (a hub has four); add screws",
        "h.yaml:7:4 g: '6 mm' " + WHOLE + "; write the figure alone, without a unit");
  }
}
