package felloe.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.Cure;
import felloe.hub.HubCatalogue;
import felloe.hub.HubSpec;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class OddHolesTest {

  private static final long SEED = 20_261_128L;
  private static final HubCatalogue HUBS = HubCatalogue.here();
  private static final HubSpec HUB = HUBS.spec("6x70-m5", Place.BUILT_IN);

  private static Plate plate(double hole) {
    return ShapeFile.read(
        Path.of("shapes/heron.yaml"), Sets.of("bolt-circles[0].diameter=" + hole), HUBS);
  }

  private static List<Point> seen(List<Point> holes, double turn) {
    RigidTransform motion = new RigidTransform(false, turn, new Point(3, -8));
    return holes.stream().map(motion::of).toList();
  }

  /**
   * The odd one by a second way, which lays nothing on anything: the hole whose distances to the
   * others differ from the drawing's, while the distances between the others do not.
   */
  private static int byDistances(List<Point> found, List<Point> meant) {
    int odd = -1;
    double least = Double.POSITIVE_INFINITY;
    for (int out = 0; out < found.size(); out++) {
      double sum = 0;
      for (int i = 0; i < found.size(); i++) {
        for (int j = 0; j < i; j++) {
          if (i != out && j != out) {
            double by = found.get(i).distance(found.get(j)) - meant.get(i).distance(meant.get(j));
            sum += by * by;
          }
        }
      }
      if (sum < least) {
        least = sum;
        odd = out;
      }
    }
    return odd;
  }

  @Test
  void theOddHoleOfASeededPatternIsTheOneThatDistancesTell() {
    Random random = new Random(SEED);
    for (int run = 0; run < 400; run++) {
      int count = 4 + random.nextInt(9);
      List<Point> meant = Calliper.ring(count, 60 + 40 * random.nextDouble());
      List<Point> holes = new ArrayList<>();
      for (Point p : meant) {
        holes.add(p.plus(Point.polar(0.05 * random.nextDouble(), 7 * random.nextDouble())));
      }
      int moved = random.nextInt(count);
      double by = 0.45 + 1.5 * random.nextDouble();
      holes.set(moved, meant.get(moved).plus(Point.polar(by, 7 * random.nextDouble())));
      List<Point> found = seen(holes, 0.05 * random.nextGaussian());
      List<Double> reach = new ArrayList<>();
      meant.forEach(p -> reach.add(0.1));
      List<Integer> odd = OddHoles.of(found, meant, reach, 0.01);
      String which = "seed " + SEED + ", run " + run;
      assertEquals(List.of(moved), odd, which);
      assertEquals(byDistances(found, meant), odd.get(0), which);
    }
  }

  @Test
  void twoHolesOffAreBothNamedAndAWiderCircleHasNoOddOne() {
    List<Point> meant = Calliper.ring(8, 70);
    List<Point> holes = new ArrayList<>(meant);
    holes.set(1, holes.get(1).plus(new Point(0.6, 0.1)));
    holes.set(4, holes.get(4).plus(new Point(-0.2, 0.7)));
    List<Double> reach = new ArrayList<>();
    meant.forEach(p -> reach.add(0.1));
    assertEquals(List.of(1, 4), OddHoles.of(holes, meant, reach, 0.01));
    assertEquals(List.of(), OddHoles.of(Calliper.ring(8, 71), meant, reach, 0.01));
  }

  /** Three holes: two distances are wrong, and the third hole between them is the odd one. */
  @Test
  void ofThreeHolesTheOneBetweenTheWrongDistancesIsTheOddOne() {
    List<Point> meant = Calliper.ring(3, 50);
    List<Point> holes = new ArrayList<>(meant);
    holes.set(2, holes.get(2).plus(holes.get(2).unit().times(0.6)));
    assertEquals(List.of(2), OddHoles.of(holes, meant, List.of(0.1, 0.1, 0.1), 0.01));
  }

  /** The plate that was told to miss everywhere, with a cure that opened six holes. */
  @Test
  void oneHoleOffIsNamedFirstAndCuredAlone() {
    Plate plate = plate(5.5);
    List<Point> meant = plate.holes(HoleRole.BOLT).stream().map(Hole::centre).toList();
    for (int moved = 0; moved < 6; moved++) {
      for (double way = 0; way < 6; way += 1) {
        List<Point> holes = new ArrayList<>(meant);
        holes.set(moved, holes.get(moved).plus(Point.polar(0.55, way)));
        Calliper calliper = new Calliper(seen(holes, 0.7), 5.5, 0.05, null).diameter(0).allPairs();
        AsDrilledResult result = AsDrilled.of(plate, HUB, calliper.measured(), false);
        String label = "H" + (moved + 1);
        assertEquals(List.of(label), result.odd().stream().map(OddHole::label).toList());
        assertEquals(0.55, result.odd().get(0).off(), 1e-6);
        assertEquals(
            Math.cos(way) * 0.55, result.odd().get(0).by().x(), 1e-6, "seen as the drawing has it");
        Finding first = result.findings().get(0);
        assertEquals("drilled-place", first.rule());
        assertTrue(first.subject().startsWith(label), first.subject());
        for (DrilledHole hole : result.holes()) {
          assertEquals(hole.meant().label().equals(label), hole.misses(), hole.toString());
        }
        for (HoleEnlargement opening : result.openings()) {
          assertEquals(List.of(label), opening.all().stream().map(o -> o.hole()).toList());
          assertTrue(goesOn(holes, moved, opening.all().get(0).to(), 5.5));
          assertFalse(goesOn(holes, moved, opening.all().get(0).to() - 0.11 - 1, 5.5));
        }
      }
    }
  }

  /** The fit again with the hole as large as the cure says. */
  private static boolean goesOn(List<Point> holes, int opened, double to, double others) {
    List<Round> screws = new ArrayList<>();
    List<Round> rounds = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      screws.add(new Round(HUB.ring().centres().get(i), 5));
      rounds.add(new Round(holes.get(i), i == opened ? to : others));
    }
    return RigidFit.of(screws, rounds).clearance() >= -1e-6;
  }

  /**
   * Holes of 5 mm leave nothing to share, and no drill up to coarse brings the odd one in alone.
   */
  @Test
  void whereNoDrillReachesTheOddHoleAloneItsSlotComesFirst() {
    Plate plate = plate(5);
    List<Point> holes = new ArrayList<>();
    plate.holes(HoleRole.BOLT).forEach(h -> holes.add(h.centre()));
    holes.set(3, holes.get(3).plus(new Point(0.3, -0.35)));
    Calliper calliper = new Calliper(seen(holes, -0.4), 5, 0.05, null).diameter(0).allPairs();
    AsDrilledResult result = AsDrilled.of(plate, HUB, calliper.measured(), false);
    assertEquals(Verdict.FAIL, result.verdict());
    assertEquals("H4", result.odd().get(0).label());
    Cure.Slots slots = (Cure.Slots) result.cures().get(0);
    assertEquals(1, slots.slots().size());
    assertEquals("H4", slots.slots().get(0).hole());
    assertEquals(Math.hypot(0.3, 0.35), slots.slots().get(0).travel(), 1e-4);
  }

  @Test
  void aHoleOfAnotherSizeIsNamed() {
    Plate plate = plate(5.5);
    List<Point> holes = plate.holes(HoleRole.BOLT).stream().map(Hole::centre).toList();
    AsDrilledResult small =
        AsDrilled.of(
            plate,
            HUB,
            new Calliper(holes, 5.2, 0.05, null).diameter(0).allPairs().measured(),
            false);
    assertEquals(Verdict.CAUTION, small.verdict());
    assertEquals(1, small.findings().size());
    assertEquals("H1, H2, H3, H4, H5, H6", small.findings().get(0).subject());
    assertTrue(small.findings().get(0).advice().contains("0.30 mm smaller than drawn (5.5 mm)"));
    AsDrilledResult large =
        AsDrilled.of(
            plate,
            HUB,
            new Calliper(holes, 12, 0.05, null).diameter(0).allPairs().measured(),
            false);
    assertEquals(Verdict.CAUTION, large.verdict());
    assertTrue(large.findings().get(0).advice().contains("6.50 mm larger than drawn"));
    assertTrue(
        large.fit().findings().stream()
            .anyMatch(f -> f.rule().equals("hub-hole-series") && f.verdict() == Verdict.CAUTION));
    assertEquals(12, large.plate().orElseThrow().holes(HoleRole.BOLT).get(0).diameter(), 1e-6);
  }
}
