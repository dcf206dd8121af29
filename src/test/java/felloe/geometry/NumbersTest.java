package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

  private final Locale before = Locale.getDefault();

  @AfterEach
  void giveTheLocaleBack() {
    Locale.setDefault(before);
  }

  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "ar-EG", "ar-EG-u-nu-arab", "th-TH-u-nu-thai", "hi-IN", "sv-SE"})
  void theMachinesLocaleLeavesNumbersAlone(String tag) {
    Locale.setDefault(Locale.forLanguageTag(tag));
    assertEquals("-1234.500", Numbers.fixed(-1234.5, 3));
    assertEquals("-1234.5", Numbers.brief(-1234.5, 3));
    assertEquals("(1234.5, -0.25)", new Point(1234.5, -0.25).toString());
  }

  @ParameterizedTest
  @CsvSource({
    "0, 3, 0.000, 0",
    "-0.0, 3, 0.000, 0",
    "-0.0004, 3, 0.000, 0",
    "-0.0006, 3, -0.001, -0.001",
    "70, 3, 70.000, 70",
    "100, 0, 100, 100",
    "2.5, 0, 3, 3",
    "-2.5, 0, -3, -3",
    "0.5, 0, 1, 1",
    "1e-12, 6, 0.000000, 0",
    "1e21, 1, 1000000000000000000000.0, 1000000000000000000000",
    "123456789.125, 2, 123456789.13, 123456789.13",
    "0.1, 20, 0.10000000000000000555, 0.10000000000000000555",
    "4.9e-324, 3, 0.000, 0",
  })
  void numbersAreWrittenOutInFull(double value, int decimals, String fixed, String brief) {
    assertEquals(fixed, Numbers.fixed(value, decimals));
    assertEquals(brief, Numbers.brief(value, decimals));
  }

  @Test
  void theRoundingIsThatOfTheExactBinaryValue() {
    // 1.005 as a double lies below the decimal 1.005; 1.125 is exact
    assertEquals("1.00", Numbers.fixed(1.005, 2));
    assertEquals("1.13", Numbers.fixed(1.125, 2));
  }

  @Test
  void theLargestDoubleNeedsNoExponent() {
    assertTrue(Numbers.fixed(Double.MAX_VALUE, 1).matches("\\d{309}\\.0"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNoNumberIsNeverWritten(double value) {
    assertThrows(IllegalArgumentException.class, () -> Numbers.fixed(value, 3));
    assertThrows(IllegalArgumentException.class, () -> Numbers.brief(value, 3));
    IllegalArgumentException named =
        assertThrows(IllegalArgumentException.class, () -> Numbers.finite("rise", value));
    assertEquals("rise must be a finite number, not " + value, named.getMessage());
    assertThrows(IllegalArgumentException.class, () -> new Point(value, 0));
    assertThrows(IllegalArgumentException.class, () -> new Point(0, value));
    assertThrows(IllegalArgumentException.class, () -> new Box(0, 0, 1, value));
    assertThrows(IllegalArgumentException.class, () -> RigidTransform.turn(value));
    assertThrows(IllegalArgumentException.class, () -> Contour.circle(Point.ORIGIN, value));
    assertThrows(
        IllegalArgumentException.class, () -> Offset.of(Contour.circle(Point.ORIGIN, 5), value));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.0, -1e-300, -5, Double.NaN, Double.POSITIVE_INFINITY})
  void whatMustBeAboveZeroIsRefusedByName(double value) {
    IllegalArgumentException named =
        assertThrows(IllegalArgumentException.class, () -> Numbers.positive("rise", value));
    String wanted = Double.isFinite(value) ? "above zero" : "a finite number";
    assertEquals("rise must be " + wanted + ", not " + value, named.getMessage());
    assertEquals(1e-300, Numbers.positive("rise", 1e-300), 0);
  }
}
