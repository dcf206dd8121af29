package felloe.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.laminate.Laminate;
import felloe.laminate.PlyMaterial;
import felloe.laminate.PlyStrength;
import felloe.laminate.Stack;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class PlyPeakTest {

  /** Figures of a cloth, invented for the test. */
  private static Laminate laminate(double... angles) {
    PlyMaterial cloth =
        new PlyMaterial(48_000, 48_000, 0.03, 2_700).with(new PlyStrength(580, 414, 547, 384, 67));
    return Laminate.of(Stack.of(cloth, 0.3, angles));
  }

  @Test
  void theOutermostPliesOfEachKindAreTheWorstOfAll() {
    PlyStrengths strengths = PlyStrengths.of(laminate(0, 45, 0, 45, 45, 0, 45, 0));
    Random random = new Random(7);
    for (int i = 0; i < 500; i++) {
      double[] s = random.doubles(6, -1, 1).toArray();
      double most = 0;
      for (int ply = 1; ply <= strengths.plies(); ply++) {
        double use =
            strengths.plyUse(
                ply, 2e-3 * s[0], 2e-3 * s[1], 2e-3 * s[2], 3e-3 * s[3], 3e-3 * s[4], 3e-3 * s[5]);
        most = Math.max(most, use);
      }
      double use =
          strengths.use(
              2e-3 * s[0], 2e-3 * s[1], 2e-3 * s[2], 3e-3 * s[3], 3e-3 * s[4], 3e-3 * s[5]);
      assertEquals(most, use, 1e-12 * most, "seed 7, strain " + i);
    }
  }

  @Test
  void everyPlyIsToldAndTheWorstIsThatOfTheCase() {
    Region ring =
        new Region(Contour.circle(Point.ORIGIN, 150), List.of(Contour.circle(Point.ORIGIN, 45)));
    LoadCase pull =
        new LoadCase(
            "pull",
            "pull",
            List.of(new HandForce(new Point(150, 0), 0, 0, 200)),
            0,
            "for the test");
    PlateSection section = PlateSection.of(laminate(0, 45, 0, 45, 45, 0, 45, 0), 2_700);
    LoadResult result =
        new LoadStudy(ring, section, new Support.Clamped(90), List.of(pull))
            .reckon(new LoadStudy.Patience(0.01, 0.05, 1, 20_000));
    CaseField field = result.cases().get(0);
    List<PlyPeak> peaks = PlyPeak.of(result, field);
    assertEquals(8, peaks.size());
    double most = peaks.stream().mapToDouble(PlyPeak::use).max().orElseThrow();
    assertEquals(field.worst().use(), most, 1e-12);
    // The plate bends about its middle, so plies of one direction are used as they lie off it.
    assertTrue(peaks.get(0).use() > peaks.get(2).use());
    List<PlyPeak> doubled = PlyPeak.of(result, field.times(2));
    assertEquals(2 * peaks.get(0).use(), doubled.get(0).use(), 1e-9);
  }

  @Test
  void aPlateWithoutPliesHasNone() {
    assertEquals(0, PlateSection.isotropic(70_000, 0.3, 5, 240).strength().plies());
  }
}
