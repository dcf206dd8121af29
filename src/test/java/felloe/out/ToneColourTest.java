package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class ToneColourTest {

  private static final int BANDS = 12;

  /** The curve of sRGB, IEC 61966-2-1, from memory. */
  private static double light(double level) {
    double c = level / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double[] linear(ToneColour c) {
    return new double[] {light(c.red()), light(c.green()), light(c.blue())};
  }

  private static ToneColour band(int i) {
    return ToneColour.of(i / (BANDS - 1.0));
  }

  /** OKLab from linear light, by the forward matrices of B. Ottosson 2020, from memory. */
  private static double[] oklab(double[] c) {
    double l = Math.cbrt(0.4122214708 * c[0] + 0.5363325363 * c[1] + 0.0514459929 * c[2]);
    double m = Math.cbrt(0.2119034982 * c[0] + 0.6806995451 * c[1] + 0.1073969566 * c[2]);
    double s = Math.cbrt(0.0883024619 * c[0] + 0.2817188376 * c[1] + 0.6299787005 * c[2]);
    return new double[] {
      0.2104542553 * l + 0.7936177850 * m - 0.0040720468 * s,
      1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s,
      0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s
    };
  }

  private static double difference(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  /** White is 1, 0, 0 in OKLab: both ways of the matrices agree. */
  @Test
  void whiteHasLightnessOne() {
    double[] white = oklab(new double[] {1, 1, 1});
    assertEquals(1, white[0], 1e-6);
    assertEquals(0, white[1], 1e-6);
    assertEquals(0, white[2], 1e-6);
  }

  @Test
  void lightnessFallsInEvenSteps() {
    double whole = oklab(linear(band(0)))[0] - oklab(linear(band(BANDS - 1)))[0];
    assertTrue(whole > 0.48, "it spans " + whole);
    for (int i = 1; i < BANDS; i++) {
      double step = oklab(linear(band(i - 1)))[0] - oklab(linear(band(i)))[0];
      // What is left is the rounding to 255 levels.
      assertEquals(whole / (BANDS - 1), step, 0.003, "step " + i);
    }
  }

  /** No channel is cut off: else lightness would not be what was asked for. */
  @Test
  void allTonesAreColoursOfTheScreen() {
    for (int i = 0; i <= 1000; i++) {
      double tone = i / 1000.0;
      assertEquals(0.965 - 0.505 * tone, oklab(linear(ToneColour.of(tone)))[0], 0.004, "" + tone);
    }
  }

  /** Luminance of Rec. ITU-R BT.709, and luma of BT.601 as copiers and printers reckon. */
  @Test
  void aCopyInGreyFallsSteadily() {
    for (int i = 1; i < BANDS; i++) {
      assertTrue(grey709(band(i - 1)) - grey709(band(i)) > 4, "BT.709, step " + i);
      assertTrue(grey601(band(i - 1)) - grey601(band(i)) > 4, "BT.601, step " + i);
    }
    for (int i = 1; i <= 100; i++) {
      assertTrue(grey601(ToneColour.of((i - 1) / 100.0)) > grey601(ToneColour.of(i / 100.0)));
    }
  }

  /** As a level of 255 by CIE lightness. */
  private static double grey709(ToneColour c) {
    double[] l = linear(c);
    double y = 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2];
    return 2.55 * (116 * Math.cbrt(y) - 16);
  }

  private static double grey601(ToneColour c) {
    return 0.299 * c.red() + 0.587 * c.green() + 0.114 * c.blue();
  }

  /**
   * Viénot, Brettel and Mollon, Color Research and Application 24 (1999) 243: cones from linear
   * light, and what takes the place of the missing one; from memory.
   */
  @Test
  void bandsAreToldApartWithoutRedOrGreenCones() {
    for (boolean red : new boolean[] {true, false}) {
      for (int i = 1; i < BANDS; i++) {
        double[] a = oklab(without(red, linear(band(i - 1))));
        double[] b = oklab(without(red, linear(band(i))));
        // About 0.02 is just seen.
        assertTrue(difference(a, b) > 0.03, (red ? "red " : "green ") + i);
        assertTrue(a[0] > b[0], (red ? "red " : "green ") + i);
      }
    }
  }

  private static double[] without(boolean red, double[] c) {
    double l = 17.8824 * c[0] + 43.5161 * c[1] + 4.11935 * c[2];
    double m = 3.45565 * c[0] + 27.1554 * c[1] + 3.86714 * c[2];
    double s = 0.0299566 * c[0] + 0.184309 * c[1] + 1.46709 * c[2];
    if (red) {
      l = 2.02344 * m - 2.52581 * s;
    } else {
      m = 0.494207 * l + 1.24827 * s;
    }
    return new double[] {
      Math.max(0, 0.0809444479 * l - 0.130504409 * m + 0.116721066 * s),
      Math.max(0, -0.0102485335 * l + 0.0540193266 * m - 0.113614708 * s),
      Math.max(0, -0.000365296938 * l - 0.00412161469 * m + 0.693511405 * s)
    };
  }

  /** WCAG 2, from memory: 3 to 1 is asked of lines; white boxes carry what is to be read. */
  @Test
  void blackLinesShowOnEveryTone() {
    for (int i = 0; i < BANDS; i++) {
      double[] l = linear(band(i));
      double y = 0.2126 * l[0] + 0.7152 * l[1] + 0.0722 * l[2];
      assertTrue((y + 0.05) / 0.05 > 2.5, "contrast of band " + i);
    }
  }

  @Test
  void hexHasTwoDigitsAChannel() {
    assertEquals("#00ff0a", new ToneColour(0, 255, 10).hex());
  }
}
