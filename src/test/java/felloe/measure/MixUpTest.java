package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Which readings are tried as taken over something else than they say. */
class MixUpTest {

  private static final long SEED = 41_207L;

  /** All distances over outside of holes of 5.5 mm, some of them off by something. */
  private static Equations readings(int holes, double[] offs, Random random) {
    List<Point> at = Calliper.ring(holes, 20.0 * holes / Math.PI);
    StringBuilder text = new StringBuilder("holes: " + holes + "\nplus_minus: 0.05\n");
    text.append("hole_diameter: 5.5\nreadings:\n");
    int number = 0;
    for (int i = 0; i < holes; i++) {
      for (int j = i + 1; j < holes; j++) {
        double off = number < offs.length ? offs[number] : 0;
        double reads = at.get(i).distance(at.get(j)) + 5.5 + off + 0.02 * random.nextGaussian();
        text.append("  - {from: ").append(i + 1).append(", to: ").append(j + 1);
        text.append(", over: outside, reads: ").append(Numbers.fixed(reads, 2)).append("}\n");
        number++;
      }
    }
    return Equations.of(MeasuredFile.parse("wren-measured.yaml", text.toString()));
  }

  private static List<Reading> pairs(Equations equations) {
    return equations.readings().stream().filter(Reading::isPair).toList();
  }

  private static Adjustment adjusted(Equations equations) {
    return Solver.free(equations, Solver.even(equations).z());
  }

  @Test
  void theOneMixUpThatExplainsAllIsTried() {
    Random random = new Random(SEED);
    for (int holes = 12; holes <= 18; holes += 3) {
      for (double off : new double[] {-5.5}) {
        Equations equations = readings(holes, new double[] {0, 0, 0, 0, 0, 0, 0, off}, random);
        Adjustment adjustment = adjusted(equations);
        ReadingKind over = ReadingKind.CENTRES;
        List<MixUp> tried =
            MixUp.candidates(pairs(equations).subList(7, 8)).stream()
                .filter(one -> one.mayMend(adjustment))
                .toList();
        assertTrue(
            tried.stream().anyMatch(one -> one.over() == over),
            "seed " + SEED + ": " + holes + " holes, off " + off);
      }
    }
  }

  @Test
  void whereSeveralReadingsAreOffNoneIsTriedAsAllThatIsWrong() {
    Equations equations =
        readings(12, new double[] {-0.9, 0, 0.8, 0.9, -0.8, 0.9}, new Random(SEED));
    Adjustment adjustment = adjusted(equations);
    List<MixUp> all = MixUp.candidates(pairs(equations).subList(0, 20));
    assertEquals(40, all.size());
    assertFalse(all.stream().anyMatch(one -> one.mayMend(adjustment)));
  }
}
