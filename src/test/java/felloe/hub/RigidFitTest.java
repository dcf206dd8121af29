package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.RigidFit.Round;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RigidFitTest {

  private static final long SEED = 20_240_611L;

  private static List<Round> ring(int count, double pcd, double first, double diameter) {
    List<Round> ring = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ring.add(new Round(Point.polar(pcd / 2, first + 2 * Math.PI * i / count), diameter));
    }
    return ring;
  }

  private static List<Round> moved(List<Round> rounds, RigidTransform motion) {
    return rounds.stream().map(r -> new Round(motion.of(r.centre()), r.diameter())).toList();
  }

  @Test
  void equalPatternsLeaveHalfOfHoleMinusScrewWhereverTheHubIsTurnedAndShifted() {
    Random random = new Random(SEED);
    for (int run = 0; run < 300; run++) {
      int count = 1 + random.nextInt(9);
      double screw = 3 + random.nextInt(6);
      double hole = screw + random.nextDouble();
      List<Round> screws = ring(count, 30 + 90 * random.nextDouble(), random.nextDouble(), screw);
      RigidTransform motion =
          new RigidTransform(
              false,
              20 * random.nextDouble() - 10,
              new Point(random.nextGaussian() * 20, random.nextGaussian() * 20));
      List<Round> holes =
          new ArrayList<>(
              moved(screws, motion).stream().map(r -> new Round(r.centre(), hole)).toList());
      Collections.shuffle(holes, random);
      RigidFit fit = RigidFit.of(screws, holes);
      assertEquals((hole - screw) / 2, fit.clearance(), 2e-9, "seed " + SEED + ", run " + run);
      assertTrue(fit.complete());
      double step = 2 * Math.PI / count;
      assertTrue(Math.abs(fit.placement().turn()) <= step / 2 + 1e-6, "run " + run);
    }
  }

  @Test
  void aCircleTooSmallOrTooLargeLosesHalfTheDifferenceOfDiameters() {
    for (double pcd : new double[] {69.85, 70, 70.3, 74, 58, 101}) {
      for (int count : new int[] {2, 3, 4, 5, 6, 8, 9}) {
        RigidFit fit = RigidFit.of(ring(count, 70, 0.3, 5), ring(count, pcd, 0.5, 5.5));
        assertEquals(0.25 - Math.abs(pcd - 70) / 2, fit.clearance(), 2e-9, pcd + " x " + count);
        assertEquals(0, fit.placement().shift().norm(), 1e-6);
      }
    }
  }

  @Test
  void threeScrewsFindTheirPlaceAmongSixHoles() {
    RigidFit fit = RigidFit.of(ring(3, 58, 0.1, 6), ring(6, 58, 0.4, 6.6));
    assertEquals(0.3, fit.clearance(), 2e-9);
    assertEquals(0.3, fit.placement().turn(), 1e-6);
  }

  @Test
  void screwsOfTheSameCircleFindItAmongTwoRings() {
    List<Round> holes = new ArrayList<>(ring(6, 70, 0, 5.5));
    holes.addAll(ring(6, 74, 0, 5.5));
    RigidFit fit = RigidFit.of(ring(6, 74, 0, 5), holes);
    assertEquals(0.25, fit.clearance(), 2e-9);
    assertEquals(List.of(6, 7, 8, 9, 10, 11), fit.holes());
  }

  @Test
  void anUnevenPatternEntersOnlyOneWayRound() {
    List<Round> screws = new ArrayList<>();
    for (double degrees : new double[] {0, 50, 120, 200, 290}) {
      screws.add(new Round(Point.polar(35, Math.toRadians(degrees)), 5));
    }
    List<Round> holes =
        moved(screws, RigidTransform.turn(2)).stream()
            .map(r -> new Round(r.centre(), 5.3))
            .toList();
    RigidFit fit = RigidFit.of(screws, holes);
    assertEquals(List.of(0, 1, 2, 3, 4), fit.holes());
    assertEquals(2, fit.placement().turn(), 1e-6);
    assertEquals(0.15, fit.clearance(), 2e-9);
  }

  @Test
  void aMirroredUnevenPatternDoesNotEnter() {
    List<Round> screws = new ArrayList<>();
    for (double degrees : new double[] {0, 50, 120, 200, 290}) {
      screws.add(new Round(Point.polar(35, Math.toRadians(degrees)), 5));
    }
    List<Round> holes =
        moved(screws, RigidTransform.MIRROR).stream().map(r -> new Round(r.centre(), 5.5)).toList();
    assertTrue(RigidFit.of(screws, holes).clearance() < -0.5);
  }

  @Test
  void holesOfUnequalSizeLetTheTightOneDecide() {
    List<Round> holes = new ArrayList<>(ring(6, 70, 0, 5.8));
    holes.set(2, new Round(holes.get(2).centre(), 5.1));
    assertEquals(0.05, RigidFit.of(ring(6, 70, 0, 5), holes).clearance(), 2e-9);
  }

  @Test
  void noSearchByBruteForceFindsMoreRoomThanTheFit() {
    Random random = new Random(SEED);
    for (int run = 0; run < 25; run++) {
      int count = 2 + random.nextInt(3);
      int spare = random.nextInt(3);
      List<Round> screws = new ArrayList<>();
      double circle = 40 + 40 * random.nextDouble();
      for (Round r : ring(count, circle, random.nextDouble(), 5)) {
        screws.add(
            new Round(
                r.centre().plus(new Point(random.nextGaussian(), random.nextGaussian()), 0.4),
                5 + random.nextInt(2)));
      }
      List<Round> holes = new ArrayList<>();
      RigidTransform motion = new RigidTransform(false, 7 * random.nextDouble(), new Point(1, -2));
      for (Round r : moved(screws, motion)) {
        holes.add(
            new Round(
                r.centre().plus(new Point(random.nextGaussian(), random.nextGaussian()), 0.5),
                r.diameter() + random.nextDouble()));
      }
      for (int i = 0; i < spare; i++) {
        holes.add(new Round(Point.polar(30, 6 * random.nextDouble()), 5 + random.nextDouble()));
      }
      Collections.shuffle(holes, random);
      RigidFit fit = RigidFit.of(screws, holes);
      double brute = BruteForceFit.best(screws, holes);
      String which = "seed " + SEED + ", run " + run;
      assertTrue(fit.clearance() >= brute - 3e-9, which + ": " + fit.clearance() + " < " + brute);
      assertEquals(brute, fit.clearance(), 1e-5, which);
    }
  }

  @Test
  void fewerHolesThanScrewsIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> RigidFit.of(ring(6, 70, 0, 5), ring(5, 70, 0, 5.5)));
  }
}
