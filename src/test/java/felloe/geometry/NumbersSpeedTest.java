package felloe.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The short way of rounding against exact decimal arithmetic. */
class NumbersSpeedTest {

  @Test
  void theShortWayRoundsAsExactArithmeticDoes() {
    long seed = 20;
    Random random = new Random(seed);
    for (int i = 0; i < 200_000; i++) {
      int decimals = random.nextInt(12);
      double value = random.nextGaussian() * Math.pow(10, random.nextInt(16) - 6);
      if (i % 3 == 0) {
        // Near a half of the last place, from both sides and dead on where a double can be.
        double unit = Math.pow(10, -decimals);
        value = (Math.rint(value / unit) + 0.5) * unit;
        value = i % 2 == 0 ? value : i % 4 == 1 ? Math.nextUp(value) : Math.nextDown(value);
      }
      BigDecimal exact = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_UP);
      assertEquals(
          exact.toPlainString(), Numbers.fixed(value, decimals), "seed " + seed + ", case " + i);
    }
    assertEquals("0.5", Numbers.brief(0.45, 1)); // 0.45 is a hair above 0.45 in binary
    assertEquals("0", Numbers.fixed(-0.0, 0));
    assertEquals("0.000", Numbers.fixed(-1e-9, 3));
  }
}
