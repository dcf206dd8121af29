package felloe.hub;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.hub.RigidFit.Round;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Screws in slotted holes: closed forms, and a search over turns and shifts as second method. */
class SlottedFitTest {

  private static final long SEED = 20_417L;

  private static Hole hole(int number, Point at, double width, double travel, double direction) {
    Optional<Hole.Slot> slot =
        travel == 0 ? Optional.empty() : Optional.of(new Hole.Slot(travel, direction));
    return new Hole("H" + number, HoleRole.BOLT, at, width, slot, Place.BUILT_IN);
  }

  private static List<Round> ring(int count, double radius, double diameter) {
    List<Round> ring = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      ring.add(new Round(Point.polar(radius, 2 * Math.PI * i / count), diameter));
    }
    return ring;
  }

  @Test
  void radialSlotsTakeARingOfAnotherSizeWithTheWholeRoomOfTheirWidth() {
    for (double radius : new double[] {24, 24.8, 25.4, 26.3, 26.9}) {
      List<Hole> holes = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        double angle = 2 * Math.PI * i / 3;
        holes.add(hole(i + 1, Point.polar(25.4, angle), 6.4, 3, angle));
      }
      RigidFit fit = SlottedFit.of(ring(3, radius, 6), holes);
      assertEquals(0.2, fit.clearance(), 1e-6, "ring of radius " + radius);
    }
  }

  @Test
  void aRingBeyondTheSlotsEndsLacksTheRest() {
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      double angle = 2 * Math.PI * i / 3;
      holes.add(hole(i + 1, Point.polar(25, angle), 6.4, 3, angle));
    }
    // The slots' outer ends lie at 26.5.
    assertEquals(0.2 - 0.7, SlottedFit.of(ring(3, 27.2, 6), holes).clearance(), 1e-6);
  }

  @Test
  void theSlotOfACureLetsItsScrewIn() {
    HubSpec hub = HubCatalogue.here().spec("6x70-m5", Place.BUILT_IN);
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      Point at = Point.polar(35, Math.PI / 2 + Math.PI * i / 3);
      holes.add(hole(i + 1, i == 2 ? at.plus(new Point(1.9, 0.6)) : at, 5.3, 0, 0));
    }
    HubFitResult before = HubFit.of(holes, hub);
    assertFalse(before.enters());
    SlottedHole slot =
        before.cures().stream()
            .filter(Cure.Slots.class::isInstance)
            .map(cure -> ((Cure.Slots) cure).slots().get(0))
            .findFirst()
            .orElseThrow();
    assertEquals("H3", slot.hole());
    Hole old = holes.get(2);
    holes.set(
        2, hole(3, slot.from().middle(slot.to()), slot.width(), slot.travel(), slot.direction()));
    HubFitResult after = HubFit.of(holes, hub);
    assertTrue(after.enters());
    assertTrue(old.centre().near(holes.get(2).ends().get(0), 1e-9));
    assertTrue(after.clearance().orElseThrow() >= 0.15 - 1e-6, "room " + after.clearance());
  }

  @Test
  void noTurnAndShiftOfASearchLeavesMoreRoom() {
    Random random = new Random(SEED);
    for (int k = 0; k < 60; k++) {
      int count = 3 + random.nextInt(4);
      List<Round> screws = ring(count, 30, 5);
      List<Hole> holes = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        Point off = new Point(random.nextGaussian() * 0.3, random.nextGaussian() * 0.3);
        double travel = random.nextBoolean() ? 0 : 0.5 + 2 * random.nextDouble();
        Point at = screws.get(i).centre().plus(off);
        holes.add(hole(i + 1, at, 5.5, travel, random.nextDouble() * 3));
      }
      double told = SlottedFit.of(screws, holes).clearance();
      double searched = searched(screws, holes);
      assertTrue(
          told >= searched - 2e-3, "seed " + SEED + ", case " + k + ": " + told + " " + searched);
    }
  }

  /** Room at the best of many turns and shifts, each time narrowed about the best one. */
  private static double searched(List<Round> screws, List<Hole> holes) {
    double turn = 0;
    double x = 0;
    double y = 0;
    double best = room(screws, holes, 0, 0, 0);
    for (double span = 1.5; span > 1e-4; span *= 0.8) {
      double t0 = turn;
      double x0 = x;
      double y0 = y;
      for (int i = -4; i <= 4; i++) {
        for (int j = -4; j <= 4; j++) {
          for (int m = -4; m <= 4; m++) {
            double t = t0 + span * i / 4 / 30;
            double px = x0 + span * j / 4;
            double py = y0 + span * m / 4;
            double room = room(screws, holes, t, px, py);
            if (room > best) {
              best = room;
              turn = t;
              x = px;
              y = py;
            }
          }
        }
      }
    }
    return best;
  }

  private static double room(
      List<Round> screws, List<Hole> holes, double turn, double x, double y) {
    RigidTransform motion = new RigidTransform(false, turn, new Point(x, y));
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < screws.size(); i++) {
      Point at = motion.of(screws.get(i).centre());
      List<Point> ends = holes.get(i).ends();
      Point a = ends.get(0);
      Point b = ends.get(ends.size() - 1);
      double length = a.distance(b);
      double f =
          length == 0
              ? 0
              : Math.max(0, Math.min(1, at.minus(a).dot(b.minus(a)) / (length * length)));
      double room = (holes.get(i).diameter() - 5) / 2 - at.distance(a.towards(b, f));
      least = Math.min(least, room);
    }
    return least;
  }
}
