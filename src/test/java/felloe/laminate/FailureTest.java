package felloe.laminate;

import static felloe.laminate.Printed.T300;
import static felloe.laminate.Printed.T300_STRENGTH;
import static felloe.laminate.Printed.holds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** First failure of a ply. */
class FailureTest {

  private static final long SEED = 4_711;
  private static final PlyMaterial STRONG = T300.with(T300_STRENGTH);

  private static FirstFailure failure(
      FailureCriterion criterion, Stack stack, LaminateLoad load, double cooled) {
    Laminate laminate = Laminate.of(stack);
    Optional<LaminateResponse> rest =
        cooled == 0 ? Optional.empty() : Optional.of(laminate.warmed(-cooled));
    return FirstFailure.of(criterion, laminate.response(load), rest).orElseThrow();
  }

  // Kaw, Mechanics of Composite Materials, examples 2.18 (maximum strain, 16.33 MPa) and 2.19
  // (Tsai and Wu with the -1/2, 22.39 MPa): a ply at 60 degrees under 2 S, -3 S, 4 S. From memory.
  @Test
  void aPlyAtSixtyDegreesFailsWhereTheBookSays() {
    Stack ply = Stack.of(STRONG, 1, 60);
    LaminateLoad load = new LaminateLoad(2, -3, 4, 0, 0, 0);
    holds("22.39", failure(FailureCriterion.TSAI_WU, ply, load, 0).reserve());
    holds("16.33", failure(FailureCriterion.MAXIMUM_STRAIN, ply, load, 0).reserve());
  }

  // Kaw, example 5.3: [0/90/0], 5 mm plies, the middle one fails first at 7.277e6 N/m by Tsai and
  // Wu. From memory.
  @Test
  void theCrossPlyOfTheBookFailsFirstInItsMiddlePly() {
    FirstFailure first =
        failure(
            FailureCriterion.TSAI_WU,
            Stack.of(STRONG, 5, 0, 90, 0),
            new LaminateLoad(1, 0, 0, 0, 0, 0),
            0);
    assertEquals(2, first.ply());
    holds("7.277e6", first.reserve() * 1000);
  }

  @Test
  void alongEachAxisBothCriteriaFailAtTheStrength() {
    double[][] loads = {{1, 0, 0}, {-1, 0, 0}, {0, 1, 0}, {0, -1, 0}, {0, 0, 1}, {0, 0, -1}};
    double[] strengths = {1500, 1500, 40, 246, 68, 68};
    FailureMode[] modes = {
      FailureMode.TENSION_1,
      FailureMode.COMPRESSION_1,
      FailureMode.TENSION_2,
      FailureMode.COMPRESSION_2,
      FailureMode.SHEAR,
      FailureMode.SHEAR
    };
    for (int i = 0; i < loads.length; i++) {
      LaminateLoad load = new LaminateLoad(loads[i][0], loads[i][1], loads[i][2], 0, 0, 0);
      Stack ply = Stack.of(STRONG, 1, 0);
      FirstFailure wu = failure(FailureCriterion.TSAI_WU, ply, load, 0);
      FirstFailure strain = failure(FailureCriterion.MAXIMUM_STRAIN, ply, load, 0);
      assertEquals(strengths[i], wu.reserve(), 1e-9 * strengths[i]);
      assertEquals(strengths[i], strain.reserve(), 1e-9 * strengths[i]);
      assertEquals(1 / strengths[i], strain.index(), 1e-12);
      assertEquals(modes[i], strain.mode().orElseThrow());
    }
  }

  @Test
  void atTheReserveTheIndexIsOne() {
    Random random = new Random(SEED);
    for (int i = 0; i < 100; i++) {
      Stack stack = LaminateLawsTest.stack(random, 1 + random.nextInt(8));
      double[] r = random.doubles(6, -10, 10).toArray();
      double cooled = i % 2 == 0 ? 0 : 5 * random.nextDouble();
      LaminateLoad load = new LaminateLoad(r[0], r[1], r[2], r[3], r[4], r[5]);
      for (FailureCriterion criterion : FailureCriterion.values()) {
        double grow = failure(criterion, stack, load, cooled).reserve();
        LaminateLoad grown =
            new LaminateLoad(
                grow * r[0], grow * r[1], grow * r[2], grow * r[3], grow * r[4], grow * r[5]);
        FirstFailure edge = failure(criterion, stack, grown, cooled);
        assertEquals(1, edge.index(), 1e-9, "seed " + SEED + ", " + i);
        assertEquals(1, edge.reserve(), 1e-9, "seed " + SEED + ", " + i);
      }
    }
  }

  @Test
  void coolingThatBreaksAPlyByItselfLeavesNoReserve() {
    PlyMaterial m = STRONG.with(new PlyExpansion(0.02e-6, 22.5e-6));
    Stack stack = Stack.of(m, 0.125, 0, 90).mirrored();
    LaminateLoad load = new LaminateLoad(1, 0, 0, 0, 0, 0);
    for (FailureCriterion criterion : FailureCriterion.values()) {
      double cold = failure(criterion, stack, load, 100).reserve();
      double warm = failure(criterion, stack, load, 0).reserve();
      assertTrue(cold > 0 && cold < warm, cold + " of " + warm);
      assertEquals(0, failure(criterion, stack, load, 1000).reserve());
    }
  }

  @Test
  void withoutLimitsOrLoadThereIsNoFailure() {
    Laminate unknown = Laminate.of(Stack.of(T300, 1, 0));
    LaminateResponse pulled = unknown.response(new LaminateLoad(1, 0, 0, 0, 0, 0));
    Laminate strong = Laminate.of(Stack.of(STRONG, 1, 0));
    LaminateResponse idle = strong.response(new LaminateLoad(0, 0, 0, 0, 0, 0));
    for (FailureCriterion criterion : FailureCriterion.values()) {
      assertTrue(FirstFailure.of(criterion, pulled, Optional.empty()).isEmpty());
      assertTrue(FirstFailure.of(criterion, idle, Optional.empty()).isEmpty());
    }
  }

  @Test
  void recoveryForManyCallsAgreesWithTheResponse() {
    Random random = new Random(SEED);
    for (int i = 0; i < 50; i++) {
      Laminate laminate = Laminate.of(LaminateLawsTest.stack(random, 1 + random.nextInt(8)));
      double[] r = random.doubles(6, -10, 10).toArray();
      LaminateResponse response =
          laminate.response(new LaminateLoad(r[0], r[1], r[2], r[3], r[4], r[5]));
      Deformation e = response.deformation();
      PlyRecovery recovery = PlyRecovery.of(laminate);
      assertEquals(2 * response.plies().size(), recovery.faceCount());
      double[] into = new double[5];
      double most = 0;
      double mostWu = 0;
      for (int face = 0; face < recovery.faceCount(); face++) {
        PlyResponse ply = response.plies().get(face / 2);
        PlyPoint point = face % 2 == 0 ? ply.bottom() : ply.top();
        recovery.stresses(face, e.ex(), e.ey(), e.gxy(), e.kx(), e.ky(), e.kxy(), into, 1);
        double near = 1e-9 * (1 + Math.abs(point.ownStress().first()));
        assertEquals(point.z(), recovery.z(face), 1e-12);
        assertEquals(point.ownStress().first(), into[1], near);
        assertEquals(point.ownStress().second(), into[2], near);
        assertEquals(point.ownStress().shear(), into[3], near);
        most =
            Math.max(
                most, recovery.strainUse(face, e.ex(), e.ey(), e.gxy(), e.kx(), e.ky(), e.kxy()));
        mostWu =
            Math.max(
                mostWu, recovery.tsaiWuUse(face, e.ex(), e.ey(), e.gxy(), e.kx(), e.ky(), e.kxy()));
      }
      FirstFailure strain =
          FirstFailure.of(FailureCriterion.MAXIMUM_STRAIN, response, Optional.empty())
              .orElseThrow();
      FirstFailure wu =
          FirstFailure.of(FailureCriterion.TSAI_WU, response, Optional.empty()).orElseThrow();
      String which = "seed " + SEED + ", " + i;
      assertEquals(1 / strain.reserve(), most, 1e-9 * most, which);
      assertEquals(1 / wu.reserve(), mostWu, 1e-9 * mostWu, which);
      int weakest = recovery.weakestFace(e.ex(), e.ey(), e.gxy(), e.kx(), e.ky(), e.kxy());
      assertEquals(2 * (strain.ply() - 1) + (strain.top() ? 1 : 0), weakest, which);
      assertEquals(-1, recovery.weakestFace(0, 0, 0, 0, 0, 0));
    }
  }

  @Test
  void noPointInsideAPlyIsWorseThanItsFaces() {
    Random random = new Random(SEED);
    List<String> worse = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      Laminate laminate = Laminate.of(LaminateLawsTest.stack(random, 3));
      double[] r = random.doubles(6, -10, 10).toArray();
      Deformation e = laminate.deformation(new LaminateLoad(r[0], r[1], r[2], r[3], r[4], r[5]));
      PlyRecovery recovery = PlyRecovery.of(laminate);
      Ply ply = laminate.stack().plies().get(1);
      double share = random.nextDouble();
      double z = recovery.z(2) + share * (recovery.z(3) - recovery.z(2));
      PlyPoint inside = PlyPoint.of(ply, z, e, 0);
      PlaneTriple s = inside.ownStress();
      double here = 1 / T300_STRENGTH.tsaiWuReserve(s.first(), s.second(), s.shear());
      double faces =
          Math.max(
              wu(PlyPoint.of(ply, recovery.z(2), e, 0)), wu(PlyPoint.of(ply, recovery.z(3), e, 0)));
      if (here > faces * (1 + 1e-9)) {
        worse.add("seed " + SEED + ", " + i);
      }
    }
    assertEquals(List.of(), worse);
  }

  private static double wu(PlyPoint p) {
    PlaneTriple s = p.ownStress();
    return 1 / T300_STRENGTH.tsaiWuReserve(s.first(), s.second(), s.shear());
  }
}
